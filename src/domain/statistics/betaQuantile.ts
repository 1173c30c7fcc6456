import { mustLieBetween } from "../refusal";
import { incompleteBeta } from "./incompleteBeta";

/**
 * Quantile of the beta distribution, by halving the interval in which it must lie until no number is left between.
 * Needed for Clopper-Pearson limits.
 *
 * `probability`: 0 to 1. `a`, `b`: above 0.
 *
 * @example
 * betaQuantile(0.025, 15, 134) // 0.057844
 * betaQuantile(0.975, 16, 133) // 0.16165
 */
export function betaQuantile(probability: number, a: number, b: number): number {
  mustLieBetween("probability", probability, 0, 1);
  mustLieBetween("a", a, Number.MIN_VALUE, 1e9);
  mustLieBetween("b", b, Number.MIN_VALUE, 1e9);
  if (probability === 1) return 1;
  let low = 0;
  let high = 1;
  for (;;) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) return middle;
    if (incompleteBeta(middle, a, b) < probability) low = middle;
    else high = middle;
  }
}
