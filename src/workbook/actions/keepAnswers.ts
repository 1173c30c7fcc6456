import { answersOfSheet, answersTable, holdsAnswers, isAnswersSheet } from "../../survey/reading/keptAnswers";
import { withAnswers, type ReadingAnswers } from "../../survey/reading/readingAccount";
import type { Language } from "../../texts/language";
import { isBlank, type CellValue } from "../../survey/sheets/cell";
import { layOutOwnSheet } from "../ownSheet";
import type { OwnSheet, SurveyWorkbook } from "../surveyWorkbook";
import { writeAgain } from "./writeAgain";

/** What became of the answers of a workbook. */
export interface KeptAnswers {
  /** What was kept before, to take the last answer back. */
  readonly before: ReadingAnswers;
  /** Sentences about a person's remarks on the sheet of answers that have no place any more. */
  readonly lost: readonly string[];
}

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
 */
export function keepAnswers(
  workbook: SurveyWorkbook,
  answers: ReadingAnswers,
  language: Language,
): Promise<KeptAnswers> {
  return changeAnswers(workbook, (before) => withAnswers(before, answers), language);
}

/** Keeps what one sheet's heads and their units mean, in place of what was kept of them; without heads it is forgotten. */
export function keepHeads(
  workbook: SurveyWorkbook,
  sheet: string,
  { heads, units }: Pick<ReadingAnswers, "heads" | "units">,
  language: Language,
): Promise<KeptAnswers> {
  const ofOthers = (answer: { readonly sheet: string }) => answer.sheet !== sheet;
  const change = (before: ReadingAnswers) =>
    withAnswers(
      { ...before, heads: before.heads?.filter(ofOthers), units: before.units?.filter(ofOthers) },
      { heads, units },
    );
  return changeAnswers(workbook, change, language);
}

/** Writes the answers as they were before the last one. */
export function putAnswersBack(
  workbook: SurveyWorkbook,
  before: ReadingAnswers,
  language: Language,
): Promise<KeptAnswers> {
  return changeAnswers(workbook, () => before, language);
}

/** Changes what is kept; without any answer left the sheet goes, unless a person wrote something beside them. */
async function changeAnswers(
  workbook: SurveyWorkbook,
  change: (before: ReadingAnswers) => ReadingAnswers,
  language: Language,
): Promise<KeptAnswers> {
  const kept = await answersSheetOf(workbook);
  const before = kept ? answersOfSheet(kept) : {};
  const table = answersTable(change(before), language);
  if (table.rows.length === 0 && !kept) return { before, lost: [] };
  const content = { ...table, sheet: kept?.sheet ?? table.sheet };
  const { lost } = await writeAgain(workbook, content, language);
  if (table.rows.length === 0 && !(await holdsMore(workbook, content)))
    await workbook.deleteOwnSheet(content.sheet);
  return { before, lost };
}

/** True where a sheet of ours holds more than was written into it. */
async function holdsMore(workbook: SurveyWorkbook, content: OwnSheet): Promise<boolean> {
  const filled = (rows: readonly (readonly CellValue[])[]) =>
    rows.flat().filter((value) => !isBlank(value)).length;
  const { values } = await workbook.readSheet(content.sheet);
  return filled(values) > filled(layOutOwnSheet(content).values);
}
