import type { CellValue } from "../sheets/cell";

/** The filled part of a sheet. */
export interface SheetArea {
  readonly sheet: string;
  /** Sheet row of values[0] and sheet column of values[0][0]; the first row and column of a sheet are 1. */
  readonly firstRow: number;
  readonly firstColumn: number;
  /** Rows of equal length; an empty sheet has none. */
  readonly values: readonly (readonly CellValue[])[];
  /** The formula of a cell ("=A1+B1", our functions as CORDON.NAME), or null; indexes as in `values`. */
  formulaAt(rowIndex: number, columnIndex: number): string | null;
  /** Cells that are merged into one, which holds the value of all; none when left out. Indexes as in `values`. */
  readonly merged?: readonly MergedArea[];
  /** The rows are records of a text file: a cell too many has moved those behind it under other heads. */
  readonly isText?: boolean;
  /** The sheet is hidden in its workbook. */
  readonly isHidden?: boolean;
}

/** A rectangle of cells that are one. */
export interface MergedArea {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}
