import { callsInFormula } from "../../functions/callsInFormula";
import { cellsOfExpression } from "../../functions/evaluateFormula";
import { explainCall, type CallExplained, type GivenArgument } from "../../functions/explainCall";
import { FormulaProblem, parseFormula, type Expression } from "../../functions/parseFormula";
import type { ResultCell } from "../../functions/callFunction";
import type { SheetArea } from "../../survey/reading/sheetArea";
import type { CellValue } from "../../survey/sheets/cell";
import type { Language } from "../../texts/language";
import { holdsCell, type CellArea } from "../address";
import { readReference, type TablePart } from "../reference";
import { WorkbookProblem, type ReadOptions, type SurveyWorkbook, type TablePlace } from "../surveyWorkbook";

export interface CellPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** What stands in a cell, as far as our functions are concerned. */
export interface CellExplained extends CellPlace {
  readonly shows: CellValue;
  /** The formula that fills the cell, and the cell in which it stands; none for a cell without one. */
  readonly formula?: string;
  readonly anchor: CellPlace;
  /** Our calls in the formula, an outer one before those in its arguments. */
  readonly calls: readonly CallExplained[];
  /** What the call gives for this very cell, where the formula is that call and nothing else. */
  readonly answers?: ResultCell;
}

/**
 * Explains one cell: which of our functions fill it, what each reads and answers. A cell that a spilling formula fills
 * is explained by that formula.
 */
export async function explainCell(
  workbook: SurveyWorkbook,
  place: CellPlace,
  language: Language,
): Promise<CellExplained> {
  const cell = await cellAt(workbook, place);
  const block =
    cell.formula === null ? await workbook.filledFrom?.(place.sheet, place.row, place.column) : undefined;
  const anchor = block ? { ...place, row: block.firstRow, column: block.firstColumn } : place;
  const formula = block ? (await cellAt(workbook, anchor)).formula : cell.formula;
  const about = { ...place, shows: cell.value, anchor };
  if (formula === null) return { ...about, calls: [] };
  const cells = new ReferredCells(workbook, anchor);
  const calls: CallExplained[] = [];
  for (const { called, text, args } of callsInFormula(formula)) {
    const given: GivenArgument[] = [];
    for (const written of args) given.push(await argumentOf(written, cells, language));
    calls.push(explainCall(called, text, given, language));
  }
  const [first] = calls;
  const isAlone = first !== undefined && formula.replace(/^=\s*@?/, "").trim() === first.text;
  const values = isAlone && first.outcome && "values" in first.outcome ? first.outcome.values : undefined;
  const answers = values
    ? values[place.row - anchor.row]?.[place.column - anchor.column]
    : isAlone && first.outcome && "error" in first.outcome
      ? first.outcome
      : undefined;
  return { ...about, formula, calls, ...(answers === undefined ? {} : { answers }) };
}

async function cellAt(workbook: SurveyWorkbook, { sheet, row, column }: CellPlace) {
  const area = await workbook.readSheet(sheet, { rows: { first: row, count: 1 } });
  const [r, c] = [row - area.firstRow, column - area.firstColumn];
  const value = area.values[r]?.[c];
  return { value: value ?? null, formula: value === undefined ? null : area.formulaAt(r, c) };
}

/** An argument whose expression only the spreadsheet can work out has no cells. */
async function argumentOf(written: string, cells: ReferredCells, language: Language): Promise<GivenArgument> {
  if (written === "") return { written, cells: undefined };
  try {
    const expression = parseFormula(`=${written}`);
    const found = new Map<string, ReferredArea | undefined>();
    for (const name of referencesIn(expression)) found.set(name, await cells.at(name));
    const given = cellsOfExpression(expression, language, (name) => found.get(name)?.cells);
    const only = expression.is === "reference" ? found.get(expression.name)?.from : undefined;
    return { written, cells: given, ...(only ? { from: only } : {}) };
  } catch (problem) {
    if (problem instanceof FormulaProblem) return { written, cells: undefined };
    throw problem;
  }
}

function referencesIn(expression: Expression): readonly string[] {
  switch (expression.is) {
    case "reference":
      return [expression.name];
    case "array":
      return expression.rows.flat().flatMap(referencesIn);
    case "call":
      return expression.args.flatMap((each) => (each === null ? [] : referencesIn(each)));
    case "negative":
    case "percent":
      return referencesIn(expression.of);
    case "operation":
      return [expression.left, expression.right].flatMap(referencesIn);
    default:
      return [];
  }
}

interface ReferredArea {
  readonly cells: readonly (readonly CellValue[])[];
  readonly from: CellPlace;
}

/** Reads the cells that references name; rows that several of them name are read once. */
class ReferredCells {
  private readonly readings = new Map<string, Promise<SheetArea | undefined>>();
  private known: Promise<readonly TablePlace[]> | undefined;

  /** @param anchor the cell of the formula */
  constructor(
    private readonly workbook: SurveyWorkbook,
    private readonly anchor: CellPlace,
  ) {}

  /** Undefined for a reference that names nothing here. */
  async at(text: string): Promise<ReferredArea | undefined> {
    const reference = readReference(text);
    if (reference.is === "name") {
      const named = await this.workbook.areaOfName?.(reference.name);
      if (named) return this.cellsOf(named.sheet, named.area);
      return this.tableCells({ table: reference.name, rows: "data" });
    }
    if (reference.is === "table") return this.tableCells(reference.part);
    const { sheet = this.anchor.sheet, area, spills } = reference;
    const filled = spills ? await this.workbook.filledFrom?.(sheet, area.firstRow, area.firstColumn) : area;
    return filled && this.cellsOf(sheet, filled);
  }

  private async tableCells(part: TablePart): Promise<ReferredArea | undefined> {
    this.known ??= this.workbook.tables?.() ?? Promise.resolve([]);
    const { sheet, row, column } = this.anchor;
    const table = (await this.known).find((one) =>
      part.table === undefined
        ? one.sheet === sheet && holdsCell(one.area, row, column)
        : one.name.toLowerCase() === part.table.toLowerCase(),
    );
    if (!table) return undefined;
    const heads = await this.cellsOf(table.sheet, { ...table.area, lastRow: table.area.firstRow });
    const names = heads?.cells[0]?.map((head) => plainHead(String(head ?? ""))) ?? [];
    const [first, last] = part.columns?.map((head) => names.indexOf(plainHead(head))) ?? [
      0,
      names.length - 1,
    ];
    if (first < 0 || last < 0) return undefined;
    const rows = rowsOfPart(part.rows, table, row);
    return this.cellsOf(table.sheet, {
      ...rows,
      firstColumn: table.area.firstColumn + Math.min(first, last),
      lastColumn: table.area.firstColumn + Math.max(first, last),
    });
  }

  /** Whole columns and rows end where the sheet's filled part does. */
  private async cellsOf(sheet: string, area: CellArea): Promise<ReferredArea | undefined> {
    const isLong = area.lastRow - area.firstRow >= LONGEST;
    const count = area.lastRow - area.firstRow + 1;
    const read = await this.read(sheet, isLong ? undefined : { first: area.firstRow, count });
    if (!read) return undefined;
    const filled = {
      row: read.firstRow + read.values.length - 1,
      column: read.firstColumn + width(read) - 1,
    };
    const lastRow = isLong ? Math.max(area.firstRow, filled.row) : area.lastRow;
    const lastColumn =
      area.lastColumn - area.firstColumn >= WIDEST
        ? Math.max(area.firstColumn, filled.column)
        : area.lastColumn;
    const cells = Array.from({ length: lastRow - area.firstRow + 1 }, (_, r) =>
      Array.from(
        { length: lastColumn - area.firstColumn + 1 },
        (_each, c) =>
          read.values[area.firstRow + r - read.firstRow]?.[area.firstColumn + c - read.firstColumn] ?? null,
      ),
    );
    return { cells, from: { sheet: read.sheet, row: area.firstRow, column: area.firstColumn } };
  }

  private read(sheet: string, rows: ReadOptions["rows"]): Promise<SheetArea | undefined> {
    const key = JSON.stringify([sheet.toLowerCase(), rows]);
    const reading =
      this.readings.get(key) ??
      this.workbook.readSheet(sheet, { rows }).catch((problem: unknown) => {
        if (problem instanceof WorkbookProblem && problem.code === "noSheet") return undefined;
        throw problem;
      });
    this.readings.set(key, reading);
    return reading;
  }
}

const width = ({ values }: SheetArea) => values[0]?.length ?? 0;

/** Rows and columns from which on a reference means whole columns or rows. */
const LONGEST = 1_000_000;
const WIDEST = 16_000;

/** In a structured reference a line break of a head is a blank. */
const plainHead = (head: string) => head.replace(/\s+/g, " ").trim().toLowerCase();

function rowsOfPart(rows: TablePart["rows"], { area, totals }: TablePlace, row: number) {
  const { firstRow, lastRow } = area;
  const lastData = totals ? lastRow - 1 : lastRow;
  switch (rows) {
    case "all":
      return { firstRow, lastRow };
    case "headers":
      return { firstRow, lastRow: firstRow };
    case "totals":
      return { firstRow: lastRow, lastRow };
    case "thisRow":
      return { firstRow: row, lastRow: row };
    case "headersAndData":
      return { firstRow, lastRow: lastData };
    case "dataAndTotals":
      return { firstRow: firstRow + 1, lastRow };
    default:
      return { firstRow: firstRow + 1, lastRow: lastData };
  }
}
