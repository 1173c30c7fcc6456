import { layOutOwnSheet, type OwnSheetLayout } from "../ownSheet";
import { WorkbookProblem, type CellPlace, type OwnSheet } from "../surveyWorkbook";
import { carryLooks, looksAsAreas } from "./carryLooks";
import { officeCode } from "./excelProblem";
import { addTableAt, freezeHeads, tableArea } from "./ownTable";
import { shadeExcelColumns } from "./shadeExcelColumns";

/** An own sheet as it stands before it is rewritten. */
export interface FormerSheet {
  readonly worksheet: Excel.Worksheet;
  readonly name: string;
  /** Rows and columns from A1 to the end of everything on the sheet. */
  readonly used: { readonly rows: number; readonly columns: number };
  /** Columns from A on in which anything stands: values, formats, notes or comments. */
  readonly taken: number;
  readonly table: Excel.Table | undefined;
  /** Rows and columns from A1 that our former table and its title take. */
  readonly rows: number;
  readonly columns: number;
  readonly headerRow: number;
}

const SOMEBODY_WAS_FASTER = new Set(["ItemNotFound", "InvalidReference", "InvalidObjectPath"]);

/** The content that is to stand on an own sheet. */
export interface NewContent {
  /** Keeps what stood there until the batch is through: a working sheet, or the own sheet itself, far to the right. */
  readonly keptOn: Excel.Worksheet;
  /** Puts the content into the own sheet, from A1 on. */
  put(worksheet: Excel.Worksheet): void;
}

/** Whether the table of an own sheet can go on under the new content: a resized table keeps its header row. */
export function keepsItsTable(former: FormerSheet, layout: OwnSheetLayout): boolean {
  return former.table !== undefined && former.headerRow === layout.headerRow;
}

/**
 * Replaces the table of an own sheet in one batch; when that is refused, what stood there comes back from a copy that
 * is kept until then. The batch looks at the sheet as it is at that moment, so that a colleague who rewrote it
 * meanwhile leaves nothing behind. Head and body are copied one by one: a copy of a whole table is a second table.
 *
 * @returns false, with nothing changed, when the table that was looked at is gone: look again
 * @throws WorkbookProblem "halfWritten" when the former content cannot be put back either: its copy then stays, on a
 * sheet that can be seen.
 */
export async function replaceOwnContent(
  context: Excel.RequestContext,
  former: FormerSheet,
  content: OwnSheet,
  { keptOn, put }: NewContent,
): Promise<boolean> {
  const layout = layOutOwnSheet(content);
  const { worksheet, table } = former;
  const kept = keptPlaces(former, layout);
  const begun = keptOn.getRangeByIndexes(0, kept.markColumn, 1, 1);
  const keepsTable = keepsItsTable(former, layout);
  try {
    table?.getHeaderRowRange().load("address");
    const head = worksheet.getRangeByIndexes(0, 0, former.headerRow, Math.max(1, former.used.columns));
    const body = table?.getDataBodyRange() ?? fromFirstCell(worksheet);
    keptOn.getRangeByIndexes(0, kept.firstColumn, 1, 1).copyFrom(head, "All");
    keptOn
      .getRangeByIndexes(table ? former.headerRow : 0, kept.firstColumn, 1, 1)
      .copyFrom(table ? body.getBoundingRect(cellBelow(worksheet, former)) : body, "All");
    begun.values = [["begun"]];
    clearCells(body);
    const tooWide = former.columns - layout.columnCount;
    if (keepsTable) {
      table?.resize(tableArea(worksheet, layout));
      if (tooWide > 0)
        clearCells(worksheet.getRangeByIndexes(former.headerRow - 1, layout.columnCount, 1, tooWide));
    } else {
      if (table) clearCells(table.getHeaderRowRange());
      table?.convertToRange();
      clearCells(worksheet.getRangeByIndexes(0, 0, former.headerRow, Math.max(1, former.columns)));
    }
    put(worksheet);
    if (!keepsTable) addTableAt(tableArea(worksheet, layout), table?.name);
    if (keptOn === worksheet)
      carryLooks(
        looksAsAreas(content.carriedCells?.filter(({ from }) => isReplaced(former, from))),
        keptOn,
        kept.firstColumn,
        worksheet,
      );
    shadeExcelColumns(worksheet, content, layout);
    if (keptOn === worksheet) kept.columnsOf(worksheet).clear("All");
    await context.sync();
  } catch (error) {
    begun.load("values");
    try {
      await context.sync();
      if (begun.values[0][0] === "begun") await putBack(context, former, layout, keptOn);
      else {
        if (keptOn === worksheet) await takeCopyAway(context, kept.columnsOf(worksheet));
        if (SOMEBODY_WAS_FASTER.has(officeCode(error))) return false;
      }
    } catch {
      keptOn.visibility = "Visible";
      await context.sync().catch(() => undefined);
      throw new WorkbookProblem("halfWritten", { sheet: former.name, kept: keptOn.name }, { cause: error });
    }
    throw error;
  }
  if (!keepsTable) await freezeHeads(context, worksheet, layout);
  return true;
}

/** Clears what is replaced and leaves what stands beside it: notes, comments, what a person lets be typed there. */
function clearCells(range: Excel.Range): void {
  range.clear("Contents");
  range.clear("Formats");
}

function isReplaced(former: FormerSheet, { row, column }: CellPlace): boolean {
  return row <= former.rows && column <= former.columns;
}

/** Where the copy of the former content stands while a batch runs: beyond everything else. */
function keptPlaces(former: FormerSheet, layout: OwnSheetLayout) {
  const markColumn = Math.max(layout.columnCount, former.taken) + 1;
  const columns = Math.max(1, former.columns, former.used.columns);
  return {
    markColumn,
    firstColumn: markColumn + 2,
    columns,
    columnsOf: (sheet: Excel.Worksheet) =>
      sheet.getRangeByIndexes(0, markColumn, 1, columns + 2).getEntireColumn(),
  };
}

/** The first cell below the header row: with the table's body it makes a range that begins in the first column. */
function cellBelow(worksheet: Excel.Worksheet, former: FormerSheet): Excel.Range {
  return worksheet.getRangeByIndexes(former.headerRow, 0, 1, 1);
}

/** Everything on the sheet, from A1 on. */
function fromFirstCell(worksheet: Excel.Worksheet): Excel.Range {
  return worksheet.getRangeByIndexes(0, 0, 1, 1).getBoundingRect(worksheet.getUsedRange());
}

/** Nothing of a person's stands there, so a second refusal costs cells of a copy and no more. */
async function takeCopyAway(context: Excel.RequestContext, columns: Excel.Range): Promise<void> {
  const remove = () => {
    columns.clear("All");
    return context.sync();
  };
  await remove()
    .catch(remove)
    .catch(() => undefined);
}

async function putBack(
  context: Excel.RequestContext,
  former: FormerSheet,
  layout: OwnSheetLayout,
  keptOn: Excel.Worksheet,
): Promise<void> {
  const { worksheet, headerRow } = former;
  const kept = keptPlaces(former, layout);
  worksheet.tables.load("items/id,items/name");
  const copy = keptOn
    .getRangeByIndexes(0, kept.firstColumn, 1, kept.columns)
    .getEntireColumn()
    .getUsedRangeOrNullObject(true);
  copy.load("rowIndex,rowCount");
  await context.sync();
  const rows = Math.max(headerRow + 1, copy.isNullObject ? 0 : copy.rowIndex + copy.rowCount);
  const now = worksheet.tables.items[0];
  const formerTable = worksheet.getRangeByIndexes(
    headerRow - 1,
    0,
    rows - headerRow + 1,
    Math.max(1, former.columns),
  );
  const keepsTable = now !== undefined && keepsItsTable(former, layout);
  if (now && !keepsTable) now.convertToRange();
  worksheet
    .getRangeByIndexes(0, 0, Math.max(rows, layout.values.length), Math.max(kept.columns, layout.columnCount))
    .clear("All");
  if (keepsTable) now.resize(formerTable);
  const copyBack = (first: number, count: number) =>
    worksheet
      .getRangeByIndexes(first, 0, 1, 1)
      .copyFrom(keptOn.getRangeByIndexes(first, kept.firstColumn, count, kept.columns), "All");
  copyBack(0, headerRow);
  copyBack(headerRow, rows - headerRow);
  if (former.table && !keepsTable) addTableAt(formerTable, former.table.name);
  await context.sync();
  if (keptOn === worksheet) await takeCopyAway(context, kept.columnsOf(worksheet));
}
