import { isBlank, isCellError, type CellValue } from "../sheets/cell";
import type { Column } from "../sheets/column";
import type { Unit } from "../sheets/unit";
import { Refusal } from "../../domain/refusal";
import type { TextForms } from "../sheets/nodeRules";
import { NO_WORD, UNKNOWN_WORD, type Words } from "../sheets/words";
import { CELL, type Numbers, type SurveyColumn } from "../season/season";
import { choiceOf } from "./choiceWords";
import { countOfText, doubtOfNumber, shownCount } from "./countOfText";
import { measureOfText } from "./lengthOfText";
import type { OddCells } from "./oddCells";
import { namingLetters, placeOfLabel } from "./placeLabel";
import { dayInWinter, isPlausibleDay, textDate, winterOf, yearlessDate, type DayOrder } from "./serialDate";
import { textNumber } from "./textNumber";

export type Cells = Pick<SurveyColumn, "numbers" | "states" | "codes">;

/** Where cells stand and what their column is written in. */
export interface CellPlace {
  readonly sheet: string;
  readonly unit: Unit | undefined;
  readonly odd: OddCells;
  /** How the keys are labelled, where a part of their column tells too little; else the column itself tells. */
  readonly labels?: ReadonlyMap<string, KeyLabels>;
}

/** How rows or vines are labelled. */
export interface KeyLabels {
  readonly areLetters: boolean;
  /** Letters that say nothing before a number. */
  readonly naming: string;
}

/** Names of blocks, cordons, canes and counters of the largest farms are far fewer; more are remarks under such a head. */
const MOST_WORDS = 20_000;

/** The cells of a column as numbers, words and states. */
export function readCells(
  column: Column,
  raw: readonly CellValue[],
  place: CellPlace,
  words: Words,
  noNumbers: Float64Array,
): Cells {
  if (column.id === "note") return { numbers: noNumbers, states: remarkStates(raw), codes: NO_CODES };
  if (column.kind === "text") {
    const cells = readWords(raw, words, column.forms);
    if (words.count > MOST_WORDS)
      throw new Refusal("invalid", "tooManyWords", { sheet: place.sheet, most: MOST_WORDS });
    return { numbers: noNumbers, ...cells };
  }
  if (column.kind === "choice") return { numbers: noNumbers, ...readChoices(column, raw) };
  if (column.kind === "date") return readDates(raw, place);
  return readNumbers(column, raw, place);
}

function readNumbers(column: Column, raw: readonly CellValue[], place: CellPlace): Cells {
  const perUnit = place.unit?.perUnit ?? 1;
  const numbers = new Float64Array(raw.length);
  const states = new Uint8Array(raw.length);
  const isCount = column.kind === "count";
  const isKey = column.id === "row" || column.id === "vine";
  const asText: [index: number, value: number][] = [];
  const naming = isKey ? (place.labels?.get(column.id)?.naming ?? namingLetters(raw)) : "";
  let usable = 0;
  for (let i = 0; i < raw.length; i++) {
    const value = raw[i];
    if (typeof value === "number") {
      numbers[i] = perUnit === 1 ? value : value * perUnit;
      if (value - value !== 0) {
        numbers[i] = NaN;
        states[i] = CELL.error;
      } else if (isCount && !isKey && (value > SOME_DAY || value % 1 !== 0))
        readOddNumber(column, value, place, numbers, states, i);
      else usable++;
    } else {
      numbers[i] = NaN;
      states[i] = stateOfBlank(value);
      if (states[i] !== CELL.unreadable) continue;
      if (typeof value === "boolean" && isCount && !isKey)
        readOddNumber(column, value, place, numbers, states, i);
      else if (typeof value === "string") {
        const number = readText(column, value, { ...place, naming }, numbers, states, i);
        if (number === undefined) continue;
        states[i] = CELL.numberAsText;
        if (!MAY_BE_THOUSANDS.test(value)) asText.push([i, number]);
      }
    }
  }
  if (isKey) readLetters(column, raw, place, numbers, states);
  if (asText.length >= LEAST_TEXTS && asText.length > usable)
    for (const [i, number] of asText) {
      numbers[i] = number;
      states[i] = CELL.usable;
      place.odd.wasRead("textNumbers", place.sheet, column.id, raw[i]);
    }
  return { numbers, states, codes: NO_CODES };
}

/** Letters as labels, where most of a column's cells are some: a letter among numbers is no place. */
function readLetters(
  { id }: Column,
  raw: readonly CellValue[],
  { labels }: CellPlace,
  numbers: Numbers,
  states: Uint8Array,
): void {
  const found: [index: number, place: number][] = [];
  let filled = 0;
  for (let i = 0; i < raw.length; i++) {
    if (states[i] !== CELL.blank) filled++;
    const cell = raw[i];
    const place = states[i] === CELL.unreadable && typeof cell === "string" ? placeOfLabel(cell) : undefined;
    if (place !== undefined) found.push([i, place]);
  }
  if (!(labels?.get(id)?.areLetters ?? found.length > filled / 2)) return;
  for (const [i, place] of found) {
    numbers[i] = place;
    states[i] = CELL.usable;
  }
}

/** 1,234 and 1.234, which are a thousand to some and one to others. */
const MAY_BE_THOUSANDS = /^\s*[1-9]\d{0,2}[.,]\d{3}\s*$/;

/** Numbers stored as text from which a column is taken as kept that way, when most of its numbers are. */
const LEAST_TEXTS = 10;

/** Serial of 1 January 1980; no count is as large. */
const SOME_DAY = 29220;

function readOddNumber(
  column: Column,
  value: number | boolean,
  { sheet, odd }: CellPlace,
  numbers: Numbers,
  states: Uint8Array,
  i: number,
): void {
  const found = doubtOfNumber(value, column.most ?? Infinity);
  if (!found) return;
  if (found.proposal !== undefined && odd.isTaken(found.doubt)) {
    numbers[i] = found.proposal;
    states[i] = CELL.usable;
    return;
  }
  odd.doubt(found.doubt, sheet, column.id, shownCount(value, column.most ?? Infinity), found.proposal);
  numbers[i] = NaN;
  states[i] = CELL.unreadable;
}

/** Reads a text in a column of numbers; the number where it is a plain one that was stored as text. */
function readText(
  column: Column,
  text: string,
  { sheet, unit, odd, naming }: CellPlace & Pick<KeyLabels, "naming">,
  numbers: Numbers,
  states: Uint8Array,
  i: number,
): number | undefined {
  const take = (value: number) => {
    numbers[i] = value;
    states[i] = CELL.usable;
  };
  const isShareElsewhere = column.kind !== "share" && text.trimEnd().endsWith("%");
  const plain = isShareElsewhere ? undefined : textNumber(text.replace(/^=/, ""));
  if (column.id === "row" || column.id === "vine") {
    const place = placeOfLabel(text, naming);
    if (plain !== undefined) return /^0/.test(text.trim()) ? void take(plain) : plain;
    if (place !== undefined && /\d/.test(text)) take(place);
    return undefined;
  }
  if (column.kind === "count") {
    const found = countOfText(text);
    if (!found) return plain;
    if ("doubt" in found) {
      if (found.proposal !== undefined && odd.isTaken(found.doubt)) take(found.proposal);
      else odd.doubt(found.doubt, sheet, column.id, text, found.proposal);
      return undefined;
    }
    if (found.how === "digits") return found.count;
    take(found.count);
    odd.wasRead(found.how === "strokes" ? "strokes" : "worded", sheet, column.id, text);
    return undefined;
  }
  if (plain !== undefined) {
    const value = plain * (unit?.perUnit ?? 1);
    if (!WIDE_DIGITS.test(text)) return value;
    take(value);
    odd.wasRead("textNumbers", sheet, column.id, text);
    return undefined;
  }
  const isMeasure = column.kind === "length" || column.kind === "shortLength" || column.kind === "mass";
  const measure = isMeasure ? measureOfText(text, unit) : undefined;
  if (measure === undefined) return undefined;
  take(measure);
  odd.wasRead("ownUnits", sheet, column.id, text);
  return undefined;
}

/** Digits as keyboards of East Asia type them, which are certain. */
const WIDE_DIGITS = /[０-９]/;

const NO_CODES = new Int32Array(0);

function stateOfBlank(value: CellValue): number {
  if (isBlank(value)) return CELL.blank;
  return isCellError(value) ? CELL.error : CELL.unreadable;
}

function remarkStates(raw: readonly CellValue[]): Uint8Array {
  return Uint8Array.from(raw, (value) =>
    isBlank(value) ? CELL.blank : isCellError(value) ? CELL.error : CELL.usable,
  );
}

function readWords(raw: readonly CellValue[], words: Words, forms?: TextForms): Omit<Cells, "numbers"> {
  const states = new Uint8Array(raw.length);
  const codes = new Int32Array(raw.length);
  let code = NO_WORD;
  for (let i = 0; i < raw.length; i++) {
    if (i === 0 || raw[i] !== raw[i - 1]) code = words.codeOf(raw[i]);
    codes[i] = code;
    if (code === NO_WORD) states[i] = isCellError(raw[i]) ? CELL.error : CELL.blank;
    else if (forms && !forms.understands(words.wordOf(code))) states[i] = CELL.unreadable;
  }
  return { states, codes };
}

function readChoices(column: Column, raw: readonly CellValue[]): Omit<Cells, "numbers"> {
  const cache = new Map<CellValue, number>();
  const states = new Uint8Array(raw.length);
  const codes = new Int32Array(raw.length);
  let code = NO_WORD;
  for (let i = 0; i < raw.length; i++) {
    const value = raw[i];
    if (i === 0 || value !== raw[i - 1]) {
      const known = cache.get(value);
      code =
        known ??
        (isBlank(value) || isCellError(value) ? NO_WORD : (choiceOf(column, String(value)) ?? UNKNOWN_WORD));
      if (known === undefined) cache.set(value, code);
    }
    codes[i] = code;
    if (code === NO_WORD) states[i] = isCellError(value) ? CELL.error : CELL.blank;
    else if (code === UNKNOWN_WORD) states[i] = CELL.unreadable;
  }
  return { states, codes };
}

function readDates(raw: readonly CellValue[], place: CellPlace): Cells {
  const numbers = new Float64Array(raw.length);
  const states = new Uint8Array(raw.length);
  const texts: [number, CellValue][] = [];
  for (let i = 0; i < raw.length; i++) {
    const value = raw[i];
    if (typeof value === "string") texts.push([i, value]);
    if (typeof value === "number") {
      numbers[i] = isPlausibleDay(value) ? value : packedDay(value);
      if (Number.isNaN(numbers[i])) states[i] = CELL.unreadable;
    } else {
      numbers[i] = NaN;
      states[i] = stateOfBlank(value);
    }
  }
  readTextDates(texts, numbers, states, place);
  return { numbers, states, codes: NO_CODES };
}

/** The day of a number that is written like 20260112; NaN for any other. */
function packedDay(value: number): number {
  const date =
    Number.isInteger(value) && value > 19_000_000 && value < 21_000_000 ? textDate(String(value)) : undefined;
  return date && "serial" in date ? date.serial : NaN;
}

/**
 * Reads the dates of a column that are written as text. Where day and month of one could change places, it takes the
 * order of the dates that leave no choice, as long as those agree, else the answer of a person, else the order of the
 * walk; one order for the whole column.
 *
 * @param cells cells of the column by their index; those that hold no text are passed over
 * @param numbers takes the serials
 * @param states takes what was made of each
 */
export function readTextDates(
  cells: Iterable<readonly [index: number, cell: CellValue]>,
  numbers: Numbers,
  states: Uint8Array,
  place?: CellPlace,
): void {
  const unclear: UnclearDate[] = [];
  const yearless: [index: number, text: string][] = [];
  const orders = new Set<DayOrder>();
  for (const [index, cell] of cells) {
    if (typeof cell !== "string" || isBlank(cell)) continue;
    const date = textDate(cell);
    if (date === undefined) {
      if (yearlessDate(cell).length > 0) yearless.push([index, cell.trim()]);
    } else if ("unclear" in date) unclear.push({ index, text: cell.trim(), ...date });
    else {
      numbers[index] = date.serial;
      states[index] = CELL.usable;
      if (date.order) orders.add(date.order);
    }
  }
  settleUnclear(unclear, orders, numbers, states, place);
  if (yearless.length > 0 && place) readYearless(yearless, orders, numbers, states, place);
}

/** Dates without a year: in the winter that was answered for their sheet, else asked with that of the other dates. */
function readYearless(
  dates: readonly (readonly [index: number, text: string])[],
  orders: ReadonlySet<DayOrder>,
  numbers: Numbers,
  states: Uint8Array,
  { sheet, odd }: CellPlace,
): void {
  const days = Float64Array.from(numbers).filter(isPlausibleDay).sort();
  const middle = days.length === 0 ? undefined : days[days.length >> 1];
  const answered = odd.answers.winters?.find((own) => own.sheet === sheet)?.winter;
  const likely = middle === undefined ? odd.winter : winterOf(middle);
  const [order = odd.answers.dateOrder] = orders.size === 1 ? orders : [];
  let open = 0;
  for (const [index, text] of dates) {
    const found = yearlessDate(text)
      .filter((day) => day.order === undefined || order === undefined || day.order === order)
      .flatMap((day) => dayInWinter(day, answered ?? likely ?? 2000) ?? []);
    const off = (day: number) => (middle === undefined ? 0 : Math.abs(day - middle));
    const [near, far] = found.sort((one, other) => off(one) - off(other));
    const isClear = far === undefined || (middle !== undefined && off(far) > off(near) + DAYS_OF_A_MONTH);
    if (answered === undefined || near === undefined || !isClear) {
      open++;
      continue;
    }
    numbers[index] = near;
    states[index] = CELL.usable;
  }
  if (open > 0 && answered === undefined) odd.yearless(sheet, open, dates[0][1], likely);
}

/** Dates of which day and month could change places, in the order that the others, a person or the walk tell. */
function settleUnclear(
  unclear: readonly UnclearDate[],
  orders: ReadonlySet<DayOrder>,
  numbers: Numbers,
  states: Uint8Array,
  place?: CellPlace,
): void {
  if (unclear.length === 0) return;
  const [only] = orders;
  const walk = orderOfWalk(unclear, numbers);
  const told = place?.odd.answers.dateOrder;
  const settled = orders.size === 1 ? only : orders.size === 0 && walk.isSure ? walk.order : undefined;
  const order = orders.size === 1 ? only : (told ?? settled);
  for (const date of unclear) {
    numbers[date.index] = order ? date[order] : NaN;
    states[date.index] = order ? CELL.usable : CELL.unclearDate;
  }
  if (!order) place?.odd.unclearDates(place.sheet, unclear.length, walk.order);
  else if (order !== told) place?.odd.settledDates(place.sheet, unclear.length, order, unclear[0]);
}

interface UnclearDate {
  readonly index: number;
  readonly text: string;
  readonly dayFirst: number;
  readonly monthFirst: number;
}

/** Days that a crew takes over a sheet at the most, and days between the same day of two months at the least; ours. */
const DAYS_OF_A_WALK = 45;
const DAYS_OF_A_MONTH = 27;
/** How many times farther apart the days of the other order must lie; ours. */
const FARTHER = 3;

/** The order in which the days of a walk follow each other closer; sure where the other would leap from month to month. */
function orderOfWalk(
  unclear: readonly UnclearDate[],
  numbers: Numbers,
): { order: DayOrder; isSure: boolean } {
  const travel = (order: DayOrder) => {
    let next = 0;
    let before = NaN;
    let days = 0;
    let least = Infinity;
    let most = -Infinity;
    for (let i = 0; i < numbers.length; i++) {
      const day = unclear[next]?.index === i ? unclear[next++][order] : Math.floor(numbers[i]);
      if (!isPlausibleDay(day)) continue;
      if (!Number.isNaN(before)) days += Math.abs(day - before);
      before = day;
      least = Math.min(least, day);
      most = Math.max(most, day);
    }
    return { days, span: most - least };
  };
  const [day, month] = [travel("dayFirst"), travel("monthFirst")];
  const [near, far] = month.days < day.days ? [month, day] : [day, month];
  return {
    order: near === month ? "monthFirst" : "dayFirst",
    isSure: near.span <= DAYS_OF_A_WALK && far.span >= DAYS_OF_A_MONTH && far.days >= near.days * FARTHER,
  };
}
