import type { Check, FindingKind } from "./check";
import type { Codes, SurveyColumn, SurveyTable } from "../season/season";
import { NO_WORD } from "../sheets/words";

const digitPreference: FindingKind = { code: "digitPreference", severity: "ask", action: "askCounter" };

/** Measures and large counts; the last digit of a small count such as positions says nothing. */
const MEASURED = ["length", "diameter", "prunings", "clusters", "shoots"];

/**
 * A counter whose values end in 0 or 5 far more often than those of the others in the same blocks: values that were
 * guessed instead of measured. Compared block by block, since blocks differ.
 */
export const DIGIT_PREFERENCE: Check = {
  id: "digitPreference",
  kinds: [digitPreference],
  sheets: ["cordons", "vines"],
  scope: "survey",
  prepare(table, context) {
    const counters = table.column("countedBy")?.codes;
    if (!counters) return undefined;
    const least = {
      rows: context.season.settings.digitPreferenceLeastValues,
      more: context.season.settings.digitPreferenceShareMoreThanOthers,
      errors: context.season.settings.digitPreferenceStandardErrors,
    };
    const found = MEASURED.flatMap((id) => {
      const column = table.column(id);
      return column ? preferencesOf(table, column, counters, least) : [];
    });
    return (from, to, report) => {
      for (const { column, counter, first, own, others, values } of found)
        if (first >= from && first < to)
          report(digitPreference, first, column, {
            counter: context.season.words.wordOf(counter),
            own: Math.round(own * 100),
            others: Math.round(others * 100),
            values,
          });
    };
  },
};

interface Preference {
  readonly column: SurveyColumn;
  readonly counter: number;
  readonly first: number;
  /** Share of values that end in 0 or 5: the counter's, and what the others would have had in the same blocks. */
  readonly own: number;
  readonly others: number;
  readonly values: number;
}

interface Tally {
  values: number;
  round: number;
}

function preferencesOf(
  table: SurveyTable,
  column: SurveyColumn,
  counters: Codes,
  least: { rows: number; more: number; errors: number },
): Preference[] {
  const decimals = finestDecimals(column);
  const blocks = table.column("block")?.codes;
  const tallies = new Map<number, Map<number, Tally>>();
  const firsts = new Map<number, number>();
  for (let i = 0; i < table.rowCount; i++) {
    const value = column.raw.at(i);
    const counter = counters[i];
    if (typeof value !== "number" || counter === NO_WORD || !(value > 0)) continue;
    if (!firsts.has(counter)) firsts.set(counter, i);
    const block = blocks?.[i] ?? NO_WORD;
    if (!tallies.has(block)) tallies.set(block, new Map());
    const byCounter = tallies.get(block)!;
    const tally = byCounter.get(counter) ?? { values: 0, round: 0 };
    tally.values++;
    if (Math.round(value * 10 ** decimals) % 5 === 0) tally.round++;
    byCounter.set(counter, tally);
  }
  const preferences: Preference[] = [];
  for (const [counter, first] of firsts) {
    let values = 0;
    let round = 0;
    let expected = 0;
    let variance = 0;
    for (const byCounter of tallies.values()) {
      const own = byCounter.get(counter);
      if (!own) continue;
      const others = [...byCounter].filter(([other]) => other !== counter).map(([, tally]) => tally);
      const otherValues = others.reduce((sum, tally) => sum + tally.values, 0);
      if (otherValues < least.rows) continue;
      const share = others.reduce((sum, tally) => sum + tally.round, 0) / otherValues;
      values += own.values;
      round += own.round;
      expected += own.values * share;
      variance += own.values * share * (1 - share) * (1 + own.values / otherValues);
    }
    if (values < least.rows) continue;
    const difference = round - expected;
    if (difference / values >= least.more && difference >= least.errors * Math.sqrt(Math.max(variance, 1)))
      preferences.push({ column, counter, first, own: round / values, others: expected / values, values });
  }
  return preferences;
}

/** Decimals that the column's values are written with, two at most. */
function finestDecimals(column: SurveyColumn): number {
  let decimals = 0;
  let seen = 0;
  for (let i = 0; i < column.raw.length; i++) {
    const value = column.raw.at(i);
    if (typeof value !== "number") continue;
    const own =
      [0, 1].find((places) => Math.abs(value * 10 ** places - Math.round(value * 10 ** places)) < 1e-6) ?? 2;
    if (own > decimals) decimals = own;
    if (decimals === 2 || ++seen > 5000) break;
  }
  return decimals;
}
