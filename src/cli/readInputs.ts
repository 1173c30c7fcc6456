import { readdir, readFile, stat } from "node:fs/promises";
import { basename, join } from "node:path";
import { grouped } from "../domain/grouped";
import { isReadSheet } from "../survey/reading/isReadSheet";
import type { StreamedSheet } from "../survey/reading/readLargeSeason";
import type { PassedOver } from "../survey/season/seasonAccount";
import type { SetAside } from "../survey/checks/setAside";
import { COMMAND_LINE } from "../texts/commandLine";
import { say } from "../texts/language";
import { printedOfFlags, type PrintedCards } from "../workbook/actions/printedCards";
import { asideOfFlags } from "../workbook/actions/setAside";
import type { CsvReading } from "../workbook/file/csvReading";
import { openWorkbookBytes, type OpenWorkbook } from "../workbook/file/openWorkbook";
import { openWorkbookFile } from "../workbook/file/openWorkbookFile";
import { madeOfOthers } from "../workbook/file/provenance";
import type { ReadLimits } from "../workbook/file/readLimits";
import { stampOf, type FileStamp } from "../workbook/file/saveFile";
import { OWN_SHEET_NAME } from "../workbook/ownSheet";
import { WorkbookProblem } from "../workbook/surveyWorkbook";
import type { Terminal } from "./terminal";

/** A sheet of one of the files that make up a farm. */
export interface InputSheet {
  readonly file: string;
  readonly sheet: string;
}

/** The sheets of a farm's files, opened but not read. */
export interface Inputs {
  /** Files and folders as they were named. */
  readonly words: readonly string[];
  readonly files: readonly string[];
  readonly sheets: readonly StreamedSheet[];
  /** File and sheet by the name that a sheet carries here: with several files "[file]sheet". */
  readonly origin: ReadonlyMap<string, InputSheet>;
  /** Stamp of each file before it was read, by its path; none for standard input. */
  readonly stamps: ReadonlyMap<string, FileStamp>;
  /** Files of folders that were passed over: of another format, or made by us of another file that was read. */
  readonly passedOver: readonly PassedOver[];
  /** What was decided about csv files, by file. */
  readonly csv: ReadonlyMap<string, CsvReading>;
  /** Findings that people let stand, as each workbook keeps them, by file. */
  readonly setAside: ReadonlyMap<string, readonly SetAside[]>;
  /** The cards as the workbooks keep them from their last print. */
  readonly printed: PrintedCards;
  close(): Promise<void>;
}

const READABLE = /\.(xlsx|xlsm|csv|tsv)$/i;
const STANDARD_INPUT = "-";

/**
 * Opens files, folders of files and standard input ("-") as one farm, with what their workbooks keep of findings
 * set aside. Sheets of results that the add-in wrote itself are left out, and in a folder the backups and copies that it
 * made of a workbook beside them.
 *
 * @throws WorkbookProblem when one of them cannot be read; "noFiles" for a folder without any.
 */
export async function openInputs(
  paths: readonly string[],
  terminal: Terminal,
  limits: ReadLimits,
): Promise<Inputs> {
  const opened: OpenedFile[] = [];
  const close = async () => {
    for (const { book } of opened) await book.close();
  };
  const stamps = new Map<string, FileStamp>();
  try {
    const found = await Promise.all(paths.map(filesOf));
    const others = found.flatMap(({ others }) => others);
    for (const { path, isOfFolder } of found.flatMap(({ files }) => files)) {
      const stamp = await stampOf(path);
      if (stamp) stamps.set(path, stamp);
      const book = await open(path, terminal, limits);
      opened.push({ path, isOfFolder, book, flags: new Map() });
      opened[opened.length - 1].flags = await book.readFlags();
    }
    const copies = await tellPassedOver(opened, terminal);
    const farm = farmOf(opened.filter(({ path }) => !copies.includes(path)));
    if (others.length > 0)
      terminal.tell(
        say(COMMAND_LINE.otherFormats, terminal.language, { files: others.map((path) => basename(path)) }),
      );
    const passedOver = [
      ...others.map((file): PassedOver => ({ file, reason: "otherFormat" })),
      ...copies.map((file): PassedOver => ({ file, reason: "copy" })),
    ];
    for (const [file, { doubt }] of farm.csv)
      if (doubt) terminal.tell(say(COMMAND_LINE.csvDoubt, terminal.language, { file, ...doubt }));
    return { ...farm, words: paths, stamps, passedOver, close };
  } catch (error) {
    await close();
    throw error;
  }
}

interface OpenedFile {
  readonly path: string;
  readonly isOfFolder: boolean;
  readonly book: OpenWorkbook;
  flags: ReadonlyMap<string, string>;
}

/** Says by name which files of folders are passed over, and of which file they were made. */
async function tellPassedOver(opened: readonly OpenedFile[], terminal: Terminal): Promise<string[]> {
  const files = opened.filter(({ isOfFolder }) => isOfFolder);
  const made = await madeOfOthers(files.map((file) => ({ ...file, bytes: () => readFile(file.path) })));
  const byOriginal = grouped([...made], ([, original]) => original);
  for (const [original, copies] of byOriginal)
    terminal.tell(
      say(COMMAND_LINE.passedOver, terminal.language, {
        original: basename(original),
        files: copies.map(([path]) => basename(path)),
      }),
    );
  return [...made.keys()];
}

function farmOf(opened: readonly OpenedFile[]): Omit<Inputs, "words" | "stamps" | "passedOver" | "close"> {
  const files = opened.map(({ path }) => path);
  const sheets: StreamedSheet[] = [];
  const origin = new Map<string, InputSheet>();
  const csv = new Map<string, CsvReading>();
  const setAside = new Map<string, readonly SetAside[]>();
  const names = fileNames(files);
  for (const [index, { book, flags }] of opened.entries()) {
    const file = names[index] ?? book.file;
    const nameOf = (sheet: string) => (files.length > 1 ? `[${file}]${sheet}` : sheet);
    if (book.csv) csv.set(file, book.csv);
    for (const sheet of countSheets(book)) {
      origin.set(nameOf(sheet), { file, sheet });
      sheets.push({
        sheet: nameOf(sheet),
        isText: book.csv !== undefined,
        isHidden: book.outline?.sheets.some(({ name, hidden }) => name === sheet && hidden),
        rows: (onEnd) => book.rows(sheet, onEnd),
      });
    }
    setAside.set(file, asideOfFlags(flags));
  }
  const printed = printedOfFlags(opened.map(({ flags }) => flags));
  return { files, sheets, origin, csv, setAside, printed };
}

/** Names of files as messages show them: where two of several folders have the same one, their paths. */
function fileNames(paths: readonly string[]): (string | undefined)[] {
  const names = paths.map((path) => (path === STANDARD_INPUT ? undefined : basename(path)));
  return names.map((name, index) =>
    name !== undefined && names.indexOf(name) !== names.lastIndexOf(name) ? paths[index] : name,
  );
}

async function open(path: string, terminal: Terminal, limits: ReadLimits): Promise<OpenWorkbook> {
  if (path !== STANDARD_INPUT) return openWorkbookFile(path, limits);
  const bytes = await terminal.standardInput();
  const isPackage = bytes[0] === 0x50 && bytes[1] === 0x4b;
  return openWorkbookBytes(isPackage ? "standard input.xlsx" : "standard input.csv", bytes, limits);
}

/** Sheets of a book but those of results that the add-in wrote. */
function countSheets(book: OpenWorkbook): string[] {
  const own = new Set(
    book.outline?.names.filter(({ name }) => name === OWN_SHEET_NAME).map(({ sheet }) => sheet),
  );
  return book.sheetNames.filter((sheet) => isReadSheet(sheet) || !own.has(sheet));
}

interface InputFile {
  readonly path: string;
  readonly isOfFolder: boolean;
}

/** The readable files of a folder in the order of their names and what else is in it, or the path itself. */
async function filesOf(path: string): Promise<{ files: InputFile[]; others: string[] }> {
  const status = path === STANDARD_INPUT ? undefined : await stat(path).catch(() => undefined);
  if (!status?.isDirectory()) return { files: [{ path, isOfFolder: false }], others: [] };
  const names = (await readdir(path)).filter((name) => !/^[.~]/.test(name)).sort();
  const paths = (of: readonly string[]) => of.map((name) => join(path, name));
  const readable = names.filter((name) => READABLE.test(name));
  if (readable.length === 0) throw new WorkbookProblem("noFiles", { folder: basename(path) });
  return {
    files: paths(readable).map((file) => ({ path: file, isOfFolder: true })),
    others: paths(names.filter((name) => !READABLE.test(name))),
  };
}
