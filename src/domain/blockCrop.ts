import { mustLieBetween } from "./refusal";
import { kilogramsPerHectare, type Kilograms, type KilogramsPerHectare, type VinesPerHectare } from "./units";

/**
 * Crop on a hectare: crop of a bearing vine, times the vines planted, less the share of them that is missing.
 * PY = ANV x NC x CW / 2000 in tons an acre: Dami, "How to Estimate Grape Yields", Ohio State University.
 *
 * `vineCrop`: kilograms on a bearing vine, 0 to 200. `density`: vines planted on a hectare, 0 to 20,000.
 * `missingShare`: share of the planted vines that is missing or bears nothing, 0 to 1, default none. If missing vines
 * were counted as vines with no clusters, they are already in `vineCrop`: leave `missingShare` at 0 then.
 *
 * Nothing is rounded on the way: from the printed 807 vines an acre, 5 % missing leaves 767, from 806.67 it leaves 766.
 *
 * @example
 * tonsPerAcreFromKilogramsPerHectare(blockCrop(kilograms(9.8), vinesPerHectareFromPerAcre(806.6667), 0.05)) // 8.278
 * blockCrop(kilograms(5), vinesPerHectare(2000)) // 10000
 */
export function blockCrop(
  vineCrop: Kilograms,
  density: VinesPerHectare,
  missingShare = 0,
): KilogramsPerHectare {
  mustLieBetween("vine_crop", vineCrop, 0, 200, "kg");
  mustLieBetween("density", density, 0, 20000, "vines/ha");
  mustLieBetween("missing_share", missingShare, 0, 1);
  return kilogramsPerHectare(vineCrop * density * (1 - missingShare));
}
