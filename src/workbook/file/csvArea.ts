import Papa from "papaparse";
import type { CellValue } from "../../survey/cell";
import type { SheetArea } from "../../survey/sheetArea";
import { WorkbookProblem } from "../surveyWorkbook";
import type { ReadLimits } from "./readLimits";

export type CsvEncoding = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";

/** How the numbers of a file are written. "undecided": commas that may be decimals or thousands; they stay text. */
export type DecimalSign = "." | "," | "undecided";

/** What was decided about a csv file as a whole, to be told to whoever reads the result. */
export interface CsvReading {
  readonly encoding: CsvEncoding;
  readonly delimiter: string;
  readonly decimal: DecimalSign;
  /** Lines before the first record that spreadsheets do not show ("sep=;"). */
  readonly hiddenLines: number;
}

const DELIMITERS = [";", "\t", ",", "|"] as const;
const PREVIEW_RECORDS = 40;

/**
 * A csv file as one sheet named after the file. Every cell stays as it was typed, except numbers: digits with the
 * file's decimal sign become numbers, 007 and anything longer than fifteen digits stay text.
 *
 * @throws WorkbookProblem "notText" for a binary file, "openQuote" where a quote never closes.
 */
export function csvArea(
  file: string,
  sheet: string,
  bytes: Uint8Array,
  limits: ReadLimits,
): { area: SheetArea; reading: CsvReading } {
  const encoding = csvEncoding(bytes);
  const decoded = new TextDecoder(encoding).decode(bytes);
  if (decoded.includes("\0")) throw new WorkbookProblem("notText", { file });
  const announced = /^sep=([^\r\n])(?:\r\n|\r|\n|$)/i.exec(decoded);
  const text = oneLineEnd(announced ? decoded.slice(announced[0].length) : decoded);
  const delimiter = announced?.[1] ?? likelyDelimiter(text);
  const records = parsedRecords(file, text, delimiter);
  while (records.length > 0 && records[records.length - 1].every((cell) => cell.trim() === "")) records.pop();
  const width = records.reduce((most, record) => Math.max(most, record.length), 0);
  if (records.length * width > limits.cells)
    throw new WorkbookProblem("tooManyCells", { file, sheet, most: limits.cells });
  const decimal = decimalSign(records);
  const values = records.map((record) => {
    const row: CellValue[] = record.map((cell) => csvCell(cell, decimal));
    while (row.length < width) row.push(null);
    return row;
  });
  return {
    area: { sheet, firstRow: 1, firstColumn: 1, values, formulaAt: () => null },
    reading: { encoding, delimiter, decimal, hiddenLines: announced ? 1 : 0 },
  };
}

/** A byte-order mark decides, else UTF-8 where every byte fits it, else the encoding of western Windows machines. */
export function csvEncoding(bytes: Uint8Array): CsvEncoding {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return "utf-16be";
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return "utf-8";
  } catch {
    return "windows-1252";
  }
}

/** A cell of a csv file: a number where it is written as one, else the text as it stands. */
export function csvCell(text: string, decimal: DecimalSign): CellValue {
  const trimmed = text.trim();
  if (trimmed === "") return null;
  const pattern = decimal === "," ? /^-?(?:0|[1-9]\d*)(?:,\d+)?$/ : /^-?(?:0|[1-9]\d*)(?:\.\d+)?$/;
  if (!pattern.test(trimmed) || trimmed.replace(/\D/g, "").length > 15) return text;
  return Number(trimmed.replace(",", "."));
}

/**
 * The decimal sign of a whole file. A comma counts as decimal sign only where nothing speaks for the point, and where at
 * least one number cannot be read as thousands.
 */
export function decimalSign(records: Iterable<readonly string[]>): DecimalSign {
  let points = false;
  let commas = false;
  let surelyDecimal = false;
  for (const record of records)
    for (const cell of record) {
      if (!cell.includes(",") && !cell.includes(".")) continue;
      const trimmed = cell.trim();
      if (/^-?\d+\.\d+$/.test(trimmed)) points = true;
      else if (/^-?\d+,\d+$/.test(trimmed)) {
        commas = true;
        if (!/^-?[1-9]\d{0,2},\d{3}$/.test(trimmed)) surelyDecimal = true;
      }
    }
  if (!commas) return ".";
  if (points) return surelyDecimal ? "undecided" : ".";
  return surelyDecimal ? "," : "undecided";
}

/** All line ends as \n; \r alone counts as one only in files that have no other. */
function oneLineEnd(text: string): string {
  return text.includes("\n") ? text.replace(/\r\n/g, "\n") : text.replace(/\r/g, "\n");
}

/** The delimiter that splits the first record and then the most records alike; among equals the one with more columns. */
export function likelyDelimiter(text: string): string {
  let best = { delimiter: ",", score: 0 };
  for (const delimiter of DELIMITERS) {
    const { data } = Papa.parse<string[]>(text, {
      delimiter,
      newline: "\n",
      preview: PREVIEW_RECORDS,
      skipEmptyLines: true,
    });
    if (data.length === 0) continue;
    const columns = data[0].length;
    const alike = data.filter((record) => record.length === columns).length / data.length;
    const score =
      columns < 2 ? (Math.max(...data.map((record) => record.length)) - 1) / 1000 : alike + columns / 1000;
    if (score > best.score) best = { delimiter, score };
  }
  return best.delimiter;
}

function parsedRecords(file: string, text: string, delimiter: string): string[][] {
  const { data, errors } = Papa.parse<string[]>(text, { delimiter, newline: "\n", skipEmptyLines: false });
  const quote = errors.find((error) => error.type === "Quotes");
  if (quote) throw new WorkbookProblem("openQuote", { file, row: (quote.row ?? 0) + 1 });
  return data;
}
