import { marksIfAny, type MarkedCell, type MergedArea, type SheetEnd } from "../../survey/reading/sheetArea";
import type { CellValue } from "../../survey/sheets/cell";
import { shownFormula } from "../storedFormula";
import { WorkbookProblem } from "../surveyWorkbook";
import { PlainRows, type RowListener } from "./plainRows";
import type { ReadLimits } from "./readLimits";
import { unescapeText } from "./sharedStrings";
import type { StyleKinds } from "./styleKinds";
import { movableFormula } from "./movableFormula";
import type { WorkbookPackage } from "./workbookPackage";
import { XmlParser, type XmlListener } from "./xmlParser";

/** One row of a sheet, from column A to its last cell that holds anything. */
export interface SheetRow {
  /** The first row of a sheet is 1. */
  readonly number: number;
  readonly values: CellValue[];
  /** Formulas by index in `values`. */
  readonly formulas: ReadonlyMap<number, string> | undefined;
}

/** What the cells of a sheet refer to elsewhere in the workbook. */
export interface CellContext {
  readonly sharedStrings: readonly string[];
  /** Undefined in a workbook without styles. */
  readonly styles: StyleKinds | undefined;
  readonly startsIn1904: boolean;
}

/** Days from 30 December 1899 to 1 January 1904. */
export const DAYS_TO_1904 = 1462;
const MILLISECONDS_A_DAY = 86_400_000;
const EPOCH = Date.UTC(1899, 11, 30);

/**
 * The rows of a sheet in batches, in the order of the sheet, as they come in: no more of the sheet is held than one
 * batch. Cells without any content are left out, whatever their format.
 *
 * @param onEnd told behind the last row, without what is said on cells, which stands in parts of its own
 */
export async function* sheetRows(
  source: WorkbookPackage,
  part: string,
  sheet: string,
  context: CellContext,
  limits: ReadLimits,
  onEnd?: (end: SheetEnd) => void,
): AsyncGenerator<SheetRow[]> {
  const collector = new RowCollector(source.file, sheet, context, limits);
  const parser = new XmlParser(source.file, part, collector, limits);
  const rows = new PlainRows(parser, collector);
  for await (const chunk of source.chunks(part)) {
    rows.push(parser.textOf(chunk));
    if (collector.rows.length > 0) yield collector.take();
  }
  rows.end();
  if (collector.rows.length > 0) yield collector.take();
  const { merged, marked, hiddenRows, hiddenColumns } = collector;
  onEnd?.({ merged, marks: marksIfAny({ marked, hiddenRows, hiddenColumns }) });
}

const MOST_MERGED = 100_000;
/** Struck cells and hidden rows that are held of a sheet. */
const MOST_MARKED = 100_000;
/** Columns that are looked at for hidden ones: "hidden to the last column of the sheet" is one entry in a file. */
const COLUMNS_LOOKED_AT = 1000;

function columnNumber(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
}

interface SharedFormula {
  readonly shown: string;
  readonly moved: (rows: number, columns: number) => string;
  readonly row: number;
  readonly column: number;
}

class RowCollector implements XmlListener, RowListener {
  rows: SheetRow[] = [];
  readonly merged: MergedArea[] = [];
  readonly marked: MarkedCell[] = [];
  readonly hiddenRows: number[] = [];
  readonly hiddenColumns: number[] = [];
  isBehindRow = false;
  private inData = false;
  private row = 0;
  private rowText = "";
  private column = 0;
  private values: CellValue[] = [];
  private formulas: Map<number, string> | undefined;
  private cells = 0;
  private type = "n";
  private style = "";
  private value: string | undefined;
  private formula: string | undefined;
  private formulaAttributes: Readonly<Record<string, string>> = {};
  private inlineText: string | undefined;
  private collecting: "v" | "f" | "t" | undefined;
  private inGuide = false;
  /** How deep in an element that gives a cell no value: what stands within is none of the cell's either. */
  private strange = 0;
  private sharedCharacters = 0;
  private isHiddenRow = false;
  private readonly struck: ReadonlySet<string> | undefined;
  private readonly shared = new Map<string, SharedFormula>();

  constructor(
    private readonly file: string,
    private readonly sheet: string,
    private readonly context: CellContext,
    private readonly limits: ReadLimits,
  ) {
    const struck = context.styles?.struck;
    this.struck = struck && struck.size > 0 ? struck : undefined;
  }

  take(): SheetRow[] {
    const rows = this.rows;
    this.rows = [];
    return rows;
  }

  open(name: string, attributes: Readonly<Record<string, string>>): void {
    this.isBehindRow = false;
    if (!this.inData) {
      if (name === "sheetData") this.inData = true;
      else if (name === "mergeCell") this.merge(attributes.ref);
      else if (name === "col" && isYes(attributes.hidden)) this.hideColumns(attributes);
      return;
    }
    if (this.strange > 0) {
      this.strange++;
      return;
    }
    switch (name) {
      case "row":
        this.startRow(attributes.r, isYes(attributes.hidden));
        break;
      case "c":
        this.startCell(attributes.r, attributes.s, attributes.t);
        break;
      case "v":
        this.collecting = "v";
        this.value = "";
        break;
      case "f":
        this.collecting = "f";
        this.formula = "";
        this.formulaAttributes = attributes;
        break;
      case "rPh":
        this.inGuide = true;
        break;
      case "t":
        if (this.inGuide) break;
        this.collecting = "t";
        this.inlineText ??= "";
        break;
      case "is":
      case "r":
        break;
      default:
        this.strange = 1;
    }
  }

  /** Notes a merged area; one that is not written as an area, or too many to be made by hand, count as none. */
  private merge(ref: string | undefined): void {
    const corners = /^\$?([A-Z]{1,3})\$?(\d{1,7}):\$?([A-Z]{1,3})\$?(\d{1,7})$/.exec(ref ?? "");
    if (!corners || this.merged.length >= MOST_MERGED) return;
    const [first, last] = [columnNumber(corners[1]), columnNumber(corners[3])];
    const [top, bottom] = [Number(corners[2]), Number(corners[4])];
    if (last < first || bottom < top) return;
    this.merged.push({ row: top, column: first, rows: bottom - top + 1, columns: last - first + 1 });
  }

  private hideColumns({ min, max }: Readonly<Record<string, string>>): void {
    const last = Math.min(Number(max), COLUMNS_LOOKED_AT);
    for (let column = Number(min); column <= last; column++) this.hiddenColumns.push(column);
  }

  text(text: string): void {
    if (this.collecting === undefined || this.strange > 0) return;
    const so = (
      this.collecting === "v" ? this.value : this.collecting === "f" ? this.formula : this.inlineText
    )!;
    if (so.length + text.length > this.limits.cellCharacters)
      this.refuse("tooMuchText", { part: this.sheet, most: this.limits.cellCharacters });
    if (this.collecting === "v") this.value = so + text;
    else if (this.collecting === "f") this.formula = so + text;
    else this.inlineText = so + text;
  }

  close(name: string): void {
    if (!this.inData) return;
    if (this.strange > 0) {
      this.strange--;
      return;
    }
    switch (name) {
      case "v":
      case "f":
      case "t":
        this.collecting = undefined;
        break;
      case "rPh":
        this.inGuide = false;
        break;
      case "c":
        this.endCell();
        break;
      case "row":
        this.endRow();
        this.isBehindRow = true;
        break;
      case "sheetData":
        this.inData = false;
        break;
    }
  }

  cell(r: string, style: string | undefined, type: string | undefined, value: string | undefined): void {
    this.startCell(r, style, type);
    if (value !== undefined) {
      this.collecting = "v";
      this.value = "";
      this.text(value);
      this.collecting = undefined;
    }
    this.endCell();
  }

  startRow(r: string | undefined, isHidden: boolean): void {
    const number = r === undefined ? this.row + 1 : Number(r);
    if (!Number.isInteger(number) || number < 1 || number > this.limits.rows)
      this.refuse("rowPastLimit", { row: r ?? number, most: this.limits.rows });
    if (number <= this.row) this.refuse("rowTwice", { row: number });
    this.row = number;
    this.rowText = String(number);
    this.isHiddenRow = isHidden;
    this.column = 0;
    this.values = [];
    this.formulas = undefined;
  }

  private startCell(r: string | undefined, style: string | undefined, type: string | undefined): void {
    const column = r === undefined ? this.column + 1 : columnOf(r, this.rowText, this.refuseCell);
    if (column > this.limits.columns)
      this.refuse("columnPastLimit", { cell: r ?? column, most: this.limits.columns });
    if (column <= this.column) this.refuse("cellTwice", { cell: r ?? column, row: this.row });
    this.column = column;
    this.type = type ?? "n";
    this.style = style ?? "";
    this.value = this.formula = this.inlineText = undefined;
  }

  private endCell(): void {
    const formula = this.formulaHere();
    const value = this.cellValue();
    if (value === null && formula === undefined) return;
    const index = this.column - 1;
    this.cells += index + 1 - this.values.length;
    if (this.cells > this.limits.cells * 2) this.refuse("tooManyCells", { most: this.limits.cells });
    while (this.values.length < index) this.values.push(null);
    this.values.push(value);
    if (formula !== undefined) (this.formulas ??= new Map()).set(index, formula);
    if (this.struck?.has(this.style) && this.marked.length < MOST_MARKED)
      this.marked.push({ row: this.row, column: this.column, struck: true });
  }

  endRow(): void {
    if (this.values.length === 0) return;
    this.rows.push({ number: this.row, values: this.values, formulas: this.formulas });
    if (this.isHiddenRow && this.hiddenRows.length < MOST_MARKED) this.hiddenRows.push(this.row);
  }

  /** The formula as a person sees it. A cell of a shared formula gets the first cell's, moved along. */
  private formulaHere(): string | undefined {
    if (this.formula === undefined) return undefined;
    const { t, si } = this.formulaAttributes;
    if (t === "dataTable") return undefined;
    if (t !== "shared" || si === undefined)
      return this.formula === "" ? undefined : shownFormula(this.formula);
    if (this.formula !== "") {
      const shown = shownFormula(this.formula);
      this.shared.set(si, { shown, moved: movableFormula(shown), row: this.row, column: this.column });
      return shown;
    }
    const first = this.shared.get(si);
    if (!first) return undefined;
    this.sharedCharacters += first.shown.length;
    const most = this.limits.sharedFormulaCharacters;
    if (this.sharedCharacters > most) this.refuse("tooMuchText", { part: this.sheet, most });
    return first.moved(this.row - first.row, this.column - first.column);
  }

  private cellValue(): CellValue {
    const { type, value } = this;
    if (type === "inlineStr") return this.inlineText === undefined ? null : unescapeText(this.inlineText);
    if (value === undefined || (value === "" && type !== "str")) return null;
    switch (type) {
      case "s": {
        const text = this.context.sharedStrings[Number(value)];
        if (text === undefined) this.refuse("badCell", { cell: value, row: this.row });
        return text;
      }
      case "str":
        return unescapeText(value);
      case "b":
        return value === "1" || value === "true";
      case "e":
        return { error: value };
      case "d":
        return this.day(value);
      default:
        return this.number(value);
    }
  }

  private number(written: string): number {
    const number = Number(written) + 0;
    if (!Number.isFinite(number) || isOfAnotherBase(written))
      this.refuse("badNumber", { value: written.slice(0, 40), row: this.row });
    return this.context.startsIn1904 && number >= 1 && this.context.styles?.days[Number(this.style)]
      ? number + DAYS_TO_1904
      : number;
  }

  private day(written: string): CellValue {
    const time = Date.parse(/T/.test(written) && !/Z|[+-]\d\d:\d\d$/.test(written) ? `${written}Z` : written);
    return Number.isNaN(time) ? written : (time - EPOCH) / MILLISECONDS_A_DAY;
  }

  private readonly refuseCell = (cell: string) => this.refuse("badCell", { cell, row: this.row });

  private refuse(code: string, facts: Record<string, string | number>): never {
    throw new WorkbookProblem(code, { file: this.file, sheet: this.sheet, ...facts });
  }
}

/** True for the ways that a workbook writes true. */
export function isYes(value: string | undefined): boolean {
  return value === "1" || value === "true" || value === "on";
}

/** True for what JavaScript reads as a number and no workbook writes: 0x10, 0b1, 0o7. */
function isOfAnotherBase(written: string): boolean {
  return (
    (written.charCodeAt(1) > DIGIT_NINE || written.charCodeAt(0) <= SPACE) && /^\s*0[box]/i.test(written)
  );
}

const DIGIT_NINE = 57;
const SPACE = 32;

/** The column of a cell's address, whose row must be the row that it stands in. */
function columnOf(address: string, row: string, refuse: (address: string) => never): number {
  const letters = address.length - row.length;
  if (letters < 1 || letters > 3 || !address.endsWith(row)) refuse(address.slice(0, 40));
  let column = 0;
  for (let i = 0; i < letters; i++) {
    const letter = (address.charCodeAt(i) | 32) - 96;
    if (letter < 1 || letter > 26) refuse(address.slice(0, 40));
    column = column * 26 + letter;
  }
  return column;
}
