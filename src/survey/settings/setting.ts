import type { Text } from "../../texts/language";

/** A figure that changes a result: a row of the Settings sheet. */
export interface Setting {
  /** Name in the first column of the Settings sheet, in words, English in every language so that files travel. */
  readonly id: string;
  readonly value: number | string;
  /** Unit as shown: "lb", "positions", "share", "" for a plain number or a word. */
  readonly unit: string;
  /** Id in src/domain/sources.ts, or one of the three honest answers where nothing was published. */
  readonly source: string | "ours" | "common practice" | "from memory, unverified";
  readonly least?: number;
  readonly most?: number;
  readonly choices?: readonly string[];
  readonly meaning: Text;
}

/** The values in force: the sheet's where it has them, else the defaults. */
export type SettingValues = ReadonlyMap<string, number | string>;

/**
 * True for two figures that differ by no more than the arithmetic of a unit conversion.
 *
 * @example
 * isSameFigure(12.7, 5 * 2.54) // true
 */
export function isSameFigure(a: number | string, b: number | string): boolean {
  if (typeof a !== "number" || typeof b !== "number") return a === b;
  return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
}
