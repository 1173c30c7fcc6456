import Papa from "papaparse";
import { WorkbookProblem } from "../surveyWorkbook";
import { csvLines, type CsvLayout } from "./csvLines";
import type { CsvSource } from "./csvSource";
import type { ReadLimits } from "./readLimits";

/** A record may hold as many characters as this many of the longest cells. */
const LONG_CELLS = 40;

/**
 * The records of a csv file in batches, every one in its order, blank ones too: no more of the file is held than one
 * batch.
 *
 * @throws WorkbookProblem "openQuote" where a quote never closes, "tooMuchText" for a record that no sheet could hold.
 */
export async function* csvRecords(
  source: CsvSource,
  layout: CsvLayout,
  limits: ReadLimits,
): AsyncGenerator<string[][], void, void> {
  const parser = new RecordParser(source.file, layout.delimiter);
  const most = limits.cellCharacters * LONG_CELLS;
  let waiting = "";
  let wanted = 0;
  for await (const text of csvLines(source, layout)) {
    waiting += text;
    if (waiting.length < wanted) continue;
    const { records, read } = parser.parse(waiting, true);
    if (records.length > 0) yield records;
    waiting = waiting.slice(read);
    wanted = 2 * waiting.length;
    if (waiting.length > most) parser.refuse(waiting, limits.cellCharacters);
  }
  const { records } = parser.parse(waiting, false);
  if (records.length > 0) yield records;
}

interface ParsedText {
  readonly data: string[][];
  readonly errors: readonly { readonly type: string; readonly row?: number }[];
  readonly meta: { readonly cursor: number };
}

class RecordParser {
  private before = 0;

  constructor(
    private readonly file: string,
    private readonly delimiter: string,
  ) {}

  /** Records of the text, without the last one where more of it may follow, and how many characters they took. */
  parse(text: string, mayGoOn: boolean): { records: string[][]; read: number } {
    const parser = new Papa.Parser({ delimiter: this.delimiter, newline: "\n" });
    const { data, errors, meta } = parser.parse(text, 0, mayGoOn) as ParsedText;
    const quote = errors.find(({ type, row = 0 }) => type === "Quotes" && (!mayGoOn || row < data.length));
    if (quote) this.refuseQuote(quote.row ?? 0);
    this.before += data.length;
    return { records: data, read: meta.cursor };
  }

  /** Refuses a record that is too long, most likely because a quote never closes. */
  refuse(record: string, most: number): never {
    if (record.includes('"')) this.refuseQuote(0);
    throw new WorkbookProblem("tooMuchText", { file: this.file, part: this.file, most });
  }

  private refuseQuote(row: number): never {
    throw new WorkbookProblem("openQuote", { file: this.file, row: this.before + row + 1 });
  }
}
