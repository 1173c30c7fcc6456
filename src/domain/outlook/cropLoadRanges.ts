import { cropLoad } from "../cropLoad";
import type { SourceId } from "../sources";
import { mustLieBetween, Refusal } from "../refusal";
import { kilograms } from "../units";
import type { Range } from "./productRange";

/** A named range of crop load, yield over prunings. */
export interface CropLoadRange {
  /** Word in the Settings sheet. */
  readonly name: string;
  readonly low: number;
  readonly high: number;
  /** Id in SOURCES, or "from memory, unverified". */
  readonly source: SourceId | "from memory, unverified";
}

/**
 * Named ranges of crop load: published for vinifera in California and for Concord in New York. For hybrids no published
 * range was seen, so that one stands here from memory and is to be replaced by the farm's own.
 */
export const CROP_LOAD_RANGES = [
  { name: "single canopy", low: 4, high: 10, source: "kliewer2005" },
  { name: "divided canopy", low: 5, high: 10, source: "kliewer2005" },
  { name: "hybrids", low: 5, high: 15, source: "from memory, unverified" },
  { name: "Concord", low: 10, high: 20, source: "batesConcord" },
] as const satisfies readonly CropLoadRange[];

export type CropLoadRangeName = (typeof CROP_LOAD_RANGES)[number]["name"];

/** Crop load of a vine against a named range. */
export interface CropLoadVerdict {
  readonly load: Range;
  /** Where the likely load lies. */
  readonly verdict: "below" | "within" | "above";
  /** Whether the whole range of the load lies there too. */
  readonly sure: boolean;
}

/**
 * Crop load of a vine against a named range: below (room for more crop or fewer prunings' worth of growth), within, or above
 * (overcropped for the size of the vine). Published sources disagree for cold-hardy vines: Marquette carried 3.4 to 5.4 and
 * its authors found that it could carry more.
 *
 * `perVine`: kilograms of crop on a vine, low, likely, high. `prunings`: kilograms of prunings of a vine.
 *
 * A load is shown to a tenth, so one that only rounding parts from a limit lies within. Refuses (noPrunings) prunings that
 * weigh nothing, and (unknownCropLoadRange) an unknown name.
 *
 * @example
 * cropLoadAgainst({ low: 8, likely: 9.8, high: 12 }, 1.3, "single canopy") // { load: { low: 6.15, likely: 7.54, high: 9.23 }, verdict: "within", sure: true }
 */
export function cropLoadAgainst(
  perVine: Range,
  prunings: number,
  range: string | { readonly low: number; readonly high: number },
): CropLoadVerdict {
  const { low, high } = typeof range === "string" ? named(range) : range;
  mustLieBetween("low", low, 0, high);
  const of = (crop: number) => cropLoad(kilograms(crop), kilograms(prunings));
  const load = { low: of(perVine.low), likely: of(perVine.likely), high: of(perVine.high) };
  const where = (value: number) => {
    const asShown = Math.round(value * 10) / 10;
    return asShown < low && value < low ? "below" : asShown > high && value > high ? "above" : "within";
  };
  const verdict = where(load.likely);
  return { load, verdict, sure: where(load.low) === verdict && where(load.high) === verdict };
}

function named(name: string): CropLoadRange {
  const range = CROP_LOAD_RANGES.find((known) => known.name.toLowerCase() === name.trim().toLowerCase());
  if (!range)
    throw new Refusal("invalid", "unknownCropLoadRange", {
      argument: "range",
      value: name,
      known: CROP_LOAD_RANGES.map((known) => known.name),
    });
  return range;
}
