import * as fc from "fast-check";
import jstat from "jstat";
import { middleAndSpread } from "../../src/survey/middleAndSpread";

const SEED = 20260302;

describe("middle and spread", () => {
  test("are the median and the median deviation that jstat finds, times 1.4826", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -50, max: 50, noNaN: true }), { minLength: 1, maxLength: 40 }),
        (values) => {
          const median = jstat.median(values);
          const deviation = jstat.median(values.map((value) => Math.abs(value - median)));
          const { median: middle, spread, count } = middleAndSpread(Float64Array.from(values));
          expect(count).toBe(values.length);
          expect(middle).toBeCloseTo(median, 12);
          if (deviation > 0) expect(spread).toBeCloseTo(1.482602218505602 * deviation, 9);
        },
      ),
      { seed: SEED, numRuns: 2000 },
    );
  });

  test("take the mean deviation, times 1.2533, where more than half of the values are equal", () => {
    const values = [8, 8, 8, 8, 9, 7, 12];
    const { median, spread } = middleAndSpread(Float64Array.from(values));
    expect(median).toBe(8);
    expect(spread).toBeCloseTo(
      1.2533141373155001 * (values.map((v) => Math.abs(v - 8)).reduce((a, b) => a + b) / 7),
      12,
    );
  });
});
