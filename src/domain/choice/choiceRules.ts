import type { Metres } from "../units";
import type { SpurWorth, Training } from "./trainingSystems";

/** The parts of a cordon score, each between 0 and 1. */
export const SCORE_PARTS = ["spurs", "stretch", "placing", "soundness", "diameter"] as const;
export type ScorePart = (typeof SCORE_PARTS)[number];

/** Every figure that the cordon choice rests on. All stand on the Settings sheet; none has a value of its own here. */
export interface ChoiceRules {
  /** How much each part counts; only their proportions matter. */
  readonly weights: Readonly<Record<ScorePart, number>>;
  /** Distance from spur to spur that a cordon should carry. */
  readonly spurSpacing: Metres;
  /** A stretch of so many positions without a spur scores nothing. */
  readonly longestStretch: number;
  readonly spurWorth: Readonly<Record<Training, SpurWorth>>;
  /** Soundness of a cordon that winter or disease has hurt; a sound one has 1, a dead one 0. */
  readonly injuredSoundness: number;
  readonly diseasedSoundness: number;
  /** A cordon thinner than `weakDiameter` scores nothing for it, from `fullDiameter` on it scores 1. */
  readonly weakDiameter: Metres;
  readonly fullDiameter: Metres;
  /** What two cordons on two trunks earn over two cordons on one. */
  readonly twoTrunks: number;
  /** What a cordon loses because its trunk is injured or diseased. */
  readonly injuredTrunk: number;
  readonly diseasedTrunk: number;
  /** What a newly laid cane is worth: a cordon that is worth less is not kept. */
  readonly newCane: number;
  /** A stretch without a spur over this share of the places or more makes a cordon worth no more than a new cane. */
  readonly renewingShare: number;
  /** Shorter than this it is a remnant at the head, not a cordon. */
  readonly shortestCordon: Metres;
  /** Two plans that lie no further apart than this are a close call. */
  readonly closeCall: number;
  /** Cordons wanted on a vine: one on each of two sides, or one in all. */
  readonly sidesWanted: 1 | 2;
}
