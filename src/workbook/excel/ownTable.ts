import type { OwnSheetLayout } from "../ownSheet";

const TABLE_STYLE = "TableStyleLight1";

/** Makes the table of an own sheet; without a name Excel chooses one. */
export function addTable(
  worksheet: Excel.Worksheet,
  layout: OwnSheetLayout,
  name: string | undefined,
): Excel.Table {
  return addTableAt(tableArea(worksheet, layout), name);
}

/** Makes a table of ours over this range. */
export function addTableAt(area: Excel.Range, name: string | undefined): Excel.Table {
  const table = area.worksheet.tables.add(area, true);
  if (name) table.name = name;
  table.style = TABLE_STYLE;
  return table;
}

/**
 * Keeps the heads of an own sheet in sight. Excel refuses it while another workbook is in front; a finished table is not
 * worth losing for it.
 */
export async function freezeHeads(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  { headerRow }: OwnSheetLayout,
): Promise<void> {
  worksheet.freezePanes.freezeRows(headerRow);
  await context.sync().catch(() => undefined);
}

/** Headers and rows; a table has at least one row, so an empty one keeps a blank line. */
export function tableArea(worksheet: Excel.Worksheet, layout: OwnSheetLayout): Excel.Range {
  const rows = Math.max(2, layout.values.length - layout.headerRow + 1);
  return worksheet.getRangeByIndexes(layout.headerRow - 1, 0, rows, layout.columnCount);
}

/** Name of the table on an own sheet: formulas may use it. */
export function tableNameOf(sheet: string): string {
  const plain = sheet.normalize("NFD").replace(/[^A-Za-z0-9]+/g, "_");
  return `Cordonbook_${plain}`;
}
