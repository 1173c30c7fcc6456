import type { CellValue } from "../survey/sheets/cell";
import type { SheetArea } from "../survey/reading/sheetArea";
import type { CellArea } from "./address";

export type HostName = "excel" | "desk" | "file" | "memory";

export interface ReadOptions {
  /** Called between slices with the share of the sheet that is read, 0 to 1. */
  onProgress?: (done: number) => void;
  signal?: AbortSignal;
  /**
   * Only these rows of the sheet, as a person counts them; the area is what of them is filled, and does not say which
   * cells are merged.
   */
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
  /**
   * Headers of the columns that say what a row is about, by which a person's remarks find it again: the thing, what is
   * said of it, and the cell where it stood, which may have moved. All columns where left out.
   */
  readonly about?: {
    readonly thing: readonly string[];
    readonly kind?: readonly string[];
    readonly cell?: readonly string[];
    /** Columns that stay blank for a person to fill. */
    readonly entries?: readonly string[];
  };
  /** Columns of the sheet that stands there, from A on, that are carried over: what stands in them is replaced. */
  readonly carriedColumns?: number;
  /** Cells of the sheet that stands there whose notes, comments and looks are carried over. */
  readonly carriedCells?: readonly CarriedCell[];
  /** Charts over the table, below it; a host without charts leaves them out. */
  readonly charts?: readonly OwnChart[];
}

/** A cell by row and column from 1. */
export interface CellPlace {
  readonly row: number;
  readonly column: number;
}

/** What a person put on a cell of an own sheet beside its value. */
export interface CellExtras extends CellPlace {
  /** Its note and comments as a person reads them, with who wrote them; "" for none. */
  readonly note: string;
  /** Its number format; "General" for none. */
  readonly format: string;
  /** Letters, fill, lines and alignment that it was given, in one text; "" for those of a plain cell. */
  readonly dress: string;
}

export interface CarriedCell {
  /** Where it stands. */
  readonly from: CellPlace;
  /** Where it will stand. */
  readonly to: CellPlace;
  /** Whether its number format and its dress go along. */
  readonly look: boolean;
  /** Whether its note and comments go along. */
  readonly note: boolean;
}

/**
 * A chart of ranges over the table of an own sheet: a bar for each row, in parts that are stacked from zero: up to
 * low, on to likely, on to high. Columns are named by their headers.
 */
export interface OwnChart {
  readonly kind: "range";
  readonly title: string;
  /** What the bars measure, with its unit. */
  readonly axis: string;
  /** Column with the name of each bar. */
  readonly labels: string;
  /** Columns with the lengths of the three parts: low, from low to likely, from likely to high. */
  readonly parts: readonly [low: string, toLikely: string, toHigh: string];
}

/** What a host made of an own sheet beside its cells. */
export interface OwnSheetWritten {
  /**
   * Notes and comments that stand on the sheet no more, for want of a place or because the host refused them; left out
   * by a host where all of `carriedCells` do.
   */
  readonly lostNotes?: readonly Pick<CellExtras, "row" | "column" | "note">[];
  /** Charts of it that stand on the sheet now: fewer than asked for where the host has none or refused one. */
  readonly charts: number;
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
  /** True where cells beside these moved too: rows, columns or cells were inserted, deleted, sorted or dragged. */
  readonly shifts?: true;
}

/**
 * A workbook as the pane, the checks and the command line see it. Every host (Excel, the desk page's engine, a file,
 * memory) passes the same contract test. Rows and columns count from 1, as a person sees them.
 * Every method rejects with a WorkbookProblem when the host cannot do it, and then leaves the workbook as it was.
 */
export interface SurveyWorkbook {
  readonly host: HostName;
  sheetNames(): Promise<string[]>;
  /** Names of the hidden sheets, where a person can hide them; no event tells of that, so it is asked for. */
  hiddenSheets?(): Promise<string[]>;
  /** Rejects with code "noSheet" when there is no sheet of that name. */
  readSheet(sheet: string, options?: ReadOptions): Promise<SheetArea>;
  /**
   * Makes or rewrites a sheet of ours as one table; refuses ("notOurs") a sheet that the add-in did not make. Its
   * former charts are replaced, those of a person stay. A table without rows gets no charts.
   */
  writeOwnSheet(content: OwnSheet): Promise<OwnSheetWritten>;
  /** True for a sheet that the add-in made. */
  isOwnSheet(sheet: string): Promise<boolean>;
  /** What a person put on the cells of an own sheet beside their values; left out by a host that keeps values alone. */
  cellExtras?(sheet: string): Promise<readonly CellExtras[]>;
  /** True where the host shows notes to nobody but the person: they stay at their cells. */
  readonly hidesNotes?: boolean;
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
  /** Calls back after a sheet was added, deleted or renamed, where the host can tell. */
  watchSheets?(onChange: () => void): Promise<() => Promise<void>>;
  /** Calls back after a person, or `selectCell`, selected another cell, where the host can tell. */
  watchSelection?(onSelect: () => void): Promise<() => Promise<void>>;
  /** The tables of the workbook; left out by a host that has none. */
  tables?(): Promise<readonly TablePlace[]>;
  /** The cells that a name of the workbook stands for. */
  areaOfName?(name: string): Promise<{ readonly sheet: string; readonly area: CellArea } | undefined>;
  /** The cells that the formula of one of them fills, its own first; undefined for a cell that no such formula fills. */
  filledFrom?(sheet: string, row: number, column: number): Promise<CellArea | undefined>;
}

/** A table with its line of heads. */
export interface TablePlace {
  readonly name: string;
  readonly sheet: string;
  readonly area: CellArea;
  /** Whether the last row is a row of totals. */
  readonly totals: boolean;
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
