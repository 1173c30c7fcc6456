import { isBlank, type CellValue } from "../sheets/cell";
import type { Column } from "../sheets/column";
import { SHEETS } from "../sheets/sheets";
import { holdsUnit } from "../sheets/unit";
import { HEADER_SEARCH_ROWS } from "./findTable";
import { columnNamed, headWords, likeness } from "./headWords";
import { isReadable } from "./isReadable";
import type { SheetArea } from "./sheetArea";

/** Least likeness of a head to one of ours from which it is proposed. */
const LEAST_LIKENESS = 0.2;

/**
 * What the columns of a sheet with other heads could be, from the letters of the heads and from what stands below them;
 * undefined where it holds no counts of vines.
 */
export function likelyColumns(
  area: SheetArea,
): { rows: number; columns: Record<string, string> } | undefined {
  let best: { rows: number; columns: Record<string, string> } | undefined;
  for (let index = 0; index < Math.min(area.values.length, HEADER_SEARCH_ROWS); index++) {
    const found = likelyAt(area, index);
    if (found && Object.keys(found.columns).length > Object.keys(best?.columns ?? {}).length) best = found;
  }
  return best;
}

function likelyAt(
  area: SheetArea,
  index: number,
): { rows: number; columns: Record<string, string> } | undefined {
  const heads = area.values[index].map((cell) =>
    typeof cell === "string" && !isBlank(cell) ? cell.trim() : undefined,
  );
  if (heads.filter((head) => head !== undefined).length < 5) return undefined;
  if (area.values[index].some((cell) => typeof cell === "number")) return undefined;
  const rows = area.values
    .slice(index + 1)
    .filter((cells) => cells.filter((cell) => !isBlank(cell)).length > 3);
  if (rows.length < 2) return undefined;
  const shape = SHEETS.cordons;
  const pairs: { head: string; at: number; column: Column; score: number }[] = [];
  heads.forEach((head, at) => {
    if (head === undefined) return;
    const { qualifier, year, lastWord, ...plain } = headWords(head);
    const unit = plain.unit ?? lastWord;
    const words = lastWord ? plain.words.replace(/ \S+$/, "") : plain.words;
    if (qualifier !== undefined || year !== undefined) return;
    const cells = rows.slice(0, 200).map((row) => row[at] ?? null);
    const named = columnNamed(shape, words);
    for (const column of shape.columns) {
      if (named && named !== column) continue;
      if (unit && column.kind !== "text" && !holdsUnit(column.kind, unit)) continue;
      const score = named ? 2 : likeness(words, column);
      if (score >= LEAST_LIKENESS && fits(column, cells)) pairs.push({ head, at, column, score });
    }
  });
  const order = (column: Column) => shape.columns.indexOf(column);
  pairs.sort(
    (a, b) => b.score - a.score || Math.abs(order(a.column) - a.at) - Math.abs(order(b.column) - b.at),
  );
  const columns: Record<string, string> = {};
  const taken = new Set<Column>();
  for (const { head, column } of pairs) {
    if (head in columns || taken.has(column)) continue;
    columns[head] = column.id;
    taken.add(column);
  }
  const found = isEnough(columns) ? columns : byContent(heads, rows);
  return found && isEnough(found) ? { rows: rows.length, columns: found } : undefined;
}

/** True where the columns are those of counts on cordons. */
function isEnough(columns: Readonly<Record<string, string>>): boolean {
  const ids = new Set(Object.values(columns));
  const counts = ["liveSpurs", "positions", "length"].filter((id) => ids.has(id)).length;
  return ids.has("vine") && counts > 0 && ids.size >= 5 && (ids.has("side") || ids.has("cordon"));
}

/** Most trunks of a vine that tell a column of them from counts. */
const FEW_TRUNKS = 4;

/**
 * What columns under heads that say nothing hold, from their cells alone: words of sides and letters of cordons, keys
 * before them, of which the row changes less often than the vine, and of two counts the one that never exceeds the other
 * as live spurs. Undefined where the cells leave anything open.
 */
function byContent(
  heads: readonly (string | undefined)[],
  rows: readonly (readonly CellValue[])[],
): Record<string, string> | undefined {
  const columns = new Map(SHEETS.cordons.columns.map((column) => [column.id, column]));
  const cells = heads.map((_, at) => rows.map((row) => row[at] ?? null));
  const named = heads.flatMap((head, at) => (head === undefined ? [] : [at]));
  if (new Set(named.map((at) => heads[at])).size < named.length) return undefined;
  const holds = (id: string, at: number) => fits(columns.get(id)!, cells[at]);
  const areTexts = (at: number) => cells[at].every((cell) => typeof cell === "string" && !isBlank(cell));
  const areWhole = (at: number) => cells[at].every((cell) => Number.isInteger(cell) && Number(cell) >= 0);
  const kinds = (at: number) => new Set(cells[at]).size;
  const sides = named.filter((at) => areTexts(at) && holds("side", at) && kinds(at) > 1);
  if (sides.length !== 1) return undefined;
  const [side] = sides;
  const words = named.filter((at) => at !== side && areTexts(at));
  const cordons = words.filter((at) => at > side && holds("cordon", at));
  const blocks = words.filter((at) => at < side);
  const keys = named.filter((at) => at < side && areWhole(at));
  const counts = named.filter((at) => at > side && areWhole(at));
  const trunks = counts.filter((at) =>
    cells[at].every((cell) => Number(cell) >= 1 && Number(cell) <= FEW_TRUNKS),
  );
  const [one, other, ...more] = counts.filter((at) => !trunks.includes(at));
  if (cordons.length > 1 || blocks.length > 1 || trunks.length > 1 || more.length > 0) return undefined;
  if (keys.length < 1 || keys.length > 2 || other === undefined) return undefined;
  const never = (over: number, under: number) =>
    cells[over].every((cell, i) => Number(cell) <= Number(cells[under][i]));
  if (never(one, other) === never(other, one)) return undefined;
  const changes = (at: number) => cells[at].filter((cell, i) => i > 0 && cell !== cells[at][i - 1]).length;
  if (keys.length === 2 && changes(keys[0]) === changes(keys[1])) return undefined;
  const slowFirst = [...keys].sort((a, b) => changes(a) - changes(b));
  const lengths = named.filter(
    (at) => at > side && !areWhole(at) && cells[at].every((cell) => typeof cell === "number" && cell > 0),
  );
  const found: Record<string, number | undefined> = {
    block: blocks[0],
    row: keys.length === 2 ? slowFirst[0] : undefined,
    vine: slowFirst.at(-1),
    side,
    cordon: cordons[0],
    trunk: trunks[0],
    length: lengths.length === 1 ? lengths[0] : undefined,
    positions: never(one, other) ? other : one,
    liveSpurs: never(one, other) ? one : other,
  };
  return Object.fromEntries(
    Object.entries(found).flatMap(([id, at]) => (at === undefined ? [] : [[heads[at]!, id]])),
  );
}

/** True where a column of ours could hold most of these cells. */
export function fits(column: Column, cells: readonly CellValue[]): boolean {
  const filled = cells.filter((cell) => !isBlank(cell));
  if (filled.length === 0) return column.id === "note";
  const texts = filled.filter((cell) => typeof cell === "string").length;
  if (column.kind === "text" && column.id !== "block" && texts < filled.length / 2) return false;
  if (column.id === "cordon" && filled.some((cell) => String(cell).trim().length > 3)) return false;
  return filled.filter((cell) => isReadable(column, cell)).length >= filled.length * 0.8;
}
