import { grouped } from "../../domain/grouped";
import { placeName } from "../../texts/placeName";
import { isBlank, type CellValue } from "../sheets/cell";
import type { Column, SheetId, SheetShape } from "../sheets/column";
import { SHEETS } from "../sheets/sheets";
import { holdsUnit, unitNamed, type Unit } from "../sheets/unit";
import type { SurveyTable } from "../season/surveyTable";
import { choiceOf } from "./choiceWords";
import { findTable, HEADER_SEARCH_ROWS, type FoundTable } from "./findTable";
import {
  columnNamed,
  headWords,
  isHarmless,
  NAMES,
  plainWords,
  sharesWord,
  type HeadWords,
} from "./headWords";
import { isReadable } from "./isReadable";
import { fits, likelyColumns } from "./likelyColumns";
import { blockRowAndVine, rowAndVine, type LabelParts } from "./placeLabel";
import { hasMovedCells, lastFilled } from "./movedCells";
import {
  isAsked,
  type LeftOutReason,
  type OpenAccount,
  type ReadingAnswers,
  type ReadingFacts,
  type ReadingQuestion,
} from "./readingAccount";
import type { MergedArea, SheetArea } from "./sheetArea";
import { rowsByWinter, type LaidTable } from "./rowsByWinter";
import { keysOfLine, keysOfSheetName, shortKeys, type FoundKeys } from "./sheetKeys";
import { isTotalWord } from "./totalWords";
import { unknownHeads, wideGroups, type WideGroup } from "./wideGroups";

/** A table as the row reader takes it, with where its cells stand in the sheet. */
export interface LayoutOptions {
  /** Which sheet of ours it is, where a formula tells that of its range. */
  readonly told?: SheetId;
  readonly answers: ReadingAnswers;
  /** The winter that most dates of the workbook tell, for heads that name a year. */
  readonly winter: number | undefined;
  /** Block names that are written in other sheets. */
  readonly knowsBlock: (name: string) => boolean;
}

const KEYS = ["block", "row", "vine"] as const;

/**
 * Finds the tables of a sheet however it is laid out: heads over several lines, tables beside or below each other, keys
 * in merged cells, captions, lines above or the sheet's name, candidates side by side in a line. What was done, asked or
 * left out goes into the account.
 */
export function layOut(area: SheetArea, options: LayoutOptions, account: OpenAccount): LaidTable[] {
  const { answers } = options;
  if (answers.leaveOut?.includes(area.sheet)) {
    account.leftOut.push({ what: "sheet", reason: "byAnswer", sheet: area.sheet, facts: {} });
    return [];
  }
  if (area.values.length === 0) return [];
  if (notCalculated(area, account)) return [];
  const plain = findTable(area, options.told);
  if (plain?.shape.id === "settings") return [{ area, place: plain }];
  if (options.told) return plain ? [{ area, place: { ...plain, units: unitsOfHeads(area, plain) } }] : [];
  const filled = withMerged(area, account);
  const heads = bestHeads(filled, options);
  if (!heads) return unknownTable(filled, account);
  if (heads.segments.length > 1 && !heads.wide)
    account.notes.push({ code: "sideBySide", sheet: area.sheet, facts: { tables: heads.segments.length } });
  return sections(filled, heads, options).flatMap((section, index) => {
    if (index > 0)
      account.notes.push({
        code: "secondHeads",
        sheet: area.sheet,
        facts: { row: area.firstRow + section.index },
      });
    return section.segments.flatMap((segment) =>
      laidTables(filled, section, segment, options, account).flatMap((laid) => rowsByWinter(laid, account)),
    );
  });
}

/** Units in the heads of a range that a formula gives, which is read as it stands. */
function unitsOfHeads(
  { values }: SheetArea,
  { columns, headerIndex }: FoundTable,
): ReadonlyMap<Column, Unit> {
  return new Map(
    [...columns].flatMap(([column, at]) => {
      const { unit } = headWords(String(values[headerIndex][at] ?? ""));
      return unit ? [[column, unit] as const] : [];
    }),
  );
}

/** True where the sheet's cells are formulas without stored values, which a spreadsheet has to calculate first. */
function notCalculated(area: SheetArea, account: OpenAccount): boolean {
  let formulas = 0;
  let rows = 0;
  let values = 0;
  for (let row = 0; row < area.values.length; row++) {
    let inRow = 0;
    for (let column = 0; column < area.values[row].length; column++) {
      if (!isBlank(area.values[row][column])) values++;
      else if (area.formulaAt(row, column) !== null) inRow++;
    }
    formulas += inRow;
    if (inRow > 0) rows++;
  }
  if (rows === 0) return false;
  account.leftOut.push({
    what: rows > area.values.length / 2 ? "sheet" : "rows",
    reason: "notCalculated",
    sheet: area.sheet,
    facts: { rows, cells: formulas },
  });
  return formulas > values;
}

/** Cells of merged areas all with the value of their first; the sheet itself where it has none. */
function withMerged(area: SheetArea, account: OpenAccount): SheetArea {
  const merged = (area.merged ?? []).filter(
    ({ row, column }) => row < area.values.length && !isBlank(area.values[row]?.[column]),
  );
  if (merged.length === 0) return area;
  const values = area.values.map((row) => [...row]);
  for (const { row, column, rows, columns } of merged) fillArea(values, { row, column, rows, columns });
  const down = merged.filter(({ rows }) => rows > 1).length;
  if (down > 0) account.notes.push({ code: "mergedFilled", sheet: area.sheet, facts: { areas: down } });
  return { ...area, values };
}

function fillArea(values: CellValue[][], { row, column, rows, columns }: MergedArea): void {
  const value = values[row][column];
  for (let r = row; r < Math.min(values.length, row + rows); r++)
    for (let c = column; c < Math.min(column + columns, values[r].length); c++)
      if (isBlank(values[r][c])) values[r][c] = value;
}

/** Columns of one table side by side with others, as positions in the area. */
interface Segment {
  readonly from: number;
  readonly to: number;
  readonly shape: SheetShape;
  readonly columns: ReadonlyMap<Column, number>;
  readonly groups: readonly WideGroup[];
}

interface Heads {
  /** First line of the heads and how many lines they take. */
  readonly index: number;
  readonly lines: number;
  readonly texts: readonly (string | undefined)[];
  readonly segments: readonly Segment[];
  readonly wide: boolean;
  readonly score: number;
}

interface Section extends Heads {
  /** Index behind the last row of the section. */
  readonly end: number;
}

const MOST_HEAD_LINES = 3;
/** Of heads that name as much, those with more lines are taken: a line of units is no row. */
const TIE = 0.001;

function bestHeads(area: SheetArea, options: LayoutOptions): Heads | undefined {
  let best: Heads | undefined;
  for (let index = 0; index < area.values.length; index++) {
    if (index >= HEADER_SEARCH_ROWS && (best || !holdsWordsOnly(area.values[index]))) continue;
    for (let lines = 1; lines <= MOST_HEAD_LINES; lines++) {
      const heads = headsAt(area, index, lines, options);
      const least = best ? best.score - (best.index === index ? TIE : 0) : 0;
      const isAgain = best !== undefined && best.index !== index && hasSameWords(best, heads);
      if (heads && heads.score > least && !isAgain) best = heads;
    }
  }
  return best;
}

/** True for a line of three texts at least and no number, as heads are. */
function holdsWordsOnly(cells: readonly CellValue[]): boolean {
  let texts = 0;
  for (const cell of cells) {
    if (typeof cell === "number") return false;
    if (typeof cell === "string" && !isBlank(cell)) texts++;
  }
  return texts >= 3;
}

/**
 * True for the same heads further down, in whatever units and however much stands above them: the rows between belong to
 * the first.
 */
function hasSameWords(first: Heads, again: Heads | undefined): boolean {
  const words = ({ texts }: Heads) => JSON.stringify(texts.map((text) => text && headWords(text).words));
  return again !== undefined && words(first) === words(again);
}

/** The heads that begin in a line, where they name enough of one of our sheets. */
function headsAt(area: SheetArea, index: number, lines: number, options: LayoutOptions): Heads | undefined {
  if (index + lines > area.values.length) return undefined;
  for (let line = index; line < index + lines; line++)
    if (!isHeadLine(area.values[line]) || (line > index && isCaption(area.values[line]))) return undefined;
  const texts = headTexts(area, index, lines);
  const above = keysAbove(area, index);
  const segments: Segment[] = [];
  let score = 0;
  let wide = false;
  for (const [from, to] of spans(texts)) {
    const found = bestShape(
      area,
      texts,
      from,
      to,
      { ...constantsOf(options, ""), ...above, ...constantsOf(options, area.sheet) },
      options,
      index + lines,
    );
    if (!found) continue;
    segments.push(found.segment);
    score += found.score;
    wide ||= found.segment.groups.length > 0;
  }
  return segments.length === 0 ? undefined : { index, lines, texts, segments, wide, score };
}

/** True for a line that holds nothing but a caption of block and row, which stands below heads and is none. */
function isCaption(cells: readonly CellValue[]): boolean {
  const filled = cells.filter((cell) => !isBlank(cell));
  const keys = filled.length === 1 ? keysOfLine(filled) : {};
  return keys.row !== undefined || keys.block !== undefined;
}

function isHeadLine(cells: readonly CellValue[]): boolean {
  let texts = 0;
  for (const cell of cells) {
    if (isBlank(cell)) continue;
    if (typeof cell === "string") texts++;
    else if (!(typeof cell === "number" && cell >= 2000 && cell < 2100)) return false;
  }
  return texts > 0;
}

/** Heads of several lines joined; a group's head stands over all columns up to the next. */
function headTexts(area: SheetArea, index: number, lines: number): (string | undefined)[] {
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

/** Stretches of columns that may be tables of their own: a new one begins where a key's head comes again. */
function spans(texts: readonly (string | undefined)[]): [number, number][] {
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

/** What was answered for every row of a sheet; of "" what holds where a sheet itself tells nothing. */
function constantsOf({ answers }: LayoutOptions, sheet: string): Record<string, string | number> {
  return Object.fromEntries(
    (answers.constants ?? [])
      .filter((constant) => constant.sheet === sheet)
      .map(({ column, value }) => [column, value]),
  );
}

function bestShape(
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
function isOfOtherUnit({ kind }: Column, { unit }: HeadWords): boolean {
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
function ownHeads(shape: SheetShape, answered: NonNullable<ReadingAnswers["heads"]>): Map<string, Column> {
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

/** The table with its later heads, each a section of its own. */
function sections(area: SheetArea, first: Heads, options: LayoutOptions): Section[] {
  const found: Section[] = [];
  let heads = first;
  for (let index = first.index + first.lines; index < area.values.length; index++) {
    const next = laterHeads(area, index, heads, options);
    if (!next) continue;
    found.push({ ...heads, end: index });
    heads = next;
    index += next.lines - 1;
  }
  return [...found, { ...heads, end: area.values.length }];
}

/** Heads further down that are not the same again. */
function laterHeads(area: SheetArea, index: number, heads: Heads, options: LayoutOptions): Heads | undefined {
  if (!holdsWordsOnly(area.values[index])) return undefined;
  let best: Heads | undefined;
  for (let lines = 1; lines <= MOST_HEAD_LINES; lines++) {
    const found = headsAt(area, index, lines, options);
    if (found && found.score > (best ? best.score - TIE : 0)) best = found;
  }
  if (!best) return undefined;
  const same = (one: Heads, other: Heads) =>
    JSON.stringify(one.texts.map((text) => text && headWords(text))) ===
    JSON.stringify(other.texts.map((text) => text && headWords(text)));
  return same(best, heads) && best.lines === 1 ? undefined : best;
}

function keysAbove(area: SheetArea, index: number): FoundKeys {
  let keys: FoundKeys = {};
  for (let line = Math.max(0, index - 6); line < index; line++) {
    const cells = area.values[line];
    if (cells.filter((cell) => !isBlank(cell)).length <= 8) keys = { ...keys, ...keysOfLine(cells) };
  }
  return keys;
}

interface Extra {
  readonly column: Column;
  readonly header: string;
  readonly sheetColumn: number;
  /** Sheet column of the second part, where it is written in two. */
  readonly second?: number;
  readonly valueOf: (index: number) => CellValue;
  readonly unit?: Unit;
}

/** The tables of one stretch of columns: one, or one for each candidate where they stand side by side in a line. */
function laidTables(
  area: SheetArea,
  section: Section,
  found: Segment,
  options: LayoutOptions,
  account: OpenAccount,
): LaidTable[] {
  const segment = withoutUnknown(area, section, found, options, account);
  const { shape } = segment;
  const { sheet } = area;
  const columns = new Map(segment.columns);
  const byId = (id: string) => shape.columns.find((column) => column.id === id)!;
  const extras: Extra[] = [];
  const heads = new Map<number, HeadWords>();
  for (let at = segment.from; at < segment.to; at++) {
    const text = section.texts[at];
    if (text !== undefined) heads.set(at, headWords(text));
  }
  yearsAndDead(area, section, segment, columns, heads, extras, options, account);
  askUnknownWords(segment, columns, heads, sheet, options, account);
  const units = unitsOf(columns, heads, sheet, options, account);
  inTwoParts(area, section, segment, columns, units, extras, account);
  const firstData = section.index + section.lines;
  const captions = new Map<number, FoundKeys>();
  const isKeyless = shape.id === "cordons" || shape.id === "vines";
  if (isKeyless) {
    const vine = columns.get(byId("vine"));
    for (let index = firstData; index < section.end; index++) {
      const cells = area.values[index];
      const keys = captionOf(
        cells,
        vine === undefined ? undefined : cells[vine],
        options.knowsBlock,
        segment,
      );
      if (keys) captions.set(index, keys);
    }
    blocksAboveRows(area, segment, firstData, captions);
  }
  const answered = constantsOf(options, sheet);
  const elsewhere = constantsOf(options, "");
  if (isKeyless) {
    const above = keysAbove(area, section.index);
    const told = keysOfSheetName(sheet);
    const isSure = told.row !== undefined || (told.block !== undefined && options.knowsBlock(told.block));
    const named = isSure ? told : {};
    const labels = columns.has(byId("row"))
      ? undefined
      : labelsOf(area, section, segment, columns, byId("vine"));
    const lacking: string[] = [];
    for (const id of ["block", "row"] as const) {
      const column = byId(id);
      if (answered[id] === undefined && columns.has(column)) continue;
      if (answered[id] === undefined && labels?.tells.has(id)) continue;
      const fromCaptions = [...captions].filter(([, keys]) => keys[id] !== undefined);
      const constant =
        answered[id] ?? above[id] ?? (fromCaptions.length > 0 ? undefined : (named[id] ?? elsewhere[id]));
      if (fromCaptions.length > 0 && answered[id] === undefined) {
        extras.push({
          column,
          header: "",
          sheetColumn: 0,
          valueOf: (i) => labelOf(nearestAbove(fromCaptions, i)?.[id] ?? above[id] ?? null),
        });
      } else if (constant !== undefined) {
        account.notes.push({
          code: above[id] !== undefined && answered[id] === undefined ? "keysAbove" : "keysOfName",
          sheet,
          facts: { column: id, value: labelOf(constant) },
        });
        extras.push({ column, header: "", sheetColumn: 0, valueOf: () => labelOf(constant) });
      } else lacking.push(id);
    }
    if (!labels && !columns.has(byId("vine"))) lacking.push("vine");
    if (lacking.length > 0) {
      const likelyKeys = lacking.includes("row") ? (shortKeys(sheet) ?? told) : told;
      const likely = (["block", "row"] as const).flatMap((column) => {
        const value = likelyKeys[column];
        return lacking.includes(column) && value !== undefined ? [{ sheet, column, value }] : [];
      });
      account.questions.push({
        code: "keys",
        sheet,
        facts: { columns: lacking },
        proposals: likely.length === 0 ? [] : [{ constants: likely }],
      });
    }
    if (labels) {
      const { at, parts, tells } = labels;
      const header = section.texts[at]!;
      columns.delete(byId("vine"));
      for (const id of tells)
        if (answered[id] === undefined && !columns.has(byId(id)))
          extras.push({
            column: byId(id),
            header,
            sheetColumn: area.firstColumn + at,
            valueOf: (i) => parts.get(i)?.[id] ?? null,
          });
      account.notes.push({
        code: "labels",
        sheet,
        facts: {
          head: header,
          columns: [...tells],
          examples: [String(area.values[[...parts.keys()][0]][at])],
        },
      });
    }
  }
  const side = byId("side");
  const sided = shape.id === "cordons" && !columns.has(side) && sidesOfNames(area, section, columns, side);
  if (sided) {
    account.notes.push({ code: "sidesOfNames", sheet, facts: { examples: sided.examples } });
    extras.push({ column: side, header: "", sheetColumn: 0, valueOf: (i) => sided.sides.get(i) ?? null });
  }
  const hasSide = columns.has(side) || sided !== undefined || segment.groups.length > 0;
  const named = shape.id === "cordons" && !hasSide ? choiceOf(side, sheet) : undefined;
  if (named !== undefined) {
    const { id } = side.choices![named];
    account.notes.push({ code: "keysOfName", sheet, facts: { column: "side", value: id } });
    extras.push({ column: side, header: "", sheetColumn: 0, valueOf: () => id });
  }
  if (captions.size > 0) account.notes.push({ code: "captions", sheet, facts: { lines: captions.size } });
  const lines = dataLines(firstData, section.end, captions);
  const filled = isKeyless ? filledDown(area, lines, columns, segment.groups, account) : undefined;
  if (segment.groups.length === 0) askLikelyHeads(area, section, segment, columns, extras, heads, account);
  leftColumns(area, section, segment, columns, extras, account);
  const base = { area, section, segment, lines, filled, units };
  if (segment.groups.length === 0) {
    const isPlain =
      section.lines === 1 &&
      extras.length === 0 &&
      captions.size === 0 &&
      !filled &&
      section.end === area.values.length &&
      segment.from === 0 &&
      segment.to >= section.texts.length;
    return isPlain
      ? [{ area, place: plainPlace(section, segment, columns, units) }]
      : [virtualTable(base, columns, extras)];
  }
  account.notes.push({
    code: "turned",
    sheet,
    facts: { candidates: segment.groups.length, names: segment.groups.map(({ name }) => name) },
  });
  return segment.groups.map((group) => {
    const own = new Map(
      [...columns].filter(([, at]) => !segment.groups.some((any) => any.positions.has(at))),
    );
    const words = new Map(heads);
    for (const [at, column] of group.positions) {
      own.set(column, at);
      const rest = headWords(group.rest.get(at) ?? "");
      words.set(at, { ...rest, text: section.texts[at]!, unit: heads.get(at)?.unit ?? rest.unit });
    }
    const ownUnits = unitsOf(own, words, sheet, options, account);
    const more: Extra[] = [...extras, ...liveOfDead(area, section, shape, own, group.dead, account)];
    if (group.side && !own.has(byId("side")))
      more.push({ column: byId("side"), header: group.name, sheetColumn: 0, valueOf: () => group.side! });
    if (!own.has(byId("cordon")))
      more.push({ column: byId("cordon"), header: group.name, sheetColumn: 0, valueOf: () => group.name });
    const there = lines.filter((index) =>
      [...group.positions.keys()].some((at) => !isBlank(area.values[index][at])),
    );
    return virtualTable({ ...base, lines: there, units: ownUnits }, own, more);
  });
}

/** Lines that hold nothing but a name right above a caption of a row: the block of the rows below, in its place among the captions. */
function blocksAboveRows(
  { values }: SheetArea,
  { from, to }: Segment,
  firstData: number,
  captions: Map<number, FoundKeys>,
): void {
  const found: [number, FoundKeys][] = [];
  for (const [index, keys] of captions) {
    let above = index - 1;
    while (above >= firstData && values[above].slice(from, to).every(isBlank)) above--;
    if (keys.block === undefined && above >= firstData && !captions.has(above)) {
      const filled = values[above].slice(from, to).filter((cell) => !isBlank(cell));
      const [name] = new Set(filled);
      if (new Set(filled).size === 1 && typeof name === "string" && !isTotalWord(name) && /\p{L}/u.test(name))
        found.push([above, { block: name.trim() }]);
    }
    found.push([index, keys]);
  }
  captions.clear();
  for (const [index, keys] of found) captions.set(index, keys);
}

/** A key as it was written: a row with letters by its label. */
function labelOf<Key extends CellValue>(key: Key): Key | string | number {
  return typeof key === "number" ? placeName(key) : key;
}

function nearestAbove(
  captions: readonly (readonly [number, FoundKeys])[],
  index: number,
): FoundKeys | undefined {
  let found: FoundKeys | undefined;
  for (const [at, keys] of captions) {
    if (at > index) break;
    found = keys;
  }
  return found;
}

/** Asks whether heads mean a column of ours: one, or those of several candidates with the same words. */
function headQuestion(
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
function withoutUnknown(
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
function askUnknownWords(
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
function askLikelyHeads(
  area: SheetArea,
  section: Section,
  { shape }: Segment,
  columns: ReadonlyMap<Column, number>,
  extras: readonly Extra[],
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

/** Of heads that name years this season's, and live spurs from dead or missing ones. */
function yearsAndDead(
  area: SheetArea,
  section: Section,
  { shape }: Segment,
  columns: Map<Column, number>,
  heads: ReadonlyMap<number, HeadWords>,
  extras: Extra[],
  { winter }: LayoutOptions,
  account: OpenAccount,
): void {
  const years = new Map<Column, { at: number; year: number }[]>();
  const dead: number[] = [];
  for (const [at, head] of heads) {
    const column = columnNamed(shape, head.words);
    if (!column) continue;
    if (head.year !== undefined && head.qualifier === undefined)
      years.set(column, [...(years.get(column) ?? []), { at, year: head.year }]);
    if (
      shape.id === "cordons" &&
      column.id === "liveSpurs" &&
      (head.qualifier === "dead" || head.qualifier === "missing")
    )
      dead.push(at);
  }
  for (const [column, found] of years) {
    if (columns.has(column)) continue;
    const newest = found.reduce((best, one) => (one.year > best.year ? one : best));
    const taken =
      found.find(({ year }) => year === winter) ??
      (winter === undefined || newest.year === winter ? newest : undefined);
    if (taken) {
      columns.set(column, taken.at);
      account.notes.push({
        code: "yearTaken",
        sheet: area.sheet,
        facts: { head: heads.get(taken.at)!.text, year: taken.year },
      });
    } else account.questions.push(headQuestion(area.sheet, shape, [heads.get(newest.at)!.text], column));
  }
  extras.push(...liveOfDead(area, section, shape, columns, dead, account));
}

/** Live spurs as positions less those that are dead or missing; none where they are counted or positions are not. */
function liveOfDead(
  area: SheetArea,
  { texts }: Section,
  shape: SheetShape,
  columns: ReadonlyMap<Column, number>,
  dead: readonly number[],
  account: OpenAccount,
): Extra[] {
  const live = shape.columns.find(({ id }) => id === "liveSpurs");
  const positions = [...columns].find(([{ id }]) => id === "positions")?.[1];
  if (!live || dead.length === 0 || columns.has(live) || positions === undefined) return [];
  account.notes.push({
    code: "liveDerived",
    sheet: area.sheet,
    facts: { heads: dead.map((at) => texts[at]!), positions: texts[positions]! },
  });
  return [
    {
      column: live,
      header: texts[dead[0]]!,
      sheetColumn: area.firstColumn + dead[0],
      valueOf: (index) => {
        const all = area.values[index][positions];
        const less = dead.map((at) => area.values[index][at]);
        if (typeof all !== "number" || less.some((cell) => typeof cell !== "number")) return null;
        return less.reduce<number>((rest, cell) => rest - (cell as number), all);
      },
    },
  ];
}

/** Lengths in feet with the inches beyond them in the next column, or metres with centimetres, as one column. */
function inTwoParts(
  { sheet, values, firstColumn }: SheetArea,
  { index, lines, end, texts }: Section,
  { shape }: Segment,
  columns: Map<Column, number>,
  units: ReadonlyMap<Column, Unit>,
  extras: Extra[],
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

/** Units that heads or answers name; a unit word that is none of ours leaves its column unread and asks. */
function unitsOf(
  columns: Map<Column, number>,
  heads: ReadonlyMap<number, HeadWords>,
  sheet: string,
  { answers }: LayoutOptions,
  account: OpenAccount,
): Map<Column, Unit> {
  const units = new Map<Column, Unit>();
  for (const [column, at] of columns) {
    const head = heads.get(at);
    const answered = answers.units?.find(
      (own) => own.sheet === sheet && own.column === column.id && own.counter === undefined,
    );
    const isMeasure = column.kind === "length" || column.kind === "shortLength" || column.kind === "mass";
    const unit = answered
      ? unitNamed(answered.unit)
      : (head?.unit ?? (isMeasure ? head?.lastWord : undefined));
    if (unit) units.set(column, unit);
    if (!unit && isMeasure && head?.unknown !== undefined) {
      columns.delete(column);
      if (isAsked(account, "unit", sheet, column)) continue;
      const likely = column.kind === "mass" ? ["kg", "lb", "g", "oz"] : ["ft", "in", "cm", "m", "mm"];
      const first = likely.filter((id) => id[0] === head.unknown![0]?.toLowerCase());
      account.questions.push({
        code: "unit",
        sheet,
        facts: { head: head.text, word: head.unknown, column: column.id },
        proposals: [...new Set([...first, ...likely])].map((id) => ({
          units: [{ sheet, column: column.id, unit: id }],
        })),
      });
    }
  }
  return units;
}

/** True for a row that no plain table has below its heads: a caption of block and row, or other heads. */
export function isOtherLayout(
  cells: readonly CellValue[],
  heads: readonly CellValue[],
  { shape, columns }: Pick<SurveyTable, "shape" | "columns">,
  knowsBlock: LayoutOptions["knowsBlock"],
): boolean {
  let filled = 0;
  let numbers = 0;
  for (const cell of cells) {
    if (typeof cell === "number") numbers++;
    if (!isBlank(cell)) filled++;
    if (filled > 4 && numbers > 0) return false;
  }
  const vine = columns.find(({ column }) => column.id === "vine");
  if (filled <= 4 && (shape.id === "cordons" || shape.id === "vines"))
    return captionOf(cells, vine && cells[vine.sheetColumn - 1], knowsBlock) !== undefined;
  if (numbers > 0) return false;
  const words = (cell: CellValue) => (typeof cell === "string" ? headWords(cell).words : "");
  const named = cells.map(words).filter((name) => NAMES.has(name));
  return named.length >= 3 && cells.some((cell, at) => words(cell) !== words(heads[at] ?? null));
}

/** The keys of a line between the rows that holds nothing but a caption; of a stretch of its cells where they are given. */
function captionOf(
  line: readonly CellValue[],
  vine: CellValue | undefined,
  knowsBlock: LayoutOptions["knowsBlock"],
  { from, to } = { from: 0, to: line.length },
): FoundKeys | undefined {
  let filled = 0;
  let text: string | undefined;
  for (let at = from; at < Math.min(to, line.length); at++) {
    const cell = line[at];
    if (typeof cell !== "number" && isBlank(cell)) continue;
    if (++filled > 4) return undefined;
    if (typeof cell === "string") text ??= cell;
  }
  if (text === undefined) return undefined;
  if (filled > 1 && typeof vine === "number") return undefined;
  const cells = line.slice(from, to);
  if (isTotalWord(text)) return undefined;
  const distinct = new Set(cells.filter((cell) => !isBlank(cell)).map(String));
  if (distinct.size > 1 && filled > 1) {
    const keys = keysOfLine(cells);
    return keys.block !== undefined &&
      keys.row !== undefined &&
      /[:]|block|row|cuartel|hilera|parcelle|rang/i.test(text)
      ? keys
      : undefined;
  }
  const keys = keysOfLine([text]);
  if (keys.row !== undefined || keys.block !== undefined) return keys;
  return distinct.size === 1 && knowsBlock(text) && isBlank(vine) ? { block: text.trim() } : undefined;
}

function dataLines(from: number, to: number, captions: ReadonlyMap<number, FoundKeys>): number[] {
  const lines: number[] = [];
  for (let index = from; index < to; index++) if (!captions.has(index)) lines.push(index);
  return lines;
}

/** Labels that hold row and vine, or block, row and vine, and what they tell. */
interface Labels {
  /** Position of their column. */
  readonly at: number;
  readonly parts: ReadonlyMap<number, LabelParts>;
  readonly tells: ReadonlySet<(typeof KEYS)[number]>;
}

/** Labels of row and vine ("1-12") under the head of vines, or of all three keys ("NB-3-12") under that or an unknown head. */
function labelsOf(
  area: SheetArea,
  section: Section,
  { from, to }: Segment,
  columns: ReadonlyMap<Column, number>,
  vine: Column,
): Labels | undefined {
  const vines = columns.get(vine);
  if (vines !== undefined) {
    const two = splitLabels(area, section, vines, rowAndVine);
    if (two) return { at: vines, parts: two, tells: new Set(["row", "vine"]) };
  }
  const read = new Set(columns.values());
  for (let at = from; at < to; at++) {
    if (section.texts[at] === undefined || (vines === undefined ? read.has(at) : at !== vines)) continue;
    const three = splitLabels(area, section, at, blockRowAndVine);
    if (three) return { at, parts: three, tells: new Set(KEYS) };
  }
  return undefined;
}

/** The parts of labels, where nearly every line has them. */
function splitLabels(
  area: SheetArea,
  { index, lines, end }: Section,
  column: number,
  split: (label: string) => LabelParts | undefined,
): Map<number, LabelParts> | undefined {
  const found = new Map<number, LabelParts>();
  let filled = 0;
  for (let at = index + lines; at < end; at++) {
    const cell = area.values[at][column];
    if (isBlank(cell)) continue;
    filled++;
    const parts = typeof cell === "string" ? split(cell) : undefined;
    if (parts) found.set(at, parts);
  }
  return filled > 0 && found.size >= filled * 0.8 ? found : undefined;
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

/** Least share of lines without a key from which it is taken as written once a group; below it a cell was forgotten. */
const ONCE_A_GROUP = 0.3;

/** Columns that only the row of a cordon or a vine fills, unlike a line of totals. */
const OF_ONE_ROW = new Set(["side", "cordon", "status"]);

/** Keys written once a group, filled down to the next; undefined where none are. */
function filledDown(
  area: SheetArea,
  lines: readonly number[],
  columns: ReadonlyMap<Column, number>,
  groups: readonly WideGroup[],
  account: OpenAccount,
): ReadonlyMap<number, ReadonlyMap<number, CellValue>> | undefined {
  const own = [
    ...[...columns].filter(([{ id }]) => OF_ONE_ROW.has(id)).map(([, at]) => at),
    ...groups.flatMap(({ positions }) => [...positions.keys()]),
  ];
  const rows = lines.filter((index) => own.some((at) => !isBlank(area.values[index][at])));
  const filled = new Map<number, Map<number, CellValue>>();
  const names: string[] = [];
  for (const id of KEYS) {
    const found = [...columns].find(([column]) => column.id === id);
    if (!found) continue;
    const [column, at] = found;
    const blanks = rows.filter((index) => isBlank(area.values[index][at])).length;
    if (blanks === 0 || blanks === rows.length || blanks < rows.length * ONCE_A_GROUP) continue;
    let last: CellValue = null;
    const values = new Map<number, CellValue>();
    for (const index of rows) {
      const cell = area.values[index][at] ?? null;
      if (!isBlank(cell)) last = cell;
      else if (
        last !== null &&
        !area.values[index].some((other) => typeof other === "string" && isTotalWord(other))
      )
        values.set(index, last);
    }
    filled.set(at, values);
    names.push(column.id);
  }
  if (filled.size === 0) return undefined;
  account.notes.push({ code: "filledDown", sheet: area.sheet, facts: { columns: names } });
  return filled;
}

/** Names the columns that were not read, with the reason. */
function leftColumns(
  { sheet, values, firstColumn }: SheetArea,
  { texts, index, lines, end }: Section,
  segment: Segment,
  columns: ReadonlyMap<Column, number>,
  extras: readonly Extra[],
  { questions, leftOut }: OpenAccount,
): void {
  const read = new Set([
    ...columns.values(),
    ...segment.groups.flatMap(({ positions, dead }) => [...positions.keys(), ...dead]),
    ...extras.flatMap(({ sheetColumn, second = 0 }) => [sheetColumn, second].map((one) => one - firstColumn)),
  ]);
  const asked = new Set(
    questions
      .filter((question) => question.sheet === sheet)
      .flatMap(({ code, facts, proposals: [first] }) =>
        code === "head" ? Object.keys(first.heads![0].columns) : code === "unit" ? [String(facts.head)] : [],
      ),
  );
  const headless: number[] = [];
  for (let at = segment.from; at < segment.to; at++) {
    if (read.has(at)) continue;
    const text = texts[at];
    if (text === undefined) headless.push(at);
    else
      leftOut.push({
        what: "column",
        reason: asked.has(text) ? "asked" : reasonOf(segment.shape, headWords(text), columns),
        sheet,
        facts: { head: text },
      });
  }
  for (const at of filledOf(values.slice(index + lines, end), headless))
    leftOut.push({
      what: "column",
      reason: "noHead",
      sheet,
      facts: { head: columnLetters(firstColumn + at) },
    });
}

/** Those of some columns in which anything stands. */
function filledOf(rows: readonly (readonly CellValue[])[], positions: readonly number[]): number[] {
  const found = new Set<number>();
  for (const cells of positions.length > 0 ? rows : [])
    for (const at of positions) {
      if (at >= cells.length) break;
      if (!isBlank(cells[at])) found.add(at);
    }
  return positions.filter((at) => found.has(at));
}

/** Why a column is not read, as its head tells. */
function reasonOf(shape: SheetShape, head: HeadWords, columns: ReadonlyMap<Column, number>): LeftOutReason {
  if (head.qualifier === "total") return "total";
  const named = columnNamed(shape, head.words);
  if (head.qualifier !== undefined || head.year !== undefined || (named && isOfOtherUnit(named, head)))
    return "qualifier";
  return named && columns.has(named) ? "repeated" : "otherColumn";
}

/** A sheet's column as spreadsheets name it, 1 is A. */
function columnLetters(column: number): string {
  const rest = (column - 1) % 26;
  return (column > 26 ? columnLetters((column - 1 - rest) / 26) : "") + String.fromCharCode(65 + rest);
}

function plainPlace(
  section: Section,
  segment: Segment,
  columns: ReadonlyMap<Column, number>,
  units: ReadonlyMap<Column, Unit>,
): FoundTable {
  return {
    shape: segment.shape,
    headerIndex: section.index,
    columns,
    repeated: repeatedOf(section, segment, columns),
    units,
  };
}

function repeatedOf(
  { texts }: Section,
  { shape, from, to }: Segment,
  columns: ReadonlyMap<Column, number>,
): number[] {
  const repeated: number[] = [];
  for (let at = from; at < to; at++) {
    const text = texts[at];
    if (text === undefined) continue;
    const head = headWords(text);
    if (head.qualifier !== undefined || head.year !== undefined) continue;
    const column = columnNamed(shape, head.words);
    if (column && columns.has(column) && columns.get(column) !== at && ![...columns.values()].includes(at))
      repeated.push(at);
  }
  return repeated;
}

/** Lines of a sheet as a table of their own, whose cells remember where they stand. */
function virtualTable(
  base: {
    area: SheetArea;
    section: Section;
    segment: Segment;
    lines: readonly number[];
    filled: ReadonlyMap<number, ReadonlyMap<number, CellValue>> | undefined;
    units: ReadonlyMap<Column, Unit>;
  },
  columns: ReadonlyMap<Column, number>,
  extras: readonly Extra[],
): LaidTable {
  const { area, section, segment, lines, filled, units } = base;
  const width = segment.to - segment.from;
  const headers: CellValue[] = Array.from(
    { length: width },
    (_, at) => section.texts[segment.from + at] ?? null,
  );
  const placed = new Map([...columns].map(([column, at]) => [column, at - segment.from] as const));
  const ownUnits = new Map(units);
  extras.forEach(({ column, header, unit }, i) => {
    headers.push(header);
    placed.set(column, width + i);
    if (unit) ownUnits.set(column, unit);
  });
  const values: (readonly CellValue[])[] = [headers];
  for (const index of lines) {
    const cells = area.values[index].slice(segment.from, segment.to);
    while (cells.length < width) cells.push(null);
    if (filled)
      for (const [at, byLine] of filled) {
        const value = byLine.get(index);
        if (value !== undefined) cells[at - segment.from] = value;
      }
    const own = cells.filter((cell) => !isBlank(cell));
    const isEmpty = own.length === 0 || (own.length === 1 && typeof own[0] === "string");
    for (const { valueOf } of extras) cells.push(isEmpty ? null : valueOf(index));
    values.push(cells);
  }
  const at = (row: number) => (row === 0 ? section.index : lines[row - 1]);
  const heads = lastFilled(section.texts);
  return {
    area: {
      sheet: area.sheet,
      firstRow: area.firstRow,
      firstColumn: area.firstColumn,
      values,
      formulaAt: (row, column) => (column < width ? area.formulaAt(at(row), column + segment.from) : null),
      isText: area.isText,
      marks: area.marks,
    },
    place: {
      hasMoved: (row) => hasMovedCells(area.values[at(row)], heads),
      shape: segment.shape,
      headerIndex: 0,
      columns: placed,
      repeated: repeatedOf(section, segment, columns).map((position) => position - segment.from),
      units: ownUnits,
      sheetRowOf: (row) => area.firstRow + at(row),
      sheetColumnOf: (position) =>
        position < width ? area.firstColumn + segment.from + position : extras[position - width].sheetColumn,
    },
  };
}

/** A sheet in which no head is ours: what its columns could be is asked, and its rows are named. */
function unknownTable(area: SheetArea, account: OpenAccount): LaidTable[] {
  const { sheet } = area;
  const lines = area.values.filter((cells) => cells.filter((cell) => !isBlank(cell)).length > 2);
  const hasHeads = lines.length > 0 && holdsWordsOnly(lines[0]);
  const rows = lines.length - (hasHeads ? 1 : 0);
  const heads = hasHeads ? lines[0].filter((cell) => typeof cell === "string" && !isBlank(cell)) : [];
  const facts: ReadingFacts = heads.length > 0 ? { rows, heads: heads.map(String) } : { rows };
  const likely = likelyColumns(area);
  if (likely) {
    account.questions.push({
      code: "heads",
      sheet,
      facts: {
        rows: likely.rows,
        heads: Object.keys(likely.columns),
        columns: Object.values(likely.columns),
      },
      proposals: [{ heads: [{ sheet, shape: "cordons", columns: likely.columns }] }],
    });
    account.leftOut.push({ what: "sheet", reason: "otherHeads", sheet, facts: { rows: likely.rows } });
  } else if (holdsSides(area)) {
    account.questions.push({ code: "noHeads", sheet, facts, proposals: [] });
    account.leftOut.push({ what: "sheet", reason: "otherHeads", sheet, facts: { rows } });
  } else account.leftOut.push({ what: "sheet", reason: "notCounts", sheet, facts });
  return [];
}

/** Rows from which a column of sides beside numbers tells that a sheet without known heads holds counts. */
const LEAST_SIDED = 8;

/** True where nearly all cells of a column name sides, both of them, beside three numbers at least. */
function holdsSides({ values }: SheetArea): boolean {
  const side = SHEETS.cordons.columns.find(({ id }) => id === "side")!;
  const rows = values
    .filter((cells) => cells.filter((cell) => typeof cell === "number").length >= 3)
    .slice(0, 500);
  if (rows.length < LEAST_SIDED) return false;
  const width = rows.reduce((most, cells) => Math.max(most, cells.length), 0);
  for (let at = 0; at < width; at++) {
    const sides = rows.flatMap(({ [at]: cell }) =>
      typeof cell === "string" ? (choiceOf(side, cell) ?? []) : [],
    );
    if (sides.length >= rows.length * 0.8 && new Set(sides).size > 1) return true;
  }
  return false;
}
