import type { CandidateCordon } from "./candidateCordon";
import type { ChoiceRules } from "./choiceRules";
import type { Metres } from "../units";

/**
 * Spurs that a cordon should carry: its length, or the wire that its side has to fill where that is longer, over the
 * distance from spur to spur. A short stub is so measured by the wire it leaves bare, not by its own few inches. Where
 * the length was not written down the counted positions stand for it; undefined when neither is known.
 *
 * @param cordon length in metres
 * @param sideLength wire to fill on the side, in metres; left out when the vine spacing is not known
 * @example
 * spursToCarry({ side: "left", cordon: "A", length: 1 }, { spurSpacing: 0.1 }) // 10
 */
export function spursToCarry(
  cordon: CandidateCordon,
  rules: Pick<ChoiceRules, "spurSpacing">,
  sideLength?: Metres,
): number | undefined {
  if (cordon.length === undefined) return positive(cordon.positions);
  return positive(Math.max(cordon.length, sideLength ?? 0) / rules.spurSpacing);
}

function positive(value: number | undefined): number | undefined {
  return value !== undefined && value > 0 ? value : undefined;
}
