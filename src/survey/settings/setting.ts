import type { SourceId } from "../../domain/sources";
import type { Kilograms, Metres, PerMetre } from "../../domain/units";
import type { Text } from "../../texts/language";
import type { TextForms } from "../sheets/nodeRules";

/** Id in src/domain/sources.ts, or one of the three honest answers where nothing was published. */
export type SettingSource = SourceId | "ours" | "common practice" | "from memory, unverified";

interface Row {
  /** Name in the first column of the Settings sheet, in words, in the sheet's language; read in every one. */
  readonly name: Text;
  readonly source: SettingSource;
  readonly meaning: Text;
}

/** A number between two limits. */
export interface Figure<Unit extends string = string> extends Row {
  readonly kind: "figure";
  /** In the unit of the sheet, as are the limits. */
  readonly value: number;
  /** Unit as shown: "lb", "positions", "share", "" for a plain number. */
  readonly unit: Unit;
  readonly least: number;
  readonly most: number;
}

/** One of a few words. */
export interface OneOf<Word extends string = string> extends Row {
  readonly kind: "oneOf";
  readonly value: Word;
  readonly unit: "";
  readonly choices: readonly Word[];
}

/** Words: names, days, colours; any of them where no forms are given. */
export interface Words extends Row {
  readonly kind: "words";
  readonly forms?: TextForms;
  readonly value: string;
  readonly unit: "";
}

/** A row of the Settings sheet without its id. */
export type SettingRow = Figure | OneOf | Words;

/** What calculations get for a figure in a unit of the sheet: metric throughout, plain where nothing is measured. */
interface MetricOfUnit {
  readonly in: Metres;
  readonly ft: Metres;
  readonly lb: Kilograms;
  readonly "nodes/ft": PerMetre;
  readonly "shoots/ft": PerMetre;
}

/** What calculations get for a row. */
export type ValueOf<Setting> =
  Setting extends Figure<infer Unit>
    ? Unit extends keyof MetricOfUnit
      ? MetricOfUnit[Unit]
      : number
    : Setting extends OneOf<infer Word>
      ? Word
      : string;

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
