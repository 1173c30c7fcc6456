import { TEXTS } from "./texts";

/** Texts for overruling an answer, taking a decision back, and asking what it hangs on. */
export const OVERRULE_TEXTS = TEXTS.overrule.page;

/** Names of the figures as the Settings sheet has them. */
export const FIGURE_NAMES = {
  spurs: "Weight of live spurs",
  stretch: "Weight of longest gap",
  placing: "Weight of spur placing",
  soundness: "Weight of soundness",
  diameter: "Weight of diameter",
  twoTrunks: "Two cordons on two trunks",
  newCane: "Worth of a new cane",
  injuredTrunk: "Cost of an injured trunk",
  diseasedTrunk: "Cost of a diseased trunk",
} as const;
