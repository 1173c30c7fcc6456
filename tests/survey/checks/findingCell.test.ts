import { allFindings } from "../../../src/survey/checks/checkSeason";
import { findingCell } from "../../../src/survey/checks/findingCell";
import { readSeason } from "../../../src/survey/reading/readSeason";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";
import { CORDON, findingAt, sheetOf, VINE } from "./found";

describe("the cell that a finding is about", () => {
  const season = () =>
    readSeason([
      sheetOf("Cordons", CORDON, [{ Vine: 1 }, { Vine: 2 }]),
      sheetOf("Vines", VINE, [{ Vine: 8 }]),
    ]);
  const cell = (sheet: string, row: number, columnNumber: number) => {
    const found = findingCell(findingAt(sheet, row, columnNumber), season());
    return found && [found.table.sheet, found.index, found.column.column.id, found.value];
  };

  test("is that of its sheet, row and column", () => {
    expect(cell("Cordons", 3, 3)).toEqual(["Cordons", 1, "vine", 2]);
    expect(cell("Vines", 2, 3)).toEqual(["Vines", 0, "vine", 8]);
  });

  test("is none for a header, a row below the table, a whole row or another sheet", () => {
    for (const [sheet, row, column] of [
      ["Cordons", 1, 3],
      ["Cordons", 4, 3],
      ["Vines", 3, 3],
      ["Cordons", 2, 0],
      ["Diary", 2, 3],
    ] as const)
      expect(cell(sheet, row, column)).toBeUndefined();
  });
});

describe("a row of Settings that cannot be taken", () => {
  const told = (...rows: CellValue[][]) =>
    allFindings(readSeason([areaOf("Settings", [["Setting", "Value", "Unit"], ...rows])])).map(
      ({ code, row, facts }) => [code, row, facts.value, facts.otherRow, facts.otherValue, facts.otherUnit],
    );
  const NAME = "Unlike its block: spread";

  test("is told with what its cell holds: a number, a word, an error, or a name that is none", () => {
    expect(told([NAME, 900, "times"])).toEqual([
      ["settingNotUsable", 2, 900, undefined, undefined, undefined],
    ]);
    expect(told([NAME, "many", "times"])).toEqual([
      ["settingNotUsable", 2, "many", undefined, undefined, undefined],
    ]);
    expect(told([NAME, { error: "#N/A" }, "times"])).toEqual([
      ["settingNotUsable", 2, "#N/A", undefined, undefined, undefined],
    ]);
    expect(told(["Spread of nothing", 4, "times"])).toEqual([
      ["settingUnknown", 2, "Spread of nothing", undefined, undefined, undefined],
    ]);
  });

  test("is told with the row that is in force where it comes again", () => {
    expect(told([NAME, 4, "times"], [NAME, 5, "times"])).toEqual([["settingTwice", 3, 5, 2, 4, "times"]]);
  });
});
