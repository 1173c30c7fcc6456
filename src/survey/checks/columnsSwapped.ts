import type { Check, FindingKind } from "./check";
import type { SurveyColumn } from "../season/season";

const columnsSwapped: FindingKind = { code: "columnsSwapped", severity: "ask", action: "askCounter" };

/** Columns whose values a crew may have written into each other's place. */
const PAIRS: readonly (readonly [string, string])[] = [
  ["positions", "liveSpurs"],
  ["liveSpurs", "longestGap"],
  ["positions", "longestGap"],
  ["liveSpurs", "spursDown"],
  ["liveSpurs", "spursUp"],
  ["liveSpurs", "spursLevel"],
  ["longestGap", "spursDown"],
  ["length", "positions"],
  ["length", "diameter"],
];

interface Figures {
  length: number;
  positions: number;
  liveSpurs: number;
  longestGap: number;
  spursDown: number;
  spursLevel: number;
  spursUp: number;
  diameter: number;
}

/**
 * A stretch of rows whose figures contradict each other as they stand and all agree when two columns change places.
 */
export const COLUMNS_SWAPPED: Check = {
  id: "columnsSwapped",
  kinds: [columnsSwapped],
  sheets: ["cordons"],
  scope: "survey",
  prepare(table, context) {
    const columns = new Map<keyof Figures, SurveyColumn>();
    for (const id of FIGURES) {
      const column = table.column(id);
      if (column) columns.set(id, column);
    }
    const leastSpacing = context.season.settings.leastDistanceBetweenSpurs;
    const least = context.season.settings.swappedColumnsLeastRows;
    const [length, positions, liveSpurs, longestGap, spursDown, spursLevel, spursUp, diameter] = FIGURES.map(
      (id) => columns.get(id)?.numbers,
    );
    const figuresOf = (index: number): Figures => ({
      length: length?.[index] ?? NaN,
      positions: positions?.[index] ?? NaN,
      liveSpurs: liveSpurs?.[index] ?? NaN,
      longestGap: longestGap?.[index] ?? NaN,
      spursDown: spursDown?.[index] ?? NaN,
      spursLevel: spursLevel?.[index] ?? NaN,
      spursUp: spursUp?.[index] ?? NaN,
      diameter: diameter?.[index] ?? NaN,
    });
    const pairs = PAIRS.flatMap(([a, b]) => {
      const one = columns.get(a as keyof Figures);
      const other = columns.get(b as keyof Figures);
      return one && other ? [{ one, other }] : [];
    });
    const standing = (index: number) => agree(figuresOf(index), leastSpacing);
    const contradictions: number[] = [];
    for (let i = 0; i < table.rowCount; i++) if (!standing(i)) contradictions.push(i);
    const stretches = longestStretches(
      contradictions,
      pairs,
      least,
      (index, pair) =>
        Number.isFinite(pair.one.numbers[index] + pair.other.numbers[index]) &&
        agree(swap(figuresOf(index), pair.one, pair.other), leastSpacing),
    );
    return (from, to, report) => {
      for (const { first, last, pair } of stretches)
        if (first >= from && first < to)
          report(columnsSwapped, first, pair.one, {
            other: pair.other.header.replace(/\s*\([^)]*\)/g, ""),
            rows: last - first + 1,
            lastRow: table.sheetRow(last),
          });
    };
  },
};

const FIGURES: readonly (keyof Figures)[] = [
  "length",
  "positions",
  "liveSpurs",
  "longestGap",
  "spursDown",
  "spursLevel",
  "spursUp",
  "diameter",
];

/** The figures with two columns' cells exchanged, each read in the unit of its new column. */
function swap(figures: Figures, one: SurveyColumn, other: SurveyColumn): Figures {
  const a = one.column.id as keyof Figures;
  const b = other.column.id as keyof Figures;
  return {
    ...figures,
    [a]: (figures[b] / other.perUnit) * one.perUnit,
    [b]: (figures[a] / one.perUnit) * other.perUnit,
  };
}

/** True when the figures of a cordon can all be right together; blanks contradict nothing. */
function agree(figures: Figures, leastSpacing: number): boolean {
  const { length, positions, liveSpurs, longestGap, spursDown, spursLevel, spursUp, diameter } = figures;
  if (isFraction(positions) || isFraction(liveSpurs) || isFraction(longestGap)) return false;
  if (isFraction(spursDown) || isFraction(spursLevel) || isFraction(spursUp)) return false;
  const missing = positions - liveSpurs;
  if (missing < 0 || longestGap > missing || longestGap * (liveSpurs + 1) < missing) return false;
  const sum = spursDown + spursLevel + spursUp;
  if (sum - liveSpurs > 0 || sum - liveSpurs < 0) return false;
  if ((positions - 1) * leastSpacing > length || length > 6 || length > (positions + 1) * 0.5) return false;
  return !(diameter > 0.15 || diameter * 3 > length);
}

function isFraction(count: number): boolean {
  return count - Math.trunc(count) > 1e-9;
}

interface Pair {
  readonly one: SurveyColumn;
  readonly other: SurveyColumn;
}

interface Stretch {
  readonly first: number;
  readonly last: number;
  readonly pair: Pair;
  readonly contradictions: number;
}

/** Rows between two contradictions that may fit either way, as a cordon does whose spurs fill all its positions. */
const MOST_BETWEEN = 10;

/** For each pair the stretches that only fit swapped; of overlapping ones that which explains most rows. */
function longestStretches(
  contradictions: readonly number[],
  pairs: readonly Pair[],
  least: number,
  fitsSwapped: (index: number, pair: Pair) => boolean,
): Stretch[] {
  const found: Stretch[] = [];
  for (const pair of pairs) {
    let stretch: number[] = [];
    const close = () => {
      if (stretch.length >= least)
        found.push({ first: stretch[0], last: stretch.at(-1)!, pair, contradictions: stretch.length });
      stretch = [];
    };
    for (const index of contradictions) {
      if (!fitsSwapped(index, pair)) {
        close();
        continue;
      }
      if (stretch.length > 0 && !bridged(stretch.at(-1)!, index, (i) => fitsSwapped(i, pair))) close();
      stretch.push(index);
    }
    close();
  }
  return withoutOverlap(found);
}

function bridged(from: number, to: number, fits: (index: number) => boolean): boolean {
  if (to - from - 1 > MOST_BETWEEN) return false;
  for (let i = from + 1; i < to; i++) if (!fits(i)) return false;
  return true;
}

function withoutOverlap(stretches: Stretch[]): Stretch[] {
  const taken = new Set<number>();
  return stretches
    .sort((a, b) => b.contradictions - a.contradictions)
    .filter(({ first, last }) => {
      for (let i = first; i <= last; i++) if (taken.has(i)) return false;
      for (let i = first; i <= last; i++) taken.add(i);
      return true;
    });
}
