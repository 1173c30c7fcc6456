import { isBlank, isCellError, type CellValue } from "../../survey/sheets/cell";
import type { SheetArea } from "../../survey/reading/sheetArea";
import { cellName } from "../address";
import { FileWorkbook } from "../file/fileWorkbook";
import type { CellWrite } from "../surveyWorkbook";
import type { DeskWorkbook } from "./deskWorkbook";
import { loadWorkbook, type LoadedSheet } from "./loadWorkbook";
import type { Area } from "./sheetLook";

/** A file made from what is on the page, and what of it no file could take over. */
export interface SavedCopy {
  readonly bytes: Uint8Array;
  /** Sheets that were added or renamed on the page. */
  readonly sheetsLeftOut: readonly string[];
  /** Formulas typed on the page that fill more than their own cell: Excel takes them so only when typed anew there. */
  readonly typeAnew: readonly string[];
}

/**
 * A copy of the file that is open on the page, with every cell that was changed there, the sheets that the pane wrote
 * and its small facts. Cells are spliced into the file's own parts: all else stays byte for byte what it was.
 */
export async function savedCopy(file: string, original: Uint8Array, desk: DeskWorkbook): Promise<SavedCopy> {
  await desk.calculated();
  const loaded = await loadWorkbook(file, original);
  const copy = await FileWorkbook.open(file, original);
  const sheetsLeftOut: string[] = [];
  const typeAnew: string[] = [];
  for (const name of await desk.sheetNames()) {
    const own = desk.ownContents.get(name.toLowerCase());
    const sheet = loaded.sheets.find((candidate) => candidate.name === name);
    if (own) await copy.writeOwnSheet(own);
    else if (!sheet) sheetsLeftOut.push(name);
    else {
      const { writes, spilling } = changes(sheet, await desk.readSheet(name), desk.filledByFormula(name));
      if (writes.length > 0) await copy.writeCells(name, writes);
      typeAnew.push(...spilling.map((cell) => `${name}!${cell}`));
    }
  }
  const flags = await desk.readFlags("");
  for (const key of (await copy.readFlags("")).keys())
    if (!flags.has(key)) await copy.writeFlag(key, undefined);
  for (const [key, value] of flags) await copy.writeFlag(key, value);
  return { bytes: copy.bytes(), sheetsLeftOut, typeAnew };
}

/** The cells that differ between a sheet of the file and the same sheet on the page. */
function changes(sheet: LoadedSheet, now: SheetArea, filled: readonly Area[]) {
  const before = new Map(sheet.rows.map((row) => [row.number, row]));
  const filledInFile = sheet.look?.filledByFormula ?? [];
  const writes: CellWrite[] = [];
  const spilling: string[] = [];
  const lastRow = Math.max(
    now.firstRow + now.values.length - 1,
    sheet.rows[sheet.rows.length - 1]?.number ?? 0,
  );
  for (let row = 1; row <= lastRow; row++) {
    const stored = before.get(row);
    const values = now.values[row - now.firstRow];
    const width = Math.max(stored?.values.length ?? 0, values ? now.firstColumn - 1 + values.length : 0);
    for (let column = 1; column <= width; column++) {
      const value = values?.[column - now.firstColumn] ?? null;
      const formula = values ? now.formulaAt(row - now.firstRow, column - now.firstColumn) : null;
      const oldValue = stored?.values[column - 1] ?? null;
      const oldFormula =
        stored?.formulas?.get(column - 1) ?? (isCellError(oldValue) ? `=${oldValue.error}` : null);
      const area = filled.find((candidate) => holds(candidate, row, column));
      const isWorkedOut = formula !== null || area !== undefined;
      if (formula === oldFormula && sameValue(value, oldValue, isWorkedOut)) continue;
      const begins = area && isFirst(area, row, column);
      if (area && !begins && !filledInFile.some((candidate) => holds(candidate, row, column))) continue;
      if (begins && formula !== oldFormula) spilling.push(cellName(row, column));
      if (formula !== null) writes.push({ row, column, formula, shown: value });
      else if (!isCellError(value)) writes.push({ row, column, value });
    }
  }
  return { writes, spilling };
}

function holds({ startRow, startColumn, endRow, endColumn }: Area, row: number, column: number): boolean {
  return row - 1 >= startRow && row - 1 <= endRow && column - 1 >= startColumn && column - 1 <= endColumn;
}

function isFirst({ startRow, startColumn }: Area, row: number, column: number): boolean {
  return row - 1 === startRow && column - 1 === startColumn;
}

/** Share by which two programs may differ in the last digits of what they work out. */
const LAST_DIGITS = 1e-12;

function sameValue(one: CellValue, other: CellValue, isWorkedOut: boolean): boolean {
  if (isWorkedOut && typeof one === "number" && typeof other === "number")
    return Math.abs(one - other) <= LAST_DIGITS * Math.abs(other);
  if (isBlank(one) || isBlank(other)) return isBlank(one) && isBlank(other);
  return isCellError(one) && isCellError(other) ? one.error === other.error : one === other;
}
