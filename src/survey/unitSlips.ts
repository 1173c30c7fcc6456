import type { BlockLimits, Measure } from "./blockLimits";
import type { SurveyColumn, SurveyTable } from "./survey";
import { unitNamed, type Unit } from "./unit";

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

/**
 * Values of a column that lie outside what is usual in their block and inside it when read in another unit. A single
 * value is enough where the two units are far apart; where they are near each other a stretch of five rows is.
 */
export function slipsOf(
  table: SurveyTable,
  column: SurveyColumn,
  measure: Measure,
  limits: ReadonlyMap<number, BlockLimits>,
  grown: Uint8Array,
): UnitSlip[] {
  const units = (MIXED[measure.id] ?? []).filter((id) => id !== column.unit?.id).map((id) => unitNamed(id)!);
  const blocks = table.column("block")?.codes;
  if (!blocks || !column.unit) return [];
  const found: UnitSlip[] = [];
  for (const meant of units) {
    const factor = meant.perUnit / column.perUnit;
    let stretch: number[] = [];
    const close = () => {
      const clear = stretch.filter((i) => isOutside(column.numbers[i], limits.get(blocks[i])!));
      if (stretch.length >= LEAST_STRETCH && clear.length * 2 >= stretch.length)
        found.push({ indexes: stretch, meant });
      else if (Math.max(factor, 1 / factor) >= FAR_APART)
        found.push(...clear.map((i) => ({ indexes: [i], meant })));
      stretch = [];
    };
    for (let i = 0; i < table.rowCount; i++) {
      const value = column.numbers[i];
      if (Number.isNaN(value)) continue;
      const limit = limits.get(blocks[i]);
      if (limit && grown[i] && isOff(value, limit, measure) && fits(value * factor, limit, measure))
        stretch.push(i);
      else close();
    }
    close();
  }
  return withoutOverlap(found);
}

function isOutside(value: number, limit: BlockLimits): boolean {
  return value < limit.low || value > limit.high;
}

/** Off by more than what still counts as fitting. */
function isOff(value: number, limit: BlockLimits, measure: Measure): boolean {
  return !fits(value, limit, measure);
}

function fits(value: number, { median, spread }: BlockLimits, measure: Measure): boolean {
  if (measure.byRatio) return Math.abs(Math.log(value / median)) <= FITS_WITHIN * spread;
  return Math.abs(value - median) <= FITS_WITHIN * spread;
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
