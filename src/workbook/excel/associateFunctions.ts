import { callFunction, isRefused, type ResultCell, type ResultError } from "../../functions/callFunction";
import type { CordonFunction } from "../../functions/cordonFunction";
import type { RawArgument } from "../../functions/readArgument";
import { FUNCTIONS } from "../../functions/registry";
import { bringTables } from "../../functions/wholeTables";
import type { CellValue } from "../../survey/sheets/cell";
import { EXCEL_PAGE } from "../../texts/excelPage";
import { say, type Language } from "../../texts/language";
import { BlankCells } from "./blankCells";
import type { ExcelRun } from "./excelRun";

/** The part of Excel's custom functions runtime that binds our functions. */
export type CustomFunctionsRuntime = Pick<typeof CustomFunctions, "associate" | "Error" | "ErrorCode">;

/** Hears the arguments of every call as Excel hands them over, until it is called with undefined. */
export type HearsCalls = (listener: ((id: string, given: readonly unknown[]) => void) | undefined) => void;

let heard: Parameters<HearsCalls>[0];

export const hearCalls: HearsCalls = (listener) => void (heard = listener);

/**
 * Binds every function of the registry to its id in functions.json.
 *
 * @param runtime the global CustomFunctions of the shared runtime
 * @param language asked for at every call, so that sentences follow the person's language
 * @param run reads ranges where blanks may have arrived as 0
 */
export function associateFunctions(
  runtime: CustomFunctionsRuntime,
  language: () => Language,
  run: ExcelRun = (batch) => Excel.run(batch),
): void {
  const blanks = new BlankCells(run);
  for (const each of FUNCTIONS) runtime.associate(each.id, excelFunction(each, runtime, language, blanks));
}

/** One function as Excel calls it: arguments in order and its own invocation last, which is no argument; a refusal becomes Excel's error. */
function excelFunction(
  called: CordonFunction,
  runtime: CustomFunctionsRuntime,
  language: () => Language,
  blanks: BlankCells,
) {
  const takesTable = called.parameters.some(({ kind }) => kind === "table");
  const answer = (args: readonly unknown[]): unknown[][] => {
    const outcome = callFunction(called, args.map(rawArgument), language());
    if (isRefused(outcome)) throw excelError(outcome, runtime);
    return outcome.values.map((row) => row.map((cell) => excelCell(cell, runtime)));
  };
  return (...given: readonly unknown[]): unknown[][] | Promise<unknown[][]> => {
    heard?.(called.id, given);
    const args = given.slice(0, -1);
    const invocation = given.at(-1) as CustomFunctions.Invocation | undefined;
    const told = blanks.told(called.parameters, args, invocation?.parameterAddresses);
    const tables = takesTable ? bringTables() : undefined;
    if (tables === undefined) return told?.then(answer) ?? answer(args);
    return tables
      .catch(() => {
        const sentence = say(EXCEL_PAGE.notFetched, language());
        throw new runtime.Error(runtime.ErrorCode.notAvailable, sentence);
      })
      .then(() => told ?? args)
      .then(answer);
  };
}

const rawArgument = (given: unknown): RawArgument =>
  Array.isArray(given)
    ? given.map((row: unknown) => (Array.isArray(row) ? row.map(cellValue) : [cellValue(row)]))
    : cellValue(given);

/** Errors arrive as objects with the error's text in `code`, `errorCode` or `basicValue`, by version of Excel. */
function cellValue(given: unknown): CellValue {
  if (given === undefined || given === null) return null;
  if (typeof given === "number" || typeof given === "string" || typeof given === "boolean") return given;
  const { code, errorCode, basicValue } = given as Readonly<Record<string, unknown>>;
  const error = [code, errorCode, basicValue].find(
    (text) => typeof text === "string" && text.startsWith("#"),
  );
  if (error !== undefined) return { error: error as string };
  if (typeof basicValue === "number" || typeof basicValue === "boolean" || typeof basicValue === "string")
    return basicValue;
  return { error: "#VALUE!" };
}

const excelCell = (cell: ResultCell, runtime: CustomFunctionsRuntime) =>
  typeof cell === "object" ? excelError(cell, runtime) : cell;

function excelError({ error, sentence }: ResultError, runtime: CustomFunctionsRuntime): Error {
  const code = error === "#N/A" ? runtime.ErrorCode.notAvailable : runtime.ErrorCode.invalidValue;
  return new runtime.Error(code, sentence) as unknown as Error;
}
