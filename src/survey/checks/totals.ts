import type { Check, CheckContext, FindingKind } from "./check";
import type { SurveyColumn, SurveyTable, TotalRow } from "../season/season";
import { placeOf } from "../season/vinePlaces";

const totalDiffers: FindingKind = { code: "totalDiffers", severity: "wrong", action: "correct" };
const placesDiffer: FindingKind = { code: "placesDiffer", severity: "ask", action: "mendRegister" };

/** Columns whose numbers are names and not added up. */
const NEVER_ADDED = new Set(["row", "vine", "trunk", "year", "planted", "trunkYear", "countedOn"]);

/** Total rows that differ from what stands above them, and vine places of a block that differ from its register. */
export const TOTALS: Check = {
  id: "totals",
  kinds: [totalDiffers, placesDiffer],
  sheets: ["cordons", "vines", "budCuts", "harvest", "blocks"],
  scope: "survey",
  prepare(table, context) {
    return (from, to, report) => {
      if (from === 0)
        table.totals.forEach((total, at) => {
          const before = table.totals[at - 1]?.rowsBefore ?? 0;
          for (const cell of total.cells) {
            const column = table.column(cell.columnId);
            if (!column || typeof cell.value !== "number" || !isAdded(column)) continue;
            const parts = partsOf(column, total, before);
            const nearest = nearestPart(cell.value, parts);
            if (Math.abs(nearest - cell.value) <= tolerance(cell.value)) continue;
            report(totalDiffers, { sheetRow: total.sheetRow }, column, {
              total: cell.value,
              sum: rounded(nearest),
              difference: rounded(cell.value - nearest),
              made: cell.formula === null ? "typed" : "formula",
            });
          }
        });
      if (table.shape.id === "blocks") comparePlaces(table, context, from, to, report);
    };
  },
};

/** True for a column of numbers that are no names. */
export function isAdded({ column }: SurveyColumn): boolean {
  return (
    !NEVER_ADDED.has(column.id) &&
    column.kind !== "text" &&
    column.kind !== "choice" &&
    column.kind !== "date"
  );
}

/** What the total may mean: the sum of the rows since the last total or of all rows, or their mean, or their number. */
function partsOf(column: SurveyColumn, total: TotalRow, before: number): number[] {
  const since = cellsBetween(column, before, total.rowsBefore);
  const all = cellsBetween(column, 0, total.rowsBefore);
  return [sum(since), sum(all), sum(since) / since.length, sum(all) / all.length, since.length, all.length];
}

function cellsBetween(column: SurveyColumn, from: number, to: number): number[] {
  const cells: number[] = [];
  for (let i = from; i < to; i++) {
    const cell = column.raw.at(i);
    if (typeof cell === "number") cells.push(cell);
  }
  return cells;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** The sum that the total is compared with: the one it equals, else the sum nearest to it. */
function nearestPart(total: number, parts: readonly number[]): number {
  const equal = parts.find((part) => Math.abs(part - total) <= tolerance(total));
  if (equal !== undefined) return equal;
  const [since, all] = parts;
  return Math.abs(since - total) <= Math.abs(all - total) ? since : all;
}

/** A total that was typed is often rounded to its last decimal. */
export function tolerance(total: number): number {
  const decimals = [0, 1, 2, 3].find(
    (places) => Math.abs(total * 10 ** places - Math.round(total * 10 ** places)) < 1e-6,
  );
  return decimals === undefined || decimals === 0 ? 1e-6 : 0.5 * 10 ** -decimals + 1e-9;
}

export function rounded(value: number): number {
  return Number(value.toFixed(3));
}

/** The vine places and rows of the Blocks sheet against the vines that the register lists. */
function comparePlaces(
  table: SurveyTable,
  context: CheckContext,
  from: number,
  to: number,
  report: Parameters<NonNullable<ReturnType<Check["prepare"]>>>[2],
): void {
  const blocks = table.column("block")?.codes;
  const places = table.column("vines");
  if (!blocks || !places) return;
  const listed = new Map<number, number>();
  for (const key of context.places.register().keys()) {
    const { block } = placeOf(key);
    listed.set(block, (listed.get(block) ?? 0) + 1);
  }
  for (let i = from; i < to; i++) {
    const vines = listed.get(blocks[i]);
    const stated = places.numbers[i];
    if (vines === undefined || !(stated > 0) || stated === vines) continue;
    report(placesDiffer, i, places, {
      total: stated,
      sum: vines,
      difference: stated - vines,
      made: table.formulaAt(i, places) === null ? "typed" : "formula",
    });
  }
}
