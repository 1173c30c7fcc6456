import type { Language } from "../texts/language";
import type { CordonFunction } from "./cordonFunction";
import { blankDiffers, type Parameter } from "./parameter";
import { helpAddress } from "./helpPage";
import type { Measure } from "./measure";
import { FUNCTIONS } from "./registry";

/** One parameter in functions.json, in the words of the custom functions schema. */
export interface ParameterMetadata {
  readonly name: string;
  readonly description: string;
  readonly type: "any";
  readonly dimensionality: "scalar" | "matrix";
  readonly optional?: true;
  /** The list of accepted words that Excel offers; older versions ignore it. */
  readonly customEnumId?: string;
}

/** The accepted words of an argument (https://learn.microsoft.com/office/dev/add-ins/excel/custom-functions-custom-enums). */
export interface EnumMetadata {
  readonly id: string;
  readonly type: "string";
  readonly values: readonly { readonly name: string; readonly stringValue: string }[];
}

/** One function in functions.json. */
export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  /** Where Excel's "help on this function" leads. */
  readonly helpUrl: string;
  readonly parameters: readonly ParameterMetadata[];
  readonly result: { readonly type: "any"; readonly dimensionality: "matrix" };
  /** Only where a blank is not a 0, so that blanks can be looked up where Excel hands them over as 0. */
  readonly options?: { readonly requiresParameterAddresses: true };
}

export interface FunctionsMetadata {
  readonly $schema: string;
  readonly allowErrorForDataTypeAny: true;
  readonly enums: readonly EnumMetadata[];
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
 * functionsMetadata("es").functions[0].parameters[0].name // "madera_podada_lb_kg"
 */
export function functionsMetadata(language: Language): FunctionsMetadata {
  return {
    $schema: "https://developer.microsoft.com/json-schemas/office-js/custom-functions.schema.json",
    allowErrorForDataTypeAny: true,
    enums: [
      ...new Map(
        FUNCTIONS.flatMap((each) =>
          each.parameters.flatMap((parameter) => {
            const id = enumOf(each, parameter);
            return id === undefined ? [] : [[id, acceptedWords(id, parameter)] as const];
          }),
        ),
      ).values(),
    ],
    functions: FUNCTIONS.map((each) => functionMetadata(each, language)),
  };
}

/** File of a build that holds the metadata of one language. */
export const metadataFile = (language: Language) =>
  language === "en" ? "functions.json" : `functions.${language}.json`;

/** The unit system is one list for all; other words belong to their function. */
function enumOf({ id }: CordonFunction, { id: parameter, kind, choices }: Parameter): string | undefined {
  if (choices.length === 0) return undefined;
  return kind === "unitSystem" ? "UNIT" : `${id}_${parameter.toUpperCase()}`;
}

const acceptedWords = (id: string, { choices }: Parameter): EnumMetadata => ({
  id,
  type: "string",
  values: choices.map((word) => ({ name: word, stringValue: word })),
});

function functionMetadata(called: CordonFunction, language: Language): FunctionMetadata {
  const { id, texts, parameters } = called;
  return {
    id,
    name: id,
    description: texts.description[language],
    helpUrl: helpAddress(id, language),
    parameters: parameters.map((parameter) => ({
      name: parameterName(texts.parameters[parameter.id].label[language], parameter),
      description: texts.parameters[parameter.id].description[language],
      type: "any",
      dimensionality: takesRange(parameter) ? "matrix" : "scalar",
      ...(parameter.optional ? { optional: true } : {}),
      ...(enumOf(called, parameter) === undefined ? {} : { customEnumId: enumOf(called, parameter) }),
    })),
    result: { type: "any", dimensionality: "matrix" },
    ...(parameters.some(blankDiffers) ? { options: { requiresParameterAddresses: true } } : {}),
  };
}

/** Units of an argument as they stand in its name, US before metric. */
const UNITS_IN_NAME: Readonly<Record<Measure, string>> = {
  plain: "",
  share: "_0_to_1",
  hours: "_h",
  mass: "_lb_kg",
  massPerLength: "_lb_ft_kg_m",
  length: "_ft_m",
  spurSpacing: "_in_cm",
  perLength: "_per_ft_m",
  perMass: "_per_lb_kg",
  vinesPerArea: "_per_acre_ha",
  cropPerArea: "_ton_acre_t_ha",
};

/** The label as the formula bar can show it between commas, with its units: no spaces. */
const parameterName = (label: string, { kind, measure }: Parameter) =>
  label.replace(/[^\p{L}\p{N}]+/gu, "_") + UNITS_IN_NAME[kind === "share" ? "share" : measure];

const takesRange = ({ byColumn, kind }: Parameter) => byColumn || kind === "numbers" || kind === "table";
