import { COUNT_SHEETS, type Check, type FindingKind } from "./check";
import type { OtherColumn, SurveyTable } from "../season/season";
import { isAdded, rounded, tolerance } from "./totals";

const totalUnlikeParts: FindingKind = { code: "totalUnlikeParts", severity: "ask", action: "correct" };

/** Rows that must show a sum, and the share of them in which it must hold, before another row is asked about. */
const LEAST_ROWS = 20;
const MOSTLY = 0.95;
/** Rows in which a column must add something of its own to count as a part. */
const LEAST_ADDED = 5;
/** Neighbouring columns that may be parts of one total. */
const MOST_PARTS = 8;

type Addend = OtherColumn & { readonly isOurs: boolean };

/** A column that is nearly everywhere the sum of others, and the rows where it is not. */
interface Sum {
  readonly total: Addend;
  readonly parts: readonly Addend[];
  readonly rows: number;
  readonly odd: readonly number[];
}

/**
 * A total in a row that departs from its parts, where the columns are not ours: which column is the sum of which
 * neighbours or of which two others is learnt from the rows themselves. Sums of our own columns have checks of their own.
 */
export const TOTAL_OF_PARTS: Check = {
  id: "totalOfParts",
  kinds: [totalUnlikeParts],
  sheets: COUNT_SHEETS,
  scope: "survey",
  prepare(table) {
    if (table.otherColumns.length === 0) return undefined;
    const sums = sumsOf(table);
    return (from, to, report) => {
      for (const { total, parts, rows, odd } of sums)
        for (const row of odd)
          if (row >= from && row < to) {
            const sum = sumOf(parts, row);
            report(totalUnlikeParts, row, total, {
              total: total.numbers[row],
              parts: parts.map(({ header }) => header),
              sum: rounded(sum),
              difference: rounded(total.numbers[row] - sum),
              values: rows - odd.length,
            });
          }
    };
  },
};

function sumsOf(table: SurveyTable): Sum[] {
  const ours = table.columns.filter(isAdded).map(({ header, sheetColumn, numbers, perUnit }) => ({
    header,
    sheetColumn,
    numbers: perUnit === 1 ? numbers : numbers.map((value) => value / perUnit),
    isOurs: true,
  }));
  const columns: Addend[] = [...ours, ...table.otherColumns.map((other) => ({ ...other, isOurs: false }))]
    .filter(({ numbers }) => filled(numbers) >= LEAST_ROWS)
    .sort((a, b) => a.sheetColumn - b.sheetColumn);
  return columns.flatMap((total) => {
    const others = columns.filter((other) => other !== total);
    const found = groupsOf(others)
      .filter((parts) => !total.isOurs || parts.some(({ isOurs }) => !isOurs))
      .flatMap((parts) => asSum(total, parts) ?? []);
    const best = found.sort((a, b) => a.odd.length - b.odd.length || b.parts.length - a.parts.length)[0];
    return best ?? [];
  });
}

function filled(numbers: OtherColumn["numbers"]): number {
  let count = 0;
  for (const value of numbers) if (!Number.isNaN(value)) count++;
  return count;
}

/** Two columns anywhere, or more that stand beside each other. */
function groupsOf(columns: readonly Addend[]): Addend[][] {
  return columns.flatMap((one, first) => [
    ...columns.slice(first + 1).map((other) => [one, other]),
    ...columns.slice(first + 2, first + MOST_PARTS).map((_, more) => columns.slice(first, first + 3 + more)),
  ]);
}

/** Undefined where the total is not the sum of the parts in nearly every row, or one of the parts adds nothing. */
function asSum(total: Addend, parts: readonly Addend[]): Sum | undefined {
  const odd: number[] = [];
  const added = parts.map(() => 0);
  const most = (1 - MOSTLY) * filled(total.numbers);
  let rows = 0;
  for (let row = 0; row < total.numbers.length; row++) {
    const value = total.numbers[row];
    if (Number.isNaN(value) || parts.every(({ numbers }) => Number.isNaN(numbers[row]))) continue;
    rows++;
    if (Math.abs(value - sumOf(parts, row)) > tolerance(value)) {
      odd.push(row);
      if (odd.length > most) return undefined;
    } else parts.forEach(({ numbers }, at) => numbers[row] > 0 && added[at]++);
  }
  const isSum =
    rows >= LEAST_ROWS && odd.length <= (1 - MOSTLY) * rows && added.every((count) => count >= LEAST_ADDED);
  return isSum ? { total, parts, rows, odd } : undefined;
}

function sumOf(parts: readonly OtherColumn[], row: number): number {
  return parts.reduce((sum, { numbers }) => sum + (numbers[row] || 0), 0);
}
