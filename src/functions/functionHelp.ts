import type { CordonFunction, Example } from "./cordonFunction";
import { fromMetric } from "./measure";
import type { Parameter } from "./parameter";
import { expectation } from "./refusalSentence";
import { FUNCTIONS, NAMESPACE } from "./registry";
import type { Language } from "../texts/language";

/** What the pane tells about one function, in one language. */
export interface FunctionHelp {
  readonly id: string;
  /** "CORDON.NODEBUDGET(prunings, formula, [unit])" */
  readonly call: string;
  readonly description: string;
  readonly parameters: readonly ParameterHelp[];
  readonly results: readonly string[];
  readonly examples: readonly Example[];
  /** What "insert" begins with: over the tables of a survey workbook where the function takes them. */
  readonly formula: string;
}

export interface ParameterHelp {
  readonly label: string;
  readonly optional: boolean;
  readonly description: string;
  /** What is accepted, in US units: "a number from 0 to 44 lb". */
  readonly expected: string;
}

/**
 * The help on every function, in the order of the registry.
 *
 * @example
 * functionHelp("en")[0].call // "CORDON.NODEBUDGET(prunings, formula, [unit], [least], [most], [below one pound])"
 */
export function functionHelp(language: Language): FunctionHelp[] {
  return FUNCTIONS.map((each) => helpOn(each, language));
}

function helpOn(
  { id, texts, parameters, result, examples, onSheet }: CordonFunction,
  language: Language,
): FunctionHelp {
  const label = (parameter: Parameter) => texts.parameters[parameter.id].label[language];
  const names = parameters.map((parameter) =>
    parameter.optional ? `[${label(parameter)}]` : label(parameter),
  );
  return {
    id,
    call: `${NAMESPACE}.${id}(${names.join(", ")})`,
    description: texts.description[language],
    parameters: parameters.map((parameter) => ({
      label: label(parameter),
      optional: parameter.optional,
      description: texts.parameters[parameter.id].description[language],
      expected: expectation(parameter, "US", shownLimits(parameter), language),
    })),
    results: result.columns.map((column) => texts.results[column.id][language]),
    examples,
    formula: onSheet ?? examples[0].formula,
  };
}

/** Limits as a person in US units types them, to three digits. */
function shownLimits({ least, most, measure }: Parameter): { least: number; most: number } {
  const shown = (limit: number) => Number(fromMetric(limit, measure, "US").toPrecision(3));
  return { least: shown(least), most: shown(most) };
}

/**
 * The functions that a search is about: every word must stand in the name, the description, a label or a result, in
 * any case and without accents.
 */
export function searchHelp(help: readonly FunctionHelp[], search: string): readonly FunctionHelp[] {
  const words = plain(search).split(/\s+/).filter(Boolean);
  return help.filter(({ call, description, parameters, results }) => {
    const text = plain(
      [call, description, ...results, ...parameters.flatMap((one) => [one.label, one.description])].join(" "),
    );
    return words.every((word) => text.includes(word));
  });
}

function plain(text: string): string {
  return text
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase();
}

/** The cells of an example as one line: side by side by commas, rows by semicolons. */
export function shownValues(gives: Example["gives"], language: Language): string {
  const number = new Intl.NumberFormat(language, { maximumSignificantDigits: 6, useGrouping: false });
  return gives
    .map((row) =>
      row.map((cell) => (typeof cell === "number" ? number.format(cell) : String(cell))).join(", "),
    )
    .join("; ");
}
