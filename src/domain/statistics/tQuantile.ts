import { mustLieBetween } from "../refusal";
import { incompleteBeta } from "./incompleteBeta";
import { logGamma } from "./logGamma";
import { normalQuantile } from "./normalQuantile";

/**
 * Quantile of Student's t distribution: Newton steps on the distribution function, kept inside a bracket.
 *
 * `probability`: above 0 and below 1. `degrees`: degrees of freedom, above 0; need not be whole.
 *
 * @example
 * tQuantile(0.975, 9) // 2.262157
 * tQuantile(0.95, 4) // 2.131847
 * tQuantile(0.025, 9) // -2.262157
 */
export function tQuantile(probability: number, degrees: number): number {
  mustLieBetween("degrees", degrees, Number.MIN_VALUE, Infinity);
  const start = Math.abs(normalQuantile(probability));
  if (degrees > 1e9) return probability < 0.5 ? -start : start;
  const tail = Math.min(probability, 1 - probability);
  let low = start;
  let high = Math.max(2 * start, 1);
  while (upperTail(high, degrees) > tail) {
    low = high;
    high *= 2;
  }
  let t = low;
  for (let step = 0; step < 200; step++) {
    const excess = upperTail(t, degrees) - tail;
    if (excess > 0) low = t;
    else high = t;
    const newton = t + excess / density(t, degrees);
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - t) <= 1e-14 * t) break;
    t = next;
  }
  return probability < 0.5 ? -t : t;
}

const upperTail = (t: number, degrees: number) =>
  0.5 * incompleteBeta(degrees / (degrees + t * t), degrees / 2, 0.5);

const density = (t: number, degrees: number) =>
  Math.exp(
    logGamma((degrees + 1) / 2) -
      logGamma(degrees / 2) -
      0.5 * Math.log(degrees * Math.PI) -
      ((degrees + 1) / 2) * Math.log1p((t * t) / degrees),
  );
