import { grownRows, limitsByBlock, MEASURES, type BlockLimits, type Measure } from "../sheets/blockLimits";
import type { CheckContext } from "./check";
import type { Codes, SurveyColumn, SurveyTable } from "../season/season";
import { unitNamed, type Unit } from "../sheets/unit";

/** Rows whose values fit their block only in another unit than the header's. */
export interface UnitSlip {
  /** Rows of the table, one or a stretch. */
  readonly indexes: readonly number[];
  /** Unit in which the values fit. */
  readonly meant: Unit;
}

/** Units that people mix up with each other. */
const MIXED: Readonly<Record<string, readonly string[]>> = {
  length: ["ft", "in", "m", "cm"],
  diameter: ["in", "cm", "mm"],
  prunings: ["lb", "kg", "oz", "g"],
};

/** Rows in a stretch that must all fit the other unit when the units are near each other, like inches and centimetres. */
const LEAST_STRETCH = 5;
/** Units so far apart that a single value tells them from each other. */
const FAR_APART = 8;
/** Spreads within which a converted value counts as fitting its block. */
const FITS_WITHIN = 2.5;

/** A column compared with its blocks. */
export interface ComparedColumn {
  readonly column: SurveyColumn;
  readonly limits: ReadonlyMap<number, BlockLimits>;
  readonly slips: readonly UnitSlip[];
}

const compared = new WeakMap<SurveyTable, { grown: Uint8Array; columns: readonly ComparedColumn[] }>();

/** The measured columns of a table compared with their blocks; worked out once for all checks that need it. */
export function comparedColumns(
  table: SurveyTable,
  context: CheckContext,
): { grown: Uint8Array; columns: readonly ComparedColumn[] } {
  const known = compared.get(table);
  if (known) return known;
  const grown = grownRows(table, context);
  const columns = MEASURES.flatMap((measure) => {
    const column = table.column(measure.id);
    if (!column) return [];
    const limits = limitsByBlock(table, column, measure, grown, context);
    return [{ column, limits, slips: slipsOf(table, column, measure, limits, grown) }];
  });
  compared.set(table, { grown, columns });
  return { grown, columns };
}

/**
 * Values of a column that lie outside what is usual in their block and inside it when read in another unit. A single
 * value is enough where the two units are far apart; where they are near each other a stretch of five rows is.
 */
function slipsOf(
  table: SurveyTable,
  column: SurveyColumn,
  measure: Measure,
  limits: ReadonlyMap<number, BlockLimits>,
  grown: Uint8Array,
): UnitSlip[] {
  const units = (MIXED[measure.id] ?? []).map((id) => unitNamed(id)!);
  const blocks = table.column("block")?.codes;
  if (!blocks || !column.unit) return [];
  const odd = valuesUnlikeTheirBlock(column, measure, limits, blocks, grown);
  const found: UnitSlip[] = [];
  for (const meant of units) {
    const factor = meant.perUnit / column.perUnit;
    let stretch: number[] = [];
    let ordinalBefore = NaN;
    const close = () => {
      const clear = stretch.filter((i) => isOutside(column.numbers[i], limits.get(blocks[i])!));
      if (stretch.length >= LEAST_STRETCH) found.push({ indexes: stretch, meant });
      else if (Math.max(factor, 1 / factor) >= FAR_APART)
        found.push(...clear.map((i) => ({ indexes: [i], meant })));
      stretch = [];
    };
    for (const { index, ordinal } of odd) {
      if (!fits(column.numbers[index] * factor, limits.get(blocks[index])!, measure)) continue;
      if (ordinal !== ordinalBefore + 1) close();
      ordinalBefore = ordinal;
      stretch.push(index);
    }
    close();
  }
  return withoutOverlap(found);
}

/** Rows whose values do not fit their block, and which of the column's values each is. */
function valuesUnlikeTheirBlock(
  { numbers }: SurveyColumn,
  measure: Measure,
  limits: ReadonlyMap<number, BlockLimits>,
  blocks: Codes,
  grown: Uint8Array,
): { readonly index: number; readonly ordinal: number }[] {
  const odd: { index: number; ordinal: number }[] = [];
  let ordinal = 0;
  for (let index = 0; index < numbers.length; index++) {
    if (Number.isNaN(numbers[index])) continue;
    ordinal++;
    const limit = grown[index] ? limits.get(blocks[index]) : undefined;
    if (limit && !fits(numbers[index], limit, measure)) odd.push({ index, ordinal });
  }
  return odd;
}

function isOutside(value: number, limit: BlockLimits): boolean {
  return value < limit.low || value > limit.high;
}

function fits(value: number, limit: BlockLimits, measure: Measure): boolean {
  return spreadsOff(value, limit, measure) <= FITS_WITHIN;
}

/** How many usual spreads a value lies from the middle of its block. */
function spreadsOff(value: number, { median, spread }: BlockLimits, measure: Measure): number {
  return Math.abs(measure.byRatio ? Math.log(value / median) : value - median) / spread;
}

/** Longest stretches first; a row belongs to one slip only. */
function withoutOverlap(slips: UnitSlip[]): UnitSlip[] {
  const taken = new Set<number>();
  return slips
    .sort((a, b) => b.indexes.length - a.indexes.length)
    .filter((slip) => {
      if (slip.indexes.some((i) => taken.has(i))) return false;
      for (const i of slip.indexes) taken.add(i);
      return true;
    });
}
