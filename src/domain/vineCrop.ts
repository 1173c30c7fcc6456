import { mustLieBetween } from "./refusal";
import { kilograms, type Kilograms } from "./units";

/**
 * Crop of one vine: clusters times the weight of a cluster. Formula: Dami, "How to Estimate Grape Yields", Ohio State
 * University; Dami and Sabbatini 2012, HYG-1434.
 *
 * `clusters`: clusters on the vine. `clusterWeight`: kilograms of a ripe cluster, 0 to 3. Kilograms back, not rounded.
 *
 * @example
 * poundsFromKilograms(vineCrop(48, kilogramsFromPounds(0.25))) // 12
 */
export function vineCrop(clusters: number, clusterWeight: Kilograms): Kilograms {
  mustLieBetween("clusters", clusters, 0, 30000);
  mustLieBetween("cluster_weight", clusterWeight, 0, 3, "kg");
  return kilograms(clusters * clusterWeight);
}
