import { LANGUAGES } from "../../texts/language";
import { plainHeader } from "../sheets/column";
import { SHEETS } from "../sheets/sheets";

/**
 * True for the name of the Settings sheet in any language. It is read even where the add-in made it, unlike the sheets
 * that hold results.
 *
 * @example
 * isSettingsSheet("Ajustes") // true
 */
export function isSettingsSheet(sheet: string): boolean {
  return LANGUAGES.some((language) => plainHeader(SHEETS.settings.name[language]) === plainHeader(sheet));
}
