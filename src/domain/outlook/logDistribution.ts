import { centreOf, relativeSpread, type Estimate } from "./estimate";
import { betaQuantile } from "../statistics/betaQuantile";
import { incompleteBeta } from "../statistics/incompleteBeta";
import { tQuantile } from "../statistics/tQuantile";

/** A distribution of the logarithm of a positive figure: masses on evenly spaced points. */
export interface LogDistribution {
  /** Logarithm at the first mass. */
  readonly first: number;
  readonly step: number;
  readonly masses: Float64Array;
}

/**
 * The distribution of an estimate's logarithm on a grid of the given step, by its law. Values at or below 0 are left
 * out, since no crop is negative. A law much narrower than the step becomes three masses with its variance.
 *
 * @example
 * logDistribution({ source: "vines", value: 1, standardError: 0.1, degrees: Infinity, law: "logT" }, 0.05).masses.reduce((sum, mass) => sum + mass) // 1
 */
export function logDistribution(estimate: Estimate, step: number): LogDistribution {
  const relative = relativeSpread(estimate);
  const middle = Math.log(centreOf(estimate));
  if (!(relative > 0)) return { first: middle, step, masses: Float64Array.of(1) };
  if (relative < 0.7 * step) {
    const side = (relative * relative) / (2 * step * step);
    return { first: middle - step, step, masses: Float64Array.of(side, 1 - 2 * side, side) };
  }
  if (estimate.shape) return betaDistribution(estimate.shape, step);
  const reach = Math.ceil((relative * standardErrorsHeld(estimate)) / step);
  const density = densityOfLogarithm(estimate);
  const densities = new Float64Array(2 * reach + 1).map((_, at) => density(middle + (at - reach) * step));
  const total = densities.reduce((sum, one) => sum + one);
  return { first: middle - reach * step, step, masses: densities.map((one) => one / total) };
}

/**
 * The distribution of a product of two independent figures: the sum of their logarithms.
 *
 * @example
 * Array.from(product({ first: 0, step: 1, masses: Float64Array.of(0.5, 0.5) }, { first: 1, step: 1, masses: Float64Array.of(0.5, 0.5) }).masses) // [0.25, 0.5, 0.25]
 */
export function product(one: LogDistribution, other: LogDistribution): LogDistribution {
  const masses = new Float64Array(one.masses.length + other.masses.length - 1);
  for (let at = 0; at < other.masses.length; at++) {
    const weight = other.masses[at];
    for (let index = 0; index < one.masses.length; index++) masses[at + index] += weight * one.masses[index];
  }
  return trimmed({ first: one.first + other.first, step: one.step, masses });
}

/**
 * The distribution of a figure to which a known amount is added: each mass moves to log(x + amount), shared between the
 * two nearest points.
 *
 * @example
 * quantile(plus({ first: 0, step: 0.01, masses: Float64Array.of(1) }, 1), 0.5) // 2
 */
export function plus(distribution: LogDistribution, amount: number): LogDistribution {
  if (amount === 0) return distribution;
  const { first, step, masses } = distribution;
  const moved = (index: number) => Math.log(Math.exp(first + index * step) + amount);
  const start = moved(0);
  if (masses.length === 1) return { first: start, step, masses };
  const result = new Float64Array(Math.ceil((moved(masses.length - 1) - start) / step) + 2);
  for (let index = 0; index < masses.length; index++) {
    const place = (moved(index) - start) / step;
    const below = Math.floor(place);
    result[below] += masses[index] * (1 - (place - below));
    result[below + 1] += masses[index] * (place - below);
  }
  return { first: start, step, masses: result };
}

/**
 * The figure below which the given share of the distribution lies. The masses are read as values of a smooth density:
 * the sum up to a cell's edge is corrected by Euler and Maclaurin's first term, and the density is taken as straight
 * within a cell, which leaves an error far below the step.
 *
 * @example
 * quantile({ first: 0, step: 0.1, masses: Float64Array.of(0.25, 0.5, 0.25) }, 0.5) // 1.10517
 */
export function quantile({ first, step, masses }: LogDistribution, probability: number): number {
  if (masses.length === 1) return Math.exp(first);
  const mass = (index: number) => masses[index] ?? 0;
  const edgeAfter = (index: number, sum: number) => sum + (mass(index + 1) - mass(index)) / 24;
  let index = 0;
  let sum = masses[0];
  let left = 0;
  while (index < masses.length - 1 && edgeAfter(index, sum) < probability) {
    left = edgeAfter(index, sum);
    index++;
    sum += masses[index];
  }
  const place = within(left, edgeAfter(index, sum), probability, mass(index + 1) - mass(index - 1));
  return Math.exp(first + step * (index + place));
}

/**
 * Place within a cell, -0.5 to 0.5, where the distribution function passes the probability: the root of a square, written
 * so that a slope of nothing divides by nothing.
 */
function within(left: number, right: number, probability: number, twiceSlope: number): number {
  const level = right - left;
  const slope = Math.max(-2 * level, Math.min(2 * level, twiceSlope / 2));
  const beyond = left + level / 2 - slope / 8 - probability;
  const root = Math.sqrt(Math.max(0, level * level - 2 * slope * beyond));
  return Math.min(0.5, (-2 * beyond) / (level + root));
}

const NEGLIGIBLE = 1e-15;

function trimmed({ first, step, masses }: LogDistribution): LogDistribution {
  let start = 0;
  let end = masses.length;
  while (masses[start] < NEGLIGIBLE) start++;
  while (masses[end - 1] < NEGLIGIBLE) end--;
  return { first: first + start * step, step, masses: masses.subarray(start, end) };
}

/** How many standard errors on either side hold all but a hundred-thousandth; at most 60 for the heaviest tails. */
const standardErrorsHeld = ({ degrees }: Estimate) => Math.min(60, Math.max(8, tQuantile(1 - 1e-5, degrees)));

/** Masses from the distribution function, because the density may be endless at 1. */
function betaDistribution({ a, b }: { a: number; b: number }, step: number): LogDistribution {
  const low = Math.log(betaQuantile(1e-7, a, b));
  const steps = Math.ceil(-low / step);
  const first = -steps * step;
  const upTo = new Float64Array(steps + 1).map((_, index) =>
    incompleteBeta(Math.exp(first + (index + 0.5) * step), a, b),
  );
  return trimmed({ first, step, masses: upTo.map((here, index) => here - (upTo[index - 1] ?? 0)) });
}

/** Density of the logarithm, up to a constant factor. */
function densityOfLogarithm({ value, standardError, degrees, law }: Estimate): (logarithm: number) => number {
  const t = (score: number) =>
    degrees === Infinity
      ? Math.exp((-score * score) / 2)
      : Math.exp((-(degrees + 1) / 2) * Math.log1p((score * score) / degrees));
  switch (law) {
    case "logT": {
      const relative = standardError / value;
      return (x) => t((x - Math.log(value)) / relative);
    }
    case "logitT": {
      const spread = standardError / (value * (1 - value));
      const middle = Math.log(value / (1 - value));
      return (x) => {
        const rest = -Math.expm1(x);
        return rest > 0 ? t((x - Math.log(rest) - middle) / spread) / rest : 0;
      };
    }
    default:
      return (x) => t((Math.exp(x) - value) / standardError) * Math.exp(x);
  }
}
