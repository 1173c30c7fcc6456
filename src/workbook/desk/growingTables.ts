import type { ICellData, ICommandInfo, Nullable } from "@univerjs/core";
import type { FormulaDataModel } from "@univerjs/preset-sheets-core";
import { movableFormula } from "../file/movableFormula";
import type { OutlineTable } from "../file/workbookOutline";
import { shownFormula } from "../storedFormula";
import { changedRanges } from "./changedRanges";
import type { FWorkbook, FWorksheet } from "./fWorkbook";
import type { LoadedSheet } from "./readContent";
import type { Matrix } from "./ownSheetData";
import { areaOf, type Area } from "./sheetLook";

/** Undoing and redoing put a table's size back by themselves. */
const BY_HISTORY = /^univer\.command\.(?:undo|redo)$/;

/**
 * Tables of a file that take in the rows typed directly below them, as in Excel: the table's area grows, so that formulas
 * over its columns see the new rows; its column formulas and cell styles are continued. A table that is closed by totals,
 * or below which something stood already when the file was opened, does not grow.
 */
export class GrowingTables {
  private readonly known: ReadonlyMap<string, OutlineTable>;
  private growing: Promise<unknown> = Promise.resolve();
  private hasGrown = false;

  constructor(
    private readonly workbook: FWorkbook,
    private readonly formulas: FormulaDataModel,
    sheets: readonly LoadedSheet[],
    private readonly set: (sheet: FWorksheet, cells: Matrix) => void,
  ) {
    this.known = new Map(
      sheets.flatMap(({ rows, tables }) =>
        tables
          .filter((table) => !table.hasTotals && !stoodBelow(rows, areaOf(table.ref)))
          .map((table) => [table.name, table] as const),
      ),
    );
  }

  /** Resolves when every table has taken in what was typed below it; true where one did since it was asked last. */
  async grown(): Promise<boolean> {
    await this.growing;
    const hasGrown = this.hasGrown;
    this.hasGrown = false;
    return hasGrown;
  }

  /** Looks whether a command filled the rows below a table. */
  grow(command: Readonly<ICommandInfo>): void {
    if (this.known.size === 0 || BY_HISTORY.test((command.params as { trigger?: string })?.trigger ?? ""))
      return;
    for (const { unitId, subUnitId, range, shifts } of changedRanges(command)) {
      const sheet = unitId === this.workbook.getId() && !shifts && this.workbook.getSheetBySheetId(subUnitId);
      if (!sheet) continue;
      const tables = sheet.getSubTableInfos();
      for (const { id, name, range: table } of tables) {
        const known = this.known.get(name);
        if (!known || range.startRow > table.endRow + 1 || range.endRow <= table.endRow) continue;
        const grown = { ...table, endRow: this.lastFilled(sheet, table, range.endRow) };
        const isInTheWay = tables.some((other) => other.id !== id && overlap(other.range, grown));
        if (grown.endRow === table.endRow || isInTheWay) continue;
        const before = this.growing;
        this.growing = before.then(async () => {
          await sheet.setTableRange(id, grown);
          this.continueColumns(sheet, known, table, grown.endRow);
          this.hasGrown = true;
        });
      }
    }
  }

  /** The last row of those below a table, without a gap, in which something stands. */
  private lastFilled(sheet: FWorksheet, { startColumn, endColumn, endRow }: Area, most: number): number {
    const cells = sheet.getSheet().getCellMatrix();
    const isFilled = (row: number) => {
      for (let column = startColumn; column <= endColumn; column++)
        if (hasContent(cells.getValue(row, column))) return true;
      return false;
    };
    let last = endRow;
    while (last < most && isFilled(last + 1)) last++;
    return last;
  }

  /** Formulas of whole columns, and the look of the last row, for the rows that a table has taken in. */
  private continueColumns(
    sheet: FWorksheet,
    { columnFormulas }: OutlineTable,
    { startColumn, endColumn, endRow }: Area,
    lastRow: number,
  ): void {
    const cells = sheet.getSheet().getCellMatrix();
    const matrix: Matrix = {};
    for (let column = startColumn; column <= endColumn; column++) {
      const stored = columnFormulas.get(column - startColumn);
      const above = this.formulas.getFormulaStringByCell(
        endRow,
        column,
        sheet.getSheetId(),
        this.workbook.getId(),
      );
      const moved = above ? movableFormula(above) : undefined;
      const look = cells.getValue(endRow, column)?.s;
      for (let row = endRow + 1; row <= lastRow; row++) {
        const cell = cells.getValue(row, column);
        const formula =
          stored === undefined || hasContent(cell)
            ? undefined
            : (moved?.(row - endRow, 0) ?? shownFormula(stored));
        const s = cell?.s ? undefined : look;
        if (formula === undefined && !s) continue;
        (matrix[row] ??= {})[column] = {
          ...(formula === undefined ? {} : { f: formula }),
          ...(s ? { s } : {}),
        };
      }
    }
    if (Object.keys(matrix).length > 0) this.set(sheet, matrix);
  }
}

function hasContent(cell: Nullable<ICellData>): boolean {
  return Boolean(
    cell && (cell.f || cell.si || cell.p || (cell.v !== undefined && cell.v !== null && cell.v !== "")),
  );
}

function overlap(one: Area, other: Area): boolean {
  return (
    one.startRow <= other.endRow &&
    other.startRow <= one.endRow &&
    one.startColumn <= other.endColumn &&
    other.startColumn <= one.endColumn
  );
}

function stoodBelow(rows: LoadedSheet["rows"], { endRow, startColumn, endColumn }: Area): boolean {
  const below = rows.find(({ number }) => number === endRow + 2);
  return below?.values.slice(startColumn, endColumn + 1).some((value) => value !== null) ?? false;
}
