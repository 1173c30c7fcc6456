import { SMALLEST_PILOT } from "../../domain/outlook/vinesCounted";
import { blockMean } from "../../domain/blockMean";
import { handbookSampleSizes, type HandbookSample } from "../../domain/outlook/handbookSampleSizes";
import { samplingPlan, type PlannedVine, type RowOfVines } from "../../domain/outlook/samplingPlan";
import { seededRandom } from "../../domain/random";
import { vinesToCount } from "../../domain/vinesToCount";
import type { Season } from "../season/season";
import { NO_PLACE, placeOf } from "../season/vinePlaces";

/** What is counted on the drawn vines: a column of the Vines sheet. */
export type Counted = "clusters" | "shoots" | "prunings";

/** How many vines of a block to count, and which. */
export interface CountPlan {
  readonly block: string;
  readonly counted: Counted;
  readonly bearingVines: number;
  /** Places listed as missing over all listed places of the block. */
  readonly missingShare: number;
  /** Spread between vines, and whether it is the block's own. */
  readonly cv: number;
  readonly cvFrom: "pilot" | "setting";
  /** Vines of the pilot. */
  readonly pilot: number;
  readonly margin: number;
  readonly confidence: number;
  /** Fewest vines for the margin. */
  readonly vines: number;
  readonly handbooks: readonly HandbookSample[];
  readonly seed: number;
  /** The drawn vines in the order of a walk. */
  readonly walk: readonly PlannedVine[];
}

/**
 * Plans a count: fewest bearing vines of the block for the margin of the Settings sheet, by Student's t in the finite block, and
 * a drawn list of them spread over the rows. The spread between vines is the block's own once five vines carry a count.
 * Undefined when the Vines sheet lists no bearing vine of that block.
 *
 * @param seed the same number draws the same vines again
 * @param vines another number of vines than the calculated one, where a person wants it
 * @param margin half the range over the mean, a share; left out: that of the Settings sheet
 */
export function countPlan(
  season: Season,
  block: string,
  counted: Counted,
  seed: number,
  vines?: number,
  margin = season.settings.marginOfACount,
): CountPlan | undefined {
  const { rows, counts, missingShare } = bearingVines(season, block, counted);
  const all = rows.reduce((sum, row) => sum + row.vines.length, 0);
  if (all === 0) return undefined;
  const { settings } = season;
  const confidence = settings.confidenceOfRanges;
  const own = counts.length >= SMALLEST_PILOT ? blockMean(counts, Infinity, confidence).cv : undefined;
  const cv = own ?? settings.spreadBetweenVines;
  const needed = vinesToCount(cv, margin, all, confidence).vines;
  return {
    block,
    counted,
    bearingVines: all,
    missingShare,
    cv,
    cvFrom: own === undefined ? "setting" : "pilot",
    pilot: counts.length,
    margin,
    confidence,
    vines: needed,
    handbooks: handbookSampleSizes(all),
    seed,
    walk: samplingPlan(rows, Math.min(all, vines ?? needed), seededRandom(seed)),
  };
}

function bearingVines(
  season: Season,
  block: string,
  counted: Counted,
): { rows: RowOfVines[]; counts: number[]; missingShare: number } {
  const { places } = season;
  const code = season.words.codeOf(block);
  const rows = new Map<number, Set<number>>();
  const counts: number[] = [];
  let listed = 0;
  let missing = 0;
  for (const table of season.tables("vines")) {
    const values = table.column(counted)?.usable;
    const keys = places.keysOf(table);
    const isBefore = places.listedBefore(table);
    const statusOf = places.statusesOf(table);
    for (let index = 0; index < keys.length; index++) {
      const place = placeOf(keys[index]);
      if (keys[index] === NO_PLACE || place.block !== code) continue;
      const status = statusOf(index);
      if (!isBefore(index)) {
        listed++;
        if (status === "missing") missing++;
      }
      if (status !== "bearing") continue;
      rows.set(place.row, (rows.get(place.row) ?? new Set<number>()).add(place.vine));
      if (values && values[index] >= 0) counts.push(values[index]);
    }
  }
  return {
    rows: [...rows]
      .sort(([one], [other]) => one - other)
      .map(([row, vines]) => ({ row, vines: [...vines].sort((one, other) => one - other) })),
    counts,
    missingShare: missing / listed,
  };
}
