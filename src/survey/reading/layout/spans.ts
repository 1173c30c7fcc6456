import { SHEETS } from "../../sheets/sheets";
import { columnNamed, headWords } from "../headWords";
import { KEYS } from "./layoutOptions";

/** Stretches of columns that may be tables of their own: a new one begins where a key's head comes again. */
export function spans(texts: readonly (string | undefined)[]): [number, number][] {
  const plain = texts.map((text) => (text === undefined ? undefined : headWords(text).words));
  const behindGaps = startsBehindGaps(plain);
  const starts = behindGaps.length > 0 ? [0, ...behindGaps] : startsAgain(plain);
  return starts.map((start, i) => [start, starts[i + 1] ?? texts.length]);
}

/** Places from which on a key's head and those behind it come again. */
function startsAgain(plain: readonly (string | undefined)[]): number[] {
  const starts = [0];
  const seen = new Map<string, number>();
  plain.forEach((words, at) => {
    if (words === undefined) return;
    const isKey = KEYS.some((id) => columnNamed(SHEETS.cordons, words)?.id === id);
    if (
      isKey &&
      (seen.get(words) ?? -1) >= starts[starts.length - 1] &&
      againFrom(plain, at, starts[starts.length - 1])
    )
      starts.push(at);
    seen.set(words, at);
  });
  return starts;
}

/** Places behind a blank column from which on heads of the table before it come again, in whatever order. */
function startsBehindGaps(plain: readonly (string | undefined)[]): number[] {
  const namesVine = (words: readonly (string | undefined)[]) =>
    words.some((word) => word !== undefined && columnNamed(SHEETS.cordons, word)?.id === "vine");
  let start = 0;
  return plain.flatMap((words, at) => {
    if (at === 0 || words === undefined || plain[at - 1] !== undefined) return [];
    const end = plain.indexOf(undefined, at);
    const own = plain.slice(at, end < 0 ? plain.length : end);
    const before = plain.slice(start, at);
    const again = own.filter((word) => before.includes(word)).length;
    if (again < 3 || !namesVine(before) || !namesVine(own)) return [];
    start = at;
    return [at];
  });
}

/** True where at least three heads behind a place stand before it too. */
function againFrom(plain: readonly (string | undefined)[], at: number, from: number): boolean {
  const before = new Set(plain.slice(from, at));
  return plain.slice(at).filter((words) => words !== undefined && before.has(words)).length >= 3;
}
