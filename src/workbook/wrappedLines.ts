/** A cell whose text wraps, with the number of letters that a line of it takes on the average. */
export interface WrappingCell {
  readonly text: unknown;
  readonly letters: number;
}

/**
 * Lines that a row needs for the texts that wrap in it. Estimated from the number of letters, because nothing here knows
 * the reader's fonts and measuring thousands of texts would hold a page.
 *
 * @example
 * wrappedLines([{ text: "Vines without a cordon that stays", letters: 14 }, { text: 7, letters: 2 }]) // 3
 */
export function wrappedLines(cells: readonly WrappingCell[]): number {
  return cells.reduce(
    (most, { text, letters }) => (typeof text === "string" ? Math.max(most, lineCount(text, letters)) : most),
    1,
  );
}

/** Lines of a text that breaks between words, and within a word that is wider than a line. */
function lineCount(text: string, width: number): number {
  let lines = 0;
  for (const part of text.split("\n")) {
    let filled = 0;
    lines++;
    for (const { length } of part.split(" ")) {
      const needed = filled === 0 ? length : filled + 1 + length;
      if (needed <= width) filled = needed;
      else {
        lines += Math.ceil(length / width) - (filled === 0 ? 1 : 0);
        filled = length % width;
      }
    }
  }
  return lines;
}
