import type { CellValue } from "../sheets/cell";
import type { SheetMarks } from "../reading/sheetArea";
import type { Column, SheetShape } from "../sheets/column";
import type { Unit } from "../sheets/unit";

/** What the reader made of a cell. */
export const CELL = {
  usable: 0,
  blank: 1,
  /** Shows a number but is text, so that a spreadsheet would not add it up. */
  numberAsText: 2,
  /** Something else than the column is for. */
  unreadable: 3,
  error: 4,
  /** A date as text that can be read with day or month first. */
  unclearDate: 5,
  /** A number that no true value reaches. */
  outside: 6,
  /** A count with a fraction. */
  notWhole: 7,
  /** Another cell of the row says that it cannot be true. */
  contradicted: 8,
  /** Stands in a record of a text file with more cells than heads, so that no cell of it is sure. */
  moved: 9,
  /** Of a counter whose unit is asked. */
  unitAsked: 10,
} as const;

/** Cells as they stand in the sheet; an array is one. */
export interface CellList {
  readonly length: number;
  at(index: number): CellValue | undefined;
}

/** Numbers of a column: single precision only where every one of them is exact in it. */
export type Numbers = Float64Array | Float32Array;

/** Small whole numbers of a column, no wider than they need to be. */
export type Codes = Int32Array | Int16Array | Int8Array;

/** One recognised column of a table, row by row. */
export interface SurveyColumn {
  readonly column: Column;
  /** Header as it stands in the sheet. */
  readonly header: string;
  /** Column of the sheet, 1 is A. */
  readonly sheetColumn: number;
  /** Unit of the cells as written; undefined for counts, words and dates. */
  readonly unit: Unit | undefined;
  /** metric value = cell value x perUnit. */
  readonly perUnit: number;
  /** Units of counters who wrote in their own, by the number of their word. */
  readonly ofCounters?: ReadonlyMap<number, Unit>;
  readonly raw: CellList;
  /** Metres, kilograms, shares, counts, date serials as they stand in the sheet; NaN where there is no number. */
  readonly numbers: Numbers;
  /** The same without those that cannot be true (judgedTable); what is calculated is calculated from these. */
  readonly usable: Numbers;
  /** One of CELL for each row. */
  readonly states: Uint8Array;
  /** Text: number of the word in `survey.words`. Choice: index in column.choices. NO_WORD, UNKNOWN_WORD else. */
  readonly codes: Codes;
}

/** A column that is none of ours: its header and the numbers in it, NaN for other cells. */
export type OtherColumn = Pick<SurveyColumn, "header" | "sheetColumn" | "numbers">;

/** One table found in a sheet. Rows without any entry, totals, repeated headers and remarks below it are left out. */
export interface SurveyTable {
  readonly shape: SheetShape;
  readonly sheet: string;
  /** Sheet row of the headers; the first row of a sheet is 1. */
  readonly headerRow: number;
  readonly rowCount: number;
  /** Sheet row of the i-th row of the table. */
  sheetRow(index: number): number;
  /** Index of the table's row that stands in that sheet row. */
  indexOfSheetRow(sheetRow: number): number | undefined;
  readonly columns: readonly SurveyColumn[];
  column(id: string): SurveyColumn | undefined;
  /** Rows of totals under or inside the table. */
  readonly totals: readonly TotalRow[];
  /** Columns of the table that are none of ours. */
  readonly otherColumns: readonly OtherColumn[];
  /** Sheet rows of heads that come again between the rows, and of remarks in one cell; both are no rows. */
  readonly headsAgain: readonly number[];
  readonly remarks: readonly number[];
  /** Headers found twice: the first is read, the others are not. */
  readonly repeatedHeaders: readonly { readonly header: string; readonly sheetColumn: number }[];
  /** What a person did to the cells of the sheet beside filling them. */
  readonly marks: SheetMarks | undefined;
  /** Formula of a row's cell, null where a value was typed. */
  formulaAt(index: number, column: SurveyColumn): string | null;
  /** Winter of the counts, named by the year in which it ends; undefined where neither dates nor the sheet's name tell. */
  readonly winter: number | undefined;
  /** True where a column of years tells the winter. */
  readonly isWinterTold?: boolean;
}

/** The columns of a table, in their order and by their id. */
export function columnsById(columns: readonly SurveyColumn[]): Pick<SurveyTable, "columns" | "column"> {
  const byId = new Map(columns.map((column) => [column.column.id, column]));
  return { columns, column: (id) => byId.get(id) };
}

/** A row that adds up the rows above it. */
export interface TotalRow {
  readonly sheetRow: number;
  /** Rows of the table that stood before it. */
  readonly rowsBefore: number;
  readonly cells: readonly {
    readonly columnId: string;
    readonly value: CellValue;
    readonly formula: string | null;
  }[];
}
