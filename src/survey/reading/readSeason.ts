import type { UnitSystem } from "../../domain/units";
import { isBlank, isCellError, type CellValue } from "../sheets/cell";
import { plainHeader, type Column } from "../sheets/column";
import { findTable, type FoundTable, type HeaderMapping } from "./findTable";
import { readSettings } from "../settings/readSettings";
import { isPlausibleDay, winterOf, textDate, type DayOrder } from "./serialDate";
import { judgedTable } from "../season/judgedTable";
import { makeSeason } from "../season/makeSeason";
import type { SheetArea } from "./sheetArea";
import {
  CELL,
  type Numbers,
  type Season,
  type SurveyColumn,
  type SurveyTable,
  type TotalRow,
} from "../season/season";
import { textNumber } from "./textNumber";
import { columnUnit, headerUnit } from "../sheets/unit";
import { NO_WORD, UNKNOWN_WORD, wordKey, Words } from "../sheets/words";
import { LANGUAGES } from "../../texts/language";

export interface ReadingOptions {
  /** Unit of headers that name none; left out: the Settings sheet's, else that of the headers that do, else US. */
  readonly unitSystem?: UnitSystem;
  /** Own column heads, a sheet each. */
  readonly mapping?: readonly HeaderMapping[];
}

/**
 * Reads the survey tables of a workbook's sheets: headers in English, Spanish or French, columns in any order, extra
 * columns left alone, lengths and masses turned into metres and kilograms. Never fails on what stands in a cell:
 * a cell that cannot be used is told from a blank one in `states`, and the checks say so.
 *
 * @param areas the filled part of each sheet; sheets that the add-in wrote itself are left out by the caller
 */
export function readSeason(areas: readonly SheetArea[], options: ReadingOptions = {}): Season {
  const words = new Words();
  const found: { area: SheetArea; place: FoundTable }[] = [];
  const otherSheets: string[] = [];
  for (const area of areas) {
    const mapping = options.mapping?.find((own) => own.sheet === area.sheet);
    const place = findTable(area, mapping);
    if (place) found.push({ area, place });
    else otherSheets.push(area.sheet);
  }
  const settingTables = found
    .filter(({ place }) => place.shape.id === "settings")
    .map(({ area, place }) => readTable(area, place, "US", words));
  const { settings, problems } = readSettings(settingTables);
  const unitSystem = options.unitSystem ?? systemOf(found, settings.get("Unit system"));
  const rest = found.filter(({ place }) => place.shape.id !== "settings");
  const allTables = [
    ...settingTables,
    ...rest.map(({ area, place }) => readTable(area, place, unitSystem, words)),
  ];
  return makeSeason({
    allTables,
    otherSheets,
    settings,
    settingProblems: problems,
    unitSystem,
    words,
  });
}

const METRIC_UNITS = new Set(["m", "cm", "mm", "kg", "g", "t"]);
const US_UNITS = new Set(["ft", "in", "lb", "oz", "ton"]);

function systemOf(
  found: readonly { area: SheetArea; place: FoundTable }[],
  setting: number | string | undefined,
): UnitSystem {
  if (setting === "US" || setting === "metric") return setting;
  let metric = 0;
  let us = 0;
  for (const { area, place } of found)
    for (const position of place.columns.values()) {
      const unit = headerUnit(String(area.values[place.headerIndex][position]))?.id ?? "";
      if (METRIC_UNITS.has(unit)) metric++;
      if (US_UNITS.has(unit)) us++;
    }
  return metric > us ? "metric" : "US";
}

/** A table, or a piece of one, whose season is not told yet. */
export type TableRows = Omit<SurveyTable, "winter">;

/** The table that was found in a sheet. */
function readTable(area: SheetArea, place: FoundTable, system: UnitSystem, words: Words): SurveyTable {
  const rows = readRows(area, place, system, words);
  return { ...rows, winter: winterOfTable(rows) };
}

/** The rows of the table that was found in a sheet. */
export function readRows(area: SheetArea, place: FoundTable, system: UnitSystem, words: Words): TableRows {
  const { rows, totals } = dataRows(area, place);
  const sheetRows = new Int32Array(rows);
  for (let i = 0; i < sheetRows.length; i++) sheetRows[i] += area.firstRow;
  const lines = rows.map((index) => area.values[index]);
  const headers = area.values[place.headerIndex];
  const columns: SurveyColumn[] = [];
  const noNumbers = new Float64Array(rows.length).fill(NaN);
  for (const [column, position] of place.columns) {
    const header = String(headers[position]).trim();
    const raw = cellsAt(lines, position);
    const unit = columnUnit(column.kind, header, system);
    const base = {
      column,
      header,
      sheetColumn: area.firstColumn + position,
      unit,
      perUnit: unit?.perUnit ?? 1,
      raw,
    };
    const cells = readCells(column, raw, base.perUnit, words, noNumbers);
    columns.push({ ...base, ...cells, usable: cells.numbers });
  }
  columns.sort((a, b) => place.shape.columns.indexOf(a.column) - place.shape.columns.indexOf(b.column));
  const known = new Set([...place.columns.values(), ...place.repeated]);
  const byId = new Map(columns.map((column) => [column.column.id, column]));
  const heading = (position: number) => ({
    header: String(headers[position]).trim(),
    sheetColumn: area.firstColumn + position,
  });
  return {
    shape: place.shape,
    sheet: area.sheet,
    headerRow: area.firstRow + place.headerIndex,
    rowCount: rows.length,
    sheetRow: (index) => sheetRows[index],
    indexOfSheetRow: (sheetRow) => indexIn(sheetRows, sheetRow),
    columns,
    column: (id) => byId.get(id),
    totals,
    otherHeaders: headers.flatMap((cell, position) =>
      typeof cell === "string" && !isBlank(cell) && !known.has(position) ? [heading(position)] : [],
    ),
    repeatedHeaders: place.repeated.map(heading),
    formulaAt: (index, column) => area.formulaAt(rows[index], column.sheetColumn - area.firstColumn),
  };
}

/**
 * A table of one row, read like the others of `table`, for judging it while it is typed. Undefined for a blank row.
 *
 * @param row the row's cells as they stand now; `firstColumn` is the sheet column of the first of them
 */
export function readRow(
  season: Season,
  table: SurveyTable,
  row: { readonly row: number; readonly firstColumn: number; readonly values: readonly CellValue[] },
): SurveyTable | undefined {
  const cellOf = (sheetColumn: number) => row.values[sheetColumn - row.firstColumn] ?? null;
  const noNumbers = new Float64Array(1).fill(NaN);
  const columns = table.columns.map((column): SurveyColumn => {
    const raw = [cellOf(column.sheetColumn)];
    const cells = readCells(column.column, raw, column.perUnit, season.words, noNumbers);
    return { ...column, raw, ...cells, usable: cells.numbers };
  });
  if (columns.every((column) => column.states[0] === CELL.blank)) return undefined;
  const byId = new Map(columns.map((column) => [column.column.id, column]));
  return judgedTable({
    ...table,
    rowCount: 1,
    sheetRow: () => row.row,
    indexOfSheetRow: (sheetRow: number) => (sheetRow === row.row ? 0 : undefined),
    columns,
    column: (id) => byId.get(id),
    totals: [],
    formulaAt: () => null,
  });
}

function cellsAt(lines: readonly (readonly CellValue[])[], position: number): CellValue[] {
  const cells = new Array<CellValue>(lines.length);
  for (let i = 0; i < lines.length; i++) cells[i] = lines[i][position] ?? null;
  return cells;
}

/**
 * The season of most dates of a table of cordons or vines; without dates the last year in the sheet's name. Undefined
 * for other tables.
 */
export function winterOfTable({ shape, sheet, column }: TableRows): number | undefined {
  if (shape.id !== "cordons" && shape.id !== "vines") return undefined;
  const written = column("countedOn")?.numbers ?? [];
  const dates = new Float64Array(written.length);
  let count = 0;
  for (let i = 0; i < written.length; i++) if (isPlausibleDay(written[i])) dates[count++] = written[i];
  if (count > 0) return winterOf(dates.subarray(0, count).sort()[count >> 1]);
  const years = [...sheet.matchAll(/(?<!\d)(?:(20\d\d)(?:\s*[-–/]\s*(\d\d(?:\d\d)?))?)(?!\d)/g)].at(-1);
  if (!years) return undefined;
  return years[2] === undefined ? Number(years[1]) : 2000 + (Number(years[2]) % 100);
}

function indexIn(sorted: Int32Array, wanted: number): number | undefined {
  let low = 0;
  let high = sorted.length - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    if (sorted[middle] === wanted) return middle;
    if (sorted[middle] < wanted) low = middle + 1;
    else high = middle - 1;
  }
  return undefined;
}

const TOTAL_WORD =
  /^((sub|grand)[ -]?)?(totals?|sum|suma|somme|average|mean|promedio|media|moyenne|sous-total)\b:?|\b(sub)?totals?:?$/;

function dataRows(area: SheetArea, place: FoundTable): { rows: number[]; totals: TotalRow[] } {
  const positions = [...place.columns.values()];
  const keys = [...place.columns].filter(([column]) => column.id === "vine");
  const texts = [...place.columns].filter(([column]) => column.kind === "text" && column.id !== "note");
  const rows: number[] = [];
  const totals: TotalRow[] = [];
  let blankBefore = false;
  for (let index = place.headerIndex + 1; index < area.values.length; index++) {
    const cells = area.values[index];
    const filled = filledCells(cells, positions);
    if (filled === 0) {
      blankBefore = true;
      continue;
    }
    const placed = keys.some(([, position]) => typeof cells[position] === "number");
    if (!placed && isTotal(area, index, place, texts, keys.length > 0)) {
      totals.push(totalRow(area, index, place, rows.length));
      continue;
    }
    if (!placed && isHeaderAgain(cells, place)) continue;
    if (blankBefore && filled === 1 && !placed && isRemark(cells, positions, rows.length)) continue;
    blankBefore = false;
    rows.push(index);
  }
  return { rows, totals };
}

/** Number of filled cells, counted to two at most. */
function filledCells(cells: readonly CellValue[], positions: readonly number[]): number {
  let filled = 0;
  for (const position of positions) {
    const value = cells[position];
    if (typeof value === "number" || !isBlank(value)) {
      filled++;
      if (filled === 2) return filled;
    }
  }
  return filled;
}

function isTotal(
  area: SheetArea,
  index: number,
  place: FoundTable,
  texts: readonly (readonly [Column, number])[],
  hasPlaces: boolean,
): boolean {
  const cells = area.values[index];
  if (!hasPlaces)
    return texts.slice(0, 1).some(([, position]) => {
      const label = wordKey(String(cells[position] ?? ""));
      return TOTAL_WORD.exec(label)?.[0] === label;
    });
  const note = [...place.columns].find(([column]) => column.id === "note")?.[1];
  if (cells.some((cell, at) => at !== note && typeof cell === "string" && TOTAL_WORD.test(wordKey(cell))))
    return true;
  if (texts.some(([, position]) => !isBlank(cells[position]))) return false;
  return [...place.columns.values()].some((position) =>
    /^=.*\b(SUM|SUBTOTAL|AVERAGE|AGGREGATE|COUNT)\w*\(/i.test(area.formulaAt(index, position) ?? ""),
  );
}

function totalRow(area: SheetArea, index: number, place: FoundTable, rowsBefore: number): TotalRow {
  return {
    sheetRow: area.firstRow + index,
    rowsBefore,
    cells: [...place.columns].flatMap(([column, position]) => {
      const value = area.values[index][position] ?? null;
      if (isBlank(value)) return [];
      return [{ columnId: column.id, value, formula: area.formulaAt(index, position) }];
    }),
  };
}

function isHeaderAgain(cells: readonly CellValue[], place: FoundTable): boolean {
  let same = 0;
  for (const [column, position] of place.columns) {
    const cell = cells[position];
    if (typeof cell !== "string") continue;
    const plain = plainHeader(cell);
    if (
      LANGUAGES.some((language) => plainHeader(column.header[language]) === plain) ||
      column.also?.includes(plain)
    )
      same++;
  }
  return same >= 3;
}

function isRemark(cells: readonly CellValue[], positions: readonly number[], rowsBefore: number): boolean {
  const only = positions.map((position) => cells[position]).find((value) => !isBlank(value));
  return rowsBefore > 0 && typeof only === "string" && textNumber(only) === undefined;
}

type Cells = Pick<SurveyColumn, "numbers" | "states" | "codes">;

function readCells(
  column: Column,
  raw: readonly CellValue[],
  perUnit: number,
  words: Words,
  noNumbers: Float64Array,
): Cells {
  if (column.id === "note") return { numbers: noNumbers, states: remarkStates(raw), codes: NO_CODES };
  if (column.kind === "text") return { numbers: noNumbers, ...readWords(raw, words) };
  if (column.kind === "choice") return { numbers: noNumbers, ...readChoices(column, raw) };
  if (column.kind === "date") return readDates(raw);
  return readNumbers(raw, perUnit);
}

function readNumbers(raw: readonly CellValue[], perUnit: number): Cells {
  const numbers = new Float64Array(raw.length);
  const states = new Uint8Array(raw.length);
  for (let i = 0; i < raw.length; i++) {
    const value = raw[i];
    if (typeof value === "number") {
      if (value - value !== 0) {
        numbers[i] = NaN;
        states[i] = CELL.error;
      } else numbers[i] = perUnit === 1 ? value : value * perUnit;
    } else {
      numbers[i] = NaN;
      states[i] = otherState(value);
    }
  }
  return { numbers, states, codes: NO_CODES };
}

const NO_CODES = new Int32Array(0);

function otherState(value: CellValue): number {
  if (isBlank(value)) return CELL.blank;
  if (isCellError(value)) return CELL.error;
  if (typeof value === "string" && textNumber(value) !== undefined) return CELL.numberAsText;
  return CELL.unreadable;
}

function remarkStates(raw: readonly CellValue[]): Uint8Array {
  return Uint8Array.from(raw, (value) =>
    isBlank(value) ? CELL.blank : isCellError(value) ? CELL.error : CELL.usable,
  );
}

function readWords(raw: readonly CellValue[], words: Words): Omit<Cells, "numbers"> {
  const states = new Uint8Array(raw.length);
  const codes = new Int32Array(raw.length);
  let code = NO_WORD;
  for (let i = 0; i < raw.length; i++) {
    if (i === 0 || raw[i] !== raw[i - 1]) code = words.codeOf(raw[i]);
    codes[i] = code;
    if (code === NO_WORD) states[i] = isCellError(raw[i]) ? CELL.error : CELL.blank;
  }
  return { states, codes };
}

function readChoices(column: Column, raw: readonly CellValue[]): Omit<Cells, "numbers"> {
  const known = choiceWords(column);
  const cache = new Map<CellValue, number>();
  const states = new Uint8Array(raw.length);
  const codes = new Int32Array(raw.length);
  for (let i = 0; i < raw.length; i++) {
    const value = raw[i];
    let code = cache.get(value);
    if (code === undefined) {
      code =
        isBlank(value) || isCellError(value)
          ? NO_WORD
          : (known.get(choiceKey(String(value))) ?? UNKNOWN_WORD);
      cache.set(value, code);
    }
    codes[i] = code;
    if (code === NO_WORD) states[i] = isCellError(value) ? CELL.error : CELL.blank;
    else if (code === UNKNOWN_WORD) states[i] = CELL.unreadable;
  }
  return { states, codes };
}

const wordsOfChoices = new WeakMap<Column, Map<string, number>>();

/** Index of every accepted word of a choice column, without accents. */
function choiceWords(column: Column): Map<string, number> {
  let words = wordsOfChoices.get(column);
  if (!words) {
    const choices = column.choices ?? [];
    words = new Map(
      choices.flatMap((choice, index) =>
        [choice.id, ...LANGUAGES.map((language) => choice.word[language]), ...(choice.also ?? [])].map(
          (word) => [choiceKey(word), index] as const,
        ),
      ),
    );
    wordsOfChoices.set(column, words);
  }
  return words;
}

function choiceKey(word: string): string {
  return wordKey(word.normalize("NFD").replace(/[\u0300-\u036f]/g, "")).replace(/[.]$/, "");
}

function readDates(raw: readonly CellValue[]): Cells {
  const numbers = new Float64Array(raw.length);
  const states = new Uint8Array(raw.length);
  const texts: [number, CellValue][] = [];
  for (let i = 0; i < raw.length; i++) {
    const value = raw[i];
    if (typeof value === "string") texts.push([i, value]);
    if (typeof value === "number") {
      numbers[i] = isPlausibleDay(value) ? value : NaN;
      if (!isPlausibleDay(value)) states[i] = CELL.unreadable;
    } else {
      numbers[i] = NaN;
      states[i] = dateState(value);
    }
  }
  readTextDates(texts, numbers, states);
  return { numbers, states, codes: NO_CODES };
}

/**
 * Reads the dates of a column that are written as text. Where day and month of one could change places, it takes the
 * order of the dates that leave no choice, as long as those agree.
 *
 * @param cells cells of the column by their index; those that hold no text are passed over
 * @param numbers takes the serials
 * @param states takes what was made of each
 */
export function readTextDates(
  cells: Iterable<readonly [index: number, cell: CellValue]>,
  numbers: Numbers,
  states: Uint8Array,
): void {
  const unclear: { index: number; dayFirst: number; monthFirst: number }[] = [];
  const orders = new Set<DayOrder>();
  for (const [index, cell] of cells) {
    const date = typeof cell === "string" && !isBlank(cell) ? textDate(cell) : undefined;
    if (date === undefined) continue;
    if ("unclear" in date) unclear.push({ index, ...date });
    else {
      numbers[index] = date.serial;
      states[index] = CELL.usable;
      if (date.order) orders.add(date.order);
    }
  }
  const [order] = orders;
  const isKnown = orders.size === 1;
  for (const date of unclear) {
    numbers[date.index] = isKnown ? date[order] : NaN;
    states[date.index] = isKnown ? CELL.usable : CELL.unclearDate;
  }
}

function dateState(value: CellValue): number {
  if (isBlank(value)) return CELL.blank;
  return isCellError(value) ? CELL.error : CELL.unreadable;
}
