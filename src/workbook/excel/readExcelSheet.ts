import type { CellValue } from "../../survey/sheets/cell";
import type { MergedArea, SheetArea } from "../../survey/reading/sheetArea";
import { areasOfAddress } from "../address";
import { WorkbookProblem, type ReadOptions } from "../surveyWorkbook";
import { cellValueOf, formulaOf } from "./cellContent";
import { excelMarks } from "./excelMarks";
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
 * @param seesNotes whether this Excel shows notes to add-ins
 * @throws WorkbookProblem "noSheet", "sheetKeepsChanging"; AbortError when `options.signal` says so.
 */
export async function readExcelSheet(
  context: Excel.RequestContext,
  sheet: string,
  options: ReadOptions,
  seesNotes: boolean,
): Promise<SheetArea> {
  for (let reading = 1; reading <= READINGS; reading++) {
    const area = await readOnce(context, sheet, options, seesNotes);
    if (area) return area;
  }
  throw new WorkbookProblem("sheetKeepsChanging", { sheet });
}

async function readOnce(
  context: Excel.RequestContext,
  name: string,
  { onProgress, signal, rows: wanted }: ReadOptions,
  seesNotes: boolean,
): Promise<SheetArea | undefined> {
  signal?.throwIfAborted();
  const worksheet = context.workbook.worksheets.getItemOrNullObject(name);
  worksheet.load("id,name,visibility");
  const used = worksheet.getUsedRangeOrNullObject(true);
  used.load("rowIndex,columnIndex,rowCount,columnCount,rowHidden,columnHidden");
  used.format.font.load("strikethrough");
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
    slice.load("values,formulas,valueTypes,hasSpill");
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
    const start = values.length * columnCount;
    const found = sliceOf(slice, columnCount);
    values.push(...found.values);
    if (slice.hasSpill !== false) await leaveOutSpilled(context, slice, found.formulas, columnCount);
    for (const [at, formula] of found.formulas) formulas.set(start + at, formula);
    slice.untrack();
    now.untrack();
    onProgress?.(values.length / (end - from));
  }
  const area = { rowIndex, columnIndex, rowCount, columnCount };
  const merged = wanted ? [] : await mergedAreas(context, worksheet, area);
  const marks = wanted ? undefined : await excelMarks(context, worksheet, used, seesNotes);
  return {
    sheet,
    firstRow: from + 1,
    firstColumn: columnIndex + 1,
    values,
    formulaAt: (r, c) => formulas.get(r * columnCount + c) ?? null,
    ...(worksheet.visibility === "Visible" ? {} : { isHidden: true }),
    ...(merged.length === 0 ? {} : { merged: merged.map((area) => ({ ...area, row: area.row - from })) }),
    ...(marks ? { marks } : {}),
  };
}

interface IndexedArea {
  readonly rowIndex: number;
  readonly columnIndex: number;
  readonly rowCount: number;
  readonly columnCount: number;
}

/**
 * The merged areas of what is filled, rows from the sheet's first, columns from the area's. More than 512 in one range
 * are refused (https://learn.microsoft.com/javascript/api/excel/excel.range#excel-excel-range-getmergedareasornullobject-member(1)),
 * so a range that is refused is halved and asked again.
 */
async function mergedAreas(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  area: IndexedArea,
): Promise<MergedArea[]> {
  const { rowIndex, columnIndex, rowCount, columnCount } = area;
  const range = worksheet.getRangeByIndexes(rowIndex, columnIndex, rowCount, columnCount);
  const found = range.getMergedAreasOrNullObject();
  found.load("address");
  try {
    await context.sync();
  } catch (error) {
    if (rowCount === 1) throw error;
    const upper = Math.floor(rowCount / 2);
    const halves = [
      await mergedAreas(context, worksheet, { ...area, rowCount: upper }),
      await mergedAreas(context, worksheet, {
        ...area,
        rowIndex: rowIndex + upper,
        rowCount: rowCount - upper,
      }),
    ];
    const byPlace = new Map(halves.flat().map((one) => [`${one.row} ${one.column}`, one]));
    return [...byPlace.values()];
  }
  if (found.isNullObject) return [];
  return areasOfAddress(found.address).map(({ firstRow, firstColumn, lastRow, lastColumn }) => ({
    row: firstRow - 1,
    column: firstColumn - 1 - columnIndex,
    rows: lastRow - firstRow + 1,
    columns: lastColumn - firstColumn + 1,
  }));
}

/** The values of a slice, and its formulas by their place: row of the slice times columns, plus column. */
function sliceOf(
  slice: Excel.Range,
  columnCount: number,
): { values: CellValue[][]; formulas: Map<number, string> } {
  const { values, formulas: given, valueTypes } = slice;
  const formulas = new Map<number, string>();
  given.forEach((line, r) =>
    line.forEach((one, c) => {
      const formula = formulaOf(one, values[r][c]);
      if (formula !== null) formulas.set(r * columnCount + c, formula);
    }),
  );
  return {
    values: values.map((line, r) => line.map((value, c) => cellValueOf(value, valueTypes[r][c]))),
    formulas,
  };
}

/** Cells asked about in one message. */
const CELLS_A_QUESTION = 500;

/**
 * A formula that spills may be shown in every cell it fills; it belongs to its first cell only. Only cells that show
 * the same formula as their upper or left neighbour are asked about.
 */
async function leaveOutSpilled(
  context: Excel.RequestContext,
  slice: Excel.Range,
  formulas: Map<number, string>,
  columnCount: number,
): Promise<void> {
  const doubtful = [...formulas].filter(
    ([at, formula]) =>
      formulas.get(at - columnCount) === formula ||
      (at % columnCount > 0 && formulas.get(at - 1) === formula) ||
      at < columnCount,
  );
  for (let first = 0; first < doubtful.length; first += CELLS_A_QUESTION) {
    const asked = doubtful.slice(first, first + CELLS_A_QUESTION).map(([at]) => {
      const cell = slice.getCell(Math.floor(at / columnCount), at % columnCount);
      const anchor = cell.getSpillParentOrNullObject();
      cell.load("address");
      anchor.load("address");
      return { at, cell, anchor };
    });
    // eslint-disable-next-line office-addins/no-context-sync-in-loop -- one round trip for many cells, by size of message
    await context.sync();
    for (const { at, cell, anchor } of asked)
      if (!anchor.isNullObject && anchor.address !== cell.address) formulas.delete(at);
  }
}
