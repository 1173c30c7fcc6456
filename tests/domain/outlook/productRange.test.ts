import {
  fromYears,
  shareFromCount,
  shareFromYears,
  type Estimate,
} from "../../../src/domain/outlook/estimate";
import { fruitfulNodes } from "../../../src/domain/outlook/fruitfulNodes";
import { productRange } from "../../../src/domain/outlook/productRange";
import { vinesAtRandom } from "../../../src/domain/outlook/vinesCounted";
import { seededRandom } from "../../../src/domain/random";
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
