import { areasOfAddress, type CellArea } from "../address";
import type { TablePlace } from "../surveyWorkbook";

/** Every table of the workbook with its place. */
export async function tablesOfExcel(context: Excel.RequestContext): Promise<TablePlace[]> {
  const { tables } = context.workbook;
  tables.load("items/name,items/showTotals,items/worksheet/name");
  await context.sync();
  const ranges = tables.items.map((table) => {
    const range = table.getRange();
    range.load("address");
    return range;
  });
  await context.sync();
  return tables.items.map(({ name, showTotals, worksheet }, index) => ({
    name,
    sheet: worksheet.name,
    area: areasOfAddress(ranges[index].address)[0],
    totals: showTotals,
  }));
}

/** The cells of a name that a person gave; undefined for a name of something else. */
export async function areaOfExcelName(
  context: Excel.RequestContext,
  name: string,
): Promise<{ sheet: string; area: CellArea } | undefined> {
  const range = context.workbook.names.getItemOrNullObject(name).getRangeOrNullObject();
  range.load("address,worksheet/name");
  await context.sync();
  if (range.isNullObject) return undefined;
  return { sheet: range.worksheet.name, area: areasOfAddress(range.address)[0] };
}

/** The cells that a spilling formula fills, from the cell of the formula or from one that it fills. */
export async function filledInExcel(
  context: Excel.RequestContext,
  sheet: string,
  row: number,
  column: number,
): Promise<CellArea | undefined> {
  const cell = context.workbook.worksheets.getItem(sheet).getCell(row - 1, column - 1);
  const own = cell.getSpillingToRangeOrNullObject();
  const parents = cell.getSpillParentOrNullObject().getSpillingToRangeOrNullObject();
  own.load("address");
  parents.load("address");
  await context.sync();
  const filled = own.isNullObject ? parents : own;
  return filled.isNullObject ? undefined : areasOfAddress(filled.address)[0];
}
