import { isBlank, type CellValue } from "../../../src/survey/sheets/cell";
import type { SheetArea } from "../../../src/survey/reading/sheetArea";
import { areasOfAddress, type CellArea } from "../../../src/workbook/address";
import { layOutCharts, layOutOwnSheet } from "../../../src/workbook/ownSheet";
import {
  WorkbookProblem,
  type CellChange,
  type CellMark,
  type CellWrite,
  type OwnChart,
  type OwnSheet,
  type OwnSheetWritten,
  type ReadOptions,
  type SurveyWorkbook,
} from "../../../src/workbook/surveyWorkbook";

/** A cell as a test gives it: a value, or a formula with the value that stands in its cell. */
export type MemoryCell = CellValue | { readonly formula: string; readonly value: CellValue };

interface MemorySheet {
  name: string;
  cells: CellValue[][];
  formulas: Map<string, string>;
  own: boolean;
  charts: readonly OwnChart[];
  locked: boolean;
  merged: readonly CellArea[];
}

/**
 * A workbook that lives in memory: no host is needed. It does not
 * calculate: a formula's value is the one that was given with it, 0 for a formula written through writeCells.
 */
export class MemoryWorkbook implements SurveyWorkbook {
  readonly host = "memory";
  marks: readonly CellMark[] = [];
  /** Names of sheets that are hidden. */
  hidden: readonly string[] = [];
  private readonly sheets: MemorySheet[] = [];
  private readonly flags = new Map<string, string>();
  private readonly watchers = new Set<(change: CellChange) => void>();
  private readonly sheetWatchers = new Set<() => void>();
  private readonly selectionWatchers = new Set<() => void>();
  private selection: { sheet: string; row: number; column: number } | undefined;

  constructor(
    sheets: Readonly<Record<string, readonly (readonly MemoryCell[])[]>> = {},
    merged: Readonly<Record<string, readonly string[]>> = {},
  ) {
    for (const [name, rows] of Object.entries(sheets)) {
      const sheet = this.addSheet(name);
      rows.forEach((row, r) => row.forEach((cell, c) => put(sheet, r + 1, c + 1, cell)));
      sheet.merged = (merged[name] ?? []).flatMap(areasOfAddress);
    }
  }

  async sheetNames(): Promise<string[]> {
    return this.sheets.map((sheet) => sheet.name);
  }

  async hiddenSheets(): Promise<string[]> {
    return [...this.hidden];
  }

  async readSheet(name: string, options: ReadOptions = {}): Promise<SheetArea> {
    options.signal?.throwIfAborted();
    const area = filledArea(this.sheet(name), options.rows);
    options.onProgress?.(1);
    return this.hidden.includes(area.sheet) ? { ...area, isHidden: true } : area;
  }

  async writeOwnSheet(content: OwnSheet): Promise<OwnSheetWritten> {
    const layout = layOutOwnSheet(content);
    const there = this.find(content.sheet);
    if (there && !there.own) throw new WorkbookProblem("notOurs", { sheet: there.name });
    if (there) mustBeOpen(there);
    const sheet = there ?? this.addSheet(content.sheet);
    sheet.own = true;
    sheet.cells = layout.values;
    sheet.formulas = new Map();
    sheet.charts = layOutCharts(content).map(({ chart }) => chart);
    this.tell({
      sheet: sheet.name,
      firstRow: 1,
      firstColumn: 1,
      rowCount: layout.values.length,
      columnCount: layout.columnCount,
      by: "own",
    });
    return { charts: sheet.charts.length };
  }

  /** The charts that stand on a sheet. */
  charts(name: string): readonly OwnChart[] {
    return this.sheet(name).charts;
  }

  async isOwnSheet(name: string): Promise<boolean> {
    return this.find(name)?.own ?? false;
  }

  async deleteOwnSheet(name: string): Promise<void> {
    const sheet = this.sheet(name);
    if (!sheet.own) throw new WorkbookProblem("notOurs", { sheet: sheet.name });
    this.sheets.splice(this.sheets.indexOf(sheet), 1);
    this.marks = this.marks.filter((mark) => !sameName(mark.sheet, sheet.name));
  }

  async writeCells(name: string, cells: readonly CellWrite[]): Promise<void> {
    const sheet = this.sheet(name);
    mustBeOpen(sheet);
    for (const cell of cells)
      put(sheet, cell.row, cell.column, "formula" in cell ? { formula: cell.formula, value: 0 } : cell.value);
    for (const cell of cells) this.tell(oneCell(sheet.name, cell.row, cell.column, "own"));
  }

  async selectCell(name: string, row: number, column: number): Promise<void> {
    this.selection = { sheet: this.sheet(name).name, row, column };
    for (const watcher of [...this.selectionWatchers]) watcher();
  }

  async selectedCell(): Promise<{ sheet: string; row: number; column: number } | undefined> {
    return this.selection;
  }

  async watchSelection(onSelect: () => void): Promise<() => Promise<void>> {
    const watcher = () => onSelect();
    this.selectionWatchers.add(watcher);
    return async () => void this.selectionWatchers.delete(watcher);
  }

  async markCells(marks: readonly CellMark[]): Promise<void> {
    for (const mark of marks) mustBeOpen(this.sheet(mark.sheet));
    this.marks = [...marks];
  }

  async readFlag(key: string): Promise<string | undefined> {
    return this.flags.get(key);
  }

  async writeFlag(key: string, value: string | undefined): Promise<void> {
    if (value === undefined) this.flags.delete(key);
    else this.flags.set(key, value);
  }

  async readFlags(prefix: string): Promise<ReadonlyMap<string, string>> {
    return new Map([...this.flags].filter(([key]) => key.startsWith(prefix)));
  }

  async watchCells(onChange: (change: CellChange) => void): Promise<() => Promise<void>> {
    const watcher = (change: CellChange) => onChange(change);
    this.watchers.add(watcher);
    return async () => {
      this.watchers.delete(watcher);
    };
  }

  /** What a person, or a colleague in the same workbook, types into a cell. */
  type(name: string, row: number, column: number, cell: MemoryCell, by: "own" | "colleague" = "own"): void {
    const sheet = this.sheet(name);
    put(sheet, row, column, cell);
    this.tell(oneCell(sheet.name, row, column, by));
  }

  /** Calls back after a sheet was added, deleted or renamed. */
  async watchSheets(onChange: () => void): Promise<() => Promise<void>> {
    const watcher = () => onChange();
    this.sheetWatchers.add(watcher);
    return async () => {
      this.sheetWatchers.delete(watcher);
    };
  }

  /** Inserts empty rows above a row, or deletes rows from it on, as a person does; formulas are not moved. */
  moveRows(name: string, row: number, { insert = 0, remove = 0 }): void {
    const sheet = this.sheet(name);
    sheet.cells.splice(row - 1, remove, ...Array.from({ length: insert }, () => []));
    const change = oneCell(sheet.name, row, 1, "own");
    this.tell({ ...change, rowCount: insert + remove, shifts: true });
  }

  /** Renames a sheet as a person does. */
  renameSheet(name: string, to: string): void {
    this.sheet(name).name = to;
    this.tellOfSheets();
  }

  /** Protects a sheet, or takes the protection off, as a person does. */
  protect(name: string, locked = true): void {
    this.sheet(name).locked = locked;
  }

  /** Adds a sheet that the add-in did not make. */
  addForeignSheet(name: string): void {
    this.addSheet(name);
  }

  /** Deletes a sheet as a person does. */
  removeSheet(name: string): void {
    this.sheets.splice(this.sheets.indexOf(this.sheet(name)), 1);
    this.tellOfSheets();
  }

  private addSheet(name: string): MemorySheet {
    const sheet: MemorySheet = {
      name,
      cells: [],
      formulas: new Map(),
      own: false,
      charts: [],
      locked: false,
      merged: [],
    };
    this.sheets.push(sheet);
    this.tellOfSheets();
    return sheet;
  }

  private find(name: string): MemorySheet | undefined {
    return this.sheets.find((sheet) => sameName(sheet.name, name));
  }

  private sheet(name: string): MemorySheet {
    const sheet = this.find(name);
    if (!sheet) throw new WorkbookProblem("noSheet", { sheet: name });
    return sheet;
  }

  private tellOfSheets(): void {
    for (const watcher of [...this.sheetWatchers]) watcher();
  }

  private tell(change: CellChange): void {
    for (const watcher of [...this.watchers]) watcher(change);
  }
}

function sameName(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase();
}

function mustBeOpen(sheet: MemorySheet): void {
  if (sheet.locked) throw new WorkbookProblem("protectedSheet", { sheet: sheet.name });
}

function oneCell(sheet: string, row: number, column: number, by: "own" | "colleague"): CellChange {
  return { sheet, firstRow: row, firstColumn: column, rowCount: 1, columnCount: 1, by };
}

function put(sheet: MemorySheet, row: number, column: number, cell: MemoryCell): void {
  while (sheet.cells.length < row) sheet.cells.push([]);
  const cells = sheet.cells[row - 1];
  while (cells.length < column) cells.push(null);
  const place = `${row} ${column}`;
  if (typeof cell === "object" && cell !== null && "formula" in cell) {
    cells[column - 1] = cell.value;
    sheet.formulas.set(place, cell.formula);
  } else {
    cells[column - 1] = cell === "" ? null : cell;
    sheet.formulas.delete(place);
  }
}

function filledArea(sheet: MemorySheet, rows: ReadOptions["rows"]): SheetArea {
  const first = rows ? rows.first - 1 : 0;
  const end = rows ? first + rows.count : Infinity;
  let firstRow = Infinity;
  let lastRow = -1;
  let firstColumn = Infinity;
  let lastColumn = -1;
  sheet.cells.forEach((row, r) => {
    if (r < first || r >= end) return;
    row.forEach((value, c) => {
      if (isBlank(value) && !sheet.formulas.has(`${r + 1} ${c + 1}`)) return;
      firstRow = Math.min(firstRow, r);
      lastRow = Math.max(lastRow, r);
      firstColumn = Math.min(firstColumn, c);
      lastColumn = Math.max(lastColumn, c);
    });
  });
  if (lastRow < 0)
    return { sheet: sheet.name, firstRow: 1, firstColumn: 1, values: [], formulaAt: () => null };
  const formulas = new Map(sheet.formulas);
  const width = lastColumn - firstColumn + 1;
  return {
    sheet: sheet.name,
    firstRow: firstRow + 1,
    firstColumn: firstColumn + 1,
    values: sheet.cells
      .slice(firstRow, lastRow + 1)
      .map((row) => Array.from({ length: width }, (_, c) => row[firstColumn + c] ?? null)),
    formulaAt: (r, c) => formulas.get(`${firstRow + r + 1} ${firstColumn + c + 1}`) ?? null,
    merged: sheet.merged.map((area) => ({
      row: area.firstRow - 1 - firstRow,
      column: area.firstColumn - 1 - firstColumn,
      rows: area.lastRow - area.firstRow + 1,
      columns: area.lastColumn - area.firstColumn + 1,
    })),
  };
}
