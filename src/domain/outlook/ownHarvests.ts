import { mustLieBetween } from "../refusal";
import type { Range } from "./productRange";

/** What a block bore in the years on record, in kilograms. */
export interface OwnHarvests {
  /** Oldest first. */
  readonly years: readonly { readonly year: number; readonly picked: number }[];
  readonly least: number;
  readonly mean: number;
  readonly most: number;
}

/**
 * How a worked-out range stands to the harvests on record. "none": it holds their mean. "meanAbove", "meanBelow": their
 * mean lies above or below it, a harvest within. "allAbove", "allBelow": every harvest lies above or below it.
 * "leftOut": some lie above, the rest below, none within.
 */
export type Disagreement = "none" | "meanAbove" | "meanBelow" | "allAbove" | "allBelow" | "leftOut";

/**
 * The second figure beside the outlook: the plain mean of the block's own harvests, with the least and the most. Nothing
 * of nodes, shoots or clusters is in it, so that an error in one of them shows. Undefined without a harvest.
 *
 * `years`: kilograms picked in each year, above 0.
 *
 * @example
 * ownHarvests([{ year: 2025, picked: 900 }, { year: 2024, picked: 600 }]).mean // 750
 */
export function ownHarvests(years: OwnHarvests["years"]): OwnHarvests | undefined {
  if (years.length === 0) return undefined;
  const picked = years.map((one) => mustLieBetween("harvest", one.picked, Number.MIN_VALUE, 1e9, "kg"));
  return {
    years: [...years].sort((one, other) => one.year - other.year),
    least: Math.min(...picked),
    mean: picked.reduce((sum, one) => sum + one, 0) / picked.length,
    most: Math.max(...picked),
  };
}

/**
 * How the range of a block's crop stands to its harvests on record.
 *
 * @example
 * disagreement({ low: 300, likely: 400, high: 500 }, ownHarvests([{ year: 2025, picked: 900 }, { year: 2024, picked: 600 }])) // "allAbove"
 * disagreement({ low: 300, likely: 400, high: 650 }, ownHarvests([{ year: 2025, picked: 900 }, { year: 2024, picked: 600 }])) // "meanAbove"
 * disagreement({ low: 500, likely: 700, high: 950 }, ownHarvests([{ year: 2025, picked: 900 }, { year: 2024, picked: 600 }])) // "none"
 */
export function disagreement({ low, high }: Range, { years, least, mean, most }: OwnHarvests): Disagreement {
  if (least > high) return "allAbove";
  if (most < low) return "allBelow";
  if (!years.some(({ picked }) => picked >= low && picked <= high)) return "leftOut";
  return mean > high ? "meanAbove" : mean < low ? "meanBelow" : "none";
}
