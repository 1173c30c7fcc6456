import type { FindingAction } from "../../survey/checks/check";
import { FINDING_KINDS } from "../../survey/checks/checks";
import { findingSentence } from "../../survey/checks/findingSentence";
import type { Finding } from "../../survey/checks/finding";
import { FINDING_TEXTS } from "../../texts/findings";
import type { Language } from "../../texts/language";

const SENTENCES = new Map<Language, WeakMap<Finding, string>>();

/** The sentence of a finding, made once for each language: a filter asks for thousands. */
export function sentenceOf(finding: Finding, language: Language): string {
  let made = SENTENCES.get(language);
  if (made === undefined) SENTENCES.set(language, (made = new WeakMap()));
  let sentence = made.get(finding);
  if (sentence === undefined) made.set(finding, (sentence = findingSentence(finding, language)));
  return sentence;
}

/** What is done about findings of a code. */
export function actionOf(code: string): FindingAction {
  return FINDING_KINDS.get(code)?.action ?? "correct";
}

/** Heading over findings of a code. */
export function titleOf(code: string, language: Language): string {
  return FINDING_TEXTS[code].title[language];
}

/** Why findings of a code matter. */
export function whyOf(code: string, language: Language): string {
  return FINDING_TEXTS[code].why[language];
}

/** What a person does about findings of a code. */
export function remedyOf(code: string, language: Language): string {
  return FINDING_TEXTS[code].remedy[language];
}
