import type { CellValue } from "../sheets/cell";
import { HEADER_SEARCH_ROWS, type FoundTable } from "./findTable";
import { EncodedTwice } from "./encodedTwice";
import { GrowingTable } from "./growingTable";
import { isOtherLayout } from "./layout/captions";
import { layOut } from "./layout/layOut";
import { allAnswers, isAnswersSheet } from "./keptAnswers";
import { OddCells } from "./oddCells";
import { groupedNotes, type OpenAccount, type ReadingAccount } from "./readingAccount";
import {
  blocksNamed,
  keyLabels,
  readRows,
  readSeason,
  tellOtherLines,
  winterOfHeads,
  type ReadingOptions,
  type TableRows,
} from "./readSeason";
import { yearColumn } from "./rowsByWinter";
import { NOTHING_BEHIND, type SheetArea, type SheetEnd } from "./sheetArea";
import { unitsOfCounters } from "./unitsOfCounters";
import { partByWinter } from "./winters";
import { makeSeason } from "../season/makeSeason";
import type { Season, SurveyTable } from "../season/season";
import { wordKey } from "../sheets/words";

/** A row of a sheet as a file gives it, cells from column A on. */
export interface StreamedRow {
  readonly number: number;
  readonly values: readonly CellValue[];
  readonly formulas: ReadonlyMap<number, string> | undefined;
}

/** A sheet whose rows come in batches, any number of times. */
export interface StreamedSheet {
  readonly sheet: string;
  /** As in SheetArea. */
  readonly isText?: boolean;
  /** As in SheetArea. */
  readonly isHidden?: boolean;
  /** @param onEnd told behind the last row */
  rows(onEnd?: (end: SheetEnd) => void): AsyncIterable<readonly StreamedRow[]>;
}

export interface LargeReadingOptions extends ReadingOptions {
  /** Rows that are read at a time; 1,024 when left out. */
  readonly pieceRows?: number;
  /** Rows up to which a sheet is read whole; 50,000 when left out. */
  readonly wholeRows?: number;
}

/**
 * Reads a survey of any size: sheets of ordinary size whole, so that any layout is seen, larger ones row by row without
 * holding them, in a fraction of the memory. A large sheet is read in pieces where its head shows one plain table.
 *
 * @param onRows told how many rows have been read
 */
export async function readLargeSeason(
  sheets: readonly StreamedSheet[],
  options: LargeReadingOptions = {},
  onRows: (rows: number) => void = () => undefined,
): Promise<Season> {
  const held = new Set<string>();
  const twice = new EncodedTwice();
  const meant = sheets.map((sheet) => sheetReadOnce(sheet, twice));
  for (;;) {
    const season = await readHolding(held, meant, options, onRows);
    if (!season) continue;
    const notes = twice.notes();
    if (notes.length === 0) return season;
    return {
      ...season,
      account: { ...season.account, notes: groupedNotes([...notes, ...season.account.notes]) },
    };
  }
}

function sheetReadOnce(sheet: StreamedSheet, twice: EncodedTwice): StreamedSheet {
  return {
    ...sheet,
    async *rows(onEnd) {
      twice.forget(sheet.sheet);
      for await (const batch of sheet.rows(onEnd))
        yield batch.map((row) => {
          const values = twice.row(sheet.sheet, row.values);
          return values === row.values ? row : { ...row, values };
        });
    },
  };
}

/**
 * Reads with these sheets held as a whole; undefined, and one sheet more in `held`, where a sheet that began as one
 * plain table goes on as something else.
 */
async function readHolding(
  held: Set<string>,
  sheets: readonly StreamedSheet[],
  options: LargeReadingOptions,
  onRows: (rows: number) => void,
): Promise<Season | undefined> {
  let rows = 0;
  const told = (count: number) => onRows((rows += count));
  const kept: SheetArea[] = [];
  for (const sheet of sheets)
    if (isAnswersSheet(sheet.sheet)) kept.push((await startOf(sheet, options, () => undefined)).area);
  const answers = allAnswers(kept, options.answers);
  const starts: SheetStart[] = [];
  for (const sheet of sheets) {
    const wholeRows = held.has(sheet.sheet) ? Infinity : options.wholeRows;
    starts.push(await startOf(sheet, { ...options, answers, wholeRows }, told));
  }
  const areas = starts.map(({ area }) => area);
  const begun = new Set(starts.flatMap(({ sheet, rest }) => (rest ? [sheet] : [])));
  const known = readSeason(areas, { ...options, answers, begun });
  const blocks = blocksNamed(areas);
  const odd = new OddCells(answers, winterOfHeads(areas));
  const large = new Map<string, SurveyTable>();
  for (const { sheet, area, rest } of starts) {
    const table = known.allTables.find((candidate) => candidate.sheet === sheet);
    if (!table || !rest) continue;
    const headers = area.values[table.headerRow - area.firstRow];
    const whole = await wholeTable(rest, table, headers, {
      ...pieceReader(area, table, known, odd),
      odd,
      isOther: (values) => isOtherLayout(values, headers, table, (name) => blocks.has(wordKey(name))),
      rows: options.pieceRows ?? PIECE_ROWS,
      onRows: told,
    });
    if (!whole) {
      held.add(sheet);
      return undefined;
    }
    large.set(sheet, whole);
  }
  if (large.size === 0) return known;
  const account = withoutWinters(known.account);
  odd.tell(account);
  tellOtherLines([...large.values()], account);
  const allTables = known.allTables.map((table) => large.get(table.sheet) ?? table);
  const settings = allTables.filter(({ shape }) => shape.id === "settings");
  const { past, tables } = partByWinter(
    unitsOfCounters(
      allTables.filter(({ shape }) => shape.id !== "settings"),
      known.words,
      answers,
      account,
    ),
    answers,
    account,
    { today: options.today },
  );
  const notes = groupedNotes(account.notes);
  return makeSeason({ ...known, allTables: [...settings, ...tables], account: { ...account, notes } }, past);
}

/** What was told, without what is told anew when the winters of all rows are known. */
function withoutWinters({ notes, questions, leftOut }: ReadingAccount): OpenAccount {
  const isToldAnew = ({ code }: { code: string }) => OF_WINTERS.has(code);
  return {
    notes: notes.filter((note) => !isToldAnew(note)),
    questions: questions.filter((question) => !isToldAnew(question)),
    leftOut: leftOut.filter(({ reason }) => reason !== "pastWinter" && reason !== "toCount"),
  };
}

const OF_WINTERS = new Set(["oneWinter", "plantingYear", "winter", "otherWinter"]);

const HEAD_ROWS = HEADER_SEARCH_ROWS + 30;

/** Rows up to which a sheet is read whole. */
const WHOLE_ROWS = 50_000;

/** A sheet that was read whole, or the head of one with all its rows from the first on. */
interface SheetStart {
  readonly sheet: string;
  readonly area: SheetArea;
  readonly rest: Rest | undefined;
}

/** The rows of a sheet, and what is known when the last of them was read. */
interface Rest {
  rows(): AsyncIterable<readonly StreamedRow[]>;
  end(): SheetEnd;
}

async function startOf(
  sheet: StreamedSheet,
  options: LargeReadingOptions,
  onRows: (rows: number) => void,
): Promise<SheetStart> {
  const most = options.wholeRows ?? WHOLE_ROWS;
  let end = NOTHING_BEHIND;
  const batches = sheet.rows((known) => (end = known))[Symbol.asyncIterator]();
  const held: StreamedRow[] = [];
  const { sheet: name } = sheet;
  let isStreamed: boolean | undefined;
  for (let next = await batches.next(); !next.done; next = await batches.next()) {
    for (const row of next.value) held.push(row);
    if (held.length > most && isStreamed === undefined) {
      const head = areaOf(sheet, headRows(held));
      isStreamed = isPlain(head, options);
      if (isStreamed)
        return {
          sheet: name,
          area: head,
          rest: {
            rows: () => continued(held, batches),
            end: () => end,
          },
        };
    }
  }
  onRows(held.length);
  return { sheet: name, area: withEnd(areaOf(sheet, held), end), rest: undefined };
}

function headRows(rows: readonly StreamedRow[]): readonly StreamedRow[] {
  return rows.filter((row) => row.number - rows[0].number < HEAD_ROWS);
}

/** True for a head with one table under one line of heads, and that not of Settings. */
function isPlain(head: SheetArea, { answers = {} }: ReadingOptions): boolean {
  const laid = layOut(
    head,
    { answers, winter: undefined, knowsBlock: () => false },
    { notes: [], questions: [], leftOut: [] },
  );
  const [table, ...others] = laid;
  return (
    table !== undefined &&
    others.length === 0 &&
    table.place.sheetRowOf === undefined &&
    table.place.shape.id !== "settings" &&
    yearColumn(table) === undefined
  );
}

async function* continued(
  held: StreamedRow[],
  batches: AsyncIterator<readonly StreamedRow[]>,
): AsyncGenerator<readonly StreamedRow[]> {
  while (held.length > 0) yield held.splice(0, PIECE_ROWS);
  for (let next = await batches.next(); !next.done; next = await batches.next()) yield next.value;
}

/** What is known behind the rows, merged areas in the counting of the area. */
function withEnd(area: SheetArea, { merged, marks }: SheetEnd): SheetArea {
  return {
    ...area,
    marks,
    merged: merged.map((one) => ({
      ...one,
      row: one.row - area.firstRow,
      column: one.column - area.firstColumn,
    })),
  };
}

/**
 * Rows as an area that begins with the first of them; blank rows in between are kept. Each row ends with its own last
 * cell, so that a stray cell far to the right costs nothing in the others.
 */
function areaOf({ sheet, isText, isHidden }: StreamedSheet, rows: readonly StreamedRow[]): SheetArea {
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
    isText,
    isHidden,
  };
}

const BLANK_ROW: readonly CellValue[] = [];

const PIECE_ROWS = 1024;

/** The rows below the headers in pieces. */
async function* piecesOf(
  batches: () => AsyncIterable<readonly StreamedRow[]>,
  headerRow: number,
  rows: number,
): AsyncGenerator<StreamedRow[]> {
  let piece: StreamedRow[] = [];
  for await (const batch of batches())
    for (const row of batch) {
      if (row.number <= headerRow) continue;
      piece.push(row);
      if (piece.length < rows) continue;
      yield piece;
      piece = [];
    }
  if (piece.length > 0) yield piece;
}

/** How the pieces of a sheet are read. */
interface Pieces {
  /** Reads rows of a sheet, the first of which are its headers. */
  read(values: (readonly CellValue[])[], formulaAt: SheetArea["formulaAt"]): TableRows;
  readonly odd: OddCells;
  /** True for a row that no plain table has. */
  isOther(values: readonly CellValue[]): boolean;
  readonly rows: number;
  onRows(rows: number): void;
}

function pieceReader(
  head: SheetArea,
  table: SurveyTable,
  { unitSystem, words }: Season,
  odd: OddCells,
): Pick<Pieces, "read"> {
  const place: FoundTable = {
    shape: table.shape,
    headerIndex: 0,
    columns: new Map(
      table.columns.map(({ column, sheetColumn }) => [column, sheetColumn - head.firstColumn]),
    ),
    repeated: table.repeatedHeaders.map(({ sheetColumn }) => sheetColumn - head.firstColumn),
    labels: keyLabels(table),
    units: new Map(table.columns.flatMap(({ column, unit }) => (unit ? [[column, unit] as const] : []))),
  };
  const area = { sheet: head.sheet, firstRow: 0, firstColumn: head.firstColumn, isText: head.isText };
  return {
    read: (values, formulaAt) => readRows({ ...area, values, formulaAt }, place, unitSystem, words, odd),
  };
}

/**
 * A sheet's whole table, piece by piece; undefined where a row or merged cells show that it is no plain table. Each piece is read under the table's own headers and behind the last row of the
 * piece before, so that a remark or a total is told from counts at a seam as anywhere else.
 */
async function wholeTable(
  { rows: batches, end }: Rest,
  table: SurveyTable,
  headers: readonly CellValue[],
  { read, odd, isOther, rows: pieceRows, onRows }: Pieces,
): Promise<SurveyTable | undefined> {
  const growing = new GrowingTable(table, odd);
  let last: readonly CellValue[] | undefined;
  let lastNumber = table.headerRow;
  for await (const rows of piecesOf(batches, table.headerRow, pieceRows)) {
    const numbers: number[] = [table.headerRow];
    const values: (readonly CellValue[])[] = [headers];
    const formulas = new Map<number, ReadonlyMap<number, string>>();
    if (last) {
      values.push(last);
      numbers.push(lastNumber);
    }
    for (const row of rows) {
      if (isOther(row.values)) return undefined;
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
      {
        ...piece,
        totals: piece.totals.map((total) => ({ ...total, sheetRow: numbers[total.sheetRow] })),
        headsAgain: piece.headsAgain.map((row) => numbers[row]),
        remarks: piece.remarks.map((row) => numbers[row]),
      },
      from,
      (index) => numbers[piece.sheetRow(index)],
      (index) => formulas.has(piece.sheetRow(index)),
    );
    if (piece.rowCount > from) last = values[piece.sheetRow(piece.rowCount - 1)];
    onRows(rows.length);
  }
  const { merged, marks } = end();
  return merged.some(({ rows }) => rows > 1) ? undefined : { ...growing.table(), marks };
}
