import type { IStyleData } from "@univerjs/core";
import { bytesPackage } from "../file/bytesPackage";
import { bytesSource } from "../file/csvSource";
import { isCsvName, openCsv, openPackage, type OpenWorkbook } from "../file/openWorkbook";
import type { CsvReading } from "../file/csvReading";
import { READ_LIMITS, type ReadLimits } from "../file/readLimits";
import type { SheetRow } from "../file/sheetRows";
import { sheetTables, type DefinedName, type OutlineTable } from "../file/workbookOutline";
import type { SheetEnd, SheetMarks } from "../../survey/reading/sheetArea";
import { WorkbookProblem } from "../surveyWorkbook";
import { cellStyles } from "./cellStyles";
import { Pace } from "./pace";
import { sheetLook, type SheetLook } from "./sheetLook";

/** A file's sheet, ready to be put into the grid. */
export interface LoadedSheet {
  readonly name: string;
  readonly hidden: boolean;
  readonly rows: readonly SheetRow[];
  /** Undefined for a csv file. */
  readonly look: SheetLook | undefined;
  readonly tables: readonly OutlineTable[];
  readonly marks?: SheetMarks;
}

/** A file, ready to be put into the grid. */
export interface LoadedWorkbook {
  readonly file: string;
  readonly sheets: readonly LoadedSheet[];
  readonly names: readonly DefinedName[];
  readonly styles: readonly IStyleData[];
  readonly startsIn1904: boolean;
  /** What was decided about a csv file; undefined for a workbook. */
  readonly csv?: CsvReading;
  /** The small facts that the file keeps for the add-in, by key. */
  readonly flags: ReadonlyMap<string, string>;
}

/** Characters of the longest formula that Excel takes (its published limits). */
const LONGEST_FORMULA = 8192;

/** Cells of a whole workbook that the engine holds without keeping the page from a person; ours, as measured. */
export const PAGE_LIMITS: ReadLimits = { ...READ_LIMITS, cells: 2_000_000 };

/**
 * Reads a workbook or csv file that a person chose, with what its sheets look like.
 *
 * @throws WorkbookProblem with one of the codes of src/texts/fileProblems.ts when the file cannot be read; the reason of
 * the pace's signal when it was stopped.
 */
export async function loadWorkbook(
  file: string,
  bytes: Uint8Array,
  pace = new Pace(undefined),
): Promise<LoadedWorkbook> {
  const collected = new AllRows(file, pace);
  if (isCsvName(file)) {
    const source = bytesSource(file, bytes);
    const open = await openCsv({ file, chunks: () => pace.chunks(source.chunks()) }, PAGE_LIMITS);
    const sheets: LoadedSheet[] = [];
    for (const name of open.sheetNames)
      sheets.push({
        name,
        hidden: false,
        rows: await collected.rowsOf(open, name),
        look: undefined,
        tables: [],
      });
    return { file, sheets, names: [], styles: [], startsIn1904: false, csv: open.csv, flags: new Map() };
  }
  const packed = bytesPackage(file, bytes, PAGE_LIMITS);
  const source = { ...packed, chunks: (part: string) => pace.chunks(packed.chunks(part)) };
  const open = await openPackage(source, PAGE_LIMITS);
  const { outline } = open;
  if (!outline) return { file, sheets: [], names: [], styles: [], startsIn1904: false, flags: new Map() };
  const sheets: LoadedSheet[] = [];
  for (const sheet of outline.sheets.filter(({ kind }) => kind === "worksheet")) {
    let marks: SheetMarks | undefined;
    sheets.push({
      name: sheet.name,
      hidden: sheet.hidden,
      rows: await collected.rowsOf(open, sheet.name, (end) => (marks = end.marks)),
      marks,
      look: await sheetLook(source, sheet.part, PAGE_LIMITS),
      tables: await sheetTables(source, sheet, PAGE_LIMITS),
    });
  }
  const styles = outline.stylesPart ? await cellStyles(source, outline.stylesPart, PAGE_LIMITS) : [];
  const { names, startsIn1904 } = outline;
  return { file, sheets, names, startsIn1904, styles, flags: await open.readFlags() };
}

/** The rows of one sheet after the other, as long as the page can hold them all. */
class AllRows {
  private cells = 0;

  constructor(
    private readonly file: string,
    private readonly pace: Pace,
  ) {}

  async rowsOf(open: OpenWorkbook, sheet: string, onEnd?: (end: SheetEnd) => void): Promise<SheetRow[]> {
    const rows: SheetRow[] = [];
    const most = PAGE_LIMITS.cells;
    for await (const batch of open.rows(sheet, onEnd)) {
      for (const row of batch) {
        this.mustFit(row, sheet);
        this.cells += row.values.length;
        rows.push(row);
      }
      if (this.cells > most) throw new WorkbookProblem("tooManyForPage", { file: this.file, most });
      this.pace.at({ sheet, row: rows[rows.length - 1].number });
    }
    return rows;
  }

  /** The engine reads a formula by itself again and again; one longer than any spreadsheet takes would end it. */
  private mustFit({ formulas }: SheetRow, sheet: string): void {
    for (const formula of formulas?.values() ?? [])
      if (formula.length > LONGEST_FORMULA)
        throw new WorkbookProblem("tooMuchText", { file: this.file, part: sheet, most: LONGEST_FORMULA });
  }
}
