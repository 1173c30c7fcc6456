/**
 * A part of a score as far as the counts allow: between `low` and `high`, which are equal when it is known. A part
 * about which nothing is known lies between 0 and 1.
 */
export interface PartBounds {
  readonly low: number;
  readonly high: number;
}

/** Nothing was written down that says anything about the part. */
export const UNKNOWN_PART: PartBounds = { low: 0, high: 1 };

/**
 * A part that is known exactly, held between 0 and 1.
 *
 * @example
 * knownPart(1.2) // {"low": 1, "high": 1}
 */
export function knownPart(value: number): PartBounds {
  const held = Math.min(1, Math.max(0, value));
  return { low: held, high: held };
}

/**
 * True when both bounds are the same.
 *
 * @example
 * isKnown({ low: 0.4, high: 0.8 }) // false
 */
export function isKnown(part: PartBounds): boolean {
  return part.low === part.high;
}
