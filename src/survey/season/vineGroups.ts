import type { CheckContext } from "../checks/check";
import { stretch } from "./stretch";
import type { SurveyTable } from "./season";
import { NO_PLACE } from "./vinePlaces";

/**
 * Rows of a cordon table vine by vine, in the order in which the vines come first. The rows of one vine mostly follow
 * each other; only those of vines that come back further down are held together. Vines that more rows name than a vine
 * has cordons are left out.
 */
export function* rowsByVine(
  table: SurveyTable,
  context: CheckContext,
): Generator<readonly [key: number, rows: readonly number[]], void, void> {
  const keys = context.places.keysOf(table);
  const overfull = context.season.used.overfull();
  const scattered = scatteredVines(keys);
  for (let first = 0; first < keys.length;) {
    const end = first + stretch(keys, first);
    const key = keys[first];
    const together = scattered.get(key);
    if (overfull.has(key)) {
      first = end;
      continue;
    }
    if (together) {
      if (together[0] === first) yield [key, together];
    } else if (key !== NO_PLACE) yield [key, rowsBetween(first, end)];
    first = end;
  }
}

function rowsBetween(first: number, end: number): number[] {
  const rows: number[] = [];
  for (let row = first; row < end; row++) rows.push(row);
  return rows;
}

/** All rows of the vines that stand in more than one stretch. */
function scatteredVines(keys: Float64Array): Map<number, number[]> {
  const starts = keys.filter((key, i) => key !== NO_PLACE && key !== keys[i - 1]).sort();
  const scattered = new Map<number, number[]>();
  for (let i = 1; i < starts.length; i++) if (starts[i] === starts[i - 1]) scattered.set(starts[i], []);
  if (scattered.size > 0) keys.forEach((key, i) => scattered.get(key)?.push(i));
  return scattered;
}
