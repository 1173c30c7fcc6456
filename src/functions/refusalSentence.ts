import type { Refusal } from "../domain/refusal";
import type { UnitSystem } from "../domain/units";
import { SHEETS } from "../survey/sheets/sheets";
import type { SheetId } from "../survey/sheets/column";
import { CALL_REFUSALS, EXPECTED, PLACE_IN_RANGE, WHOLE_TABLE } from "../texts/functions/callRefusals";
import { say, type Language, type TextFacts } from "../texts/language";
import { REFUSALS } from "../texts/refusals";
import type { CordonFunction } from "./cordonFunction";
import { unitName } from "./measure";
import type { Parameter } from "./parameter";

/**
 * The sentence of a refused call: arguments are named as the formula bar names them, in the person's language.
 *
 * @example
 * refusalSentence(new Refusal("invalid", "noNumbers", { argument: "counts" }), functionNamed("BLOCKMEAN"), "en") // "counts holds no number: expected at least one."
 */
export function refusalSentence(refusal: Refusal, called: CordonFunction, language: Language): string {
  const text = CALL_REFUSALS[refusal.code] ?? REFUSALS[refusal.code];
  if (text === undefined) throw new Error(`no sentence for the refusal ${refusal.code}`);
  const sentence = say(text, language, { ...refusal.facts, ...namesOf(refusal, called, language) });
  return sentence.replace(/ +([.,])/g, "$1");
}

/** The name of a parameter as the formula bar shows it. */
function parameterLabel(called: CordonFunction, id: string, language: Language): string {
  return called.texts.parameters[id]?.label[language] ?? id;
}

function namesOf(refusal: Refusal, called: CordonFunction, language: Language): TextFacts {
  const { facts } = refusal;
  const names: Record<string, TextFacts[string]> = { place: "" };
  for (const fact of ["argument", "other"] as const)
    if (typeof facts[fact] === "string") names[fact] = parameterLabel(called, facts[fact], language);
  if (typeof facts.row === "number") names.place = say(PLACE_IN_RANGE, language, { row: facts.row });
  if (typeof facts.sheet === "string")
    names.suggestion = say(WHOLE_TABLE, language, { table: SHEETS[facts.sheet as SheetId].name[language] });
  if (typeof facts.sheet === "string" && typeof facts.column === "string")
    names.column = columnHeader(facts.sheet as SheetId, facts.column, language);
  const parameter = called.parameters.find(({ id }) => id === facts.argument);
  if (parameter)
    names.expected = expectation(parameter, (facts.units ?? "US") as UnitSystem, facts, language);
  return names;
}

const columnHeader = (sheet: SheetId, id: string, language: Language) =>
  SHEETS[sheet].columns.find((column) => column.id === id)?.header[language] ?? id;

/** What a parameter expects, in words: "a number from 0 to 44 lb". */
export function expectation(
  parameter: Parameter,
  units: UnitSystem,
  limits: { readonly [name: string]: unknown },
  language: Language,
): string {
  const endless = parameter.most === Number.MAX_SAFE_INTEGER;
  const key = expectationKey(parameter, endless);
  return say(EXPECTED[key], language, {
    least: limits.least as number,
    most: limits.most as number,
    unit: unitName(parameter.measure, units)[language],
    choices: parameter.choices,
  }).trim();
}

function expectationKey(parameter: Parameter, endless: boolean): string {
  switch (parameter.kind) {
    case "whole":
      return endless ? "wholeFrom" : "whole";
    case "number":
    case "numbers":
      if (parameter.aboveZero && parameter.least === 0)
        return endless ? "numberAboveZeroOnly" : "numberAboveZero";
      return endless ? "numberFrom" : "number";
    case "unitSystem":
      return "choice";
    default:
      return parameter.kind;
  }
}
