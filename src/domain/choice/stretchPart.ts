import type { CandidateCordon } from "./candidateCordon";
import type { ChoiceRules } from "./choiceRules";
import { liveSpursOf } from "./liveSpurs";
import { UNKNOWN_PART, type PartBounds } from "./partBounds";

/**
 * How little of the cordon is a stretch without a spur: 1 without a gap, 0 when the longest one reaches the setting.
 * Common practice: a bare stretch counts against a cordon for its whole life, because old wood seldom grows a new spur.
 *
 * Where the gap was not written down, positions and live spurs still bound it: the empty places are spread as evenly
 * as can be at best and lie in one stretch at worst.
 *
 * @example
 * stretchPart({ liveSpurs: 8, longestGap: 2 }, { longestStretch: 5 }) // {"low": 0.6, "high": 0.6}
 * stretchPart({ liveSpurs: 9, positions: 12 }, { longestStretch: 5 }) // {"low": 0.4, "high": 0.8}
 */
export function stretchPart(cordon: CandidateCordon, rules: Pick<ChoiceRules, "longestStretch">): PartBounds {
  const part = (gap: number) => Math.min(1, Math.max(0, 1 - gap / rules.longestStretch));
  const live = liveSpursOf(cordon);
  if (live === 0) return { low: 0, high: 0 };
  if (cordon.longestGap !== undefined) return { low: part(cordon.longestGap), high: part(cordon.longestGap) };
  if (live === undefined || cordon.positions === undefined) return UNKNOWN_PART;
  const empty = Math.max(0, cordon.positions - live);
  return { low: part(empty), high: part(Math.ceil(empty / (live + 1))) };
}
