import { timeOfSerial } from "../survey/reading/serialDate";
import type { Language } from "../texts/language";

/**
 * A spreadsheet date as a person writes it in that language.
 *
 * @param serial days since 1899-12-30
 * @example
 * writtenDate(45350, "en") // "February 28, 2024"
 */
export function writtenDate(serial: number, language: Language): string {
  return new Intl.DateTimeFormat(language, { dateStyle: "long", timeZone: "UTC" }).format(
    timeOfSerial(serial),
  );
}
