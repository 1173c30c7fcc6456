import { type CellValue, isBlank } from "../../sheets/cell";
import { HEADER_SEARCH_ROWS } from "../findTable";
import { headWords } from "../headWords";
import type { SheetArea } from "../sheetArea";
import { type FoundKeys, keysOfLine } from "./sheetKeys";
import { bestShape, type Segment } from "./bestShape";
import { headTexts } from "./headTexts";
import { constantsOf, type LayoutOptions } from "./layoutOptions";
import { spans } from "./spans";

interface Heads {
  /** First line of the heads and how many lines they take. */
  readonly index: number;
  readonly lines: number;
  readonly texts: readonly (string | undefined)[];
  readonly segments: readonly Segment[];
  readonly wide: boolean;
  readonly score: number;
}

export interface Section extends Heads {
  /** Index behind the last row of the section. */
  readonly end: number;
}

const MOST_HEAD_LINES = 3;

/** Of heads that name as much, those with more lines are taken: a line of units is no row. */
const TIE = 0.001;

export function bestHeads(area: SheetArea, options: LayoutOptions): Heads | undefined {
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
export function holdsWordsOnly(cells: readonly CellValue[]): boolean {
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

/** The table with its later heads, each a section of its own. */
export function sections(area: SheetArea, first: Heads, options: LayoutOptions): Section[] {
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

export function keysAbove(area: SheetArea, index: number): FoundKeys {
  let keys: FoundKeys = {};
  for (let line = Math.max(0, index - 6); line < index; line++) {
    const cells = area.values[line];
    if (cells.filter((cell) => !isBlank(cell)).length <= 8) keys = { ...keys, ...keysOfLine(cells) };
  }
  return keys;
}
