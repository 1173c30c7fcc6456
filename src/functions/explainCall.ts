import type { UnitSystem } from "../domain/units";
import { readSeason } from "../survey/reading/readSeason";
import { isBlank, isCellError, type CellValue } from "../survey/sheets/cell";
import type { RowsUsed } from "../survey/season/usedRows";
import type { Language } from "../texts/language";
import { callFunction, unitsOf, type CallOutcome } from "./callFunction";
import type { CordonFunction } from "./cordonFunction";
import { asArgument } from "./evaluateFormula";
import type { Parameter } from "./parameter";
import { isNotMeasured } from "./readArgument";

type Cells = readonly (readonly CellValue[])[];

/** An argument as it is written in a formula, with what it hands over. */
export interface GivenArgument {
  /** "" where it is left out. */
  readonly written: string;
  /** Undefined where only the spreadsheet can work it out. */
  readonly cells: Cells | undefined;
  /** Where its first cell stands, for an argument that is a range. */
  readonly from?: { readonly sheet: string; readonly row: number; readonly column: number };
}

/** One argument as a call reads it. */
export interface ArgumentRead extends GivenArgument {
  readonly parameter: Parameter;
  /** Cells that hold something, blanks, and errors. */
  readonly filled: number;
  readonly blanks: number;
  readonly errors: number;
}

/** What one call reads and answers. */
export interface CallExplained {
  readonly called: CordonFunction;
  readonly text: string;
  readonly units: UnitSystem;
  readonly args: readonly ArgumentRead[];
  /** Undefined where an argument is not known here. */
  readonly outcome: CallOutcome | undefined;
  /** The rows of the Cordons table that it uses, for a function that takes that table. */
  readonly rows?: RowsUsed;
}

/**
 * Reads and answers one call as the function itself does, and keeps what every argument came to.
 *
 * @example
 * explainCall(functionNamed("NODEBUDGET"), "", [{ written: "B2", cells: [[3]] }, { written: '"30+10"', cells: [["30+10"]] }], "en").outcome // { values: [[50]] }
 */
export function explainCall(
  called: CordonFunction,
  text: string,
  given: readonly GivenArgument[],
  language: Language,
): CallExplained {
  const raw = given.map(({ written, cells }) => (written === "" || !cells ? null : asArgument(cells)));
  const isKnown = given.every(({ written, cells }) => written === "" || cells !== undefined);
  const outcome = isKnown ? callFunction(called, raw, language) : undefined;
  const rows = outcome && "values" in outcome ? rowsUsed(called, given) : undefined;
  return {
    called,
    text,
    units: systemOf(called, raw),
    args: called.parameters.map((parameter, index) =>
      argumentRead(parameter, given[index] ?? { written: "", cells: undefined }),
    ),
    outcome,
    ...(rows ? { rows } : {}),
  };
}

function systemOf(called: CordonFunction, raw: Parameters<typeof unitsOf>[1]): UnitSystem {
  try {
    return unitsOf(called, raw);
  } catch {
    return "US";
  }
}

function argumentRead(parameter: Parameter, given: GivenArgument): ArgumentRead {
  const cells = given.cells?.flat() ?? [];
  const blanks = cells.filter((cell) =>
    parameter.kind === "table" ? isBlank(cell) : isNotMeasured(parameter, cell),
  ).length;
  return {
    ...given,
    parameter,
    filled: cells.length - blanks,
    blanks,
    errors: cells.filter(isCellError).length,
  };
}

/** The rows of the Cordons table that a call uses, by their place in the workbook. */
function rowsUsed(called: CordonFunction, given: readonly GivenArgument[]): RowsUsed | undefined {
  const tables = called.parameters.flatMap(({ kind, sheet }, index) => {
    const argument = given[index];
    return kind === "table" && sheet !== undefined && argument?.cells
      ? [{ shape: sheet, cells: argument.cells, from: argument.from }]
      : [];
  });
  if (!tables.some(({ shape }) => shape === "cordons")) return undefined;
  const season = readSeason(
    tables.map(({ shape, cells, from }) => ({
      sheet: shape,
      firstRow: from?.row ?? 1,
      firstColumn: from?.column ?? 1,
      values: cells,
      formulaAt: () => null,
    })),
    { told: new Map(tables.map(({ shape }) => [shape, shape])) },
  );
  const { leftOut, ...counted } = season.used.account();
  const sheet = tables.find(({ shape }) => shape === "cordons")!.from?.sheet;
  return {
    ...counted,
    leftOut: leftOut.map((one) => (sheet === undefined ? one : { ...one, first: { ...one.first, sheet } })),
  };
}
