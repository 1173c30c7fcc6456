import { OPPOSITE_SIDE, type CandidateCordon } from "./candidateCordon";

const FIRST_SIDES = ["left", "north", "east"];

/** The candidates of one side. */
export interface VineSide<Member> {
  readonly side: string;
  readonly members: readonly Member[];
}

/**
 * The sides of a vine with the candidates of each, also a side that has none. Undefined when the sides do not fit
 * together: a side without a name, or left beside north.
 *
 * @param sidesWanted 1 puts every candidate on one side, for vines that are trained to a single cordon
 *
 * @example
 * vineSides([{ candidate: { side: "right" } }], 2).map(({ side, members }) => `${side} ${members.length}`) // ["left 0", "right 1"]
 */
export function vineSides<Member extends { readonly candidate: CandidateCordon }>(
  members: readonly Member[],
  sidesWanted: 1 | 2,
): readonly VineSide<Member>[] | undefined {
  if (members.length === 0) return [];
  const some = members[0].candidate.side;
  if (sidesWanted === 1) return [{ side: some, members }];
  const first = FIRST_SIDES.find((side) => some === side || some === OPPOSITE_SIDE[side]);
  if (first === undefined) return undefined;
  const second = OPPOSITE_SIDE[first];
  if (members.some(({ candidate: { side } }) => side !== first && side !== second)) return undefined;
  return [first, second].map((side) => ({
    side,
    members: members.filter(({ candidate }) => candidate.side === side),
  }));
}
