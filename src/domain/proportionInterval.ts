import { mustBeWhole, mustLieBetween } from "./refusal";
import { betaQuantile } from "./statistics/betaQuantile";
import { normalQuantile } from "./statistics/normalQuantile";

/** A share with the range that holds it at the stated confidence. */
export interface ShareInterval {
  readonly share: number;
  readonly low: number;
  readonly high: number;
}

/** The two ways of putting a range around a share. */
export type IntervalMethod = "Wilson" | "Clopper-Pearson";

export const INTERVAL_METHODS: readonly IntervalMethod[] = ["Wilson", "Clopper-Pearson"];

/**
 * Wilson score interval of a share (Wilson 1927, Journal of the American Statistical Association 22:209-212): holds the
 * true share about as often as it says, also near 0 and 1. No continuity correction.
 *
 * `hits` of `trials`: whole numbers, trials from 1. `confidence`: 0.5 to 0.9999.
 *
 * @example
 * wilsonInterval(15, 148, 0.95) // { share: 0.101351, low: 0.062386, high: 0.160487 }
 */
export function wilsonInterval(hits: number, trials: number, confidence: number): ShareInterval {
  mustBeSample(hits, trials, confidence);
  const z = normalQuantile((1 + confidence) / 2);
  const p = hits / trials;
  const middle = p + (z * z) / (2 * trials);
  const half = z * Math.sqrt((p * (1 - p)) / trials + (z * z) / (4 * trials * trials));
  const whole = 1 + (z * z) / trials;
  return {
    share: p,
    low: hits === 0 ? 0 : (middle - half) / whole,
    high: hits === trials ? 1 : (middle + half) / whole,
  };
}

/**
 * Clopper-Pearson interval of a share (Clopper and Pearson 1934, Biometrika 26:404-413): never holds the true share less
 * often than it says, and is wider for that.
 *
 * `hits` of `trials`: whole numbers, trials from 1. `confidence`: 0.5 to 0.9999.
 *
 * @example
 * clopperPearsonInterval(15, 148, 0.95) // { share: 0.101351, low: 0.057844, high: 0.16165 }
 */
export function clopperPearsonInterval(hits: number, trials: number, confidence: number): ShareInterval {
  mustBeSample(hits, trials, confidence);
  const tail = (1 - confidence) / 2;
  return {
    share: hits / trials,
    low: hits === 0 ? 0 : betaQuantile(tail, hits, trials - hits + 1),
    high: hits === trials ? 1 : betaQuantile(1 - tail, hits + 1, trials - hits),
  };
}

function mustBeSample(hits: number, trials: number, confidence: number): void {
  mustBeWhole("trials", trials, 1, 1e8);
  mustBeWhole("hits", hits, 0, trials);
  mustLieBetween("confidence", confidence, 0.5, 0.9999);
}
