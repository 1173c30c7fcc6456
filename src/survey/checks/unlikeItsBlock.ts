import type { Check, CheckContext, FindingKind } from "../check";
import { middleAndSpread } from "../middleAndSpread";
import type { SurveyColumn, SurveyTable } from "../survey";
import { choiceId, NO_PLACE } from "../vinePlaces";
import { NO_WORD } from "../words";

const unlikeItsBlock: FindingKind = { code: "unlikeItsBlock", severity: "ask", action: "lookAtVine" };

/** How a column is compared: the least spread that counts as usual, and whether by ratio instead of difference. */
interface Measure {
  readonly id: string;
  /** Least spread as a share of the median, so that a block of nearly equal values is not asked about. */
  readonly leastShare: number;
  /** Least spread in the column's own unit. */
  readonly least: number;
  readonly byRatio?: boolean;
}

const MEASURES: readonly Measure[] = [
  { id: "length", leastShare: 0.15, least: 0 },
  { id: "positions", leastShare: 0.15, least: 0.75 },
  { id: "nodesPerSpur", leastShare: 0, least: 0.7 },
  { id: "diameter", leastShare: 0.15, least: 0, byRatio: true },
  { id: "prunings", leastShare: 0.2, least: 0, byRatio: true },
  { id: "clusters", leastShare: 0.2, least: 0, byRatio: true },
  { id: "shoots", leastShare: 0.2, least: 0, byRatio: true },
];

/** Values far from the middle of their block. Young, replanted and missing vines are neither judged nor counted in. */
export const UNLIKE_ITS_BLOCK: Check = {
  id: "unlikeItsBlock",
  kinds: [unlikeItsBlock],
  sheets: ["cordons", "vines"],
  scope: "survey",
  prepare(table, context) {
    const blocks = table.column("block")?.codes;
    if (!blocks) return undefined;
    const inForce = grownRows(table, context);
    const judged = MEASURES.flatMap((measure) => {
      const column = table.column(measure.id);
      return column
        ? [{ column, measure, limits: limitsByBlock(column, measure, blocks, inForce, context) }]
        : [];
    });
    return (from, to, report) => {
      for (const { column, limits } of judged)
        for (let i = from; i < to; i++) {
          const limit = limits.get(blocks[i]);
          const value = column.numbers[i];
          if (!limit || !inForce[i] || !(value < limit.low || value > limit.high)) continue;
          if (value < (column.column.least ?? -Infinity) || value > (column.column.most ?? Infinity))
            continue;
          report(unlikeItsBlock, i, column, {
            value: column.raw[i] as number,
            unit: column.unit?.id ?? "",
            median: Number((limit.median / column.perUnit).toPrecision(3)),
            values: limit.count,
          });
        }
    };
  },
};

/** 1 for rows whose vine is neither young, replanted nor missing. */
function grownRows(table: SurveyTable, context: CheckContext): Uint8Array {
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

interface Limits {
  readonly low: number;
  readonly high: number;
  readonly median: number;
  readonly count: number;
}

function limitsByBlock(
  column: SurveyColumn,
  measure: Measure,
  blocks: Int32Array,
  inForce: Uint8Array,
  context: CheckContext,
): Map<number, Limits> {
  const byBlock = new Map<number, number[]>();
  const { numbers } = column;
  for (let i = 0; i < numbers.length; i++) {
    const value = numbers[i];
    if (blocks[i] === NO_WORD || !inForce[i] || !(measure.byRatio ? value > 0 : value >= 0)) continue;
    const values = byBlock.get(blocks[i]);
    if (values) values.push(value);
    else byBlock.set(blocks[i], [value]);
  }
  const limits = new Map<number, Limits>();
  for (const [block, values] of byBlock)
    if (values.length >= context.setting("Unlike its block: least values"))
      limits.set(block, limitsOf(values, measure, context.setting("Unlike its block: spread")));
  return limits;
}

function limitsOf(values: readonly number[], measure: Measure, times: number): Limits {
  const count = values.length;
  if (measure.byRatio) {
    const { median, spread } = middleAndSpread(Float64Array.from(values, Math.log));
    const reach = times * Math.max(spread, measure.leastShare);
    return { low: Math.exp(median - reach), high: Math.exp(median + reach), median: Math.exp(median), count };
  }
  const { median, spread } = middleAndSpread(Float64Array.from(values));
  const reach = times * Math.max(spread, measure.least, measure.leastShare * median);
  return { low: median - reach, high: median + reach, median, count };
}
