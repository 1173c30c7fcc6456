import type { Condition } from "./candidateCordon";
import type { ChoiceRules } from "./choiceRules";

/**
 * What a cordon loses because its trunk is hurt. A trunk that nobody looked at costs nothing: hurt is only what was
 * written down. A dead trunk carries nothing and is not weighed at all.
 *
 * @example
 * trunkCost("injured", { injuredTrunk: 0.1, diseasedTrunk: 0.2 }) // 0.1
 */
export function trunkCost(
  condition: Condition | undefined,
  rules: Pick<ChoiceRules, "injuredTrunk" | "diseasedTrunk">,
): number {
  if (condition === "injured") return rules.injuredTrunk;
  if (condition === "diseased") return rules.diseasedTrunk;
  return 0;
}

const GRAVITY: Readonly<Record<Condition, number>> = { sound: 0, injured: 1, diseased: 2, dead: 3 };

/**
 * The graver of two notes about one trunk.
 *
 * @example
 * graver("injured", "diseased") // "diseased"
 */
export function graver(first: Condition | undefined, second: Condition | undefined): Condition | undefined {
  if (first === undefined || second === undefined) return first ?? second;
  return GRAVITY[second] > GRAVITY[first] ? second : first;
}
