import type { CellValue } from "../../survey/sheets/cell";
import { cellName } from "../address";
import { shownFormula, storedFormula } from "../storedFormula";
import type { CellWrite } from "../surveyWorkbook";
import { cellXml } from "./ownSheetXml";
import { numberOf } from "./movableFormula";
import {
  MalformedPart,
  spliced,
  xmlAttribute,
  xmlSpans,
  xmlText,
  type Splice,
  type XmlSpan,
} from "./xmlSpans";

/** The sheet with these cells written; every other cell keeps its bytes, a written one keeps its style. */
export function withCells(xml: string, cells: readonly CellWrite[]): string {
  const shape = xmlSpans(
    xml,
    (path) => path[0] === "sheetData" && (path.length <= 2 || (path.length === 3 && path[2] === "c")),
  );
  const p = shape.prefix;
  const data = shape.spans.find(({ name }) => name === "sheetData");
  const rows = placedRows(shape.spans);
  const byRow = new Map<number, Map<number, CellWrite>>();
  for (const cell of cells)
    byRow.set(cell.row, (byRow.get(cell.row) ?? new Map<number, CellWrite>()).set(cell.column, cell));
  const splices: Splice[] = [];
  const newRows: { row: number; text: string }[] = [];
  for (const [row, columns] of [...byRow].sort(([a], [b]) => a - b)) {
    const there = rows.get(row);
    const sorted = [...columns].sort(([a], [b]) => a - b);
    if (there) splices.push(...rowSplices(xml, there, row, sorted, p));
    else {
      const inner = sorted.map(([column, cell]) => written(cell, row, column, 0, p)).join("");
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

function rowSplices(
  xml: string,
  { span, cells }: PlacedRow,
  row: number,
  columns: readonly (readonly [number, CellWrite])[],
  p: string,
): Splice[] {
  const splices: Splice[] = [];
  const fresh: string[] = [];
  for (const [column, cell] of columns) {
    const there = cells.get(column);
    if (there) {
      const style = Number(there.attributes.s ?? 0);
      const text = keptFormula(xml, there, cell, p) ?? written(cell, row, column, style, p);
      const blank = style === 0 ? "" : `<${p}c r="${cellName(row, column)}" s="${style}"/>`;
      splices.push({ start: there.start, end: there.end, text: text === "" ? blank : text });
      continue;
    }
    const text = written(cell, row, column, 0, p);
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

function written(cell: CellWrite, row: number, column: number, style: number, p: string): string {
  const address = cellName(row, column);
  if (!("formula" in cell)) return cellXml(address, cell.value, style, p);
  const attributes = `r="${address}"${style === 0 ? "" : ` s="${style}"`}`;
  return formulaCell(attributes, `<${p}f>${xmlText(storedFormula(cell.formula))}</${p}f>`, cell.shown, p);
}

/** A cell that already holds the formula keeps it as it is stored, spilled or shared, and only shows another value. */
function keptFormula(xml: string, there: XmlSpan, cell: CellWrite, p: string): string | undefined {
  if (!("formula" in cell) || cell.shown === undefined) return undefined;
  const stored = new RegExp(`<${p}f\\b[^>]*>([^<]*)</${p}f>`).exec(
    xml.slice(there.openEnd, there.closeStart),
  );
  if (!stored || shownFormula(plainText(stored[1])) !== cell.formula) return undefined;
  const attributes = Object.entries(there.attributes)
    .filter(([name]) => name !== "t")
    .map(([name, value]) => `${name}="${xmlAttribute(value)}"`)
    .join(" ");
  return formulaCell(attributes, stored[0], cell.shown, p);
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

const ENTITIES: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

function plainText(xml: string): string {
  return xml.replace(/&(amp|lt|gt|quot|apos);/g, (_whole, name: string) => ENTITIES[name]);
}
