import type { CellValue } from "../../../src/survey/sheets/cell";
import { CORDON, found, rowsFound, sheetOf, upTo, VINE, type Cells } from "./found";

const BLOCK: Cells = { Block: "North Bench", Rows: 1, "Vine spacing (ft)": 8, Cultivar: "Invented" };
const { "Length (ft)": _, ...NO_LENGTH } = CORDON;

describe("a cordon against its half of a spacing of 8 ft", () => {
  const sheets = (rows: readonly Cells[], block: Cells = BLOCK, register: readonly Cells[] = []) => [
    sheetOf("Blocks", {}, [block]),
    sheetOf("Vines", VINE, register),
    sheetOf(
      "Cordons",
      CORDON,
      rows.map((row, at) => ({ Vine: 10 * (at + 1), ...row })),
    ),
  ];
  const length = (feet: CellValue, more: Cells = {}): Cells => ({
    "Length (ft)": feet,
    Positions: null,
    ...more,
  });
  /** Of vine 10 beside a missing one, what is said of its length. */
  const said = (feet: CellValue, more: Cells = {}, register: readonly Cells[] = []) =>
    ["cordonTooLong", "cordonIntoGap", "cordonTooShort"].filter(
      (code) => rowsFound(code, sheets([length(feet, more)], BLOCK, register)).length > 0,
    );

  // 1.35 x 4 = 5.4 and 0.4 x 4 = 1.6 ft.
  test.each<[CellValue, string[]]>([
    [5.3, []],
    [5.5, ["cordonTooLong"]],
    [1.7, []],
    [1.5, ["cordonTooShort"]],
    [null, []],
    // 6 m, the most that a cordon has, are 19.69 ft.
    [19.6, ["cordonTooLong"]],
    [19.8, []],
  ])("%p ft: %j", (feet, expected) => {
    expect(said(feet)).toEqual(expected);
    expect(said(feet, { Vine: "?" })).toEqual(expected);
  });

  // Three spaces are 12 ft; 1.35 times those are 16.2.
  test("goes into the gap beside it as far as three spaces reach", () => {
    for (const neighbour of [9, 11]) {
      const missing: Cells[] = [{ Vine: 10 }, { Vine: neighbour, Status: "missing" }];
      expect(said(5.5, {}, missing)).toEqual(["cordonIntoGap"]);
      expect(said(16, {}, missing)).toEqual(["cordonIntoGap"]);
      expect(said(16.4, {}, missing)).toEqual(["cordonTooLong"]);
      expect(said(5.3, {}, missing)).toEqual([]);
    }
    expect(said(5.5, {}, [{ Vine: 10 }, { Vine: 9 }, { Vine: 11 }])).toEqual(["cordonTooLong"]);
  });

  test.each<[string, Cells, Cells, string[]]>([
    ["on a young vine", {}, { Status: "young" }, []],
    ["that is injured", { Condition: "injured" }, {}, []],
    ["that is sound", { Condition: "sound" }, {}, ["cordonTooShort"]],
  ])("may be short %s", (_, row, vine, expected) => {
    expect(said(1.5, row, [{ Vine: 10, ...vine }])).toEqual(expected);
  });

  test("is not judged where the block gives no spacing", () => {
    const { "Vine spacing (ft)": _, ...rest } = BLOCK;
    const rows = [length(6.5), length(1)];
    for (const code of ["cordonTooLong", "cordonTooShort"])
      expect(rowsFound(code, sheets(rows, { ...rest, "Row spacing (ft)": 9 }))).toEqual([]);
  });

  // 1.6 x 4 = 6.4 ft; of ten lengths the upper one in the middle.
  test.each<[number, number, number[], number]>([
    [10, 6.5, [2], 0],
    [9, 6.5, [], 9],
    [10, 6.3, [], 10],
    [10, 1.5, [2], 0],
    [10, 1.7, [], 0],
  ])("of %p cordons of %p ft is told once with the block, or each by itself", (count, feet, block, each) => {
    const rows = [...upTo(count).map(() => length(feet)), length(null)];
    expect(rowsFound("blockUnlikeSpacing", sheets(rows))).toEqual(block);
    expect(["cordonTooLong", "cordonTooShort"].flatMap((code) => rowsFound(code, sheets(rows)))).toHaveLength(
      each,
    );
  });
});

describe("a value unlike its block", () => {
  const clusters = (odd: number) =>
    rowsFound("unlikeItsBlock", [
      sheetOf(
        "Vines",
        VINE,
        [...upTo(14).map(() => 30), odd].map((Clusters, at) => ({ Vine: at + 1, Clusters })),
      ),
    ]);

  // Four spreads of 0.32 in the logarithm are 1.28: 30 x exp(1.28) = 107.9, 30 / exp(1.28) = 8.3.
  test.each([
    [9, []],
    [8, [16]],
    [107, []],
    [109, [16]],
    [1000, [16]],
    [1001, []],
    [-5, []],
  ])("%p clusters among vines of 30, of at most 1000", (odd, expected) => {
    expect(clusters(odd)).toEqual(expected);
  });

  test("is asked about though the block's spacing is known, but for lengths, which the spacing judges", () => {
    const rows = [...upTo(14), 99].map((_, at) => ({
      Vine: at + 1,
      "Diameter (in)": at === 14 ? 2.9 : 0.9,
      "Length (ft)": at === 13 ? 5 : 3,
    }));
    const told = (block: Cells) =>
      found(
        "unlikeItsBlock",
        [sheetOf("Cordons", CORDON, rows), sheetOf("Blocks", {}, [block])],
        ({ column, facts }) => [column, facts.value, facts.median, facts.values],
      );
    expect(told(BLOCK)).toEqual([["Diameter (in)", 2.9, 0.9, 15]]);
    const { "Vine spacing (ft)": _, ...rest } = BLOCK;
    expect(told({ ...rest, "Row spacing (ft)": 9 })).toEqual([
      ["Length (ft)", 5, 3, 15],
      ["Diameter (in)", 2.9, 0.9, 15],
    ]);
  });
});

describe("a length written in another unit", () => {
  const slips = (inches: readonly CellValue[]) =>
    found(
      "unitSlip",
      [
        sheetOf(
          "Cordons",
          NO_LENGTH,
          inches.map((length, at) => ({ Vine: at + 1, "Length (in)": length })),
        ),
      ],
      ({ row, facts }) => [row, facts.meant, facts.rows],
    );
  const usual = upTo(15).map(() => 36);

  // 91 cm are 36 in, not far enough apart for a single value to tell.
  test("that is near is known by five rows in a run", () => {
    expect(slips([...usual, ...upTo(5).map(() => 91), 36])).toEqual([[17, "cm", 5]]);
    expect(slips([...usual, ...upTo(4).map(() => 91), 36])).toEqual([]);
    expect(slips([...usual, 91, 91, 36, 91, 91, 91, 36])).toEqual([]);
  });

  // 4 ft are 48 in. Lengths of 48 to 72 in have a spread of 12 x 1.48 = 17.8, four of which reach from 60 below 4.
  test("that is far is known by one value, if it lies outside what is usual", () => {
    expect(slips([...upTo(11).map(() => 48), 4])).toEqual([[13, "ft", 1]]);
    expect(slips([48, 48, 48, 48, 60, 60, 60, 72, 72, 72, 72, 4])).toEqual([]);
  });
});

describe("places that the register does not have", () => {
  const REGISTER = [
    sheetOf("Blocks", {}, [BLOCK, { ...BLOCK, Block: "Creek Side", Rows: 1 }]),
    sheetOf("Vines", VINE, [{ Vine: 1 }, { Vine: 2, Status: "missing" }]),
  ];
  const told = (code: string, ...rows: Cells[]) =>
    rowsFound(code, [...REGISTER, sheetOf("Cordons", CORDON, rows)]);

  test("are a row behind the block's last, told once a vine and for each that has no number", () => {
    expect(told("unknownRow", { Row: 1 }, { Row: 2 })).toEqual([3]);
    expect(told("unknownRow", { Row: 2 }, { Row: 2, Cordon: "B" }, { Row: 2, Vine: 2 })).toEqual([2, 4]);
    expect(told("unknownRow", { Row: 2, Vine: "?" }, { Row: 2, Vine: "?" })).toEqual([2, 3]);
  });

  test("are a vine, told once for its rows, unless its number cannot be read or its block has no register", () => {
    expect(told("unknownVine", { Vine: 1 }, { Vine: 5 }, { Vine: 5, Cordon: "B" }, { Vine: "?" })).toEqual([
      3,
    ]);
    expect(told("unknownVine", { Block: "Creek Side", Vine: 5 })).toEqual([]);
  });

  test("are a block, told once for a stretch of rows", () => {
    const odd = { Block: "Nowhere" };
    expect(told("unknownBlock", odd, { ...odd, Vine: 2 }, {}, { ...odd, Vine: 3 })).toEqual([2, 5]);
  });

  test("hold a cordon on a missing vine, where buds may have been cut", () => {
    expect(told("cordonOnMissingVine", { Vine: 1 }, { Vine: 2 }, { Vine: 2, Cordon: "B" })).toEqual([3]);
    const cane: Cells = {
      Block: "North Bench",
      Row: 1,
      Vine: 2,
      Cane: "1",
      "Nodes cut": 8,
      "Primaries alive": 8,
    };
    expect(rowsFound("cordonOnMissingVine", [...REGISTER, sheetOf("Bud cuts", cane, [{}])])).toEqual([]);
  });
});
