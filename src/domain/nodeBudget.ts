import type { BalancedFormula } from "./balancedFormula";
import { mustLieBetween, Refusal } from "./refusal";
import { KILOGRAMS_PER_POUND, type Kilograms } from "./units";

/**
 * What to do with a vine whose prunings weigh less than a pound. No source seen says. "refuse": give no number.
 * "flat": the number of the first pound all the same (ours). "pro rata": that number times the weight in pounds (ours).
 */
export type BelowOnePound = "refuse" | "flat" | "pro rata";

/** The named ways, in the order in which they are offered. */
export const BELOW_ONE_POUND: readonly BelowOnePound[] = ["refuse", "flat", "pro rata"];

/**
 * Nodes to leave on a vine by balanced pruning: the formula's first number for the first pound of one-year prunings,
 * its second for each further pound, pro rata for part of a pound. Used after weighing the prunings of a mature vine.
 *
 * `prunings`: kilograms of one-year wood cut from the vine, 0 to 20. The pound of the formula is the exact
 * 0.45359237 kg; some papers use 454 g, which is 0.09 % more. The answer is not rounded: a person may leave 45 or 46
 * of 45.5 nodes, and a published example says "about 45" (Missouri State University 2009).
 *
 * Pro rata above the first pound follows the published 1.5 lb -> 30 nodes at 20+20 (Finger Lakes grape column,
 * Auburn Citizen, March 2021). Below one pound the sources seen say nothing, so the default gives no number
 * (belowOnePound): a light vine wants to be built up, and a flat 30 nodes can overcrop it. `belowOnePound` names one of
 * two ways of our own instead.
 *
 * @example
 * nodeBudget(kilogramsFromPounds(3), balancedFormula("30+10")) // 50
 * nodeBudget(kilogramsFromPounds(1.5), balancedFormula("20+20")) // 30
 * nodeBudget(kilogramsFromPounds(2.55), balancedFormula("30+10")) // 45.5
 * nodeBudget(kilogramsFromPounds(0.5), balancedFormula("30+10")) // Refusal belowOnePound
 * nodeBudget(kilogramsFromPounds(0.5), balancedFormula("30+10"), "flat") // 30
 * nodeBudget(kilogramsFromPounds(0.5), balancedFormula("30+10"), "pro rata") // 15
 */
export function nodeBudget(
  prunings: Kilograms,
  formula: BalancedFormula,
  belowOnePound: BelowOnePound = "refuse",
): number {
  mustLieBetween("prunings", prunings, 0, 20, "kg");
  const pounds = prunings / KILOGRAMS_PER_POUND;
  if (pounds >= 1) return formula.first + formula.additional * (pounds - 1);
  if (belowOnePound === "flat") return formula.first;
  if (belowOnePound === "pro rata") return formula.first * pounds;
  throw new Refusal("notAvailable", "belowOnePound", {
    argument: "prunings",
    value: pounds,
    kilograms: prunings,
  });
}
