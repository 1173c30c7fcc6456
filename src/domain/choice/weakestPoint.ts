import type { VineToDecide } from "./candidateCordon";
import type { ChoiceRules, ScorePart } from "./choiceRules";
import type { WeighedCordon } from "./compareCordons";
import { worthWithDeadStretch } from "./worthWithDeadStretch";
import { liveSpursOf } from "./liveSpurs";
import { spursToCarry } from "./spursToCarry";
import { spursPointing, trainingSystem } from "./trainingSystems";
import { trunkCost } from "./trunkWorth";
import type { Facts } from "../refusal";

/**
 * What takes most from a cordon, with its figures: one of the parts that are in use, or its trunk.
 *
 * @example
 * weakestPoint(
 *   { candidate: { length: 1, liveSpurs: 3 }, score: { parts: { spurs: { low: 0.3, high: 0.3 }, soundness: { low: 1, high: 1 } } } },
 *   { candidates: [] }, ["spurs", "soundness"], { weights: { spurs: 0.3, soundness: 0.2 }, spurSpacing: 0.1 },
 * ).carry // 10
 */
export function weakestPoint(
  { candidate, score, trunkCondition }: WeighedCordon,
  vine: VineToDecide,
  inUse: readonly ScorePart[],
  rules: ChoiceRules,
): Facts {
  const total = inUse.reduce((sum, part) => sum + rules.weights[part], 0) || 1;
  let weak: ScorePart | "trunkCondition" | "deadStretch" = "spurs";
  let most = -1;
  for (const part of inUse) {
    const loss = (rules.weights[part] * (1 - (score.parts[part].low + score.parts[part].high) / 2)) / total;
    if (loss > most) {
      most = loss;
      weak = part;
    }
  }
  if (trunkCost(trunkCondition, rules) > most) weak = "trunkCondition";
  if (worthWithDeadStretch(candidate, rules).low < score.low) weak = "deadStretch";
  const carry = spursToCarry(candidate, rules, vine.sideLength);
  return {
    weak,
    spurs: liveSpursOf(candidate) ?? "",
    carry: carry === undefined ? "" : Math.round(carry),
    well: vine.training ? spursPointing(candidate, trainingSystem(vine.training).wellPlaced) : "",
    gap: candidate.longestGap ?? candidate.positions ?? "",
    diameter: candidate.diameter ?? "",
    fullDiameter: rules.fullDiameter ?? "",
    condition: candidate.condition ?? "",
    trunk: candidate.trunk ?? "",
    trunkCondition: trunkCondition ?? "",
  };
}
