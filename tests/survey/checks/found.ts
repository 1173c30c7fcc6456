import { allFindings, type CheckOptions } from "../../../src/survey/checks/checkSeason";
import type { Finding } from "../../../src/survey/checks/finding";
import { readSeason } from "../../../src/survey/reading/readSeason";
import type { SheetArea } from "../../../src/survey/reading/sheetArea";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";

/** Cells of a row by their heads. */
export type Cells = Readonly<Record<string, CellValue>>;

/** A cordon that nothing is wrong with: 7 spurs on 8 positions, whose seven distances of 2 in are 14 in of 36. */
export const CORDON: Cells = {
  Block: "North Bench",
  Row: 1,
  Vine: 1,
  Side: "left",
  Cordon: "A",
  Trunk: 1,
  "Length (ft)": 3,
  Positions: 8,
  "Live spurs": 7,
};

/** A bearing vine of the register. */
export const VINE: Cells = {
  Block: "North Bench",
  Row: 1,
  Vine: 1,
  Status: "bearing",
};

/** A sheet of rows that are as usual but for the cells given, under the heads of all of them. */
export function sheetOf(
  sheet: string,
  usual: Cells,
  rows: readonly Cells[],
  options?: Parameters<typeof areaOf>[2],
): SheetArea {
  const heads = [...new Set([usual, ...rows].flatMap((row) => Object.keys(row)))];
  const cellsOf = (row: Cells) => heads.map((head) => (head in row ? row[head] : (usual[head] ?? null)));
  return areaOf(sheet, [heads, ...rows.map(cellsOf)], options);
}

/** A finding about one cell, of which only the place matters. */
export const findingAt = (sheet: string, row: number, columnNumber: number): Finding => ({
  code: "missingValue",
  severity: "wrong",
  sheet,
  row,
  columnNumber,
  column: "",
  facts: {},
});

/** Numbers from 1 up to and with `last`. */
export const upTo = (last: number) => Array.from({ length: last }, (_, at) => at + 1);

/** What `shown` picks of each of a check's findings of one kind. */
export function found<T>(
  code: string,
  areas: readonly SheetArea[],
  shown: (finding: Finding) => T,
  options?: CheckOptions,
): T[] {
  return allFindings(readSeason([...areas]), options)
    .filter((finding) => finding.code === code)
    .map(shown);
}

/** The sheet rows of a check's findings of one kind. */
export function rowsFound(code: string, areas: readonly SheetArea[], options?: CheckOptions): number[] {
  return found(code, areas, ({ row }) => row, options);
}
