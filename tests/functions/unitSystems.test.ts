import fc from "fast-check";
import { callFunction, isRefused } from "../../src/functions/callFunction";
import type { Measure } from "../../src/functions/measure";
import { FUNCTIONS } from "../../src/functions/registry";

/** Metric figure of one US unit: NIST Special Publication 811, appendix B.8 (exact definitions). */
const METRIC: Readonly<Record<Measure, number>> = {
  plain: 1,
  share: 1,
  hours: 1,
  mass: 0.45359237,
  length: 0.3048,
  spurSpacing: 2.54,
  massPerLength: 0.45359237 / 0.3048,
  perLength: 1 / 0.3048,
  perMass: 1 / 0.45359237,
  // an acre is 4046.8564224 square metres, a short ton 907.18474 kg
  vinesPerArea: 1 / 0.40468564224,
  cropPerArea: 0.90718474 / 0.40468564224,
};

const WITH_UNITS = FUNCTIONS.filter(
  ({ parameters }) =>
    parameters.some(({ kind }) => kind === "unitSystem") && parameters.every(({ kind }) => kind !== "table"),
);

/** Ranges in US units in which every one of these functions answers. */
const USUAL: Readonly<Record<string, readonly [number, number]>> = {
  prunings: [1, 12],
  least: [0, 10],
  most: [200, 400],
  length: [1, 20],
  density: [2, 12],
  nodes: [10, 90],
  nodes_per_spur: [1, 4],
  spacing: [3, 8],
  clusters: [1, 90],
  cluster_weight: [0.1, 0.6],
  row_spacing: [6, 14],
  vine_spacing: [3, 10],
  vine_crop: [1, 40],
  missing_share: [0, 1],
  target: [1, 8],
  counted: [0, 120],
  shoots: [0, 200],
  vines: [0, 2000],
  minutes: [0, 20],
};

test("functions with units are there to be compared", () => {
  expect(WITH_UNITS.map(({ id }) => id)).toEqual(
    expect.arrayContaining(["NODEBUDGET", "VINEDENSITY", "BLOCKCROP"]),
  );
});

test.each(WITH_UNITS)(
  "$id: pounds, feet and acres give the same answer as kilograms, metres and hectares",
  (called) => {
    const { parameters, result } = called;
    const us = fc.tuple(
      ...parameters.map(({ id, kind, choices }): fc.Arbitrary<number | string | null> => {
        if (kind === "text") return fc.constant("30+10");
        if (kind === "unitSystem") return fc.constant("US");
        if (kind === "choice") return fc.constantFrom(...choices);
        if (kind === "whole") return fc.integer({ min: 1, max: 4 });
        const [min, max] = USUAL[id];
        return fc.double({ min, max, noNaN: true });
      }),
    );
    let answered = 0;
    fc.assert(
      fc.property(us, (given) => {
        const metric = given.map((value, at) => {
          if (parameters[at].kind === "unitSystem") return "metric";
          return typeof value === "number" ? value * METRIC[parameters[at].measure] : value;
        });
        const [inPounds, inKilograms] = [callFunction(called, given), callFunction(called, metric)];
        expect(isRefused(inKilograms)).toBe(isRefused(inPounds));
        if (isRefused(inPounds) || isRefused(inKilograms)) return;
        answered += 1;
        result.columns.forEach(({ measure }, column) => {
          const [a, b] = [inPounds.values[0][column] as number, inKilograms.values[0][column] as number];
          const expected = a * METRIC[measure];
          expect(Math.abs(b - expected)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(expected)));
        });
      }),
      { numRuns: 200, seed: 20260214 },
    );
    expect(answered).toBeGreaterThan(100);
  },
);
