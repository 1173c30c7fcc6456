import {
  readWinterCells,
  winterCells,
  winterHeadRow,
  winterRows,
  withWinter,
  type WinterRow,
} from "../../../src/survey/season/winterRows";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { CORDON_HEADS } from "../cordonHeads";
import { seasonOfSheets } from "../crop/seasonOfSheets";

const ROW: WinterRow = {
  block: "Hill",
  row: 2,
  year: 2026,
  vines: 10,
  cordons: 20,
  positions: 200,
  liveSpurs: 150,
  gaps: 50,
  longestGap: 3,
  liveTrunks: 18,
};

test("what a row of vines keeps of a winter are the sums over its cordons that stay", () => {
  const cordon = (
    block: string,
    row: number,
    vine: number,
    side: string,
    letter: string,
    ...counts: CellValue[]
  ) => [block, row, vine, side, letter, 1, 3, ...counts, 46037];
  const season = seasonOfSheets({
    cordons: [
      [...CORDON_HEADS, "Longest gap", "Fixed choice", "Date"],
      cordon("Hill", 2, 1, "left", "A", 9, 9, 0, "stays"),
      cordon("Dell", 1, 1, "left", "A", 9, 4, 3, "stays"),
      cordon("Hill", 1, 1, "left", "A", 9, 6, 2, "stays"),
      cordon("Hill", 1, 1, "right", "B", 9, 8, 1, "stays"),
      cordon("Hill", 1, 2, "left", "A", 10, 10, 0, "stays"),
      cordon("Hill", 1, 2, "right", "B", 10, 1, 9, "goes"),
      cordon("Hill", 1, 3, "left", "A", 10, 1, 9, null),
    ],
    vines: [
      ["Block", "Row", "Vine", "Status", "Live trunks"],
      ["Hill", 1, 1, "bearing", 2],
      ["Hill", 1, 2, "bearing", 1],
      ["Hill", 1, 3, "bearing", 5],
      ["Hill", 2, 1, "bearing", null],
    ],
  });
  expect(winterRows(season)).toEqual([
    {
      block: "Dell",
      row: 1,
      year: 2026,
      vines: 1,
      cordons: 1,
      positions: 9,
      liveSpurs: 4,
      gaps: 5,
      longestGap: 3,
      liveTrunks: 0,
    },
    {
      block: "Hill",
      row: 1,
      year: 2026,
      vines: 2,
      cordons: 3,
      positions: 28,
      liveSpurs: 24,
      gaps: 4,
      longestGap: 2,
      liveTrunks: 3,
    },
    {
      block: "Hill",
      row: 2,
      year: 2026,
      vines: 1,
      cordons: 1,
      positions: 9,
      liveSpurs: 9,
      gaps: 0,
      longestGap: 0,
      liveTrunks: 0,
    },
  ]);
});

test("rows stand by block, then by row, then by winter", () => {
  const rows = [
    { ...ROW, row: 10, year: 2025 },
    { ...ROW, block: "dell", row: 11 },
    { ...ROW, row: 2 },
    { ...ROW, row: 10, year: 2024 },
  ];
  expect(
    withWinter(rows, [{ ...ROW, block: "Dell", row: 3 }]).map(({ block, row, year }) => [block, row, year]),
  ).toEqual([
    ["Dell", 3, 2026],
    ["dell", 11, 2026],
    ["Hill", 2, 2026],
    ["Hill", 10, 2024],
    ["Hill", 10, 2025],
  ]);
});

describe("a Winters sheet read back", () => {
  const [heads, cells] = winterCells([ROW], "en");
  const withCell = (column: keyof WinterRow, value: CellValue) =>
    cells.map((cell, at) => (at === Object.keys(ROW).indexOf(column) ? value : cell));

  test("under any title, in any order of its columns, block without spaces around it", () => {
    const sheet = [["Kept since 2019"], heads, withCell("block", " Hill ")];
    expect(winterHeadRow(sheet)).toBe(1);
    expect(readWinterCells(sheet)).toEqual([ROW]);
    expect(readWinterCells(sheet.map((row) => [...row].reverse()))).toEqual([ROW]);
  });

  test.each<[keyof WinterRow, CellValue]>([
    ["block", " "],
    ["block", null],
    ["row", null],
    ["row", "first"],
    ["year", "2026"],
    ["vines", -1],
    ["cordons", 2.5],
    ["gaps", null],
    ["liveSpurs", 201],
  ])("a row with %s of %j is left out", (column, value) => {
    expect(readWinterCells([heads, withCell(column, value), cells])).toEqual([ROW]);
  });

  test("every position may bear, and none may", () => {
    expect(readWinterCells([heads, withCell("liveSpurs", 200)])).toEqual([{ ...ROW, liveSpurs: 200 }]);
    expect(readWinterCells([heads, withCell("liveSpurs", 0)])).toEqual([{ ...ROW, liveSpurs: 0 }]);
  });

  test("a sheet that lacks one of the heads is none", () => {
    expect(winterHeadRow([heads.slice(1)])).toBe(-1);
    expect(readWinterCells([heads.slice(1), cells.slice(1)])).toEqual([]);
  });
});
