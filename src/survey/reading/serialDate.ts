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
 * A serial number as milliseconds since 1970 in UTC, as Date and Intl take them.
 *
 * @example
 * timeOfSerial(25570) // 86400000
 */
export function timeOfSerial(serial: number): number {
  return (serial - SERIAL_OF_1970) * MILLISECONDS_PER_DAY;
}

/**
 * A serial number as year-month-day, the one order that every reader understands the same way.
 *
 * @example
 * isoDay(46037) // "2026-01-15"
 */
export function isoDay(serial: number): string {
  return new Date(timeOfSerial(Math.floor(serial))).toISOString().slice(0, 10);
}

/**
 * The same day of the year, so many years later or earlier; undefined for 29 February where that year has none.
 *
 * @example
 * yearsLater(46037, 1) // 46402
 */
export function yearsLater(serial: number, years: number): number | undefined {
  const [year, month, day] = isoDay(serial).split("-").map(Number);
  return serialOf(year + years, month, day);
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
 * winterOf(46037) // 2026
 * winterOf(45870) // 2025
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
 * can be meant; months in words of English, Spanish and French; yyyymmdd. Two-digit years are 20xx.
 *
 * @example
 * textDate("12 Jan 2026") // { serial: 46034 }
 */
export function textDate(text: string): TextDate {
  const bare = text.replace(/\s+/g, " ").trim();
  const packed = /^(20\d{2})(\d{2})(\d{2})$/.exec(bare);
  if (packed) return found(serialOf(Number(packed[1]), Number(packed[2]), Number(packed[3])));
  const worded = wordedDate(bare);
  if (worded) return worded;
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

/** Day and month that a text can show without a year, in the order that it would have. */
export interface YearlessDate {
  readonly month: number;
  readonly day: number;
  readonly order?: DayOrder;
}

/**
 * A date without a year: one reading where the month is a word or only one of two numbers can be it, two where both can,
 * none for anything else.
 *
 * @example
 * yearlessDate("12 Feb") // [{ month: 2, day: 12 }]
 * @example
 * yearlessDate("2/12").length // 2
 */
export function yearlessDate(text: string): YearlessDate[] {
  const bare = text.replace(/\s+/g, " ").trim();
  const parts = /^(\d{1,2})([-/.])(\d{1,2})\2?$/.exec(bare);
  const isDay = ({ month, day }: YearlessDate) => serialOf(LEAP_YEAR, month, day) !== undefined;
  if (!parts) {
    const date = /\d{3}|\d\D+\d/.test(bare) ? undefined : wordedDate(`${bare} ${LEAP_YEAR}`);
    if (!date || !("serial" in date)) return [];
    const [, month, day] = isoDay(date.serial).split("-").map(Number);
    return [{ month, day }];
  }
  const [one, other] = [Number(parts[1]), Number(parts[3])];
  const dayFirst: YearlessDate = { month: other, day: one, order: "dayFirst" };
  const monthFirst: YearlessDate = { month: one, day: other, order: "monthFirst" };
  if (parts[2] === ".") return [dayFirst].filter(isDay);
  return (one === other ? [dayFirst] : [dayFirst, monthFirst]).filter(isDay);
}

/** A year with a 29 February. */
const LEAP_YEAR = 2024;

/** The serial number of a day without a year in a winter, named by the year in which it ends. */
export function dayInWinter({ month, day }: YearlessDate, winter: number): number | undefined {
  return serialOf(month >= FIRST_MONTH_OF_WINTER ? winter - 1 : winter, month, day);
}

/** First letters of the months' names in English, Spanish and French, without accents. */
const MONTHS: readonly RegExp[] = [
  /^(jan|ene|janv)/,
  /^(feb|fev)/,
  /^mar/,
  /^(apr|abr|avr)/,
  /^(may|mai)/,
  /^(jun|juin)/,
  /^(jul|juil)/,
  /^(aug|ago|aout)/,
  /^(sep|set)/,
  /^oct/,
  /^nov/,
  /^(dec|dic)/,
];

/** "12 Jan 2026", "12-ene-26", "le 12 janvier 2026", "Monday, January 12, 2026". */
function wordedDate(text: string): TextDate {
  const bare = text
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(
      /^(?:(?:mon|tue|wed|thu|fri|sat|sun|lun|mar|mie|jue|vie|sab|dom|mer|jeu|ven|sam|dim)[a-z]*\.?,? |le |el )+(?=\d|[a-z]{3,}\.? \d)/,
      "",
    );
  const dayFirst =
    /^(\d{1,2})(?:er|st|nd|rd|th|º)?(?:[ .\-/]+|(?= ?[a-z]))(?:de |of )?([a-z]{3,10})\.?[ .,\-/]+(?:de |del )?(\d{4}|\d{2})$/.exec(
      bare,
    );
  const monthFirst = /^([a-z]{3,10})\.?[ .\-/]+(\d{1,2})(?:st|nd|rd|th)?,?[ .\-/]+(\d{4}|\d{2})$/.exec(bare);
  const parts = dayFirst ?? monthFirst;
  if (!parts) return undefined;
  const [day, word] = dayFirst ? [parts[1], parts[2]] : [parts[2], parts[1]];
  const year = parts[3];
  const month = MONTHS.findIndex((name) => name.test(word)) + 1;
  if (month === 0) return undefined;
  return found(serialOf(year.length === 2 ? 2000 + Number(year) : Number(year), month, Number(day)));
}

function found(serial: number | undefined): TextDate {
  return serial === undefined ? undefined : { serial };
}
