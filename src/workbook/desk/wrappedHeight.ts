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
  cells: readonly { readonly text: unknown; readonly width: number | undefined }[],
): number | undefined {
  const lines = cells.reduce((most, { text, width = USUAL_WIDTH }) => {
    if (typeof text !== "string") return most;
    const needed = text
      .split("\n")
      .reduce((sum, part) => sum + Math.max(1, Math.ceil((part.length * 1.08) / width)), 0);
    return Math.max(most, needed);
  }, 1);
  return lines > 1 ? lines * LINE + AROUND : undefined;
}
