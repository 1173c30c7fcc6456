import type { CandidateCordon } from "./candidateCordon";
import type { ChoiceRules } from "./choiceRules";
import { knownPart, UNKNOWN_PART, type PartBounds } from "./partBounds";

/**
 * Soundness of the cordon itself; its trunk is weighed when the vine is decided as a whole.
 *
 * @example
 * soundnessPart({ condition: "injured" }, { injuredSoundness: 0.5, diseasedSoundness: 0.2 }) // {"low": 0.5, "high": 0.5}
 */
export function soundnessPart(
  cordon: CandidateCordon,
  rules: Pick<ChoiceRules, "injuredSoundness" | "diseasedSoundness">,
): PartBounds {
  if (cordon.condition === undefined) return UNKNOWN_PART;
  if (cordon.condition === "sound") return knownPart(1);
  if (cordon.condition === "injured") return knownPart(rules.injuredSoundness);
  if (cordon.condition === "diseased") return knownPart(rules.diseasedSoundness);
  return knownPart(0);
}
