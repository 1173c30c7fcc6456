import { areasOfAddress } from "../address";
import { layOutOwnSheet, OWN_SHEET_NAME, type OwnSheetLayout, type OwnValue } from "../ownSheet";
import { WorkbookProblem, type CellPlace, type OwnSheet, type OwnSheetWritten } from "../surveyWorkbook";
import { asExcelInput } from "./cellContent";
import { drawExcelCharts } from "./drawExcelCharts";
import { shadeExcelColumns } from "./shadeExcelColumns";
import { carryLooks, looksAsAreas } from "./carryLooks";
import { putRemarks, remarksOf, wordsOf } from "./excelRemarks";
import { keepsItsTable, replaceOwnContent, type FormerSheet } from "./replaceOwnContent";
import { messageBatches } from "./messageBatches";
import { addTable, freezeHeads, tableNameOf } from "./ownTable";
import { addWorkingSheet, removeWorkingSheet, WORKING_SHEET_NAME } from "./workingSheet";

/** About what a cell takes in a message beside its value. */
const FRAME_OF_A_CELL = 6;
/** Areas with looks of a person that go into one message. */
const MOST_LOOKS = 500;
/** Rows that a person coloured to the end leave no column free: what is kept for a moment then stands in them. */
const LAST_FREE_COLUMN = 16_000;
/** How often a sheet that colleagues rewrite at the same moment is tried. */
const ATTEMPTS = 5;
const POINTS_A_CHARACTER = 5.25;
const POINTS_OF_MARGIN = 4;

/**
 * Makes or rewrites a sheet of ours. One that is there receives the new content in its place, in one batch, so that
 * formulas, charts and PivotTables that look at it stay and Undo goes on working: a deleted sheet would clear the
 * person's list of it (https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-undo-capabilities). Only what
 * is new, more than one message holds, or stands below another header row is first written to a hidden working sheet,
 * in slices. What stood there before comes back when the batch is refused. Charts are drawn after that, so that a
 * refused one costs no figure. Notes and comments are put in their places last.
 *
 * @param seesNotes whether this Excel shows notes to add-ins
 * @throws WorkbookProblem "notOurs", "protectedSheet", "protectedWorkbook", "filteredTable", "overlap", "inTheWay" when a person's cells stand
 * where the longer table would go, "halfWritten" when neither the new nor the former content could be written.
 */
export async function writeOwnExcelSheet(
  context: Excel.RequestContext,
  content: OwnSheet,
  seesNotes: boolean,
): Promise<OwnSheetWritten> {
  const layout = layOutOwnSheet(content);
  const { carriedCells } = content;
  const worksheet = context.workbook.worksheets.getItemOrNullObject(content.sheet);
  const before = carriedCells ? await remarksOf(context, worksheet, seesNotes) : [];
  try {
    await writeTable(context, content, layout, before);
  } catch (error) {
    const inPlace = before.map((place) => ({ from: place, to: place, look: false, note: true }));
    await putRemarks(context, worksheet, before, inPlace, seesNotes).catch(() => undefined);
    throw error;
  }
  const lost = carriedCells && (await putRemarks(context, worksheet, before, carriedCells, seesNotes));
  return {
    charts: content.charts ? await drawExcelCharts(context, content) : 0,
    ...(lost && { lostNotes: lost.map((remark) => ({ ...placeOf(remark), note: wordsOf(remark) })) }),
  };
}

function placeOf({ row, column }: CellPlace): CellPlace {
  return { row, column };
}

async function writeTable(
  context: Excel.RequestContext,
  content: OwnSheet,
  layout: OwnSheetLayout,
  remarks: readonly CellPlace[],
): Promise<void> {
  const fitsOneMessage =
    messageBatches(layout.values, charactersOf).length === 1 &&
    looksAsAreas(content.carriedCells).length <= MOST_LOOKS;
  for (let attempt = 1; attempt <= ATTEMPTS; attempt++) {
    const there = await lookAt(context, content, layout, remarks);
    if (!there || !fitsOneMessage || !keepsItsTable(there, layout))
      return writeThroughWorkingSheet(context, content, layout, remarks, there);
    const put = (worksheet: Excel.Worksheet) => {
      worksheet.getRangeByIndexes(0, 0, layout.values.length, layout.columnCount).values = layout.values.map(
        (row) => row.map(asExcelInput),
      );
      formatColumns(worksheet, content, layout);
    };
    if (await replaceOwnContent(context, there, content, { keptOn: there.worksheet, put })) return;
  }
  throw new WorkbookProblem("sheetKeepsChanging", { sheet: content.sheet });
}

async function writeThroughWorkingSheet(
  context: Excel.RequestContext,
  content: OwnSheet,
  layout: OwnSheetLayout,
  remarks: readonly CellPlace[],
  there: FormerSheet | undefined,
): Promise<void> {
  const working = await addWorkingSheet(context);
  try {
    await writeSlices(context, working, layout);
    formatColumns(working, content, layout);
    if (there) await carryInSlices(context, working, there.worksheet, content);
    else {
      widenColumns(working, content, layout);
      return await becomeTheSheet(context, working, content, layout);
    }
    const put = (worksheet: Excel.Worksheet) => {
      const made = working.getRangeByIndexes(0, 0, layout.values.length, layout.columnCount);
      for (const what of ["Formulas", "Formats"] as const)
        worksheet.getRangeByIndexes(0, 0, 1, 1).copyFrom(made, what);
    };
    for (let attempt = 1; ; attempt++) {
      const now = attempt === 1 ? there : await lookAt(context, content, layout, remarks);
      if (!now) throw new WorkbookProblem("noSheet", { sheet: content.sheet });
      if (await replaceOwnContent(context, now, content, { keptOn: working, put })) break;
      if (attempt === ATTEMPTS) throw new WorkbookProblem("sheetKeepsChanging", { sheet: content.sheet });
    }
  } catch (error) {
    if (!(error instanceof WorkbookProblem && error.code === "halfWritten"))
      await removeWorkingSheet(context, working);
    throw error;
  }
  await removeWorkingSheet(context, working);
}

async function lookAt(
  context: Excel.RequestContext,
  { sheet, carriedColumns = 0 }: OwnSheet,
  layout: OwnSheetLayout,
  remarks: readonly CellPlace[],
): Promise<FormerSheet | undefined> {
  const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet);
  worksheet.load("id,name");
  const own = worksheet.names.getItemOrNullObject(OWN_SHEET_NAME);
  own.load("name");
  worksheet.protection.load("protected");
  const used = worksheet.getUsedRangeOrNullObject(true);
  used.load("rowIndex,columnIndex,rowCount,columnCount");
  const dressed = worksheet.getUsedRangeOrNullObject();
  dressed.load("columnIndex,columnCount");
  worksheet.tables.load("items/id,items/name,items/autoFilter/isDataFiltered");
  worksheet.autoFilter.load("isDataFiltered");
  await context.sync();
  if (worksheet.isNullObject) return undefined;
  if (own.isNullObject) throw new WorkbookProblem("notOurs", { sheet: worksheet.name });
  if (worksheet.protection.protected) throw new WorkbookProblem("protectedSheet", { sheet: worksheet.name });
  if ([worksheet, ...worksheet.tables.items].some(({ autoFilter }) => autoFilter.isDataFiltered))
    throw new WorkbookProblem("filteredTable", { sheet: worksheet.name });

  const usedRows = used.isNullObject ? 0 : used.rowIndex + used.rowCount;
  const usedColumns = used.isNullObject ? 0 : used.columnIndex + used.columnCount;
  const size = { rows: usedRows, columns: usedColumns };
  const dressedColumns = dressed.isNullObject ? 0 : dressed.columnIndex + dressed.columnCount;
  const taken = Math.max(
    usedColumns,
    dressedColumns < LAST_FREE_COLUMN ? dressedColumns : 0,
    ...remarks.map(({ column }) => column),
  );
  const table = worksheet.tables.items[0];
  if (!table)
    return {
      worksheet,
      name: worksheet.name,
      used: size,
      taken,
      table,
      ...size,
      headerRow: layout.headerRow,
    };
  const area = table.getRange();
  area.load("rowIndex,columnIndex,rowCount,columnCount");
  const merged = worksheet
    .getRangeByIndexes(0, 0, layout.values.length, layout.columnCount)
    .getMergedAreasOrNullObject();
  merged.load("address");
  await context.sync();
  if (
    !merged.isNullObject &&
    areasOfAddress(merged.address).some(({ lastRow }) => lastRow >= layout.headerRow)
  )
    throw new WorkbookProblem("overlap", { sheet: worksheet.name });
  const former = {
    worksheet,
    name: worksheet.name,
    used: size,
    taken,
    table,
    rows: area.rowIndex + area.rowCount,
    columns: Math.max(area.columnIndex + area.columnCount, carriedColumns),
    headerRow: area.rowIndex + 1,
  };
  if (former.columns > area.columnIndex + area.columnCount)
    table.resize(worksheet.getRangeByIndexes(area.rowIndex, 0, area.rowCount, former.columns));
  await refuseCellsInTheWay(context, former, layout);
  return former;
}

/** Cells of a person beside or below our table that the new, larger one would cover. */
async function refuseCellsInTheWay(
  context: Excel.RequestContext,
  former: FormerSheet,
  layout: OwnSheetLayout,
): Promise<void> {
  const rows = Math.min(layout.values.length, former.used.rows);
  const columns = Math.min(layout.columnCount, former.used.columns);
  const { worksheet } = former;
  const below =
    rows > former.rows ? worksheet.getRangeByIndexes(former.rows, 0, rows - former.rows, columns) : undefined;
  const beside =
    columns > former.columns
      ? worksheet.getRangeByIndexes(0, former.columns, rows, columns - former.columns)
      : undefined;
  below?.load("values,rowIndex");
  beside?.load("values,rowIndex");
  if (!below && !beside) return;
  await context.sync();
  for (const range of [below, beside]) {
    const line = range?.values.findIndex((row) => row.some((value) => value !== "")) ?? -1;
    if (range && line >= 0)
      throw new WorkbookProblem("inTheWay", { sheet: former.name, row: range.rowIndex + line + 1 });
  }
}

async function writeSlices(
  context: Excel.RequestContext,
  working: Excel.Worksheet,
  layout: OwnSheetLayout,
): Promise<void> {
  let first = 0;
  for (const rows of messageBatches(layout.values, charactersOf)) {
    const range = working.getRangeByIndexes(first, 0, rows.length, layout.columnCount);
    range.values = rows.map((row) => row.map(asExcelInput));
    // eslint-disable-next-line office-addins/no-context-sync-in-loop -- one round trip a slice, by size of message
    await context.sync();
    range.untrack();
    first += rows.length;
  }
}

/** Puts what a person gave to the cells of the former table on those of the working sheet that hold the new one. */
async function carryInSlices(
  context: Excel.RequestContext,
  working: Excel.Worksheet,
  former: Excel.Worksheet,
  { carriedCells }: OwnSheet,
): Promise<void> {
  const areas = looksAsAreas(carriedCells);
  for (let first = 0; first < areas.length; first += MOST_LOOKS) {
    carryLooks(areas.slice(first, first + MOST_LOOKS), former, 0, working);
    // eslint-disable-next-line office-addins/no-context-sync-in-loop -- one round trip a slice
    await context.sync();
  }
}

function charactersOf(row: readonly OwnValue[]): number {
  return row.reduce<number>((sum, value) => sum + String(value ?? "").length + FRAME_OF_A_CELL, 0);
}

function formatColumns(worksheet: Excel.Worksheet, content: OwnSheet, layout: OwnSheetLayout): void {
  if (content.title?.length) worksheet.getRangeByIndexes(0, 0, 1, 1).format.font.bold = true;
  content.columns?.forEach(({ format, wrap }, c) => {
    const cells = cellsOfColumn(worksheet, content, layout, c);
    if (format) cells.numberFormat = format as unknown as string[][];
    if (wrap) {
      cells.format.wrapText = true;
      cells.format.verticalAlignment = "Top";
    }
  });
}

/** Of a new sheet only: a person may have changed the widths of one that is there. */
function widenColumns(worksheet: Excel.Worksheet, content: OwnSheet, layout: OwnSheetLayout): void {
  content.columns?.forEach(({ width }, c) => {
    if (!width) return;
    cellsOfColumn(worksheet, content, layout, c).format.columnWidth =
      width * POINTS_A_CHARACTER + POINTS_OF_MARGIN;
  });
}

function cellsOfColumn(
  worksheet: Excel.Worksheet,
  content: OwnSheet,
  layout: OwnSheetLayout,
  column: number,
): Excel.Range {
  return worksheet.getRangeByIndexes(layout.headerRow, column, Math.max(1, content.rows.length), 1);
}

async function becomeTheSheet(
  context: Excel.RequestContext,
  working: Excel.Worksheet,
  content: OwnSheet,
  layout: OwnSheetLayout,
): Promise<void> {
  const taken = context.workbook.tables.getItemOrNullObject(tableNameOf(content.sheet));
  taken.load("name");
  await context.sync();
  addTable(working, layout, taken.isNullObject ? tableNameOf(content.sheet) : undefined);
  shadeExcelColumns(working, content, layout);
  working.names.add(OWN_SHEET_NAME, "=TRUE").visible = false;
  working.names.getItem(WORKING_SHEET_NAME).delete();
  working.name = content.sheet;
  working.visibility = "Visible";
  await context.sync();
  await freezeHeads(context, working, layout);
}
