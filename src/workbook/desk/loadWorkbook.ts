import type { IStyleData } from "@univerjs/core";
import { bytesPackage } from "../file/bytesPackage";
import { isCsvName, openPackage, openWorkbookBytes, type OpenWorkbook } from "../file/openWorkbook";
import { READ_LIMITS } from "../file/readLimits";
import type { SheetRow } from "../file/sheetRows";
import { sheetTables, type DefinedName, type OutlineTable } from "../file/workbookOutline";
import type { WorkbookPackage } from "../file/workbookPackage";
import { cellStyles } from "./cellStyles";
import { sheetLook, type SheetLook } from "./sheetLook";

/** A file's sheet, ready to be put into the grid. */
export interface LoadedSheet {
  readonly name: string;
  readonly hidden: boolean;
  readonly rows: readonly SheetRow[];
  /** Undefined for a csv file. */
  readonly look: SheetLook | undefined;
  readonly tables: readonly OutlineTable[];
}

/** A file, ready to be put into the grid. */
export interface LoadedWorkbook {
  readonly file: string;
  readonly sheets: readonly LoadedSheet[];
  readonly names: readonly DefinedName[];
  readonly styles: readonly IStyleData[];
  readonly startsIn1904: boolean;
  /** The small facts that the file keeps for the add-in, by key. */
  readonly flags: ReadonlyMap<string, string>;
}

/**
 * Reads a workbook or csv file that a person chose, with what its sheets look like.
 *
 * @throws WorkbookProblem with one of the codes of src/texts/fileProblems.ts when the file cannot be read.
 */
export async function loadWorkbook(file: string, bytes: Uint8Array): Promise<LoadedWorkbook> {
  if (isCsvName(file)) {
    const open = await openWorkbookBytes(file, bytes);
    const sheets = await Promise.all(
      open.sheetNames.map(async (name) => ({
        name,
        hidden: false,
        rows: await allRows(open, name),
        look: undefined,
        tables: [],
      })),
    );
    return { file, sheets, names: [], styles: [], startsIn1904: false, flags: new Map() };
  }
  const source = breathing(bytesPackage(file, bytes, READ_LIMITS));
  const open = await openPackage(source, READ_LIMITS);
  const { outline } = open;
  if (!outline) return { file, sheets: [], names: [], styles: [], startsIn1904: false, flags: new Map() };
  const sheets: LoadedSheet[] = [];
  for (const sheet of outline.sheets.filter(({ kind }) => kind === "worksheet"))
    sheets.push({
      name: sheet.name,
      hidden: sheet.hidden,
      rows: await allRows(open, sheet.name),
      look: await sheetLook(source, sheet.part, READ_LIMITS),
      tables: await sheetTables(source, sheet, READ_LIMITS),
    });
  return {
    file,
    sheets,
    names: outline.names,
    startsIn1904: outline.startsIn1904,
    styles: await stylesOf(source, outline.stylesPart),
    flags: await open.readFlags(),
  };
}

/** How long reading may hold the page, in milliseconds. */
const SLICE = 12;

/** The same package, but its unpacking lets the page draw and take input in between. */
function breathing(source: WorkbookPackage): WorkbookPackage {
  let end = performance.now() + SLICE;
  return {
    ...source,
    async *chunks(part) {
      for await (const chunk of source.chunks(part)) {
        yield chunk;
        if (performance.now() < end) continue;
        await new Promise((resolve) => setTimeout(resolve));
        end = performance.now() + SLICE;
      }
    },
  };
}

async function stylesOf(source: WorkbookPackage, part: string | undefined): Promise<IStyleData[]> {
  return part === undefined ? [] : cellStyles(source, part, READ_LIMITS);
}

async function allRows(open: OpenWorkbook, sheet: string): Promise<SheetRow[]> {
  const rows: SheetRow[] = [];
  for await (const batch of open.rows(sheet)) for (const row of batch) rows.push(row);
  return rows;
}
