/** What may stand in a cell that is written as csv. */
export type CsvValue = string | number | boolean | null | undefined;

/**
 * One line of csv. Text that a spreadsheet would run as a formula when it opens the file (it begins with = + - @, in
 * their full width too, a tab or a line end) gets an apostrophe before it; numbers stay as they are. Text with any sign at
 * which some spreadsheet parts cells is quoted. The character 0, which makes a file binary, is
 * left out.
 *
 * @example
 * csvLine(["=1+1", -2, "a,b"]) // "'=1+1,-2,\"a,b\""
 */
export function csvLine(cells: readonly CsvValue[], delimiter = ","): string {
  return cells.map((cell) => csvField(cell, delimiter)).join(delimiter);
}

/** A place within text at which a spreadsheet that parts cells at another sign would begin a cell with a formula. */
const WITHIN = /([;\t\r\n][\s"]*)(?=[=+\-@\uff1d\uff0b\uff0d\uff20])/g;

/**
 * One line of csv that shows results, where text may be guarded inside too: a spreadsheet that parts cells at semicolons
 * heeds no quote in the middle of a line, and takes what follows a semicolon in a text for a cell.
 *
 * @example
 * csvResultLine(["a;=1+1", 2]) // "\"a;'=1+1\",2"
 */
export function csvResultLine(cells: readonly CsvValue[]): string {
  return csvLine(cells.map((cell) => (typeof cell === "string" ? cell.replace(WITHIN, "$1'") : cell)));
}

function csvField(value: CsvValue, delimiter: string): string {
  if (value === null || value === undefined) return "";
  if (typeof value !== "string") return String(value);
  const clean = value.replaceAll("\0", "");
  const text =
    /^[=+\-@\uff1d\uff0b\uff0d\uff20\t\r\n]/.test(clean.trimStart()) || /^[\t\r\n]/.test(clean)
      ? `'${clean}`
      : clean;
  return /["\r\n;\t]/.test(text) || text.includes(delimiter) || text !== text.trim()
    ? `"${text.replace(/"/g, '""')}"`
    : text;
}
