import { BooleanNumber } from "@univerjs/core";
import type { Injector } from "@univerjs/core";
import {
  FunctionType,
  IDescriptionService,
  IFunctionService,
  type IFunctionInfo,
} from "@univerjs/preset-sheets-core";
import type { CordonFunction } from "../../functions/cordonFunction";
import type { Parameter } from "../../functions/parameter";
import type { Language } from "../../texts/language";
import { FunctionExecutor, type OnErrors } from "./functionExecutor";

/**
 * Makes every CORDON function known to the engine under its own name, with help while a formula is typed. Call it
 * when a first workbook is open: before that the engine's formula part is not there yet.
 */
export function registerFunctions(
  injector: Injector,
  functions: readonly CordonFunction[],
  language: () => Language,
  onErrors: OnErrors,
): void {
  describeFunctions(injector, functions, language());
  injector
    .get(IFunctionService)
    .registerExecutors(...functions.map((called) => new FunctionExecutor(called, language, onErrors)));
}

/** Gives every function its help in a language, in place of what it had before. */
export function describeFunctions(
  injector: Injector,
  functions: readonly CordonFunction[],
  language: Language,
): void {
  injector
    .get(IDescriptionService)
    .registerDescriptions(functions.map((called) => functionInfo(called, language)));
}

function functionInfo(called: CordonFunction, language: Language): IFunctionInfo {
  const { texts } = called;
  return {
    functionName: `CORDON.${called.id}`,
    functionType: FunctionType.User,
    description: texts.description[language],
    abstract: texts.description[language],
    functionParameter: called.parameters.map((parameter) => ({
      name: texts.parameters[parameter.id].label[language],
      detail: texts.parameters[parameter.id].description[language],
      example: exampleOf(parameter),
      require: parameter.optional ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: BooleanNumber.FALSE,
    })),
  };
}

/** What the engine writes into its pattern of a call. */
function exampleOf(parameter: Parameter): string {
  if (parameter.kind === "table") return "A1:T200";
  if (parameter.kind === "numbers") return "A2:A40";
  return parameter.choices.length > 0 ? `"${parameter.choices[0]}"` : "A2";
}
