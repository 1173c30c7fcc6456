import { answersOfSheet, answersTable, holdsAnswers, isAnswersSheet } from "../../survey/reading/keptAnswers";
import { withAnswers, type ReadingAnswers } from "../../survey/reading/readingAccount";
import type { Language } from "../../texts/language";
import type { SurveyWorkbook } from "../surveyWorkbook";

/** The sheet of answers that a workbook has; undefined where nothing was answered yet. */
async function answersSheetOf(workbook: SurveyWorkbook) {
  for (const sheet of await workbook.sheetNames()) {
    if (!isAnswersSheet(sheet)) continue;
    const area = await workbook.readSheet(sheet);
    if (holdsAnswers(area)) return area;
  }
  return undefined;
}

/**
 * Keeps what was answered about the sheets on a sheet of the workbook, beside what was answered before: it travels with
 * the workbook through any spreadsheet program, and anybody can see it and delete a line of it.
 *
 * @returns what was kept before, to take this answer back
 */
export function keepAnswers(
  workbook: SurveyWorkbook,
  answers: ReadingAnswers,
  language: Language,
): Promise<ReadingAnswers> {
  return changeAnswers(workbook, (before) => withAnswers(before, answers), language);
}

/**
 * Keeps what one sheet's heads and their units mean, in place of what was kept of them; without heads it is forgotten.
 *
 * @returns what was kept before
 */
export function keepHeads(
  workbook: SurveyWorkbook,
  sheet: string,
  { heads, units }: Pick<ReadingAnswers, "heads" | "units">,
  language: Language,
): Promise<ReadingAnswers> {
  const ofOthers = (answer: { readonly sheet: string }) => answer.sheet !== sheet;
  const change = (before: ReadingAnswers) =>
    withAnswers(
      { ...before, heads: before.heads?.filter(ofOthers), units: before.units?.filter(ofOthers) },
      { heads, units },
    );
  return changeAnswers(workbook, change, language);
}

/** Writes the answers as they were before the last one. */
export async function putAnswersBack(
  workbook: SurveyWorkbook,
  before: ReadingAnswers,
  language: Language,
): Promise<void> {
  await changeAnswers(workbook, () => before, language);
}

/** Changes what is kept; without any answer left the sheet goes. */
async function changeAnswers(
  workbook: SurveyWorkbook,
  change: (before: ReadingAnswers) => ReadingAnswers,
  language: Language,
): Promise<ReadingAnswers> {
  const kept = await answersSheetOf(workbook);
  const before = kept ? answersOfSheet(kept) : {};
  const table = answersTable(change(before), language);
  if (table.rows.length > 0) await workbook.writeOwnSheet({ ...table, sheet: kept?.sheet ?? table.sheet });
  else if (kept) await workbook.deleteOwnSheet(kept.sheet);
  return before;
}
