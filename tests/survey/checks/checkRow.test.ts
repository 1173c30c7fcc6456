import type { CellValue } from "../../../src/survey/sheets/cell";
import { rowChecker } from "../../../src/survey/checks/checkRow";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";
import { CORDON, sheetOf } from "./found";

const HEADERS = [...CORDON_HEADS];
const row = (vine: CellValue, spurs: CellValue = 7): CellValue[] => [
  "B",
  1,
  vine,
  "left",
  "A",
  1,
  3,
  8,
  spurs,
];
const register = [["Block", "Row", "Vine", "Status"], ...[1, 2, 3].map((vine) => ["B", 1, vine, "bearing"])];
const season = readSeason([
  areaOf("Cordons", [HEADERS, row(1), row(2, 9)], {
    firstRow: 3,
    firstColumn: 2,
  }),
  areaOf("Vines", register),
]);
const check = rowChecker(season);
const typed = (sheetRow: number, values: CellValue[]) =>
  check({ sheet: "Cordons", row: sheetRow, firstColumn: 2, values }).map(({ code, row, columnNumber }) => [
    code,
    row,
    columnNumber,
  ]);

describe("a row while it is typed", () => {
  test("is judged with its own cells", () => {
    expect(typed(4, row(1, 10))).toEqual([["spursAbovePositions", 4, 10]]);
    expect(typed(4, row(1, "7"))).toEqual([["numberAsText", 4, 10]]);
  });

  test("is not compared with what stood in it before", () => {
    expect(typed(4, row(1))).toEqual([]);
  });

  test("is compared with the register and with other rows, above and below", () => {
    expect(typed(6, row(9))).toEqual([["unknownVine", 6, 4]]);
    expect(typed(6, row(2))).toEqual([["sameCordonTwice", 6, 6]]);
    expect(typed(4, row(2))).toEqual([["sameCordonTwice", 4, 6]]);
  });

  test("below the table counts, headers, titles and blank rows do not", () => {
    expect(typed(60, row(3, 9))).toEqual([["spursAbovePositions", 60, 10]]);
    expect(typed(3, HEADERS)).toEqual([]);
    expect(typed(6, [null, "", null])).toEqual([]);
    expect(check({ sheet: "Diary", row: 2, firstColumn: 1, values: ["x"] })).toEqual([]);
  });

  test("is told from left to right, whichever check finds first", () => {
    expect(typed(4, ["B", 1, 1, "left", "A", "x", 3, 8, null])).toEqual([
      ["notANumber", 4, 7],
      ["missingValue", 4, 10],
    ]);
  });

  test("says nothing of the header or of other sheets' matters", () => {
    const { Trunk: _, ...lacking } = CORDON;
    const own = rowChecker(
      readSeason([
        sheetOf("Cordons", lacking, [{}]),
        sheetOf("Blocks", { Rows: 1, "Vine spacing (ft)": 8 }, [{ Block: "B" }]),
      ]),
    );
    expect(
      own({ sheet: "Cordons", row: 2, firstColumn: 1, values: ["B", 1, 1, "left", "A", 3, 8, 7] }),
    ).toEqual([]);
    expect(own({ sheet: "Blocks", row: 3, firstColumn: 1, values: [1, 8, "New"] })).toEqual([]);
  });
});
