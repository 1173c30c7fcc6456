import type { Check, FindingKind } from "../check";
import { positionsOutOfOrder } from "../inOrder";
import { NO_PLACE, placeOf } from "../vinePlaces";

const outOfWalkOrder: FindingKind = { code: "outOfWalkOrder", severity: "ask", action: "askCounter" };

/** One vine of a walk: its rows follow each other in the sheet. */
interface Stop {
  readonly index: number;
  readonly key: number;
  readonly row: number;
  readonly vine: number;
}

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
    const most = context.setting("Walk order: most vines out of order");
    const stops = stopsOf(context.places.keysOf(table));
    const strays = new Set(strayRows(stops).map((stop) => stop.index));
    for (const walk of walksOf(stops)) {
      const straying = positionsOutOfOrder(
        walk.map((stop) => stop.vine),
        true,
      );
      if (straying.length <= Math.max(1, most * walk.length))
        for (const at of straying) strays.add(walk[at].index);
    }
    const positions = new Map(stops.map((stop, at) => [stop.index, at]));
    return (from, to, report) => {
      for (let i = from; i < to; i++) {
        if (!strays.has(i)) continue;
        const at = positions.get(i)!;
        const neighbours = [stops[at - 1], stops[at + 1]].flatMap((stop) =>
          stop ? [`${placeOf(stop.key).row}/${stop.vine}`] : [],
        );
        report(outOfWalkOrder, i, vineColumn, { neighbours });
      }
    };
  },
};

/** Stops of the sheet in its order, one for each stretch of rows with the same vine. */
function stopsOf(keys: Float64Array): Stop[] {
  const stops: Stop[] = [];
  for (let index = 0; index < keys.length; index++) {
    if (keys[index] === NO_PLACE || (index > 0 && keys[index] === keys[index - 1])) continue;
    const { row, vine, block } = placeOf(keys[index]);
    stops.push({ index, key: keys[index], row: block * 4096 + row, vine });
  }
  return stops;
}

/** Stretches of stops in one vineyard row; a single stop of another row in between does not end a stretch. */
function walksOf(stops: readonly Stop[]): Stop[][] {
  const walks: Stop[][] = [];
  stops.forEach((stop, at) => {
    const walk = walks.at(-1);
    if (!walk) walks.push([stop]);
    else if (walk[0].row === stop.row) walk.push(stop);
    else if (stops[at + 1]?.row !== walk[0].row || stops[at + 2]?.row !== walk[0].row) walks.push([stop]);
  });
  return walks;
}

/** Stops of another row in the middle of a row's walk. */
function strayRows(stops: readonly Stop[]): Stop[] {
  return stops.filter((stop, at) => {
    const around = [stops[at - 2], stops[at - 1], stops[at + 1], stops[at + 2]];
    return around.every(
      (other) => other !== undefined && other.row === around[0]?.row && other.row !== stop.row,
    );
  });
}
