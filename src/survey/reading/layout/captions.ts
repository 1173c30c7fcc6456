import { placeName } from "../../../texts/placeName";
import type { SurveyTable } from "../../season/surveyTable";
import { type CellValue, isBlank } from "../../sheets/cell";
import { headWords, NAMES } from "../headWords";
import type { SheetArea } from "../sheetArea";
import { type FoundKeys, keysOfLine } from "./sheetKeys";
import { isTotalWord } from "../totalWords";
import type { Segment } from "./bestShape";
import type { Section } from "./heads";
import type { LayoutOptions } from "./layoutOptions";

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

/** The captions among the lines of a table, with the keys they tell for the rows below. */
export function captionsOf(
  area: SheetArea,
  section: Section,
  segment: Segment,
  vine: number | undefined,
  { knowsBlock }: LayoutOptions,
): Map<number, FoundKeys> {
  const captions = new Map<number, FoundKeys>();
  const firstData = section.index + section.lines;
  for (let index = firstData; index < section.end; index++) {
    const cells = area.values[index];
    const keys = captionOf(cells, vine === undefined ? undefined : cells[vine], knowsBlock, segment);
    if (keys) captions.set(index, keys);
  }
  blocksAboveRows(area, segment, firstData, captions);
  return captions;
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
export function labelOf<Key extends CellValue>(key: Key): Key | string | number {
  return typeof key === "number" ? placeName(key) : key;
}

export function nearestAbove(
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

/** Lines of a table that are no captions. */
export function dataLines(
  { index, lines, end }: Section,
  captions: ReadonlyMap<number, FoundKeys>,
): number[] {
  const found: number[] = [];
  for (let line = index + lines; line < end; line++) if (!captions.has(line)) found.push(line);
  return found;
}
