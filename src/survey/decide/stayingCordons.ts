import type { Stays } from "../season/fixedCordons";
import type { SurveyTable } from "../season/season";
import type { DecidedVine } from "./decideSeason";

const STAYS = 1;
const GOES = 2;

/**
 * Tells which cordons are left on the wire after the decision: those that stay, and where a person must still decide a
 * side, the one that would stay if the call went its way. Undefined for the cordons of a vine on which nothing is
 * decided.
 */
export function stayingCordons(vines: Iterable<DecidedVine>): Stays {
  const answers = new Map<SurveyTable, Uint8Array>();
  for (const { decision, rows } of vines) {
    if (decision.sides.length === 0) continue;
    const perhaps = new Set(decision.sides.map(({ side, cordon }) => `${side} ${cordon}`));
    decision.cordons.forEach(({ verdict, side, cordon }, place) => {
      const { table, index } = rows[place];
      let codes = answers.get(table);
      if (codes === undefined) answers.set(table, (codes = new Uint8Array(table.rowCount)));
      const stays = verdict === "stays" || (verdict === "ask" && perhaps.has(`${side} ${cordon}`));
      codes[index] = stays ? STAYS : GOES;
    });
  }
  return (table, index) => {
    const code = answers.get(table)?.[index];
    return code ? code === STAYS : undefined;
  };
}
