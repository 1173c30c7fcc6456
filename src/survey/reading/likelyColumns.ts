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
  const ids = new Set(Object.values(columns));
  const counts = ["liveSpurs", "positions", "length"].filter((id) => ids.has(id)).length;
  return ids.has("vine") && counts > 0 && ids.size >= 5 && (ids.has("side") || ids.has("cordon"))
    ? { rows: rows.length, columns }
    : undefined;
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
