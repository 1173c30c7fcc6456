import {
  marksIfAny,
  NOTHING_BEHIND,
  type MarkedCell,
  type SheetArea,
  type SheetEnd,
} from "../../survey/reading/sheetArea";
import { areasOfAddress } from "../address";
import { WorkbookProblem, type ReadOptions } from "../surveyWorkbook";
import { bytesPackage } from "./bytesPackage";
import { csvArea, csvRows } from "./csvArea";
import { notesOf } from "./cellNotes";
import { decideCsv, type CsvReading } from "./csvReading";
import { bytesSource, type CsvSource } from "./csvSource";
import { flagsOf, keptFlags } from "./keptFlags";
import { READ_LIMITS, type ReadLimits } from "./readLimits";
import { sharedStrings } from "./sharedStrings";
import { sheetAreaOfRows } from "./sheetAreaOfRows";
import { sheetRows, type CellContext, type SheetRow } from "./sheetRows";
import { styleKinds } from "./styleKinds";
import type { WorkbookPackage } from "./workbookPackage";
import { workbookOutline, type OutlineSheet, type WorkbookOutline } from "./workbookOutline";

/** A file's sheets, opened for reading. */
export interface OpenWorkbook {
  /** File name as messages show it. */
  readonly file: string;
  /** Names of the sheets that hold cells, in their order. */
  readonly sheetNames: readonly string[];
  /** What was decided about a csv file; undefined for a workbook. */
  readonly csv: CsvReading | undefined;
  /** Undefined for a csv file. */
  readonly outline: WorkbookOutline | undefined;
  /** The filled part of a sheet. Rejects with code "noSheet" when there is no sheet of that name. */
  readSheet(sheet: string, options?: ReadOptions): Promise<SheetArea>;
  /** The rows of a sheet in batches, without holding the sheet; `onEnd` is told behind the last of them. */
  rows(sheet: string, onEnd?: (end: SheetEnd) => void): AsyncIterable<SheetRow[]>;
  /** The small facts that the file keeps for the add-in, by key; none in a csv file. */
  readFlags(): Promise<ReadonlyMap<string, string>>;
  close(): Promise<void>;
}

/** Opens a workbook or csv file that is held in memory, for example one that a person chose on a page. */
export async function openWorkbookBytes(
  file: string,
  bytes: Uint8Array,
  limits: ReadLimits = READ_LIMITS,
): Promise<OpenWorkbook> {
  return isCsvName(file)
    ? openCsv(bytesSource(file, bytes), limits)
    : openPackage(bytesPackage(file, bytes, limits), limits);
}

/** True for names of files that hold one sheet of text. */
export function isCsvName(file: string): boolean {
  return /\.(csv|tsv|txt)$/i.test(file);
}

/** Opens the package of a workbook. */
export async function openPackage(source: WorkbookPackage, limits: ReadLimits): Promise<OpenWorkbook> {
  const outline = await workbookOutline(source, limits).catch(async (error: unknown) => {
    await source.close();
    throw error;
  });
  const sheets = outline.sheets.filter(({ kind }) => kind === "worksheet");
  let context: Promise<CellContext> | undefined;
  const cellContext = () => (context ??= readContext(source, outline, limits));
  const find = (name: string): OutlineSheet => {
    const found = sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
    if (!found) throw new WorkbookProblem("noSheet", { sheet: name });
    return found;
  };
  async function* rows(name: string, onEnd?: (end: SheetEnd) => void): AsyncGenerator<SheetRow[]> {
    const sheet = find(name);
    let end = NOTHING_BEHIND;
    yield* sheetRows(source, sheet.part, sheet.name, await cellContext(), limits, (known) => (end = known));
    if (!onEnd) return;
    const notes = await notesOf(source, outline.workbookPart, sheet.part, limits).catch(noNotes);
    const { marked = [], hiddenRows = [], hiddenColumns = [] } = end.marks ?? {};
    const all = { marked: [...marked, ...[...notes].flatMap(noteAt)], hiddenRows, hiddenColumns };
    onEnd({ ...end, marks: marksIfAny(all) });
  }
  return {
    file: source.file,
    sheetNames: sheets.map(({ name }) => name),
    csv: undefined,
    outline,
    readSheet: async (name, options = {}) => {
      const sheet = find(name);
      const collected: SheetRow[] = [];
      let end = NOTHING_BEHIND;
      for await (const batch of rows(name, (known) => (end = known))) {
        options.signal?.throwIfAborted();
        for (const row of batch) if (isWanted(row, options)) collected.push(row);
        const last = batch[batch.length - 1].number;
        if (options.rows && last >= options.rows.first + options.rows.count) break;
        options.onProgress?.(Math.min(0.99, last / (last + 1000)));
      }
      const area = sheetAreaOfRows(source.file, sheet.name, collected, limits, end);
      options.onProgress?.(1);
      return sheet.hidden ? { ...area, isHidden: true } : area;
    },
    rows,
    readFlags: async () => flagsOf(await keptFlags(source, outline.workbookPart, limits)),
    close: () => source.close(),
  };
}

function isWanted({ number }: SheetRow, { rows }: ReadOptions): boolean {
  return !rows || (number >= rows.first && number < rows.first + rows.count);
}

/** What is said on the cells of a sheet spoils no reading of the cells, however it is written. */
const noNotes = (): ReadonlyMap<string, string> => new Map();

function noteAt([place, note]: readonly [string, string]): MarkedCell[] {
  return areasOfAddress(place).map(({ firstRow: row, firstColumn: column }) => ({ row, column, note }));
}

async function readContext(
  source: WorkbookPackage,
  outline: WorkbookOutline,
  limits: ReadLimits,
): Promise<CellContext> {
  const { sharedStringsPart, stylesPart, startsIn1904 } = outline;
  return {
    sharedStrings: sharedStringsPart ? await sharedStrings(source, sharedStringsPart, limits) : [],
    styles: stylesPart ? await styleKinds(source, stylesPart, limits) : undefined,
    startsIn1904,
  };
}

/** Opens a csv file: looks through it once, and reads its rows whenever they are asked for. */
export async function openCsv(source: CsvSource, limits: ReadLimits): Promise<OpenWorkbook> {
  const { file } = source;
  const sheet = sheetNameOfFile(file);
  const { layout, reading } = await decideCsv(source, limits);
  const whole = { ...layout, ...reading };
  const mustBe = (name: string) => {
    if (name.toLowerCase() !== sheet.toLowerCase()) throw new WorkbookProblem("noSheet", { sheet: name });
  };
  async function* rows(name: string): AsyncGenerator<SheetRow[]> {
    mustBe(name);
    yield* csvRows(source, whole, sheet, limits);
  }
  return {
    file,
    sheetNames: [sheet],
    csv: reading,
    outline: undefined,
    readSheet: async (name, options = {}) => {
      mustBe(name);
      options.signal?.throwIfAborted();
      if (!options.rows) {
        const area = await csvArea(source, whole, sheet, limits);
        options.onProgress?.(1);
        return area;
      }
      const collected: SheetRow[] = [];
      for await (const batch of rows(name)) collected.push(...batch.filter((row) => isWanted(row, options)));
      options.onProgress?.(1);
      return sheetAreaOfRows(file, sheet, collected, limits);
    },
    rows,
    readFlags: async () => new Map(),
    close: async () => undefined,
  };
}

/** A csv file's sheet carries the file's name without its ending. */
export function sheetNameOfFile(file: string): string {
  return file.replace(/^.*[\\/]/, "").replace(/\.[^.]*$/, "") || file;
}
