import { OWN_SHEET_NAME } from "../ownSheet";
import { WorkbookProblem, type PivotWanted } from "../surveyWorkbook";
import { mayAddSheets } from "./mayAddSheets";
import { officeCode } from "./excelProblem";

/** Row of the PivotTable's first cell: above it the title, and room for the filters that Excel puts there. */
const FIRST_ROW = 9;

/**
 * Refreshes the PivotTable that was made before, under whatever name and in whatever arrangement a person has given
 * it, or makes it on a sheet of its own. The one made before is known by its name, or by the sheet that was made for it.
 *
 * @throws WorkbookProblem "notOurs" when a person's own sheet has the name; "pivotLost" when the PivotTable cannot be
 * refreshed since its source is another one now
 */
export async function writeExcelPivot(
  context: Excel.RequestContext,
  pivot: PivotWanted,
): Promise<"made" | "refreshed"> {
  const source = context.workbook.worksheets.getItemOrNullObject(pivot.source);
  source.load("name");
  source.tables.load("items/id,items/name");
  const sheet = context.workbook.worksheets.getItemOrNullObject(pivot.sheet);
  sheet.load("name");
  const own = sheet.names.getItemOrNullObject(OWN_SHEET_NAME);
  own.load("name");
  sheet.pivotTables.load("items/id,items/name");
  const named = context.workbook.pivotTables.getItemOrNullObject(pivot.name);
  named.load("name");
  await context.sync();
  if (source.isNullObject || source.tables.items.length === 0)
    throw new WorkbookProblem("noSheet", { sheet: pivot.source });
  if (!sheet.isNullObject && own.isNullObject) throw new WorkbookProblem("notOurs", { sheet: sheet.name });

  const onSheet = sheet.isNullObject ? undefined : sheet.pivotTables.items[0];
  const there = named.isNullObject ? onSheet : named;
  if (there) {
    await refresh(context, there);
    return "refreshed";
  }
  await make(context, pivot, source.tables.items[0], sheet.isNullObject ? undefined : sheet);
  return "made";
}

async function refresh(context: Excel.RequestContext, there: Excel.PivotTable): Promise<void> {
  const { name } = there;
  there.refresh();
  try {
    await context.sync();
  } catch (error) {
    if (officeCode(error) === "AccessDenied") throw error;
    throw new WorkbookProblem("pivotLost", { name }, { cause: error });
  }
}

async function make(
  context: Excel.RequestContext,
  wanted: PivotWanted,
  source: Excel.Table,
  former: Excel.Worksheet | undefined,
): Promise<void> {
  if (!former) await mayAddSheets(context);
  const sheet = former ?? context.workbook.worksheets.add(wanted.sheet);
  try {
    if (!former) sheet.names.add(OWN_SHEET_NAME, "=TRUE").visible = false;
    wanted.title.forEach((line, i) => {
      sheet.getRangeByIndexes(i, 0, 1, 1).values = [[`'${line}`]];
    });
    sheet.getRangeByIndexes(0, 0, 1, 1).format.font.bold = true;
    const pivot = sheet.pivotTables.add(wanted.name, source, sheet.getRangeByIndexes(FIRST_ROW - 1, 0, 1, 1));
    for (const header of wanted.filters) pivot.filterHierarchies.add(pivot.hierarchies.getItem(header));
    for (const header of wanted.rows) pivot.rowHierarchies.add(pivot.hierarchies.getItem(header));
    for (const { header, name, by, format } of wanted.values) {
      const value = pivot.dataHierarchies.add(pivot.hierarchies.getItem(header));
      value.summarizeBy = by;
      value.name = name;
      if (format) value.numberFormat = format;
    }
    await context.sync();
  } catch (error) {
    await takeAway(context, wanted, former !== undefined);
    throw error;
  }
}

/** Takes half a PivotTable away again, and the sheet that was made for it. */
async function takeAway(
  context: Excel.RequestContext,
  wanted: PivotWanted,
  keepSheet: boolean,
): Promise<void> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(wanted.sheet);
  sheet.load("name");
  const pivot = context.workbook.pivotTables.getItemOrNullObject(wanted.name);
  pivot.load("name");
  await context.sync();
  if (!pivot.isNullObject) pivot.delete();
  if (!sheet.isNullObject && !keepSheet) sheet.delete();
  await context.sync();
}
