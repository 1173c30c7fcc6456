import type { OwnSheetLayout } from "../ownSheet";
import { WorkbookProblem } from "../surveyWorkbook";
import { addTableAt, tableArea } from "./ownTable";

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

/**
 * Replaces the table of an own sheet by the one on the working sheet in one batch; when that is refused, what stood
 * there comes back from a copy that is kept beside the new table.
 *
 * @throws WorkbookProblem "halfWritten" when the former content cannot be put back either: the working sheet then
 * stays, visible, with both.
 */
export async function replaceOwnContent(
  context: Excel.RequestContext,
  former: FormerSheet,
  working: Excel.Worksheet,
  layout: OwnSheetLayout,
  mayResizeTables: boolean,
): Promise<void> {
  const { worksheet, table } = former;
  const [rows, columns] = [Math.max(1, former.rows), Math.max(1, former.columns)];
  const backupColumn = Math.max(layout.columnCount, columns) + 1;
  const backup = () => working.getRangeByIndexes(0, backupColumn, rows, columns);
  backup().copyFrom(worksheet.getRangeByIndexes(0, 0, rows, columns), "All");
  await context.sync();

  const fresh = { rows: layout.values.length, columns: layout.columnCount };
  const keepsTable = table !== undefined && mayResizeTables && former.headerRow === layout.headerRow;
  try {
    if (keepsTable) table.resize(tableArea(worksheet, layout));
    else table?.convertToRange();
    cover(worksheet, working.getRangeByIndexes(0, 0, fresh.rows, fresh.columns), fresh, { rows, columns });
    if (!keepsTable) addTableAt(tableArea(worksheet, layout), table?.name);
    worksheet.freezePanes.freezeRows(layout.headerRow);
    await context.sync();
  } catch (error) {
    try {
      await putBack(context, former, backup(), fresh, mayResizeTables);
    } catch {
      working.visibility = "Visible";
      await context.sync().catch(() => undefined);
      throw new WorkbookProblem("halfWritten", { sheet: former.name, kept: working.name }, { cause: error });
    }
    throw error;
  }
}

interface Size {
  readonly rows: number;
  readonly columns: number;
}

/** Copies a block to A1 and clears what the larger one before it leaves over. */
function cover(worksheet: Excel.Worksheet, block: Excel.Range, size: Size, before: Size): void {
  worksheet.getRangeByIndexes(0, 0, size.rows, size.columns).copyFrom(block, "All");
  const width = Math.max(size.columns, before.columns);
  if (before.rows > size.rows)
    worksheet.getRangeByIndexes(size.rows, 0, before.rows - size.rows, width).clear("All");
  if (before.columns > size.columns)
    worksheet
      .getRangeByIndexes(0, size.columns, Math.min(size.rows, before.rows), before.columns - size.columns)
      .clear("All");
}

async function putBack(
  context: Excel.RequestContext,
  former: FormerSheet,
  backup: Excel.Range,
  fresh: Size,
  mayResizeTables: boolean,
): Promise<void> {
  const { worksheet } = former;
  worksheet.tables.load("items/id,items/name");
  await context.sync();
  const now = worksheet.tables.items[0];
  const formerTable = worksheet.getRangeByIndexes(
    former.headerRow - 1,
    0,
    Math.max(2, former.rows - former.headerRow + 1),
    Math.max(1, former.columns),
  );
  const keepsTable = now !== undefined && former.table !== undefined && mayResizeTables;
  if (keepsTable) now.resize(formerTable);
  else now?.convertToRange();
  cover(worksheet, backup, former, fresh);
  if (former.table && !keepsTable) addTableAt(formerTable, former.table.name);
  await context.sync();
}
