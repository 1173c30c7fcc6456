import { isCellError, type CellValue } from "../sheets/cell";
import { GrowingCodes, GrowingNumbers, GrowingRows, GrowingStates } from "./growingLists";
import type { OddCells } from "./oddCells";
import { readTextDates, type CellPlace } from "./readCells";
import { winterOfTable, type TableRows } from "./readSeason";
import {
  CELL,
  type CellList,
  type Numbers,
  type OtherColumn,
  type SurveyColumn,
  type SurveyTable,
  type TotalRow,
} from "../season/season";
import { columnsById } from "../season/surveyTable";

/**
 * A table that is read in pieces and held in typed arrays no wider than its numbers need, so that a million rows take
 * about 70 bytes each. What stood in a cell can still be asked for: numbers are kept as they are, other cells once for
 * each different one.
 */
export class GrowingTable {
  private readonly columns: GrowingColumn[];
  private readonly others: readonly (OtherColumn & { readonly growing: GrowingNumbers })[];
  private readonly totals: TotalRow[] = [];
  private readonly formulas = new Map<number, ReadonlyMap<string, string>>();
  private readonly sheetRows = new GrowingRows();
  private count = 0;
  private readonly headsAgain: number[] = [];
  private readonly remarks: number[] = [];

  /**
   * @param first the first piece, whose headers are those of the whole table
   * @param odd told of the dates of the whole table
   */
  constructor(
    private readonly first: SurveyTable,
    private readonly odd: OddCells,
  ) {
    this.columns = first.columns.map((column) => new GrowingColumn(column));
    this.others = first.otherColumns.map((other) => ({ ...other, growing: new GrowingNumbers() }));
  }

  /**
   * Adds a piece with the same headers; its rows before `from` are known already.
   *
   * @param mayHoldFormulas spares the look at rows that hold values only
   */
  add(
    piece: TableRows,
    from: number,
    sheetRowOf: (index: number) => number,
    mayHoldFormulas: (index: number) => boolean,
  ): void {
    const rows = piece.rowCount - from;
    const sheetRows = new Int32Array(rows);
    for (let i = 0; i < rows; i++) sheetRows[i] = sheetRowOf(from + i);
    this.sheetRows.add(sheetRows);
    for (let i = 0; i < rows; i++)
      if (mayHoldFormulas(from + i)) this.keepFormulas(piece, from + i, this.count + i);
    for (const column of this.columns) column.add(piece.column(column.id)!, from);
    for (const { growing, sheetColumn } of this.others)
      growing.add(
        piece.otherColumns.find((other) => other.sheetColumn === sheetColumn)!.numbers.subarray(from),
      );
    for (const total of piece.totals)
      this.totals.push({ ...total, rowsBefore: this.count + total.rowsBefore - from });
    this.count += rows;
    this.headsAgain.push(...piece.headsAgain);
    this.remarks.push(...piece.remarks);
  }

  private keepFormulas(piece: TableRows, index: number, at: number): void {
    const found = new Map(
      piece.columns.flatMap((column) => {
        const formula = piece.formulaAt(index, column);
        return formula === null ? [] : [[column.column.id, formula] as const];
      }),
    );
    if (found.size > 0) this.formulas.set(at, found);
  }

  /** The whole table; nothing can be added after it. */
  table(): SurveyTable {
    const { first, count, formulas } = this;
    const noNumbers = new Float32Array(count).fill(NaN);
    const allUsable = new Uint8Array(count);
    this.odd.forgetDates(first.sheet);
    const place = { sheet: first.sheet, unit: undefined, odd: this.odd };
    const columns = this.columns.map((column) => column.whole(count, noNumbers, allUsable, place));
    const rows: TableRows = {
      shape: first.shape,
      sheet: first.sheet,
      headerRow: first.headerRow,
      rowCount: count,
      ...rowNumbers(this.sheetRows.whole()),
      ...columnsById(columns),
      totals: this.totals,
      headsAgain: this.headsAgain,
      remarks: this.remarks,
      otherColumns: this.others.map(({ header, sheetColumn, growing }) => ({
        header,
        sheetColumn,
        numbers: growing.whole(),
      })),
      repeatedHeaders: first.repeatedHeaders,
      marks: first.marks,
      formulaAt: (index, column) => formulas.get(index)?.get(column.column.id) ?? null,
    };
    return { ...rows, winter: winterOfTable(rows) };
  }
}

/** Sheet rows of the table's rows: a first row and no more where they follow each other without a gap. */
function rowNumbers(sheetRows: Int32Array): Pick<SurveyTable, "sheetRow" | "indexOfSheetRow"> {
  const first = sheetRows[0] ?? 0;
  if (sheetRows.every((row, i) => row === first + i))
    return {
      sheetRow: (index) => first + index,
      indexOfSheetRow: (row) => (row >= first && row < first + sheetRows.length ? row - first : undefined),
    };
  return {
    sheetRow: (index) => sheetRows[index],
    indexOfSheetRow: (row) => {
      const index = lowerBound(sheetRows, row);
      return sheetRows[index] === row ? index : undefined;
    },
  };
}

function lowerBound(sorted: Int32Array, wanted: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle] < wanted) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** One column: its numbers or word numbers, its states, and what is needed to give a cell back as it stood. */
class GrowingColumn {
  readonly id: string;
  private readonly isNumeric: boolean;
  private readonly numbers = new GrowingNumbers();
  private readonly codes = new GrowingCodes();
  private readonly states = new GrowingStates();
  private readonly cells: CellPieces;

  constructor(private readonly like: SurveyColumn) {
    const { kind, id } = like.column;
    this.id = id;
    this.isNumeric = kind !== "text" && kind !== "choice" && id !== "note";
    this.cells = this.isNumeric && like.perUnit === 1 ? new CellsBesideNumbers() : new DifferentCells();
  }

  add(piece: SurveyColumn, from: number): void {
    this.states.add(piece.states.subarray(from));
    if (this.isNumeric) this.numbers.add(piece.numbers.subarray(from));
    this.codes.add(piece.codes.subarray(from));
    this.cells.add(piece, from);
  }

  /** The column in one; nothing can be added after it. */
  whole(count: number, noNumbers: Float32Array, allUsable: Uint8Array, place: CellPlace): SurveyColumn {
    const numbers = this.isNumeric ? this.numbers.whole() : noNumbers;
    const { cells } = this;
    let states = this.states.whole();
    if (this.like.column.kind === "date" && cells instanceof CellsBesideNumbers && cells.others.size > 0)
      readTextDates(unmoved(cells.others, states), numbers, (states ??= new Uint8Array(count)), place);
    return {
      ...this.like,
      numbers,
      usable: numbers,
      states: states ?? allUsable,
      codes: this.codes.whole(),
      raw: cells.whole(count, numbers),
    };
  }
}

/** Cells but those of rows that have more cells than heads. */
function* unmoved(
  cells: Iterable<readonly [number, CellValue]>,
  states: Uint8Array | undefined,
): Iterable<readonly [number, CellValue]> {
  for (const cell of cells) if (states?.[cell[0]] !== CELL.moved) yield cell;
}

/** Cells of a column as they stand in the sheet. */
interface CellPieces {
  add(piece: SurveyColumn, from: number): void;
  whole(count: number, numbers: Numbers): CellList;
}

/** Cells of a column whose numbers are those of the sheet: only what is no such number is kept. */
class CellsBesideNumbers implements CellPieces {
  /** By index of the row. */
  readonly others = new Map<number, CellValue>();
  private count = 0;

  add({ raw, numbers, states, column }: SurveyColumn, from: number): void {
    const mayBeText = column.kind === "date";
    for (let i = from; i < numbers.length; i++) {
      if (states[i] === CELL.usable && !mayBeText) continue;
      const cell = raw.at(i) ?? null;
      if (cell !== null && cell !== numbers[i]) this.others.set(this.count + i - from, cell);
    }
    this.count += numbers.length - from;
  }

  whole(length: number, numbers: Numbers): CellList {
    const { others } = this;
    const numberAt = (index: number) => (Number.isNaN(numbers[index]) ? null : numbers[index]);
    return { length, at: (index) => others.get(index) ?? numberAt(index) };
  }
}

/** Cells of any column: each different one once, and its number for every row. */
class DifferentCells implements CellPieces {
  private readonly cells: CellValue[] = [];
  private readonly known = new Map<CellValue, number>();
  private readonly errors = new Map<CellValue, number>();
  private readonly cellNumbers = new GrowingCodes();

  add({ raw }: SurveyColumn, from: number): void {
    const numbers = new Int32Array(raw.length - from);
    let last: CellValue | undefined;
    let number = 0;
    for (let i = 0; i < numbers.length; i++) {
      const cell = raw.at(from + i) ?? null;
      if (cell !== last) number = this.cellNumber((last = cell));
      numbers[i] = number;
    }
    this.cellNumbers.add(numbers);
  }

  whole(length: number): CellList {
    const { cells } = this;
    const cellNumbers = this.cellNumbers.whole();
    return { length, at: (index) => cells[cellNumbers[index]] };
  }

  private cellNumber(cell: CellValue): number {
    return isCellError(cell)
      ? this.numberIn(this.errors, cell.error, cell)
      : this.numberIn(this.known, cell, cell);
  }

  private numberIn(known: Map<CellValue, number>, key: CellValue, cell: CellValue): number {
    let number = known.get(key);
    if (number === undefined) {
      number = this.cells.push(cell) - 1;
      known.set(key, number);
    }
    return number;
  }
}
