import { isCellError, type CellValue } from "../../survey/sheets/cell";
import { cellName } from "../address";
import { shownFormula, storedFormula } from "../storedFormula";
import type { CellWrite } from "../surveyWorkbook";
import { cellXml } from "./ownSheetXml";
import { numberOf } from "./movableFormula";
import { unshared } from "./sharedFormulas";
import { DAYS_TO_1904 } from "./sheetRows";
import {
  MalformedPart,
  plainText,
  spliced,
  xmlAttribute,
  xmlSpans,
  xmlText,
  type Splice,
  type XmlSpan,
} from "./xmlSpans";

/** A cell to be written into a file, with what only a file stores of it. */
export type FileCellWrite = (
  CellWrite | { readonly row: number; readonly column: number; readonly value: CellValue }
) & {
  /** Number format for a cell that has none of its own. */
  readonly format?: string;
  /** The cells that the formula fills ("H1:H3"): it is stored as a dynamic array. */
  readonly fills?: string;
  /** Number of the style for a cell that is not there yet. */
  readonly style?: number;
};

/** How a workbook stores what is more than a value. */
export interface CellStorage {
  /** Number of the style that is like another with a number format. */
  formatted(style: number, format: string): number;
  /** True for a style whose numbers are days counted from 1904. */
  countsFrom1904(style: number): boolean;
  /** Number of the mark of dynamic arrays among the workbook's cell metadata. */
  readonly dynamicArray: number | undefined;
}

const PLAIN_STORAGE: CellStorage = {
  formatted: (style) => style,
  countsFrom1904: () => false,
  dynamicArray: undefined,
};

/** The sheet with these cells written; every other cell keeps its bytes, a written one keeps its style. */
export function withCells(
  before: string,
  cells: readonly FileCellWrite[],
  storage: CellStorage = PLAIN_STORAGE,
): string {
  const changed = new Map(cells.map((cell) => [cellName(cell.row, cell.column), cell]));
  const xml = unshared(before, (place, formula) => {
    const cell = changed.get(place);
    return cell !== undefined && !("formula" in cell && cell.formula === shownFormula(formula));
  });
  const shape = xmlSpans(
    xml,
    (path) =>
      (path[0] === "sheetData" && (path.length <= 2 || (path.length === 3 && path[2] === "c"))) ||
      (path[0] === "cols" && path.length === 2),
  );
  const p = shape.prefix;
  const data = shape.spans.find(({ name }) => name === "sheetData");
  const rows = placedRows(shape.spans);
  const columnsOf = shape.spans.filter(({ name }) => name === "col");
  const sheet: SheetStorage = {
    ...storage,
    xml,
    p,
    columnStyle: (column) =>
      Number(
        columnsOf.find(({ attributes: { min, max } }) => column >= Number(min) && column <= Number(max))
          ?.attributes.style ?? 0,
      ),
  };
  const byRow = new Map<number, Map<number, FileCellWrite>>();
  for (const cell of cells)
    byRow.set(cell.row, (byRow.get(cell.row) ?? new Map<number, FileCellWrite>()).set(cell.column, cell));
  const splices: Splice[] = [];
  const newRows: { row: number; text: string }[] = [];
  for (const [row, columns] of [...byRow].sort(([a], [b]) => a - b)) {
    const there = rows.get(row);
    const sorted = [...columns].sort(([a], [b]) => a - b);
    if (there) splices.push(...rowSplices(sheet, there, sorted));
    else {
      const inner = sorted.map(([, cell]) => newCell(sheet, cell, 0)).join("");
      if (inner !== "") newRows.push({ row, text: `<${p}row r="${row}">${inner}</${p}row>` });
    }
  }
  const numbers = [...rows.keys()];
  for (const { row, text } of newRows) {
    const next = numbers.find((number) => number > row);
    const at = next !== undefined ? rows.get(next)!.span.start : data!.closeStart;
    splices.push({ start: at, end: at, text });
  }
  if (data?.selfClosing && newRows.length > 0)
    return spliced(xml, [
      {
        start: data.start,
        end: data.end,
        text: `<${p}sheetData>${newRows.map(({ text }) => text).join("")}</${p}sheetData>`,
      },
    ]);
  return spliced(xml, splices);
}

interface PlacedRow {
  readonly span: XmlSpan;
  readonly cells: ReadonlyMap<number, XmlSpan>;
}

/** Rows and their cells by number, counted on where numbers are left out. */
function placedRows(spans: readonly XmlSpan[]): Map<number, PlacedRow> {
  const rows = new Map<number, PlacedRow>();
  let row = 0;
  let column = 0;
  let cells = new Map<number, XmlSpan>();
  for (const span of spans) {
    if (span.name === "row") {
      row = span.attributes.r === undefined ? row + 1 : Number(span.attributes.r);
      if (!Number.isInteger(row)) throw new MalformedPart(`row ${span.attributes.r}`);
      column = 0;
      cells = new Map();
      rows.set(row, { span, cells });
    } else if (span.name === "c") {
      const letters = /^[A-Za-z]+/.exec(span.attributes.r ?? "")?.[0];
      column = letters === undefined ? column + 1 : numberOf(letters);
      cells.set(column, span);
    }
  }
  return rows;
}

/** A sheet whose cells are written. */
interface SheetStorage extends CellStorage {
  readonly xml: string;
  readonly p: string;
  /** Style of the cells of a column that have none of their own. */
  columnStyle(column: number): number;
}

function rowSplices(
  sheet: SheetStorage,
  { span, cells }: PlacedRow,
  columns: readonly (readonly [number, FileCellWrite])[],
): Splice[] {
  const { xml, p } = sheet;
  const splices: Splice[] = [];
  const fresh: string[] = [];
  const rowStyle = /^(1|true)$/.test(span.attributes.customFormat ?? "") ? Number(span.attributes.s ?? 0) : 0;
  for (const [column, cell] of columns) {
    const there = cells.get(column);
    if (there) {
      const style = styleFor(sheet, cell, Number(there.attributes.s ?? 0));
      const text = keptFormula(sheet, there, cell, style) ?? written(sheet, cell, style);
      splices.push({ start: there.start, end: there.end, text });
      continue;
    }
    const text = newCell(sheet, cell, rowStyle);
    const next = [...cells.keys()].find((number) => number > column);
    if (next !== undefined)
      splices.push({ start: cells.get(next)!.start, end: cells.get(next)!.start, text });
    else fresh.push(text);
  }
  const inner = fresh.join("");
  if (inner === "") return splices;
  if (!span.selfClosing) return [...splices, { start: span.closeStart, end: span.closeStart, text: inner }];
  const opened = xml.slice(span.start, span.end).replace(/\s*\/>$/, ">");
  return [{ start: span.start, end: span.end, text: `${opened}${inner}</${p}row>` }];
}

/** A cell that is not there yet looks as its row or column says. */
function newCell(sheet: SheetStorage, cell: FileCellWrite, rowStyle: number): string {
  const style = cell.style ?? (rowStyle || sheet.columnStyle(cell.column));
  if (cell.style === undefined && !("formula" in cell) && isNothing(cell.value)) return "";
  return written(sheet, cell, styleFor(sheet, cell, style));
}

function styleFor(sheet: SheetStorage, { format }: FileCellWrite, style: number): number {
  return format === undefined ? style : sheet.formatted(style, format);
}

/** A cell's XML; a blank one keeps its style, and is left out where it has none. */
function written(sheet: SheetStorage, cell: FileCellWrite, style: number): string {
  const { p, dynamicArray } = sheet;
  const address = cellName(cell.row, cell.column);
  const attributes = `r="${address}"${style === 0 ? "" : ` s="${style}"`}`;
  if ("formula" in cell) {
    const isArray = cell.fills !== undefined && dynamicArray !== undefined;
    const array = isArray ? ` t="array" ref="${cell.fills}"` : "";
    const mark = isArray ? ` cm="${dynamicArray}"` : "";
    const formula = `<${p}f${array}>${xmlText(storedFormula(cell.formula))}</${p}f>`;
    return formulaCell(attributes + mark, formula, storedDay(sheet, cell.shown, style), p);
  }
  const value = storedDay(sheet, cell.value, style);
  if (isNothing(value)) return style === 0 ? "" : `<${p}c ${attributes}/>`;
  if (isCellError(value)) return `<${p}c ${attributes} t="e"><${p}v>${xmlText(value.error)}</${p}v></${p}c>`;
  return cellXml(address, value, style, p);
}

function isNothing(value: CellValue): value is null | "" {
  return value === null || value === "";
}

/** A number as it is stored under a style: days of a workbook may count from 1904. */
function storedDay<T>(sheet: SheetStorage, value: T, style: number): T | number {
  return typeof value === "number" && value >= DAYS_TO_1904 + 1 && sheet.countsFrom1904(style)
    ? value - DAYS_TO_1904
    : value;
}

/**
 * A cell that already holds the formula keeps it as it is stored, spilled or shared, and only shows another value; a
 * dynamic array is told of the cells that it fills now.
 */
function keptFormula(
  sheet: SheetStorage,
  there: XmlSpan,
  cell: FileCellWrite,
  style: number,
): string | undefined {
  const { xml, p } = sheet;
  if (!("formula" in cell) || cell.shown === undefined) return undefined;
  const stored = new RegExp(`<${p}f\\b[^>]*>([^<]*)</${p}f>`).exec(
    xml.slice(there.openEnd, there.closeStart),
  );
  if (!stored || shownFormula(plainText(stored[1])) !== cell.formula) return undefined;
  const isDynamic = there.attributes.cm !== undefined;
  if (cell.fills !== undefined && !isDynamic) return undefined;
  const formula =
    cell.fills === undefined
      ? stored[0]
      : stored[0].replace(/(\sref\s*=\s*)["'][^"']*["']/, `$1"${cell.fills}"`);
  const attributes = Object.entries({ ...there.attributes, ...(style === 0 ? {} : { s: String(style) }) })
    .filter(([name]) => name !== "t")
    .map(([name, value]) => `${name}="${xmlAttribute(value)}"`)
    .join(" ");
  return formulaCell(attributes, formula, storedDay(sheet, cell.shown, style), p);
}

function formulaCell(attributes: string, formula: string, shown: CellValue | undefined, p: string): string {
  const [type, value] = storedValue(shown);
  const text = value === undefined ? "" : `<${p}v>${xmlText(value)}</${p}v>`;
  return `<${p}c ${attributes}${type === "" ? "" : ` t="${type}"`}>${formula}${text}</${p}c>`;
}

/** Type and text of the value beside a formula. */
function storedValue(shown: CellValue | undefined): [type: string, value: string | undefined] {
  if (shown === undefined || shown === null) return ["", undefined];
  if (typeof shown === "object") return ["e", shown.error];
  if (typeof shown === "boolean") return ["b", shown ? "1" : "0"];
  return typeof shown === "string" ? ["str", shown] : ["", String(shown)];
}
