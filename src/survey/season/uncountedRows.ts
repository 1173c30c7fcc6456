import { CELL, type SurveyTable } from "./surveyTable";
import { NO_PLACE, type VinePlaces } from "./vinePlaces";

/** Columns that stand in a row before anybody has counted it. */
export const BEFORE_COUNTING: ReadonlySet<string> = new Set([
  "block",
  "row",
  "vine",
  "side",
  "cordon",
  "countedBy",
  "countedOn",
]);

/**
 * Rows of a Cordons sheet that are laid out and still to be counted: nothing stands beside their place, nor in the other
 * rows of the same vine. A blank row on a vine that has counts is no such row, but one that was left out.
 */
export function uncountedRows(table: SurveyTable, places: VinePlaces): Uint8Array {
  const known = uncountedOfTables.get(table);
  if (known) return known;
  const uncounted =
    table.shape.id === "cordons" ? findUncounted(table, places) : new Uint8Array(table.rowCount);
  uncountedOfTables.set(table, uncounted);
  return uncounted;
}

const uncountedOfTables = new WeakMap<SurveyTable, Uint8Array>();

function findUncounted(table: SurveyTable, places: VinePlaces): Uint8Array {
  const uncounted = new Uint8Array(table.rowCount);
  const columns = table.columns.filter(({ column }) => !BEFORE_COUNTING.has(column.id));
  const keys = places.keysOf(table);
  const open = new Set<number>();
  for (let i = 0; i < uncounted.length; i++)
    if (keys[i] !== NO_PLACE && columns.every(({ states }) => states[i] === CELL.blank)) {
      uncounted[i] = 1;
      open.add(keys[i]);
    }
  if (open.size === 0) return uncounted;
  for (let i = 0; i < uncounted.length; i++) if (uncounted[i] === 0) open.delete(keys[i]);
  for (let i = 0; i < uncounted.length; i++) if (!open.has(keys[i])) uncounted[i] = 0;
  return uncounted;
}
