import type { UnitSystem } from "../../domain/units";
import { callsInFormula } from "../../functions/callsInFormula";
import type { CordonFunction } from "../../functions/cordonFunction";
import { fromMetric, toMetric } from "../../functions/measure";
import type { Parameter } from "../../functions/parameter";
import { blockFigures, type BlockFigureId } from "../../survey/season/blockFigures";
import type { Season, SurveyColumn, SurveyTable } from "../../survey/season/season";
import { isBlank } from "../../survey/sheets/cell";
import { cellName, columnLetters } from "../../survey/sheets/cellName";
import { acceptedHeaders, plainHeader } from "../../survey/sheets/column";
import { isBalancedRule } from "../../survey/sheets/nodeRules";
import { SHEETS } from "../../survey/sheets/sheets";
import { NO_WORD } from "../../survey/sheets/words";
import { holdsCell } from "../address";
import type { TablePlace } from "../surveyWorkbook";
import type { CellPlace } from "./explainCell";

/** A formula for one place, or why there is none for it. */
export type FormulaHere =
  | {
      readonly formula: string;
      /** The first cell that it reads, where that is blank and the result therefore empty or refused. */
      readonly blank?: CellPlace;
    }
  | {
      readonly problem: "otherRule" | "severalFigures" | "inTable";
      readonly facts: Readonly<Record<string, string>>;
    };

/** What the formula is made for. */
interface Around {
  readonly season: Season;
  readonly tables: readonly TablePlace[];
  readonly place: CellPlace;
}

/** A structured reference of a formula as the registry writes it, with what it means in this workbook. */
interface Referred {
  readonly written: string;
  readonly table: SurveyTable;
  /** Undefined for a whole table. */
  readonly column: SurveyColumn | undefined;
}

/**
 * A function's formula over the tables of this workbook, for the cell in which it will stand. In a row of the table
 * whose columns it takes it reads the cells of that row, with what the row's block has of its own (node rule, worth of a
 * secondary, budbreak, spacing); elsewhere it reads the whole columns, with what all blocks share. Tables are named as they are named here, and figures taken in the unit of their column. Without those
 * tables it is the function's first example.
 */
export function formulaHere(called: CordonFunction, around: Around): FormulaHere {
  const { place } = around;
  const example = { formula: called.examples[0].formula };
  if (called.onSheet === undefined) return example;
  const [call] = callsInFormula(called.onSheet);
  const found = call.args.map((written) => referredIn(written, around));
  const isOptional = call.args.map((_, index) => called.parameters[index].optional);
  if (found.some((referred, index) => referred === undefined && !isOptional[index])) return example;
  const all = found.flatMap((referred) => referred ?? []);
  const row = rowHere(called, call.args, all, place);
  const spills =
    row === undefined && (called.result.shape === "table" || columnsOf(called, found).length > 0);
  if (
    spills &&
    around.tables.some(({ sheet, area }) => sheet === place.sheet && holdsCell(area, place.row, place.column))
  )
    return { problem: "inTable", facts: {} };
  const units = systemFor(called, found, around.season.unitSystem);
  const args: string[] = [];
  for (const [index, written] of call.args.entries()) {
    const parameter = called.parameters[index];
    const referred = found[index];
    if (referred === undefined) args.push("");
    else if (OWN_FIGURES[called.id]?.[parameter.id]) {
      const figure = figureHere(
        OWN_FIGURES[called.id][parameter.id],
        parameter,
        units,
        all[0].table,
        row,
        around,
      );
      if ("problem" in figure) return figure;
      args.push(figure.written);
    } else args.push(argumentHere(written, referred, parameter, units, row, around));
  }
  const unit = called.parameters.findIndex(({ kind }) => kind === "unitSystem");
  if (units === "metric" && unit >= 0) args[unit] = '"metric"';
  const filled = Array.from(args, (each) => each ?? "")
    .join(",")
    .replace(/,+$/, "");
  const formula = called.onSheet.replace(call.text, () => `CORDON.${called.id}(${filled})`);
  const first = all.find(({ column }) => column !== undefined);
  const index = row ?? 0;
  const blank =
    first?.column && isBlank(first.column.raw.at(index))
      ? { sheet: first.table.sheet, row: first.table.sheetRow(index), column: first.column.sheetColumn }
      : undefined;
  return { formula, ...(blank ? { blank } : {}) };
}

const REFERENCE = /\b([A-Z][A-Za-z]+)\[((?:[^[\]])*)\]/g;

const SHEET_OF_NAME = new Map(
  Object.values(SHEETS).map((shape) => [shape.name.en.replace(/\s/g, "").toLowerCase(), shape.id]),
);

/** What an argument refers to; undefined where this workbook lacks a table or column of it. */
function referredIn(written: string, { season, place }: Around): readonly Referred[] | undefined {
  const found: Referred[] = [];
  for (const [whole, name, inside] of written.matchAll(REFERENCE)) {
    const id = SHEET_OF_NAME.get(name.toLowerCase());
    const tables = id === undefined ? [] : season.tables(id);
    const table = tables.find(({ sheet }) => sheet === place.sheet) ?? tables[0];
    if (table === undefined || table.rowCount === 0) return undefined;
    if (inside === "#All") {
      found.push({ written: whole, table, column: undefined });
      continue;
    }
    const head = plainHeader(inside);
    const wanted = table.shape.columns.find((column) => acceptedHeaders(column).includes(head));
    const column = wanted && table.column(wanted.id);
    if (column === undefined) return undefined;
    found.push({ written: whole, table, column });
  }
  return found;
}

/** Arguments that are one whole column each. */
const columnsOf = (called: CordonFunction, found: readonly (readonly Referred[] | undefined)[]) =>
  found.filter(
    (referred, index) => called.parameters[index].byColumn && referred?.some(({ column }) => column),
  );

/** Index of the table's row in which the place lies, where every reference is to a column of that table. */
function rowHere(
  called: CordonFunction,
  args: readonly string[],
  all: readonly Referred[],
  { sheet, row }: CellPlace,
): number | undefined {
  const [first] = all;
  const takesCells = args.every((written, index) => {
    const rest = written.replace(REFERENCE, "");
    return rest === written || (called.parameters[index].byColumn && !rest.includes("("));
  });
  const isOneTable = all.every(({ table, column }) => column !== undefined && table === first.table);
  if (first === undefined || !takesCells || !isOneTable || first.table.sheet !== sheet) return undefined;
  return first.table.indexOfSheetRow(row);
}

/** The unit system in which no column has to be converted; the season's where no column has a unit. */
function systemFor(
  called: CordonFunction,
  found: readonly (readonly Referred[] | undefined)[],
  usual: UnitSystem,
): UnitSystem {
  if (!called.parameters.some(({ kind }) => kind === "unitSystem")) return "US";
  const measured = found.flatMap((referred, index) =>
    (referred ?? []).flatMap(({ column }) =>
      column?.unit ? [{ column, parameter: called.parameters[index] }] : [],
    ),
  );
  if (measured.length === 0) return usual;
  const fits = (units: UnitSystem) =>
    measured.every(({ column, parameter }) => Math.abs(factor(column, parameter, units) - 1) < 1e-9);
  return !fits("US") && fits("metric") ? "metric" : "US";
}

/** What a cell of the column is multiplied by to be in the unit of the argument. */
const factor = ({ perUnit }: SurveyColumn, { measure }: Parameter, units: UnitSystem) =>
  perUnit / toMetric(1, measure, units);

/** A cell or column, multiplied where it is in another unit than the argument. */
function inUnitOf(cells: string, column: SurveyColumn, parameter: Parameter, units: UnitSystem): string {
  const times = column.unit && parameter.kind !== "share" ? factor(column, parameter, units) : 1;
  return Math.abs(times - 1) < 1e-9 ? cells : `${cells}*${Number(times.toPrecision(12))}`;
}

function argumentHere(
  written: string,
  referred: readonly Referred[],
  parameter: Parameter,
  units: UnitSystem,
  row: number | undefined,
  { tables, place }: Around,
): string {
  if (referred.length === 0) return literalHere(written, parameter, units);
  return referred.reduce((text, one) => {
    const { table, column } = one;
    const here =
      column && row !== undefined
        ? cellName(table.sheetRow(row), column.sheetColumn)
        : rangeOf(one, tables, place);
    return text.replace(one.written, () => (column ? inUnitOf(here, column, parameter, units) : here));
  }, written);
}

/** A figure of the formula in the unit system of the call; US is how the registry writes it. */
function literalHere(written: string, { measure }: Parameter, units: UnitSystem): string {
  const value = Number(written);
  if (units === "US" || written === "" || Number.isNaN(value)) return written;
  return String(Number(fromMetric(toMetric(value, measure, "US"), measure, units).toPrecision(4)));
}

/** A whole column or table: by the name of the workbook's table, or by its cells, as a head with a colon is no plain reference. */
function rangeOf({ table, column }: Referred, tables: readonly TablePlace[], { sheet }: CellPlace): string {
  const columns = table.columns.map(({ sheetColumn }) => sheetColumn);
  const named = tables.find(
    (one) =>
      one.sheet === table.sheet &&
      !column?.header.includes(":") &&
      one.area.firstRow === table.headerRow &&
      columns.every((each) => each >= one.area.firstColumn && each <= one.area.lastColumn),
  );
  if (named) return `${named.name}[${column ? column.header.replace(/['#@[\]]/g, "'$&") : "#All"}]`;
  const [left, right] = column
    ? [column.sheetColumn, column.sheetColumn]
    : [Math.min(...columns), Math.max(...columns)];
  const [top, bottom] = [column ? table.sheetRow(0) : table.headerRow, table.sheetRow(table.rowCount - 1)];
  return `${sheetPart(table.sheet, sheet)}${columnLetters(left)}${top}:${columnLetters(right)}${bottom}`;
}

const sheetPart = (of: string, from: string) =>
  of === from ? "" : /^[A-Za-z_]\w*$/.test(of) ? `${of}!` : `'${of.replace(/'/g, "''")}'!`;

/** A figure that a block may have of its own: its column of the Blocks sheet, and what is in force where that is blank. */
interface OwnFigure {
  readonly column: string;
  readonly inForce: (season: Season, block: number) => string | number;
}

const figureOf = (column: BlockFigureId): OwnFigure => ({
  column,
  inForce: (season, block) => blockFigures(season)(block)[column].value,
});

/** By function and argument. */
const OWN_FIGURES: Readonly<Record<string, Readonly<Record<string, OwnFigure>>>> = {
  NODEBUDGET: { formula: figureOf("nodeRule") },
  CROPAFTERFROST: { secondary_worth: figureOf("secondaryWorth") },
  SHOOTS: { budbreak: figureOf("budbreak") },
  SHOOTSTOREMOVE: {
    length: {
      column: "vineSpacing",
      inForce: ({ places }, block) => places.blockNumber(block, "vineSpacing"),
    },
    density: { column: "", inForce: ({ settings }) => settings.shootsByLength },
    minutes: { column: "", inForce: ({ settings }) => settings.minutesAVineShootThinning },
  },
};

type FigureHere = { readonly written: string } | Extract<FormulaHere, { problem: string }>;

/** The figure of the row's block, by its cell in the Blocks sheet where it stands there; for whole columns that of all blocks. */
function figureHere(
  { column, inForce }: OwnFigure,
  parameter: Parameter,
  units: UnitSystem,
  table: SurveyTable,
  row: number | undefined,
  { season, place }: Around,
): FigureHere {
  const written = (block: number) => {
    const value = inForce(season, block);
    if (typeof value === "string") return `"${value}"`;
    return Number.isNaN(value)
      ? ""
      : String(Number(fromMetric(value, parameter.measure, units).toPrecision(6)));
  };
  const own = table.column("block")?.codes[row ?? -1] ?? NO_WORD;
  const known = [...season.places.blockRows().keys()];
  const blocks = row !== undefined || known.length === 0 ? [own] : known;
  const [block] = blocks;
  const [first, ...others] = new Set(blocks.map(written));
  if (others.length > 0)
    return {
      problem: "severalFigures",
      facts: { figures: [first, ...others].join(", "), sheet: table.sheet },
    };
  if (column === "nodeRule" && !isBalancedRule(String(inForce(season, block))))
    return {
      problem: "otherRule",
      facts: {
        block: row === undefined ? "" : season.words.wordOf(block),
        rule: String(inForce(season, block)),
      },
    };
  const entry = row === undefined ? undefined : season.places.blockRows().get(block);
  const cells = entry?.table.column(column);
  if (!entry || !cells || isBlank(cells.raw.at(entry.index))) return { written: first };
  const cell = `$${columnLetters(cells.sheetColumn)}$${entry.table.sheetRow(entry.index)}`;
  return { written: inUnitOf(sheetPart(entry.table.sheet, place.sheet) + cell, cells, parameter, units) };
}
