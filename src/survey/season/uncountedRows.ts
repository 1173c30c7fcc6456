import { CELL, type SurveyTable } from "./surveyTable";
import { NO_PLACE, type VinePlaces } from "./vinePlaces";

/** Columns that stand in a row before anybody has counted it. */
const BEFORE_COUNTING: ReadonlySet<string> = new Set([
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
  const uncounted = new Uint8Array(table.rowCount);
  if (table.shape.id !== "cordons") return uncounted;
  const columns = table.columns.filter(({ column }) => !BEFORE_COUNTING.has(column.id));
  const keys = places.keysOf(table);
  const counted = new Set<number>();
  for (let i = 0; i < uncounted.length; i++)
    if (keys[i] !== NO_PLACE && !columns.every(({ states }) => states[i] === CELL.blank))
      counted.add(keys[i]);
  for (let i = 0; i < uncounted.length; i++)
    if (keys[i] !== NO_PLACE && !counted.has(keys[i])) uncounted[i] = 1;
  return uncounted;
}
