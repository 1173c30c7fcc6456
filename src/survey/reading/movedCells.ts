import { isBlank, type CellValue } from "../sheets/cell";
import { CELL, type SurveyColumn } from "../season/surveyTable";
import { NO_WORD } from "../sheets/words";

/** Number of the last cell that holds anything; 0 for none. */
export function lastFilled(cells: readonly (CellValue | undefined)[] = []): number {
  let last = cells.length;
  while (last > 0 && isBlank(cells[last - 1])) last--;
  return last;
}

/**
 * True for a record of a text file whose cells may stand under the wrong heads: it has more cells than heads, or a
 * carriage return within it, where two lines may have run together.
 *
 * @example
 * hasMovedCells(["North Bench", 1, 12, 8, 2], 4) // true
 */
export function hasMovedCells(cells: readonly CellValue[], heads: number): boolean {
  if (cells.length > heads && lastFilled(cells) > heads) return true;
  for (const cell of cells) if (typeof cell === "string" && cell.includes("\r")) return true;
  return false;
}

/** A column with nothing that can be used in the rows whose cells have moved; what stands there stays in `raw`. */
export function withoutMoved(column: SurveyColumn, rows: readonly number[]): SurveyColumn {
  if (rows.length === 0) return column;
  const numbers = column.numbers.slice();
  const states = column.states.slice();
  const codes = column.codes.slice();
  for (const row of rows) {
    numbers[row] = NaN;
    states[row] = CELL.moved;
    if (codes.length > 0) codes[row] = NO_WORD;
  }
  return { ...column, numbers, usable: numbers, states, codes };
}
