import type { Check, FindingKind } from "./check";

const harvestUnusual: FindingKind = { code: "harvestUnusual", severity: "ask", action: "correct" };

/** Years of one block differ less than this, but for frost; ten times is a digit too many. Common practice. */
const TIMES_OWN = 4;
/** A good year after a year of frost is still no more than this many times what the farm's vines bear. */
const TIMES_FARM = 1.5;
/** A block with a single harvest is held against the farm's others alone. */
const TIMES_FARM_ALONE = 5;
const LEAST_HARVESTS = 3;

/**
 * A harvest that is, vine by vine, far above the block's and the farm's other ones: mostly a digit too many. A small one is
 * left alone, because frost makes such years.
 */
export const HARVEST_UNUSUAL: Check = {
  id: "harvestUnusual",
  kinds: [harvestUnusual],
  sheets: ["harvest"],
  scope: "survey",
  prepare(table, { places }) {
    const picked = table.column("picked");
    const blocks = table.column("block")?.codes;
    if (!picked || !blocks) return undefined;
    const counted = table.column("vinesPicked")?.usable;
    const harvests = Array.from({ length: table.rowCount }, (_, row) => {
      const vines = counted && counted[row] > 0 ? counted[row] : places.blockNumber(blocks[row], "vines");
      return { row, block: blocks[row], aVine: picked.usable[row] / vines };
    }).filter(({ aVine }) => aVine > 0 && aVine < Infinity);
    return (from, to, report) => {
      for (const { row, block, aVine } of harvests) {
        if (row < from || row >= to) continue;
        const others = harvests.filter((other) => other.row !== row);
        const own = others.filter((other) => other.block === block);
        const farm = middleOf(others);
        const usual = own.length > 0 ? middleOf(own) : farm;
        const isFar =
          own.length > 0
            ? aVine > TIMES_OWN * usual && aVine > TIMES_FARM * farm
            : others.length >= LEAST_HARVESTS && aVine > TIMES_FARM_ALONE * farm;
        if (isFar)
          report(harvestUnusual, row, picked, {
            value: picked.raw.at(row) as number,
            unit: picked.unit?.id ?? "",
            times: Math.round(aVine / usual),
            values: own.length || others.length,
          });
      }
    };
  },
};

/** The middle crop a vine; the upper one of two. */
function middleOf(harvests: readonly { readonly aVine: number }[]): number {
  const sorted = harvests.map(({ aVine }) => aVine).sort((a, b) => a - b);
  return sorted[sorted.length >> 1];
}
