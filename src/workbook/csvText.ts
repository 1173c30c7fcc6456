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
