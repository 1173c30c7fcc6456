import type { UnitSystem } from "../../domain/units";
import { callsInFormula } from "../../functions/callsInFormula";
import type { CordonFunction } from "../../functions/cordonFunction";
import { fromMetric, toMetric } from "../../functions/measure";
import type { Parameter } from "../../functions/parameter";
import { blockRules } from "../../survey/decide/plan/vineBudgets";
import type { Season, SurveyColumn, SurveyTable } from "../../survey/season/season";
import { isBlank } from "../../survey/sheets/cell";
import { cellName, columnLetters } from "../../survey/sheets/cellName";
import { acceptedHeaders, plainHeader } from "../../survey/sheets/column";
import { isBalancedRule } from "../../survey/sheets/nodeRules";
import { SHEETS } from "../../survey/sheets/sheets";
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
      readonly problem: "otherRule" | "severalRules" | "inTable";
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
 * whose columns it takes it reads the cells of that row, with the node rule of the row's block; elsewhere it reads the
 * whole columns. Tables are named as they are named here, and figures taken in the unit of their column. Without those
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
  const units = systemFor(called, found);
  const args: string[] = [];
  for (const [index, written] of call.args.entries()) {
    const parameter = called.parameters[index];
    const referred = found[index];
    if (referred === undefined) args.push("");
    else if (called.id === "NODEBUDGET" && parameter.id === "formula") {
      const rule =
        row === undefined ? ruleOfAll(around.season) : ruleOfRow(around.season, all[0].table, row, place);
      if ("problem" in rule) return rule;
      args.push(rule.written);
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

/** The unit system in which no column has to be converted; US where there is none. */
function systemFor(called: CordonFunction, found: readonly (readonly Referred[] | undefined)[]): UnitSystem {
  if (!called.parameters.some(({ kind }) => kind === "unitSystem")) return "US";
  const measured = found.flatMap((referred, index) =>
    (referred ?? []).flatMap(({ column }) =>
      column?.unit ? [{ column, parameter: called.parameters[index] }] : [],
    ),
  );
  const fits = (units: UnitSystem) =>
    measured.every(({ column, parameter }) => Math.abs(factor(column, parameter, units) - 1) < 1e-9);
  return measured.length > 0 && !fits("US") && fits("metric") ? "metric" : "US";
}

/** What a cell of the column is multiplied by to be in the unit of the argument. */
const factor = ({ perUnit }: SurveyColumn, { measure }: Parameter, units: UnitSystem) =>
  perUnit / toMetric(1, measure, units);

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
    const times = column?.unit && parameter.kind !== "share" ? factor(column, parameter, units) : 1;
    return text.replace(one.written, () =>
      Math.abs(times - 1) < 1e-9 ? here : `${here}*${Number(times.toPrecision(12))}`,
    );
  }, written);
}

/** A figure of the formula in the unit system of the call; US is how the registry writes it. */
function literalHere(written: string, { measure }: Parameter, units: UnitSystem): string {
  const value = Number(written);
  if (units === "US" || written === "" || Number.isNaN(value)) return written;
  return String(Number(fromMetric(toMetric(value, measure, "US"), measure, units).toPrecision(4)));
}

/** A whole column or table: by the name of the workbook's table, or by its cells. */
function rangeOf({ table, column }: Referred, tables: readonly TablePlace[], { sheet }: CellPlace): string {
  const columns = table.columns.map(({ sheetColumn }) => sheetColumn);
  const named = tables.find(
    (one) =>
      one.sheet === table.sheet &&
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

type RuleHere = { readonly written: string } | Extract<FormulaHere, { problem: string }>;

/** The node rule of a row's block: its cell in the Blocks sheet, or the text where Settings names it. */
function ruleOfRow(season: Season, table: SurveyTable, index: number, place: CellPlace): RuleHere {
  const code = table.column("block")?.codes[index] ?? -1;
  const rule = blockRules(season)(code).nodes;
  if (!isBalancedRule(rule))
    return { problem: "otherRule", facts: { block: season.words.wordOf(code), rule } };
  const entry = season.places.blockRows().get(code);
  const column = entry?.table.column("nodeRule");
  if (!entry || !column || isBlank(column.raw.at(entry.index))) return { written: `"${rule}"` };
  const cell = `$${columnLetters(column.sheetColumn)}$${entry.table.sheetRow(entry.index)}`;
  return { written: sheetPart(entry.table.sheet, place.sheet) + cell };
}

/** The node rule that all blocks share. */
function ruleOfAll(season: Season): RuleHere {
  const rules = blockRules(season);
  const codes = [...season.places.blockRows().keys()];
  const [rule, ...others] = new Set(
    codes.length === 0 ? [season.settings.nodeRule] : codes.map((code) => rules(code).nodes),
  );
  if (others.length > 0) return { problem: "severalRules", facts: { rules: [rule, ...others].join(", ") } };
  return isBalancedRule(rule)
    ? { written: `"${rule}"` }
    : { problem: "otherRule", facts: { block: "", rule } };
}
