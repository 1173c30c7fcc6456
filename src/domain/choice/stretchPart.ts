import type { CandidateCordon } from "./candidateCordon";
import type { ChoiceRules } from "./choiceRules";
import { liveSpursOf } from "./liveSpurs";
import { UNKNOWN_PART, type PartBounds } from "./partBounds";

/**
 * How little of the cordon is a stretch without a spur: 1 while no two places beside each other are empty, 0 when the
 * longest stretch reaches the setting. A single empty place is a missing spur and counts as that; it is no stretch.
 * Common practice: a bare stretch counts against a cordon for its whole life, because old wood seldom grows a new spur.
 *
 * Where the gap was not written down, positions and live spurs still bound it: the empty places are spread as evenly
 * as can be at best and lie in one stretch at worst.
 *
 * @example
 * stretchPart({ liveSpurs: 8, longestGap: 2 }, { longestStretch: 5 }) // {"low": 0.75, "high": 0.75}
 * stretchPart({ liveSpurs: 9, positions: 12 }, { longestStretch: 5 }) // {"low": 0.5, "high": 1}
 */
export function stretchPart(cordon: CandidateCordon, rules: Pick<ChoiceRules, "longestStretch">): PartBounds {
  const longest = rules.longestStretch;
  const part = (gap: number) =>
    gap >= longest ? 0 : Math.min(1, Math.max(0, 1 - Math.max(0, gap - 1) / Math.max(1, longest - 1)));
  const live = liveSpursOf(cordon);
  if (live === 0) return { low: 0, high: 0 };
  if (cordon.longestGap !== undefined) return { low: part(cordon.longestGap), high: part(cordon.longestGap) };
  if (live === undefined || cordon.positions === undefined) return UNKNOWN_PART;
  const empty = Math.max(0, cordon.positions - live);
  return { low: part(empty), high: part(Math.ceil(empty / (live + 1))) };
}
