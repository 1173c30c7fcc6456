import type { CheckContext } from "./check";
import type { SurveyTable } from "./survey";
import { NO_PLACE } from "./vinePlaces";

/** Rows of a cordon table by vine, in the order of the sheet. */
export function rowsByVine(table: SurveyTable, context: CheckContext): Map<number, number[]> {
  const vines = new Map<number, number[]>();
  const keys = context.places.keysOf(table);
  for (let i = 0; i < keys.length; i++) {
    if (keys[i] === NO_PLACE) continue;
    const rows = vines.get(keys[i]);
    if (rows) rows.push(i);
    else vines.set(keys[i], [i]);
  }
  return vines;
}
