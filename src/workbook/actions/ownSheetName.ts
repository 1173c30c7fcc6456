import { LANGUAGES, type Language, type Text } from "../../texts/language";
import type { SurveyWorkbook } from "../surveyWorkbook";

/**
 * The name under which a sheet of ours is written: that of the language, unless the workbook already has the sheet
 * under the name of another language. So people who work in different languages share one sheet.
 */
export async function ownSheetName(
  workbook: SurveyWorkbook,
  name: Text,
  language: Language,
): Promise<string> {
  const there = await workbook.sheetNames();
  for (const other of [language, ...LANGUAGES]) {
    const found = there.find((sheet) => sheet.toLowerCase() === name[other].toLowerCase());
    if (found !== undefined && (await workbook.isOwnSheet(found))) return found;
  }
  return name[language];
}
