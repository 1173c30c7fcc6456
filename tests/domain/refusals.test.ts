import { balancedFormula } from "../../src/domain/balancedFormula";
import { blockCrop } from "../../src/domain/blockCrop";
import { blockMean } from "../../src/domain/blockMean";
import { budInjury } from "../../src/domain/budInjury";
import { clusters } from "../../src/domain/clusters";
import { clustersToRemove } from "../../src/domain/clustersToRemove";
import { cropAfterFrost } from "../../src/domain/cropAfterFrost";
import { cropLoad } from "../../src/domain/cropLoad";
import { gapsByRow } from "../../src/domain/gapsByRow";
import { limitedNodes } from "../../src/domain/limitedNodes";
import { nodeBudget } from "../../src/domain/nodeBudget";
import { nodesAfterInjury } from "../../src/domain/nodesAfterInjury";
import { nodesByLength } from "../../src/domain/nodesByLength";
import { pruningHours } from "../../src/domain/pruningHours";
import { shoots } from "../../src/domain/shoots";
import { spurFit } from "../../src/domain/spurFit";
import { kilograms, kilogramsPerHectare, metres, perMetre, vinesPerHectare } from "../../src/domain/units";
import { vineCrop } from "../../src/domain/vineCrop";
import { vineDensity } from "../../src/domain/vineDensity";
import { vinesToCount } from "../../src/domain/vinesToCount";

const formula = balancedFormula("30+10");
const cordon = { block: "A", row: 3, vine: 7, positions: 8, liveSpurs: 9 };

type Case = readonly [why: string, code: string, argument: string, call: () => unknown];

const INVALID: readonly Case[] = [
  ["a formula with one number", "formulaNotBalanced", "formula", () => balancedFormula("30")],
  ["an empty formula", "formulaNotBalanced", "formula", () => balancedFormula("")],
  [
    "a formula with nothing for the first pound",
    "formulaNotBalanced",
    "formula",
    () => balancedFormula("0+10"),
  ],
  ["a formula beyond any vine", "formulaNotBalanced", "formula", () => balancedFormula("201+10")],
  ["a further pound beyond any vine", "formulaNotBalanced", "formula", () => balancedFormula("30+201")],
  ["a formula with a word behind it", "formulaNotBalanced", "formula", () => balancedFormula("30+10 nodes")],
  ["half nodes in a formula", "formulaNotBalanced", "formula", () => balancedFormula("30.5+10")],
  ["prunings below nothing", "outside", "prunings", () => nodeBudget(kilograms(-1), formula)],
  ["prunings not a number", "outside", "prunings", () => nodeBudget(kilograms(NaN), formula)],
  ["prunings of a wagon", "outside", "prunings", () => nodeBudget(kilograms(21), formula)],
  ["least above most", "leastAboveMost", "least", () => limitedNodes(40, 60, 20)],
  ["a negative limit", "outside", "most", () => limitedNodes(40, 0, -1)],
  ["negative length", "outside", "length", () => nodesByLength(metres(-1), perMetre(15))],
  ["density per foot given per inch", "outside", "density", () => nodesByLength(metres(1), perMetre(196))],
  ["spacing of nothing", "outside", "spacing", () => spurFit(40, 2, metres(1), metres(0))],
  ["no nodes on a spur", "outside", "nodes_per_spur", () => spurFit(40, 0, metres(1), metres(0.1))],
  ["half a cordon", "notWhole", "cordons", () => spurFit(40, 2, metres(1), metres(0.1), 1.5)],
  ["budbreak in per cent", "outside", "budbreak", () => shoots(20, 2, 85)],
  ["negative basal shoots", "outside", "basal_shoots", () => shoots(20, 2, 0.85, -1)],
  ["seven clusters on a shoot", "outside", "clusters_per_shoot", () => clusters(20, 7)],
  ["a cluster of 100 kg, grams mistaken", "outside", "cluster_weight", () => vineCrop(50, kilograms(100))],
  ["rows on top of each other", "outside", "row_spacing", () => vineDensity(metres(0), metres(2))],
  ["vines 30 m apart", "outside", "vine_spacing", () => vineDensity(metres(3), metres(30))],
  [
    "missing share above all",
    "outside",
    "missing_share",
    () => blockCrop(kilograms(5), vinesPerHectare(2000), 1.2),
  ],
  ["negative crop", "outside", "crop", () => cropLoad(kilograms(-1), kilograms(1))],
  [
    "a block without vines",
    "outside",
    "density",
    () => clustersToRemove(kilogramsPerHectare(9000), vinesPerHectare(0), kilograms(0.1), 50),
  ],
  ["no crew", "outside", "crew", () => pruningHours(100, 2, 0)],
  ["a day of 25 hours", "outside", "hours_a_day", () => pruningHours(100, 2, 4, 25)],
  ["more dead than cut", "outside", "dead", () => budInjury(11, 10, 0.95)],
  ["half a bud", "notWhole", "dead", () => budInjury(1.5, 10, 0.95)],
  ["confidence in per cent", "outside", "confidence", () => budInjury(1, 10, 95)],
  ["a count that is not a number", "outside", "counts", () => blockMean([1, NaN, 3], Infinity, 0.95)],
  ["a block smaller than the sample", "outside", "vines", () => blockMean([1, 2, 3], 2, 0.95)],
  ["a margin of nothing", "outside", "margin", () => vinesToCount(0.3, 0, Infinity, 0.95)],
  ["a negative spread", "outside", "cv", () => vinesToCount(-0.3, 0.1, Infinity, 0.95)],
  ["a rule that nobody published", "unknownInjuryRule", "rule", () => nodesAfterInjury(40, 0.1, "half")],
  [
    "more spurs than positions, with its place",
    "spursAbovePositions",
    "live_spurs",
    () => gapsByRow([cordon]),
  ],
  ["half a position", "notWhole", "positions", () => gapsByRow([{ ...cordon, positions: 9.5 }])],
  [
    "a negative gap",
    "outside",
    "longest_gap",
    () => gapsByRow([{ ...cordon, liveSpurs: 4, longestGap: -1 }]),
  ],
];

const NOT_AVAILABLE: readonly Case[] = [
  ["no node counted after a frost", "noBudsCut", "primaries", () => cropAfterFrost(0, 0, 0, 0, 0.35)],
  ["an injury beyond a rule", "msuAbove50", "dead_share", () => nodesAfterInjury(40, 0.6, "MSU 2002")],
  ["below a pound no source says", "belowOnePound", "prunings", () => nodeBudget(kilograms(0.45), formula)],
  ["no prunings at all", "belowOnePound", "prunings", () => nodeBudget(kilograms(0), formula)],
  ["crop over nothing", "noPrunings", "prunings", () => cropLoad(kilograms(5), kilograms(0))],
  ["no bud cut", "noBudsCut", "cut", () => budInjury(0, 0, 0.95)],
  ["one vine has no spread", "tooFewVines", "counts", () => blockMean([40], Infinity, 0.95)],
  ["no vine at all", "tooFewVines", "counts", () => blockMean([], Infinity, 0.95)],
];

describe.each([
  ["invalid", INVALID],
  ["notAvailable", NOT_AVAILABLE],
] as const)("%s", (kind, cases) => {
  test.each(cases)("%s: %s on %s", (_why, code, argument, call) => {
    expect(call).toThrow(
      expect.objectContaining({ kind, code, facts: expect.objectContaining({ argument }) }),
    );
  });
});

test("a refusal of a row names where it stands", () => {
  expect(() => gapsByRow([cordon])).toThrow(
    expect.objectContaining({
      facts: expect.objectContaining({ block: "A", row: 3, vine: 7, value: 9, most: 8 }),
    }),
  );
});
