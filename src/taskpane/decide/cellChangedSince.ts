import { isBlank, type CellValue } from "../../survey/sheets/cell";
import { cellName } from "../../survey/sheets/cellName";
import type { SheetArea } from "../../survey/reading/sheetArea";
import type { SurveyTable } from "../../survey/season/season";
import { sameContent } from "../../workbook/actions/changeCells";
import type { Pane } from "../pane";

/** Columns that may be written once for several rows. */
const KEYS = ["block", "row", "vine", "side"];

/** A row of a table that was read, and what some of its cells should still hold. */
export interface HeldRow {
  readonly table: SurveyTable;
  readonly index: number;
  /** Sheet columns from 1, with the value of each. */
  readonly cells: readonly { readonly column: number; readonly value: CellValue }[];
}

/**
 * The first cell of these rows that no longer holds what it should, undefined where all do: asked before writing, so
 * that rows which were sorted or edited since they were read are not written to. Each sheet is read once. A cell that
 * says where a cordon stands and was blank, since what stands above it counts, as in merged cells, may still be blank.
 */
export async function cellChangedSince(
  { workbook, held }: Pick<Pane, "workbook" | "held">,
  rows: readonly HeldRow[],
): Promise<{ sheet: string; cell: string } | undefined> {
  const read = new Map((await held.read()).areas.map((area) => [area.sheet, area]));
  const areas = new Map<string, SheetArea>();
  for (const sheet of new Set(rows.map(({ table }) => table.sheet)))
    areas.set(sheet, await workbook.readSheet(sheet, { rows: stretchOf(rows, sheet) }));
  for (const { table, index, cells } of rows) {
    const { sheet } = table;
    const area = areas.get(sheet)!;
    const row = table.sheetRow(index);
    for (const { column, value } of cells) {
      const now = cellOf(area, row, column);
      if (sameContent({ value }, { value: now })) continue;
      const isFilledIn = KEYS.some((id) => table.column(id)?.sheetColumn === column);
      const wasBlank = isFilledIn && isBlank(cellOf(read.get(sheet), row, column));
      if (!(isBlank(now) && wasBlank)) return { sheet, cell: cellName(row, column) };
    }
  }
  return undefined;
}

function cellOf(area: SheetArea | undefined, row: number, column: number): CellValue {
  return area?.values[row - area.firstRow]?.[column - area.firstColumn] ?? null;
}

/** The stretch of sheet rows in which the rows of one sheet lie. */
function stretchOf(rows: readonly HeldRow[], sheet: string): { first: number; count: number } {
  let [first, last] = [Infinity, 0];
  for (const { table, index } of rows) {
    if (table.sheet !== sheet) continue;
    first = Math.min(first, table.sheetRow(index));
    last = Math.max(last, table.sheetRow(index));
  }
  return { first, count: last - first + 1 };
}
