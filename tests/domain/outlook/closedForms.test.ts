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

import {
  logDistribution,
  plus,
  product,
  quantile,
  type LogDistribution,
} from "../../../src/domain/outlook/logDistribution";
import { productRange, rangesAlong } from "../../../src/domain/outlook/productRange";
import { vinesAtRandom } from "../../../src/domain/outlook/vinesCounted";
import { normalQuantile } from "../../../src/domain/statistics/normalQuantile";
import { tQuantile } from "../../../src/domain/statistics/tQuantile";

const nodes = () => vinesAtRandom([38, 44, 51, 29, 40, 47, 36, 42, 33, 49], 300);
const fruitfulness = () => fromYears("clustersPerShoot", 1.9, 0.25);

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
    const { low, high } = productRange([nodes()], 0, [exactly("clusterWeight", 0.1)], 0.9);
    const half = tQuantile(0.95, 9) * nodes().standardError * 0.1;
    expect((high - nodes().value * 0.1) / half).toBeCloseTo(1, 3);
    expect((nodes().value * 0.1 - low) / half).toBeCloseTo(1, 3);
  });

  test("nothing in doubt has no width, and nothing left has no crop", () => {
    expect(productRange([exactly("vines", 40)], 0, [exactly("clusterWeight", 0.1)], 0.9)).toEqual({
      low: 4,
      likely: 4,
      high: 4,
    });
    expect(productRange([exactly("vines", 0)], 0, [fruitfulness()], 0.9)).toEqual({
      low: 0,
      likely: 0,
      high: 0,
    });
  });

  test("forty dead buds of forty leave a likely crop of nothing, but not a certain one", () => {
    const dead = fruitfulNodes([{ nodes: 40, primaries: 0, secondariesOnly: 0 }], 0.38);
    const { low, likely, high } = productRange([dead], 0, [nodes()], 0.9);
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

  test("what is certain at the start of a chain is exact there, to the last digit", () => {
    for (const vines of [3, 7, 21, 39, 47])
      expect(rangesAlong([exactly("vines", vines)], 0, [[], [fruitfulness()]], 0.9)[0]).toEqual({
        low: vines,
        likely: vines,
        high: vines,
      });
  });

  test("each figure without a crop leaves none, whatever the others are", () => {
    const none = { low: 0, likely: 0, high: 0 };
    const nothing = exactly("clusterWeight", 0);
    expect(rangesAlong([nothing, nodes()], 0, [[fruitfulness()], []], 0.9)).toEqual([none, none]);
    expect(rangesAlong([nodes()], 0, [[nothing], [fruitfulness()]], 0.9)).toEqual([none, none]);
  });

  test("what is added to a figure in doubt moves its range by as much: lognormal nodes and 10 more, times 2", () => {
    const nodesOfYears = fromYears("vines", 40, 0.2);
    const z = normalQuantile(0.95);
    const { low, likely, high } = productRange([nodesOfYears], 10, [exactly("clusterWeight", 2)], 0.9);
    expect(likely).toBe(100);
    const gridStep = 0.2 / 20;
    expect(Math.abs(Math.log(low / (2 * (40 * Math.exp(-0.2 * z) + 10))))).toBeLessThan(gridStep / 10);
    expect(Math.abs(Math.log(high / (2 * (40 * Math.exp(0.2 * z) + 10))))).toBeLessThan(gridStep / 10);
  });

  test("a prefix far narrower than the whole has every figure up to there in its range", () => {
    const [, both] = rangesAlong(
      [],
      0,
      [
        [fromYears("vines", 40, 0.03)],
        [fromYears("clusterWeight", 0.1, 0.04)],
        [fromYears("missing", 1, 0.5)],
      ],
      0.9,
    );
    expect(both.high / 4).toBeCloseTo(Math.exp(0.05 * normalQuantile(0.95)), 5);
    expect(both.low / 4).toBeCloseTo(Math.exp(-0.05 * normalQuantile(0.95)), 5);
  });

  test("a prefix of a chain has the range that it has alone, also when it is far narrower than the whole", () => {
    const few = shareFromCount("missing", 950, 1000);
    const along = rangesAlong([few], 0, [[], [fruitfulness()]], 0.9);
    expect(along[0]).toEqual(productRange([few], 0, [], 0.9));
    expect(along[1]).toEqual(productRange([few], 0, [fruitfulness()], 0.9));
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

describe("the logarithm of a figure on a grid", () => {
  const list = ({ masses }: LogDistribution) => Array.from(masses);
  const near = (...values: number[]) => values.map((value) => expect.closeTo(value, 12));
  const on = (first: number, step: number, ...masses: number[]): LogDistribution => ({
    first,
    step,
    masses: Float64Array.from(masses),
  });

  test("what is certain is one mass", () => {
    expect(logDistribution(exactly("vines", 5), 0.1)).toEqual(on(Math.log(5), 0.1, 1));
  });

  test("a law narrower than the step has three masses of its variance: 0.1 squared over 2 x 0.2 squared at the sides", () => {
    const narrow = logDistribution(fromYears("vines", 5, 0.1), 0.2);
    expect(narrow.first).toBeCloseTo(Math.log(5) - 0.2, 12);
    expect(list(narrow)).toEqual(near(0.125, 0.75, 0.125));
  });

  test("a wider one reaches eight standard errors to both sides, and its masses are one in all", () => {
    const wide = logDistribution(fromYears("vines", 5, 0.1), 0.1);
    expect(wide.first).toBeCloseTo(Math.log(5) - 0.8, 12);
    expect(wide.masses).toHaveLength(17);
    expect(list(wide).reduce((sum, mass) => sum + mass)).toBeCloseTo(1, 12);
    expect(wide.masses[9] / wide.masses[8]).toBeCloseTo(Math.exp(-0.5), 12);
    expect(wide.masses[7] / wide.masses[8]).toBeCloseTo(Math.exp(-0.5), 12);
  });

  test("heavy tails reach as far as all but a hundred-thousandth, at most sixty", () => {
    const reach = (degrees: number) =>
      (logDistribution(fromYears("vines", 5, 0.1, degrees), 0.1).masses.length - 1) / 2;
    expect(reach(1)).toBe(60);
    expect(reach(4)).toBe(Math.ceil(tQuantile(1 - 1e-5, 4)));
    expect(reach(1000)).toBe(8);
  });

  test("a share has no mass beyond all, and none that is no number where the grid meets all", () => {
    const step = Math.LN2 / 8;
    const half = logDistribution(shareFromYears("budbreak", 0.5, 0.1), step);
    const whole = half.masses.length - 1 - Math.round((half.first + (half.masses.length - 1) * step) / step);
    expect(half.first + whole * step).toBeCloseTo(0, 12);
    expect(list(half).slice(whole)).toEqual(
      list(half)
        .slice(whole)
        .map(() => 0),
    );
    expect(list(half).reduce((sum, mass) => sum + mass)).toBeCloseTo(1, 12);
  });

  test("beta with 1 and 1 is as long as the share itself: from 0.5 to 1.5 steps below all e^-0.5s - e^-1.5s", () => {
    const even = logDistribution(betaEstimate("buds", 0.5, 1, 1), 0.2);
    const [last, before, third] = list(even).reverse();
    expect(even.first + 0.2 * (even.masses.length - 1)).toBeCloseTo(0, 12);
    expect(last).toBeCloseTo(1 - Math.exp(-0.1), 12);
    expect(before).toBeCloseTo(Math.exp(-0.1) - Math.exp(-0.3), 12);
    expect(third).toBeCloseTo(Math.exp(-0.3) - Math.exp(-0.5), 12);
    expect(even.first).toBeLessThan(Math.log(1e-6));
  });

  test.each([
    ["longer first", [0.25, 0.5, 0.25], [0.5, 0.5]],
    ["longer second", [0.5, 0.5], [0.25, 0.5, 0.25]],
  ])("a product, %s: the steps of a coin thrown three times", (_why, one, other) => {
    const both = product(on(1, 0.1, ...one), on(2, 0.1, ...other));
    expect(both.first).toBeCloseTo(3, 12);
    expect(both.step).toBe(0.1);
    expect(list(both)).toEqual(near(0.125, 0.375, 0.375, 0.125));
  });

  test("a product leaves out ends that weigh nothing", () => {
    const both = product(on(0, 0.1, 0, 1e-16, 0.25, 0.75, 1e-16, 0), on(1, 0.1, 1));
    expect(both.first).toBeCloseTo(1.2, 12);
    expect(list(both)).toEqual([0.25, 0.75]);
  });

  test("1, 3 and 9 with 1 added are 2, 4 and 10, each shared between its two nearest steps of threefold", () => {
    const moved = plus(on(0, Math.log(3), 0.5, 0.3, 0.2), 1);
    const four = Math.log(2) / Math.log(3);
    const ten = Math.log(5) / Math.log(3) - 1;
    expect(moved.first).toBeCloseTo(Math.log(2), 12);
    expect(list(moved)).toEqual(
      near(0.5 + 0.3 * (1 - four), 0.3 * four + 0.2 * (1 - ten), 0.2 * ten, 0).slice(0, moved.masses.length),
    );
    expect(moved.masses.length).toBeGreaterThanOrEqual(3);
  });

  test("nothing added changes nothing, and one certain figure stays certain", () => {
    const given = on(0, 0.1, 0.5, 0.5);
    expect(plus(given, 0)).toBe(given);
    expect(plus(on(Math.log(2), 0.1, 1), 3)).toEqual(on(Math.log(5), 0.1, 1));
  });

  test("the middle of three even masses is the middle one; beyond the last mass lies half a step", () => {
    const even = on(0, 0.1, 0.25, 0.5, 0.25);
    expect(quantile(even, 0.5)).toBeCloseTo(Math.exp(0.1), 12);
    expect(quantile(even, 0.99999)).toBeCloseTo(Math.exp(0.25), 12);
    expect(quantile(on(0.3, 0.1, 1), 0.99)).toBe(Math.exp(0.3));
  });

  test("within a cell the density is straight: a rise of masses 1, 2, 3 of 6 passes a quarter where the square says", () => {
    // Edges: 1/6 + (1/6) / 24 = 25/144 and 1/2 + (1/6) / 24 = 73/144, so the middle cell holds 1/3 with slope 1/6:
    // 25/144 + (x + 1/2) / 3 + (x x - 1/4) / 12 = 1/4.
    const x = -2 + Math.sqrt(4 - 12 * (25 / 144 + 1 / 6 - 1 / 48 - 1 / 4));
    expect(quantile(on(0, 0.1, 1 / 6, 1 / 3, 1 / 2), 0.25)).toBeCloseTo(Math.exp(0.1 + 0.1 * x), 12);
  });
});
