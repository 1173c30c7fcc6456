import type { Check, FindingKind } from "./check";
import { positionsOutOfOrder } from "../season/inOrder";
import { NO_PLACE, placeOf, rowKey } from "../season/vinePlaces";
import { placeName } from "../../texts/placeName";

const outOfWalkOrder: FindingKind = { code: "outOfWalkOrder", severity: "ask", action: "askCounter" };

/**
 * Vines that stand elsewhere in the sheet than where the crew passed them. A row may be walked from either end; rows
 * of the vineyard may come in any order. A sheet sorted another way is not judged.
 */
export const WALK_ORDER: Check = {
  id: "walkOrder",
  kinds: [outOfWalkOrder],
  sheets: ["cordons"],
  scope: "survey",
  prepare(table, context) {
    const vineColumn = table.column("vine");
    if (!vineColumn) return undefined;
    const most = context.season.settings.walkOrderMostVinesOutOfOrder;
    const keys = context.places.keysOf(table);
    const stops = stopsOf(keys);
    const strays = new Set(strayRows(keys, stops));
    for (const walk of walksOf(keys, stops)) {
      const straying = positionsOutOfOrder(
        walk.map((stop) => placeOf(keys[stops[stop]]).vine),
        true,
      );
      if (straying.length <= Math.max(1, most * walk.length)) for (const at of straying) strays.add(walk[at]);
    }
    return (from, to, report) => {
      for (const stop of strays) {
        if (stops[stop] < from || stops[stop] >= to) continue;
        const neighbours = [stop - 1, stop + 1]
          .filter((other) => other >= 0 && other < stops.length)
          .map((other) => placeOf(keys[stops[other]]))
          .map(({ row, vine }) => `${placeName(row)}/${placeName(vine)}`);
        report(outOfWalkOrder, stops[stop], vineColumn, { neighbours });
      }
    };
  },
};

/** First rows of the stretches of rows with the same vine: a stop of the walk each. */
function stopsOf(keys: Float64Array): Int32Array {
  let count = 0;
  const stops = new Int32Array(keys.length);
  for (let i = 0; i < keys.length; i++)
    if (keys[i] !== NO_PLACE && (i === 0 || keys[i] !== keys[i - 1])) stops[count++] = i;
  return stops.slice(0, count);
}

/** Stretches of stops in one vineyard row; a single stop of another row in between does not end a stretch. */
function* walksOf(keys: Float64Array, stops: Int32Array): Generator<number[], void, void> {
  let walk: number[] = [];
  const rowAt = (stop: number) => rowKey(keys[stops[stop]]);
  for (let stop = 0; stop < stops.length; stop++) {
    const row = walk.length === 0 ? rowAt(stop) : rowAt(walk[0]);
    if (rowAt(stop) === row) walk.push(stop);
    else if (rowAt(stop + 1) !== row || rowAt(stop + 2) !== row) {
      yield walk;
      walk = [stop];
    }
  }
  if (walk.length > 0) yield walk;
}

/** Stops of another row in the middle of a row's walk. */
function strayRows(keys: Float64Array, stops: Int32Array): number[] {
  const strays: number[] = [];
  const rowAt = (stop: number) => rowKey(keys[stops[stop]]);
  for (let stop = 2; stop < stops.length - 2; stop++) {
    const row = rowAt(stop - 1);
    if (rowAt(stop) === row || rowAt(stop + 1) !== row) continue;
    if (rowAt(stop - 2) === row && rowAt(stop + 2) === row) strays.push(stop);
  }
  return strays;
}
