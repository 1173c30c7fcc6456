import jstat from "jstat";
import {
  betaEstimate,
  exactly,
  fromYears,
  relativeSpread,
  shareFromCount,
  shareFromYears,
  type Estimate,
} from "../../../src/domain/outlook/estimate";
import { fruitfulNodes } from "../../../src/domain/outlook/fruitfulNodes";

import { productRange, rangesAlong } from "../../../src/domain/outlook/productRange";
import { vinesAtRandom } from "../../../src/domain/outlook/vinesCounted";
import { normalQuantile } from "../../../src/domain/statistics/normalQuantile";
import { tQuantile } from "../../../src/domain/statistics/tQuantile";

const nodes = vinesAtRandom([38, 44, 51, 29, 40, 47, 36, 42, 33, 49], 300);
const fruitfulness = fromYears("clustersPerShoot", 1.9, 0.25);

describe("ranges where the answer is known in closed form", () => {
  test.each([0.5, 0.8, 0.9, 0.99])("two lognormal figures at %p", (confidence) => {
    const { low, high } = productRange(
      [fromYears("clustersPerShoot", 2, 0.25)],
      0,
      [fromYears("clusterWeight", 0.1, 0.2)],
      confidence,
    );
    const reach = normalQuantile((1 + confidence) / 2) * Math.hypot(0.25, 0.2);
    expect(Math.log(high / 0.2) / reach).toBeCloseTo(1, 4);
    expect(Math.log(0.2 / low) / reach).toBeCloseTo(1, 4);
  });

  test("a sample mean alone has its own t interval", () => {
    const { low, high } = productRange([nodes], 0, [exactly("clusterWeight", 0.1)], 0.9);
    const half = tQuantile(0.95, 9) * nodes.standardError * 0.1;
    expect((high - nodes.value * 0.1) / half).toBeCloseTo(1, 3);
    expect((nodes.value * 0.1 - low) / half).toBeCloseTo(1, 3);
  });

  test("nothing in doubt has no width, and nothing left has no crop", () => {
    expect(productRange([exactly("vines", 40)], 0, [exactly("clusterWeight", 0.1)], 0.9)).toEqual({
      low: 4,
      likely: 4,
      high: 4,
    });
    expect(productRange([exactly("vines", 0)], 0, [fruitfulness], 0.9)).toEqual({
      low: 0,
      likely: 0,
      high: 0,
    });
  });

  test("forty dead buds of forty leave a likely crop of nothing, but not a certain one", () => {
    const dead = fruitfulNodes([{ nodes: 40, primaries: 0, secondariesOnly: 0 }], 0.38);
    const { low, likely, high } = productRange([dead], 0, [nodes], 0.9);
    expect([low, likely]).toEqual([0, 0]);
    expect(high).toBeGreaterThan(0.5);
    expect(high).toBeLessThan(4);
  });

  test("with every bud dead and no budbreak the basal shoots are left", () => {
    const { likely } = productRange(
      [exactly("buds", 0), exactly("budbreak", 0)],
      0.3,
      [exactly("vines", 10)],
      0.9,
    );
    expect(likely).toBeCloseTo(3, 12);
  });

  test("a prefix of a chain has the range that it has alone, also when it is far narrower than the whole", () => {
    const few = shareFromCount("missing", 950, 1000);
    const along = rangesAlong([few], 0, [[], [fruitfulness]], 0.9);
    expect(along[0]).toEqual(productRange([few], 0, [], 0.9));
    expect(along[1]).toEqual(productRange([few], 0, [fruitfulness], 0.9));
  });
});

/** Quantiles of the laws by their definitions; those of t, normal and beta are held against the reference libraries. */
describe("the range of one figure alone is that of its law", () => {
  const logit = (share: number) => Math.log(share / (1 - share));
  const ofLogit = (x: number) => 1 / (1 + Math.exp(-x));
  type At = (p: number) => number;
  const z: At = (p) => normalQuantile(p);
  const t =
    (degrees: number): At =>
    (p) =>
      tQuantile(p, degrees);
  const vines = (degrees: number): Estimate => ({
    source: "vines",
    value: 50,
    standardError: 3,
    degrees,
    law: "t",
  });
  const CASES: readonly (readonly [why: string, estimate: () => Estimate, at: At])[] = [
    [
      "a ratio of years, spread known",
      () => fromYears("clusterWeight", 0.1, 0.2),
      (p) => 0.1 * Math.exp(0.2 * z(p)),
    ],
    [
      "a ratio of years, six years",
      () => fromYears("clusterWeight", 0.1, 0.2, 5),
      (p) => 0.1 * Math.exp(0.2 * t(5)(p)),
    ],
    [
      "a share of years, spread known",
      () => shareFromYears("budbreak", 0.85, 0.06),
      (p) => ofLogit(logit(0.85) + (0.06 / (0.85 * 0.15)) * z(p)),
    ],
    [
      "a share of years, eight years",
      () => shareFromYears("budbreak", 0.3, 0.06, 7),
      (p) => ofLogit(logit(0.3) + (0.06 / (0.3 * 0.7)) * t(7)(p)),
    ],
    ["a mean of ten vines", () => vines(9), (p) => 50 + 3 * t(9)(p)],
    ["a mean of 102 vines", () => vines(101), (p) => 50 + 3 * t(101)(p)],
    ["a mean with its spread known", () => vines(Infinity), (p) => 50 + 3 * z(p)],
    ["a share of 57 in 60", () => shareFromCount("missing", 57, 60), (p) => jstat.beta.inv(p, 57.5, 3.5)],
    ["a share without a peak", () => betaEstimate("buds", 0.5, 8, 8), (p) => jstat.beta.inv(p, 8, 8)],
  ];

  test.each(CASES)("%s", (_why, estimate, at) => {
    const gridStep = relativeSpread(estimate()) / 20;
    for (const confidence of [0.5, 0.9, 0.99]) {
      const { low, likely, high } = productRange([estimate()], 0, [], confidence);
      expect(likely).toBe(estimate().value);
      for (const [ours, probability] of [
        [low, (1 - confidence) / 2],
        [high, (1 + confidence) / 2],
      ])
        expect(Math.abs(Math.log(ours / at(probability)))).toBeLessThan(gridStep / 4);
    }
  });
});
