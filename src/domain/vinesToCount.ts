import { mustBeWhole, mustLieBetween } from "./refusal";
import { normalQuantile } from "./statistics/normalQuantile";
import { tQuantile } from "./statistics/tQuantile";

/** How many vines to count, and the steps towards it. */
export interface VinesToCount {
  /** The answer: fewest vines whose t interval stays within the margin, in the block of the given size. */
  readonly vines: number;
  /** The same as if the block were endless. */
  readonly vinesInEndlessBlock: number;
  /** The textbook's first step with the normal quantile, not rounded: (z cv / margin)^2. */
  readonly byNormal: number;
  /** That step corrected for the finite block, not rounded: n / (1 + n / N). */
  readonly byNormalInBlock: number;
}

/**
 * Fewest vines to count so that a block's mean is known to within a margin: smallest n with t(n-1) cv sqrt((1 - n/N)/n)
 * at or below the margin (Cochran 1977, Sampling Techniques, section 4.6, with Student's t in place of the normal). The
 * normal quantile alone asks for two to four vines too few.
 *
 * `cv`: spread between vines, standard deviation over mean, 0 to 5; from a pilot of the block, or 0.3 to 0.45 (from
 * 125 vines of Strickland 1932: 0.435). `margin`: share of the mean, 0.001 to 1. `vines`: bearing vines in the block;
 * leave out when it is large. `confidence`: 0.5 to 0.9999. Never fewer than two, unless the block is one
 * vine.
 *
 * A handbook's 260 of 800 vines "for 5 % error" (Washington State University 2006) is the sample for a share of 50 %,
 * not for a mean.
 *
 * @example
 * vinesToCount(0.321578, 0.1, Infinity, 0.95).vines // 43
 * vinesToCount(0.321578, 0.05, Infinity, 0.95) // { vines: 162, vinesInEndlessBlock: 162, byNormal: 158.9, byNormalInBlock: 158.9 }
 * vinesToCount(0.434896, 0.2, 125, 0.95).byNormalInBlock // 15.86
 */
export function vinesToCount(cv: number, margin: number, vines: number, confidence: number): VinesToCount {
  mustLieBetween("cv", cv, 0, 5);
  mustLieBetween("margin", margin, 0.001, 1);
  mustLieBetween("confidence", confidence, 0.5, 0.9999);
  if (vines !== Infinity) mustBeWhole("vines", vines, 1, 1e7);
  const probability = (1 + confidence) / 2;
  const byNormal = ((normalQuantile(probability) * cv) / margin) ** 2;
  const fewest = (block: number) => {
    const close = (n: number) =>
      tQuantile(probability, n - 1) * cv * Math.sqrt((1 - n / block) / n) <= margin;
    let n = Math.max(2, Math.floor(byNormal / (1 + byNormal / block)));
    while (n < block && !close(n)) n++;
    return Math.min(n, block);
  };
  return {
    vines: fewest(vines),
    vinesInEndlessBlock: fewest(Infinity),
    byNormal,
    byNormalInBlock: byNormal / (1 + byNormal / vines),
  };
}
