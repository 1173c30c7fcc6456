import type { Check, FindingKind } from "../check";
import { NO_PLACE, placeOf } from "../vinePlaces";
import type { SurveyColumn, SurveyTable } from "../survey";

const copiedDown: FindingKind = { code: "copiedDown", severity: "ask", action: "askCounter" };

/** Numbers that nobody counts alike on two vines by chance when all of them agree. */
const COUNTED = [
  "trunk",
  "length",
  "positions",
  "liveSpurs",
  "longestGap",
  "spursDown",
  "spursLevel",
  "spursUp",
  "diameter",
];

/** Consecutive rows of one vine. */
interface Vine {
  readonly key: number;
  readonly first: number;
  /** Numbers of its rows' counts; equal counts have equal numbers. */
  readonly rows: readonly number[];
}

/**
 * Vines in a run whose rows all carry the same numbers. How likely that is by chance follows from how often the same
 * numbers stand elsewhere in the table; only a run that chance would hardly ever make is asked about.
 */
export const COPIED_DOWN: Check = {
  id: "copiedDown",
  kinds: [copiedDown],
  sheets: ["cordons"],
  scope: "survey",
  prepare(table, context) {
    const columns = COUNTED.flatMap((id) => table.column(id) ?? []);
    if (columns.length < 4) return undefined;
    const vines = vinesOf(table, context.places.keysOf(table), countsAlike(table, columns));
    const frequency = new Map<number, number>();
    for (const { rows } of vines) for (const row of rows) frequency.set(row, (frequency.get(row) ?? 0) + 1);
    const most = 10 ** -context.setting("Copied down: unlikelihood");
    const runs = runsOf(vines).filter((run) => chanceOf(run, frequency, table.rowCount) < most);
    return (from, to, report) => {
      for (const run of runs) {
        const copy = run[1].first;
        if (copy < from || copy >= to) continue;
        report(copiedDown, copy, undefined, {
          from: placeOf(run[0].key).vine,
          vines: run.length,
          last: placeOf(run.at(-1)!.key).vine,
        });
      }
    };
  },
};

/** More than the rows of any sheet. */
const MOST_VALUES = 2 ** 21;

/** For each row a number that it shares with exactly the rows whose cells in these columns are all alike. */
function countsAlike(table: SurveyTable, columns: readonly SurveyColumn[]): Int32Array {
  let alike = new Int32Array(table.rowCount);
  for (const { numbers, raw } of columns) {
    const values = new Map<unknown, number>();
    const combined = new Map<number, number>();
    const next = new Int32Array(table.rowCount);
    for (let i = 0; i < next.length; i++) {
      const value = Number.isNaN(numbers[i]) ? String(raw[i] ?? "") : numbers[i];
      const pair = alike[i] * MOST_VALUES + numberOf(values, value);
      next[i] = numberOf(combined, pair);
    }
    alike = next;
  }
  return alike;
}

function numberOf<K>(known: Map<K, number>, key: K): number {
  let number = known.get(key);
  if (number === undefined) known.set(key, (number = known.size));
  return number;
}

function vinesOf(table: SurveyTable, keys: Float64Array, alike: Int32Array): Vine[] {
  const vines: { key: number; first: number; rows: number[] }[] = [];
  for (let i = 0; i < table.rowCount; i++) {
    if (keys[i] === NO_PLACE) continue;
    const last = vines.at(-1);
    if (last?.key === keys[i]) last.rows.push(alike[i]);
    else vines.push({ key: keys[i], first: i, rows: [alike[i]] });
  }
  return vines;
}

/** Runs of two or more vines with equal rows. */
function runsOf(vines: readonly Vine[]): Vine[][] {
  const runs: Vine[][] = [];
  for (const vine of vines) {
    const run = runs.at(-1);
    if (run && sameRows(run[0].rows, vine.rows)) run.push(vine);
    else runs.push([vine]);
  }
  return runs.filter((run) => run.length >= 2);
}

function sameRows(one: readonly number[], other: readonly number[]): boolean {
  return one.length === other.length && one.every((row, at) => row === other[at]);
}

/** Chance that the vines after the first carry its numbers, if rows were drawn as often as they stand elsewhere. */
function chanceOf(run: readonly Vine[], frequency: ReadonlyMap<number, number>, rows: number): number {
  const { rows: own } = run[0];
  const within = new Map<number, number>();
  for (const row of own) within.set(row, (within.get(row) ?? 0) + run.length);
  const once = own.reduce(
    (chance, row) => chance * Math.min(1, (frequency.get(row)! - within.get(row)! + 1) / rows),
    1,
  );
  return once ** (run.length - 1);
}
