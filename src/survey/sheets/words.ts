import type { CellValue } from "./cell";
import { isBlank, isCellError } from "./cell";

/** Blank cell, or one that holds an error, in a column of words. */
export const NO_WORD = -1;
/** A word that is none of a column's choices. */
export const UNKNOWN_WORD = -2;

/**
 * Numbers for words, so that block names and initials are compared as fast as counts. Upper and lower case and
 * surrounding spaces do not matter; a block 7 and a block "7" are the same block, "007" is another.
 */
export class Words {
  private readonly codes = new Map<CellValue, number>();
  private readonly written: string[] = [];

  /** Number of the word, new for a new word; NO_WORD for a blank. */
  codeOf(value: CellValue | undefined): number {
    const known = this.codes.get(value ?? null);
    if (known !== undefined) return known;
    return this.learn(value ?? null);
  }

  /** Number of different words so far. */
  get count(): number {
    return this.written.length;
  }

  /** The word as it was written first. */
  wordOf(code: number): string {
    return this.written[code] ?? "";
  }

  private learn(value: CellValue): number {
    if (isBlank(value) || isCellError(value)) return NO_WORD;
    const key = wordKey(value);
    let code = this.codes.get(key);
    if (code === undefined) {
      code = this.written.length;
      this.written.push(String(value).trim().replace(/\s+/g, " "));
      this.codes.set(key, code);
    }
    this.codes.set(value, code);
    return code;
  }
}

/**
 * What is compared of a word: lower case, single spaces, none around it.
 *
 * @example
 * wordKey("  North  Bench ") // "north bench"
 */
export function wordKey(value: string | number | boolean): string {
  return String(value).trim().toLowerCase().replace(/\s+/g, " ");
}

/** True where two words differ by capitals, spaces and hyphens only: "Pro-Rata" is "pro rata". */
export function isSameChoice(word: string, other: string): boolean {
  const squeezed = (text: string) => text.toLowerCase().replace(/[\s-]+/g, "");
  return squeezed(word) === squeezed(other);
}
