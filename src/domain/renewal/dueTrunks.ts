import type { VineToDecide } from "../choice/candidateCordon";
import { trunksOf } from "../choice/trunksOf";

/** A trunk that has stood so long that it is renewed by plan. */
export interface DueTrunk {
  readonly trunk: number;
  /** Summers that it has stood. */
  readonly age: number;
  /** Enough younger trunks stand on the vine, so that none need be brought up in its place. */
  readonly renewalStands?: true;
}

/** Trunks of one vine by their age. */
export interface TrunksByAge {
  /** Due this winter, oldest first. */
  readonly due: readonly DueTrunk[];
  /** Due next winter. */
  readonly next: readonly DueTrunk[];
  /** Live trunks whose year was not written down. */
  readonly withoutYear: number;
}

/**
 * Trunks to renew by plan: even under the best conditions a trunk is replaced every 10 to 12 years (Zabadal, MSU E-2774,
 * 2002), and it goes when its renewal is 2 to 3 years old (Missouri State, Trunk cold injury), so that a renewal kept from
 * the tenth year on stands in the twelfth. A dead or hurt trunk is not among them: its condition asks for a new one before
 * its age does. A trunk of which nobody wrote the year is not judged.
 *
 * @param renewalAge age from which on a trunk is due, in years
 * @param wanted trunks a vine should have
 * @example
 * dueTrunks({ candidates: [{ trunk: 1, trunkAge: 10 }, { trunk: 2, trunkAge: 9 }, { trunk: 3 }] }, 10, 3) // {"due": [{"trunk": 1, "age": 10}], "next": [{"trunk": 2, "age": 9}], "withoutYear": 1}
 */
export function dueTrunks(
  vine: Pick<VineToDecide, "candidates" | "liveTrunks">,
  renewalAge: number,
  wanted: number,
): TrunksByAge {
  const live = trunksOf(vine).filter((trunk) => trunk.live);
  const standing = live.filter(({ condition }) => condition !== "injured" && condition !== "diseased");
  const aged = standing.flatMap(({ number, age }): DueTrunk[] =>
    age === undefined ? [] : [{ trunk: number, age }],
  );
  const due = aged.filter(({ age }) => age >= renewalAge).sort((one, other) => other.age - one.age);
  const hurt = live.length - standing.length;
  const younger = Math.max(0, (vine.liveTrunks ?? live.length) - hurt - due.length);
  const replaced = due.length - Math.max(0, wanted - younger);
  return {
    due: due.map((trunk, at) => (at < replaced ? { ...trunk, renewalStands: true } : trunk)),
    next: aged.filter(({ age }) => age < renewalAge && age + 1 >= renewalAge),
    withoutYear: standing.length - aged.length,
  };
}
