import { isBlank, type CellValue } from "../../survey/sheets/cell";
import { NOTHING_BEHIND, type SheetArea, type SheetEnd } from "../../survey/reading/sheetArea";
import { WorkbookProblem } from "../surveyWorkbook";
import type { ReadLimits } from "./readLimits";
import type { SheetRow } from "./sheetRows";

/**
 * The filled part of a sheet from its rows: rows of equal length from the first to the last row and column that hold
 * anything.
 *
 * @param end what is known behind the rows
 * @throws WorkbookProblem "tooManyCells" where the area is larger than the limits allow to be held at once.
 */
export function sheetAreaOfRows(
  file: string,
  sheet: string,
  rows: readonly SheetRow[],
  limits: ReadLimits,
  { merged, marks }: SheetEnd = NOTHING_BEHIND,
): SheetArea {
  const filled = rows.filter((row) => lastFilled(row) > 0);
  if (filled.length === 0) return { sheet, firstRow: 1, firstColumn: 1, values: [], formulaAt: () => null };
  const firstRow = filled[0].number;
  const lastRow = filled[filled.length - 1].number;
  const lastColumn = filled.reduce((most, row) => Math.max(most, lastFilled(row)), 0);
  const firstColumn = filled.reduce((least, row) => Math.min(least, firstFilled(row)), lastColumn);
  const width = lastColumn - firstColumn + 1;
  if ((lastRow - firstRow + 1) * width > limits.cells)
    throw new WorkbookProblem("tooManyCells", { file, sheet, most: limits.cells });
  const blank: readonly CellValue[] = new Array<CellValue>(width).fill(null);
  const values: (readonly CellValue[])[] = new Array(lastRow - firstRow + 1).fill(blank);
  const formulas = new Map<number, ReadonlyMap<number, string>>();
  for (const row of filled) {
    const cells = row.values.slice(firstColumn - 1, lastColumn);
    while (cells.length < width) cells.push(null);
    values[row.number - firstRow] = cells;
    if (row.formulas) formulas.set(row.number - firstRow, row.formulas);
  }
  return {
    sheet,
    firstRow,
    firstColumn,
    values,
    formulaAt: (row, column) => formulas.get(row)?.get(column + firstColumn - 1) ?? null,
    ...(marks ? { marks } : {}),
    ...(merged.length === 0
      ? {}
      : {
          merged: merged.map((area) => ({
            ...area,
            row: area.row - firstRow,
            column: area.column - firstColumn,
          })),
        }),
  };
}

function holdsSomething(row: SheetRow, index: number): boolean {
  return !isBlank(row.values[index]) || row.formulas?.has(index) === true;
}

/** Number of the row's last column that holds anything; 0 for none. */
function lastFilled(row: SheetRow): number {
  for (let index = row.values.length - 1; index >= 0; index--)
    if (holdsSomething(row, index)) return index + 1;
  return 0;
}

function firstFilled(row: SheetRow): number {
  for (let index = 0; index < row.values.length; index++) if (holdsSomething(row, index)) return index + 1;
  return row.values.length;
}
