import type { Check, FindingKind } from "./check";
import { comparedColumns } from "./unitSlips";

const unlikeItsBlock: FindingKind = { code: "unlikeItsBlock", severity: "ask", action: "lookAtVine" };

/**
 * Values far from the middle of their block. Young, replanted and missing vines are neither judged nor counted in;
 * lengths are judged by the vine's space instead where the spacing is known.
 */
export const UNLIKE_ITS_BLOCK: Check = {
  id: "unlikeItsBlock",
  kinds: [unlikeItsBlock],
  sheets: ["cordons", "vines"],
  scope: "survey",
  prepare(table, context) {
    const blocks = table.column("block")?.codes;
    if (!blocks) return undefined;
    const { grown, columns } = comparedColumns(table, context);
    const judged = columns.map(({ column, limits, slips }) => ({
      column,
      limits,
      slips: new Set(slips.flatMap((slip) => slip.indexes)),
    }));
    const spaced = (block: number) => context.places.blockNumber(block, "vineSpacing") > 0;
    return (from, to, report) => {
      for (const { column, limits, slips } of judged)
        for (let i = from; i < to; i++) {
          const limit = limits.get(blocks[i]);
          const value = column.numbers[i];
          if (!limit || !grown[i] || !(value < limit.low || value > limit.high)) continue;
          if (value < (column.column.least ?? -Infinity) || value > (column.column.most ?? Infinity))
            continue;
          if (slips.has(i) || (column.column.id === "length" && spaced(blocks[i]))) continue;
          report(unlikeItsBlock, i, column, {
            value: column.raw.at(i) as number,
            unit: column.unit?.id ?? "",
            median: Number((limit.median / column.perUnit).toPrecision(3)),
            values: limit.count,
          });
        }
    };
  },
};
