import type { CellValue } from "../sheets/cell";
import { findTable, HEADER_SEARCH_ROWS } from "./findTable";
import { GrowingTable } from "./growingTable";
import { readRows, readSeason, type ReadingOptions, type TableRows } from "./readSeason";
import { makeSeason } from "../season/makeSeason";
import type { SheetArea } from "./sheetArea";
import type { Season, SurveyTable } from "../season/season";

/** A row of a sheet as a file gives it, cells from column A on. */
export interface StreamedRow {
  readonly number: number;
  readonly values: readonly CellValue[];
  readonly formulas: ReadonlyMap<number, string> | undefined;
}

/** A sheet whose rows come in batches, any number of times. */
export interface StreamedSheet {
  readonly sheet: string;
  rows(): AsyncIterable<readonly StreamedRow[]>;
}

export interface LargeReadingOptions extends ReadingOptions {
  /** Rows that are read at a time; 1,024 when left out. */
  readonly pieceRows?: number;
}

/**
 * Reads a survey of any size without holding its sheets: the same survey as readSeason's, row by row, in a fraction of
 * the memory.
 *
 * @param onRows told how many rows have been read
 */
export async function readLargeSeason(
  sheets: readonly StreamedSheet[],
  options: LargeReadingOptions = {},
  onRows: (rows: number) => void = () => undefined,
): Promise<Season> {
  const heads: SheetArea[] = [];
  for (const sheet of sheets) heads.push(await headOf(sheet, options));
  const known = readSeason(heads, options);
  const tables: SurveyTable[] = [];
  let rows = 0;
  for (const [index, sheet] of sheets.entries()) {
    const table = known.allTables.find((candidate) => candidate.sheet === sheet.sheet);
    if (!table) continue;
    if (table.shape.id === "settings") tables.push(table);
    else {
      const headers = heads[index].values[table.headerRow - heads[index].firstRow];
      const read = pieceReader(sheet.sheet, headers, known, options);
      const told = (count: number) => onRows((rows += count));
      tables.push(await wholeTable(sheet, table, headers, read, options.pieceRows ?? PIECE_ROWS, told));
    }
  }
  const settingsFirst = (table: SurveyTable) => (table.shape.id === "settings" ? 0 : 1);
  const allTables = [...tables].sort((a, b) => settingsFirst(a) - settingsFirst(b));
  return makeSeason({ ...known, allTables });
}

const HEAD_ROWS = HEADER_SEARCH_ROWS + 30;

/** The top of a sheet; all of it for Settings, whose figures are needed before anything else is read. */
async function headOf(sheet: StreamedSheet, options: ReadingOptions): Promise<SheetArea> {
  const mapping = options.mapping?.find((own) => own.sheet === sheet.sheet);
  const rows: StreamedRow[] = [];
  let isSettings: boolean | undefined;
  for await (const batch of sheet.rows())
    for (const row of batch) {
      if (row.number - (rows[0] ?? row).number >= HEAD_ROWS) {
        isSettings ??= findTable(areaOf(sheet.sheet, rows), mapping)?.shape.id === "settings";
        if (!isSettings) return areaOf(sheet.sheet, rows);
      }
      rows.push(row);
    }
  return areaOf(sheet.sheet, rows);
}

/**
 * Rows as an area that begins with the first of them; blank rows in between are kept. Each row ends with its own last
 * cell, so that a stray cell far to the right costs nothing in the others.
 */
function areaOf(sheet: string, rows: readonly StreamedRow[]): SheetArea {
  const firstRow = rows[0]?.number ?? 1;
  const values: (readonly CellValue[])[] = [];
  const formulas = new Map<number, ReadonlyMap<number, string>>();
  for (const row of rows) {
    while (values.length < row.number - firstRow) values.push(BLANK_ROW);
    if (row.formulas) formulas.set(values.length, row.formulas);
    values.push(row.values);
  }
  return {
    sheet,
    firstRow,
    firstColumn: 1,
    values,
    formulaAt: (row, column) => formulas.get(row)?.get(column) ?? null,
  };
}

const BLANK_ROW: readonly CellValue[] = [];

const PIECE_ROWS = 1024;

/** The rows below the headers in pieces. */
async function* piecesOf(
  sheet: StreamedSheet,
  headerRow: number,
  rows: number,
): AsyncGenerator<StreamedRow[]> {
  let piece: StreamedRow[] = [];
  for await (const batch of sheet.rows())
    for (const row of batch) {
      if (row.number <= headerRow) continue;
      piece.push(row);
      if (piece.length < rows) continue;
      yield piece;
      piece = [];
    }
  if (piece.length > 0) yield piece;
}

/** Reads rows of a sheet, the first of which are its headers. */
type PieceReader = (values: (readonly CellValue[])[], formulaAt: SheetArea["formulaAt"]) => TableRows;

function pieceReader(
  sheet: string,
  headers: readonly CellValue[],
  { unitSystem, words }: Season,
  { mapping }: ReadingOptions,
): PieceReader {
  const area = { sheet, firstRow: 0, firstColumn: 1 };
  const place = findTable(
    { ...area, values: [headers], formulaAt: () => null },
    mapping?.find((own) => own.sheet === sheet),
  )!;
  return (values, formulaAt) => readRows({ ...area, values, formulaAt }, place, unitSystem, words);
}

/**
 * A sheet's whole table, piece by piece. Each piece is read under the table's own headers and behind the last row of the
 * piece before, so that a remark or a total is told from counts at a seam as anywhere else.
 */
async function wholeTable(
  sheet: StreamedSheet,
  table: SurveyTable,
  headers: readonly CellValue[],
  read: PieceReader,
  pieceRows: number,
  onRows: (rows: number) => void,
): Promise<SurveyTable> {
  const growing = new GrowingTable(table);
  let last: readonly CellValue[] | undefined;
  let lastNumber = table.headerRow;
  for await (const rows of piecesOf(sheet, table.headerRow, pieceRows)) {
    const numbers: number[] = [table.headerRow];
    const values: (readonly CellValue[])[] = [headers];
    const formulas = new Map<number, ReadonlyMap<number, string>>();
    if (last) {
      values.push(last);
      numbers.push(lastNumber);
    }
    for (const row of rows) {
      if (row.number > lastNumber + 1) {
        values.push(BLANK_ROW);
        numbers.push(row.number - 1);
      }
      if (row.formulas) formulas.set(values.length, row.formulas);
      values.push(row.values);
      numbers.push(row.number);
      lastNumber = row.number;
    }
    const piece = read(values, (row, column) => formulas.get(row)?.get(column) ?? null);
    const from = last ? 1 : 0;
    growing.add(
      { ...piece, totals: piece.totals.map((total) => ({ ...total, sheetRow: numbers[total.sheetRow] })) },
      from,
      (index) => numbers[piece.sheetRow(index)],
      (index) => formulas.has(piece.sheetRow(index)),
    );
    if (piece.rowCount > from) last = values[piece.sheetRow(piece.rowCount - 1)];
    onRows(rows.length);
  }
  return growing.table();
}
