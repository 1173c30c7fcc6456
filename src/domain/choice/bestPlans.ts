import type { SidePlan } from "./sidePlans";

/** Two sides decided together. */
export interface VinePlan {
  readonly first: SidePlan;
  /** Left out on a vine that has one side. */
  readonly second?: SidePlan;
}

/** A plan that lies close enough to the best one to be asked about. */
export interface ClosePlan {
  readonly plan: VinePlan;
  /** Distance below the best plan, as the middle of what is known. */
  readonly behind: number;
}

/** The best plan of a vine and what lies close to it. */
export interface PlanChoice {
  readonly best: VinePlan;
  readonly worth: number;
  /** Distance to the best plan that keeps other cordons; infinite when there is none. */
  readonly lead: number;
  /**
   * Plans that keep other cordons and are, or could with the missing counts turn out to be, within the margin; none that
   * a third plan beats by more than the margin, whatever the missing counts are.
   */
  readonly close: readonly ClosePlan[];
}

/** The share of `twoTrunks` that two sides earn: 1 on two trunks, 0 on one. */
interface Gain {
  readonly low: 0 | 1;
  readonly high: 0 | 1;
}

const NONE: Gain = { low: 0, high: 0 };
const WHOLE: Gain = { low: 1, high: 1 };
const OPEN: Gain = { low: 0, high: 1 };

function trunkShare(first: SidePlan, second: SidePlan): Gain {
  if (first.trunk === "none" || second.trunk === "none") return NONE;
  if (first.trunk === undefined || second.trunk === undefined) return OPEN;
  return first.trunk === second.trunk ? NONE : WHOLE;
}

/**
 * What a plan earns because its two sides hang on two trunks; the middle between nothing and all of it while a trunk is
 * not known.
 *
 * @example
 * trunkGain({ first: { trunk: 1 }, second: { trunk: 2 } }, 0.15) // 0.15
 * trunkGain({ first: { trunk: 1 }, second: { trunk: 1 } }, 0.15) // 0
 */
export function trunkGain({ first, second }: VinePlan, twoTrunks: number): number {
  if (!second) return 0;
  const { low, high } = trunkShare(first, second);
  return ((low + high) / 2) * twoTrunks;
}

/**
 * The one worth of a plan where counts are missing: the middle of its bounds.
 *
 * @example
 * middle({ low: 0.6, high: 0.9 }) // 0.75
 */
export function middle(plan: { readonly low: number; readonly high: number }): number {
  return (plan.low + plan.high) / 2;
}

const ROUNDING = 1e-9;

/**
 * Weighs every pair of plans, one a side, and so finds the pair that is best together: no cordon is chosen on its own.
 * Among equal plans the one given first is taken; the others then stand in `close`. What two plans share cancels out
 * of their distance, however little is known of it.
 *
 * @param second plans of the side across; left out on a vine with one side
 * @param margin distance within which another plan is close
 * @example
 * bestPlans(
 *   [{ trunk: 1, low: 0.9, high: 0.9 }, { trunk: 2, low: 0.8, high: 0.8 }],
 *   [{ trunk: 1, low: 0.9, high: 0.9 }],
 *   0.15, 0.05,
 * ).worth // 1.85
 */
export function bestPlans(
  first: readonly SidePlan[],
  second: readonly SidePlan[] | undefined,
  twoTrunks: number,
  margin: number,
): PlanChoice {
  const across: readonly (SidePlan | undefined)[] = second ?? [undefined];
  let best: { one: SidePlan; two: SidePlan | undefined } | undefined;
  let worth = -Infinity;
  for (const one of first)
    for (const two of across) {
      const value = middleOf(one, two, twoTrunks);
      if (best === undefined || value > worth + 1e-12) {
        worth = value;
        best = { one, two };
      }
    }
  if (best === undefined) throw new RangeError("a side without any plan");
  const { one: ownOne, two: ownTwo } = best;
  let lead = Infinity;
  const close: ClosePlan[] = [];
  for (const one of first)
    for (const two of across) {
      if (one.keeps === ownOne.keeps && two?.keeps === ownTwo?.keeps) continue;
      const behind = worth - middleOf(one, two, twoTrunks);
      if (behind < lead) lead = behind;
      if (leastLead(ownOne, ownTwo, one, two, twoTrunks) <= margin + ROUNDING)
        close.push({ plan: planOf(one, two), behind });
    }
  const isBeaten = ({ plan: { first: one, second: two } }: ClosePlan) =>
    first.some((other) =>
      across.some((otherTwo) => leastLead(other, otherTwo, one, two, twoTrunks) > margin + ROUNDING),
    );
  return { best: planOf(ownOne, ownTwo), worth, lead, close: close.filter((plan) => !isBeaten(plan)) };
}

function planOf(first: SidePlan, second: SidePlan | undefined): VinePlan {
  return second ? { first, second } : { first };
}

function middleOf(one: SidePlan, two: SidePlan | undefined, twoTrunks: number): number {
  if (two === undefined) return middle(one);
  const { low, high } = trunkShare(one, two);
  return middle(one) + middle(two) + ((low + high) / 2) * twoTrunks;
}

function leastLead(
  ownOne: SidePlan,
  ownTwo: SidePlan | undefined,
  one: SidePlan,
  two: SidePlan | undefined,
  twoTrunks: number,
): number {
  let lead = ownOne === one ? 0 : ownOne.low - one.high;
  if (ownTwo && two) {
    if (ownTwo !== two) lead += ownTwo.low - two.high;
    lead += twoTrunks * (trunkShare(ownOne, ownTwo).low - trunkShare(one, two).high);
  }
  return lead;
}
