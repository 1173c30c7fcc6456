import { WorkbookProblem, type OwnSheet } from "./surveyWorkbook";

/** Hidden, sheet-scoped defined name that marks a sheet as made by the add-in, in Excel and in a file alike. */
export const OWN_SHEET_NAME = "_Cordonbook_own";

/** Longest sheet name that a spreadsheet takes. */
export const LONGEST_SHEET_NAME = 31;

export type OwnValue = string | number | boolean | null;

/** Where the parts of an own sheet stand; rows count from 1. */
export interface OwnSheetLayout {
  /** Every cell from A1 on, rows of equal length: title lines, an empty line below them, headers, rows. */
  readonly values: OwnValue[][];
  readonly headerRow: number;
  readonly columnCount: number;
}

/**
 * Lays an own sheet out in the same way on every host: the title lines from A1 down, an empty line, the headers, the
 * rows. Without a title the headers stand in row 1. A row shorter than the headers is filled with blanks.
 *
 * @throws WorkbookProblem "badSheetName" for a name that no spreadsheet takes, "badTable" for no headers, two equal
 * headers or a row longer than the headers.
 *
 * @example
 * layOutOwnSheet({ sheet: "Findings", title: ["Made today"], headers: ["Row"], rows: [[7]] }).headerRow // 3
 */
export function layOutOwnSheet(content: OwnSheet): OwnSheetLayout {
  checkSheetName(content.sheet);
  const { headers, title = [] } = content;
  const columnCount = headers.length;
  const known = new Set(headers.map((header) => header.toLowerCase()));
  if (columnCount === 0 || known.size !== columnCount || known.has(""))
    throw new WorkbookProblem("badTable", { sheet: content.sheet, row: 0 });
  const tooLong = content.rows.findIndex((row) => row.length > columnCount);
  if (tooLong >= 0) throw new WorkbookProblem("badTable", { sheet: content.sheet, row: tooLong + 1 });
  const filled = (row: readonly OwnValue[]) => [
    ...row,
    ...new Array<OwnValue>(columnCount - row.length).fill(null),
  ];
  const head = title.length > 0 ? [...title.map((line) => filled([line])), filled([])] : [];
  return {
    values: [...head, [...headers], ...content.rows.map(filled)],
    headerRow: head.length + 1,
    columnCount,
  };
}

/** Refuses a sheet name that a spreadsheet would not take. */
export function checkSheetName(sheet: string): void {
  const bad =
    sheet.trim() === "" ||
    sheet.length > LONGEST_SHEET_NAME ||
    /[:\\/?*[\]]/.test(sheet) ||
    sheet.startsWith("'") ||
    sheet.endsWith("'");
  if (bad) throw new WorkbookProblem("badSheetName", { sheet });
}
