import type { CellValue } from "../../src/survey/sheets/cell";
import type { MarkedCell, SheetArea } from "../../src/survey/reading/sheetArea";

/** A sheet's area from rows as a test writes them; `formulas` by "row:column" as the sheet counts them. */
export function areaOf(
  sheet: string,
  rows: readonly (readonly CellValue[])[],
  options: {
    firstRow?: number;
    firstColumn?: number;
    formulas?: Readonly<Record<string, string>>;
    isText?: boolean;
    marked?: readonly MarkedCell[];
  } = {},
): SheetArea {
  const firstRow = options.firstRow ?? 1;
  const firstColumn = options.firstColumn ?? 1;
  const width = Math.max(0, ...rows.map((row) => row.length));
  return {
    sheet,
    firstRow,
    firstColumn,
    values: rows.map((row) => Array.from({ length: width }, (_, i) => row[i] ?? null)),
    formulaAt: (row, column) => options.formulas?.[`${row + firstRow}:${column + firstColumn}`] ?? null,
    isText: options.isText,
    marks: options.marked && { marked: options.marked, hiddenRows: [], hiddenColumns: [] },
  };
}
