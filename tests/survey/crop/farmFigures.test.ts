import { farmFigures, type FarmFigureId } from "../../../src/survey/crop/farmFigures";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { seasonOfSheets, type Rows } from "./seasonOfSheets";

const BLOCKS: Rows = [
  ["Block", "Cultivar", "Clusters a shoot", "Budbreak"],
  ["Hill", "Marquette", 1.8, null],
  ["Dell", " marquette ", 1.6, null],
  ["Pond", "Brianna", null, null],
  ["Barn", null, null, 0.8],
];
const HEADS = [
  "Block",
  "Year",
  "Clusters a shoot",
  "Budbreak",
  "Cluster weight (kg)",
  "Cluster weight at lag phase (kg)",
];
const harvest = (...rows: Rows): Rows => [HEADS, ...rows.map((row) => HEADS.map((_, at) => row[at] ?? null))];
const figuresOf = (rows: Rows, blocks = BLOCKS) => farmFigures(seasonOfSheets({ blocks, harvest: rows }));
const figureOf = (rows: Rows, id: FarmFigureId, cultivar: string) =>
  figuresOf(rows).find(({ figure, cultivar: of }) => figure === id && of === cultivar);

describe("what the farm's harvests teach", () => {
  // One year of 2.4 against the usual 2, with 0.25 between years and 0.25 between farms: weight 1/2, sqrt(2 x 2.4) = 2.19089
  test("blocks of one cultivar are one, however it is written; their mean is the year's figure", () => {
    const rows = harvest(["Hill", 2024, 2.2], ["Dell", 2024, 2.6], ["Pond", 2024, 1.1]);
    expect(figureOf(rows, "clustersPerShoot", "Marquette")).toMatchObject({
      blocks: ["Hill", "Dell"],
      years: [{ year: 2024, value: 2.4 }].map(({ year, value }) => ({
        year,
        value: expect.closeTo(value, 12),
      })),
      usual: 2,
      now: expect.closeTo(1.7, 12),
      proposed: { value: expect.closeTo(Math.sqrt(2 * 2.4), 9), weight: 0.5, years: 1 },
      writeTo: { column: "clustersPerShoot" },
    });
    expect(figureOf(rows, "clustersPerShoot", "Brianna")).toMatchObject({ blocks: ["Pond"], now: 2 });
    expect(figuresOf(rows)).toHaveLength(2);
  });

  test("a block without a cultivar stands for itself", () => {
    expect(figureOf(harvest(["Barn", 2024, null, 0.7]), "budbreak", "Barn")).toMatchObject({
      blocks: ["Barn"],
      years: [{ year: 2024, value: 0.7 }],
      usual: 0.85,
      now: 0.8,
      writeTo: { column: "budbreak" },
    });
  });

  test("years stand in their order, oldest first, whatever the sheet's", () => {
    const rows = harvest(["Pond", 2025, 2], ["Pond", 2023, 1.5], ["Pond", 2024, 2.5]);
    expect(figureOf(rows, "clustersPerShoot", "Brianna")!.years).toEqual([
      { year: 2023, value: 1.5 },
      { year: 2024, value: 2.5 },
      { year: 2025, value: 2 },
    ]);
  });

  test.each<[string, readonly CellValue[]]>([
    ["nothing was written", ["Pond", 2024]],
    ["0 was written", ["Pond", 2024, 0, 0, 0, 0]],
    ["no year was written", ["Pond", null, 2.2]],
    ["no block was written", [null, 2024, 2.2]],
    ["the block is not in the Blocks sheet", ["Elsewhere", 2024, 2.2, 0.8, 0.1, 0.05]],
    ["the lag-phase weight is 0", ["Pond", 2024, null, null, null, 0]],
  ])("nothing where %s", (_, row) => {
    expect(figuresOf(harvest(row))).toEqual([]);
  });

  test.each(["Block", "Year"])("nothing from a sheet without %s", (head) => {
    const at = HEADS.indexOf(head);
    expect(
      figuresOf(harvest(["Pond", 2024, 2.2]).map((row) => row.filter((_, column) => column !== at))),
    ).toEqual([]);
  });

  // 0.25 / 0.1 = 2.5 against the published 2: weight 0.1^2 / (0.1^2 + 0.15^2) = 4/13 of its logarithm
  test("the multiplier is one for the farm: weight at harvest over that at lag phase, drawn towards 2", () => {
    const rows = harvest(["Hill", 2024, null, null, 0.25, 0.1], ["Pond", 2025, null, null, 0.2, 0]);
    expect(figureOf(rows, "lagMultiplier", "")).toMatchObject({
      blocks: ["Hill", "Dell", "Pond", "Barn"],
      years: [{ year: 2024, value: expect.closeTo(2.5, 12) }],
      now: 2,
      usual: 2,
      proposed: { value: expect.closeTo(2 * 1.25 ** (4 / 13), 9), weight: expect.closeTo(4 / 13, 12) },
      writeTo: { setting: "lagPhaseMultiplier" },
    });
    expect(figureOf(rows, "clusterWeight", "Marquette")).toMatchObject({
      years: [{ year: 2024, value: 0.25 }],
      writeTo: { column: "clusterWeight" },
    });
  });

  test("without a list of cultivars every block stands for itself", () => {
    const blocks = [
      ["Block", "Vines", "Budbreak"],
      ["Hill", 9, null],
      ["Dell", 9, null],
    ];
    const own = figuresOf(harvest(["Hill", 2024, 2.2], ["Dell", 2024, 2.6]), blocks);
    expect(own.map(({ cultivar }) => cultivar)).toEqual(["Hill", "Dell"]);
  });
});
