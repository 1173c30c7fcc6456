import { LANGUAGES } from "../../texts/language";
import { plainHeader } from "../sheets/column";
import { SHEETS } from "../sheets/sheets";
import { isAnswersSheet } from "./keptAnswers";

/**
 * True for the names of sheets that are read even where the add-in made them, unlike those that hold results: Settings
 * and the answers about other sheets, in any language.
 *
 * @example
 * isReadSheet("Ajustes") // true
 */
export function isReadSheet(sheet: string): boolean {
  return (
    isAnswersSheet(sheet) ||
    LANGUAGES.some((language) => plainHeader(SHEETS.settings.name[language]) === plainHeader(sheet))
  );
}
