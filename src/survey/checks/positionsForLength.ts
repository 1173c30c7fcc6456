import type { Check, FindingKind } from "./check";
import type { CellValue } from "../sheets/cell";
import type { SurveyTable } from "../season/season";
import { middleAndSpread, type MiddleAndSpread } from "../season/middleAndSpread";
import { comparedColumns } from "./unitSlips";
import { valuesByBlock } from "../season/valuesByBlock";

const positionsUnlikeLength: FindingKind = {
  code: "positionsUnlikeLength",
  severity: "ask",
  action: "lookAtVine",
};

const digitsSwapped: FindingKind = { code: "digitsSwapped", severity: "ask", action: "correct" };

/** Least spread of the distance between positions that counts as usual, as a share of it. */
const LEAST_SPREAD = 0.12;
/** A count of positions is sure to about three quarters of one, since ends are counted in or out. */
const COUNTED_WITHIN = 0.75;
/** Usual spreads beyond which a length does not belong to its positions, and within which one with two digits exchanged does. */
const SWAPPED_OFF = 2.2;
const SWAPPED_FITS = 1.5;
/** Least spread of distances and what a single position is worth, for one length by itself. */
const LEAST_OWN_SPREAD = 0.06;
const OWN_POSITION = 0.3;

/**
 * Far more or fewer positions than the cordons of the block carry on that length. Where the positions are usual for
 * the block it is the length that is odd: where two of its digits exchanged make it fit that is asked; a length far too
 * long or short by itself is left to other checks.
 */
export const POSITIONS_FOR_LENGTH: Check = {
  id: "positionsForLength",
  kinds: [positionsUnlikeLength, digitsSwapped],
  sheets: ["cordons"],
  scope: "survey",
  prepare(table, context) {
    const column = table.column("positions");
    const length = table.column("length");
    const blocks = table.column("block")?.codes;
    if (!column || !length || !blocks) return undefined;
    const lengths = length.numbers;
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
    const swapped = (i: number, { distance, spread, positions: usualCount }: UsualBlock) => {
      if (!isMeant(i) || !isUsual(positions[i], usualCount)) return undefined;
      const own = Math.max(spread, LEAST_OWN_SPREAD) + OWN_POSITION / positions[i];
      const off = (metres: number) => Math.abs(Math.log(metres / positions[i] / distance)) / own;
      if (off(lengths[i]) < SWAPPED_OFF) return undefined;
      return exchanged(length.raw.at(i)).find((value) => off(value * length.perUnit) <= SWAPPED_FITS);
    };
    return (from, to, report) => {
      for (let i = from; i < to; i++) {
        const block = usual.get(blocks[i]);
        if (!block || otherUnit.has(i) || !(positions[i] >= 0) || !(lengths[i] > 0)) continue;
        const expected = lengths[i] / block.distance;
        const meant = swapped(i, block);
        if (meant !== undefined)
          report(digitsSwapped, i, length, {
            value: length.raw.at(i) as number,
            meant,
            positions: positions[i],
            unit: length.unit?.id ?? "",
          });
        const spread = Math.max(block.spread, LEAST_SPREAD) * expected + COUNTED_WITHIN / 2;
        if (Math.abs(positions[i] - expected) <= times * spread) continue;
        if (isUsual(positions[i], block.positions)) continue;
        if (positions[i] > (column.column.most ?? Infinity)) continue;
        report(positionsUnlikeLength, i, column, {
          value: positions[i],
          length: length.raw.at(i) as number,
          unit: length.unit?.id ?? "",
          expected: Math.round(expected),
          values: block.count,
        });
      }
    };
  },
};

interface UsualBlock {
  readonly distance: number;
  readonly spread: number;
  readonly positions: MiddleAndSpread;
}

/** The numbers that a written one becomes with two of its digits exchanged. */
function exchanged(cell: CellValue | undefined): number[] {
  if (typeof cell !== "number") return [];
  const signs = [...String(cell)];
  return signs.flatMap((one, a) =>
    signs.slice(a + 1).flatMap((other, behind) => {
      if (one === other || one === "." || other === ".") return [];
      const again = [...signs];
      [again[a], again[a + 1 + behind]] = [other, one];
      const number = Number(again.join(""));
      return Number.isFinite(number) ? [number] : [];
    }),
  );
}

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
