import { wrappedLines } from "../wrappedLines";

/** Pixels of one line of text in a cell, and what stands above and below the lines. */
const LINE = 19;
const AROUND = 6;

/** Width in characters of a column that nobody has set. */
const USUAL_WIDTH = 11;

/** Width of a letter in characters of a column's width, on the average of fonts. */
const PLAIN = 1.08;
const BOLD = 1.2;

/** Height in pixels that a row needs for the texts that wrap in it; undefined where one line is enough. */
export function wrappedHeight(
  cells: readonly { readonly text: unknown; readonly width: number | undefined; readonly bold?: boolean }[],
): number | undefined {
  const lines = wrappedLines(
    cells.map(({ text, width = USUAL_WIDTH, bold }) => ({ text, letters: width / (bold ? BOLD : PLAIN) })),
  );
  return lines > 1 ? lines * LINE + AROUND : undefined;
}
