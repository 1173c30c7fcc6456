import { OPPOSITE_SIDE, type CandidateCordon } from "./candidateCordon";

const FIRST_SIDES = ["left", "north", "east"];

/** Candidates of one side. */
export interface VineSide {
  readonly side: string;
  readonly candidates: readonly CandidateCordon[];
}

/**
 * The sides of a vine with the candidates of each, also a side that has none. Undefined when the sides do not fit
 * together: a side without a name, or left beside north.
 *
 * @param sidesWanted 1 puts every candidate on one side, for vines that are trained to a single cordon
 * @example
 * vineSides([{ side: "right", cordon: "A" }], 2).map(({ side, candidates }) => `${side} ${candidates.length}`) // ["left 0", "right 1"]
 */
export function vineSides(
  candidates: readonly CandidateCordon[],
  sidesWanted: 1 | 2,
): readonly VineSide[] | undefined {
  if (candidates.length === 0) return [];
  if (sidesWanted === 1) return [{ side: candidates[0].side, candidates }];
  const first = FIRST_SIDES.find(
    (side) => candidates[0].side === side || candidates[0].side === OPPOSITE_SIDE[side],
  );
  if (first === undefined) return undefined;
  const second = OPPOSITE_SIDE[first];
  if (candidates.some(({ side }) => side !== first && side !== second)) return undefined;
  return [first, second].map((side) => ({
    side,
    candidates: candidates.filter((candidate) => candidate.side === side),
  }));
}
