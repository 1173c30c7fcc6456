import type { Check, FindingKind } from "./check";
import { NO_PLACE, placeOf } from "../season/vinePlaces";
import { uncountedRows } from "../season/uncountedRows";
import type { SurveyColumn } from "../season/season";
import { placeName } from "../../texts/placeName";

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
    const keys = context.places.keysOf(table);
    const most = 10 ** -context.season.settings.copiedDownUnlikelihood;
    const uncounted = uncountedRows(table, context.places);
    const alike = [...runsOf(vinesOf(keys), columns)].filter(([{ rows }]) => uncounted[rows[0]] === 0);
    const counts = new CountedRows(columns, alike);
    if (alike.length > 0) keys.forEach((key, i) => key !== NO_PLACE && counts.add(i));
    const runs = alike.filter((run) => chanceOf(run, counts, table.rowCount) < most);
    return (from, to, report) => {
      for (const run of runs) {
        const [copy] = run[1].rows;
        if (copy < from || copy >= to) continue;
        report(copiedDown, copy, undefined, {
          from: placeName(placeOf(run[0].key).vine),
          vines: run.length,
          last: placeName(placeOf(run.at(-1)!.key).vine),
        });
      }
    };
  },
};

function* vinesOf(keys: Float64Array): Generator<Vine, void, void> {
  let key = NO_PLACE;
  let rows: number[] = [];
  for (let i = 0; i < keys.length; i++) {
    if (keys[i] === NO_PLACE) continue;
    if (keys[i] !== key) {
      if (rows.length > 0) yield { key, rows };
      key = keys[i];
      rows = [];
    }
    rows.push(i);
  }
  if (rows.length > 0) yield { key, rows };
}

/** Runs of two or more vines with equal rows. */
function* runsOf(
  vines: Iterable<Vine>,
  columns: readonly SurveyColumn[],
): Generator<readonly Vine[], void, void> {
  let run: Vine[] = [];
  for (const vine of vines) {
    if (run.length > 0 && sameRows(columns, run[0].rows, vine.rows)) run.push(vine);
    else {
      if (run.length >= 2) yield run;
      run = [vine];
    }
  }
  if (run.length >= 2) yield run;
}

function sameRows(
  columns: readonly SurveyColumn[],
  one: readonly number[],
  other: readonly number[],
): boolean {
  return one.length === other.length && one.every((row, at) => sameCounts(columns, row, other[at]));
}

/** True when the cells of both rows are alike in all of these columns. */
function sameCounts(columns: readonly SurveyColumn[], one: number, other: number): boolean {
  for (const { numbers, raw } of columns) {
    if (numbers[one] === numbers[other]) continue;
    if (!Number.isNaN(numbers[one]) || !Number.isNaN(numbers[other])) return false;
    if (String(raw.at(one) ?? "") !== String(raw.at(other) ?? "")) return false;
  }
  return true;
}

interface CountedRow {
  readonly row: number;
  count: number;
}

/** How often the rows of some runs stand in the table. */
class CountedRows {
  private readonly counts = new Map<number, CountedRow[]>();

  constructor(
    private readonly columns: readonly SurveyColumn[],
    runs: readonly (readonly Vine[])[],
  ) {
    for (const [{ rows }] of runs)
      for (const row of rows) {
        const sum = this.sumOf(row);
        if (!this.find(sum, row)) this.counts.set(sum, [...(this.counts.get(sum) ?? []), { row, count: 0 }]);
      }
  }

  /** Counts a row of the table, where it is one of the wanted. */
  add(row: number): void {
    const entry = this.find(this.sumOf(row), row);
    if (entry) entry.count++;
  }

  /** What was counted of a row of the runs: the same for all rows that equal it. */
  of(row: number): CountedRow {
    return this.find(this.sumOf(row), row)!;
  }

  private find(sum: number, row: number): CountedRow | undefined {
    return this.counts.get(sum)?.find((entry) => sameCounts(this.columns, entry.row, row));
  }

  /** Equal for equal rows, and seldom for others. */
  private sumOf(row: number): number {
    let sum = 0;
    for (const { numbers } of this.columns) sum = sum * 61 + (numbers[row] || 0);
    return sum;
  }
}

/** Chance that the vines after the first carry its numbers, if rows were drawn as often as they stand elsewhere. */
function chanceOf(run: readonly Vine[], counts: CountedRows, rows: number): number {
  const own = run[0].rows.map((row) => counts.of(row));
  const once = own.reduce((chance, row) => {
    const within = own.filter((other) => other === row).length * run.length;
    return chance * Math.min(1, (row.count - within + 1) / rows);
  }, 1);
  return once ** (run.length - 1);
}
