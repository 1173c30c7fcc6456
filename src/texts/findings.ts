import type { Text } from "./language";
import { TEXTS } from "./texts";

/** What a person reads about one kind of finding. */
export interface FindingText {
  /** A few words for a list's heading. */
  readonly title: Text;
  /** What was found, with the finding's facts; the place in the vineyard stands before it. */
  readonly sentence: Text;
  /** Why it matters. */
  readonly why: Text;
  /** What to do about it. */
  readonly remedy: Text;
}

/** Title, sentence, reason and remedy of every kind of finding, by its code; some kinds share one remedy. */
export const FINDING_TEXTS: Readonly<Record<string, FindingText>> = {
  ...TEXTS.findings.kinds,
  ...Object.fromEntries(
    Object.values(TEXTS.findings.sameRemedy).flatMap(({ remedy, kinds }) =>
      Object.entries(kinds).map(([code, text]) => [code, { ...text, remedy }]),
    ),
  ),
};

/** The place that stands before a finding's sentence. */
export const FINDING_PLACES = TEXTS.findings.findingPlaces;

/** Units of the Settings sheet that are words; the others are signs, alike in every language. */
export const UNIT_WORDS: Readonly<Record<string, Text>> = TEXTS.findings.units;

/** How the severities are called. */
export const SEVERITY_TEXTS = TEXTS.findings.severity;

/** Headings under which findings are grouped: what a person does about them. */
export const ACTION_TEXTS: Readonly<Record<string, Text>> = TEXTS.findings.action;

/** What is compared between counters. */
export const HABIT_TEXTS = TEXTS.findings.habit;

/** How a total came about. */
export const MADE_TEXTS = TEXTS.findings.made;

/** How groups of findings are named, and what would mend them. */
export const GROUP_TEXTS = TEXTS.findings.groups;
