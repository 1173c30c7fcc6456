import { gapsOfSeason } from "../../survey/season/gapsOfSeason";
import type { Stays } from "../../survey/season/fixedCordons";
import { accountLines } from "../../survey/season/accountSentences";
import type { Season } from "../../survey/season/season";
import { seasonAccount } from "../../survey/season/seasonAccount";
import { GAP_PIVOT } from "../../texts/gapPivot";
import { LANGUAGES, type Language, type Text } from "../../texts/language";
import { gapCountsSheet, gapPivot } from "../results/gapCountsSheet";
import { rowGapsSheet } from "../results/gapSheets";
import { withAccount } from "../results/withAccount";
import type { SurveyWorkbook } from "../surveyWorkbook";
import { ownSheetName } from "./ownSheetName";
import { writeAgain } from "./writeAgain";

export interface GapsPivotResult {
  /** "table" where the host has no PivotTables and a plain table was written instead. */
  readonly how: "made" | "refreshed" | "table";
  readonly sheet: string;
  /** Sentences about a person's remarks that have no place any more on the sheets that were written again. */
  readonly lost: readonly string[];
}

/**
 * Makes the PivotTable of gaps by block and row over a sheet of the counts, or refreshes the one that is there; where
 * the host has none, writes the same figures as a plain table that says so. A workbook keeps the language in which it
 * was first made, since a PivotTable knows its fields by their headers.
 *
 * @param counts tells which cordons count, such as those that stay
 * @param date the day as a person writes it
 */
export async function writeGapsPivot(
  workbook: SurveyWorkbook,
  season: Season,
  counts: Stays,
  language: Language,
  date: string,
): Promise<GapsPivotResult> {
  const account = (as: Language) => accountLines(seasonAccount(season), as);
  if (!workbook.writePivot) {
    const sheet = await ownSheetName(workbook, GAP_PIVOT.pivotSheet, language);
    const content = rowGapsSheet(gapsOfSeason(season, counts), language, date);
    const title = [GAP_PIVOT.summaryTitle[language], ...(content.title ?? []).slice(1)];
    const table = withAccount({ ...content, title, sheet }, account(language));
    return { how: "table", sheet, lost: (await writeAgain(workbook, table, language)).lost };
  }
  const source = await ownSheetName(workbook, GAP_PIVOT.countsSheet, language);
  const kept = languageOfName(GAP_PIVOT.countsSheet, source) ?? language;
  const table = withAccount(gapCountsSheet(season, counts, source, kept, date), account(kept));
  const { lost } = await writeAgain(workbook, table, language);
  const sheet = await ownSheetName(workbook, GAP_PIVOT.pivotSheet, kept);
  return { how: await workbook.writePivot(gapPivot(sheet, source, kept)), sheet, lost };
}

function languageOfName(name: Text, sheet: string): Language | undefined {
  return LANGUAGES.find((language) => name[language].toLowerCase() === sheet.toLowerCase());
}
