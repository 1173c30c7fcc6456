import type { SheetArea } from "../../survey/reading/sheetArea";
import { areasOfAddress } from "../address";
import { FLAG_PREFIX } from "../flagPrefix";
import { OWN_SHEET_NAME } from "../ownSheet";
import {
  WorkbookProblem,
  type CellChange,
  type CellMark,
  type CellWrite,
  type OwnSheet,
  type OwnSheetWritten,
  type PivotWanted,
  type ReadOptions,
  type SurveyWorkbook,
} from "../surveyWorkbook";
import { inExcel, type ExcelRun } from "./excelRun";
import { markExcelCells } from "./markExcelCells";
import { mayAddSheets } from "./mayAddSheets";
import { readExcelSheet } from "./readExcelSheet";
import { WORKING_SHEET_NAME } from "./workingSheet";
import { writeExcelPivot } from "./writeExcelPivot";
import { writeExcelCells } from "./writeExcelCells";
import { writeOwnExcelSheet } from "./writeOwnExcelSheet";

/** What this copy of Excel can do: Office.context.requirements, or a stand-in. */
export type SupportsSet = (set: string, version: string) => boolean;

/** The open workbook in Excel, through Office.js. */
export class ExcelWorkbook implements SurveyWorkbook {
  readonly host = "excel";

  constructor(
    private readonly run: ExcelRun = (batch) => Excel.run(batch),
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

  readSheet(sheet: string, options: ReadOptions = {}): Promise<SheetArea> {
    return inExcel(this.run, sheet, (context) => readExcelSheet(context, sheet, options));
  }

  writeOwnSheet(content: OwnSheet): Promise<OwnSheetWritten> {
    const mayResizeTables = this.supports("ExcelApi", "1.13");
    return inExcel(this.run, content.sheet, (context) =>
      writeOwnExcelSheet(context, content, mayResizeTables),
    );
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

  writeCells(sheet: string, cells: readonly CellWrite[]): Promise<void> {
    return inExcel(this.run, sheet, (context) => writeExcelCells(context, sheet, cells));
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

  markCells(marks: readonly CellMark[]): Promise<void> {
    return inExcel(this.run, marks[0]?.sheet ?? "", (context) => markExcelCells(context, marks));
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

  writePivot(pivot: PivotWanted): Promise<"made" | "refreshed"> {
    return inExcel(this.run, pivot.sheet, (context) => writeExcelPivot(context, pivot));
  }

  async watchCells(onChange: (change: CellChange) => void): Promise<() => Promise<void>> {
    let watching = true;
    const watch = await inExcel(this.run, "", async (context) => {
      const result = context.workbook.worksheets.onChanged.add(async (event) => {
        for (const change of await this.changesOf(event)) if (watching) onChange(change);
      });
      await context.sync();
      return result;
    });
    return async () => {
      watching = false;
      watch.remove();
      await watch.context.sync();
    };
  }

  /** A deleted sheet, or cells that Excel does not name, give no change. */
  private async changesOf(event: Excel.WorksheetChangedEventArgs): Promise<CellChange[]> {
    const sheet = await inExcel(this.run, "", async (context) => {
      const worksheet = context.workbook.worksheets.getItemOrNullObject(event.worksheetId);
      worksheet.load("name");
      await context.sync();
      return worksheet.isNullObject ? undefined : worksheet.name;
    });
    if (sheet === undefined) return [];
    return areasOfAddress(event.address).map((area) => ({
      sheet,
      firstRow: area.firstRow,
      firstColumn: area.firstColumn,
      rowCount: area.lastRow - area.firstRow + 1,
      columnCount: area.lastColumn - area.firstColumn + 1,
      by: event.source === "Remote" ? "colleague" : "own",
    }));
  }
}
