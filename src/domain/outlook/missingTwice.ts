import { mustLieBetween } from "../refusal";

/** A crop wrongly and rightly corrected for missing vines, as a share of the crop of a full block. */
export interface MissingTwice {
  readonly right: number;
  readonly wrong: number;
  /** Share by which the wrong figure falls short of the right one. */
  readonly short: number;
}

/**
 * What happens when missing vines are counted as vines with no clusters and the mean is then corrected for missing vines
 * again: the block loses them twice, and the crop comes out short by the missing share once more. Count bearing vines only
 * and take missing vines from the register (Oger, Laurent, Vismara and Tisseyre, OENO One 2023, who find the error of one
 * sample for both about doubled).
 *
 * `missingShare`: 0 to 1.
 *
 * @example
 * missingTwice(0.2) // { right: 0.8, wrong: 0.64, short: 0.2 }
 */
export function missingTwice(missingShare: number): MissingTwice {
  mustLieBetween("missing_share", missingShare, 0, 1);
  const right = 1 - missingShare;
  return { right, wrong: right * right, short: missingShare };
}
