import type { Check, FindingKind } from "./check";
import type { Codes, Numbers } from "../season/season";
import { rowsByVine } from "../season/vineGroups";
import { choiceId } from "../season/vinePlaces";

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
    const most = context.season.settings.trunksAVineMost;
    const found = new Map<
      number,
      { side?: { id: string; trunk: number }; trunks?: number[]; register?: number }
    >();
    const register = context.places.register();
    for (const [key, rows] of rowsByVine(table, context)) {
      const living: number[] = [];
      for (const i of rows) if (isTrunk(trunks[i], most) && (!spurs || spurs[i] > 0)) living.push(i);
      const alive = firstOfEach(living, trunks);
      const entry = register.get(key);
      const registered = entry?.table.column("liveTrunks")?.numbers[entry.index] ?? NaN;
      if (registered >= 0 && alive.length > registered)
        found.set(living[0], {
          trunks: alive.map((i) => trunks[i]).sort((a, b) => a - b),
          register: registered,
        });
      if (alive.length < 2) continue;
      for (const first of firstOfEach(living, side.codes)) {
        const id = choiceId(side, first);
        const isOwn = (i: number) => side.codes[i] === side.codes[first];
        if (id === undefined || !living.some((i) => i !== first && isOwn(i))) continue;
        if (living.some((i) => isOwn(i) && trunks[i] !== trunks[first])) continue;
        found.set(first, { ...found.get(first), side: { id, trunk: trunks[first] } });
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

/** For each different number of a vine's few rows the first of them. */
function firstOfEach(rows: readonly number[], numbers: Numbers | Codes): number[] {
  return rows.filter((row, at) => {
    for (let before = 0; before < at; before++) if (numbers[rows[before]] === numbers[row]) return false;
    return true;
  });
}

/** Other numbers are judged by themselves. */
function isTrunk(number: number, most: number): boolean {
  return Number.isInteger(number) && number >= 1 && number <= most;
}
