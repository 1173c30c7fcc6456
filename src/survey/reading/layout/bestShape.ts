import { isBlank } from "../../sheets/cell";
import type { Column, SheetShape } from "../../sheets/column";
import { SHEETS } from "../../sheets/sheets";
import { holdsUnit } from "../../sheets/unit";
import { columnNamed, headWords, type HeadWords, plainWords } from "../headWords";
import { isReadable } from "../isReadable";
import type { ReadingAnswers } from "../readingAccount";
import type { SheetArea } from "../sheetArea";
import { keysOfSheetName } from "./sheetKeys";
import { type WideGroup, wideGroups } from "./wideGroups";
import type { LayoutOptions } from "./layoutOptions";

/** Columns of one table side by side with others, as positions in the area. */
export interface Segment {
  readonly from: number;
  readonly to: number;
  readonly shape: SheetShape;
  readonly columns: ReadonlyMap<Column, number>;
  readonly groups: readonly WideGroup[];
}

export function bestShape(
  area: SheetArea,
  texts: readonly (string | undefined)[],
  from: number,
  to: number,
  given: Readonly<Record<string, unknown>>,
  options: LayoutOptions,
  firstRow: number,
): { segment: Segment; score: number } | undefined {
  let best: { segment: Segment; score: number } | undefined;
  const known = texts.slice(from, to).filter((text) => text !== undefined).length;
  const named = keysOfSheetName(area.sheet);
  const answered = options.answers.heads?.filter((heads) => heads.sheet === area.sheet) ?? [];
  const shapes = answered.length > 0 ? [SHEETS[answered[0].shape]] : Object.values(SHEETS);
  for (const shape of shapes) {
    if (shape.id === "settings") continue;
    const own = ownHeads(shape, answered);
    const groups = shape.id === "cordons" ? wideGroups(texts, from, to, options.winter, own) : [];
    const columns = new Map<Column, number>();
    for (let at = from; at < to; at++) {
      const text = texts[at];
      if (text === undefined || groups.some(({ positions }) => positions.has(at))) continue;
      const column = own.get(plainWords(text)) ?? columnOf(shape, headWords(text), own);
      if (column && (!columns.has(column) || isPlainer(column, text, texts[columns.get(column)!]!)))
        columns.set(column, at);
    }
    const isWide = groups.length > 1 && !has(columns, "liveSpurs") && has(columns, "vine");
    const required = shape.columns.filter((column) => column.required);
    const present = required.filter(
      (column) =>
        columns.has(column) ||
        given[column.id] !== undefined ||
        (column.id === "liveSpurs" && hasLiveBeside(shape, texts, from, to)) ||
        (shape.id === "cordons" && column.id in named),
    ).length;
    const share = present / required.length;
    const isAnswered = answered.length > 0 && columns.size > 0;
    if (!isAnswered && !isWide && (columns.size < 3 || share < 0.5)) continue;
    if (!isAnswered && !isWide && !looksLike(area, shape, columns, known, firstRow)) continue;
    const score = (isWide ? 20 + groups.length : 0) + columns.size + 2 * share;
    const isNamed = Object.values(shape.name).some((name) => plainWords(name) === plainWords(area.sheet));
    if (score + (isNamed ? 1 : 0) > (best?.score ?? 0))
      best = {
        segment: { from, to, shape, columns, groups: isWide ? groups : [] },
        score: score + (isNamed ? 1 : 0),
      };
  }
  return best;
}

/** True for a head that says that the spurs live, where the one before said only that they are spurs. */
function isPlainer({ id }: Column, head: string, before: string): boolean {
  const saysLive = (text: string) =>
    /\b(live|living|alive|viv[oa]s?|vivantes?|vivants?)\b/.test(plainWords(text));
  return id === "liveSpurs" && saysLive(head) && !saysLive(before);
}

function has(columns: ReadonlyMap<Column, number>, id: string): boolean {
  return [...columns.keys()].some((column) => column.id === id);
}

/** The column that a head names, unless one of its words makes it another. */
function columnOf(shape: SheetShape, head: HeadWords, own: ReadonlyMap<string, Column>): Column | undefined {
  if (head.qualifier !== undefined || head.year !== undefined) return undefined;
  const column = columnNamed(shape, head.words);
  if (!column || [...own.values()].includes(column) || isOfOtherUnit(column, head)) return undefined;
  return column;
}

/** True for a head whose unit makes its column another: per cents of live spurs are no counts, a trunk in inches no number. */
export function isOfOtherUnit({ kind }: Column, { unit }: HeadWords): boolean {
  return unit !== undefined && kind !== "text" && !holdsUnit(kind, unit);
}

/** True where live spurs stand under a year's head or can be derived from dead ones. */
function hasLiveBeside(
  shape: SheetShape,
  texts: readonly (string | undefined)[],
  from: number,
  to: number,
): boolean {
  return texts.slice(from, to).some((text) => {
    if (text === undefined) return false;
    const head = headWords(text);
    if (columnNamed(shape, head.words)?.id !== "liveSpurs") return false;
    return head.year !== undefined || head.qualifier === "dead" || head.qualifier === "missing";
  });
}

/** A person's own heads, by their plain words. */
export function ownHeads(
  shape: SheetShape,
  answered: NonNullable<ReadingAnswers["heads"]>,
): Map<string, Column> {
  const own = new Map<string, Column>();
  for (const { columns } of answered)
    for (const [head, id] of Object.entries(columns)) {
      const column = shape.columns.find((candidate) => candidate.id === id);
      if (column) own.set(plainWords(head), column);
    }
  return own;
}

const ABOUT_VINES = new Set(["block", "row", "vine", "note", "countedBy", "countedOn"]);

/**
 * True unless the sheet only borrows our words: a list of sprays names blocks and rows, a list of replants vines, and
 * neither holds what our sheet would.
 */
function looksLike(
  area: SheetArea,
  shape: SheetShape,
  columns: ReadonlyMap<Column, number>,
  known: number,
  firstRow: number,
): boolean {
  const isNamed = Object.values(shape.name).some((name) => plainWords(name) === plainWords(area.sheet));
  if (isNamed) return true;
  if (shape.id === "vines" && [...columns.keys()].every(({ id }) => ABOUT_VINES.has(id))) return false;
  if ((shape.id === "harvest" || shape.id === "blocks") && columns.size < known) {
    if (columns.size < 4 || columns.size / known < 0.6) return false;
  }
  const rows = area.values.slice(firstRow, firstRow + 40).filter((row) => row.some((cell) => !isBlank(cell)));
  if (shape.id === "blocks" && rows.length > 0) {
    const [, at] = [...columns].find(([{ id }]) => id === "block") ?? [undefined, -1];
    const names = rows
      .map((row) =>
        String(row[at] ?? "")
          .trim()
          .toLowerCase(),
      )
      .filter((name) => name !== "");
    if (new Set(names).size < names.length * 0.6) return false;
    for (const [column, position] of columns) {
      if (column.kind === "text") continue;
      const cells = rows.map((row) => row[position] ?? null).filter((cell) => !isBlank(cell));
      if (cells.length > 2 && cells.filter((cell) => isReadable(column, cell)).length < cells.length / 2)
        return false;
    }
  }
  return true;
}
