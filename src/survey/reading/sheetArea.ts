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
  /** What a person did to cells beside filling them; nothing when left out. */
  readonly marks?: SheetMarks;
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

/** A cell that is struck out or carries a note or comment; row and column as the sheet counts them, from 1. */
export interface MarkedCell {
  readonly row: number;
  readonly column: number;
  readonly struck?: boolean;
  /** What was said on it, with who said it: "Ana: really 9". */
  readonly note?: string;
}

/** What a person did to the cells of a sheet beside filling them; rows and columns as the sheet counts them. */
export interface SheetMarks {
  readonly marked: readonly MarkedCell[];
  /** Rows that hold something and are hidden. */
  readonly hiddenRows: readonly number[];
  readonly hiddenColumns: readonly number[];
}

/** What is known of a sheet behind its last row. */
export interface SheetEnd {
  /** Counted from 1, as the sheet counts rows and columns. */
  readonly merged: readonly MergedArea[];
  /** Undefined where there are none. */
  readonly marks: SheetMarks | undefined;
}

export const NOTHING_BEHIND: SheetEnd = { merged: [], marks: undefined };

/** Marks, if there is any of them. */
export function marksIfAny(marks: SheetMarks): SheetMarks | undefined {
  return marks.marked.length + marks.hiddenRows.length + marks.hiddenColumns.length > 0 ? marks : undefined;
}
