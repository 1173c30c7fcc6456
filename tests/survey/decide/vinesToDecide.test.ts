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

describe("what a row says of its cordon", () => {
  // counted in January 2026
  const HEADS_OF_A_WINTER = [...HEADERS, "Spur height (in)", "Trunk year", "Date"];
  const COUNTED = 46040;
  const full = ["left", "A", 1, 3, 9, 8, 1, 6, 1, 1, 0.5, "sound", "injured", "stays", 6, 2016, COUNTED];
  const read = (...cells: CellValue[][]) => {
    const read = readSeason([
      areaOf("Cordons", [HEADS_OF_A_WINTER, ...cells.map((rest) => row(2, ...rest))]),
      areaOf("Vines", [
        ["Block", "Row", "Vine"],
        ["North Bench", 1, 2],
      ]),
    ]);
    return vinesToDecide(read)[0];
  };
  /** The full row with other cells under some heads. */
  const but = (cells: Readonly<Record<string, CellValue>>): CellValue[] =>
    full.map((cell, at) => {
      const head = HEADS_OF_A_WINTER[at + 3];
      return head in cells ? cells[head] : cell;
    });

  test("the height of its spurs in metres, and its trunk's age in summers: 2016 to 2025 are ten", () => {
    const [candidate] = read(full).toDecide.candidates;
    expect(candidate.spurHeight).toBeCloseTo(6 * 0.0254, 12);
    expect(candidate.trunkAge).toBe(10);
  });

  test.each([
    [2026, 0],
    [2027, undefined],
    ["", undefined],
  ])("a trunk laid up in %s is of age %s", (year, age) => {
    expect(read(but({ "Trunk year": year })).toDecide.candidates[0].trunkAge).toBe(age);
  });

  test("what is blank is left out and not there as nothing, of the cordon as of its vine", () => {
    const { toDecide } = read(["left", "A", "", "", 9, 8]);
    expect(toDecide).toStrictEqual({
      candidates: [{ side: "left", cordon: "A", positions: 9, liveSpurs: 8 }],
    });
  });

  test.each<[CellValue, string]>([
    [" b ", "b"],
    [7, "7"],
    ["", "#1"],
    [null, "#1"],
  ])("a cordon named %p is called %s, one without a name by its row", (letter, name) => {
    expect(read(but({ Cordon: letter })).toDecide.candidates[0].cordon).toBe(name);
  });

  test("rows without a name are told apart", () => {
    const { candidates } = read(but({ Cordon: "" }), but({ Cordon: "" })).toDecide;
    expect(candidates.map(({ cordon }) => cordon)).toEqual(["#1", "#2"]);
  });

  test("a side that cannot be read is none", () => {
    expect(read(but({ Side: "upwards" })).toDecide.candidates[0].side).toBe("");
  });

  test("a vine to be counted again names the cell, and the wish for it is no choice of its cordon", () => {
    const vine = read(but({ "Fixed choice": "recount" }));
    expect(vine.toDecide.recount).toEqual(["Cordons Q2"]);
    expect(vine.recount.map(({ reason }) => reason)).toEqual(["marked"]);
    expect(vine.toDecide.candidates[0]).not.toHaveProperty("fixedChoice");
    expect(read(but({ "Fixed choice": "goes" })).toDecide.candidates[0].fixedChoice).toBe("goes");
  });

  test("blocks come in the order of their first row", () => {
    const found = vinesToDecide(
      season(
        ["North Bench", "Curtains", "Terrace", "Curtains", "North Bench"].map((block, at) => [
          block,
          1,
          9 - at,
          "left",
          "A",
          1,
        ]),
      ),
    );
    expect(found.map(({ block, vine }) => `${block} ${vine}`)).toEqual([
      ...["North Bench 5", "North Bench 9", "Curtains 6", "Curtains 8", "Terrace 7"],
    ]);
  });
});
