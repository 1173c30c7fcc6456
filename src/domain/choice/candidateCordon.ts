import type { Metres } from "../units";
import type { YearOfGrowth } from "../plan/youngVine";
import type { Training } from "./trainingSystems";

/** What a crew writes down about live wood. */
export type Condition = "sound" | "injured" | "diseased" | "dead";

/** A person's own decision, which the choice is made around; "cane": it goes, but for a cane near the head that is laid. */
export type FixedChoice = "stays" | "goes" | "cane";

/** One cordon that could stay on a side of a vine. Whatever was not counted is left out, never set to zero. */
export interface CandidateCordon {
  /** Side of the vine: "left" and "right", "north" and "south", or "east" and "west". */
  readonly side: string;
  /** Letter of the candidate, unique on its vine. */
  readonly cordon: string;
  /** Number of the trunk that it comes from. */
  readonly trunk?: number;
  readonly length?: Metres;
  /** Places along the cordon where a spur should stand. */
  readonly positions?: number;
  readonly liveSpurs?: number;
  /** Longest stretch without a live spur, in positions. */
  readonly longestGap?: number;
  /** Positions between the head and the beginning of the longest gap; 0 when it begins at the head. */
  readonly gapFrom?: number;
  /** Canes near the head that could be laid: of last summer, thick enough and sound. */
  readonly canesNearHead?: number;
  /** How high the spurs have come to stand above the cordon. */
  readonly spurHeight?: Metres;
  readonly spursDown?: number;
  readonly spursLevel?: number;
  readonly spursUp?: number;
  /** Thickness halfway along the cordon. */
  readonly diameter?: Metres;
  readonly condition?: Condition;
  /** Condition of the trunk that it comes from. */
  readonly trunkCondition?: Condition;
  /** Summers that the trunk has stood since it was laid up. */
  readonly trunkAge?: number;
  readonly fixedChoice?: FixedChoice;
}

/** A vine with all that is known for choosing its permanent cordons. */
export interface VineToDecide {
  readonly candidates: readonly CandidateCordon[];
  /** Left out when the block's training system is not written down: then the placing of spurs says nothing. */
  readonly training?: Training;
  /** Length of wire that a cordon on one side has to fill. */
  readonly sideLength?: Metres;
  readonly status?: "bearing" | "young" | "missing" | "replanted";
  /** Year of growth that follows this winter, for a vine that is still being built up and whose year planted is known. */
  readonly yearOfGrowth?: YearOfGrowth;
  /** Trunks with live wood, also those that carry no candidate. */
  readonly liveTrunks?: number;
  /** Cells of its rows that are missing or cannot be true, as a person finds them; with one of them nothing is decided. */
  readonly recount?: readonly string[];
}

/**
 * True for a vine that is still being built up: by its year of growth or, where that is not known, by its status.
 *
 * @example
 * isYoung({ status: "replanted" }) // true
 */
export function isYoung({ status, yearOfGrowth }: Pick<VineToDecide, "status" | "yearOfGrowth">): boolean {
  return yearOfGrowth !== undefined || status === "young" || status === "replanted";
}

/** The side across the vine, where there is one. */
export const OPPOSITE_SIDE: Readonly<Record<string, string>> = {
  left: "right",
  right: "left",
  north: "south",
  south: "north",
  east: "west",
  west: "east",
};
