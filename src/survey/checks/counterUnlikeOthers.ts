import type { Check, FindingKind } from "./check";
import { NO_PLACE, placeOf, rowKey } from "../season/vinePlaces";
import type { Codes, SurveyTable } from "../season/season";
import { NO_WORD } from "../sheets/words";

const counterUnlikeOthers: FindingKind = {
  code: "counterUnlikeOthers",
  severity: "ask",
  action: "askCounter",
};

/** What is compared between counters: the figure of a column, or its share of another's. */
interface Habit {
  readonly id: string;
  /** Column that the finding points to. */
  readonly at: string;
  /** Least spread of row means that counts as usual, in the habit's own unit. */
  readonly least: number;
  readonly figure: string;
  readonly per?: string;
}

const HABITS: readonly Habit[] = [
  { id: "spacing", at: "positions", least: 0.003, figure: "length", per: "positions" },
  { id: "liveShare", at: "liveSpurs", least: 0.03, figure: "liveSpurs", per: "positions" },
  { id: "length", at: "length", least: 0.02, figure: "length" },
  { id: "diameter", at: "diameter", least: 0.0006, figure: "diameter" },
  { id: "down", at: "spursDown", least: 0.04, figure: "spursDown", per: "liveSpurs" },
];

/**
 * A counter whose rows differ from those of the others in the same blocks, in what should not depend on who counts.
 * Each vineyard row is one value, since vines beside each other are alike; a counter needs three rows and the others
 * as many.
 */
export const COUNTER_UNLIKE_OTHERS: Check = {
  id: "counterUnlikeOthers",
  kinds: [counterUnlikeOthers],
  sheets: ["cordons"],
  scope: "survey",
  prepare(table, context) {
    const counters = table.column("countedBy")?.codes;
    if (!counters) return undefined;
    const keys = context.places.keysOf(table);
    const times = context.season.settings.counterUnlikeOthersStandardErrors;
    const leastDifference = context.season.settings.counterUnlikeOthersLeastDifference;
    const found = HABITS.flatMap((habit) => {
      if (!table.column(habit.at)) return [];
      const rows = rowMeans(table, habit, counters, keys);
      return oddCounters(rows, habit.least, times, leastDifference).map((odd) => ({ ...odd, habit }));
    });
    return (from, to, report) => {
      for (const { counter, first, own, others, rows, habit } of found)
        if (first >= from && first < to)
          report(counterUnlikeOthers, first, table.column(habit.at), {
            counter: context.season.words.wordOf(counter),
            habit: habit.id,
            percent: Math.round(100 * (own / others - 1)),
            vineyardRows: rows,
          });
    };
  },
};

interface RowMean {
  readonly block: number;
  readonly counter: number;
  /** First row of the sheet. */
  readonly first: number;
  readonly mean: number;
}

/** More than the words of any survey. */
const MOST_COUNTERS = 2 ** 21;

/** Mean of the habit over each vineyard row that one person counted. */
function rowMeans(table: SurveyTable, habit: Habit, counters: Codes, keys: Float64Array): RowMean[] {
  const sums = new Map<number, RowSum>();
  let last = NaN;
  let sum: RowSum | undefined;
  const figures = table.column(habit.figure)?.numbers;
  const per = habit.per === undefined ? undefined : table.column(habit.per)?.numbers;
  if (!figures || (habit.per !== undefined && !per)) return [];
  for (let index = 0; index < table.rowCount; index++) {
    if (keys[index] === NO_PLACE || counters[index] === NO_WORD) continue;
    const value = per ? figures[index] / per[index] : figures[index];
    if (!Number.isFinite(value)) continue;
    const key = rowKey(keys[index]) * MOST_COUNTERS + counters[index];
    if (key !== last) sum = sums.get(key);
    if (!sum) {
      const { block } = placeOf(keys[index]);
      sums.set(key, (sum = { block, counter: counters[index], first: index, sum: 0, count: 0 }));
    }
    last = key;
    sum.sum += value;
    sum.count++;
  }
  return [...sums.values()]
    .filter((row) => row.count >= 8)
    .map((row) => ({ ...row, mean: row.sum / row.count }));
}

interface RowSum {
  readonly block: number;
  readonly counter: number;
  readonly first: number;
  sum: number;
  count: number;
}

interface OddCounter {
  readonly counter: number;
  readonly first: number;
  readonly own: number;
  readonly others: number;
  readonly rows: number;
}

function oddCounters(
  rows: readonly RowMean[],
  leastSpread: number,
  times: number,
  leastDifference: number,
): OddCounter[] {
  const odd: OddCounter[] = [];
  for (const counter of new Set(rows.map((row) => row.counter))) {
    const differences: { own: number; expected: number }[] = [];
    const residuals: number[] = [];
    let otherRows = 0;
    for (const block of new Set(rows.map((row) => row.block))) {
      const own = rows.filter((row) => row.block === block && row.counter === counter);
      const others = rows.filter((row) => row.block === block && row.counter !== counter);
      if (own.length === 0 || others.length < 2) continue;
      const expected = meanOf(others.map((row) => row.mean));
      otherRows += others.length;
      residuals.push(
        ...others.map((row) => (row.mean - expected) * Math.sqrt(others.length / (others.length - 1))),
      );
      differences.push(...own.map((row) => ({ own: row.mean, expected })));
    }
    if (differences.length < 3 || otherRows < 3) continue;
    const spread = Math.max(leastSpread, Math.sqrt(meanOf(residuals.map((residual) => residual ** 2))));
    const own = meanOf(differences.map((difference) => difference.own));
    const others = meanOf(differences.map((difference) => difference.expected));
    const error = spread * Math.sqrt(1 / differences.length + 1 / otherRows);
    if (Math.abs(own - others) < times * error) continue;
    if (Math.abs(own - others) < leastDifference * Math.abs(others)) continue;
    const first = Math.min(...rows.filter((row) => row.counter === counter).map((row) => row.first));
    odd.push({ counter, first, own, others, rows: differences.length });
  }
  return odd;
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
