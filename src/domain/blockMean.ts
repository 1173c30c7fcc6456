import { mustBeWhole, mustLieBetween, Refusal } from "./refusal";
import { tQuantile } from "./statistics/tQuantile";

/** A block's mean from a sample of vines, and how well it is known. */
export interface BlockMean {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
  /** Vines counted. */
  readonly n: number;
  /** Standard deviation between vines, divisor n - 1. */
  readonly sd: number;
  /** Standard error of the mean, with the finite block taken into account. */
  readonly standardError: number;
  /** Coefficient of variation between vines, sd / mean; undefined when the mean is 0. */
  readonly cv: number | undefined;
}

/**
 * Mean of a block from counts on a random sample of its vines, with Student's t interval. When the number of vines in
 * the block is given, the standard error shrinks by the square root of the share not counted, 1 - n/N (Cochran 1977,
 * Sampling Techniques, section 2.6): with every vine counted nothing is left to doubt.
 *
 * `counts`: one number a vine, finite. `vines`: bearing vines in the block, at least as many as counted; leave out when
 * the block is large. `confidence`: 0.5 to 0.9999. The low end does not go below 0 when no count does.
 *
 * Refuses (tooFewVines) fewer than two counts.
 *
 * @example
 * blockMean([40, 50, 60], Infinity, 0.95).mean // 50
 * blockMean([40, 50, 60], Infinity, 0.95).high // 74.841
 * blockMean([40, 50, 60], 3, 0.95) // { mean: 50, low: 50, high: 50, n: 3, sd: 10, standardError: 0, cv: 0.2 }
 * blockMean([40], Infinity, 0.95) // Refusal tooFewVines
 */
export function blockMean(counts: readonly number[], vines: number, confidence: number): BlockMean {
  const n = counts.length;
  mustLieBetween("confidence", confidence, 0.5, 0.9999);
  if (n < 2) throw new Refusal("notAvailable", "tooFewVines", { argument: "counts", value: n, needed: 2 });
  if (vines !== Infinity) mustBeWhole("vines", vines, n, 1e7);
  let sum = 0;
  let least = Infinity;
  for (const count of counts) {
    mustLieBetween("counts", count, -1e9, 1e9);
    sum += count;
    if (count < least) least = count;
  }
  const mean = sum / n;
  let squares = 0;
  for (const count of counts) squares += (count - mean) ** 2;
  const sd = Math.sqrt(squares / (n - 1));
  const standardError = sd * Math.sqrt((1 - n / vines) / n);
  const half = standardError * tQuantile((1 + confidence) / 2, n - 1);
  return {
    mean,
    low: least >= 0 ? Math.max(0, mean - half) : mean - half,
    high: mean + half,
    n,
    sd,
    standardError,
    cv: mean === 0 ? undefined : sd / mean,
  };
}
