import { mustLieBetween } from "./refusal";

/**
 * Clusters to expect on a vine from its shoots.
 *
 * `shoots`: shoots of the vine. `clustersPerShoot`: mean clusters on a shoot, 0 to 6. Most buds bear none to three,
 * shoots rarely more than three or four, and the mean moves about a quarter from year to year (Martinson, Lakso and
 * Bates, Cornell 2012). About two on a shoot of a fruitful hybrid is common practice. Not rounded.
 *
 * @example
 * clusters(24, 2) // 48
 */
export function clusters(shoots: number, clustersPerShoot: number): number {
  mustLieBetween("shoots", shoots, 0, 5000);
  mustLieBetween("clusters_per_shoot", clustersPerShoot, 0, 6);
  return shoots * clustersPerShoot;
}
