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
 * The column of its letters, 1 for A.
 *
 * @example
 * columnNumber("AB") // 28
 */
export function columnNumber(letters: string): number {
  return [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
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
