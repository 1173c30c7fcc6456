/** Control characters but tab and line end, and marks that turn the direction of what follows. */
const CONTROLS =
  // eslint-disable-next-line no-control-regex
  /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;

/**
 * Text from a cell or a file's name without what a terminal or a printed page would obey instead of showing.
 *
 * @example
 * withoutControls("left\u001b[31m") // "left [31m"
 */
export function withoutControls(text: string): string {
  return text.replace(CONTROLS, " ");
}

/** A value as JSON in which the same characters stand as escapes, so that none is lost. */
export function jsonText(value: unknown): string {
  return JSON.stringify(value, null, 2).replace(
    CONTROLS,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}
