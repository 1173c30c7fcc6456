import { Refusal } from "../domain/refusal";
import { EXCEL_PAGE } from "../texts/excelPage";
import { say, type Language, type Text, type TextFacts } from "../texts/language";
import { PANE_TEXTS } from "../texts/pane";
import { REFUSALS } from "../texts/refusals";
import { WORKBOOK_PROBLEMS } from "../texts/workbook";
import { WorkbookProblem } from "../workbook/surveyWorkbook";

/**
 * One sentence for whatever an action failed with, never a stack. Undefined when the person stopped the action.
 */
export function failureSentence(failure: unknown, language: Language): string | undefined {
  if (isAbort(failure)) return undefined;
  const text = knownText(failure);
  return text === undefined ? say(PANE_TEXTS.somethingWrong, language) : say(text.text, language, text.facts);
}

/** True for a failure that a person caused by stopping an action. */
export function isAbort(failure: unknown): boolean {
  return (failure as { name?: unknown } | null)?.name === "AbortError";
}

/** True for a failure that nobody foresaw: a mistake in the program. */
export function isUnforeseen(failure: unknown): boolean {
  return !isAbort(failure) && knownText(failure) === undefined;
}

/** True where a file of the add-in did not arrive; a script that did not is named so by webpack. */
export function isNotFetched(failure: unknown): boolean {
  return ["ChunkLoadError", "NotFetched"].includes(String((failure as { name?: unknown } | null)?.name));
}

function knownText(failure: unknown): { text: Text; facts: TextFacts } | undefined {
  if (failure instanceof Refusal && failure.code in REFUSALS)
    return { text: REFUSALS[failure.code], facts: failure.facts };
  if (failure instanceof WorkbookProblem && failure.code in WORKBOOK_PROBLEMS)
    return { text: WORKBOOK_PROBLEMS[failure.code], facts: failure.facts };
  if (isNotFetched(failure)) return { text: EXCEL_PAGE.notFetched, facts: {} };
  return undefined;
}
