/** Pixels of one line of text in a cell, and what stands above and below the lines. */
const LINE = 19;
const AROUND = 6;

/** Width in characters of a column that nobody has set. */
const USUAL_WIDTH = 11;

/**
 * Height in pixels that a row needs for the texts that wrap in it; undefined where one line is enough. Estimated from
 * the number of characters, because measuring thousands of texts would hold the page.
 */
export function wrappedHeight(
  cells: readonly { readonly text: unknown; readonly width: number | undefined; readonly bold?: boolean }[],
): number | undefined {
  const lines = cells.reduce((most, { text, width = USUAL_WIDTH, bold = false }) => {
    if (typeof text !== "string") return most;
    return Math.max(most, lineCount(text, width / (bold ? BOLD : PLAIN)));
  }, 1);
  return lines > 1 ? lines * LINE + AROUND : undefined;
}

/** Width of a letter in characters of a column's width, on the average of fonts. */
const PLAIN = 1.08;
const BOLD = 1.2;

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
