import type { Language } from "../../texts/language";
import type { OwnSheet, SurveyWorkbook } from "../surveyWorkbook";

/**
 * Writes a sheet of ours with what a person added to the one that stands there.
 *
 * @returns the charts that stand on it, and sentences about what has no place on it any more
 */
export async function writeAgain(
  workbook: SurveyWorkbook,
  content: OwnSheet,
  language: Language,
): Promise<{ readonly charts: number; readonly lost: readonly string[] }> {
  const { rewriteOwnSheet, lostSentences } = await import(
    /* webpackChunkName: "rewrite" */ "./rewriteOwnSheet"
  );
  const written = await rewriteOwnSheet(workbook, content);
  return { charts: written.charts, lost: lostSentences(content.sheet, written, language) };
}
