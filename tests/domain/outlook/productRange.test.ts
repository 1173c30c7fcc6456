import {
  exactly,
  fromYears,
  shareFromCount,
  shareFromYears,
  type Estimate,
} from "../../../src/domain/outlook/estimate";
import { fruitfulNodes } from "../../../src/domain/outlook/fruitfulNodes";
import { productRange, rangesAlong } from "../../../src/domain/outlook/productRange";
import { vinesAtRandom } from "../../../src/domain/outlook/vinesCounted";
import { seededRandom } from "../../../src/domain/random";
import { normalQuantile } from "../../../src/domain/statistics/normalQuantile";
import { tQuantile } from "../../../src/domain/statistics/tQuantile";
import { monteCarlo } from "./monteCarlo";

const DRAWS = 400_000;
/** Standard errors of the Monte Carlo quantile; passed by chance less than once in 15,000 comparisons. */
const ERRORS = 4;

const nodes = vinesAtRandom([38, 44, 51, 29, 40, 47, 36, 42, 33, 49], 300);
const fewVines = vinesAtRandom([38, 61, 24, 45], 300);
const canes = [8, 7, 5, 8, 6, 3, 7, 8, 4, 6].map((primaries) => ({
  nodes: 8,
  primaries,
  secondariesOnly: 0,
}));
const buds = fruitfulNodes(canes, 0.38);
const allAlive = fruitfulNodes([{ nodes: 20, primaries: 20, secondariesOnly: 0 }], 0.38);
const budbreak = shareFromYears("budbreak", 0.85, 0.06);
const fruitfulness = fromYears("clustersPerShoot", 1.9, 0.25);
const weight = fromYears("clusterWeight", 0.095, 0.2, 5);

type Case = readonly [why: string, first: Estimate[], amount: number, rest: Estimate[], confidence: number];
const CASES: readonly Case[] = [
  ["a winter outlook", [buds, budbreak], 0, [nodes, fruitfulness, weight], 0.9],
  ["with basal shoots added", [buds, budbreak], 0.3, [nodes, fruitfulness, weight], 0.9],
  ["four vines only: three degrees of freedom", [fewVines], 0, [weight], 0.9],
  ["every cut bud alive: a law with its peak at 1", [allAlive], 0, [nodes], 0.9],
  ["a few missing vines in a sample of places", [shareFromCount("missing", 57, 60)], 0, [nodes], 0.9],
  ["one source alone at 80 %", [buds], 0, [], 0.8],
  ["a winter outlook at 50 %", [buds, budbreak], 0, [nodes, fruitfulness, weight], 0.5],
  ["a winter outlook at 99 %", [buds, budbreak], 0, [nodes, fruitfulness, weight], 0.99],
  [
    "one wide source beside one very narrow one",
    [shareFromCount("buds", 99000, 100000)],
    0,
    [fruitfulness],
    0.9,
  ],
];

describe("ranges against a seeded Monte Carlo of 400,000 draws, to within its own error", () => {
  test.each(CASES)("%s", (_why, first, amount, rest, confidence) => {
    const tail = (1 - confidence) / 2;
    const { low, high } = productRange(first, amount, rest, confidence);
    const drawn = monteCarlo(first, amount, rest, [tail, 1 - tail], DRAWS, seededRandom(20260301));
    for (const [ours, { quantile, error }] of [
      [low, drawn[0]],
      [high, drawn[1]],
    ] as const)
      expect({ ours, quantile, error, agrees: Math.abs(ours - quantile) <= ERRORS * error }).toEqual({
        ours,
        quantile,
        error,
        agrees: true,
      });
  });
});

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
