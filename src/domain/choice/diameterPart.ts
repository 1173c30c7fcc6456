import type { CandidateCordon } from "./candidateCordon";
import type { ChoiceRules } from "./choiceRules";
import { knownPart, UNKNOWN_PART, type PartBounds } from "./partBounds";

/**
 * Thickness of the cordon: nothing up to the weak end of the range, 1 from the thick end on, in proportion between.
 * The range is that of Westover (Wines & Vines, May 2016): 5/16 to 1/2 inch, trunks and cordons at the larger end. The
 * same text calls thicker one-year canes poor wood; an old cordon has grown past that, so nothing is taken off here.
 *
 * @example
 * diameterPart({ diameter: 0.01 }, { weakDiameter: 0.008, fullDiameter: 0.012 }) // {"low": 0.5, "high": 0.5}
 */
export function diameterPart(
  cordon: CandidateCordon,
  rules: Pick<ChoiceRules, "weakDiameter" | "fullDiameter">,
): PartBounds {
  if (cordon.diameter === undefined) return UNKNOWN_PART;
  if (cordon.diameter >= rules.fullDiameter) return knownPart(1);
  if (cordon.diameter <= rules.weakDiameter) return knownPart(0);
  return knownPart((cordon.diameter - rules.weakDiameter) / (rules.fullDiameter - rules.weakDiameter));
}
