import type { DecidedVine } from "./decideSeason";
import type { SurveyTable } from "../season/season";

/**
 * Tells which cordons are left on the wire after the decision: those that stay, and where a person must still decide a
 * side, the one that would stay if the call went its way.
 */
export function stayingCordons(vines: Iterable<DecidedVine>): (table: SurveyTable, index: number) => boolean {
  const staying = new Map<SurveyTable, Set<number>>();
  for (const { decision, rows } of vines) {
    const perhaps = new Set(
      decision.sides.flatMap(({ side, cordon }) => (cordon === undefined ? [] : [`${side} ${cordon}`])),
    );
    decision.cordons.forEach(({ verdict, side, cordon }, place) => {
      if (verdict !== "stays" && !(verdict === "ask" && perhaps.has(`${side} ${cordon}`))) return;
      const { table, index } = rows[place];
      let indexes = staying.get(table);
      if (indexes === undefined) staying.set(table, (indexes = new Set()));
      indexes.add(index);
    });
  }
  return (table, index) => staying.get(table)?.has(index) ?? false;
}
