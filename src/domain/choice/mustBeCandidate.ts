import type { CandidateCordon } from "./candidateCordon";
import { mustBeWhole, mustLieBetween } from "../refusal";

const COUNTS = ["positions", "liveSpurs", "longestGap", "spursDown", "spursLevel", "spursUp"] as const;
const MOST_OF_ANYTHING = 500;

/**
 * Refuses a candidate whose counts are not whole numbers from 0 to 500, whose trunk is not numbered from 1 to 99, whose
 * length is not between 0 and 30 m or whose diameter is not between 0 and 1 m. These limits only keep nonsense out of
 * the arithmetic; what is plausible on a vine is asked by the checks.
 *
 * @throws Refusal "notWhole" or "outside" that names the count
 * @example
 * mustBeCandidate({ side: "left", cordon: "A", liveSpurs: 2.5 }) // Refusal notWhole
 */
export function mustBeCandidate(cordon: CandidateCordon): CandidateCordon {
  for (const count of COUNTS) {
    const value = cordon[count];
    if (value !== undefined) mustBeWhole(count, value, 0, MOST_OF_ANYTHING);
  }
  if (cordon.trunk !== undefined) mustBeWhole("trunk", cordon.trunk, 1, 99);
  if (cordon.length !== undefined) mustLieBetween("length", cordon.length, 0, 30, "m");
  if (cordon.diameter !== undefined) mustLieBetween("diameter", cordon.diameter, 0, 1, "m");
  return cordon;
}
