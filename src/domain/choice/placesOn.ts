import type { CandidateCordon } from "./candidateCordon";
import type { Metres } from "../units";

/**
 * Places along a cordon where a spur could stand: as counted, else its length over the distance from spur to spur.
 *
 * @example
 * placesOn({ length: 1 }, 0.1) // 10
 */
export function placesOn(
  { positions, length }: Pick<CandidateCordon, "positions" | "length">,
  spacing: Metres,
): number | undefined {
  return positions ?? (length === undefined ? undefined : Math.round(length / spacing));
}
