import type { Kilograms, Metres, Share, UnitSystem } from "../domain/units";
import type { SheetId } from "../survey/sheets/column";
import type { SheetArea } from "../survey/reading/sheetArea";
import type { Measure } from "./measure";

/**
 * What an argument is.
 * "number", "whole", "share", "text", "choice": one value, or a column of them where `byColumn` is set.
 * "numbers": a whole range as one list. "table": a range with its header row. "unitSystem": US or metric.
 */
export type ParameterKind =
  "number" | "whole" | "share" | "text" | "choice" | "numbers" | "table" | "unitSystem";

/** One argument of a CORDON function. Its label and description stand in src/texts/functions by `id`. */
export interface Parameter<Id extends string = string, Value = unknown> {
  /** Frozen once released, as is its place; a refusal of src/domain names the argument by it. */
  readonly id: Id;
  readonly kind: ParameterKind;
  /** What the number measures; converted to metric before the implementation sees it. */
  readonly measure: Measure;
  /** Limits, metric where the measure has a unit. */
  readonly least: number;
  readonly most: number;
  /** Zero is not a value either: a weight, a spacing. A zero in a column then counts as not measured. */
  readonly aboveZero: boolean;
  /** The accepted words of a "choice". */
  readonly choices: readonly string[];
  /** The sheet whose headers a "table" is read by. */
  readonly sheet?: SheetId;
  readonly optional: boolean;
  /** What an omitted argument stands for; undefined leaves the decision to the implementation. */
  readonly fallback?: Value;
  /** A column of values gives a result for each of its rows. */
  readonly byColumn: boolean;
}

/** Whether a blank cell of the argument is another thing than a 0: one not counted, and a count of nothing. */
export const blankDiffers = ({ kind, aboveZero }: Parameter): boolean =>
  kind === "table" || (kind === "numbers" && !aboveZero);

/** The value type that a parameter hands to the implementation. */
export type ValueOf<P> = P extends Parameter<string, infer Value> ? Value : never;

/** The arguments of an implementation, by parameter id. */
export type ArgumentsOf<P extends readonly Parameter[]> = {
  readonly [Each in P[number] as Each["id"]]: ValueOf<Each>;
};

/** A table argument: its cells, and the unit system for columns whose header names no unit. */
export interface TableArgument {
  readonly area: SheetArea;
}

/** A list of numbers read from one range; blanks are left out, and `blanks` says how many there were. */
export interface NumberList {
  readonly numbers: readonly number[];
  readonly blanks: number;
}

interface Limits {
  readonly least?: number;
  readonly most?: number;
  readonly aboveZero?: boolean;
}

function parameter<Id extends string, Value>(
  id: Id,
  kind: ParameterKind,
  rest: Partial<Omit<Parameter<Id, Value>, "id" | "kind">> = {},
): Parameter<Id, Value> {
  return {
    id,
    kind,
    measure: "plain",
    least: 0,
    most: Number.MAX_SAFE_INTEGER,
    aboveZero: false,
    choices: [],
    optional: false,
    byColumn: true,
    ...rest,
  };
}

/** A number without a unit. */
export const number = <Id extends string>(id: Id, limits: Limits = {}) =>
  parameter<Id, number>(id, "number", limits);

/** A whole number: nodes, spurs, vines. */
export const whole = <Id extends string>(id: Id, limits: Limits = {}) =>
  parameter<Id, number>(id, "whole", limits);

/** A share between 0 and 1; a cell that shows 35 % holds 0.35. */
export const share = <Id extends string>(id: Id, limits: Limits = {}) =>
  parameter<Id, Share>(id, "share", { most: 1, ...limits });

/** A mass: pounds or kilograms. */
export const mass = <Id extends string>(id: Id, limits: Limits = {}) =>
  parameter<Id, Kilograms>(id, "number", { measure: "mass", ...limits });

/** A length: feet or metres. */
export const length = <Id extends string>(id: Id, limits: Limits = {}) =>
  parameter<Id, Metres>(id, "number", { measure: "length", ...limits });

/** A short length: inches or centimetres. */
export const spurSpacing = <Id extends string>(id: Id, limits: Limits = {}) =>
  parameter<Id, Metres>(id, "number", { measure: "spurSpacing", ...limits });

/** A number of one of the other measures; the implementation brands it. */
export const measured = <Id extends string, Value extends number = number>(
  id: Id,
  measure: Measure,
  limits: Limits = {},
) => parameter<Id, Value>(id, "number", { measure, ...limits });

/** Any text, such as "30+10". A number is accepted and read as it is written. */
export const text = <Id extends string>(id: Id) => parameter<Id, string>(id, "text");

/** One of a fixed list of words. */
export const choice = <Id extends string, const Word extends string>(id: Id, choices: readonly Word[]) =>
  parameter<Id, Word>(id, "choice", { choices });

/** A range of numbers that is judged as a whole. */
export const numbers = <Id extends string>(id: Id, limits: Limits = {}) =>
  parameter<Id, NumberList>(id, "numbers", { byColumn: false, ...limits });

/** A range with its header row, such as Cordons[#All]. */
export const table = <Id extends string>(id: Id, sheet: SheetId) =>
  parameter<Id, TableArgument>(id, "table", { byColumn: false, sheet });

/** The unit system of a call: the last parameters of every function whose figures have units. */
export const unitSystem = () =>
  parameter<"unit", UnitSystem>("unit", "unitSystem", {
    byColumn: false,
    choices: ["US", "metric"],
    optional: true,
    fallback: "US",
  });

/** The unit system where the tables of a call can name it themselves: undefined if left out. */
export const optionalUnitSystem = (): Parameter<"unit", UnitSystem | undefined> => ({
  ...unitSystem(),
  fallback: undefined,
});

/** Makes a parameter optional; without `fallback` an omitted one is undefined. */
export function optional<Id extends string, Value>(
  of: Parameter<Id, Value>,
): Parameter<Id, Value | undefined>;
export function optional<Id extends string, Value>(
  of: Parameter<Id, Value>,
  fallback: Value | number | string,
): Parameter<Id, Value>;
export function optional(of: Parameter, fallback?: unknown): Parameter {
  return { ...of, optional: true, fallback };
}

/**
 * Makes a parameter take one value for the whole call, never a column: a confidence level.
 *
 * @example
 * once(number("confidence")).byColumn // false
 */
export function once<Id extends string, Value>(of: Parameter<Id, Value>): Parameter<Id, Value> {
  return { ...of, byColumn: false };
}
