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
export async function keepAnswers(
  workbook: SurveyWorkbook,
  answers: ReadingAnswers,
  language: Language,
): Promise<ReadingAnswers> {
  const kept = await answersSheetOf(workbook);
  const before = kept ? answersOfSheet(kept) : {};
  const table = answersTable(withAnswers(before, answers), language);
  await workbook.writeOwnSheet({ ...table, sheet: kept?.sheet ?? table.sheet });
  return before;
}

/** Writes the answers as they were before the last one. */
export async function putAnswersBack(
  workbook: SurveyWorkbook,
  before: ReadingAnswers,
  language: Language,
): Promise<void> {
  const kept = await answersSheetOf(workbook);
  if (!kept) return;
  const table = answersTable(before, language);
  if (table.rows.length === 0) await workbook.deleteOwnSheet(kept.sheet);
  else await workbook.writeOwnSheet({ ...table, sheet: kept.sheet });
}
