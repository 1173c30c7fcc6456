import { isBlank, type CellValue } from "../../survey/sheets/cell";
import type { SheetArea } from "../../survey/reading/sheetArea";
import { WorkbookProblem } from "../surveyWorkbook";
import type { CsvLayout } from "./csvLines";
import type { DecimalSign } from "./csvReading";
import { csvRecords } from "./csvRecords";
import type { CsvSource } from "./csvSource";
import type { ReadLimits } from "./readLimits";
import type { SheetRow } from "./sheetRows";

/** What a csv file's records and cells are read by. */
type CsvWay = CsvLayout & { readonly decimal: DecimalSign };

/**
 * The rows of a csv file in batches, no more of it held than one batch. Every cell stays as it was typed, except
 * numbers: digits with the file's decimal sign become numbers, 007 and anything longer than fifteen digits stay text.
 * Blank records are left out; the others keep their numbers.
 */
export async function* csvRows(
  source: CsvSource,
  layout: CsvWay,
  sheet: string,
  limits: ReadLimits,
): AsyncGenerator<SheetRow[], void, void> {
  for await (const { rows } of filledRows(source, layout, sheet, limits)) yield rows;
}

/** Rows that hold anything, and the most cells of any record so far, blank ones between the rows too. */
async function* filledRows(
  source: CsvSource,
  layout: CsvWay,
  sheet: string,
  limits: ReadLimits,
): AsyncGenerator<{ readonly rows: SheetRow[]; readonly width: number }, void, void> {
  let number = 0;
  let cells = 0;
  let width = 0;
  let blankCells = 0;
  let blankWidth = 0;
  for await (const records of csvRecords(source, layout, limits)) {
    const rows: SheetRow[] = [];
    for (const record of records) {
      number++;
      blankCells += record.length;
      blankWidth = Math.max(blankWidth, record.length);
      const last = record.length - 1;
      if (last >= 0 && record[last].endsWith("\r")) record[last] = record[last].replace(/\r+$/, "");
      const values = new Array<CellValue>(record.length);
      for (let at = 0; at <= last; at++) values[at] = csvCell(record[at], layout.decimal);
      if (values.every(isBlank)) continue;
      rows.push({ number, values, formulas: undefined });
      cells += blankCells;
      width = Math.max(width, blankWidth);
      blankCells = blankWidth = 0;
    }
    if (cells > limits.cells)
      throw new WorkbookProblem("tooManyCells", { file: source.file, sheet, most: limits.cells });
    if (rows.length > 0) yield { rows, width };
  }
}

/**
 * A csv file as one sheet, from its first line on.
 *
 * @throws WorkbookProblem "tooManyCells" where it is larger than the limits allow to be held at once.
 */
export async function csvArea(
  source: CsvSource,
  layout: CsvWay,
  sheet: string,
  limits: ReadLimits,
): Promise<SheetArea> {
  const filled: SheetRow[] = [];
  let width = 0;
  for await (const batch of filledRows(source, layout, sheet, limits)) {
    for (const row of batch.rows) filled.push(row);
    width = batch.width;
  }
  const count = filled.at(-1)?.number ?? 0;
  if (count * width > limits.cells)
    throw new WorkbookProblem("tooManyCells", { file: source.file, sheet, most: limits.cells });
  const blank: readonly CellValue[] = new Array<CellValue>(width).fill(null);
  const values: (readonly CellValue[])[] = new Array<readonly CellValue[]>(count).fill(blank);
  for (const { number, values: cells } of filled)
    values[number - 1] = cells.concat(blank.slice(cells.length));
  return { sheet, firstRow: 1, firstColumn: 1, values, formulaAt: () => null, isText: true };
}

const WITH_POINT = /^-?(?:0|[1-9]\d*)(?:\.\d+)?$/;
const WITH_COMMA = /^-?(?:0|[1-9]\d*)(?:,\d+)?$/;
const MOST_DIGITS = 15;
const [EQUALS, MINUS, ZERO, NINE] = ["=", "-", "0", "9"].map((sign) => sign.charCodeAt(0));

/**
 * A cell of a csv file: a number where it is written as one, else the text as it stands. ="7" is how exports keep a
 * spreadsheet from changing what stands in the quotes.
 */
export function csvCell(text: string, decimal: DecimalSign): CellValue {
  const whole = plainWhole(text);
  if (whole >= 0) return whole;
  const trimmed = text.trim();
  if (trimmed === "") return null;
  const first = trimmed.charCodeAt(0);
  const forced = first === EQUALS ? /^="([^"=]*)"$/.exec(trimmed)?.[1] : undefined;
  if (forced !== undefined) return csvCell(forced, decimal);
  if ((first < ZERO || first > NINE) && first !== MINUS) return text;
  if (text.includes("\r")) return text;
  if (!(decimal === "," ? WITH_COMMA : WITH_POINT).test(trimmed)) return text;
  if (decimal === "undecided" && /^-?\d{1,3}\.\d{3}$/.test(trimmed)) return text;
  if (trimmed.length > MOST_DIGITS && trimmed.replace(/\D/g, "").length > MOST_DIGITS) return text;
  return Number(trimmed.replace(",", ".")) + 0;
}

/** A whole number of few digits and nothing else, as most cells of counts are; -1 for any other text. */
function plainWhole(text: string): number {
  const { length } = text;
  if (length === 0 || length > 9) return -1;
  let number = 0;
  for (let at = 0; at < length; at++) {
    const code = text.charCodeAt(at);
    if (code < ZERO || code > NINE) return -1;
    number = 10 * number + code - ZERO;
  }
  return length > 1 && text.charCodeAt(0) === ZERO ? -1 : number;
}
