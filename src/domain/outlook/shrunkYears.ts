import { mustLieBetween } from "../refusal";

/** A figure of the farm's own, drawn towards the published one. */
export interface ShrunkYears {
  readonly value: number;
  /** Spread to expect of a coming year around it, in the unit of `usualSpread`. */
  readonly spread: number;
  /** Degrees of freedom behind the spread. */
  readonly degrees: number;
  /** Weight of the farm's own years against the published value, 0 to 1. */
  readonly weight: number;
  /** Years used. */
  readonly years: number;
}

/** What is known before the farm's own years are looked at. */
export interface UsualFigure {
  readonly value: number;
  /** Spread between years on one farm: relative for a ratio, in points for a share. */
  readonly yearSpread: number;
  /** Spread between farms around the published value, in the same unit. */
  readonly farmSpread: number;
}

/**
 * A ratio of the farm's own (clusters a shoot, cluster weight, lag-phase multiplier) from its harvests, drawn towards the
 * published value while years are few: the mean of a normal distribution with a normal prior, on the logarithm (Gelman et
 * al. 2013, Bayesian Data Analysis, section 2.5). Weight of the farm's k years: k f2 / (k f2 + s2), with f the spread between
 * farms and s the spread between years; s itself is the usual one counted as four years together with what the farm's
 * years show (four is ours). With no year the published value stands.
 *
 * `years`: one figure a year, above 0. `usual`: published or set value, with its spreads, relative, 0.001 to 1.
 *
 * @example
 * shrunkRatio([], { value: 1.9, yearSpread: 0.25, farmSpread: 0.25 }).value // 1.9
 * shrunkRatio([2.4], { value: 1.9, yearSpread: 0.25, farmSpread: 0.25 }).weight // 0.5
 * shrunkRatio([2.4], { value: 1.9, yearSpread: 0.25, farmSpread: 0.25 }).value // 2.13542
 */
export function shrunkRatio(years: readonly number[], usual: UsualFigure): ShrunkYears {
  mustLieBetween("usual", usual.value, Number.MIN_VALUE, 1e6);
  for (const year of years) mustLieBetween("years", year, Number.MIN_VALUE, 1e6);
  const { mean, spread, ...rest } = shrunk(years.map(Math.log), Math.log(usual.value), usual);
  return { value: Math.exp(mean), spread, ...rest };
}

/**
 * The same for a share such as budbreak, on log(x / (1 - x)), so that it stays between 0 and 1. Years with all or nothing are
 * taken as half a point from it.
 *
 * `years`: shares from 0 to 1. `usual`: spreads in points of the share.
 *
 * @example
 * shrunkShare([0.75, 0.78, 0.74], { value: 0.85, yearSpread: 0.06, farmSpread: 0.06 }).value // 0.777
 */
export function shrunkShare(years: readonly number[], usual: UsualFigure): ShrunkYears {
  mustLieBetween("usual", usual.value, 0.005, 0.995);
  for (const year of years) mustLieBetween("years", year, 0, 1);
  const logit = (share: number) => {
    const inside = Math.min(0.995, Math.max(0.005, share));
    return Math.log(inside / (1 - inside));
  };
  const slope = usual.value * (1 - usual.value);
  const { mean, spread, ...rest } = shrunk(years.map(logit), logit(usual.value), {
    yearSpread: usual.yearSpread / slope,
    farmSpread: usual.farmSpread / slope,
  });
  const value = 1 / (1 + Math.exp(-mean));
  return { value, spread: spread * value * (1 - value), ...rest };
}

const YEARS_BEHIND_THE_USUAL_SPREAD = 4;

function shrunk(
  years: readonly number[],
  usual: number,
  { yearSpread, farmSpread }: { yearSpread: number; farmSpread: number },
) {
  mustLieBetween("year_spread", yearSpread, 0.001, 10);
  mustLieBetween("farm_spread", farmSpread, 0.001, 10);
  const k = years.length;
  const own = k > 0 ? years.reduce((sum, year) => sum + year, 0) / k : usual;
  const squares = years.reduce((sum, year) => sum + (year - own) ** 2, 0);
  const degrees = YEARS_BEHIND_THE_USUAL_SPREAD + Math.max(0, k - 1);
  const between = (YEARS_BEHIND_THE_USUAL_SPREAD * yearSpread ** 2 + squares) / degrees;
  const weight = (k * farmSpread ** 2) / (k * farmSpread ** 2 + between);
  const left = farmSpread ** 2 * (1 - weight);
  return {
    mean: weight * own + (1 - weight) * usual,
    spread: Math.sqrt(between + left),
    degrees,
    weight,
    years: k,
  };
}
