import type { Refusal } from "../domain/refusal";
import type { UnitSystem } from "../domain/units";
import type { FunctionText } from "../texts/functions/functionText";
import type { Language } from "../texts/language";
import type { Measure } from "./measure";
import type { ArgumentsOf, Parameter } from "./parameter";

/** What a calculation may hand to a cell: null and undefined show as an empty cell, a refusal as an error with its sentence. */
export type ResultValue = number | string | boolean | null | undefined | Refusal;

/** One value of a result; its label stands in the function's text by `id`. */
export interface ResultColumn {
  readonly id: string;
  readonly measure: Measure;
}

/**
 * The shape of a result.
 * "row": one value or several side by side, a row for each row of the arguments.
 * "table": a heading row and as many rows as the calculation finds.
 */
export interface ResultShape {
  readonly shape: "row" | "table";
  readonly columns: readonly ResultColumn[];
}

/** What an implementation returns: one value, or values by the id of their result column. */
export type ResultRow = ResultValue | { readonly [column: string]: ResultValue };

/** Where the expected value of an example comes from. */
export interface ExampleSource {
  /** The published work, or "common practice", "arithmetic", or what else vouches for the value. */
  readonly work: string;
  /** "published": the value stands in the work. "derived": worked out by hand from it. */
  readonly mark: "published" | "derived";
}

/** A worked example: a formula as a person types it, and what must come out. */
export interface Example {
  readonly formula: string;
  /** Expected cells, row by row. */
  readonly gives: readonly (readonly (number | string | boolean)[])[];
  /** How far a number may be from the printed one: half a unit of its last digit. */
  readonly within: number;
  readonly source: ExampleSource;
}

/** What an implementation may know of the call besides its arguments. */
export interface CallSetting {
  /** Of sentences that stand in the result. */
  readonly language: Language;
  readonly units: UnitSystem;
}

/** A CORDON function as data. */
export interface CordonFunction {
  /** Name after "CORDON."; frozen once released. */
  readonly id: string;
  readonly texts: FunctionText;
  readonly parameters: readonly Parameter[];
  readonly result: ResultShape;
  readonly examples: readonly Example[];
  /** The formula as a person types it over the tables of a survey workbook, where the function takes their columns. */
  readonly onSheet?: string;
  readonly run: (
    args: Readonly<Record<string, unknown>>,
    call: CallSetting,
  ) => ResultRow | readonly ResultRow[];
}

/** The data of a function as its author writes it: the implementation sees its arguments by id and typed. */
export interface CordonFunctionDefinition<P extends readonly Parameter[]> extends Omit<
  CordonFunction,
  "parameters" | "run"
> {
  readonly parameters: P;
  readonly run: (args: ArgumentsOf<P>, call: CallSetting) => ResultRow | readonly ResultRow[];
}

/**
 * Declares a function; the compiler holds the implementation against the parameters.
 *
 * @example
 * callFunction(cordonFunction({ ...functionNamed("CLUSTERS"), run: (a) => a.shoots * 3 }), [2, 1]) // { values: [[6]] }
 */
export function cordonFunction<const P extends readonly Parameter[]>(
  definition: CordonFunctionDefinition<P>,
): CordonFunction {
  return definition as unknown as CordonFunction;
}

/** A result of one value. */
export const oneValue = (id: string, measure: Measure = "plain"): ResultShape => ({
  shape: "row",
  columns: [{ id, measure }],
});

/** Several values side by side. */
export const sideBySide = (...columns: readonly (string | readonly [string, Measure])[]): ResultShape => ({
  shape: "row",
  columns: columns.map(resultColumn),
});

/** A table with a heading row. */
export const tableOf = (...columns: readonly (string | readonly [string, Measure])[]): ResultShape => ({
  shape: "table",
  columns: columns.map(resultColumn),
});

function resultColumn(column: string | readonly [string, Measure]): ResultColumn {
  return typeof column === "string"
    ? { id: column, measure: "plain" }
    : { id: column[0], measure: column[1] };
}
