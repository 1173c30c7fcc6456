import type { CandidateCordon } from "./candidateCordon";
import type { ChoiceRules } from "./choiceRules";
import { liveSpursOf } from "./liveSpurs";
import type { PartBounds } from "./partBounds";
import { placesOn } from "./placesOn";

/**
 * What a cordon can be worth at most beside a new cane. One on which a single stretch without a spur takes the share of
 * places from which a cordon is renewed is worth no more than a new cane, and less by the share that is empty besides.
 * A stretch that is known to begin beyond a living spur is no such limit, where the rest is full enough: a cane from that
 * spur is laid over it (common practice).
 * Skinkis (Oregon State) renews a cordon for dead areas and too few spurs without a figure; the share is the farm's own.
 *
 * @returns the limit as far as the counts tell; without one both are Infinity
 * @example
 * worthWithDeadStretch({ positions: 9, liveSpurs: 6, longestGap: 3 }, { newCane: 0.5, renewingShare: 0.33 }) // {"low": 0.5, "high": 0.5}
 * worthWithDeadStretch({ positions: 9, liveSpurs: 6, longestGap: 3, gapFrom: 2 }, { newCane: 0.5, renewingShare: 0.33 }).low // Infinity
 * worthWithDeadStretch({ positions: 10, liveSpurs: 4, longestGap: 5 }, { newCane: 0.5, renewingShare: 0.33 }) // {"low": 0.4, "high": 0.4}
 */
export function worthWithDeadStretch(
  cordon: CandidateCordon,
  { newCane, renewingShare, spurSpacing }: Pick<ChoiceRules, "newCane" | "renewingShare" | "spurSpacing">,
): PartBounds {
  const places = placesOn(cordon, spurSpacing);
  if (!places) return { low: Infinity, high: Infinity };
  const live = liveSpursOf(cordon);
  const empty = live === undefined ? undefined : Math.max(0, places - live);
  if (canBeLaidOver(cordon, places, empty, renewingShare)) return { low: Infinity, high: Infinity };
  const least = cordon.longestGap ?? (empty === undefined ? 0 : Math.ceil(empty / (live! + 1)));
  const most = cordon.longestGap ?? empty ?? 0;
  const limit = (gap: number) =>
    gap / places >= renewingShare ? newCane - Math.max(0, ((empty ?? gap) - gap) / places) : Infinity;
  return { low: Math.min(limit(least), limit(most)), high: Math.max(limit(least), limit(most)) };
}

/**
 * True where a dead stretch has living wood between it and the head, and too little besides it is empty to renew the
 * cordon for.
 *
 * @example
 * canBeLaidOver({ longestGap: 4, gapFrom: 3 }, 10, 4, 0.33) // true
 */
export function canBeLaidOver(
  {
    gapFrom,
    longestGap,
  }: { readonly gapFrom?: number | undefined; readonly longestGap?: number | undefined },
  places: number,
  empty: number | undefined,
  renewingShare: number,
): boolean {
  if (gapFrom === undefined || longestGap === undefined) return false;
  return gapFrom > 0 && ((empty ?? longestGap) - longestGap) / places < renewingShare;
}
