import { mustLieBetween } from "../refusal";

/** Where the doubt in a crop figure comes from. */
export type SpreadSource =
  "vines" | "buds" | "budbreak" | "clustersPerShoot" | "clusterWeight" | "lagMultiplier" | "missing";

/**
 * How a figure may lie around its value.
 * "exact": not at all. "t": Student's t around a sample mean. "logT": the same on the logarithm, for ratios that vary
 * from year to year. "logitT": the same on log(x / (1 - x)), for shares that vary from year to year. "beta": a share from
 * a count of hits and misses.
 */
export type Law = "exact" | "t" | "logT" | "logitT" | "beta";

/** What a sampled figure was sampled from, so that more of it can be weighed up. */
export interface SampleSize {
  readonly unit: "vines" | "canes" | "clusters";
  readonly n: number;
  /** How many there are in all; Infinity when that does not matter. */
  readonly of: number;
}

/** One figure of the chain with its doubt. */
export interface Estimate {
  readonly source: SpreadSource;
  readonly value: number;
  /** Standard error in the figure's own unit; for "logT" and "logitT" carried over to the logarithm by the slope there. */
  readonly standardError: number;
  /** Degrees of freedom behind the standard error; Infinity when it is taken as known. */
  readonly degrees: number;
  readonly law: Law;
  /** Parameters of the law "beta". */
  readonly shape?: { readonly a: number; readonly b: number };
  readonly sample?: SampleSize;
}

/**
 * A figure without doubt: a register that lists every vine, a choice of the person.
 *
 * @example
 * exactly("missing", 0.95) // { source: "missing", value: 0.95, standardError: 0, degrees: Infinity, law: "exact" }
 */
export function exactly(source: SpreadSource, value: number): Estimate {
  mustLieBetween(source, value, 0, Infinity);
  return { source, value, standardError: 0, degrees: Infinity, law: "exact" };
}

/**
 * A ratio that differs from year to year and that nobody has measured this year: clusters a shoot before shoots grow,
 * cluster weight before harvest, the lag-phase multiplier.
 *
 * `value`: the middle (median) of the years. `spread`: standard deviation between years over the middle, 0 to 1.
 * `degrees`: degrees of freedom behind the spread; Infinity for a published one.
 *
 * @example
 * fromYears("clustersPerShoot", 2, 0.25).standardError // 0.5
 */
export function fromYears(source: SpreadSource, value: number, spread: number, degrees = Infinity): Estimate {
  mustLieBetween(source, value, Number.MIN_VALUE, 1e6);
  mustLieBetween("spread", spread, 0, 1);
  mustLieBetween("degrees", degrees, 1, Infinity);
  if (spread === 0) return exactly(source, value);
  return { source, value, standardError: spread * value, degrees, law: "logT" };
}

/**
 * Spread to expect of one year on one farm where a usual figure stands for the farm's own: that between years and that
 * between farms, independent of each other, held to `most`.
 *
 * @example
 * spreadOfUsual(0.3, 0.4, 1) // 0.5
 */
export function spreadOfUsual(yearSpread: number, farmSpread: number, most: number): number {
  return Math.min(most, Math.hypot(yearSpread, farmSpread));
}

/**
 * A share that differs from year to year, such as budbreak before it happened. The spread is that of the share itself;
 * the law keeps the share between 0 and 1.
 *
 * `value`: middle of the years, above 0 and below 1. `spread`: standard deviation between years, 0 to 0.5.
 *
 * @example
 * shareFromYears("budbreak", 0.85, 0.05).law // "logitT"
 * shareFromYears("budbreak", 1, 0) // { source: "budbreak", value: 1, standardError: 0, degrees: Infinity, law: "exact" }
 */
export function shareFromYears(
  source: SpreadSource,
  value: number,
  spread: number,
  degrees = Infinity,
): Estimate {
  mustLieBetween(source, value, 0, 1);
  mustLieBetween("spread", spread, 0, 0.5);
  mustLieBetween("degrees", degrees, 1, Infinity);
  if (spread === 0 || value === 0 || value === 1) return exactly(source, value);
  return { source, value, standardError: spread, degrees, law: "logitT" };
}

/**
 * A share from a count, such as budbreak on tagged nodes or missing vines in a sample of places. The law is the beta
 * distribution with half a hit and half a miss added (Jeffreys prior; Brown, Cai and DasGupta 2001, Statistical Science
 * 16:101-133), so that 20 of 20 is not taken for certainty.
 *
 * `hits` of `trials`: not negative, trials from 1; need not be whole.
 *
 * @example
 * shareFromCount("budbreak", 85, 100).standardError // 0.03569
 * shareFromCount("budbreak", 20, 20).value // 1
 */
export function shareFromCount(source: SpreadSource, hits: number, trials: number): Estimate {
  mustLieBetween("trials", trials, 1, 1e8);
  mustLieBetween("hits", hits, 0, trials);
  return betaEstimate(source, hits / trials, hits + 0.5, trials - hits + 0.5);
}

/**
 * A share whose doubt is a beta distribution with the given parameters; its most likely value is stated apart from it.
 *
 * @example
 * betaEstimate("buds", 0.5, 8, 8).standardError // 0.121268
 */
export function betaEstimate(source: SpreadSource, value: number, a: number, b: number): Estimate {
  const whole = a + b;
  return {
    source,
    value,
    standardError: Math.sqrt((a * b) / (whole * whole * (whole + 1))),
    degrees: Infinity,
    law: "beta",
    shape: { a, b },
  };
}

/**
 * Standard error over the middle of the law. A beta law has a middle above 0 even when no hit was counted, so that a
 * sample of dead buds only is not taken for certainty.
 *
 * @example
 * relativeSpread(fromYears("clusterWeight", 0.1, 0.2)) // 0.2
 * relativeSpread(shareFromCount("budbreak", 0, 9)) // 1.3143
 */
export function relativeSpread(estimate: Estimate): number {
  const centre = centreOf(estimate);
  return centre > 0 ? estimate.standardError / centre : 0;
}

/**
 * Middle of the law: the value, or the mean of a beta law.
 *
 * @example
 * centreOf(shareFromCount("budbreak", 0, 9)) // 0.05
 */
export function centreOf({ value, shape }: Estimate): number {
  return shape ? shape.a / (shape.a + shape.b) : value;
}
