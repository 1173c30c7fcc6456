import type { CandidateCordon } from "./candidateCordon";

/**
 * Live spurs of a cordon: as counted, else the sum of those whose direction was counted.
 *
 * @example
 * liveSpursOf({ spursDown: 5, spursLevel: 2, spursUp: 1 }) // 8
 */
export function liveSpursOf(cordon: CandidateCordon): number | undefined {
  if (cordon.liveSpurs !== undefined) return cordon.liveSpurs;
  const { spursDown, spursLevel, spursUp } = cordon;
  return spursDown === undefined || spursLevel === undefined || spursUp === undefined
    ? undefined
    : spursDown + spursLevel + spursUp;
}
