import type { Check, FindingKind } from "./check";
import type { SurveyTable } from "../season/season";
import { middleAndSpread, type MiddleAndSpread } from "../season/middleAndSpread";
import { comparedColumns } from "./unitSlips";
import { valuesByBlock } from "../season/valuesByBlock";

const positionsUnlikeLength: FindingKind = {
  code: "positionsUnlikeLength",
  severity: "ask",
  action: "lookAtVine",
};

/** Least spread of the distance between positions that counts as usual, as a share of it. */
const LEAST_SPREAD = 0.12;
/** A count of positions is sure to about three quarters of one, since ends are counted in or out. */
const COUNTED_WITHIN = 0.75;

/**
 * Far more or fewer positions than the cordons of the block carry on that length. Where the positions are usual for
 * the block it is the length that is odd, which other checks ask about.
 */
export const POSITIONS_FOR_LENGTH: Check = {
  id: "positionsForLength",
  kinds: [positionsUnlikeLength],
  sheets: ["cordons"],
  scope: "survey",
  prepare(table, context) {
    const column = table.column("positions");
    const lengths = table.column("length")?.numbers;
    const blocks = table.column("block")?.codes;
    if (!column || !lengths || !blocks) return undefined;
    const positions = column.numbers;
    const { grown, columns } = comparedColumns(table, context);
    const slips = columns.find((compared) => compared.column.column.id === "length")?.slips ?? [];
    const otherUnit = new Set(slips.flatMap((slip) => slip.indexes));
    const isMeant = (i: number) => grown[i] && positions[i] >= 1 && lengths[i] > 0;
    const times = context.season.settings.unlikeItsBlockSpread;
    const least = context.season.settings.unlikeItsBlockLeastValues;
    const distances = usualByBlock(table, least, (i) =>
      isMeant(i) ? Math.log(lengths[i] / positions[i]) : NaN,
    );
    const counts = usualByBlock(table, least, (i) => (isMeant(i) ? positions[i] : NaN));
    const usual = new Map(
      [...distances].map(([block, own]) => [
        block,
        { ...own, distance: Math.exp(own.median), positions: counts.get(block)! },
      ]),
    );
    return (from, to, report) => {
      for (let i = from; i < to; i++) {
        const block = usual.get(blocks[i]);
        if (!block || otherUnit.has(i) || !(positions[i] >= 0) || !(lengths[i] > 0)) continue;
        const expected = lengths[i] / block.distance;
        const spread = Math.max(block.spread, LEAST_SPREAD) * expected + COUNTED_WITHIN / 2;
        if (Math.abs(positions[i] - expected) <= times * spread) continue;
        if (isUsual(positions[i], block.positions)) continue;
        if (positions[i] > (column.column.most ?? Infinity)) continue;
        report(positionsUnlikeLength, i, column, {
          value: positions[i],
          length: table.column("length")!.raw.at(i) as number,
          unit: table.column("length")!.unit?.id ?? "",
          expected: Math.round(expected),
          values: block.count,
        });
      }
    };
  },
};

/** Middle and spread of each block with values enough. */
function usualByBlock(
  table: SurveyTable,
  least: number,
  valueOf: (index: number) => number,
): Map<number, MiddleAndSpread> {
  const usual = new Map<number, MiddleAndSpread>();
  for (const [block, values] of valuesByBlock(table, valueOf))
    if (values.length >= least) usual.set(block, middleAndSpread(values));
  return usual;
}

function isUsual(positions: number, { median, spread }: MiddleAndSpread): boolean {
  return Math.abs(positions - median) <= 2 * Math.max(spread, 1);
}
