import { isBlank } from "../sheets/cell";
import {
  acceptedHeaders,
  isNamedAs,
  plainHeader,
  type Column,
  type SheetId,
  type SheetShape,
} from "../sheets/column";
import type { KeyLabels } from "./readCells";
import type { SheetArea } from "./sheetArea";
import { SHEETS } from "../sheets/sheets";
import type { Unit } from "../sheets/unit";

/** Where a table starts and which of our columns stands in which of its columns. */
export interface FoundTable {
  readonly shape: SheetShape;
  /** Index in area.values. */
  readonly headerIndex: number;
  /** Index in the rows of area.values, by column. */
  readonly columns: ReadonlyMap<Column, number>;
  readonly repeated: readonly number[];
  /** The winter that a column of years names for all rows. */
  readonly winter?: number;
  /** Units that heads or answers name, where the layout was looked at. */
  readonly units?: ReadonlyMap<Column, Unit>;
  /** How the keys are labelled, where the area is a part of a table that tells. */
  readonly labels?: ReadonlyMap<string, KeyLabels>;
  /** Sheet row of a row of the area and sheet column of a position, where the area is not the sheet's own. */
  readonly sheetRowOf?: (index: number) => number;
  readonly sheetColumnOf?: (position: number) => number;
  /** True for rows of the area that have more cells than the sheet's heads; told where the area is not the sheet's own. */
  readonly hasMoved?: (index: number) => boolean;
}

/** Rows of a sheet in which a header row is looked for. */
export const HEADER_SEARCH_ROWS = 30;

const ACCEPTED: ReadonlyMap<SheetShape, ReadonlyMap<string, Column>> = new Map(
  Object.values(SHEETS).map((shape) => [
    shape,
    new Map(
      shape.columns.flatMap((column) => acceptedHeaders(column).map((header) => [header, column] as const)),
    ),
  ]),
);

/**
 * Finds the table of a sheet by its headers, in any language of ours, in any order, anywhere in the first thirty rows.
 * Undefined when no row has at least half of a sheet's required columns and three known headers (two for Settings).
 *
 * @param told which sheet of ours it is, where that is known; one known header is enough then
 */
export function findTable(area: SheetArea, told?: SheetId): FoundTable | undefined {
  const last = Math.min(area.values.length, HEADER_SEARCH_ROWS);
  const shapes = told ? [SHEETS[told]] : Object.values(SHEETS);
  let best: { found: FoundTable; score: number } | undefined;
  for (let index = 0; index < last; index++)
    for (const shape of shapes) {
      const found = matchRow(area, index, shape);
      const score = scoreOf(found, area.sheet, told !== undefined);
      if (score > (best?.score ?? 0)) best = { found, score };
    }
  return best?.found;
}

/** Headers of the row that most likely holds them, for a person who maps their own: the row with most words early on. */
export function likelyHeaders(area: SheetArea): { headerRow: number; headers: string[] } | undefined {
  let best: { headerRow: number; headers: string[] } | undefined;
  for (let index = 0; index < Math.min(area.values.length, HEADER_SEARCH_ROWS); index++) {
    const headers = area.values[index].filter(
      (cell): cell is string => typeof cell === "string" && !isBlank(cell),
    );
    if (headers.length > (best?.headers.length ?? 0))
      best = { headerRow: area.firstRow + index, headers: headers.map((header) => header.trim()) };
  }
  return best;
}

function matchRow(area: SheetArea, index: number, shape: SheetShape): FoundTable {
  const accepted = ACCEPTED.get(shape)!;
  const columns = new Map<Column, number>();
  const repeated: number[] = [];
  area.values[index].forEach((cell, position) => {
    if (typeof cell !== "string") return;
    const column = accepted.get(plainHeader(cell));
    if (!column) return;
    if (columns.has(column)) repeated.push(position);
    else columns.set(column, position);
  });
  return { shape, headerIndex: index, columns, repeated };
}

function scoreOf(found: FoundTable, sheet: string, isTold: boolean): number {
  const required = found.shape.columns.filter((column) => column.required);
  const present = required.filter((column) => found.columns.has(column)).length / required.length;
  const enough = found.shape.id === "settings" ? 2 : 3;
  if (!isTold && (found.columns.size < enough || present < 0.5)) return 0;
  if (found.columns.size === 0) return 0;
  return found.columns.size + 2 * present + (isNamedAs(found.shape, sheet) ? 1 : 0);
}
