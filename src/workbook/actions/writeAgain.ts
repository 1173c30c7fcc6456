import type { Language } from "../../texts/language";
import type { OwnSheet, SurveyWorkbook } from "../surveyWorkbook";

/**
 * Writes a sheet of ours with what a person added to the one that stands there.
 *
 * @returns the charts that stand on it, sentences about what has no place on it any more, and one about notes that stayed
 * behind; "" for none
 */
export async function writeAgain(
  workbook: SurveyWorkbook,
  content: OwnSheet,
  language: Language,
): Promise<{ readonly charts: number; readonly lost: readonly string[]; readonly left: string }> {
  const { rewriteOwnSheet, lostSentences, leftSentence } = await import(
    /* webpackChunkName: "rewrite" */ "./rewriteOwnSheet"
  );
  const written = await rewriteOwnSheet(workbook, content);
  const { sheet } = content;
  return {
    charts: written.charts,
    lost: lostSentences(sheet, written, language),
    left: leftSentence(sheet, written, language),
  };
}
