import type { CellValue } from "../sheets/cell";
import { isoDay, isPlausibleDay, textDate, yearlessDate } from "./serialDate";

/** Why a cell in a column of counts is no plain number, for one question a kind. */
export type DoubtKind =
  | "sum"
  | "star"
  | "range"
  | "about"
  | "doubt"
  | "letter"
  | "share"
  | "fraction"
  | "remark"
  | "spaced"
  | "measure"
  | "date"
  | "time"
  | "yesNo"
  | "part";

export type CountOfText =
  /** Only one number can be meant. */
  | { readonly count: number; readonly how: "digits" | "written" | "strokes" | "word" }
  /** Somebody has to say; `proposal` is what was most likely meant, undefined where only a recount tells. */
  | { readonly doubt: DoubtKind; readonly proposal: number | undefined }
  | undefined;

const ONE_STROKE = /^[|IⅠ｜∣¦𝍷]$/u;
/** Signs for five strokes: the tally mark five, and the character that is written stroke by stroke in its place. */
const FIVE_STROKES = /[𝍸正卌]/u;

/**
 * The count that a text shows: digits of any width, strokes, a number with its word; or the reason why somebody has to
 * say what was meant. Undefined for a text that shows no number.
 *
 * @example
 * countOfText("8 spurs") // { count: 8, how: "word" }
 * @example
 * countOfText("IIII II") // { count: 7, how: "strokes" }
 * @example
 * countOfText("12 + 1") // { doubt: "sum", proposal: 13 }
 */
export function countOfText(text: string): CountOfText {
  const strokes = strokesOf(text);
  if (strokes) return strokes;
  const bare = text.normalize("NFKC").replace(/\s+/g, " ").trim().replace(/^=/, "");
  if (bare === "") return undefined;
  if (/^\+?\d+\.?$/.test(bare) || /^\d+[.,]0+$/.test(bare))
    return {
      count: Number.parseInt(bare.replace("+", ""), 10),
      how: /^\d+$/.test(text) ? "digits" : "written",
    };
  for (const [kind, pattern, proposalOf] of DOUBTS) {
    const found = pattern.exec(bare);
    if (found) return { doubt: kind, proposal: proposalOf(found) };
  }
  const day = dayOf(bare);
  if (day) return { doubt: "date", proposal: Math.min(...day) };
  const worded =
    /^(\d+) ?(spurs?|pitone?s?|pit[oó]n|pulgar(?:es)?|coursons?|pcs|live|vivos?|vivants?)\.?$/i.exec(bare);
  return worded ? { count: Number(worded[1]), how: "word" } : undefined;
}

const first = (found: RegExpExecArray) => Number(found[1]);
const none = () => undefined;

const DOUBTS: readonly (readonly [DoubtKind, RegExp, (found: RegExpExecArray) => number | undefined])[] = [
  ["sum", /^(\d+) ?\+ ?(\d+)$/, (found) => Number(found[1]) + Number(found[2])],
  ["star", /^(\d+) ?\*+$/, first],
  [
    "range",
    /^(\d+) ?(?:-|–|—|to|a|à|or|o|ou) ?(\d+)$/i,
    (found) => Math.min(Number(found[1]), Number(found[2])),
  ],
  ["about", /^(?:~|≈|ca\.?|about|approx\.?|aprox\.?|env\.?) ?(\d+)$/i, first],
  ["about", /^(\d+) ?\++$/, first],
  ["doubt", /^(\d+) ?\?+$/, first],
  ["part", /^(\d+) ?(?:\/|of|de|sur) ?(\d+)$/i, first],
  ["measure", /^\d+ ?'(?: ?\d+ ?")?$|^\d+ ?"$/, none],
  ["share", /^[\d.,]+ ?%$/, none],
  ["time", /^(\d{1,2}):(\d{2})(?::\d{2})?$/, (found) => (found[2] === "00" ? Number(found[1]) : undefined)],
  ["yesNo", /^(true|false|verdadero|falso|vrai|faux)$/i, none],
  ["fraction", /^\d* ?\d+[⁄/]\d+$/, none],
  ["spaced", /^(\d) (\d)$/, (found) => Number(found[1] + found[2])],
  ["remark", /^(\d+) ?[([].*[)\]]$/, first],
  ["letter", /^(?=.*[a-z])[\dOolI]+$/i, (found) => digitsMeant(found[0])],
];

/** Month and day of a text that shows a date, also one without its year whose month is a word. */
function dayOf(text: string): readonly [number, number] | undefined {
  const date = textDate(text);
  if (date) {
    const [, month, day] = isoDay("serial" in date ? date.serial : date.dayFirst)
      .split("-")
      .map(Number);
    return [month, day];
  }
  const [yearless] = /\p{L}/u.test(text) ? yearlessDate(text) : [];
  return yearless && [yearless.month, yearless.day];
}

/** Letters that look like digits as those digits. */
function digitsMeant(text: string): number {
  return Number(text.replace(/o/gi, "0").replace(/[lI]/g, "1"));
}

/**
 * Strokes in bundles of five. A keyboard has no stroke across, so that four strokes with a gap behind them are a bundle;
 * common practice of tally sheets. Bundles of another size could mean anything and are asked.
 */
function strokesOf(text: string): CountOfText {
  const body = text.replace(/^\s+/, "");
  if (body.trim() === "") return undefined;
  let count = 0;
  let run = 0;
  let isClear = true;
  const endBundle = (isLast: boolean) => {
    if (run === 0) return;
    if (isLast || run === 5) count += run;
    else if (run === 4) count += 5;
    else {
      count += run;
      isClear = false;
    }
    run = 0;
  };
  for (const sign of body) {
    if (ONE_STROKE.test(sign)) run++;
    else if (FIVE_STROKES.test(sign)) {
      endBundle(true);
      count += 5;
    } else if (/[/\\]/.test(sign) && run === 4) run = 5;
    else if (/\s/.test(sign)) endBundle(false);
    else return undefined;
  }
  endBundle(true);
  if (count === 0) return undefined;
  return isClear ? { count, how: "strokes" } : { doubt: "sum", proposal: count };
}

/**
 * What a spreadsheet made of something typed into a column of counts: dates, times, shares, TRUE. A date proposes the
 * smaller of its month and day, as a range does; a time its whole hours. Undefined for a number that can be a count.
 *
 * @param most the largest count that is possible
 * @example
 * doubtOfNumber(46024, 60) // { doubt: "date", proposal: 1 }
 */
export function doubtOfNumber(
  value: number | boolean,
  most: number,
): { readonly doubt: DoubtKind; readonly proposal: number | undefined } | undefined {
  if (typeof value === "boolean") return { doubt: "yesNo", proposal: undefined };
  if (Number.isInteger(value)) {
    if (!isPlausibleDay(value) || value <= most) return undefined;
    const [, month, day] = isoDay(value).split("-").map(Number);
    return { doubt: "date", proposal: Math.min(month, day) };
  }
  if (value <= 0 || value >= 1 || value === 0.5) return undefined;
  if (isWhole(value * 100)) return { doubt: "share", proposal: undefined };
  return { doubt: "time", proposal: isWhole(value * 24) ? Math.round(value * 24) : undefined };
}

function isWhole(value: number): boolean {
  return Math.abs(value - Math.round(value)) < 1e-9;
}

/**
 * A cell of a column of counts as its spreadsheet shows it, since nobody finds a date by its serial number.
 *
 * @example
 * shownCount(46024, 60) // "2026-01-02"
 * @example
 * shownCount(0.8, 60) // "80 %"
 */
export function shownCount(value: CellValue, most: number): string {
  if (typeof value !== "number" && typeof value !== "boolean") return String(value).trim();
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  const kind = doubtOfNumber(value, most)?.doubt;
  if (kind === "date") return isoDay(value);
  if (kind === "share") return `${Math.round(value * 100)} %`;
  if (kind !== "time") return String(value);
  const minutes = Math.round(value * 24 * 60);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}
