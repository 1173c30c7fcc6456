import type { Check, FindingKind } from "../check";
import { rowsByVine } from "../vineGroups";
import { choiceId } from "../vinePlaces";

const sideFromOneTrunk: FindingKind = { code: "sideFromOneTrunk", severity: "note", action: "lookAtVine" };
const trunksAboveRegister: FindingKind = {
  code: "trunksAboveRegister",
  severity: "ask",
  action: "lookAtVine",
};

/**
 * A side whose candidates all come from one trunk although the vine has another, so that the choice cannot part the
 * two sides; and live cordons on more trunks than the register says are alive.
 */
export const TRUNKS_OF_VINE: Check = {
  id: "trunksOfVine",
  kinds: [sideFromOneTrunk, trunksAboveRegister],
  sheets: ["cordons"],
  scope: "survey",
  prepare(table, context) {
    const trunkColumn = table.column("trunk");
    const side = table.column("side");
    if (!trunkColumn || !side) return undefined;
    const trunks = trunkColumn.numbers;
    const spurs = table.column("liveSpurs")?.numbers;
    const most = context.setting("Trunks a vine, most");
    const found = new Map<
      number,
      { side?: { id: string; trunk: number }; trunks?: number[]; register?: number }
    >();
    for (const [key, rows] of rowsByVine(table, context)) {
      const living = rows.filter((i) => isTrunk(trunks[i], most) && (!spurs || spurs[i] > 0));
      const alive = [...new Set(living.map((i) => trunks[i]))].sort((a, b) => a - b);
      const entry = context.places.register().get(key);
      const register = entry?.table.column("liveTrunks")?.numbers[entry.index] ?? NaN;
      if (register >= 0 && alive.length > register) found.set(living[0], { trunks: alive, register });
      for (const id of new Set(living.map((i) => choiceId(side, i)))) {
        const own = living.filter((i) => choiceId(side, i) === id);
        const [trunk, ...others] = new Set(own.map((i) => trunks[i]));
        if (id === undefined || own.length < 2 || others.length > 0 || alive.length < 2) continue;
        found.set(own[0], { ...found.get(own[0]), side: { id, trunk } });
      }
    }
    return (from, to, report) => {
      for (let i = from; i < to; i++) {
        const vine = found.get(i);
        if (vine?.trunks)
          report(trunksAboveRegister, i, trunkColumn, { trunks: vine.trunks, living: vine.register! });
        if (vine?.side)
          report(sideFromOneTrunk, i, trunkColumn, { choice: vine.side.id, trunk: vine.side.trunk });
      }
    };
  },
};

/** Other numbers are judged by themselves. */
function isTrunk(number: number, most: number): boolean {
  return Number.isInteger(number) && number >= 1 && number <= most;
}
