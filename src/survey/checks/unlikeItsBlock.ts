import { grownRows, limitsByBlock, MEASURES } from "../blockLimits";
import type { Check, FindingKind } from "../check";
import { slipsOf } from "../unitSlips";

const unlikeItsBlock: FindingKind = { code: "unlikeItsBlock", severity: "ask", action: "lookAtVine" };

/** Values far from the middle of their block. Young, replanted and missing vines are neither judged nor counted in. */
export const UNLIKE_ITS_BLOCK: Check = {
  id: "unlikeItsBlock",
  kinds: [unlikeItsBlock],
  sheets: ["cordons", "vines"],
  scope: "survey",
  prepare(table, context) {
    const blocks = table.column("block")?.codes;
    if (!blocks) return undefined;
    const grown = grownRows(table, context);
    const judged = MEASURES.flatMap((measure) => {
      const column = table.column(measure.id);
      if (!column) return [];
      const limits = limitsByBlock(table, column, measure, grown, context);
      const slips = new Set(slipsOf(table, column, measure, limits, grown).flatMap((slip) => slip.indexes));
      return [{ column, limits, slips }];
    });
    return (from, to, report) => {
      for (const { column, limits, slips } of judged)
        for (let i = from; i < to; i++) {
          const limit = limits.get(blocks[i]);
          const value = column.numbers[i];
          if (!limit || !grown[i] || !(value < limit.low || value > limit.high)) continue;
          if (value < (column.column.least ?? -Infinity) || value > (column.column.most ?? Infinity))
            continue;
          if (slips.has(i)) continue;
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
