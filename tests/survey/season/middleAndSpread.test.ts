import * as fc from "fast-check";
import normalQuantile from "@stdlib/stats-base-dists-normal-quantile";
import jstat from "jstat";
import { middleAndSpread } from "../../../src/survey/season/middleAndSpread";

const SEED = 20260302;

describe("middle and spread", () => {
  test("are jstat's median and its median deviation over the upper quartile of the normal distribution", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -50, max: 50, noNaN: true }), { minLength: 1, maxLength: 40 }),
        (values) => {
          const median = jstat.median(values);
          const deviation = jstat.median(values.map((value) => Math.abs(value - median)));
          const { median: middle, spread, count } = middleAndSpread(Float64Array.from(values));
          expect(count).toBe(values.length);
          expect(middle).toBeCloseTo(median, 12);
          if (deviation > 0) expect(spread).toBeCloseTo(deviation / normalQuantile(0.75, 0, 1), 9);
        },
      ),
      { seed: SEED, numRuns: 2000 },
    );
  });

  test("take the mean deviation times the square root of pi / 2, its ratio to sigma when normal, where more than half of the values are equal", () => {
    const values = [8, 8, 8, 8, 9, 7, 12];
    const { median, spread } = middleAndSpread(Float64Array.from(values));
    expect(median).toBe(8);
    // Deviations by hand: 0, 0, 0, 0, 1, 1, 4.
    expect(spread).toBeCloseTo(Math.sqrt(Math.PI / 2) * (6 / 7), 12);
  });
});
