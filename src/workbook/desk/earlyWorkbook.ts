import type { SheetArea } from "../../survey/reading/sheetArea";
import type { CellArea } from "../address";
import { OWN_SHEET_NAME } from "../ownSheet";
import { sheetAreaOfRows } from "../file/sheetAreaOfRows";
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
import type { DeskWorkbook } from "./deskWorkbook";
import { PAGE_LIMITS, type FileRows } from "./readContent";

type Stop = () => Promise<void>;

/**
 * A workbook whose cells are read and whose grid is still on its way. Sheets without formulas are read from the file, as they
 * will stand in the grid; everything else waits for the grid, and is its own from then on.
 */
export class EarlyWorkbook implements SurveyWorkbook {
  readonly host = "desk";
  /** Puts the workbook with its grid in the place of the file. */
  arrive!: (workbook: DeskWorkbook) => void;
  private there: DeskWorkbook | undefined;
  private readonly coming = new Promise<DeskWorkbook>((resolve) => {
    this.arrive = (workbook) => {
      this.there = workbook;
      resolve(workbook);
    };
  });

  /** @param rows what stands in the cells of the file, once it is read */
  constructor(private readonly rows: Promise<FileRows>) {}

  async sheetNames(): Promise<string[]> {
    return this.there?.sheetNames() ?? (await this.rows).sheets.map(({ name }) => name);
  }

  async hiddenSheets(): Promise<string[]> {
    if (this.there) return this.there.hiddenSheets();
    return (await this.rows).sheets.flatMap(({ hidden, name }) => (hidden ? [name] : []));
  }

  async readSheet(name: string, options: ReadOptions = {}): Promise<SheetArea> {
    options.signal?.throwIfAborted();
    const { file, sheets, csv } = await this.rows;
    const sheet = sheets.find((each) => each.name.toLowerCase() === name.toLowerCase());
    if (this.there || sheet?.rows.some(({ formulas }) => formulas) || options.rows)
      return (await this.coming).readSheet(name, options);
    if (!sheet) throw new WorkbookProblem("noSheet", { sheet: name });
    options.onProgress?.(1);
    const area = sheetAreaOfRows(file, sheet.name, sheet.rows, PAGE_LIMITS, sheet.end);
    if (area.values.length === 0) return area;
    // The grid knows no difference between an empty text and an empty cell.
    const values = area.values.map((row) => row.map((value) => (value === "" ? null : value)));
    return { ...area, values, isText: csv !== undefined, ...(sheet.hidden ? { isHidden: true } : {}) };
  }

  async isOwnSheet(sheet: string): Promise<boolean> {
    if (this.there) return this.there.isOwnSheet(sheet);
    return (await this.rows).names.some(
      (name) => name.name === OWN_SHEET_NAME && name.sheet?.toLowerCase() === sheet.toLowerCase(),
    );
  }

  async readFlag(key: string): Promise<string | undefined> {
    return this.there ? this.there.readFlag(key) : (await this.rows).flags.get(key);
  }

  async readFlags(prefix: string): Promise<ReadonlyMap<string, string>> {
    if (this.there) return this.there.readFlags(prefix);
    return new Map([...(await this.rows).flags].filter(([key]) => key.startsWith(prefix)));
  }

  async writeFlag(key: string, value: string | undefined): Promise<void> {
    return (await this.coming).writeFlag(key, value);
  }

  async writeOwnSheet(content: OwnSheet): Promise<OwnSheetWritten> {
    return (await this.coming).writeOwnSheet(content);
  }

  async cellExtras(sheet: string): Promise<readonly CellExtras[]> {
    return (await this.coming).cellExtras(sheet);
  }

  async deleteOwnSheet(sheet: string): Promise<void> {
    return (await this.coming).deleteOwnSheet(sheet);
  }

  async writeCells(sheet: string, cells: readonly CellWrite[]): Promise<void> {
    return (await this.coming).writeCells(sheet, cells);
  }

  async selectCell(sheet: string, row: number, column: number): Promise<void> {
    return (await this.coming).selectCell(sheet, row, column);
  }

  async selectedCell(): Promise<{ sheet: string; row: number; column: number } | undefined> {
    return (await this.coming).selectedCell();
  }

  async markCells(marks: readonly CellMark[]): Promise<void> {
    return (await this.coming).markCells(marks);
  }

  async tables(): Promise<readonly TablePlace[]> {
    return (await this.coming).tables();
  }

  async areaOfName(name: string): Promise<{ sheet: string; area: CellArea } | undefined> {
    return (await this.coming).areaOfName(name);
  }

  async filledFrom(sheet: string, row: number, column: number): Promise<CellArea | undefined> {
    return (await this.coming).filledFrom(sheet, row, column);
  }

  async watchCells(onChange: (change: CellChange) => void): Promise<Stop> {
    return this.watch((workbook) => workbook.watchCells(onChange));
  }

  async watchSheets(onChange: () => void): Promise<Stop> {
    return this.watch((workbook) => workbook.watchSheets(onChange));
  }

  async watchSelection(onSelect: () => void): Promise<Stop> {
    return this.watch((workbook) => workbook.watchSelection(onSelect));
  }

  /** Nothing changes before the grid is there, so that whoever watches need not wait for it. */
  private watch(begin: (workbook: DeskWorkbook) => Promise<Stop>): Stop {
    let isWanted = true;
    const begun = this.coming.then((workbook) => (isWanted ? begin(workbook) : undefined));
    return async () => {
      isWanted = false;
      if (this.there) await (await begun)?.();
    };
  }
}
