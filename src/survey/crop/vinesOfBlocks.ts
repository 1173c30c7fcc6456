import { exactly, shareFromCount, type Estimate } from "../../domain/outlook/estimate";
import { fewVines, SMALLEST_PILOT, vinesAtRandom, vinesByRow } from "../../domain/outlook/vinesCounted";
import { shootsToThin, type ShootsToThin } from "../../domain/shootsToThin";
import { metres } from "../../domain/units";
import type { Season } from "../season/season";
import { bearsNothingYet } from "../season/youngVines";

/** The vines of a block and what was counted on them. */
export interface VinesOfBlock {
  /** Rows of the Vines sheets. */
  readonly listed: number;
  /** True where every vine listed is too young to bear. */
  readonly tooYoung: boolean;
  readonly planted: number;
  /** True where the Vines sheets list all but a few of the vines planted. */
  readonly complete: boolean;
  /** Share of the planted vines that bear, and how many that is. */
  readonly bearing: Estimate;
  readonly bearingVines: number;
  /** Mean of a block from counts on some of its vines, all of them and those of a row; undefined from fewer than two. */
  readonly estimate: (
    counts: readonly number[],
    ofRow: (row: number) => readonly number[],
  ) => Estimate | undefined;
  /** True when an estimate was made from too few vines to know their spread. */
  readonly few: () => boolean;
  readonly shoots: Estimate | undefined;
  readonly clusters: Estimate | undefined;
  /** Of each bearing vine that was counted. */
  readonly clusterCounts: readonly number[];
  /** Mean prunings of a bearing vine and how many were weighed. */
  readonly prunings: { readonly mean: number; readonly weighed: number } | undefined;
}

/** Shoots to thin a vine of a block to. */
export interface ShootThinning extends ShootsToThin {
  /** Mean of the vines on which shoots were counted. */
  readonly counted: number;
  readonly vines: number;
}

/** A register that lists this share of the planted vines is taken as complete. */
const COMPLETE_REGISTER = 0.98;

/** The vines of each block, by the number of its name, those of the Blocks sheet first. */
export function vinesOfBlocks(season: Season): Map<number, VinesOfBlock> {
  const tallies = tallyVines(season);
  const codes = new Set([...season.places.blockRows().keys(), ...tallies.keys()]);
  return new Map([...codes].map((code) => [code, vinesOfBlock(season, code, tallies.get(code))]));
}

/** Shoots to thin the vines of each block to, by its number; a block without a count of shoots or its spacing is left out. */
export function shootThinning(season: Season): Map<number, ShootThinning> {
  return new Map(
    [...vinesOfBlocks(season)].flatMap(([code, vines]) => {
      const thinned = shootThinningOf(season, code, vines);
      return thinned ? [[code, thinned] as const] : [];
    }),
  );
}

/** Shoots to thin the vines of one block to. */
export function shootThinningOf(
  { places, settings }: Season,
  code: number,
  { shoots, bearingVines }: VinesOfBlock,
): ShootThinning | undefined {
  const spacing = places.blockNumber(code, "vineSpacing");
  if (!shoots || Number.isNaN(spacing)) return undefined;
  const counted = shoots.value;
  const { shootsByLength, minutesAVineShootThinning: minutes } = settings;
  const thinned = shootsToThin(counted, metres(spacing), shootsByLength, bearingVines, minutes);
  return { ...thinned, counted, vines: bearingVines };
}

function vinesOfBlock(season: Season, code: number, tally: VineTally = noVines()): VinesOfBlock {
  const { places, settings } = season;
  const { listed } = tally;
  const written = places.blockNumber(code, "vines");
  const planted = Math.max(written >= 0 ? written : listed, listed);
  const complete = listed >= COMPLETE_REGISTER * planted;
  const bearing =
    listed === 0
      ? exactly("missing", 1)
      : complete
        ? exactly("missing", tally.bearing / listed)
        : shareFromCount("missing", tally.bearing, listed);
  const bearingVines = Math.round(planted * bearing.value);
  let few = false;
  const estimate: VinesOfBlock["estimate"] = (counts, ofRow) => {
    if (counts.length < 2) return undefined;
    const vines = Math.max(bearingVines, counts.length);
    if (counts.length < SMALLEST_PILOT && counts.length < vines) {
      few = true;
      return fewVines(counts, vines, settings.spreadBetweenVines);
    }
    const rows = complete ? [...tally.rows].sort(([one], [other]) => one - other) : [];
    const strata = rows.map(([number, row]) => {
      const drawn = ofRow(number);
      return { vines: Math.max(row.bearing, drawn.length), counts: drawn };
    });
    // Counts in rows that the register does not list would be lost to the mean.
    const inStrata = strata.reduce((sum, { counts: drawn }) => sum + drawn.length, 0);
    return inStrata < counts.length ? vinesAtRandom(counts, vines) : vinesByRow(strata);
  };
  return {
    listed,
    tooYoung: listed > 0 && tally.tooYoung === listed,
    planted,
    complete,
    bearing,
    bearingVines,
    estimate,
    few: () => few,
    clusters: estimate(tally.clusters, (row) => tally.rows.get(row)!.clusters),
    shoots: estimate(tally.shoots, (row) => tally.rows.get(row)!.shoots),
    clusterCounts: tally.clusters,
    prunings:
      tally.weighed > 0 ? { mean: tally.prunings / tally.weighed, weighed: tally.weighed } : undefined,
  };
}

interface Counts {
  readonly shoots: number[];
  readonly clusters: number[];
}

interface RowTally extends Counts {
  bearing: number;
}

interface VineTally extends Counts {
  listed: number;
  tooYoung: number;
  bearing: number;
  /** Rows of the block, where they are strata. */
  readonly rows: Map<number, RowTally>;
  prunings: number;
  weighed: number;
}

function tallyVines(season: Season): Map<number, VineTally> {
  const byRow = season.settings.vinesWereDrawn === "by row";
  const isTooYoung = bearsNothingYet(season);
  const tallies = new Map<number, VineTally>();
  for (const table of season.tables("vines")) {
    const blocks = table.column("block")?.codes;
    if (!blocks) continue;
    const rows = byRow ? table.column("row")?.usable : undefined;
    const statusOf = season.places.statusesOf(table);
    const shoots = table.column("shoots")?.usable;
    const clusters = table.column("clusters")?.usable;
    const prunings = table.column("prunings")?.usable;
    const keys = season.places.keysOf(table);
    const isBefore = season.places.listedBefore(table);
    for (let index = 0; index < blocks.length; index++) {
      const block = blocks[index];
      if (block < 0) continue;
      const tally = tallies.get(block) ?? noVines();
      tallies.set(block, tally);
      const isNew = !isBefore(index);
      if (isNew) tally.listed++;
      if (statusOf(index) !== "bearing") continue;
      if (isTooYoung(keys[index])) {
        if (isNew) tally.tooYoung++;
        continue;
      }
      const row = rows && rowOf(tally, rows[index]);
      if (isNew) tally.bearing++;
      if (isNew && row) row.bearing++;
      if (shoots && shoots[index] >= 0) {
        tally.shoots.push(shoots[index]);
        row?.shoots.push(shoots[index]);
      }
      if (clusters && clusters[index] >= 0) {
        tally.clusters.push(clusters[index]);
        row?.clusters.push(clusters[index]);
      }
      if (prunings && prunings[index] > 0) {
        tally.prunings += prunings[index];
        tally.weighed++;
      }
    }
  }
  return tallies;
}

function noVines(): VineTally {
  const counts = { shoots: [], clusters: [], rows: new Map<number, RowTally>() };
  return { listed: 0, tooYoung: 0, bearing: 0, prunings: 0, weighed: 0, ...counts };
}

function rowOf({ rows }: VineTally, number: number): RowTally {
  const row = rows.get(number) ?? { bearing: 0, shoots: [], clusters: [] };
  rows.set(number, row);
  return row;
}
