import { mustLieBetween } from "../refusal";
import { incompleteBeta } from "./incompleteBeta";
import { logGamma } from "./logGamma";
import { normalQuantile } from "./normalQuantile";

/**
 * Quantile of Student's t distribution: Newton steps on the upper tail, from the normal quantile outwards. The tail falls and
 * flattens, so no step passes the quantile, and the first that no longer leads outwards ends them.
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
  const normal = normalQuantile(probability);
  if (degrees > 1e9) return normal;
  const tail = Math.min(probability, 1 - probability);
  let t = Math.abs(normal);
  for (;;) {
    const step = (upperTail(t, degrees) - tail) / density(t, degrees);
    t += step;
    if (!(step > 1e-14 * t)) return probability < 0.5 ? -t : t;
  }
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
