import { mustLieBetween } from "../refusal";
import type { VinesPerHectare } from "../units";
import { relativeSpread, type Estimate, type SpreadSource } from "./estimate";
import { rangesAlong, type Range } from "./productRange";

/** When the figures were taken. Each stage replaces what the one before had to guess. */
export const STAGES = ["winter", "frost", "shoots", "clusters", "lagPhase"] as const;
export type Stage = (typeof STAGES)[number];

/** After pruning: nodes left, what the winter left of them, and the usual fruitfulness. */
export interface WinterFigures {
  readonly stage: "winter";
  /** Count nodes left on a bearing vine. */
  readonly nodes: Estimate;
  /** Worth of a node in live primary nodes (fruitfulNodes). */
  readonly buds: Estimate;
  /** Share of live nodes that grow a shoot. */
  readonly budbreak: Estimate;
  /** Basal and other shoots that are not counted, for each count node left, times their fruitfulness over that of a count shoot. */
  readonly basalWorth?: number;
  readonly clustersPerShoot: Estimate;
  readonly clusterWeight: Estimate;
}

/** After a spring frost: nodes counted by what still lives on each. */
export interface FrostFigures {
  readonly stage: "frost";
  /** Count nodes left on a bearing vine. */
  readonly nodes: Estimate;
  /** Worth of a node in nodes whose primary shoot lives; shootless nodes are counted as worth nothing. */
  readonly buds: Estimate;
  readonly clustersPerShoot: Estimate;
  readonly clusterWeight: Estimate;
}

/** After budbreak: shoots counted. */
export interface ShootFigures {
  readonly stage: "shoots";
  readonly shoots: Estimate;
  /** Worth of a counted shoot in shoots from primary buds (worthOfShoots); left out where every shoot counts in full. */
  readonly worth?: Estimate;
  readonly clustersPerShoot: Estimate;
  readonly clusterWeight: Estimate;
}

/** After clusters show: clusters counted. */
export interface ClusterFigures {
  readonly stage: "clusters";
  readonly clusters: Estimate;
  readonly clusterWeight: Estimate;
}

/** At lag phase, when berry growth pauses: clusters weighed, times a multiplier to harvest. */
export interface LagFigures {
  readonly stage: "lagPhase";
  readonly clusters: Estimate;
  /** Weight of a cluster at lag phase. */
  readonly clusterWeight: Estimate;
  /** Harvest weight over lag-phase weight. */
  readonly multiplier: Estimate;
}

export type StageFigures = WinterFigures | FrostFigures | ShootFigures | ClusterFigures | LagFigures;

/** The block that the figures are of. */
export interface OutlookBlock {
  /** Vines planted, missing ones included. */
  readonly planted: number;
  /** Share of the planted vines that bear: exact from a register, or a share from a sample of places. */
  readonly bearing: Estimate;
  /** Vines planted on a hectare; without it there is no crop of a hectare. */
  readonly density?: VinesPerHectare;
}

/** What one source adds to the doubt. */
export interface SpreadShare {
  readonly source: SpreadSource;
  readonly value: number;
  /** Standard error over the value. */
  readonly relative: number;
  /** Its share of the squared spread of the crop, 0 to 1; all add up to 1 unless nothing is in doubt. */
  readonly share: number;
}

/** Crop to expect, with its range. */
export interface CropOutlook {
  readonly stage: Stage;
  readonly confidence: number;
  /** Clusters on a bearing vine. */
  readonly clusters: Range;
  /** Kilograms on a bearing vine. */
  readonly perVine: Range;
  /** Kilograms on a hectare; undefined without a density. */
  readonly perHectare: Range | undefined;
  /** Kilograms in the block. */
  readonly block: Range;
  /** Half the width of the block's range over its likely crop. */
  readonly halfWidth: number;
  /** Sources of the block's spread, largest first. */
  readonly spread: readonly SpreadShare[];
}

/**
 * Crop of a block with its range, from the figures of one stage. The sources of spread are independent of each other and
 * kept apart: which vines were counted, which buds were cut, how budbreak, clusters a shoot, cluster weight and the
 * lag-phase multiplier differ from year to year, and which vines are missing. Likely is the plain product; the range is
 * that of productRange, nothing rounded.
 *
 * Estimates that miss by 30 % or more are common, 10 % is good (BC Wine Grape Council, Best Practices Guide): a winter
 * outlook is wide because clusters a shoot alone moves about 25 % between years (Martinson, Lakso and Bates, Cornell 2012).
 *
 * `confidence`: 0.5 to 0.9999, default 0.9.
 *
 * @example
 * cropOutlook({ stage: "clusters", clusters: exactly("vines", 69), clusterWeight: fromYears("clusterWeight", 0.142, 0.1) }, { planted: 100, bearing: exactly("missing", 0.95) }).block // { low: 789.63, likely: 930.81, high: 1097.23 }
 */
export function cropOutlook(figures: StageFigures, block: OutlookBlock, confidence = 0.9): CropOutlook {
  mustLieBetween("vines", block.planted, 0, 1e7);
  const { onNodes, added, toClusters, toCrop } = chain(figures);
  const [clusters, perVine, bearing] = rangesAlong(
    onNodes,
    added,
    [toClusters, toCrop, [block.bearing]],
    confidence,
  );
  return {
    stage: figures.stage,
    confidence,
    clusters,
    perVine,
    perHectare: block.density === undefined ? undefined : times(bearing, block.density),
    block: times(bearing, block.planted),
    halfWidth: bearing.likely > 0 ? (bearing.high - bearing.low) / 2 / bearing.likely : 0,
    spread: spreadShares(onNodes, added, [...toClusters, ...toCrop, block.bearing]),
  };
}

interface Chain {
  /** Product to which `added` is added. */
  readonly onNodes: readonly Estimate[];
  readonly added: number;
  /** Further factors up to clusters a vine. */
  readonly toClusters: readonly Estimate[];
  /** Further factors up to kilograms a vine. */
  readonly toCrop: readonly Estimate[];
}

/** The figures of a stage as factors of a product. */
function chain(figures: StageFigures): Chain {
  switch (figures.stage) {
    case "winter":
      return {
        onNodes: [figures.buds, figures.budbreak],
        added: figures.basalWorth ?? 0,
        toClusters: [figures.nodes, figures.clustersPerShoot],
        toCrop: [figures.clusterWeight],
      };
    case "frost":
      return {
        onNodes: [figures.buds],
        added: 0,
        toClusters: [figures.nodes, figures.clustersPerShoot],
        toCrop: [figures.clusterWeight],
      };
    case "shoots":
      return {
        onNodes: [figures.shoots],
        added: 0,
        toClusters: [...(figures.worth ? [figures.worth] : []), figures.clustersPerShoot],
        toCrop: [figures.clusterWeight],
      };
    case "clusters":
      return { onNodes: [figures.clusters], added: 0, toClusters: [], toCrop: [figures.clusterWeight] };
    case "lagPhase":
      return {
        onNodes: [figures.clusters],
        added: 0,
        toClusters: [],
        toCrop: [figures.clusterWeight, figures.multiplier],
      };
  }
}

const times = ({ low, likely, high }: Range, factor: number): Range => ({
  low: low * factor,
  likely: likely * factor,
  high: high * factor,
});

function spreadShares(
  onNodes: readonly Estimate[],
  added: number,
  rest: readonly Estimate[],
): readonly SpreadShare[] {
  const base = onNodes.reduce((total, { value }) => total * value, 1);
  const weight = base + added > 0 ? base / (base + added) : 0;
  const parts = [
    ...onNodes.map((estimate) => ({ estimate, weight })),
    ...rest.map((estimate) => ({ estimate, weight: 1 })),
  ].map(({ estimate, weight }) => {
    const relative = relativeSpread(estimate);
    return { source: estimate.source, value: estimate.value, relative, squared: (relative * weight) ** 2 };
  });
  const total = parts.reduce((sum, { squared }) => sum + squared, 0);
  return parts
    .map(({ source, value, relative, squared }) => ({
      source,
      value,
      relative,
      share: total > 0 ? squared / total : 0,
    }))
    .sort((one, other) => other.share - one.share);
}
