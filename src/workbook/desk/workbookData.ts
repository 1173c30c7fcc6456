import { LocaleType, type ICellData, type IWorkbookData, type IWorksheetData } from "@univerjs/core";
import type { CellValue } from "../../survey/cell";
import { cellDataOf } from "./cellData";
import type { Matrix } from "./ownSheetData";

/** A cell as a file gives it: its value, or a formula with the value that was stored beside it. */
export type LoadedCell = CellValue | { readonly formula: string; readonly value: CellValue };

/** A sheet as it is put into the engine, from A1 on. */
export interface LoadedSheet {
  readonly name: string;
  readonly cells: readonly (readonly LoadedCell[])[];
}

/** Rows and columns kept free below and beside what a sheet holds. */
const SPARE_ROWS = 200;
const SPARE_COLUMNS = 10;
const LEAST_ROWS = 200;
const LEAST_COLUMNS = 26;

/** A workbook in the form that the engine opens. */
export function workbookData(name: string, sheets: readonly LoadedSheet[]): Partial<IWorkbookData> {
  const named = sheets.map((sheet, index) => [`sheet-${index + 1}`, sheet] as const);
  return {
    id: `workbook-${Date.now()}`,
    name,
    locale: LocaleType.EN_US,
    sheetOrder: named.map(([id]) => id),
    sheets: Object.fromEntries(named.map(([id, sheet]) => [id, worksheetData(id, sheet)])),
  };
}

function worksheetData(id: string, { name, cells }: LoadedSheet): Partial<IWorksheetData> {
  const width = cells.reduce((widest, row) => Math.max(widest, row.length), 0);
  const cellData: Matrix = {};
  cells.forEach((row, r) => {
    const data: Record<number, ICellData> = {};
    row.forEach((cell, c) => {
      if (cell !== null) data[c] = loadedCellData(cell);
    });
    cellData[r] = data;
  });
  return {
    id,
    name,
    cellData,
    rowCount: Math.max(LEAST_ROWS, cells.length + SPARE_ROWS),
    columnCount: Math.max(LEAST_COLUMNS, width + SPARE_COLUMNS),
  };
}

function loadedCellData(cell: LoadedCell): ICellData {
  if (typeof cell !== "object" || cell === null || !("formula" in cell)) return cellDataOf(cell);
  const { f: _none, ...stored } = cellDataOf(cell.value);
  return { ...stored, f: cell.formula };
}
