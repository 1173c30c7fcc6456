import {
  BooleanNumber,
  ICommandService,
  type ICellData,
  type ICommandInfo,
  type IStyleData,
} from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import {
  FormulaDataModel,
  InsertSheetCommand,
  LexerTreeBuilder,
  SetRangeValuesCommand,
  SetRangeValuesMutation,
  SetRowDataCommand,
} from "@univerjs/preset-sheets-core";
import type { CellValue } from "../../survey/sheets/cell";
import { marksIfAny, type MarkedCell, type SheetArea } from "../../survey/reading/sheetArea";
import { holdsCell, type CellArea } from "../address";
import { breathe } from "../breathe";
import { layOutOwnSheet, type OwnSheetLayout } from "../ownSheet";
import { readReference } from "../reference";
import {
  WorkbookProblem,
  type CellChange,
  type CellExtras,
  type CellMark,
  type CellWrite,
  type OwnSheet,
  type OwnSheetWritten,
  type ReadOptions,
  type SurveyWorkbook,
  type TablePlace,
} from "../surveyWorkbook";
import { cellDataOf, cellValueOf, EMPTY_CELL, hasFormula } from "./cellData";
import { CellMarks } from "./cellMarks";
import { changedRanges } from "./changedRanges";
import type { FWorkbook, FWorksheet } from "./fWorkbook";
import { GrowingTables } from "./growingTables";
import { PageChanges } from "./pageChanges";
import type { LoadedSheet } from "./readContent";
import { cellArea, type Area } from "./sheetLook";
import type { Step } from "./steps";
import {
  columnWidths,
  dressOf,
  frozenHeader,
  OWN,
  ownSheetCells,
  rowHeights,
  SAID,
  type Matrix,
} from "./ownSheetData";

/** What the engine runs when a sheet is added, deleted or renamed. */
const SHEET_LIST_COMMANDS = new Set([
  "sheet.mutation.insert-sheet",
  "sheet.mutation.remove-sheet",
  "sheet.mutation.set-worksheet-name",
]);

/** What the engine runs when another cell or sheet is selected. */
const SELECTION_COMMANDS = new Set([
  "sheet.operation.set-selections",
  "sheet.operation.set-worksheet-active",
]);

/** Rows that are read between two breaths of the page. */
const ROWS_AT_ONCE = 400;

/** Rows and columns kept free below and beside what stands on a sheet. */
const SPARE_ROWS = 50;
const SPARE_COLUMNS = 6;

/** The workbook that is open on the desk page: the pane and the checks over the open spreadsheet engine. */
export class DeskWorkbook implements SurveyWorkbook {
  readonly host = "desk";
  /** What was last written into each sheet of ours, by the sheet's name in lower case. */
  readonly ownContents = new Map<string, OwnSheet>();
  /** What was done on the page beside the contents of cells. */
  readonly pageChanges: PageChanges;
  /** Is told of what the pane does beside the engine's own mutations. */
  onStep: (step: Step) => void = () => {};
  private readonly growing: GrowingTables;
  private readonly marks: CellMarks;
  private readonly commands: ICommandService;
  private readonly formulas: FormulaDataModel;
  private settling: Promise<void> | undefined;
  /** The calculation of all formulas, with which a workbook opens. */
  private opening: Promise<void> | undefined;

  constructor(
    private readonly engine: FUniver,
    private readonly workbook: FWorkbook,
    private readonly isText = false,
    sheets: readonly LoadedSheet[] = [],
  ) {
    const injector = workbook.getActiveSheet().getInject();
    this.marks = new CellMarks(injector, workbook.getId());
    this.commands = injector.get(ICommandService);
    this.formulas = injector.get(FormulaDataModel);
    this.pageChanges = new PageChanges(workbook, injector);
    this.growing = new GrowingTables(workbook, this.formulas, sheets, (sheet, cells) =>
      this.set(sheet, cells),
    );
    this.opening = this.calculationEnd().finally(() => (this.opening = undefined));
    this.commands.onCommandExecuted((command, options) => {
      if (options?.applyFormulaCalculationResult) return;
      if (command.id === SetRangeValuesMutation.id) this.settle();
      if (!options?.fromCollab) this.growing.grow(command);
    });
  }

  /** Resolves when every formula has its value. */
  async calculated(): Promise<void> {
    if (await this.growing.grown()) this.settle();
    await this.settling;
  }

  /** False for what the engine takes as a formula and no other spreadsheet would read in a file. */
  isReadable(formula: string): boolean {
    const lexer = this.workbook.getActiveSheet().getInject().get(LexerTreeBuilder);
    return typeof lexer.treeBuilder(formula, false) === "object" && !NO_FORMULA.test(withoutTexts(formula));
  }

  /** The tables of a sheet with the areas that they have now; rows and columns count from 1. */
  tablesOf(name: string): { readonly name: string; readonly area: CellArea }[] {
    return this.sheet(name)
      .getSubTableInfos()
      .map(({ name: table, range }) => ({ name: table, area: cellArea(range) }));
  }

  /** Number format of a cell of a sheet, by row and column from 1. */
  formatsOf(name: string): (row: number, column: number) => string | undefined {
    const cells = this.sheet(name).getSheet().getCellMatrix();
    const styles = this.workbook.getWorkbook().getStyles();
    return (row, column) => styles.getStyleByCell(cells.getValue(row - 1, column - 1))?.n?.pattern;
  }

  /** Number of a cell's style among those of the file, by row and column from 1; undefined for one set on the page. */
  styleOf(name: string): (row: number, column: number) => number | undefined {
    const cells = this.sheet(name).getSheet().getCellMatrix();
    return (row, column) => {
      const style = cells.getValue(row - 1, column - 1)?.s;
      return typeof style === "string" && style.startsWith("style-") ? Number(style.slice(6)) : undefined;
    };
  }

  /** The areas of a sheet that one formula each fills. */
  filledByFormula(name: string): Area[] {
    const sheet = this.sheet(name);
    const ranges = this.formulas.getArrayFormulaRange()[this.workbook.getId()]?.[sheet.getSheetId()] ?? {};
    return Object.values(ranges).flatMap((row) => Object.values(row as Record<number, Area>));
  }

  async sheetNames(): Promise<string[]> {
    return this.workbook.getSheets().map((sheet) => sheet.getSheetName());
  }

  async hiddenSheets(): Promise<string[]> {
    return this.workbook
      .getSheets()
      .flatMap((sheet) => (sheet.isSheetHidden() ? [sheet.getSheetName()] : []));
  }

  async readSheet(name: string, options: ReadOptions = {}): Promise<SheetArea> {
    const { onProgress, signal, rows: wanted } = options;
    signal?.throwIfAborted();
    await this.settling;
    const sheet = this.sheet(name);
    const [unitId, sheetId] = [this.workbook.getId(), sheet.getSheetId()];
    const grid = sheet.getSheet();
    const cells = grid.getCellMatrix();
    const marked: MarkedCell[] = [];
    const hiddenRows: number[] = [];
    const isStruck = (cell: ICellData) =>
      this.workbook.getWorkbook().getStyles().getStyleByCell(cell)?.st?.s === BooleanNumber.TRUE;
    const spilled = this.formulas.getArrayFormulaCellData()[unitId]?.[sheetId] ?? {};
    const rows: CellValue[][] = [];
    const formulas = new Map<string, string>();
    const bounds = { firstRow: Infinity, lastRow: -1, firstColumn: Infinity, lastColumn: -1 };
    const rowCount = Math.max(cells.getLength(), lastKey(spilled) + 1);
    const from = wanted ? wanted.first - 1 : 0;
    const end = wanted ? Math.min(rowCount, from + wanted.count) : rowCount;

    for (let row = from; row < end; row++) {
      if (row > 0 && row % ROWS_AT_ONCE === 0) {
        onProgress?.(row / rowCount);
        await breathe();
        signal?.throwIfAborted();
      }
      const stored = cells.getRow(row) ?? {};
      const values: CellValue[] = [];
      const spilledRow = spilled[row] ?? {};
      for (const key of new Set([...Object.keys(stored), ...Object.keys(spilledRow)])) {
        const column = Number(key);
        const cell = stored[column];
        const value = cellValueOf(cell) ?? cellValueOf(spilledRow[column], true);
        const formula = cell && hasFormula(cell) ? this.formulaOf(row, column, sheetId, unitId) : null;
        if (formula !== null) formulas.set(`${row} ${column}`, formula);
        if (value === null && formula === null) continue;
        values[column] = value;
        const note = cell?.custom?.[SAID] as string | undefined;
        const struck = cell?.s ? isStruck(cell) : false;
        if (struck || note !== undefined) marked.push({ row: row + 1, column: column + 1, struck, note });
        bounds.firstRow = Math.min(bounds.firstRow, row);
        bounds.lastRow = row;
        bounds.firstColumn = Math.min(bounds.firstColumn, column);
        bounds.lastColumn = Math.max(bounds.lastColumn, column);
      }
      if (values.length > 0 && !grid.getRowRawVisible(row)) hiddenRows.push(row + 1);
      rows.push(values);
    }
    if (formulas.size > 0 && this.opening) {
      await this.opening;
      return this.readSheet(name, options);
    }
    onProgress?.(1);
    const { firstRow, lastRow, firstColumn, lastColumn } = bounds;
    if (lastRow < 0)
      return { sheet: sheet.getSheetName(), firstRow: 1, firstColumn: 1, values: [], formulaAt: () => null };
    const width = lastColumn - firstColumn + 1;
    const merged = grid.getMergeData();
    const columns = Array.from({ length: width }, (_, at) => firstColumn + at);
    const hiddenColumns = columns.filter((at) => !grid.getColVisible(at)).map((at) => at + 1);
    const marks = marksIfAny({ marked, hiddenRows, hiddenColumns });
    return {
      sheet: sheet.getSheetName(),
      firstRow: firstRow + 1,
      firstColumn: firstColumn + 1,
      values: rows
        .slice(firstRow - from, lastRow + 1 - from)
        .map((row) => Array.from({ length: width }, (_, column) => row[firstColumn + column] ?? null)),
      formulaAt: (r, c) => formulas.get(`${firstRow + r} ${firstColumn + c}`) ?? null,
      isText: this.isText,
      ...(marks ? { marks } : {}),
      ...(sheet.isSheetHidden() ? { isHidden: true } : {}),
      ...(merged.length === 0
        ? {}
        : {
            merged: merged.map(({ startRow, startColumn, endRow, endColumn }) => ({
              row: startRow - firstRow,
              column: startColumn - firstColumn,
              rows: endRow - startRow + 1,
              columns: endColumn - startColumn + 1,
            })),
          }),
    };
  }

  async writeOwnSheet(content: OwnSheet): Promise<OwnSheetWritten> {
    const layout = layOutOwnSheet(content);
    const there = this.find(content.sheet);
    if (there && !isOwn(there)) throw new WorkbookProblem("notOurs", { sheet: there.getSheetName() });
    if (there) this.rewrite(there, layout, content);
    else this.insert(layout, content);
    this.keepOwnSheet(content);
    this.onStep({ is: "ownSheet", content });
    return { charts: 0 };
  }

  /** Notes what a sheet of ours, which stands there already, was written from. */
  keepOwnSheet(content: OwnSheet): void {
    this.ownContents.set(content.sheet.toLowerCase(), content);
  }

  async isOwnSheet(name: string): Promise<boolean> {
    const sheet = this.find(name);
    return sheet !== undefined && isOwn(sheet);
  }

  /** Of a cell that was written here only what differs from how it was written; there are no notes on the page. */
  async cellExtras(name: string): Promise<readonly CellExtras[]> {
    const sheet = this.sheet(name);
    const written = this.ownContents.get(name.toLowerCase());
    const ours = written && ownSheetCells(layOutOwnSheet(written), written);
    const styles = this.workbook.getWorkbook().getStyles();
    const plain = styles.get("style-0") ?? {};
    const extras: CellExtras[] = [];
    sheet
      .getSheet()
      .getCellMatrix()
      .forValue((row, column, cell) => {
        if (!cell?.s) return;
        const style = styles.getStyleByCell(cell) ?? {};
        const own = ours?.[row]?.[column]?.s as IStyleData | undefined;
        const [format = "General", dress] = [style.n?.pattern, dressOf(style)];
        const isOurs = [own ?? {}, { ...plain, ...own }, plain].some((one) => dressOf(one) === dress);
        if (isOurs && (format === "General" || format === own?.n?.pattern)) return;
        extras.push({ row: row + 1, column: column + 1, note: "", format, dress: isOurs ? "" : dress });
      });
    return extras;
  }

  async deleteOwnSheet(name: string): Promise<void> {
    const sheet = this.sheet(name);
    if (!isOwn(sheet)) throw new WorkbookProblem("notOurs", { sheet: sheet.getSheetName() });
    if (!this.workbook.deleteSheet(sheet))
      throw new WorkbookProblem("lastSheet", { sheet: sheet.getSheetName() });
  }

  async writeCells(name: string, cells: readonly CellWrite[]): Promise<void> {
    const sheet = this.sheet(name);
    const matrix: Matrix = {};
    let [rows, columns] = [0, 0];
    for (const cell of cells) {
      const data = "formula" in cell ? { ...EMPTY_CELL, f: cell.formula } : cellDataOf(cell.value);
      (matrix[cell.row - 1] ??= {})[cell.column - 1] = data;
      rows = Math.max(rows, cell.row);
      columns = Math.max(columns, cell.column);
    }
    if (cells.length === 0) return;
    this.makeRoom(sheet, rows, columns);
    this.set(sheet, matrix);
  }

  async selectCell(name: string, row: number, column: number): Promise<void> {
    const sheet = this.sheet(name);
    this.makeRoom(sheet, row, column);
    sheet.activate();
    const range = sheet.getRange(row - 1, column - 1);
    sheet.setActiveRange(range);
    await isDrawn(sheet);
    if (!isInSight(sheet, row - 1, column - 1))
      sheet.scrollToCell(Math.max(0, row - 1 - ROWS_ABOVE), Math.max(0, column - 1 - COLUMNS_BEFORE));
  }

  async selectedCell(): Promise<{ sheet: string; row: number; column: number } | undefined> {
    const sheet = this.workbook.getActiveSheet();
    const cell = this.workbook.getActiveCell();
    return cell
      ? { sheet: sheet.getSheetName(), row: cell.getRow() + 1, column: cell.getColumn() + 1 }
      : undefined;
  }

  async markCells(marks: readonly CellMark[]): Promise<void> {
    const placed = marks.map((mark) => ({ sheetId: this.sheet(mark.sheet).getSheetId(), mark }));
    this.marks.replace(placed);
    this.workbook.getActiveSheet().refreshCanvas();
  }

  async readFlag(key: string): Promise<string | undefined> {
    return this.flags()[key];
  }

  async writeFlag(key: string, value: string | undefined): Promise<void> {
    const { [key]: _before, ...others } = this.flags();
    const flags = value === undefined ? others : { ...others, [key]: value };
    this.workbook.setCustomMetadata({ ...this.workbook.getCustomMetadata(), [OWN]: flags });
    this.onStep({ is: "flag", key, value });
  }

  async readFlags(prefix: string): Promise<ReadonlyMap<string, string>> {
    return new Map(Object.entries(this.flags()).filter(([key]) => key.startsWith(prefix)));
  }

  async watchCells(onChange: (change: CellChange) => void): Promise<() => Promise<void>> {
    const listening = this.commands.onCommandExecuted((command, options) => {
      if (options?.applyFormulaCalculationResult) return;
      for (const change of this.changesOf(command)) onChange(change);
    });
    return async () => listening.dispose();
  }

  async watchSheets(onChange: () => void): Promise<() => Promise<void>> {
    const listening = this.commands.onCommandExecuted(({ id }) => {
      if (SHEET_LIST_COMMANDS.has(id)) onChange();
    });
    return async () => listening.dispose();
  }

  async watchSelection(onSelect: () => void): Promise<() => Promise<void>> {
    const listening = this.commands.onCommandExecuted(({ id }) => {
      if (SELECTION_COMMANDS.has(id)) onSelect();
    });
    return async () => listening.dispose();
  }

  async tables(): Promise<TablePlace[]> {
    return this.workbook.getTableList().flatMap(({ name, subUnitId, range }) => {
      const sheet = this.workbook.getSheetBySheetId(subUnitId)?.getSheetName();
      return sheet === undefined ? [] : [{ name, sheet, area: cellArea(range), totals: false }];
    });
  }

  async areaOfName(name: string): Promise<{ sheet: string; area: CellArea } | undefined> {
    const reference = readReference(this.workbook.getDefinedName(name)?.getFormulaOrRefString() ?? "");
    if (reference.is !== "area" || reference.sheet === undefined) return undefined;
    return { sheet: reference.sheet, area: reference.area };
  }

  async filledFrom(sheet: string, row: number, column: number): Promise<CellArea | undefined> {
    await this.settling;
    return this.filledByFormula(sheet)
      .map(cellArea)
      .find((area) => holdsCell(area, row, column));
  }

  private changesOf(command: Readonly<ICommandInfo>): CellChange[] {
    const unitId = this.workbook.getId();
    return changedRanges(command)
      .filter((changed) => changed.unitId === unitId)
      .flatMap(({ subUnitId, range, shifts }) => {
        const sheet = this.workbook.getSheetBySheetId(subUnitId);
        if (!sheet) return [];
        return [
          {
            sheet: sheet.getSheetName(),
            firstRow: range.startRow + 1,
            firstColumn: range.startColumn + 1,
            rowCount: range.endRow - range.startRow + 1,
            columnCount: range.endColumn - range.startColumn + 1,
            by: "own" as const,
            ...(shifts ? { shifts } : {}),
          },
        ];
      });
  }

  private settle(): void {
    this.settling ??= this.calculationEnd().finally(() => (this.settling = undefined));
  }

  private calculationEnd(): Promise<void> {
    return this.engine
      .getFormula()
      .onCalculationResultApplied(LONGEST_CALCULATION)
      .catch(() => {});
  }

  private formulaOf(row: number, column: number, sheetId: string, unitId: string): string | null {
    return this.formulas.getFormulaStringByCell(row, column, sheetId, unitId) ?? null;
  }

  private flags(): Record<string, string> {
    return (this.workbook.getCustomMetadata()?.[OWN] as Record<string, string> | undefined) ?? {};
  }

  private find(name: string): FWorksheet | undefined {
    const wanted = name.toLowerCase();
    return this.workbook.getSheets().find((sheet) => sheet.getSheetName().toLowerCase() === wanted);
  }

  private sheet(name: string): FWorksheet {
    const sheet = this.find(name);
    if (!sheet) throw new WorkbookProblem("noSheet", { sheet: name });
    return sheet;
  }

  private makeRoom(sheet: FWorksheet, rows: number, columns: number): void {
    if (sheet.getMaxRows() < rows) sheet.setRowCount(rows + SPARE_ROWS);
    if (sheet.getMaxColumns() < columns) sheet.setColumnCount(columns + SPARE_COLUMNS);
  }

  private set(sheet: FWorksheet, value: Matrix): void {
    this.commands.syncExecuteCommand(SetRangeValuesCommand.id, {
      unitId: this.workbook.getId(),
      subUnitId: sheet.getSheetId(),
      value,
    });
  }

  private insert(layout: OwnSheetLayout, content: OwnSheet): void {
    this.commands.syncExecuteCommand(InsertSheetCommand.id, {
      unitId: this.workbook.getId(),
      sheet: {
        name: content.sheet,
        cellData: ownSheetCells(layout, content),
        columnData: columnWidths(content),
        rowData: rowHeights(layout, content),
        rowCount: layout.values.length + SPARE_ROWS,
        columnCount: layout.columnCount + SPARE_COLUMNS,
        freeze: frozenHeader(layout),
        custom: { [OWN]: "own" },
      },
    });
  }

  private rewrite(sheet: FWorksheet, layout: OwnSheetLayout, content: OwnSheet): void {
    this.makeRoom(sheet, layout.values.length, layout.columnCount);
    const matrix: Matrix = {};
    const cells = sheet.getSheet().getCellMatrix();
    cells.forValue((row, column) => {
      (matrix[row] ??= {})[column] = { ...EMPTY_CELL, s: null };
    });
    for (const [row, own] of Object.entries(ownSheetCells(layout, content)))
      for (const [column, cell] of Object.entries(own))
        (matrix[Number(row)] ??= {})[Number(column)] = Object.assign({ s: null }, cell);
    for (const { from, to, look } of content.carriedCells ?? []) {
      if (!look) continue;
      const row = (matrix[to.row - 1] ??= {});
      row[to.column - 1] = {
        ...(row[to.column - 1] ?? EMPTY_CELL),
        s: cells.getValue(from.row - 1, from.column - 1)?.s,
      };
    }
    this.set(sheet, matrix);
    for (const [column, { w }] of Object.entries(columnWidths(content)))
      sheet.setColumnWidth(Number(column), w);
    this.commands.syncExecuteCommand(SetRowDataCommand.id, {
      unitId: this.workbook.getId(),
      subUnitId: sheet.getSheetId(),
      rowData: rowHeights(layout, content),
    });
    sheet.setFreeze(frozenHeader(layout));
  }
}

/** Two operators where no operand stands between them, an operator without one, and a row of no table that is named. */
const NO_FORMULA = /[-+*/^&=<>]\s*(?:[*/^&),]|$)|^=\s*[*/^&=<>]|(?:^|[^\p{L}\p{N}_.\]])\[@/u;

/** Where a cell out of sight is brought to: a few rows and columns from the corner, so that its row can be read. */
const ROWS_ABOVE = 6;
const COLUMNS_BEFORE = 3;

/** Milliseconds after which a calculation that does not end is no longer waited for. */
const LONGEST_CALCULATION = 20_000;
function withoutTexts(formula: string): string {
  return formula.replace(/"(?:[^"]|"")*"/g, "0");
}

function isOwn(sheet: FWorksheet): boolean {
  return sheet.getCustomMetadata()?.[OWN] === "own";
}

/** The sheet's parts as they are on the screen: frozen rows and columns, and what is scrolled. */
function partsInSight(sheet: FWorksheet) {
  return [...(sheet.getVisibleRangesOfAllViewports()?.values() ?? [])];
}

function isInSight(sheet: FWorksheet, row: number, column: number): boolean {
  return partsInSight(sheet).some(
    (part) =>
      row >= part.startRow && row < part.endRow && column >= part.startColumn && column < part.endColumn,
  );
}

/** A sheet that has just come to the front needs a few frames before it can be scrolled. */
async function isDrawn(sheet: FWorksheet): Promise<void> {
  for (let tries = 0; tries < 20 && partsInSight(sheet).length === 0; tries++)
    await new Promise((resolve) => setTimeout(resolve, 25));
}

function lastKey(matrix: object): number {
  return Object.keys(matrix).reduce((last, key) => Math.max(last, Number(key)), -1);
}
