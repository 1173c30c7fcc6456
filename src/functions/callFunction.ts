import { Refusal } from "../domain/refusal";
import type { UnitSystem } from "../domain/units";
import type { CellError, CellValue } from "../survey/sheets/cell";
import type { Language } from "../texts/language";
import type { CallSetting, CordonFunction, ResultColumn, ResultRow, ResultValue } from "./cordonFunction";
import { fromMetric } from "./measure";
import type { Parameter } from "./parameter";
import {
  cellsOf,
  isNotMeasured,
  readNumberList,
  readTable,
  readValue,
  type RawArgument,
} from "./readArgument";
import { refusalSentence } from "./refusalSentence";

/** The two errors that can carry a sentence of our own in every version of Excel that we support. */
export type ErrorCode = "#VALUE!" | "#N/A";

/** An error cell of a result, with the sentence that a person reads at it. */
export interface ResultError extends CellError {
  readonly error: ErrorCode;
  readonly sentence: string;
  /** Key of the sentence, for tests and for hosts that write their own. */
  readonly code: string;
}

/** A cell of a result; "" is an empty one. */
export type ResultCell = string | number | boolean | ResultError;

/** What a call came to: the cells it fills, row by row, or why it fills none. */
export type CallOutcome = { readonly values: readonly (readonly ResultCell[])[] } | ResultError;

/** True for a call that gave no cells at all. */
export function isRefused(outcome: CallOutcome): outcome is ResultError {
  return "error" in outcome;
}

/**
 * Evaluates one call from raw cell values, the same for Excel, the desk page and the command line.
 *
 * A single value gives a single result. A column gives a result for each of its rows: a row that cannot be answered
 * carries its own error and leaves the others alone, a row without any figure stays empty. Several columns must be
 * of the same length; a single value beside them holds for every row.
 * What the arguments or the sources do not allow comes back as an error with its sentence; anything else that goes
 * wrong inside is a defect and is thrown.
 *
 * @param given the arguments in order; null, undefined and "" are blanks, an omitted one is null or absent
 *
 * @example
 * callFunction(functionNamed("NODEBUDGET"), [3, "30+10"]) // { values: [[50]] }
 * callFunction(functionNamed("NODEBUDGET"), [[[3], [""]], "30+10"]) // { values: [[50], [""]] }
 * callFunction(functionNamed("CLUSTERS"), ["many", 2]).code // "isText"
 */
export function callFunction(
  called: CordonFunction,
  given: readonly RawArgument[],
  language: Language = "en",
): CallOutcome {
  try {
    return { values: resultCells(called, given, language) };
  } catch (problem) {
    return resultError({ called, language }, problem);
  }
}

/** What the reading and writing of one call's cells depends on. */
interface Call extends CallSetting {
  readonly called: CordonFunction;
}

interface ColumnArgument {
  readonly parameter: Parameter;
  readonly cells: readonly CellValue[];
}

type ResultCells = readonly (readonly ResultCell[])[];

function resultCells(called: CordonFunction, given: readonly RawArgument[], language: Language): ResultCells {
  const { parameters, id: name } = called;
  if (given.length > parameters.length)
    throw new Refusal("invalid", "tooManyArguments", { name, most: parameters.length, given: given.length });
  const call: Call = { called, units: unitsOf(called, given), language };
  const fixed: Record<string, unknown> = {};
  const columns: ColumnArgument[] = [];
  parameters.forEach((parameter, index) => {
    const cells = cellsOf(parameter, given[index]);
    if (parameter.kind === "numbers") fixed[parameter.id] = readNumberList(parameter, cells, call.units);
    else if (parameter.kind === "table") fixed[parameter.id] = readTable(parameter, cells);
    else if (isSingle(cells)) fixed[parameter.id] = readValue(parameter, cells[0]?.[0], call.units);
    else columns.push(columnArgument(parameter, cells));
  });
  if (columns.length === 0) return resultRows(call, called.run(fixed, call));
  return Array.from({ length: commonLength(columns) }, (_, row) => resultOfRow(call, fixed, columns, row));
}

const isSingle = (cells: readonly (readonly CellValue[])[]) =>
  cells.length <= 1 && (cells[0]?.length ?? 0) <= 1;

function columnArgument(parameter: Parameter, cells: readonly (readonly CellValue[])[]): ColumnArgument {
  const facts = { argument: parameter.id, rows: cells.length, columns: cells[0].length };
  if (!parameter.byColumn) throw new Refusal("invalid", "oneCellOnly", facts);
  if (cells[0].length > 1) throw new Refusal("invalid", "oneColumnOnly", facts);
  return { parameter, cells: cells.map((row) => row[0]) };
}

function commonLength(columns: readonly ColumnArgument[]): number {
  const [first, ...others] = columns;
  for (const other of others)
    if (other.cells.length !== first.cells.length)
      throw new Refusal("invalid", "differentLengths", {
        argument: other.parameter.id,
        rows: other.cells.length,
        other: first.parameter.id,
        otherRows: first.cells.length,
      });
  return first.cells.length;
}

function resultOfRow(
  call: Call,
  fixed: Readonly<Record<string, unknown>>,
  columns: readonly ColumnArgument[],
  row: number,
): readonly ResultCell[] {
  const { called, units } = call;
  if (columns.every(({ parameter, cells }) => isNotMeasured(parameter, cells[row])))
    return called.result.columns.map(() => "");
  try {
    const args: Record<string, unknown> = { ...fixed };
    for (const { parameter, cells } of columns) args[parameter.id] = readValue(parameter, cells[row], units);
    return resultRow(call, called.run(args, call) as ResultRow);
  } catch (problem) {
    const error = resultError(call, problem);
    return called.result.columns.map(() => error);
  }
}

function resultRows(call: Call, result: ResultRow | readonly ResultRow[]): ResultCells {
  const { called, language } = call;
  if (called.result.shape === "row") return [resultRow(call, result as ResultRow)];
  const headings = called.result.columns.map(({ id }) => called.texts.results[id][language]);
  return [headings, ...(result as readonly ResultRow[]).map((row) => resultRow(call, row))];
}

function resultRow(call: Call, result: ResultRow): readonly ResultCell[] {
  const isSeveral = typeof result === "object" && result !== null && !(result instanceof Refusal);
  return call.called.result.columns.map((column) =>
    resultCell(call, column, isSeveral ? result[column.id] : result),
  );
}

/** Numbers leave with the fifteen digits that a spreadsheet keeps: what went in as pounds comes out whole again. */
function resultCell(call: Call, { id, measure }: ResultColumn, value: ResultValue): ResultCell {
  if (value === null || value === undefined) return "";
  if (value instanceof Refusal) return resultError(call, value);
  if (typeof value !== "number") return value;
  if (!Number.isFinite(value)) throw new Error(`${call.called.id} came to ${value} for ${id}`);
  return Number(fromMetric(value, measure, call.units).toPrecision(15));
}

/** The unit system that the call itself names; US where it names none or has no such parameter. */
export function unitsOf(called: CordonFunction, given: readonly RawArgument[]): UnitSystem {
  const index = called.parameters.findIndex(({ kind }) => kind === "unitSystem");
  if (index < 0) return "US";
  const parameter = called.parameters[index];
  const cells = cellsOf(parameter, given[index]);
  if (!isSingle(cells)) columnArgument(parameter, cells);
  return (readValue(parameter, cells[0]?.[0], "US") as UnitSystem | undefined) ?? "US";
}

function resultError({ called, language }: Omit<Call, "units">, problem: unknown): ResultError {
  if (!(problem instanceof Refusal)) throw problem;
  return {
    error: problem.kind === "notAvailable" ? "#N/A" : "#VALUE!",
    code: problem.code,
    sentence: refusalSentence(problem, called, language),
  };
}
