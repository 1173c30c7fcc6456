import { decideSeason } from "../../../../src/survey/decide/decideSeason";
import { plannedNodes, spurLimits, spursOn } from "../../../../src/survey/decide/plan/plannedNodes";
import { readSeason } from "../../../../src/survey/reading/readSeason";
import type { CellValue } from "../../../../src/survey/sheets/cell";
import { areaOf } from "../../area";
import { cordonHeads } from "../../cordonHeads";

type Rows = readonly (readonly CellValue[])[];

const BLOCK_HEADS = ["Block", "Node rule", "Nodes a spur", "Basal shoots", "Basal worth"];
const seasonOf = (block: readonly CellValue[], cordons: Rows, settings: Rows = []) =>
  readSeason([
    areaOf("Blocks", [BLOCK_HEADS, block]),
    areaOf("Cordons", cordons),
    areaOf("Settings", [["Setting", "Value"], ...settings]),
  ]);
const HEADS = [...cordonHeads("in"), "Fixed choice"];
const cordon = (side: string, letter: string, spurs: CellValue, choice = "stays") => [
  ...["Low", 1, 1, side, letter, side === "left" ? 1 : 2, 40, 20, spurs, choice],
];
const LEAST = "Plan: least nodes a spur";
const MOST = "Plan: most nodes a spur";

describe("the nodes of a vine's card", () => {
  const planOf = (block: readonly CellValue[], cordons: Rows, settings?: Rows) => {
    const season = seasonOf(block, [HEADS, ...cordons], settings);
    const [vine] = decideSeason(season);
    return { spurs: spursOn(vine), plan: plannedNodes(season)(vine) };
  };

  test("spurs are those of the cordons that stay, each on its side though both carry one letter", () => {
    // 6 + 9 spurs; 40 nodes over 15: ten of three and five of two
    expect(planOf(["Low", 40], [cordon("left", "A", 6), cordon("right", "A", 9)])).toEqual({
      spurs: 15,
      plan: {
        spurs: [
          { spurs: 10, nodes: 3 },
          { spurs: 5, nodes: 2 },
        ],
        nodes: 40,
        short: 0,
        surplusSpurs: 0,
      },
    });
  });

  test("a vine that nothing is decided on has none", () => {
    const { plan } = planOf(["Low", 40], [cordon("left", "A", "many", ""), cordon("right", "B", 9, "")]);
    expect(plan).toBeUndefined();
  });

  test("without a column of live spurs a cordon that is fixed to stay has no spurs to spread nodes over", () => {
    const without = HEADS.indexOf("Live spurs");
    const left = cordon("left", "A", null).filter((_, at) => at !== without);
    const right = cordon("right", "B", null).filter((_, at) => at !== without);
    const season = seasonOf(["Low", 40], [HEADS.filter((_, at) => at !== without), left, right]);
    const [vine] = decideSeason(season);
    expect(vine.plan.keeps).toHaveLength(2);
    expect(spursOn(vine)).toBeUndefined();
    expect(plannedNodes(season)(vine)).toBeUndefined();
  });

  test("basal buds that bear make up for nodes that are short, on the spurs that are left and in whole nodes", () => {
    // 8 + 8 spurs of one node for 20 nodes are 4 short; 16 x 0.25 x 0.5 is 2 nodes at the base
    const pair = [cordon("left", "A", 8), cordon("right", "B", 8)];
    expect(planOf(["Low", 20, 1, 0.25, 0.5], pair).plan).toMatchObject({ nodes: 16, short: 2 });
    expect(planOf(["Low", 20, 1, "", ""], pair).plan).toMatchObject({ nodes: 16, short: 4 });
    // 16 x 1 x 1 is 16 and no more than the 4 that are short
    expect(planOf(["Low", 20, 1, 1, 1], pair).plan).toMatchObject({ nodes: 16, short: 0 });
    // 40 nodes on spurs of three exactly: 13 of 27 spurs are left with 39; 13 x 0.05 is no whole node, 27 x 0.05 would be
    const many = [cordon("left", "A", 13), cordon("right", "B", 14)];
    expect(planOf(["Low", 40, 3, 0.05, 1], many, [[LEAST, 3]]).plan).toMatchObject({
      nodes: 39,
      short: 1,
      surplusSpurs: 14,
    });
  });
});

describe("fewest and most nodes on a spur", () => {
  const limits = (block: readonly CellValue[], settings: Rows) => {
    const season = seasonOf(block, [HEADS], settings);
    return spurLimits(season)(season.words.codeOf("Low"));
  };

  test.each<[string, CellValue[], Rows, { least: number; most: number; bearingBasal: number }]>([
    [
      "those of Settings",
      ["Low", 40, "", 1, 1],
      [
        [LEAST, 2],
        [MOST, 4],
      ],
      { least: 2, most: 4, bearingBasal: 0 },
    ],
    [
      "the least where the most of Settings is below it",
      ["Low", 40],
      [
        [LEAST, 5],
        [MOST, 4],
      ],
      { least: 5, most: 5, bearingBasal: 0 },
    ],
    [
      "the block's own as the most",
      ["Low", 40, 5, 0.5, 0.8],
      [[LEAST, 2]],
      { least: 2, most: 5, bearingBasal: 0.4 },
    ],
    [
      "the block's own as the least too where it is below that of Settings",
      ["Low", 40, 1, 0, 0],
      [[LEAST, 2]],
      { least: 1, most: 1, bearingBasal: 0 },
    ],
    [
      "in whole nodes",
      ["Low", 40],
      [
        [LEAST, 1.6],
        [MOST, 3.4],
      ],
      { least: 2, most: 3, bearingBasal: 0 },
    ],
  ])("%s", (_what, block, settings, expected) => {
    expect(limits(block, settings)).toEqual(expected);
  });
});
