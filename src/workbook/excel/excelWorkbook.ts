import type { SheetArea } from "../../survey/reading/sheetArea";
import { areasOfAddress, type CellArea } from "../address";
import { FLAG_PREFIX } from "../flagPrefix";
import { OWN_SHEET_NAME } from "../ownSheet";
import {
  WorkbookProblem,
  type CellChange,
  type CellExtras,
  type CellMark,
  type CellWrite,
  type OwnSheet,
  type OwnSheetWritten,
  type PivotWanted,
  type ReadOptions,
  type SurveyWorkbook,
  type TablePlace,
} from "../surveyWorkbook";
import { changeInExcel, inExcel, type ExcelRun } from "./excelRun";
import { mayAddSheets } from "./mayAddSheets";
import { WORKING_SHEET_NAME } from "./workingSheet";
import { PageWatch } from "./pageWatch";

const lookingUp = () => import(/* webpackChunkName: "looking-up" */ "./lookUpInExcel");
const writing = () => import(/* webpackChunkName: "writing" */ "./excelWriting");

/** What this copy of Excel can do: Office.context.requirements, or a stand-in. */
export type SupportsSet = (set: string, version: string) => boolean;

/** How often Excel is asked for the name of a changed sheet, and how long after a refusal the first time. */
const LOOKS_FOR_A_NAME = 5;
const FIRST_PAUSE_MS = 100;

/** The open workbook in Excel, through Office.js. */
export class ExcelWorkbook implements SurveyWorkbook {
  readonly host = "excel";

  constructor(
    private readonly run: ExcelRun = (batch, options) => Excel.run({ ...options }, batch),
    private readonly supports: SupportsSet = (set, version) =>
      Office.context.requirements.isSetSupported(set, version),
  ) {}

  sheetNames(): Promise<string[]> {
    return inExcel(this.run, "", async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load("items/name");
      await context.sync();
      return worksheets.items.map((worksheet) => worksheet.name);
    });
  }

  hiddenSheets(): Promise<string[]> {
    return inExcel(this.run, "", async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load("items/name,items/visibility");
      await context.sync();
      return worksheets.items.flatMap(({ name, visibility }) => (visibility === "Visible" ? [] : [name]));
    });
  }

  async readSheet(sheet: string, options: ReadOptions = {}): Promise<SheetArea> {
    const { readExcelSheet } = await import(/* webpackChunkName: "reading" */ "./readExcelSheet");
    return inExcel(this.run, sheet, (context) => readExcelSheet(context, sheet, options, !this.hidesNotes));
  }

  async writeOwnSheet(content: OwnSheet): Promise<OwnSheetWritten> {
    const { writeOwnExcelSheet } = await writing();
    return changeInExcel(this.run, content.sheet, false, (context) =>
      writeOwnExcelSheet(context, content, !this.hidesNotes),
    );
  }

  async cellExtras(sheet: string): Promise<readonly CellExtras[]> {
    const { excelCellExtras } = await writing();
    return inExcel(this.run, sheet, (context) => excelCellExtras(context, sheet, !this.hidesNotes));
  }

  /** https://learn.microsoft.com/javascript/api/excel/excel.notecollection: ExcelApi 1.18 */
  get hidesNotes(): boolean {
    return !this.supports("ExcelApi", "1.18");
  }

  isOwnSheet(sheet: string): Promise<boolean> {
    return inExcel(this.run, sheet, async (context) => {
      const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet);
      const own = worksheet.names.getItemOrNullObject(OWN_SHEET_NAME);
      own.load("name");
      const working = worksheet.names.getItemOrNullObject(WORKING_SHEET_NAME);
      working.load("name");
      await context.sync();
      return !own.isNullObject || !working.isNullObject;
    });
  }

  deleteOwnSheet(sheet: string): Promise<void> {
    return inExcel(this.run, sheet, async (context) => {
      const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet);
      worksheet.load("name");
      const own = worksheet.names.getItemOrNullObject(OWN_SHEET_NAME);
      own.load("name");
      await context.sync();
      if (worksheet.isNullObject) throw new WorkbookProblem("noSheet", { sheet });
      if (own.isNullObject) throw new WorkbookProblem("notOurs", { sheet: worksheet.name });
      await mayAddSheets(context);
      worksheet.delete();
      await context.sync();
    });
  }

  async writeCells(sheet: string, cells: readonly CellWrite[]): Promise<void> {
    const { writeExcelCells } = await writing();
    return changeInExcel(this.run, sheet, this.mergesUndo, (context) =>
      writeExcelCells(context, sheet, cells),
    );
  }

  selectCell(sheet: string, row: number, column: number): Promise<void> {
    return inExcel(this.run, sheet, async (context) => {
      const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet);
      worksheet.load("name,visibility");
      await context.sync();
      if (worksheet.isNullObject) throw new WorkbookProblem("noSheet", { sheet });
      if (worksheet.visibility !== "Visible")
        throw new WorkbookProblem("hiddenSheet", { sheet: worksheet.name });
      worksheet.activate();
      worksheet.getRangeByIndexes(row - 1, column - 1, 1, 1).select();
      await context.sync();
    });
  }

  selectedCell(): Promise<{ sheet: string; row: number; column: number } | undefined> {
    return inExcel(this.run, "", async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("rowIndex,columnIndex,worksheet/name");
      await context.sync();
      return { sheet: cell.worksheet.name, row: cell.rowIndex + 1, column: cell.columnIndex + 1 };
    });
  }

  async markCells(marks: readonly CellMark[]): Promise<void> {
    const { markExcelCells } = await writing();
    return changeInExcel(this.run, marks[0]?.sheet ?? "", this.mergesUndo, (context) =>
      markExcelCells(context, marks),
    );
  }

  readFlag(key: string): Promise<string | undefined> {
    return inExcel(this.run, "", async (context) => {
      const setting = context.workbook.settings.getItemOrNullObject(FLAG_PREFIX + key);
      setting.load("value");
      await context.sync();
      return setting.isNullObject ? undefined : String(setting.value);
    });
  }

  writeFlag(key: string, value: string | undefined): Promise<void> {
    return inExcel(this.run, "", async (context) => {
      const { settings } = context.workbook;
      if (value !== undefined) settings.add(FLAG_PREFIX + key, value);
      else {
        const setting = settings.getItemOrNullObject(FLAG_PREFIX + key);
        setting.load("key");
        await context.sync();
        if (!setting.isNullObject) setting.delete();
      }
      await context.sync();
    });
  }

  readFlags(prefix: string): Promise<ReadonlyMap<string, string>> {
    return inExcel(this.run, "", async (context) => {
      const { settings } = context.workbook;
      settings.load("items/key,items/value");
      await context.sync();
      return new Map(
        settings.items
          .filter(({ key }) => key.startsWith(FLAG_PREFIX + prefix))
          .map(({ key, value }) => [key.slice(FLAG_PREFIX.length), String(value)]),
      );
    });
  }

  async writePivot(pivot: PivotWanted): Promise<"made" | "refreshed"> {
    const { writeExcelPivot } = await writing();
    return changeInExcel(this.run, pivot.sheet, false, (context) => writeExcelPivot(context, pivot));
  }

  private readonly cellWatch = new PageWatch<CellChange>(() =>
    this.registered(({ worksheets }) =>
      worksheets.onChanged.add((event) => this.cellWatch.tell(() => this.changesOf(event))),
    ),
  );
  private readonly selectionWatch = new PageWatch<undefined>(() =>
    this.registered(({ worksheets }) =>
      worksheets.onSelectionChanged.add(() => this.selectionWatch.tell(() => [undefined])),
    ),
  );

  watchCells(onChange: (change: CellChange) => void): Promise<() => Promise<void>> {
    return this.cellWatch.watch(onChange);
  }

  watchSelection(onSelect: () => void): Promise<() => Promise<void>> {
    return this.selectionWatch.watch(onSelect);
  }

  private registered(add: (workbook: Excel.Workbook) => void): Promise<void> {
    return inExcel(this.run, "", async (context) => {
      add(context.workbook);
      await context.sync();
    });
  }

  async tables(): Promise<TablePlace[]> {
    const { tablesOfExcel } = await lookingUp();
    return inExcel(this.run, "", tablesOfExcel);
  }

  async areaOfName(name: string) {
    const { areaOfExcelName } = await lookingUp();
    return inExcel(this.run, "", (context) => areaOfExcelName(context, name));
  }

  async filledFrom(sheet: string, row: number, column: number): Promise<CellArea | undefined> {
    const { filledInExcel } = await lookingUp();
    return inExcel(this.run, sheet, (context) => filledInExcel(context, sheet, row, column));
  }

  /** A deleted sheet, or cells that Excel does not name, give no change. */
  private async changesOf(event: Excel.WorksheetChangedEventArgs): Promise<CellChange[]> {
    const sheet = await this.nameOf(event.worksheetId);
    if (sheet === undefined) return [];
    return areasOfAddress(event.address).map((area) => ({
      sheet,
      firstRow: area.firstRow,
      firstColumn: area.firstColumn,
      rowCount: area.lastRow - area.firstRow + 1,
      columnCount: area.lastColumn - area.firstColumn + 1,
      by: event.source === "Remote" ? "colleague" : "own",
      ...(event.changeType === "RangeEdited" ? {} : { shifts: true as const }),
    }));
  }

  /** Asked again after a refusal, so that no changed row is lost; undefined for a sheet that is gone. */
  private async nameOf(id: string): Promise<string | undefined> {
    for (let look = 1; ; look++) {
      try {
        return await inExcel(this.run, "", async (context) => {
          const worksheet = context.workbook.worksheets.getItemOrNullObject(id);
          worksheet.load("name");
          // eslint-disable-next-line office-addins/no-context-sync-in-loop -- again only after a refusal
          await context.sync();
          return worksheet.isNullObject ? undefined : worksheet.name;
        });
      } catch (error) {
        if (look === LOOKS_FOR_A_NAME) throw error;
        await new Promise((resolve) => setTimeout(resolve, FIRST_PAUSE_MS * 2 ** (look - 1)));
      }
    }
  }

  /** https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-undo-capabilities: UndoNotSupported elsewhere. */
  private get mergesUndo(): boolean {
    return this.supports("ExcelApi", "1.20");
  }
}
