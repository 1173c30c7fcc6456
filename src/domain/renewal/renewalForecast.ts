import { mustBeWhole, mustLieBetween } from "../refusal";

/** One winter of the forecast, in expected numbers. */
export interface RenewalYear {
  readonly year: number;
  /** Vines by live trunks, index 0 for vines without one. */
  readonly vines: readonly number[];
  readonly trunksLost: number;
  readonly trunksBroughtUp: number;
}

/**
 * Vines by live trunks over the next winters, in expected numbers: every live trunk dies with the stated yearly loss,
 * each for itself, and on a share of the vines that are left with fewer than wanted one trunk more is brought up. A vine
 * without a live trunk stays without: whether it comes again from the ground is for a person to see.
 *
 * That trunks die each for itself is an assumption that flatters the forecast: in test winters the trunks of a vine
 * often died together (Midwest Wine Press, 2012).
 *
 * @param vines vines by live trunks, index 0 for none
 * @param yearlyLoss share of live trunks that a winter kills
 * @param broughtUp share of the vines below `wanted` on which one trunk more stands after a year
 * @throws Refusal "outside" or "notWhole"
 * @example
 * renewalForecast([0, 0, 100], 2, 0.1, 0, 1)[0].vines // [1, 18, 81]
 */
export function renewalForecast(
  vines: readonly number[],
  wanted: number,
  yearlyLoss: number,
  broughtUp: number,
  years: number,
): RenewalYear[] {
  mustBeWhole("wanted", wanted, 1, 12);
  mustBeWhole("years", years, 1, 50);
  mustLieBetween("yearly_loss", yearlyLoss, 0, 1);
  mustLieBetween("brought_up", broughtUp, 0, 1);
  vines.forEach((count) => mustLieBetween("vines", count, 0, 1e9));
  const forecast: RenewalYear[] = [];
  let now = [...vines];
  for (let year = 1; year <= years; year++) {
    const left = afterWinter(now, yearlyLoss);
    const trunksLost = trunksOn(now) - trunksOn(left);
    now = afterRenewal(left, wanted, broughtUp);
    forecast.push({ year, vines: now, trunksLost, trunksBroughtUp: trunksOn(now) - trunksOn(left) });
  }
  return forecast;
}

function trunksOn(vines: readonly number[]): number {
  return vines.reduce((sum, count, trunks) => sum + count * trunks, 0);
}

/** Each of a vine's trunks lives on with the same chance: a binomial share of the vines keeps each number. */
function afterWinter(vines: readonly number[], loss: number): number[] {
  const left = vines.map(() => 0);
  vines.forEach((count, trunks) => {
    let ways = 1;
    for (let live = trunks; live >= 0; live--) {
      left[live] += count * ways * (1 - loss) ** live * loss ** (trunks - live);
      ways = (ways * live) / (trunks - live + 1);
    }
  });
  return left;
}

function afterRenewal(vines: readonly number[], wanted: number, broughtUp: number): number[] {
  const next = [...vines];
  while (next.length <= wanted) next.push(0);
  const before = [...next];
  for (let trunks = 1; trunks < wanted; trunks++) {
    next[trunks] -= before[trunks] * broughtUp;
    next[trunks + 1] += before[trunks] * broughtUp;
  }
  return next;
}
