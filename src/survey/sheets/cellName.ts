/**
 * Letters of a column as a spreadsheet shows it.
 *
 * @param column 1 is A
 * @example
 * columnLetters(28) // "AB"
 */
export function columnLetters(column: number): string {
  let letters = "";
  for (let rest = column; rest > 0; rest = Math.floor((rest - 1) / 26))
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  return letters;
}

/**
 * A cell as a spreadsheet names it.
 *
 * @param row first row is 1
 * @param column 1 is A
 * @example
 * cellName(14, 6) // "F14"
 */
export function cellName(row: number, column: number): string {
  return `${columnLetters(column)}${row}`;
}
