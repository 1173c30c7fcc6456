import {
  LocaleType,
  WrapStrategy,
  type ICellData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
} from "@univerjs/core";
import type { SheetRow } from "../file/sheetRows";
import type { DefinedName, OutlineTable } from "../file/workbookOutline";
import { cellDataOf } from "./cellData";
import type { LoadedSheet, LoadedWorkbook } from "./loadWorkbook";
import { PIXELS_A_CHARACTER, type Matrix } from "./ownSheetData";
import { PLAIN_TABLE } from "./plainTable";
import { wrappedHeight } from "./wrappedHeight";
import { areaOf, flag, type Area, type SheetLook } from "./sheetLook";

/** Rows and columns kept free below and beside what a sheet holds. */
const SPARE_ROWS = 200;
const SPARE_COLUMNS = 10;
const LEAST_ROWS = 200;
const LEAST_COLUMNS = 26;

const PIXELS_A_POINT = 4 / 3;

/** A name for a whole workbook, in the engine's words. */
const WHOLE_WORKBOOK = "AllDefaultWorkbook";

let opened = 0;

/** A loaded file in the form that the engine opens. */
export function workbookData(loaded: LoadedWorkbook): Partial<IWorkbookData> {
  const named = loaded.sheets.map((sheet, index) => [`sheet-${index + 1}`, sheet] as const);
  const idOf = new Map(named.map(([id, { name }]) => [name.toLowerCase(), id]));
  return {
    id: `workbook-${++opened}`,
    name: loaded.file,
    locale: LocaleType.EN_US,
    styles: Object.fromEntries(loaded.styles.map((style, index) => [`style-${index}`, style])),
    sheetOrder: named.map(([id]) => id),
    sheets: Object.fromEntries(named.map(([id, sheet]) => [id, worksheetData(id, sheet, loaded.styles)])),
    resources: [
      { name: "SHEET_TABLE_PLUGIN", data: JSON.stringify(tables(named)) },
      { name: "SHEET_DEFINED_NAME_PLUGIN", data: JSON.stringify(definedNames(loaded.names, idOf)) },
    ],
  };
}

function worksheetData(
  id: string,
  sheet: LoadedSheet,
  styles: readonly IStyleData[],
): Partial<IWorksheetData> {
  const { name, rows, look, hidden } = sheet;
  const cellData: Matrix = {};
  const wrapped = new Map<number, number>();
  let width = 0;
  for (const row of rows) {
    const data: Record<number, ICellData> = {};
    row.values.forEach((value, column) => {
      const formula = row.formulas?.get(column);
      const style = look?.styleAt(row.number - 1, column) ?? 0;
      const isStyled = style > 0 && style < styles.length;
      if (value === null && formula === undefined && !isStyled) return;
      data[column] = { ...storedCell(value, formula), ...(isStyled ? { s: `style-${style}` } : {}) };
    });
    const height = look && wrappedHeight(wrappingCells(row, look, styles));
    if (height !== undefined) wrapped.set(row.number - 1, height);
    width = Math.max(width, row.values.length);
    cellData[row.number - 1] = data;
  }
  for (const area of look?.filledByFormula ?? []) emptyButFirst(cellData, area);
  const lastRow = rows[rows.length - 1]?.number ?? 0;
  return {
    id,
    name,
    hidden: flag(hidden),
    cellData,
    rowCount: Math.max(LEAST_ROWS, lastRow + SPARE_ROWS),
    columnCount: Math.max(LEAST_COLUMNS, width + SPARE_COLUMNS),
    ...(look ? lookData(look, wrapped) : {}),
  };
}

function storedCell(value: Parameters<typeof cellDataOf>[0], formula: string | undefined): ICellData {
  const { v, t, f } = cellDataOf(value);
  return formula === undefined ? { v, t, ...(f ? { f } : {}) } : { v, t, f: formula };
}

/** What a formula spilled when the file was saved stands in its cells as plain values and would be in its own way. */
function emptyButFirst(cells: Matrix, { startRow, startColumn, endRow, endColumn }: Area): void {
  for (let row = startRow; row <= endRow; row++)
    for (let column = startColumn; column <= endColumn; column++) {
      const cell = cells[row]?.[column];
      if (cell && (row !== startRow || column !== startColumn)) cells[row][column] = { s: cell.s };
    }
}

function wrappingCells({ number, values }: SheetRow, look: SheetLook, styles: readonly IStyleData[]) {
  return values.flatMap((text, column) =>
    styles[look.styleAt(number - 1, column)]?.tb === WrapStrategy.WRAP
      ? [{ text, width: look.widths.get(column) }]
      : [],
  );
}

function lookData(look: SheetLook, wrapped: ReadonlyMap<number, number>): Partial<IWorksheetData> {
  return {
    columnData: Object.fromEntries(
      [...look.widths].map(([column, width]) => [column, { w: Math.round(width * PIXELS_A_CHARACTER) + 5 }]),
    ),
    rowData: Object.fromEntries([
      ...[...wrapped].map(([row, height]) => [row, { h: height }] as const),
      ...[...look.heights].map(
        ([row, height]) => [row, { h: Math.round(height * PIXELS_A_POINT), ia: flag(false) }] as const,
      ),
    ]),
    mergeData: look.merged.map((area) => ({ ...area })),
    freeze: {
      xSplit: look.frozenColumns,
      ySplit: look.frozenRows,
      startRow: look.frozenRows || -1,
      startColumn: look.frozenColumns || -1,
    },
  };
}

function tables(named: readonly (readonly [string, LoadedSheet])[]) {
  return Object.fromEntries(
    named
      .filter(([, sheet]) => sheet.tables.length > 0)
      .map(([id, sheet]) => [id, { tables: sheet.tables.map((table) => tableData(id, table)) }]),
  );
}

function tableData(sheetId: string, { name, ref }: OutlineTable) {
  return {
    id: `${sheetId}-${name}`,
    name,
    range: areaOf(ref),
    options: { tableStyleId: PLAIN_TABLE.name, showHeader: true, showFooter: false },
    filters: { tableColumnFilterList: [] },
    columns: [],
    meta: {},
  };
}

function definedNames(names: readonly DefinedName[], idOf: ReadonlyMap<string, string>) {
  return Object.fromEntries(
    names
      .filter(({ name }) => !name.startsWith("_xlnm."))
      .map(({ name, formula, sheet, hidden }, index) => [
        `name-${index}`,
        {
          id: `name-${index}`,
          name,
          formulaOrRefString: formula,
          localSheetId: (sheet && idOf.get(sheet.toLowerCase())) ?? WHOLE_WORKBOOK,
          hidden,
        },
      ]),
  );
}
