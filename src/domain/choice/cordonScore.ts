import type { CandidateCordon } from "./candidateCordon";
import { SCORE_PARTS, type ChoiceRules, type ScorePart } from "./choiceRules";
import { cordonParts, type CordonParts } from "./cordonParts";
import { mustBeCandidate } from "./mustBeCandidate";
import { isKnown } from "./partBounds";
import type { Training } from "./trainingSystems";
import { Refusal } from "../refusal";
import type { Metres } from "../units";

/** A cordon's score, between 0 and 1. */
export interface CordonScore {
  /** Middle of `low` and `high`; the score itself when nothing is missing. */
  readonly score: number;
  readonly low: number;
  readonly high: number;
  readonly parts: CordonParts;
  /** Parts that count here and are not known exactly. */
  readonly missing: readonly ScorePart[];
  /** Parts that were left out because nothing says anything about them. */
  readonly leftOut: readonly ScorePart[];
}

const NOTHING: readonly ScorePart[] = [];

/**
 * Scores one cordon by the parts that its counts allow, weighed as the settings say. More live spurs, a shorter gap or
 * better placed spurs never lower it. Parts about which nothing was written down are left out and named.
 *
 * @param cordon counts as written, lengths in metres
 * @param sideLength wire to fill on the side, in metres
 * @throws Refusal "nothingToScore" when no part says anything, "notWhole" or "outside" for an impossible count
 * @example
 * cordonScore(
 *   { side: "left", cordon: "A", length: 1, liveSpurs: 8, longestGap: 2 }, "highWire",
 *   { weights: { spurs: 0.3, stretch: 0.3, placing: 0.15, soundness: 0.2, diameter: 0.05 }, spurSpacing: 0.1, longestStretch: 5 },
 * ).score // 0.775
 */
export function cordonScore(
  cordon: CandidateCordon,
  training: Training | undefined,
  rules: ChoiceRules,
  sideLength?: Metres,
): CordonScore {
  mustBeCandidate(cordon);
  const parts = cordonParts(cordon, training, rules, sideLength);
  const inUse = partsInUse([parts]);
  if (!inUse.some((part) => rules.weights[part] > 0))
    throw new Refusal("notAvailable", "nothingToScore", { cordon: cordon.cordon });
  return scoreOver(parts, inUse, rules);
}

/**
 * Parts about which at least one of the cordons says something; the others cannot tell them apart.
 *
 * @example
 * partsInUse([
 *   { spurs: { low: 0.8, high: 0.8 }, stretch: { low: 0, high: 1 }, placing: { low: 0, high: 1 }, soundness: { low: 1, high: 1 }, diameter: { low: 0, high: 1 } },
 * ]) // ["spurs", "soundness"]
 */
export function partsInUse(cordons: readonly CordonParts[]): ScorePart[] {
  return SCORE_PARTS.filter((part) => cordons.some((parts) => parts[part].low > 0 || parts[part].high < 1));
}

/**
 * The score over the parts that are in use, so that cordons of one vine are measured alike.
 *
 * @example
 * scoreOver({ spurs: { low: 0.8, high: 0.8 }, stretch: { low: 0.4, high: 0.8 } }, ["spurs", "stretch"], { weights: { spurs: 0.5, stretch: 0.5 } }).score // 0.7
 */
export function scoreOver(
  parts: CordonParts,
  inUse: readonly ScorePart[],
  rules: Pick<ChoiceRules, "weights">,
): CordonScore {
  let weight = 0;
  let low = 0;
  let high = 0;
  for (const part of inUse) {
    weight += rules.weights[part];
    low += rules.weights[part] * parts[part].low;
    high += rules.weights[part] * parts[part].high;
  }
  const total = weight || 1;
  return {
    score: weight ? (low + high) / 2 / total : 0.5,
    low: low / total,
    high: weight ? high / total : 1,
    parts,
    missing: low === high ? NOTHING : inUse.filter((part) => !isKnown(parts[part])),
    leftOut:
      inUse.length === SCORE_PARTS.length ? NOTHING : SCORE_PARTS.filter((part) => !inUse.includes(part)),
  };
}
