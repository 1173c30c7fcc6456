import { type CellValue, isBlank } from "../../sheets/cell";
import type { Column } from "../../sheets/column";
import { type Unit, unitNamed } from "../../sheets/unit";
import { columnNamed, headWords } from "../headWords";
import type { OpenAccount } from "../readingAccount";
import type { SheetArea } from "../sheetArea";
import type { Segment } from "./bestShape";
import type { AddedColumn } from "./addedColumn";
import type { Section } from "./heads";

/** Lengths in feet with the inches beyond them in the next column, or metres with centimetres, as one column. */
export function inTwoParts(
  { sheet, values, firstColumn }: SheetArea,
  { index, lines, end, texts }: Section,
  { shape }: Segment,
  columns: Map<Column, number>,
  units: ReadonlyMap<Column, Unit>,
  extras: AddedColumn[],
  account: OpenAccount,
): void {
  for (const [column, at] of [...columns]) {
    const text = texts[at + 1];
    const unit = units.get(column);
    if (column.kind !== "length" || !unit || text === undefined) continue;
    const next = headWords(text);
    const small = unitNamed(text) ?? (columnNamed(shape, next.words) === column ? next.unit : undefined);
    if (small?.dimension !== unit.dimension || small.perUnit >= unit.perUnit) continue;
    const share = small.perUnit / unit.perUnit;
    const rows = values.slice(index + lines, end);
    const isRest = (cell: CellValue) =>
      isBlank(cell) || (typeof cell === "number" && cell >= 0 && cell * share < 1);
    if (!rows.every((row) => isRest(row[at + 1] ?? null))) continue;
    columns.delete(column);
    account.notes.push({ code: "twoParts", sheet, facts: { head: texts[at]!, second: text } });
    extras.push({
      column,
      header: texts[at]!,
      sheetColumn: firstColumn + at,
      second: firstColumn + at + 1,
      unit,
      valueOf: (line) => {
        const [whole = null, rest = null] = values[line].slice(at, at + 2);
        if (typeof rest !== "number" || (!isBlank(whole) && typeof whole !== "number")) return whole;
        return Number(whole) + rest * share;
      },
    });
  }
}
