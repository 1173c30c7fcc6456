import type { Check, FindingKind } from "./check";
import type { SurveyTable } from "../season/season";
import { uncountedRows } from "../season/uncountedRows";
import { blockOfRow, choiceId, NO_PLACE, placeOf, rowKey, type VinePlaces } from "../season/vinePlaces";

const vineNeverCounted: FindingKind = { code: "vineNeverCounted", severity: "ask", action: "askCounter" };
const rowNeverCounted: FindingKind = { code: "rowNeverCounted", severity: "ask", action: "askCounter" };

/** Bearing vines and whole rows of the register that the cordon sheet passes over, while those around were counted. */
export const NEVER_COUNTED: Check = {
  id: "neverCounted",
  kinds: [vineNeverCounted, rowNeverCounted],
  sheets: ["vines"],
  scope: "survey",
  prepare(table, context) {
    const cordons = context.season.tables("cordons");
    const status = table.column("status");
    const vineColumn = table.column("vine");
    if (cordons.length === 0 || !status || !vineColumn) return undefined;
    const { places } = context;
    const counted = countedVines(cordons, places);
    const least = context.season.settings.countedRowLeastShareOfItsVines;
    const keys = places.keysOf(table);
    const rows = new Map<number, { bearing: number; counted: number; first: number }>();
    const bearing = (i: number) => keys[i] !== NO_PLACE && choiceId(status, i) === "bearing";
    for (let i = 0; i < keys.length; i++) {
      if (!bearing(i)) continue;
      const row = rows.get(rowKey(keys[i])) ?? { bearing: 0, counted: 0, first: i };
      row.bearing++;
      if (counted.has(keys[i])) row.counted++;
      rows.set(rowKey(keys[i]), row);
    }
    const underWay = lastBlock(cordons, places);
    const skipped = skippedRows(rows, least, underWay);
    return (from, to, report) => {
      for (let i = from; i < to; i++) {
        if (!bearing(i) || counted.has(keys[i])) continue;
        const row = rows.get(rowKey(keys[i]))!;
        if (row.counted >= least * row.bearing)
          report(vineNeverCounted, i, vineColumn, { vines: row.bearing, counted: row.counted });
        else if (row.first === i && skipped.has(rowKey(keys[i])))
          report(rowNeverCounted, i, table.column("row"), { vines: row.bearing });
      }
    };
  },
};

function countedVines(cordons: readonly SurveyTable[], places: VinePlaces): Set<number> {
  const counted = new Set<number>();
  for (const table of cordons) {
    const keys = places.keysOf(table);
    const uncounted = uncountedRows(table, places);
    for (let i = 0; i < keys.length; i++)
      if (keys[i] !== keys[i - 1] && uncounted[i] === 0) counted.add(keys[i]);
  }
  return counted;
}

interface BlockProgress {
  rows: number;
  counted: number;
  firstCounted: number;
  lastCounted: number;
}

/**
 * Rows without a single count that the crew has passed: between counted rows, or in a block of which enough was
 * counted before the crew went on to another.
 */
function skippedRows(
  rows: ReadonlyMap<number, { bearing: number; counted: number }>,
  least: number,
  blockUnderWay: number | undefined,
): Set<number> {
  const blocks = new Map<number, BlockProgress>();
  for (const [row, { counted }] of rows) {
    const block = blocks.get(blockOfRow(row)) ?? {
      rows: 0,
      counted: 0,
      firstCounted: Infinity,
      lastCounted: -Infinity,
    };
    block.rows++;
    if (counted > 0) {
      block.counted++;
      block.firstCounted = Math.min(block.firstCounted, row);
      block.lastCounted = Math.max(block.lastCounted, row);
    }
    blocks.set(blockOfRow(row), block);
  }
  const skipped = new Set<number>();
  for (const [row, { counted }] of rows) {
    const block = blocks.get(blockOfRow(row))!;
    if (counted > 0 || block.counted < least * block.rows) continue;
    const between = row > block.firstCounted && row < block.lastCounted;
    if (between || (blockUnderWay !== undefined && blockOfRow(row) !== blockUnderWay)) skipped.add(row);
  }
  return skipped;
}

/** Block of the last counted cordon in the sheets: where the crew is, or was last. */
function lastBlock(cordons: readonly SurveyTable[], places: VinePlaces): number | undefined {
  const table = cordons.at(-1);
  if (!table) return undefined;
  const keys = places.keysOf(table);
  const uncounted = uncountedRows(table, places);
  for (let i = keys.length - 1; i >= 0; i--)
    if (keys[i] !== NO_PLACE && uncounted[i] === 0) return placeOf(keys[i]).block;
  return undefined;
}
