import { isBlank } from "../../sheets/cell";
import { unitNamed } from "../../sheets/unit";
import { headWords, isHarmless, NAMES, plainWords } from "../headWords";
import type { SheetArea } from "../sheetArea";

/** Heads of several lines joined; a group's head stands over all columns up to the next. */
export function headTexts(area: SheetArea, index: number, lines: number): (string | undefined)[] {
  const width = area.values.reduce((most, row) => Math.max(most, row.length), 0);
  const rows = area.values
    .slice(index, index + lines)
    .map((row) =>
      Array.from({ length: width }, (_, at) => (isBlank(row[at]) ? undefined : String(row[at]).trim())),
    );
  if (lines > 1 && isGroupLine(rows[0], rows[1])) {
    let group: string | undefined;
    rows[0] = rows[0].map((text, at) => {
      if (text !== undefined) group = text;
      return rows[1][at] === undefined ? text : group;
    });
  }
  return Array.from({ length: width }, (_, at) => {
    const parts = rows.flatMap((row) => row[at] ?? []);
    const different = parts.filter((part, i) => parts.indexOf(part) === i);
    return different.length === 0 ? undefined : different.reduce(joinedHead);
  });
}

/** Heads over groups of columns that say no more than the heads below. */
const OVER_HEADS =
  /^(places?|locations?|where|lieu|ubicacion|lugar|cordons?|arms?|bras|brazos?|spurs?|coursons|pitones|counts?|comptages?|conteos?|measures?|measurements|mesures|medidas)$/;

/** A head with its next line: a word broken at the end of the line, a unit or another hint below, or more words. */
function joinedHead(head: string, below: string): string {
  if (/\p{L}-$/u.test(head) && /^\p{Ll}/u.test(below)) return head.slice(0, -1) + below;
  const isHint = unitNamed(below) || (isHarmless(below) && !NAMES.has(plainWords(below)));
  if (isHint) return `${head} (${below})`;
  return OVER_HEADS.test(plainWords(head)) && NAMES.has(headWords(below).words) ? below : `${head} ${below}`;
}

/** True where the heads of the second line repeat, so that the first tells them apart. */
function isGroupLine(
  first: readonly (string | undefined)[],
  second: readonly (string | undefined)[],
): boolean {
  const under = second.flatMap((text) => (text === undefined ? [] : [plainWords(text)]));
  return (
    new Set(under).size < under.length &&
    second.some((text, at) => text !== undefined && first[at] === undefined)
  );
}
