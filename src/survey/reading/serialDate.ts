const MILLISECONDS_PER_DAY = 86_400_000;
/** Serial number of 1970-01-01 in the 1900 date system of spreadsheets. */
const SERIAL_OF_1970 = 25569;

/**
 * Spreadsheet serial number (days since 1899-12-30) of a calendar day; undefined when there is no such day.
 *
 * @example
 * serialOf(2026, 1, 15) // 46037
 */
export function serialOf(year: number, month: number, day: number): number | undefined {
  const time = Date.UTC(year, month - 1, day);
  const date = new Date(time);
  if (date.getUTCMonth() !== month - 1 || date.getUTCDate() !== day) return undefined;
  return time / MILLISECONDS_PER_DAY + SERIAL_OF_1970;
}

/**
 * A serial number as year-month-day, the one order that every reader understands the same way.
 *
 * @example
 * isoDay(46037) // "2026-01-15"
 */
export function isoDay(serial: number): string {
  return new Date((Math.floor(serial) - SERIAL_OF_1970) * MILLISECONDS_PER_DAY).toISOString().slice(0, 10);
}

/** Month of a serial number, 1 to 12. */
export function monthOf(serial: number): number {
  return new Date((Math.floor(serial) - SERIAL_OF_1970) * MILLISECONDS_PER_DAY).getUTCMonth() + 1;
}

/**
 * Month in which a season of counts begins: before leaf fall, after the last counts of shoots and clusters and the weighing
 * at lag phase, 50 to 60 days after bloom. For the northern half of the world; the month is ours.
 */
const FIRST_MONTH_OF_WINTER = 10;

/**
 * The winter that a day belongs to, named by the year in which it ends.
 *
 * @example
 * seasonOf(46037) // 2026
 * seasonOf(45870) // 2025
 */
export function winterOf(serial: number): number {
  const year = new Date((Math.floor(serial) - SERIAL_OF_1970) * MILLISECONDS_PER_DAY).getUTCFullYear();
  return monthOf(serial) >= FIRST_MONTH_OF_WINTER ? year + 1 : year;
}

/** True for serial numbers of the years 1980 to 2099, which no count or length reaches. */
export function isPlausibleDay(serial: number): boolean {
  return serial >= 29221 && serial < 73051;
}

/** Order of day and month in text dates of a column. */
export type DayOrder = "dayFirst" | "monthFirst";

export type TextDate =
  | { readonly serial: number; readonly order?: DayOrder }
  | { readonly unclear: true; readonly dayFirst: number; readonly monthFirst: number }
  | undefined;

/**
 * A date written as text: year-month-day always, day.month.year always, and d/m/y or m/d/y only where one of the two
 * can be meant. Two-digit years are 20xx.
 */
export function textDate(text: string): TextDate {
  const bare = text.trim();
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ].*)?$/.exec(bare);
  if (iso) return found(serialOf(Number(iso[1]), Number(iso[2]), Number(iso[3])));
  const parts = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})$/.exec(bare);
  if (!parts) return undefined;
  const first = Number(parts[1]);
  const second = Number(parts[3]);
  const year = parts[4].length === 2 ? 2000 + Number(parts[4]) : Number(parts[4]);
  const dayFirst = serialOf(year, second, first);
  if (parts[2] === ".") return found(dayFirst);
  const monthFirst = serialOf(year, first, second);
  if (dayFirst !== undefined && monthFirst !== undefined && dayFirst !== monthFirst)
    return { unclear: true, dayFirst, monthFirst };
  if (dayFirst === monthFirst) return found(dayFirst);
  return dayFirst === undefined
    ? { serial: monthFirst!, order: "monthFirst" }
    : { serial: dayFirst, order: "dayFirst" };
}

function found(serial: number | undefined): TextDate {
  return serial === undefined ? undefined : { serial };
}
