import type { CandidateCordon } from "./candidateCordon";
import type { ChoiceRules, ScorePart } from "./choiceRules";
import type { PartBounds } from "./partBounds";
import type { Training } from "./trainingSystems";
import type { Metres } from "../units";
import { diameterPart } from "./diameterPart";
import { soundnessPart } from "./soundnessPart";
import { spursAndPlacing } from "./spursAndPlacing";
import { spursToCarry } from "./spursToCarry";
import { stretchPart } from "./stretchPart";

/** The five parts of a cordon's score, each as far as it is known. */
export type CordonParts = Readonly<Record<ScorePart, PartBounds>>;

/**
 * All parts of one cordon.
 *
 * @example
 * cordonParts({ length: 1, liveSpurs: 8, longestGap: 2 }, undefined, { spurSpacing: 0.1, longestStretch: 5 }).spurs // {"low": 0.8, "high": 0.8}
 */
export function cordonParts(
  cordon: CandidateCordon,
  training: Training | undefined,
  rules: ChoiceRules,
  sideLength?: Metres,
): CordonParts {
  const carry = spursToCarry(cordon, rules, sideLength);
  const { spurs, placing } = spursAndPlacing(cordon, carry, training, rules);
  return {
    spurs,
    stretch: stretchPart(cordon, rules),
    placing,
    soundness: soundnessPart(cordon, rules),
    diameter: diameterPart(cordon, rules),
  };
}
