import type { CheckContext } from "../checks/check";
import { middleAndSpread } from "../season/middleAndSpread";
import type { SurveyColumn, SurveyTable } from "../season/season";
import { choiceId, NO_PLACE } from "../season/vinePlaces";
import { valuesByBlock } from "../season/valuesByBlock";

/** How a column is compared within its block: by difference or by ratio, and the least spread that counts as usual. */
export interface Measure {
  readonly id: string;
  /** Least spread as a share of the median, so that a block of nearly equal values is not asked about. */
  readonly leastShare: number;
  /** Least spread in the column's own metric unit. */
  readonly least: number;
  readonly byRatio: boolean;
  /** Multiple of the median beyond which a value is always asked about, however wide the block spreads. */
  readonly mostTimes: number;
}

export const MEASURES: readonly Measure[] = [
  { id: "length", leastShare: 0.15, least: 0, byRatio: false, mostTimes: Infinity },
  { id: "diameter", leastShare: 0.24, least: 0, byRatio: true, mostTimes: Infinity },
  { id: "prunings", leastShare: 0.4, least: 0, byRatio: true, mostTimes: 5 },
  { id: "clusters", leastShare: 0.32, least: 0, byRatio: true, mostTimes: 5 },
  { id: "shoots", leastShare: 0.25, least: 0, byRatio: true, mostTimes: 5 },
];

/** What is usual in a block, in metric units. */
export interface BlockLimits {
  readonly low: number;
  readonly high: number;
  readonly median: number;
  /** Usual spread: of the values, or of their natural logarithms when compared by ratio. */
  readonly spread: number;
  readonly count: number;
}

/** 1 for rows whose vine is neither young, replanted nor missing, as far as sheet and register tell. */
export function grownRows(table: SurveyTable, context: CheckContext): Uint8Array {
  const grown = new Uint8Array(table.rowCount).fill(1);
  const keys = context.places.keysOf(table);
  const own = table.column("status");
  for (let i = 0; i < grown.length; i++) {
    const status = own
      ? choiceId(own, i)
      : keys[i] === NO_PLACE
        ? undefined
        : context.places.statusOf(keys[i]);
    if (status !== undefined && status !== "bearing") grown[i] = 0;
  }
  return grown;
}

/**
 * The usual values of a column in each block, by number of the block's name. A block with too few values is held
 * against all blocks together; where they are too few as well, five values still tell one many times their middle.
 */
export function limitsByBlock(
  table: SurveyTable,
  column: SurveyColumn,
  measure: Measure,
  grown: Uint8Array,
  context: CheckContext,
): Map<number, BlockLimits> {
  const { numbers } = column;
  const isMeant = measure.byRatio ? (value: number) => value > 0 : (value: number) => value >= 0;
  const valueOf = (i: number) => (grown[i] && isMeant(numbers[i]) ? numbers[i] : NaN);
  const least = context.season.settings.unlikeItsBlockLeastValues;
  const times = context.season.settings.unlikeItsBlockSpread;
  const limits = new Map<number, BlockLimits>();
  const small: number[] = [];
  for (const [block, values] of valuesByBlock(table, valueOf))
    if (values.length >= least) limits.set(block, limitsOf(values, measure, times));
    else small.push(block);
  if (small.length === 0 || !measure.byRatio) return limits;
  const all: number[] = [];
  for (const [, values] of valuesByBlock(table, valueOf)) for (const value of values) all.push(value);
  const isEnough = all.length >= least;
  if (!isEnough && (all.length < FEW_VALUES || measure.mostTimes === Infinity)) return limits;
  const reach = isEnough ? undefined : Math.log(context.season.settings.unlikeItsBlockFewValuesTimes);
  const ofAll = limitsOf(Float64Array.from(all), measure, times, reach);
  for (const block of small) limits.set(block, ofAll);
  return limits;
}

/** Values from which on one that is many times their middle is told. */
const FEW_VALUES = 5;

/**
 * @param values the list is sorted
 * @param few logarithm of the ratio beyond which values too few to show their spread are asked about
 */
function limitsOf(values: Float64Array, measure: Measure, times: number, few?: number): BlockLimits {
  const count = values.length;
  if (measure.byRatio) {
    const middle = middleAndSpread(values.map(Math.log));
    const spread = Math.max(middle.spread, measure.leastShare);
    const reach = few ?? Math.min(times * spread, Math.log(measure.mostTimes));
    const [low, high] = [-1, 1].map((side) => Math.exp(middle.median + side * reach));
    return { low, high, median: Math.exp(middle.median), spread, count };
  }
  const { median, spread: own } = middleAndSpread(values);
  const spread = Math.max(own, measure.least, measure.leastShare * median);
  return { low: median - times * spread, high: median + times * spread, median, spread, count };
}
