import { rowChecker } from "../../../src/survey/checks/checkRow";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { CORDON, found, rowsFound, sheetOf, VINE, type Cells } from "./found";

describe("the same in two rows", () => {
  const { Status: _, ...place } = VINE;
  const BLOCK: Cells = { Rows: 1, "Vine spacing (ft)": 8 };
  const HARVEST: Cells = { Block: "N", Year: 2024, "Picked (lb)": 900, "Vines picked": 100 };

  test.each<[string, string, Cells, Cells[], number[]]>([
    ["a vine", "sameVineTwice", VINE, [{}, { Vine: 2 }, {}], [4]],
    ["vines whose numbers cannot be read", "sameVineTwice", VINE, [{ Vine: "?" }, { Vine: "?" }], []],
    ["a block", "sameBlockTwice", BLOCK, [{ Block: "N" }, { Block: "O" }, { Block: "n" }], [4]],
    [
      "blocks without a name",
      "sameBlockTwice",
      BLOCK,
      [{ Block: null }, { Block: null }, { Block: "N" }],
      [],
    ],
    ["a harvest", "sameHarvestTwice", HARVEST, [{}, { Year: 2023 }, { Block: "O" }, {}], [5]],
    ["harvests without a year", "sameHarvestTwice", HARVEST, [{ Year: null }, { Year: null }, {}], []],
    ["harvests of the year 0", "sameHarvestTwice", HARVEST, [{ Year: 0 }, { Year: 0 }, {}], []],
    ["harvests without a block", "sameHarvestTwice", HARVEST, [{ Block: null }, { Block: null }], []],
  ])("%s", (_, code, usual, rows, expected) => {
    const name = { sameVineTwice: "Vines", sameBlockTwice: "Blocks", sameHarvestTwice: "Harvest" }[code]!;
    expect(rowsFound(code, [sheetOf(name, usual, rows)])).toEqual(expected);
  });

  test("is asked about in harvests, which may be two pickings that are added up, and wrong elsewhere", () => {
    const severityOf = (code: string, name: string, usual: Cells) =>
      found(code, [sheetOf(name, usual, [{}, {}])], ({ severity }) => severity);
    expect(severityOf("sameHarvestTwice", "Harvest", HARVEST)).toEqual(["ask"]);
    expect(severityOf("sameVineTwice", "Vines", VINE)).toEqual(["wrong"]);
  });

  test("may be two weights of one vine, in a list that is no register", () => {
    expect(
      rowsFound("sameVineTwice", [sheetOf("Weights", { ...place, "Prunings (lb)": 2 }, [{}, {}])]),
    ).toEqual([]);
  });

  test("is told in the later row, with the sheet of the first where that is another", () => {
    const areas = [
      sheetOf("Cordons", CORDON, [{ Vine: 1 }, { Vine: 1 }, { Vine: 2 }]),
      sheetOf("More", CORDON, [{ Vine: 5 }, { Vine: 6 }, { Vine: 2, "Live spurs": 6 }]),
    ];
    expect(
      found("sameCordonTwice", areas, ({ sheet, row, facts }) => [
        sheet,
        row,
        facts.otherSheet,
        facts.otherRow,
        facts.sameNumbers,
      ]),
    ).toEqual([
      ["Cordons", 3, "", 2, true],
      ["More", 4, "Cordons", 4, false],
    ]);
  });

  test("is told while a row is typed, of the same row in another sheet too", () => {
    const season = readSeason([
      sheetOf("Cordons", CORDON, [{ Vine: 1 }, { Vine: 2 }]),
      sheetOf("More", CORDON, [{ Vine: 5 }, { Vine: 6 }]),
    ]);
    const typed = (sheet: string, row: number, Vine: number) =>
      rowChecker(season)({ sheet, row, firstColumn: 1, values: Object.values({ ...CORDON, Vine }) }).map(
        ({ code }) => code,
      );
    expect(typed("More", 3, 2)).toEqual(["sameCordonTwice"]);
    expect(typed("More", 3, 6)).toEqual([]);
    expect(typed("Cordons", 3, 2)).toEqual([]);
  });
});

describe("decisions of a person", () => {
  const decided = (code: string, ...rows: Cells[]) =>
    found(
      code,
      [
        sheetOf(
          "Cordons",
          CORDON,
          rows.map((row, at) => ({ Cordon: "ABCD"[at], ...row })),
        ),
      ],
      ({ row, facts }) => [row, facts.otherRow ?? facts.spurs],
    );
  const STAYS = { "Fixed choice": "stays" };

  test("keep one cordon on a side", () => {
    expect(decided("twoStayOnSide", STAYS, { ...STAYS, Side: "right" }, STAYS)).toEqual([[4, 2]]);
    expect(decided("twoStayOnSide", { "Fixed choice": "goes" }, STAYS)).toEqual([]);
    expect(decided("twoStayOnSide", { ...STAYS, Side: null }, { ...STAYS, Side: null })).toEqual([]);
  });

  test("keep no dead cordon: dead itself, on a dead trunk, or without a live spur", () => {
    expect(decided("deadCordonStays", { ...STAYS, Condition: "dead" })).toEqual([[2, 7]]);
    expect(decided("deadCordonStays", { ...STAYS, "Trunk condition": "dead" })).toEqual([[2, 7]]);
    expect(decided("deadCordonStays", { ...STAYS, "Live spurs": 0 })).toEqual([[2, 0]]);
    expect(decided("deadCordonStays", { ...STAYS, Condition: "sound", "Live spurs": null })).toEqual([]);
    expect(decided("deadCordonStays", { "Fixed choice": "goes", Condition: "dead" })).toEqual([]);
  });
});

describe("cells that are struck out or commented", () => {
  const marked = (
    marks: readonly { row: number; column: number; struck?: boolean; note?: string }[],
    row: Cells = {},
  ) => {
    const sheet = sheetOf("Cordons", { ...CORDON, Date: "2026-01-12" }, [row], { marked: marks });
    return (code: string) => found(code, [sheet], ({ row, column, facts }) => [row, column, facts.said]);
  };
  const struck = (...columns: number[]) => columns.map((column) => ({ row: 2, column, struck: true }));

  // Ten cells are filled.
  test("are named one by one up to half of their row, beyond that with the row", () => {
    expect(marked(struck(1, 2, 3, 4, 5))("struckOut")).toHaveLength(5);
    expect(marked(struck(1, 2, 3, 4, 5, 6))("struckOut")).toEqual([[2, "", undefined]]);
    expect(marked(struck(9, 10), { "Live spurs": null })("struckOut")).toEqual([[2, "Date", undefined]]);
    expect(marked([{ row: 9, column: 1, struck: true }])("struckOut")).toEqual([]);
  });

  test.each<[string, number, string[]]>([
    ["9 I think", 9, ["9 I think"]],
    ["7 I think", 9, []],
    ["Crew 3: 7 counted", 9, []],
    ["Crew 7: 9 counted", 9, ["Crew 7: 9 counted"]],
    ["seen 12/1/2026 at 10:30", 9, []],
    ["the 13th", 10, []],
    ["13 days late", 10, []],
    [`9 ${"x".repeat(90)}`, 9, [`9 ${"x".repeat(78)}`]],
  ])("that say another number are told, without who said it: %s", (note, column, expected) => {
    expect(marked([{ row: 2, column, note }])("otherNumberInComment").map(([, , said]) => said)).toEqual(
      expected,
    );
  });
});
