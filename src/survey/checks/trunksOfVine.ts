import type { Check, FindingKind } from "./check";
import type { Codes, Numbers, SurveyTable } from "../season/season";
import { rowsByVine } from "../season/vineGroups";
import { choiceId } from "../season/vinePlaces";

const sideFromOneTrunk: FindingKind = { code: "sideFromOneTrunk", severity: "note", action: "lookAtVine" };
const trunksAboveRegister: FindingKind = {
  code: "trunksAboveRegister",
  severity: "ask",
  action: "lookAtVine",
};

const trunkNotOfVine: FindingKind = { code: "trunkNotOfVine", severity: "ask", action: "lookAtVine" };

/** Vines with a number above their trunks from which on, as a share, the farm numbers its trunks in another way. */
const OTHER_NUMBERS = 0.005;

/**
 * A side whose candidates all come from one trunk although the vine has another, so that the choice cannot part the
 * two sides; live cordons on more trunks than the register says are alive; and a live cordon on a trunk with a number
 * above those, where trunks are numbered from one without a gap. Cordons of a missing vine are told of as such.
 */
export const TRUNKS_OF_VINE: Check = {
  id: "trunksOfVine",
  kinds: [sideFromOneTrunk, trunksAboveRegister, trunkNotOfVine],
  sheets: ["cordons"],
  scope: "survey",
  prepare(table, context) {
    const trunkColumn = table.column("trunk");
    const side = table.column("side");
    if (!trunkColumn || !side) return undefined;
    const trunks = trunkColumn.numbers;
    const isAlive = knownAlive(table);
    const most = context.season.settings.trunksAVineMost;
    const found = new Map<
      number,
      { side?: { id: string; trunk: number }; trunks?: number[]; register?: number }
    >();
    const register = context.places.register();
    const tooHigh: { row: number; trunk: number; living: number; dead: number }[] = [];
    let known = 0;
    for (const [key, rows] of rowsByVine(table, context)) {
      if (context.places.statusOf(key) === "missing") continue;
      const living: number[] = [];
      for (const i of rows) if (isTrunk(trunks[i], most) && isAlive(i)) living.push(i);
      const alive = firstOfEach(living, trunks);
      const entry = register.get(key);
      const registered = entry?.table.column("liveTrunks")?.usable[entry.index] ?? NaN;
      const numbers = alive.map((i) => trunks[i]).sort((a, b) => a - b);
      if (registered >= 1) known++;
      if (registered >= 0 && alive.length > registered)
        found.set(living[0], { trunks: numbers, register: registered });
      else if (numbers.at(-1)! > registered) {
        const dead = firstOfEach(rows, trunks).filter(
          (i) => isTrunk(trunks[i], most) && !numbers.includes(trunks[i]),
        ).length;
        const row = living.find((i) => trunks[i] === numbers.at(-1))!;
        if (trunks[row] > registered + dead)
          tooHigh.push({ row, trunk: trunks[row], living: registered, dead });
      }
      if (alive.length < 2) continue;
      for (const first of firstOfEach(living, side.codes)) {
        const id = choiceId(side, first);
        const isOwn = (i: number) => side.codes[i] === side.codes[first];
        if (id === undefined || !living.some((i) => i !== first && isOwn(i))) continue;
        if (living.some((i) => isOwn(i) && trunks[i] !== trunks[first])) continue;
        found.set(first, { ...found.get(first), side: { id, trunk: trunks[first] } });
      }
    }
    const odd = tooHigh.length <= Math.max(2, OTHER_NUMBERS * known) ? tooHigh : [];
    return (from, to, report) => {
      for (const { row, trunk, living, dead } of odd)
        if (row >= from && row < to) report(trunkNotOfVine, row, trunkColumn, { trunk, living, dead });
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

/**
 * Tells of a row whether its cordon is known to be alive: by the spurs counted on it, or where the sheet counts none by its
 * condition. One that is called dead, or stands on a trunk that is, does not count as alive.
 */
function knownAlive(table: SurveyTable): (index: number) => boolean {
  const columns = (...ids: readonly string[]) => ids.flatMap((id) => table.column(id) ?? []);
  const conditions = columns("condition", "trunkCondition");
  const own = table.column("condition");
  const live = columns("liveSpurs");
  const spurs = live.length > 0 ? live : columns("spursDown", "spursLevel", "spursUp");
  return (i) => {
    if (conditions.some((column) => choiceId(column, i) === "dead")) return false;
    if (spurs.length > 0) return spurs.some(({ numbers }) => numbers[i] > 0);
    return own !== undefined && choiceId(own, i) !== undefined;
  };
}

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
