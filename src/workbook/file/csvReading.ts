import Papa from "papaparse";
import { WorkbookProblem } from "../surveyWorkbook";
import { BytesDoNotFit, decoded, oneLineEnd, type CsvEncoding, type CsvLayout } from "./csvLines";
import { csvRecords } from "./csvRecords";
import { oneByteEncoding, type LikelyEncoding } from "./oneByteEncoding";
import type { CsvSource } from "./csvSource";
import type { ReadLimits } from "./readLimits";

/** How the numbers of a file are written. "undecided": signs that may be of decimals or thousands; such cells stay text. */
export type DecimalSign = "." | "," | "undecided";

/** What was decided about a csv file as a whole, to be told to whoever reads the result. */
export interface CsvReading {
  readonly encoding: CsvEncoding;
  readonly delimiter: string;
  readonly decimal: DecimalSign;
  /** Lines before the first record that spreadsheets do not show ("sep=;"). */
  readonly hiddenLines: number;
  readonly doubt?: LikelyEncoding["doubt"];
}

const DELIMITERS = [";", "\t", ",", "|"] as const;
const PREVIEW_RECORDS = 40;
/** Characters among which the delimiter is looked for. */
const PREVIEW_CHARACTERS = 1_000_000;
/** Characters from which on an unfinished number is taken for one with a comma, so that it need not be held. */
const LONG_SEAM = 1000;

/**
 * Looks through a csv file and decides how it is to be read.
 *
 * @throws WorkbookProblem "emptyFile", "notText" for a binary file, "openQuote" where a quote never closes.
 */
export async function decideCsv(
  source: CsvSource,
  limits: ReadLimits,
): Promise<{ readonly layout: CsvLayout; readonly reading: CsvReading }> {
  const wide = await wideEncoding(source);
  let look = await lookThrough(source, wide ?? "utf-8");
  const likely = look ? undefined : await oneByteEncoding(source);
  if (likely) look = await lookThrough(source, likely.encoding);
  const { encoding, start, lastLineFeed, has } = look!;
  const announced = /^sep=([^\r\n])(?:\r\n|\r|\n|$)/i.exec(start);
  const hiddenCharacters = announced?.[0].length ?? 0;
  const hasLineFeeds = lastLineFeed >= hiddenCharacters;
  const preview = oneLineEnd(start.slice(hiddenCharacters), hasLineFeeds);
  const delimiter = announced?.[1] ?? likelyDelimiter(wholeLines(preview));
  const hiddenLines = announced ? 1 : 0;
  const layout = { encoding, delimiter, hiddenCharacters, hasLineFeeds };
  const mayHaveDecimalCommas = delimiter === "," ? has.quotedCommas : has.commas;
  const mayHaveThousandPoints = delimiter !== "," && has.points;
  const decimal =
    mayHaveDecimalCommas || mayHaveThousandPoints
      ? await decimalSignOf(csvRecords(source, layout, limits), has.points, mayHaveThousandPoints)
      : ".";
  return { layout, reading: { encoding, delimiter, decimal, hiddenLines, doubt: likely?.doubt } };
}

/** The start of a long text without its last line, which may go on. */
function wholeLines(start: string): string {
  const end = start.length < PREVIEW_CHARACTERS ? -1 : start.lastIndexOf("\n");
  return end < 0 ? start : start.slice(0, end);
}

/** Bytes among which those of value zero tell that every letter has two. */
const WIDE_BYTES = 1000;
/** Share of the first letters that must be plain Latin ones. */
const WIDE_SHARE = 0.7;

/** The encoding of two bytes a letter that a byte-order mark names, or that the zeros of Latin letters give away. */
async function wideEncoding(source: CsvSource): Promise<CsvEncoding | undefined> {
  const start: number[] = [];
  for await (const chunk of source.chunks()) {
    start.push(...chunk.subarray(0, WIDE_BYTES - start.length));
    if (start.length >= WIDE_BYTES) break;
  }
  if (start.length === 0) throw new WorkbookProblem("emptyFile", { file: source.file });
  const [first, second] = start;
  if (first === 0xff && second === 0xfe) return "utf-16le";
  if (first === 0xfe && second === 0xff) return "utf-16be";
  const letters = start.length >> 1;
  if (letters < 4) return undefined;
  const zeros = [0, 0];
  for (let at = 0; at < 2 * letters; at++) if (start[at] === 0) zeros[at & 1]++;
  if (zeros[0] === 0 && zeros[1] > WIDE_SHARE * letters) return "utf-16le";
  return zeros[1] === 0 && zeros[0] > WIDE_SHARE * letters ? "utf-16be" : undefined;
}

interface Look {
  readonly encoding: CsvEncoding;
  /** The first characters of the file. */
  readonly start: string;
  /** Where the last \n stands; -1 for none. */
  readonly lastLineFeed: number;
  readonly has: {
    readonly commas: boolean;
    readonly points: boolean;
    /** Numbers with commas right behind quotes: the only ones in a cell where commas part the cells. */
    readonly quotedCommas: boolean;
  };
}

/** Undefined where the bytes are no UTF-8. */
async function lookThrough(source: CsvSource, encoding: CsvEncoding): Promise<Look | undefined> {
  const has = { commas: false, points: false, quotedCommas: false };
  let start = "";
  let lastLineFeed = -1;
  let characters = 0;
  let seam = "";
  try {
    for await (const text of decoded(source, encoding)) {
      if (text.includes("\0")) throw new WorkbookProblem("notText", { file: source.file });
      if (start.length < PREVIEW_CHARACTERS) start += text;
      const lineFeed = text.lastIndexOf("\n");
      if (lineFeed >= 0) lastLineFeed = characters + lineFeed;
      characters += text.length;
      has.commas ||= text.includes(",");
      has.points ||= text.includes(".");
      if (has.quotedCommas) continue;
      const joined = seam + text;
      seam = unfinishedNumber(joined);
      has.quotedCommas = /"\s*-?\d+,\d/.test(joined) || seam.length > LONG_SEAM;
    }
  } catch (error) {
    if (error instanceof BytesDoNotFit) return undefined;
    throw error;
  }
  return { encoding, start, lastLineFeed, has };
}

/** The end of a text that may be the start of a quoted number. */
function unfinishedNumber(text: string): string {
  const quote = text.lastIndexOf('"');
  return quote >= 0 && /^"[\s\d,-]*$/.test(text.slice(quote)) ? text.slice(quote) : "";
}

/** The delimiter that splits the most records alike into two cells or more; among equals the one with more columns. */
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
    const { columns, records } = usualWidth(data);
    const alike = records / data.length;
    const score =
      columns < 2 ? (Math.max(...data.map((record) => record.length)) - 1) / 1000 : alike + columns / 1000;
    if (score > best.score) best = { delimiter, score };
  }
  return best.delimiter;
}

/** How many cells most records have that have more than one, and how many those are. */
function usualWidth(data: readonly (readonly string[])[]): { columns: number; records: number } {
  const widths = new Map<number, number>();
  for (const { length } of data) if (length > 1) widths.set(length, (widths.get(length) ?? 0) + 1);
  return [...widths].reduce(
    (best, [columns, records]) =>
      records > best.records || (records === best.records && columns > best.columns)
        ? { columns, records }
        : best,
    { columns: 0, records: 0 },
  );
}

/**
 * The decimal sign of a whole file. A comma counts as decimal sign only where nothing speaks for the point, and where at
 * least one number cannot be read as thousands.
 *
 * @param mayHavePoints false where the file is known to have no point, so that it need not be read to its end
 * @param thousandPoints true where points may part thousands, as they do where semicolons part the cells
 */
export async function decimalSignOf(
  batches: AsyncIterable<Iterable<readonly string[]>> | Iterable<Iterable<readonly string[]>>,
  mayHavePoints = true,
  thousandPoints = false,
): Promise<DecimalSign> {
  let points = false;
  let thousands = false;
  let commas = false;
  let surelyDecimal = false;
  for await (const records of batches) {
    for (const record of records)
      for (const cell of record) {
        if (!cell.includes(",") && !cell.includes(".")) continue;
        const trimmed = cell.trim();
        if (thousandPoints && /^-?[1-9]\d{0,2}(?:\.\d{3})+$/.test(trimmed)) thousands = true;
        else if (thousandPoints && /^-?[1-9]\d{0,2}(?:\.\d{3})+,\d+$/.test(trimmed))
          commas = surelyDecimal = true;
        else if (/^-?\d+\.\d+$/.test(trimmed)) points = true;
        else if (/^-?\d+,\d+$/.test(trimmed)) {
          commas = true;
          if (!/^-?[1-9]\d{0,2},\d{3}$/.test(trimmed)) surelyDecimal = true;
        }
      }
    if (surelyDecimal && (points || !mayHavePoints)) break;
  }
  if (!commas) return thousands && !points ? "undecided" : ".";
  if (points) return surelyDecimal ? "undecided" : ".";
  return surelyDecimal ? "," : "undecided";
}
