import type { CellValue } from "../survey/cell";
import type { SheetArea } from "../survey/sheetArea";

export type HostName = "excel" | "desk" | "file" | "memory";

export interface ReadOptions {
  /** Called between slices with the share of the sheet that is read, 0 to 1. */
  onProgress?: (done: number) => void;
  signal?: AbortSignal;
  /** Only these rows of the sheet, as a person counts them; the area is what of them is filled. */
  rows?: { readonly first: number; readonly count: number };
}

/** A table that the add-in writes into a sheet of its own. Text is written as text, never as a formula. */
export interface OwnSheet {
  readonly sheet: string;
  /** Lines above the table: title, when it was made, what it is. */
  readonly title?: readonly string[];
  readonly headers: readonly string[];
  readonly rows: readonly (readonly (string | number | boolean | null)[])[];
  /** Width in characters and number format per column, where they matter; `shade`: a share, darker the higher. */
  readonly columns?: readonly { width?: number; format?: string; wrap?: boolean; shade?: boolean }[];
}

/** A PivotTable over the table of an own sheet; fields are named by their headers. */
export interface PivotWanted {
  readonly sheet: string;
  readonly name: string;
  /** Own sheet with the table that it counts. */
  readonly source: string;
  readonly title: readonly string[];
  readonly filters: readonly string[];
  readonly rows: readonly string[];
  readonly values: readonly { header: string; name: string; by: "Sum" | "Average"; format?: string }[];
}

/** A cell to be marked so that a person sees it, without touching its own fill, note or formats. */
export interface CellMark {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly severity: "wrong" | "ask" | "note";
}

export interface CellChange {
  readonly sheet: string;
  readonly firstRow: number;
  readonly firstColumn: number;
  readonly rowCount: number;
  readonly columnCount: number;
  /** "own": typed on this machine; "colleague": came in from a co-author. */
  readonly by: "own" | "colleague";
}

/**
 * A workbook as the pane, the checks and the command line see it. Every host (Excel, the desk page's engine, a file,
 * memory) passes the same contract test. Rows and columns count from 1, as a person sees them.
 * Every method rejects with a WorkbookProblem when the host cannot do it, and then leaves the workbook as it was.
 */
export interface SurveyWorkbook {
  readonly host: HostName;
  sheetNames(): Promise<string[]>;
  /** Rejects with code "noSheet" when there is no sheet of that name. */
  readSheet(sheet: string, options?: ReadOptions): Promise<SheetArea>;
  /** Makes or rewrites a sheet of ours as one table; refuses ("notOurs") a sheet that the add-in did not make. */
  writeOwnSheet(content: OwnSheet): Promise<void>;
  /** True for a sheet that the add-in made. */
  isOwnSheet(sheet: string): Promise<boolean>;
  deleteOwnSheet(sheet: string): Promise<void>;
  /** Writes values (text as text) or formulas (a string that begins with "=" in `formulas`) into single cells. */
  writeCells(sheet: string, cells: readonly CellWrite[]): Promise<void>;
  selectCell(sheet: string, row: number, column: number): Promise<void>;
  /** The cell that a person has selected, if one is. */
  selectedCell(): Promise<{ sheet: string; row: number; column: number } | undefined>;
  /** Replaces all marks of the add-in by these. */
  markCells(marks: readonly CellMark[]): Promise<void>;
  /** Small facts kept in the workbook itself, not on a sheet: never anything that changes a result. */
  readFlag(key: string): Promise<string | undefined>;
  writeFlag(key: string, value: string | undefined): Promise<void>;
  /** Every fact whose key begins so. What several people add to has a key per entry, so that nobody overwrites another. */
  readFlags(prefix: string): Promise<ReadonlyMap<string, string>>;
  /** Makes a PivotTable over an own sheet, or refreshes it; only where the host has PivotTables. */
  writePivot?(pivot: PivotWanted): Promise<"made" | "refreshed">;
  /** Calls back after every change of cell contents until the returned function is called. */
  watchCells(onChange: (change: CellChange) => void): Promise<() => Promise<void>>;
}

export type CellWrite =
  | { readonly row: number; readonly column: number; readonly value: string | number | boolean | null }
  | {
      readonly row: number;
      readonly column: number;
      readonly formula: string;
      /** What a file shows in the cell until a spreadsheet calculates it; hosts that calculate need none. */
      readonly shown?: CellValue;
    };

/** Why a host could not do what was asked; the sentence is in src/texts/workbook.ts by `code`. */
export class WorkbookProblem extends Error {
  constructor(
    readonly code: string,
    readonly facts: Readonly<Record<string, string | number>> = {},
    options?: ErrorOptions,
  ) {
    super(`${code} ${JSON.stringify(facts)}`, options);
    this.name = "WorkbookProblem";
  }
}
