import { layOutOwnSheet } from "../ownSheet";
import { WorkbookProblem, type OwnSheet } from "../surveyWorkbook";
import { officeCode } from "./excelProblem";
import { addTableAt, tableArea } from "./ownTable";
import { shadeExcelColumns } from "./shadeExcelColumns";

/** An own sheet as it stands before it is rewritten. */
export interface FormerSheet {
  readonly worksheet: Excel.Worksheet;
  readonly name: string;
  /** Rows and columns from A1 to the end of everything on the sheet. */
  readonly used: { readonly rows: number; readonly columns: number };
  readonly table: Excel.Table | undefined;
  /** Rows and columns from A1 that our former table and its title take. */
  readonly rows: number;
  readonly columns: number;
  readonly headerRow: number;
}

const SOMEBODY_WAS_FASTER = new Set(["ItemNotFound", "InvalidReference", "InvalidObjectPath"]);

/**
 * Replaces the table of an own sheet by the one on the working sheet in one batch; when that is refused, what stood
 * there comes back from a copy that is kept beside the new table. The batch looks at the sheet as it is at that
 * moment, so that a colleague who rewrote it meanwhile leaves nothing behind.
 *
 * @returns false, with nothing changed, when the table that was looked at is gone: look again
 * @throws WorkbookProblem "halfWritten" when the former content cannot be put back either: the working sheet then
 * stays, visible, with both.
 */
export async function replaceOwnContent(
  context: Excel.RequestContext,
  former: FormerSheet,
  working: Excel.Worksheet,
  content: OwnSheet,
  mayResizeTables: boolean,
): Promise<boolean> {
  const layout = layOutOwnSheet(content);
  const { worksheet, table } = former;
  const markColumn = Math.max(layout.columnCount, former.used.columns) + 1;
  const begun = working.getRangeByIndexes(0, markColumn, 1, 1);
  const backupColumn = markColumn + 2;
  const keepsTable = table !== undefined && mayResizeTables && former.headerRow === layout.headerRow;
  try {
    table?.getHeaderRowRange().load("address");
    working.getRangeByIndexes(0, backupColumn, 1, 1).copyFrom(fromFirstCell(worksheet), "All");
    begun.values = [["begun"]];
    (table?.getDataBodyRange() ?? fromFirstCell(worksheet)).clear("All");
    const tooWide = former.columns - layout.columnCount;
    if (keepsTable) {
      table.resize(tableArea(worksheet, layout));
      if (tooWide > 0)
        worksheet.getRangeByIndexes(former.headerRow - 1, layout.columnCount, 1, tooWide).clear("All");
    } else {
      table?.getHeaderRowRange().clear("All");
      table?.convertToRange();
      worksheet.getRangeByIndexes(0, 0, former.headerRow, Math.max(1, former.columns)).clear("All");
    }
    worksheet
      .getRangeByIndexes(0, 0, 1, 1)
      .copyFrom(working.getRangeByIndexes(0, 0, layout.values.length, layout.columnCount), "All");
    if (!keepsTable) addTableAt(tableArea(worksheet, layout), table?.name);
    shadeExcelColumns(worksheet, content, layout);
    worksheet.freezePanes.freezeRows(layout.headerRow);
    await context.sync();
    return true;
  } catch (error) {
    begun.load("values");
    try {
      await context.sync();
      if (begun.values[0][0] === "begun")
        await putBack(context, former, working, backupColumn, mayResizeTables);
      else if (SOMEBODY_WAS_FASTER.has(officeCode(error))) return false;
    } catch {
      working.visibility = "Visible";
      await context.sync().catch(() => undefined);
      throw new WorkbookProblem("halfWritten", { sheet: former.name, kept: working.name }, { cause: error });
    }
    throw error;
  }
}

/** Everything on the sheet, from A1 on. */
function fromFirstCell(worksheet: Excel.Worksheet): Excel.Range {
  return worksheet.getRangeByIndexes(0, 0, 1, 1).getBoundingRect(worksheet.getUsedRange());
}

async function putBack(
  context: Excel.RequestContext,
  former: FormerSheet,
  working: Excel.Worksheet,
  backupColumn: number,
  mayResizeTables: boolean,
): Promise<void> {
  const { worksheet } = former;
  worksheet.tables.load("items/id,items/name");
  const kept = working.getUsedRange();
  kept.load("rowIndex,rowCount,columnIndex,columnCount");
  await context.sync();
  const now = worksheet.tables.items[0];
  const formerTable = worksheet.getRangeByIndexes(
    former.headerRow - 1,
    0,
    Math.max(2, former.rows - former.headerRow + 1),
    Math.max(1, former.columns),
  );
  const keepsTable = now !== undefined && former.table !== undefined && mayResizeTables;
  if (now && !keepsTable) now.convertToRange();
  fromFirstCell(worksheet).clear("All");
  if (keepsTable) now.resize(formerTable);
  const rows = kept.rowIndex + kept.rowCount;
  const columns = Math.max(1, kept.columnIndex + kept.columnCount - backupColumn);
  worksheet
    .getRangeByIndexes(0, 0, 1, 1)
    .copyFrom(working.getRangeByIndexes(0, backupColumn, rows, columns), "All");
  if (former.table && !keepsTable) addTableAt(formerTable, former.table.name);
  await context.sync();
}
