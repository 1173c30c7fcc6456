import type { Check, FindingKind } from "../check";
import { NO_PLACE, placeOf } from "../vinePlaces";
import type { SurveyTable } from "../survey";

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
  readonly rows: readonly string[];
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
    const vines = vinesOf(table, context.places.keysOf(table), (i) =>
      columns.map((column) => column.raw[i]).join("|"),
    );
    const frequency = new Map<string, number>();
    for (const row of vines.flatMap((vine) => vine.rows)) frequency.set(row, (frequency.get(row) ?? 0) + 1);
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

function vinesOf(table: SurveyTable, keys: Float64Array, numbersOf: (index: number) => string): Vine[] {
  const vines: { key: number; first: number; rows: string[] }[] = [];
  for (let i = 0; i < table.rowCount; i++) {
    if (keys[i] === NO_PLACE) continue;
    const last = vines.at(-1);
    if (last?.key === keys[i]) last.rows.push(numbersOf(i));
    else vines.push({ key: keys[i], first: i, rows: [numbersOf(i)] });
  }
  return vines;
}

/** Runs of two or more vines with equal rows. */
function runsOf(vines: readonly Vine[]): Vine[][] {
  const runs: Vine[][] = [];
  for (const vine of vines) {
    const run = runs.at(-1);
    if (run && run[0].rows.join("\n") === vine.rows.join("\n")) run.push(vine);
    else runs.push([vine]);
  }
  return runs.filter((run) => run.length >= 2);
}

/** Chance that the vines after the first carry its numbers, if rows were drawn as often as they stand elsewhere. */
function chanceOf(run: readonly Vine[], frequency: ReadonlyMap<string, number>, rows: number): number {
  const { rows: own } = run[0];
  const within = new Map<string, number>();
  for (const row of own) within.set(row, (within.get(row) ?? 0) + run.length);
  const once = own.reduce(
    (chance, row) => chance * Math.min(1, (frequency.get(row)! - within.get(row)! + 1) / rows),
    1,
  );
  return once ** (run.length - 1);
}
