import type { Condition, VineToDecide } from "./candidateCordon";
import { graver } from "./trunkWorth";

/** One trunk as far as its cordons tell. */
export interface Trunk {
  readonly number: number;
  readonly condition: Condition | undefined;
  /** Nothing says that it is dead: neither a note on it nor that every cordon on it is dead. */
  readonly live: boolean;
  /** Canes near the head were counted on each of its living cordons, and none stands there. */
  readonly noCane?: true;
  /** Summers that it has stood, where its year was written down. */
  readonly age?: number;
}

/**
 * The numbered trunks of a vine, lowest number first; where two rows note one trunk differently the graver condition
 * and the greater age hold.
 *
 * @example
 * trunksOf({ candidates: [{ trunk: 2, trunkCondition: "dead" }, { trunk: 1 }] }).map((trunk) => trunk.live) // [true, false]
 */
export function trunksOf(vine: Pick<VineToDecide, "candidates">): Trunk[] {
  const seen: {
    number: number;
    condition: Condition | undefined;
    anyLiveCordon: boolean;
    mayHaveCane: boolean;
    age: number | undefined;
  }[] = [];
  for (const { trunk, condition, trunkCondition, canesNearHead, trunkAge } of vine.candidates) {
    if (trunk === undefined) continue;
    let known = seen.find(({ number }) => number === trunk);
    if (!known)
      seen.push(
        (known = {
          number: trunk,
          condition: undefined,
          anyLiveCordon: false,
          mayHaveCane: false,
          age: undefined,
        }),
      );
    if (trunkAge !== undefined) known.age = Math.max(known.age ?? 0, trunkAge);
    known.condition = graver(known.condition, trunkCondition);
    known.anyLiveCordon ||= condition !== "dead";
    known.mayHaveCane ||= condition !== "dead" && canesNearHead !== 0;
  }
  return seen
    .map(({ number, condition, anyLiveCordon, mayHaveCane, age }) => ({
      number,
      condition,
      live: condition === undefined ? anyLiveCordon : condition !== "dead",
      ...(anyLiveCordon && !mayHaveCane ? { noCane: true as const } : {}),
      ...(age === undefined ? {} : { age }),
    }))
    .sort((first, second) => first.number - second.number);
}
