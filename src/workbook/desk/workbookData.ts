import {
  LocaleType,
  WrapStrategy,
  type ICellData,
  type IColumnData,
  type IRowData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
} from "@univerjs/core";
import type { SheetMarks } from "../../survey/reading/sheetArea";
import type { SheetRow } from "../file/sheetRows";
import type { DefinedName, OutlineTable } from "../file/workbookOutline";
import { cellDataOf } from "./cellData";
import { flag } from "./cellStyles";
import { OWN_SHEET_NAME } from "../ownSheet";
import { WorkbookProblem } from "../surveyWorkbook";
import type { LoadedWorkbook } from "./loadWorkbook";
import { OWN, SAID, PIXELS_A_CHARACTER, type Matrix } from "./ownSheetData";
import { Pace } from "./pace";
import { PAGE_LIMITS, type LoadedSheet } from "./readContent";
import { PLAIN_TABLE } from "./plainTable";
import { wrappedHeight } from "./wrappedHeight";
import { areaOf, styleAt, type Area, type SheetLook } from "./sheetLook";

/** Rows and columns kept free below and beside what a sheet holds. */
const SPARE_ROWS = 200;
const SPARE_COLUMNS = 10;
const LEAST_ROWS = 200;
const LEAST_COLUMNS = 26;

const PIXELS_A_POINT = 4 / 3;

/** Characters of the widest column and points of the highest row that a spreadsheet makes. */
const WIDEST = 255;
const HIGHEST = 409.5;

/** A name for a whole workbook, in the engine's words. */
const WHOLE_WORKBOOK = "AllDefaultWorkbook";

let opened = 0;

/**
 * A loaded file in the form that the engine opens.
 *
 * @throws WorkbookProblem "tooManyForPage" where the areas that are merged or filled by one formula each cover more
 * cells than the page holds, as only areas over one another do.
 */
export async function workbookData(
  loaded: LoadedWorkbook,
  pace = new Pace(undefined),
): Promise<Partial<IWorkbookData>> {
  const named = loaded.sheets.map((sheet, index) => [`sheet-${index + 1}`, sheet] as const);
  const idOf = new Map(named.map(([id, { name }]) => [name.toLowerCase(), id]));
  const sheets: Record<string, Partial<IWorksheetData>> = {};
  const own = new Set(loaded.names.filter(({ name }) => name === OWN_SHEET_NAME).map(({ sheet }) => sheet));
  for (const [id, sheet] of named)
    sheets[id] = {
      ...(await worksheetData(id, loaded.file, sheet, loaded.styles, pace)),
      ...(own.has(sheet.name) ? { custom: { [OWN]: "own" } } : {}),
    };
  return {
    id: `workbook-${++opened}`,
    name: loaded.file,
    locale: LocaleType.EN_US,
    styles: Object.fromEntries(loaded.styles.map((style, index) => [`style-${index}`, style])),
    sheetOrder: named.map(([id]) => id),
    sheets,
    resources: [
      { name: "SHEET_TABLE_PLUGIN", data: JSON.stringify(tables(named)) },
      { name: "SHEET_DEFINED_NAME_PLUGIN", data: JSON.stringify(definedNames(loaded.names, idOf)) },
    ],
  };
}

async function worksheetData(
  id: string,
  file: string,
  sheet: LoadedSheet,
  styles: readonly IStyleData[],
  pace: Pace,
): Promise<Partial<IWorksheetData>> {
  const { name, rows, look, hidden, end } = sheet;
  const { marks } = end;
  const cellData: Matrix = {};
  const said = new Map(
    marks?.marked.flatMap(({ row, column, note }) => (note ? [[`${row} ${column}`, note] as const] : [])),
  );
  const wrapped = new Map<number, number>();
  let width = 0;
  for (const row of rows) {
    await pace.breathe();
    const data: Record<number, ICellData> = {};
    row.values.forEach((value, column) => {
      const formula = row.formulas?.get(column);
      const style = styleAt(look, row.number - 1, column);
      const isStyled = style > 0 && style < styles.length;
      if (value === null && formula === undefined && !isStyled) return;
      const note = said.get(`${row.number} ${column + 1}`);
      data[column] = {
        ...storedCell(value, formula),
        ...(isStyled ? { s: `style-${style}` } : {}),
        ...(note === undefined ? {} : { custom: { [SAID]: note } }),
      };
    });
    const height = look && wrappedHeight(wrappingCells(row, look, styles));
    if (height !== undefined) wrapped.set(row.number - 1, height);
    width = Math.max(width, row.values.length);
    cellData[row.number - 1] = data;
  }
  const lastRow = rows[rows.length - 1]?.number ?? 0;
  const rowCount = Math.max(LEAST_ROWS, lastRow + SPARE_ROWS);
  const columnCount = Math.max(LEAST_COLUMNS, width + SPARE_COLUMNS);
  const onGrid = (areas: readonly Area[]) => areasWithin(areas, rowCount, columnCount, file);
  for (const area of onGrid(look?.filledByFormula ?? [])) emptyButFirst(cellData, area);
  return {
    id,
    name,
    hidden: flag(hidden),
    cellData,
    rowCount,
    columnCount,
    ...(look ? { ...lookData(look, wrapped, marks), mergeData: onGrid(look.merged) } : {}),
  };
}

function storedCell(value: Parameters<typeof cellDataOf>[0], formula: string | undefined): ICellData {
  const { v, t, f } = cellDataOf(value);
  return formula === undefined ? { v, t, ...(f ? { f } : {}) } : { v, t, f: formula };
}

/** Areas as far as they lie on the grid. */
function areasWithin(areas: readonly Area[], rows: number, columns: number, file: string): Area[] {
  let cells = 0;
  return areas.flatMap(({ startRow, startColumn, endRow, endColumn }) => {
    const area = {
      startRow,
      startColumn,
      endRow: Math.min(endRow, rows - 1),
      endColumn: Math.min(endColumn, columns - 1),
    };
    const covered = (area.endRow - startRow + 1) * (area.endColumn - startColumn + 1);
    if (!(startRow >= 0 && startColumn >= 0 && area.endRow >= startRow && area.endColumn >= startColumn))
      return [];
    cells += covered;
    const most = PAGE_LIMITS.cells;
    if (cells > most) throw new WorkbookProblem("tooManyForPage", { file, most });
    return [area];
  });
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
    styles[styleAt(look, number - 1, column)]?.tb === WrapStrategy.WRAP
      ? [{ text, width: look.widths.get(column) }]
      : [],
  );
}

function lookData(
  look: SheetLook,
  wrapped: ReadonlyMap<number, number>,
  { hiddenRows = [], hiddenColumns = [] }: Partial<SheetMarks> = {},
): Partial<IWorksheetData> {
  const columnData: Record<number, Partial<IColumnData>> = Object.fromEntries(
    [...look.widths].map(([column, width]) => [
      column,
      { w: Math.round(Math.min(width, WIDEST) * PIXELS_A_CHARACTER) + 5 },
    ]),
  );
  const rowData: Record<number, Partial<IRowData>> = Object.fromEntries([
    ...[...wrapped].map(([row, height]) => [row, { h: height }] as const),
    ...[...look.heights].map(
      ([row, height]) =>
        [row, { h: Math.round(Math.min(height, HIGHEST) * PIXELS_A_POINT), ia: flag(false) }] as const,
    ),
  ]);
  for (const column of hiddenColumns) columnData[column - 1] = { ...columnData[column - 1], hd: flag(true) };
  for (const row of hiddenRows) rowData[row - 1] = { ...rowData[row - 1], hd: flag(true) };
  return {
    columnData,
    rowData,
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
