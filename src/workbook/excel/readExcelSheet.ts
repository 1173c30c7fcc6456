import type { CellValue } from "../../survey/cell";
import type { SheetArea } from "../../survey/sheetArea";
import { WorkbookProblem, type ReadOptions } from "../surveyWorkbook";
import { cellValueOf, formulaOf } from "./cellContent";
import { officeCode } from "./excelProblem";

/** Cells in one message: values, formulas and types of this many stay well under the web's 5 MB. */
const CELLS_A_SLICE = 20_000;
/** How often a sheet that grows or shrinks under the reading is read anew. */
const READINGS = 3;

/**
 * Reads the filled part of a sheet in slices of rows, one round trip a slice. A slice that is too large for one
 * message (long texts) is halved and asked again. Rows that a colleague adds or takes away meanwhile make it start
 * again.
 *
 * @throws WorkbookProblem "noSheet", "sheetKeepsChanging"; AbortError when `options.signal` says so.
 */
export async function readExcelSheet(
  context: Excel.RequestContext,
  sheet: string,
  options: ReadOptions,
): Promise<SheetArea> {
  for (let reading = 1; reading <= READINGS; reading++) {
    const area = await readOnce(context, sheet, options);
    if (area) return area;
  }
  throw new WorkbookProblem("sheetKeepsChanging", { sheet });
}

async function readOnce(
  context: Excel.RequestContext,
  name: string,
  { onProgress, signal, rows: wanted }: ReadOptions,
): Promise<SheetArea | undefined> {
  signal?.throwIfAborted();
  const worksheet = context.workbook.worksheets.getItemOrNullObject(name);
  worksheet.load("id,name");
  const used = worksheet.getUsedRangeOrNullObject(true);
  used.load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  if (worksheet.isNullObject) throw new WorkbookProblem("noSheet", { sheet: name });
  const sheet = worksheet.name;
  const empty: SheetArea = { sheet, firstRow: 1, firstColumn: 1, values: [], formulaAt: () => null };
  if (used.isNullObject) {
    onProgress?.(1);
    return empty;
  }

  const { rowIndex, columnIndex, rowCount, columnCount } = used;
  const from = wanted ? Math.max(rowIndex, wanted.first - 1) : rowIndex;
  const end = wanted ? Math.min(rowIndex + rowCount, wanted.first - 1 + wanted.count) : rowIndex + rowCount;
  if (from >= end) {
    onProgress?.(1);
    return empty;
  }
  const values: CellValue[][] = [];
  const formulas = new Map<number, string>();
  let rowsASlice = Math.max(1, Math.floor(CELLS_A_SLICE / columnCount));
  while (values.length < end - from) {
    signal?.throwIfAborted();
    const rows = Math.min(rowsASlice, end - from - values.length);
    const slice = worksheet.getRangeByIndexes(from + values.length, columnIndex, rows, columnCount);
    slice.load("values,formulas,valueTypes");
    const now = worksheet.getUsedRangeOrNullObject(true);
    now.load("rowIndex,columnIndex,rowCount,columnCount");
    try {
      // eslint-disable-next-line office-addins/no-context-sync-in-loop -- one round trip a slice, by size of message
      await context.sync();
    } catch (error) {
      if (officeCode(error) !== "ResponsePayloadSizeLimitExceeded" || rows === 1) throw error;
      rowsASlice = Math.max(1, Math.floor(rows / 2));
      continue;
    }
    if (
      now.isNullObject ||
      now.rowIndex !== rowIndex ||
      now.columnIndex !== columnIndex ||
      now.rowCount !== rowCount ||
      now.columnCount !== columnCount
    )
      return undefined;
    const { values: lines, formulas: given, valueTypes: types } = slice;
    for (let r = 0; r < rows; r++) {
      const start = values.length * columnCount;
      values.push(lines[r].map((value, c) => cellValueOf(value, types[r][c])));
      for (let c = 0; c < columnCount; c++) {
        const formula = formulaOf(given[r][c], lines[r][c]);
        if (formula !== null) formulas.set(start + c, formula);
      }
    }
    slice.untrack();
    now.untrack();
    onProgress?.(values.length / (end - from));
  }
  return {
    sheet,
    firstRow: from + 1,
    firstColumn: columnIndex + 1,
    values,
    formulaAt: (r, c) => formulas.get(r * columnCount + c) ?? null,
  };
}
