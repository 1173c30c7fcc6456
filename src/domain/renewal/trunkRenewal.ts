import type { Condition } from "../choice/candidateCordon";
import type { DueTrunk } from "./dueTrunks";
import { mustBeWhole } from "../refusal";

/** What is known of a vine's trunks. */
export interface VineTrunks {
  /** Trunks with live wood. */
  readonly liveTrunks: number;
  /** Trunks whose condition was written down, by number. */
  readonly noted: readonly { readonly number: number; readonly condition: Condition }[];
  /** Trunks that are due by their age, none of them dead or hurt. */
  readonly due?: readonly DueTrunk[];
}

/** How soon a vine needs a new trunk, most urgent first. */
export const URGENCIES = [
  /** nothing above the ground lives */
  "noTrunk",
  /** all that lives is one trunk, and that is hurt */
  "lastTrunkHurt",
  "oneTrunk",
  /** several trunks, every one hurt */
  "everyTrunkHurt",
  "hurtTrunk",
  "belowWanted",
  /** enough trunks, and one that is renewed by plan */
  "trunkDue",
  "none",
] as const;
export type Urgency = (typeof URGENCIES)[number];

/** What is to be done about the trunks of one vine. */
export interface TrunkRenewal {
  /** Trunks to bring up from suckers: those that fail to the wanted number, and one for each that is hurt or due by its age. */
  readonly bringUp: number;
  /** Dead trunks to take out, by number. */
  readonly takeOut: readonly number[];
  /** Hurt trunks to replace once the new one stands, diseased before injured. */
  readonly replace: readonly number[];
  /** Trunks due by their age, oldest first; left out where there is none. */
  readonly due?: readonly DueTrunk[];
  readonly urgency: Urgency;
}

/**
 * The trunks to renew on a vine: live ones that are neither hurt nor due by their age against the number wanted. In cold climates a vine keeps at least
 * two trunks (common practice); Zabadal (MSU E-2774, 2002) has two as the norm and up to four for very tender cultivars.
 *
 * @param wanted trunks a vine should have
 * @throws Refusal "notWhole" or "outside" when a number of trunks is impossible
 * @example
 * trunkRenewal({ liveTrunks: 1, noted: [] }, 2) // {"bringUp": 1, "takeOut": [], "replace": [], "urgency": "oneTrunk"}
 * trunkRenewal({ liveTrunks: 2, noted: [{ number: 2, condition: "injured" }] }, 2).replace // [2]
 */
export function trunkRenewal({ liveTrunks, noted, due = [] }: VineTrunks, wanted: number): TrunkRenewal {
  mustBeWhole("live_trunks", liveTrunks, 0, 99);
  mustBeWhole("wanted", wanted, 1, 99);
  const hurt = [...noted.filter(is("diseased")), ...noted.filter(is("injured"))].slice(0, liveTrunks);
  const unhurt = liveTrunks - hurt.length;
  return {
    bringUp: Math.max(0, wanted - Math.max(0, unhurt - due.length)),
    takeOut: noted.filter(is("dead")).map(({ number }) => number),
    replace: hurt.slice(0, Math.max(0, wanted - unhurt)).map(({ number }) => number),
    ...(due.length > 0 ? { due } : {}),
    urgency: urgencyOf(liveTrunks, hurt.length, due.length, wanted),
  };
}

function is(wanted: Condition): (trunk: { readonly condition: Condition }) => boolean {
  return ({ condition }) => condition === wanted;
}

function urgencyOf(live: number, hurt: number, due: number, wanted: number): Urgency {
  if (live === 0) return "noTrunk";
  if (live === 1 && wanted > 1) return hurt === 1 ? "lastTrunkHurt" : "oneTrunk";
  if (hurt === live) return "everyTrunkHurt";
  if (live - hurt >= wanted) return due > 0 ? "trunkDue" : "none";
  return hurt > 0 ? "hurtTrunk" : "belowWanted";
}
