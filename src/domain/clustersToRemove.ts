import { mustLieBetween } from "./refusal";
import type { Kilograms, KilogramsPerHectare, VinesPerHectare } from "./units";

/** Clusters to leave on a vine and to take off it. */
export interface ClustersToRemove {
  /** Most whole clusters on a vine that stay under the target; all that were counted when they are fewer. */
  readonly keep: number;
  /** Whole clusters to take off a vine with the counted number; 0 when all may stay. */
  readonly remove: number;
}

/**
 * Clusters to take off each vine so that the block stays at or under a target crop. The clusters kept are rounded down
 * and those removed rounded up, so that the target is not passed; nearest rounding would leave up to half a cluster a
 * vine too much.
 *
 * `target`: kilograms on a hectare wanted at most, 0 to 100,000. `density`: bearing vines on a hectare (take missing
 * vines off first). `clusterWeight`: kilograms of a ripe cluster, 0.001 to 3. `counted`: clusters on the vine now.
 *
 * Derived: 4 tons an acre, 605 vines, clusters of 0.25 lb are 52.89 clusters a vine; of 70 counted, 52 stay, 18 go.
 *
 * @example
 * clustersToRemove(kilogramsPerHectareFromTonsPerAcre(4), vinesPerHectareFromPerAcre(605), kilogramsFromPounds(0.25), 50) // { keep: 50, remove: 0 }
 * clustersToRemove(kilogramsPerHectareFromTonsPerAcre(4), vinesPerHectareFromPerAcre(605), kilogramsFromPounds(0.25), 70) // { keep: 52, remove: 18 }
 */
export function clustersToRemove(
  target: KilogramsPerHectare,
  density: VinesPerHectare,
  clusterWeight: Kilograms,
  counted: number,
): ClustersToRemove {
  mustLieBetween("target", target, 0, 100000, "kg/ha");
  mustLieBetween("density", density, 1, 20000, "vines/ha");
  mustLieBetween("cluster_weight", clusterWeight, 0.001, 3, "kg");
  mustLieBetween("counted", counted, 0, 30000);
  const allowed = Math.floor(target / density / clusterWeight + SLACK);
  return {
    keep: Math.min(allowed, counted),
    remove: Math.max(0, Math.ceil(counted - allowed - SLACK)),
  };
}

/** Part of a cluster below which a remainder is the arithmetic of pounds and acres. */
const SLACK = 1e-9;
