import type { CellValue } from "./cell";
import { seasonOfTable } from "./readSurvey";
import type { SurveyColumn, SurveyTable, TotalRow } from "./survey";

/**
 * A table that is read in pieces and held in typed arrays only, so that a million rows take about 160 bytes each. What
 * stood in a cell can still be asked for: numbers are kept as they are, words once for each different one.
 */
export class GrowingTable {
  private readonly columns: GrowingColumn[];
  private readonly totals: TotalRow[] = [];
  private readonly formulas = new Map<number, ReadonlyMap<string, string>>();
  private sheetRows = new Int32Array(INITIAL_ROWS);
  private count = 0;

  /** @param first the first piece, whose headers are those of the whole table */
  constructor(private readonly first: SurveyTable) {
    this.columns = first.columns.map((column) => new GrowingColumn(column));
  }

  /**
   * Adds a piece with the same headers; its rows before `from` are known already.
   *
   * @param mayHoldFormulas spares the look at rows that hold values only
   */
  add(
    piece: SurveyTable,
    from: number,
    sheetRowOf: (index: number) => number,
    mayHoldFormulas: (index: number) => boolean,
  ): void {
    const rows = piece.rowCount - from;
    this.sheetRows = grown(this.sheetRows, this.count + rows);
    for (let i = 0; i < rows; i++) this.sheetRows[this.count + i] = sheetRowOf(from + i);
    for (let i = 0; i < rows; i++)
      if (mayHoldFormulas(from + i)) this.keepFormulas(piece, from + i, this.count + i);
    for (const column of this.columns) column.add(piece.column(column.id)!, from, this.count);
    for (const total of piece.totals)
      this.totals.push({ ...total, rowsBefore: this.count + total.rowsBefore - from });
    this.count += rows;
  }

  private keepFormulas(piece: SurveyTable, index: number, at: number): void {
    const found = new Map(
      piece.columns.flatMap((column) => {
        const formula = piece.formulaAt(index, column);
        return formula === null ? [] : [[column.column.id, formula] as const];
      }),
    );
    if (found.size > 0) this.formulas.set(at, found);
  }

  /** The whole table. */
  table(): SurveyTable {
    const { first, count, formulas } = this;
    const noNumbers = new Float64Array(count).fill(NaN);
    const sheetRows = (this.sheetRows = this.sheetRows.slice(0, count));
    const columns = this.columns.map((column) => column.whole(count, noNumbers));
    const byId = new Map(columns.map((column) => [column.column.id, column]));
    return {
      shape: first.shape,
      sheet: first.sheet,
      headerRow: first.headerRow,
      rowCount: count,
      sheetRow: (index) => sheetRows[index],
      indexOfSheetRow: (sheetRow) => {
        const index = lowerBound(sheetRows, sheetRow);
        return sheetRows[index] === sheetRow ? index : undefined;
      },
      columns,
      column: (id) => byId.get(id),
      totals: this.totals,
      otherHeaders: first.otherHeaders,
      repeatedHeaders: first.repeatedHeaders,
      formulaAt: (index, column) => formulas.get(index)?.get(column.column.id) ?? null,
      season:
        first.shape.id === "cordons" || first.shape.id === "vines"
          ? seasonOfTable(first.sheet, columns)
          : undefined,
    };
  }
}

const INITIAL_ROWS = 4096;
const GROWTH = 1.5;

type Typed = Float64Array | Int32Array | Uint16Array | Uint8Array;

function grown<A extends Typed>(array: A, length: number): A {
  if (length <= array.length) return array;
  const larger = new (array.constructor as new (size: number) => A)(
    Math.max(length, Math.ceil(array.length * GROWTH)),
  );
  larger.set(array);
  return larger;
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
  private numbers = new Float64Array(0);
  private states = new Uint8Array(INITIAL_ROWS);
  private codes = new Int32Array(0);
  /** Numbers as they stand in the sheet, where the unit makes them differ. */
  private written = new Float64Array(0);
  /** Cells of a numeric column that hold no number. */
  private readonly others = new Map<number, CellValue>();
  /** Different cells of a column of words, and the number of each row's. */
  private readonly known = new Map<CellValue, number>();
  private readonly cells: CellValue[] = [];
  private cellNumbers: Uint16Array | Int32Array = new Uint16Array(0);

  constructor(private readonly like: SurveyColumn) {
    this.id = like.column.id;
    const { kind, id } = like.column;
    this.isNumeric = kind !== "text" && kind !== "choice" && id !== "note";
  }

  add(piece: SurveyColumn, from: number, at: number): void {
    const rows = piece.states.length - from;
    this.states = grown(this.states, at + rows);
    this.states.set(piece.states.subarray(from), at);
    if (this.isNumeric) this.addNumbers(piece, from, at, rows);
    else this.addWords(piece, from, at, rows);
  }

  /** The column cut to its length, so that nothing is held that is not used. */
  whole(count: number, noNumbers: Float64Array): SurveyColumn {
    this.numbers = this.numbers.slice(0, count);
    this.states = this.states.slice(0, count);
    this.codes = this.codes.slice(0, count);
    this.written = this.written.slice(0, count);
    this.cellNumbers = this.cellNumbers.slice(0, count);
    return {
      ...this.like,
      numbers: this.isNumeric ? this.numbers : noNumbers,
      states: this.states,
      codes: this.codes,
      raw: cellList(count, this.isNumeric ? (index) => this.number(index) : (index) => this.word(index)),
    };
  }

  private addNumbers(piece: SurveyColumn, from: number, at: number, rows: number): void {
    this.numbers = grown(this.numbers, at + rows);
    this.numbers.set(piece.numbers.subarray(from), at);
    const converts = this.like.perUnit !== 1;
    if (converts) this.written = grown(this.written, at + rows);
    for (let i = 0; i < rows; i++) {
      const cell = piece.raw[from + i];
      if (typeof cell === "number") {
        if (converts) this.written[at + i] = cell;
      } else if (cell !== null) this.others.set(at + i, cell);
    }
  }

  private addWords(piece: SurveyColumn, from: number, at: number, rows: number): void {
    if (piece.codes.length > 0) {
      this.codes = grown(this.codes, at + rows);
      this.codes.set(piece.codes.subarray(from), at);
    }
    this.cellNumbers = grown(this.cellNumbers, at + rows);
    for (let i = 0; i < rows; i++) this.cellNumbers[at + i] = this.cellNumber(piece.raw[from + i]);
  }

  private cellNumber(cell: CellValue): number {
    const key = typeof cell === "object" && cell !== null ? cell.error : cell;
    let number = this.known.get(key);
    if (number === undefined) {
      number = this.cells.push(cell) - 1;
      this.known.set(key, number);
      if (number > 0xffff && this.cellNumbers instanceof Uint16Array)
        this.cellNumbers = Int32Array.from(this.cellNumbers);
    }
    return number;
  }

  private number(index: number): CellValue {
    const other = this.others.get(index);
    if (other !== undefined) return other;
    const value = this.like.perUnit === 1 ? this.numbers[index] : this.written[index];
    return Number.isNaN(this.numbers[index]) ? null : value;
  }

  private word(index: number): CellValue {
    return this.cells[this.cellNumbers[index]] ?? null;
  }
}

/** A list of cells that are made when they are asked for. */
function cellList(length: number, cellAt: (index: number) => CellValue): readonly CellValue[] {
  const indexOf = (key: string | symbol) => (typeof key === "string" && /^\d+$/.test(key) ? Number(key) : -1);
  return new Proxy<CellValue[]>([], {
    get: (list, key, receiver) => {
      if (key === "length") return length;
      const index = indexOf(key);
      if (index >= 0) return index < length ? cellAt(index) : undefined;
      return Reflect.get(list, key, receiver) as unknown;
    },
    has: (list, key) => {
      const index = indexOf(key);
      return index >= 0 ? index < length : Reflect.has(list, key);
    },
  });
}
