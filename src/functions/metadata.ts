import type { Language } from "../texts/language";
import type { CordonFunction } from "./cordonFunction";
import type { Parameter } from "./parameter";
import { FUNCTIONS } from "./registry";

/** One parameter in functions.json, in the words of the custom functions schema. */
export interface ParameterMetadata {
  readonly name: string;
  readonly description: string;
  readonly type: "any";
  readonly dimensionality: "scalar" | "matrix";
  readonly optional?: true;
}

/** One function in functions.json. */
export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly ParameterMetadata[];
  readonly result: { readonly type: "any"; readonly dimensionality: "matrix" };
}

export interface FunctionsMetadata {
  readonly $schema: string;
  readonly allowErrorForDataTypeAny: true;
  readonly functions: readonly FunctionMetadata[];
}

/**
 * What functions.json holds: Excel reads it to list our functions. Names are the same in every language so that
 * formulas travel; descriptions and parameter names are in the language asked for.
 *
 * Every argument is of type "any", so that text, blanks and error cells reach us and get a sentence of their own
 * instead of Excel's bare #VALUE!. What lets error cells in stands once for the whole file, beside `functions`
 * (https://learn.microsoft.com/office/dev/add-ins/excel/custom-functions-json). Nothing is volatile.
 *
 * @example
 * functionsMetadata("en").functions[0].id // "NODEBUDGET"
 * functionsMetadata("es").functions[0].parameters[0].name // "madera_podada"
 */
export function functionsMetadata(language: Language): FunctionsMetadata {
  return {
    $schema: "https://developer.microsoft.com/json-schemas/office-js/custom-functions.schema.json",
    allowErrorForDataTypeAny: true,
    functions: FUNCTIONS.map((each) => functionMetadata(each, language)),
  };
}

/** File in src/functions that holds the metadata of one language. */
export const metadataFile = (language: Language) =>
  language === "en" ? "functions.json" : `functions.${language}.json`;

function functionMetadata({ id, texts, parameters }: CordonFunction, language: Language): FunctionMetadata {
  return {
    id,
    name: id,
    description: texts.description[language],
    parameters: parameters.map((parameter) => ({
      name: parameterName(texts.parameters[parameter.id].label[language]),
      description: texts.parameters[parameter.id].description[language],
      type: "any",
      dimensionality: takesRange(parameter) ? "matrix" : "scalar",
      ...(parameter.optional ? { optional: true } : {}),
    })),
    result: { type: "any", dimensionality: "matrix" },
  };
}

/** The label as the formula bar can show it between commas: no spaces. */
const parameterName = (label: string) => label.replace(/[^\p{L}\p{N}]+/gu, "_");

const takesRange = ({ byColumn, kind }: Parameter) => byColumn || kind === "numbers" || kind === "table";
