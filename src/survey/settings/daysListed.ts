import { isPlausibleDay, textDate } from "../reading/serialDate";
import type { TextForms } from "../sheets/nodeRules";

/**
 * Days that a cell lists with commas between them, as spreadsheet serial numbers; undefined where a part of the list is not
 * one day alone, so that nobody plans by half of it. A day typed alone arrives as its number.
 *
 * @example
 * daysListed("2026-02-16, 2026-02-17") // [46069, 46070]
 * daysListed("2026-02-16 to 2026-02-20") // undefined
 */
export function daysListed(written: string): readonly number[] | undefined {
  const parts = written.split(/[,;]/).map((part) => part.trim());
  const days = parts.filter((part) => part !== "").map(dayOf);
  return days.includes(NaN) ? undefined : days;
}

/** Of a date of which the year comes first textDate leaves out what follows. */
const YEAR_AND_MORE = /^\d{4}\D.*[ T]/;

function dayOf(part: string): number {
  const serial = Number(part);
  if (Number.isInteger(serial) && isPlausibleDay(serial)) return serial;
  const date = YEAR_AND_MORE.test(part) ? undefined : textDate(part);
  return date && "serial" in date ? date.serial : NaN;
}

/** What a setting that lists days may read like. */
export const DAYS_LISTED: TextForms = {
  written: ["2026-02-16"],
  understands: (text) => daysListed(text) !== undefined,
};
