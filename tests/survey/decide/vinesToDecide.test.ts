import { decideSeason } from "../../../src/survey/decide/decideSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { vinesToDecide } from "../../../src/survey/decide/vinesToDecide";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";

const HEADERS = [
  ...CORDON_HEADS,
  "Longest gap",
  "Spurs down",
  "Spurs level",
  "Spurs up",
  "Diameter (in)",
  "Condition",
  "Trunk condition",
  "Fixed choice",
];
const blocks = areaOf("Blocks", [
  ["Block", "Training system", "Vine spacing (ft)"],
  ["North Bench", "high wire", 7],
  ["Curtains", "divided canopy", 7],
]);
const vines = areaOf("Vines", [
  ["Block", "Row", "Vine", "Status", "Live trunks"],
  ["North Bench", 1, 2, "bearing", 2],
]);
const season = (rows: readonly (readonly CellValue[])[], ...more: Parameters<typeof readSeason>[0]) =>
  readSeason([areaOf("Cordons", [HEADERS, ...rows]), blocks, vines, ...more]);

const row = (vine: number, ...rest: readonly CellValue[]): CellValue[] => ["North Bench", 1, vine, ...rest];

describe("vines of the survey", () => {
  test("a row becomes a candidate in metres, with what the other sheets say of its vine", () => {
    const [vine] = vinesToDecide(
      season([row(2, "left", "A", 1, 3, 9, 8, 1, 6, 1, 1, 0.5, "sound", "injured", "stays")]),
    );
    expect(vine).toMatchObject({ block: "North Bench", row: 1, vine: 2, recount: [] });
    expect(vine.toDecide).toMatchObject({ training: "highWire", status: "bearing", liveTrunks: 2 });
    // half of 7 ft less 4 in between neighbours: 40 in
    expect(vine.toDecide.sideLength).toBeCloseTo(40 * 0.0254, 10);
    expect(vine.toDecide.candidates).toHaveLength(1);
    const { length, diameter, ...counts } = vine.toDecide.candidates[0];
    expect(length).toBeCloseTo(0.9144, 10);
    expect(diameter).toBeCloseTo(0.0127, 10);
    expect(counts).toEqual({
      side: "left",
      cordon: "A",
      trunk: 1,
      positions: 9,
      liveSpurs: 8,
      longestGap: 1,
      spursDown: 6,
      spursLevel: 1,
      spursUp: 1,
      condition: "sound",
      trunkCondition: "injured",
      fixedChoice: "stays",
    });
  });

  test("blank, unreadable and impossible cells are left out, never read as zero", () => {
    const [vine] = vinesToDecide(
      season([row(3, "left", "A", null, "long", null, 7.5, -1, "", null, null, null, "so-so", null, null)]),
    );
    expect(vine.toDecide.candidates).toEqual([{ side: "left", cordon: "A" }]);
    expect(vine.toDecide.status).toBeUndefined();
    expect(vine.toDecide.liveTrunks).toBeUndefined();
  });

  test("counts that cannot be true together are left out, and the vine is to be recounted where they decide", () => {
    const [more, pointing, gap] = vinesToDecide(
      season([
        row(1, "left", "A", 1, 3, 9, 12, 1, null, null, null, null, null, null, null),
        row(2, "left", "A", 1, 3, 9, 7, 1, 5, 3, 1, null, null, null, null),
        row(3, "left", "A", 1, 3, 9, 7, 4, 5, 1, 1, null, null, null, null),
      ]),
    );
    const found = ({ recount }: typeof more) =>
      recount.map(({ sheetRow, column, reason }) => `${sheetRow} ${column} ${reason}`);
    expect(found(more)).toEqual(["2 positions contradicted"]);
    expect(more.toDecide.candidates[0]).not.toHaveProperty("liveSpurs");
    expect(found(pointing)).toEqual(["3 liveSpurs contradicted"]);
    expect(pointing.toDecide.candidates[0]).not.toHaveProperty("spursDown");
    expect(found(gap)).toEqual([]);
    expect(gap.toDecide.candidates[0]).toMatchObject({ positions: 9, liveSpurs: 7 });
    expect(gap.toDecide.candidates[0]).not.toHaveProperty("longestGap");
  });

  test("vines come in walk order with all their rows, however the sheet is sorted", () => {
    const found = vinesToDecide(
      season([
        ["North Bench", 2, 1, "left", "A", 1],
        row(3, "right", "B", 2),
        row(1, "left", "A", 1),
        ["Curtains", 1, 1, "left", "A", 1],
        row(3, "left", "A", 1),
      ]),
    );
    expect(found.map(({ block, row: at, vine, rows }) => [block, at, vine, rows.length])).toEqual([
      ["North Bench", 1, 1, 1],
      ["North Bench", 1, 3, 2],
      ["North Bench", 2, 1, 1],
      ["Curtains", 1, 1, 1],
    ]);
    expect(found[1].rows.map(({ table, index }) => table.sheetRow(index))).toEqual([3, 6]);
    expect(found[3].toDecide).toMatchObject({ training: "divided" });
    expect(found[3].toDecide.sideLength).toBeUndefined();
  });

  test("the farm may say that an empty condition means sound", () => {
    const settings = areaOf("Settings", [
      ["Setting", "Value"],
      ["Blank condition", "sound"],
    ]);
    const rows = [row(1, "left", "A", 1, 3, 9, 8)];
    expect(vinesToDecide(season(rows))[0].toDecide.candidates[0].condition).toBeUndefined();
    expect(vinesToDecide(season(rows, settings))[0].toDecide.candidates[0].condition).toBe("sound");
  });

  test("the Settings sheet's margin turns a close call into a decision", () => {
    const rows = [
      row(1, "left", "A", 1, 3, 10, 8, 1),
      row(1, "left", "B", 1, 3, 10, 9, 1),
      row(1, "right", "C", 2, 3, 10, 9, 1),
    ];
    const verdicts = (margin: number) => {
      const settings = areaOf("Settings", [
        ["Setting", "Value"],
        ["Close call", margin],
      ]);
      return [...decideSeason(season(rows, settings))].flatMap(({ decision }) =>
        decision.cordons.map(({ verdict }) => verdict),
      );
    };
    expect(verdicts(0.1)).toEqual(["ask", "ask", "stays"]);
    expect(verdicts(0.01)).toEqual(["goes", "stays", "stays"]);
  });
});
