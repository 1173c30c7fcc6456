import { PROPERTIES } from "./properties";

const SEED = 20260301;
const CASES = 1000;

describe("whatever comes in", () => {
  test.each(PROPERTIES.map((property) => [property.name, property] as const))(
    "%s",
    async (_name, { share, check }) => {
      await check({ numRuns: Math.ceil(CASES * share), seed: SEED });
    },
    60000,
  );

  test("the shares of all cases add up", () => {
    expect(PROPERTIES.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1);
  });
});
