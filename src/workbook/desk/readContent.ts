import { bytesPackage } from "../file/bytesPackage";
import { bytesSource } from "../file/csvSource";
import { isCsvName, openCsv, openPackage, type OpenWorkbook } from "../file/openWorkbook";
import type { CsvReading } from "../file/csvReading";
import { READ_LIMITS, type ReadLimits } from "../file/readLimits";
import type { SheetRow } from "../file/sheetRows";
import { sheetTables, type DefinedName, type OutlineTable } from "../file/workbookOutline";
import { NOTHING_BEHIND, type SheetEnd } from "../../survey/reading/sheetArea";
import { WorkbookProblem } from "../surveyWorkbook";
import { Pace } from "./pace";
import { sheetLook, type SheetLook } from "./sheetLook";

/** What stands in the cells of a sheet. */
export interface ReadRows {
  readonly name: string;
  readonly hidden: boolean;
  readonly rows: readonly SheetRow[];
  readonly end: SheetEnd;
}

/** A file's sheet, ready to be put into the grid. */
export interface LoadedSheet extends ReadRows {
  /** Undefined for a csv file. */
  readonly look: SheetLook | undefined;
  readonly tables: readonly OutlineTable[];
}

/** What stands in the cells of a file. */
export interface FileRows {
  readonly file: string;
  readonly sheets: readonly ReadRows[];
  readonly names: readonly DefinedName[];
  /** What was decided about a csv file; undefined for a workbook. */
  readonly csv?: CsvReading;
  /** The small facts that the file keeps for the add-in, by key. */
  readonly flags: ReadonlyMap<string, string>;
}

/** What stands in a file, read without anything of the engine. */
export interface FileContent extends FileRows {
  readonly sheets: readonly LoadedSheet[];
  /** The part with its cell styles; undefined where it has none. */
  readonly stylesPart: string | undefined;
  readonly startsIn1904: boolean;
}

/** Characters of the longest formula that Excel takes (its published limits). */
const LONGEST_FORMULA = 8192;

/** Cells of a whole workbook that the engine holds without keeping the page from a person; ours, as measured. */
export const PAGE_LIMITS: ReadLimits = { ...READ_LIMITS, cells: 2_000_000 };

/**
 * Reads a workbook or csv file that a person chose, all but its cell styles, which are put in the engine's own words.
 *
 * @param onRows told of what stands in the cells, which is half the work
 * @throws WorkbookProblem with one of the codes of src/texts/fileProblems.ts when the file cannot be read; the reason of
 * the pace's signal when it was stopped.
 */
export async function readContent(
  file: string,
  bytes: Uint8Array,
  pace = new Pace(undefined),
  onRows: (rows: FileRows) => void = () => {},
): Promise<FileContent> {
  const collected = new AllRows(file, pace);
  if (isCsvName(file)) {
    const source = bytesSource(file, bytes);
    const open = await openCsv({ file, chunks: () => pace.chunks(source.chunks()) }, PAGE_LIMITS);
    const sheets: LoadedSheet[] = [];
    for (const name of open.sheetNames)
      sheets.push({ ...(await collected.read(open, name)), hidden: false, look: undefined, tables: [] });
    const rows: FileRows = { file, sheets, names: [], csv: open.csv, flags: new Map() };
    onRows(rows);
    return { ...rows, sheets, stylesPart: undefined, startsIn1904: false };
  }
  const packed = bytesPackage(file, bytes, PAGE_LIMITS);
  const source = { ...packed, chunks: (part: string) => pace.chunks(packed.chunks(part)) };
  const open = await openPackage(source, PAGE_LIMITS);
  const { names = [], startsIn1904 = false, stylesPart, sheets: all = [] } = open.outline ?? {};
  const parts = all.filter(({ kind }) => kind === "worksheet");
  const read: ReadRows[] = [];
  for (const { name, hidden } of parts) read.push({ ...(await collected.read(open, name)), hidden });
  const rows: FileRows = { file, sheets: read, names, flags: await open.readFlags() };
  onRows(rows);
  const sheets: LoadedSheet[] = [];
  for (const [index, sheet] of parts.entries())
    sheets.push({
      ...read[index],
      look: await sheetLook(source, sheet.part, PAGE_LIMITS),
      tables: await sheetTables(source, sheet, PAGE_LIMITS),
    });
  return { ...rows, sheets, startsIn1904, stylesPart };
}

/** The rows of one sheet after the other, as long as the page can hold them all. */
class AllRows {
  private cells = 0;

  constructor(
    private readonly file: string,
    private readonly pace: Pace,
  ) {}

  async read(open: OpenWorkbook, sheet: string): Promise<Omit<ReadRows, "hidden">> {
    const rows: SheetRow[] = [];
    let end = NOTHING_BEHIND;
    const most = PAGE_LIMITS.cells;
    for await (const batch of open.rows(sheet, (known) => (end = known))) {
      for (const row of batch) {
        this.mustFit(row, sheet);
        this.cells += row.values.length;
        rows.push(row);
      }
      if (this.cells > most) throw new WorkbookProblem("tooManyForPage", { file: this.file, most });
      this.pace.at({ sheet, row: rows[rows.length - 1].number });
    }
    return { name: sheet, rows, end };
  }

  /** The engine reads a formula by itself again and again; one longer than any spreadsheet takes would end it. */
  private mustFit({ formulas }: SheetRow, sheet: string): void {
    for (const formula of formulas?.values() ?? [])
      if (formula.length > LONGEST_FORMULA)
        throw new WorkbookProblem("tooMuchText", { file: this.file, part: sheet, most: LONGEST_FORMULA });
  }
}
