import { isBlank } from "../../sheets/cell";
import type { Column } from "../../sheets/column";
import { choiceOf } from "../choiceWords";
import type { OpenAccount } from "../readingAccount";
import type { SheetArea } from "../sheetArea";
import { everyRow, type AddedColumn } from "./addedColumn";
import type { Segment } from "./bestShape";
import type { Section } from "./heads";

/** The side of each cordon where no column tells it: by the names of the cordons, else by the sheet's. */
export function sideColumn(
  area: SheetArea,
  section: Section,
  { shape, groups }: Segment,
  columns: ReadonlyMap<Column, number>,
  account: OpenAccount,
): AddedColumn[] {
  const { sheet } = area;
  const side = shape.columns.find(({ id }) => id === "side")!;
  if (columns.has(side)) return [];
  const sided = sidesOfNames(area, section, columns, side);
  if (sided) {
    account.notes.push({ code: "sidesOfNames", sheet, facts: { examples: sided.examples } });
    return [{ column: side, header: "", sheetColumn: 0, valueOf: (i) => sided.sides.get(i) ?? null }];
  }
  const named = groups.length === 0 ? choiceOf(side, sheet) : undefined;
  if (named === undefined) return [];
  const { id } = side.choices![named];
  account.notes.push({ code: "keysOfName", sheet, facts: { column: "side", value: id } });
  return [everyRow(side, id)];
}

const SIDED_NAME = /^\s*([a-z])[ .-]?([a-z]|\d)\s*$/i;

/** Sides that the names of cordons begin with ("L1", "RB"), where nearly every name does and both sides are named. */
function sidesOfNames(
  area: SheetArea,
  { index, lines, end }: Section,
  columns: ReadonlyMap<Column, number>,
  side: Column,
): { readonly sides: ReadonlyMap<number, string>; readonly examples: string[] } | undefined {
  const [, cordon] = [...columns].find(([{ id }]) => id === "cordon") ?? [];
  if (cordon === undefined) return undefined;
  const sides = new Map<number, string>();
  const examples = new Map<number, string>();
  let filled = 0;
  for (let at = index + lines; at < end; at++) {
    const name = area.values[at][cordon];
    if (isBlank(name)) continue;
    filled++;
    const [, letter] = SIDED_NAME.exec(String(name)) ?? [];
    const choice = letter === undefined ? undefined : choiceOf(side, letter);
    if (choice === undefined) continue;
    sides.set(at, letter);
    if (!examples.has(choice)) examples.set(choice, String(name).trim());
  }
  return examples.size === 2 && sides.size >= filled * 0.8
    ? { sides, examples: [...examples.values()] }
    : undefined;
}
