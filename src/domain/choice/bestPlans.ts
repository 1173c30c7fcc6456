import type { SidePlan } from "./sidePlans";

/** Two sides decided together, with the bounds that missing counts leave open. */
export interface VinePlan {
  readonly first: SidePlan;
  /** Left out on a vine that has one side. */
  readonly second?: SidePlan;
  readonly low: number;
  readonly high: number;
}

/** The best plan, and how far below it the best plan lies that decides a given side otherwise. */
export interface PlanChoice {
  readonly best: VinePlan;
  readonly worth: number;
  /**
   * Every other plan whose staying cordons differ, with its distance below the best: as the middle of what is known,
   * and the least that it could be once the missing counts are in.
   */
  readonly others: readonly { readonly plan: VinePlan; readonly behind: number; readonly atLeast: number }[];
}

/**
 * What two sides earn because they hang on two trunks: between nothing and `twoTrunks` while a trunk is unknown.
 *
 * @example
 * trunkGain({ trunk: 1 }, { trunk: 2 }, 0.15) // {"low": 0.15, "high": 0.15}
 * trunkGain({ trunk: 1 }, { trunk: undefined }, 0.15) // {"low": 0, "high": 0.15}
 */
export function trunkGain(
  first: SidePlan,
  second: SidePlan,
  twoTrunks: number,
): { low: number; high: number } {
  if (first.trunk === "none" || second.trunk === "none") return { low: 0, high: 0 };
  if (first.trunk === undefined || second.trunk === undefined) return { low: 0, high: twoTrunks };
  const gain = first.trunk === second.trunk ? 0 : twoTrunks;
  return { low: gain, high: gain };
}

/**
 * Weighs every pair of plans, one a side, and so finds the pair that is best together: no cordon is chosen on its own.
 * Among equal plans the one given first wins; the caller says that they are equal, see `others`.
 *
 * @param second plans of the side across; left out on a vine with one side
 * @example
 * bestPlans(
 *   [{ trunk: 1, low: 0.9, high: 0.9 }, { trunk: 2, low: 0.8, high: 0.8 }],
 *   [{ trunk: 1, low: 0.9, high: 0.9 }],
 *   0.15,
 * ).worth // 1.85
 */
export function bestPlans(
  first: readonly SidePlan[],
  second: readonly SidePlan[] | undefined,
  twoTrunks: number,
): PlanChoice {
  const plans: VinePlan[] = [];
  let best: VinePlan | undefined;
  for (const one of first)
    for (const two of second ?? [undefined]) {
      const gain = two ? trunkGain(one, two, twoTrunks) : { low: 0, high: 0 };
      const plan: VinePlan = {
        first: one,
        ...(two ? { second: two } : {}),
        low: one.low + (two?.low ?? 0) + gain.low,
        high: one.high + (two?.high ?? 0) + gain.high,
      };
      plans.push(plan);
      if (!best || middle(plan) > middle(best) + 1e-12) best = plan;
    }
  if (!best) throw new RangeError("a side without any plan");
  const chosen = best;
  return {
    best: chosen,
    worth: middle(chosen),
    others: plans
      .filter((plan) => plan !== chosen && !sameStays(plan, chosen))
      .map((plan) => ({
        plan,
        behind: middle(chosen) - middle(plan),
        atLeast: leastLead(chosen, plan, twoTrunks),
      })),
  };
}

/**
 * The one worth of a plan where counts are missing: the middle of its bounds.
 *
 * @example
 * middle({ low: 0.6, high: 0.9 }) // 0.75
 */
export function middle(plan: { low: number; high: number }): number {
  return (plan.low + plan.high) / 2;
}

function sameStays(plan: VinePlan, other: VinePlan): boolean {
  return plan.first.keeps === other.first.keeps && plan.second?.keeps === other.second?.keeps;
}

/** What both plans share cancels out, however little is known of it. */
function leastLead(ahead: VinePlan, behind: VinePlan, twoTrunks: number): number {
  let lead = ahead.first === behind.first ? 0 : ahead.first.low - behind.first.high;
  if (ahead.second && behind.second) {
    if (ahead.second !== behind.second) lead += ahead.second.low - behind.second.high;
    lead +=
      trunkGain(ahead.first, ahead.second, twoTrunks).low -
      trunkGain(behind.first, behind.second, twoTrunks).high;
  }
  return lead;
}
