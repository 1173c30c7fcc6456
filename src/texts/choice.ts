import type { Text } from "./language";
import { TEXTS } from "./texts";

/** Where on the vine, by side. */
export const AT_SIDE: Readonly<Record<string, Text>> = TEXTS.choice.atSide;

/** A side by itself, as the head of a line. */
export const SIDE_WORDS: Readonly<Record<string, Text>> = TEXTS.sheets.sides;

export const VERDICT_WORDS: Readonly<Record<"stays" | "goes" | "ask", Text>> = {
  ...TEXTS.sheets.cordons.fixedChoice.choices,
  ask: TEXTS.findings.severity.ask,
};

export const CONDITION_WORDS: Readonly<Record<string, Text>> = {
  ...TEXTS.sheets.conditions,
  "": TEXTS.choice.conditionNotNoted,
};

/** What must be counted, by part of the score. */
export const COUNT_WORDS: Readonly<Record<string, Text>> = TEXTS.choice.countWords;

/** One count of one cordon. */
export const COUNT_OF: Text = TEXTS.choice.countOf;

/** What speaks for a cordon over another. */
export const ARGUMENTS: Readonly<Record<string, Text>> = TEXTS.choice.arguments;

/** What takes most from a cordon. */
export const WEAK_POINTS: Readonly<Record<string, Text>> = TEXTS.choice.weakPoints;

/** Where a cane is laid from. */
export const CANE_ORIGINS: Readonly<Record<"trunk" | "otherTrunk" | "head" | "ground", Text>> =
  TEXTS.choice.caneOrigins;

/** Why a cordon stays, goes or is asked about, by reason code. */
export const REASONS: Readonly<Record<string, Text>> = TEXTS.choice.reasons;

/** What is done on a side. */
export const SIDE_LINES: Readonly<
  Record<"stays" | "ask" | "lay" | "layAsk" | "layOf" | "layOfAsk" | "layLater", Text>
> = TEXTS.choice.sideLines;

/** One cut of the cut list. */
export const CUT_LINES: Readonly<Record<"head" | "trunk" | "spur" | "keepCane" | "renewing", Text>> =
  TEXTS.choice.cutLines;

/** What holds for the vine as a whole. */
export const VINE_NOTES: Readonly<Record<string, Text>> = TEXTS.choice.vineNotes;

/** Joins the parts of one argument list. */
export const AND: Text = TEXTS.choice.and;
