import type { Facts } from "../refusal";
import type { CordonScore } from "./cordonScore";

/** stays: the permanent cordon of its side. goes: cut. ask: someone must look at the vine. */
export type Verdict = "stays" | "goes" | "ask";

/** One thing that speaks for a cordon over another, strongest first where there are several. */
export interface Argument {
  readonly code: ArgumentCode;
  /** What it weighs in the comparison, more than zero. */
  readonly weight: number;
  readonly facts: Facts;
}

export type ArgumentCode =
  "spurs" | "stretch" | "placing" | "soundness" | "diameter" | "ownTrunk" | "trunkCondition";

export type ReasonCode =
  /* stays */
  | "better"
  | "onlyOne"
  | "fixedStays"
  | "fixedStaysDead"
  | "building"
  /* goes */
  | "worse"
  | "fixedGoes"
  | "fixedCane"
  | "besideFixed"
  | "dead"
  | "trunkDead"
  | "remnant"
  | "notWorthKeeping"
  /* ask */
  | "closeCall"
  | "closeToNewCane"
  | "missingCounts"
  | "recount"
  | "uncounted"
  | "sidesUnclear"
  | "vineMissing"
  | "namedTwice";

/** Why a cordon stays, goes or is asked about: data from which the sentence is made. */
export interface Reason {
  readonly code: ReasonCode;
  /** The cordon that it was weighed against. */
  readonly rival?: string;
  /** Arguments for this cordon over the rival, and for the rival over this cordon. */
  readonly mine: readonly Argument[];
  readonly theirs: readonly Argument[];
  readonly facts: Facts;
  /** Where both sides of a vine are asked about: the one question of the vine, the same for each of its cordons. */
  readonly question?: readonly QuestionSide[];
}

/** One side in a question: the cordon that would stay, and the rival or, without one, a new cane. */
export interface QuestionSide extends Pick<Reason, "rival" | "mine" | "theirs" | "facts"> {
  readonly side: string;
  readonly cordon: string;
}

/** The answer for one candidate. */
export interface CordonDecision {
  readonly side: string;
  readonly cordon: string;
  readonly verdict: Verdict;
  readonly score: CordonScore;
  readonly reason: Reason;
}

/** Where a new cane comes from: a numbered trunk, a live trunk that carries no candidate, a sucker, or the head. */
export type CaneOrigin = number | "otherTrunk" | "ground" | "head";

/** The answer for one side of a vine. */
export interface SideDecision {
  readonly side: string;
  /** Cordon that stays, or that would stay if the close call went its way. */
  readonly cordon?: string;
  /** True when a person must decide this side. */
  readonly ask: boolean;
  /** A side with nothing worth keeping: where to lay a cane from. */
  readonly layCaneFrom?: CaneOrigin;
  /** A side that is asked about: where a cane would come from, should the person who looks prefer one to the cordon. */
  readonly orLayFrom?: CaneOrigin;
}

/** Something that holds for the vine as a whole. */
export type VineNoteCode =
  | "oneTrunk"
  | "bothOnOneTrunk"
  | "everyTrunkHurt"
  | "noLiveTrunk"
  | "trainingMissing"
  | "leftOut"
  | "recount"
  | "uncounted"
  | "fixedTwice"
  | "sidesUnclear"
  | "vineMissing"
  | "vineYoung";

export interface VineNote {
  readonly code: VineNoteCode;
  readonly facts: Facts;
}

/** The answer for a vine. */
export interface VineDecision {
  /** One a candidate, in the order in which they were given. */
  readonly cordons: readonly CordonDecision[];
  readonly sides: readonly SideDecision[];
  readonly notes: readonly VineNote[];
  /** What the chosen plan is worth: scores of the sides, less what hurt trunks cost, plus what two trunks earn. */
  readonly worth: number;
  /** How far the best other plan lies below it; undefined when there is no other. */
  readonly lead?: number;
}
