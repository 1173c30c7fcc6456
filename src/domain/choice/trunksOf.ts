import type { Condition, VineToDecide } from "./candidateCordon";
import { graver } from "./trunkWorth";

/** One trunk as far as its cordons tell. */
export interface Trunk {
  readonly number: number;
  readonly condition: Condition | undefined;
  /** Nothing says that it is dead: neither a note on it nor that every cordon on it is dead. */
  readonly live: boolean;
}

/**
 * The numbered trunks of a vine, lowest number first; where two rows note one trunk differently the graver holds.
 *
 * @example
 * trunksOf({ candidates: [{ trunk: 2, trunkCondition: "dead" }, { trunk: 1 }] }).map((trunk) => trunk.live) // [true, false]
 */
export function trunksOf(vine: VineToDecide): Trunk[] {
  const seen: { number: number; condition: Condition | undefined; anyLiveCordon: boolean }[] = [];
  for (const { trunk, condition, trunkCondition } of vine.candidates) {
    if (trunk === undefined) continue;
    let known = seen.find(({ number }) => number === trunk);
    if (!known) seen.push((known = { number: trunk, condition: undefined, anyLiveCordon: false }));
    known.condition = graver(known.condition, trunkCondition);
    known.anyLiveCordon ||= condition !== "dead";
  }
  return seen
    .map(({ number, condition, anyLiveCordon }) => ({
      number,
      condition,
      live: condition === undefined ? anyLiveCordon : condition !== "dead",
    }))
    .sort((first, second) => first.number - second.number);
}
