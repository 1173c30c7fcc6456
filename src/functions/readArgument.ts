import { Refusal, type Facts } from "../domain/refusal";
import type { UnitSystem } from "../domain/units";
import { isBlank, isCellError, type CellValue } from "../survey/sheets/cell";
import { acceptedHeaders, plainHeader } from "../survey/sheets/column";
import type { SheetArea } from "../survey/reading/sheetArea";
import { SHEETS } from "../survey/sheets/sheets";
import { isSameChoice } from "../survey/sheets/words";
import { fromMetric, toMetric } from "./measure";
import type { NumberList, Parameter, TableArgument } from "./parameter";

/** An argument as any host hands it over: a cell's value, a range row by row, or nothing. */
export type RawArgument = CellValue | undefined | readonly (readonly CellValue[])[];

/** The cells of an argument as a rectangle; an omitted one has none. */
export function cellsOf(parameter: Parameter, raw: RawArgument): readonly (readonly CellValue[])[] {
  if (!Array.isArray(raw)) return raw === undefined || raw === null ? [] : [[raw as CellValue]];
  const rows = raw as readonly (readonly CellValue[])[];
  const lengths = [...new Set(rows.map((row) => row.length))];
  if (lengths.length > 1)
    throw new Refusal("invalid", "ragged", { argument: parameter.id, rowLengths: lengths });
  return rows;
}

/**
 * Reads one cell as the value of a parameter, metric where it has a unit; a blank is the fallback of an optional one.
 *
 * @example
 * readValue(length("length"), 10, "US") // 3.048
 * readValue(optional(number("crew"), 1), "", "US") // 1
 * readValue(number("crew"), "four", "US") // Refusal isText
 */
export function readValue(parameter: Parameter, cell: CellValue | undefined, units: UnitSystem): unknown {
  if (isBlank(cell)) {
    if (parameter.optional) return parameter.fallback;
    throw refusal(parameter, "missing", undefined, units);
  }
  if (isCellError(cell)) throw errorCell(parameter, cell.error, units);
  switch (parameter.kind) {
    case "text":
      return String(cell).trim();
    case "choice":
    case "unitSystem":
      return readChoice(parameter, String(cell).trim());
    default:
      return readNumber(parameter, cell as string | number | boolean, units);
  }
}

/** True for a cell that stands for "not measured": blank, or a zero where zero is not a value. */
export function isNotMeasured(parameter: Parameter, cell: CellValue | undefined): boolean {
  return isBlank(cell) || (parameter.aboveZero && cell === 0);
}

/** Reads a range as a list of numbers; blanks are left out. */
export function readNumberList(
  parameter: Parameter,
  cells: readonly (readonly CellValue[])[],
  units: UnitSystem,
): NumberList | undefined {
  const numbers: number[] = [];
  let blanks = 0;
  cells.forEach((row, rowIndex) =>
    row.forEach((cell) => {
      if (isBlank(cell)) blanks += 1;
      else if (isCellError(cell)) throw errorCell(parameter, cell.error, units, rowIndex + 1);
      else numbers.push(readNumber(parameter, cell, units, rowIndex + 1));
    }),
  );
  if (numbers.length === 0) {
    if (parameter.optional) return undefined;
    throw new Refusal("invalid", "noNumbers", { argument: parameter.id });
  }
  return { numbers, blanks };
}

/**
 * Reads a range with its header row. Refuses one in which a remark or another free text is the number 0: that is how
 * some versions of Excel hand blank cells over, and then a blank count cannot be told from a count of nothing.
 */
export function readTable(
  parameter: Parameter,
  cells: readonly (readonly CellValue[])[],
): TableArgument | undefined {
  if (cells.length === 0 && parameter.optional) return undefined;
  const headings = cells[0] ?? [];
  const facts = { argument: parameter.id, sheet: parameter.sheet ?? "" };
  if (cells.length < 2 || !headings.some((cell) => typeof cell === "string" && !isBlank(cell)))
    throw new Refusal("invalid", "notATable", facts);
  const freeText = headings.findIndex(
    (heading, column) =>
      typeof heading === "string" &&
      FREE_TEXT_HEADERS.has(plainHeader(heading)) &&
      cells.some((row) => row[column] === 0),
  );
  if (freeText >= 0)
    throw new Refusal("notAvailable", "blanksAsZero", { ...facts, heading: String(headings[freeText]) });
  const area: SheetArea = {
    sheet: "",
    firstRow: 1,
    firstColumn: 1,
    values: cells,
    formulaAt: () => null,
  };
  return { area };
}

/** Columns that hold remarks and names, in which nobody writes 0. */
const FREE_TEXT_COLUMNS = ["note", "countedBy", "cultivar", "source", "meaning", "changedBy"];
const FREE_TEXT_HEADERS = new Set(
  Object.values(SHEETS)
    .flatMap(({ columns }) => columns)
    .filter(({ id }) => FREE_TEXT_COLUMNS.includes(id))
    .flatMap(acceptedHeaders),
);

function readNumber(
  parameter: Parameter,
  cell: string | number | boolean,
  units: UnitSystem,
  row?: number,
): number {
  if (typeof cell === "string") throw refusal(parameter, "isText", cell, units, row);
  if (typeof cell === "boolean")
    throw refusal(parameter, "isBoolean", String(cell).toUpperCase(), units, row);
  const value = toMetric(cell, parameter.measure, units);
  const fits =
    value >= parameter.least &&
    value <= parameter.most &&
    (!parameter.aboveZero || value > 0) &&
    (parameter.kind !== "whole" || Number.isInteger(value));
  if (!fits) throw refusal(parameter, "outOfLimits", cell, units, row);
  return value;
}

function readChoice(parameter: Parameter, word: string): string {
  const found = parameter.choices.find((choice) => isSameChoice(choice, word));
  if (found === undefined)
    throw new Refusal("invalid", "notAChoice", {
      argument: parameter.id,
      value: word,
      choices: parameter.choices,
    });
  return found;
}

/** #N/A in a cell stays "not available"; every other error makes the argument invalid. */
function errorCell(parameter: Parameter, error: string, units: UnitSystem, row?: number): Refusal {
  const kind = error === "#N/A" ? "notAvailable" : "invalid";
  return new Refusal(kind, "isError", factsOf(parameter, error, units, row));
}

function refusal(
  parameter: Parameter,
  code: string,
  value: string | number | undefined,
  units: UnitSystem,
  row?: number,
): Refusal {
  return new Refusal("invalid", code, factsOf(parameter, value, units, row));
}

function factsOf(
  parameter: Parameter,
  value: string | number | undefined,
  units: UnitSystem,
  row?: number,
): Facts {
  return {
    argument: parameter.id,
    units,
    ...(value === undefined ? {} : { value }),
    ...(row === undefined ? {} : { row }),
    least: fromMetric(parameter.least, parameter.measure, units),
    most: fromMetric(parameter.most, parameter.measure, units),
  };
}
