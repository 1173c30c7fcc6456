import type { Check, FindingKind } from "../check";
import type { Codes, Numbers } from "../survey";
import { rowsByVine } from "../vineGroups";

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
    const register = context.places.register();
    for (const [key, rows] of rowsByVine(table, context)) {
      const living = rows.filter((i) => isTrunk(trunks[i], most) && (!spurs || spurs[i] > 0));
      const alive = different(living, trunks);
      const entry = register.get(key);
      const registered = entry?.table.column("liveTrunks")?.numbers[entry.index] ?? NaN;
      if (registered >= 0 && alive.length > registered)
        found.set(living[0], { trunks: alive.sort((a, b) => a - b), register: registered });
      if (alive.length < 2) continue;
      for (const code of different(living, side.codes)) {
        const id = side.column.choices?.[code]?.id;
        const own = living.filter((i) => side.codes[i] === code);
        if (id === undefined || own.length < 2 || different(own, trunks).length > 1) continue;
        found.set(own[0], { ...found.get(own[0]), side: { id, trunk: trunks[own[0]] } });
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

/** The different numbers of some rows, few of each vine, in the order in which they come. */
function different(rows: readonly number[], numbers: Numbers | Codes): number[] {
  const found: number[] = [];
  for (const row of rows) if (!found.includes(numbers[row])) found.push(numbers[row]);
  return found;
}

/** Other numbers are judged by themselves. */
function isTrunk(number: number, most: number): boolean {
  return Number.isInteger(number) && number >= 1 && number <= most;
}
