import { PUBLISHED_WINTERS, winterOutlookOf } from "./winterToHarvest";

test.each(PUBLISHED_WINTERS)(
  "$vine ($source): the winter outlook is its nodes by the usual figures",
  (winter) => {
    const { stage, perVine } = winterOutlookOf(winter);
    expect(stage).toBe("winter");
    // 0.85 of the nodes break, two clusters a shoot: Settings
    expect(perVine.likely).toBeCloseTo((winter.nodes * 0.85 * 2 * winter.clusterGrams) / 1000, 6);
    expect(perVine.low).toBeLessThan(perVine.likely);
  },
);

test("the one vine whose own cluster weight was published bore what its range has", () => {
  const [cabernet] = PUBLISHED_WINTERS;
  const { perVine } = winterOutlookOf(cabernet);
  expect(cabernet.harvest).toBeGreaterThan(perVine.low);
  expect(cabernet.harvest).toBeLessThan(perVine.high);
});
