import type { Check, FindingKind } from "./check";
import { isoDay } from "../reading/serialDate";
import { positionsOutOfOrder } from "../season/inOrder";
import type { Numbers } from "../season/season";
import { NO_PLACE, rowKey } from "../season/vinePlaces";

const dateOutOfWalkOrder: FindingKind = { code: "dateOutOfWalkOrder", severity: "ask", action: "correct" };

/**
 * Within one vineyard row the days of the counts only go forward, from whichever end it was walked. A few rows that do
 * not fit are mistyped dates; where many do not, the row was not walked in one go and is not judged.
 */
export const DATE_ORDER: Check = {
  id: "dateOrder",
  kinds: [dateOutOfWalkOrder],
  sheets: ["cordons", "vines"],
  scope: "survey",
  prepare(table, context) {
    const column = table.column("countedOn");
    if (!column) return undefined;
    const keys = context.places.keysOf(table);
    const most = context.season.settings.walkOrderMostVinesOutOfOrder;
    const strays = new Map<number, number>();
    let walk: number[] = [];
    const close = () => {
      const straying = positionsOutOfOrder(
        walk.map((i) => Math.floor(column.numbers[i])),
        false,
      );
      if (straying.length <= most * walk.length)
        for (const at of straying) strays.set(walk[at], usualDay(walk, straying, column.numbers));
      walk = [];
    };
    let row = NaN;
    for (let i = 0; i < table.rowCount; i++) {
      if (keys[i] === NO_PLACE || Number.isNaN(column.numbers[i])) continue;
      const here = rowKey(keys[i]);
      if (walk.length > 0 && here !== row) close();
      row = here;
      walk.push(i);
    }
    close();
    return (from, to, report) => {
      for (let i = from; i < to; i++) {
        const usual = strays.get(i);
        if (usual === undefined || strays.get(i - 1) === usual) continue;
        report(dateOutOfWalkOrder, i, column, { value: isoDay(column.numbers[i]), usual: isoDay(usual) });
      }
    };
  },
};

/** The middle one of the days that fit. */
function usualDay(walk: readonly number[], straying: readonly number[], days: Numbers): number {
  const out = new Set(straying);
  const kept = walk.filter((_, at) => !out.has(at)).map((i) => days[i]);
  return kept[kept.length >> 1];
}
