import { CellValueType, type ICellData, type Nullable } from "@univerjs/core";
import type { CellValue } from "../../survey/sheets/cell";

/** The errors that a formula can end in; without a formula the same letters are plain text. */
const ERRORS: ReadonlySet<string> = new Set([
  "#N/A",
  "#VALUE!",
  "#REF!",
  "#NAME?",
  "#DIV/0!",
  "#NUM!",
  "#NULL!",
  "#SPILL!",
  "#CALC!",
  "#CYCLE!",
  "#ERROR!",
]);

/** Text that the grid would take for a number, a day, a truth value, an error or a formula. */
const READS_AS_SOMETHING_ELSE = /^\s*(?:[-=+@'#.,\d$€£(]|true\s*$|false\s*$)/i;

/** Takes away whatever stood in a cell before: value, formula, rich text. */
export const EMPTY_CELL = { v: null, f: null, si: null, p: null, t: null } satisfies ICellData;

/** What the engine holds in a cell, as the rest of the project sees it; a formula elsewhere may have filled it. */
export function cellValueOf(
  cell: Nullable<ICellData>,
  isWorkedOut = cell ? hasFormula(cell) : false,
): CellValue {
  if (!cell) return null;
  if (cell.p) return cell.p.body?.dataStream.replace(/\r\n$/, "") ?? null;
  const { v, t } = cell;
  if (v === null || v === undefined || v === "") return null;
  if (t === CellValueType.BOOLEAN) return v === 1 || v === true || v === "TRUE";
  if (typeof v === "string") {
    if (isWorkedOut && ERRORS.has(v)) return { error: v };
    return t === CellValueType.NUMBER ? Number(v) : v;
  }
  return v;
}

/** True for a cell whose value is worked out. */
export function hasFormula(cell: ICellData): boolean {
  return Boolean(cell.f) || Boolean(cell.si);
}

/** A value as the engine stores it; text stays text whatever it begins with. */
export function cellDataOf(value: CellValue): ICellData {
  if (value === null || value === "") return EMPTY_CELL;
  if (typeof value === "object") return { ...EMPTY_CELL, f: `=${value.error}`, v: value.error };
  if (typeof value === "boolean") return { ...EMPTY_CELL, v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (typeof value === "number") return { ...EMPTY_CELL, v: value, t: CellValueType.NUMBER };
  return {
    ...EMPTY_CELL,
    v: value,
    t: READS_AS_SOMETHING_ELSE.test(value) ? CellValueType.FORCE_STRING : CellValueType.STRING,
  };
}
