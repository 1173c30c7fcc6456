import type { ChoiceRules } from "./choiceRules";
import type { WeighedCordon } from "./compareCordons";
import { worthWithDeadStretch } from "./worthWithDeadStretch";
import { trunkCost } from "./trunkWorth";
import type { Trunk } from "./trunksOf";
import type { CaneOrigin } from "./vineDecision";

/** One thing that could be done on a side: keep a cordon, or lay a cane. */
export interface SidePlan {
  /** The cordon that stays; undefined when a cane is laid. */
  readonly keeps?: WeighedCordon;
  readonly layFrom?: CaneOrigin;
  /** Trunk that the side will hang on; undefined when it was not written down, "none" when no trunk can be named. */
  readonly trunk: number | "otherTrunk" | "none" | undefined;
  /** Worth on its own, before the two sides are looked at together. */
  readonly low: number;
  readonly high: number;
}

/**
 * Keeping a cordon: its score, as far as a dead stretch lets it be worth more than a new cane, less what a hurt trunk
 * costs. The cordon of a young vine is still being built, so that no stretch of it is dead.
 *
 * @example
 * keepPlan({ candidate: { trunk: 1 }, score: { low: 0.9, high: 0.9 }, trunkCondition: "injured" }, { injuredTrunk: 0.1 }).low // 0.8
 */
export function keepPlan(cordon: WeighedCordon, rules: ChoiceRules, young = false): SidePlan {
  const cost = trunkCost(cordon.trunkCondition, rules);
  const limit = young ? undefined : worthWithDeadStretch(cordon.candidate, rules);
  return {
    keeps: cordon,
    trunk: cordon.candidate.trunk,
    low: Math.min(cordon.score.low, limit?.low ?? Infinity) - cost,
    high: Math.min(cordon.score.high, limit?.high ?? Infinity) - cost,
  };
}

/**
 * Laying a cane: one plan a live trunk, one for a live trunk that carries no candidate. A cane is taken from a hurt
 * trunk only where no sound one lives (common practice), and from one on which no cane was counted near the head only
 * where no other stands; then nothing can be laid this winter and the plan is worth nothing yet. Without any live trunk
 * known the cane comes from the head while a cordon still lives there, and from a sucker at the ground when nothing does.
 *
 * @example
 * layPlans([{ number: 1, live: true }], 2, true, { newCane: 0.5 }).map((plan) => plan.layFrom) // [1, "otherTrunk"]
 */
export function layPlans(
  trunks: readonly Trunk[],
  liveTrunks: number | undefined,
  anyLivingWood: boolean,
  rules: ChoiceRules,
): SidePlan[] {
  const living = trunks.filter((trunk) => trunk.live);
  const bareTrunk = liveTrunks !== undefined && liveTrunks > living.length;
  const bearing = living.filter(({ noCane }) => !noCane);
  const live = bearing.length > 0 || bareTrunk ? bearing : living;
  const least = bareTrunk ? 0 : Math.min(...live.map(({ condition }) => trunkCost(condition, rules)));
  const soundest = live.filter(({ condition }) => trunkCost(condition, rules) <= least);
  const plans = soundest.map(({ number, condition, noCane }) =>
    layPlan(number, condition, noCane ? { ...rules, newCane: 0 } : rules),
  );
  if (bareTrunk) plans.push(layPlan("otherTrunk", undefined, rules));
  if (plans.length === 0) plans.push(layPlan(anyLivingWood ? "head" : "ground", undefined, rules));
  return plans;
}

/**
 * Laying a cane from a certain place: what a new cane is worth, less what a hurt trunk costs.
 *
 * @example
 * layPlan(2, "injured", { newCane: 0.5, injuredTrunk: 0.1 }) // {"layFrom": 2, "trunk": 2, "low": 0.4, "high": 0.4}
 */
export function layPlan(layFrom: CaneOrigin, condition: Trunk["condition"], rules: ChoiceRules): SidePlan {
  const worth = rules.newCane - trunkCost(condition, rules);
  const trunk = layFrom === "head" || layFrom === "ground" ? "none" : layFrom;
  return { layFrom, trunk, low: worth, high: worth };
}
