import { grouped } from "../../../domain/grouped";
import type { Column, SheetShape } from "../../sheets/column";
import { holdsUnit } from "../../sheets/unit";
import { headWords, type HeadWords, plainWords, sharesWord } from "../headWords";
import { fits } from "../likelyColumns";
import { isAsked, type OpenAccount, type ReadingQuestion } from "../readingAccount";
import type { SheetArea } from "../sheetArea";
import { unknownHeads } from "./wideGroups";
import { ownHeads, type Segment } from "./bestShape";
import type { AddedColumn } from "./addedColumn";
import type { Section } from "./heads";
import { KEYS, type LayoutOptions } from "./layoutOptions";

/** Asks whether heads mean a column of ours: one, or those of several candidates with the same words. */
export function headQuestion(
  sheet: string,
  shape: SheetShape,
  heads: readonly string[],
  column: Column,
): ReadingQuestion {
  const columns = Object.fromEntries(heads.map((head) => [head, column.id]));
  return {
    code: "head",
    sheet,
    facts: { head: heads.join(", "), heads: heads.length, column: column.id },
    proposals: [{ heads: [{ sheet, shape: shape.id, columns }] }],
  };
}

/** Counts of candidates side by side under heads with a word that is none of ours are left unread, and asked once. */
export function withoutUnknown(
  { sheet, values }: SheetArea,
  { texts, index, lines }: Section,
  segment: Segment,
  { answers }: LayoutOptions,
  account: OpenAccount,
): Segment {
  const { groups, shape, from, to } = segment;
  if (groups.length === 0) return segment;
  const own = ownHeads(shape, answers.heads?.filter((given) => given.sheet === sheet) ?? []);
  const isUnknown = (at: number, { kind }: Column) =>
    kind === "count" && headWords(texts[at]!).unknown !== undefined && !own.has(plainWords(texts[at]!));
  const rows = values.slice(index + lines, index + lines + 200);
  const inRange = texts.map((text, at) => (at >= from && at < to ? text : undefined));
  const unknown = [
    ...groups.flatMap(({ positions, rest }) =>
      [...positions].flatMap(([at, column]) =>
        isUnknown(at, column) ? { at, column, rest: rest.get(at)! } : [],
      ),
    ),
    ...unknownHeads(inRange, groups).filter(({ at, column }) =>
      fits(
        column,
        rows.map((cells) => cells[at] ?? null),
      ),
    ),
  ];
  for (const alike of grouped(unknown, ({ column, rest }) => `${column.id} ${plainWords(rest)}`).values())
    account.questions.push(
      headQuestion(
        sheet,
        shape,
        alike.map(({ at }) => texts[at]!),
        alike[0].column,
      ),
    );
  return {
    ...segment,
    groups: groups.map((group) => ({
      ...group,
      positions: new Map([...group.positions].filter(([at, column]) => !isUnknown(at, column))),
    })),
  };
}

/** Counts under heads with a word that is none of ours are left unread and asked. */
export function askUnknownWords(
  { shape }: Segment,
  columns: Map<Column, number>,
  heads: ReadonlyMap<number, HeadWords>,
  sheet: string,
  { answers }: LayoutOptions,
  account: OpenAccount,
): void {
  const own = ownHeads(shape, answers.heads?.filter((given) => given.sheet === sheet) ?? []);
  for (const [column, at] of [...columns]) {
    const head = heads.get(at)!;
    const isCount = column.kind === "count" && !KEYS.some((id) => id === column.id);
    if (!isCount || head.unknown === undefined || own.has(plainWords(head.text))) continue;
    columns.delete(column);
    account.questions.push(headQuestion(sheet, shape, [head.text], column));
  }
}

/** What a head that leaves its column unread can say of counts which are still those of this winter. */
const STILL_COUNTS = new Set<HeadWords["qualifier"]>([undefined, "total"]);

/** Asks for each needed column that no head names whether one that shares a word with it is meant. */
export function askLikelyHeads(
  area: SheetArea,
  section: Section,
  { shape }: Segment,
  columns: ReadonlyMap<Column, number>,
  extras: readonly AddedColumn[],
  heads: ReadonlyMap<number, HeadWords>,
  account: OpenAccount,
): void {
  const { sheet } = area;
  if (shape.id !== "cordons") return;
  const asked = new Set(columns.values());
  const rows = area.values.slice(section.index + section.lines, section.end).slice(0, 200);
  for (const column of shape.columns) {
    if (!column.required || columns.has(column)) continue;
    if (isAsked(account, "head", sheet, column) || isAsked(account, "unit", sheet, column)) continue;
    if (extras.some((extra) => extra.column === column)) continue;
    const likely = [...heads].find(
      ([at, { words, qualifier, year, unit }]) =>
        !asked.has(at) &&
        STILL_COUNTS.has(qualifier) &&
        year === undefined &&
        (!unit || holdsUnit(column.kind, unit)) &&
        sharesWord(words, column) &&
        fits(
          column,
          rows.map((cells) => cells[at] ?? null),
        ),
    );
    if (!likely) continue;
    asked.add(likely[0]);
    account.questions.push(headQuestion(sheet, shape, [likely[1].text], column));
  }
}
