import { grouped } from "../../domain/grouped";
import type { UnitSystem } from "../../domain/units";
import { isBlank, type CellValue } from "../sheets/cell";
import { plainHeader, type Column, type SheetId } from "../sheets/column";
import type { FoundTable } from "./findTable";
import { allAnswers, holdsAnswers } from "./keptAnswers";
import { EncodedTwice, readOnce } from "./encodedTwice";
import { headWords } from "./headWords";
import { withoutDenied } from "./likelyUnits";
import { layOut } from "./layout/layOut";
import type { LayoutOptions } from "./layout/layoutOptions";
import type { LaidTable } from "./rowsByWinter";
import { hasMovedCells, lastFilled, withoutMoved } from "./movedCells";
import { OddCells } from "./oddCells";
import { namingLetters } from "./placeLabel";
import { readCells, type KeyLabels } from "./readCells";
import {
  groupedNotes,
  groupedQuestions,
  type OpenAccount,
  type ReadingAnswers,
  type ReadingNote,
} from "./readingAccount";
import { judgedTable } from "../season/judgedTable";
import { makeSeason } from "../season/makeSeason";
import { readSettings } from "../settings/readSettings";
import { isPlausibleDay, textDate, winterOf } from "./serialDate";
import type { SheetArea } from "./sheetArea";
import { CELL, type Season, type SurveyColumn, type SurveyTable, type TotalRow } from "../season/season";
import { columnsById } from "../season/surveyTable";
import { textNumber } from "./textNumber";
import { isTotalWord, meansAll, startsAsTotal } from "./totalWords";
import { columnUnit, holdsUnit } from "../sheets/unit";
import { unitsOfCounters } from "./unitsOfCounters";
import { isReplantList } from "./isReplantList";
import { partByWinter, yearOfName } from "./winters";
import { wordKey, Words } from "../sheets/words";
import { LANGUAGES } from "../../texts/language";

export interface ReadingOptions {
  /** Unit of headers that name none; left out: the Settings sheet's, else that of the headers that do, else US. */
  readonly unitSystem?: UnitSystem;
  /** Which sheet of ours each is, where a formula tells that of its ranges. */
  readonly told?: ReadonlyMap<string, SheetId>;
  /** What people answered to questions about the sheets. */
  readonly answers?: ReadingAnswers;
  /** The day on which it is read, as a spreadsheet serial, by which counts dated after it are asked; left out: they are not. */
  readonly today?: number;
  /** Sheets of which only the first rows are given: what stands in their cells is told when all of them are read. */
  readonly begun?: ReadonlySet<string>;
}

/**
 * Reads the survey tables of a workbook's sheets: headers in English, Spanish or French, columns in any order, extra
 * columns left alone, lengths and masses turned into metres and kilograms. Never fails on what stands in a cell:
 * a cell that cannot be used is told from a blank one in `states`, and the checks say so. What was done on the way, what
 * has to be asked and what was left out stands in `account`.
 *
 * @param sheets the filled part of each sheet; sheets that the add-in wrote itself are left out by the caller, but for
 * Settings and the answers about the others
 */
export function readSeason(sheets: readonly SheetArea[], options: ReadingOptions = {}): Season {
  const words = new Words();
  const answers = allAnswers(sheets, options.answers);
  const twice = new EncodedTwice();
  const areas = sheets.filter((area) => !holdsAnswers(area)).map((area) => twice.area(area));
  const account: OpenAccount = { notes: twice.notes(), questions: [], leftOut: [] };
  const found: { area: SheetArea; place: FoundTable }[] = [];
  const otherSheets: string[] = [];
  const winter = winterOfHeads(areas);
  const odd = new OddCells(answers, winter);
  const blocks = blocksNamed(areas);
  for (const area of areas) {
    const told = options.told?.get(area.sheet);
    const knowsBlock = (name: string) => blocks.has(wordKey(name));
    const all = (area.isHidden ? laidHidden : layOut)(area, { told, answers, winter, knowsBlock }, account);
    const isMapped = told !== undefined || answers.heads?.some(({ sheet }) => sheet === area.sheet) === true;
    const isOther = !isMapped && all.length > 0 && all.every(isReplantList);
    const laid = isOther ? [] : all;
    if (isOther) leaveOut(area.sheet, account);
    if (laid.length === 0) otherSheets.push(area.sheet);
    found.push(...laid);
  }
  const settingTables = found
    .filter(({ place }) => place.shape.id === "settings")
    .map(({ area, place }) => readTable(area, place, "US", words, odd));
  const { settings, problems } = readSettings(settingTables);
  const unitSystem = options.unitSystem ?? systemOf(found, settings.unitSystem);
  const rest = found.filter(({ place }) => place.shape.id !== "settings");
  const isBegun = (sheet: string) => options.begun?.has(sheet) === true;
  const untold = new OddCells(answers, winter);
  const read = rest.map(({ area, place }) =>
    readTable(
      area,
      withoutDenied(area, place, unitSystem, answers, account),
      unitSystem,
      words,
      isBegun(area.sheet) ? untold : odd,
    ),
  );
  odd.tell(account);
  tellOtherLines(
    read.filter(({ sheet }) => !isBegun(sheet)),
    account,
  );
  const measured = read.some(({ sheet }) => isBegun(sheet))
    ? read
    : unitsOfCounters(read, words, answers, account);
  const parted = partByWinter(measured, answers, account, { isBegun, today: options.today });
  return makeSeason(
    {
      allTables: [...settingTables, ...parted.tables],
      otherSheets,
      settings,
      settingProblems: problems,
      unitSystem,
      words,
      account: {
        ...account,
        notes: groupedNotes(account.notes),
        questions: groupedQuestions(account.questions),
      },
    },
    parted.past,
  );
}

/** Says of a sheet that it holds no counts, and nothing else of what was found in it. */
function leaveOut(sheet: string, account: OpenAccount): void {
  const isOther = (part: { readonly sheet: string }) => part.sheet !== sheet;
  account.notes.splice(0, Infinity, ...account.notes.filter(isOther));
  account.questions.splice(0, Infinity, ...account.questions.filter(isOther));
  account.leftOut.splice(0, Infinity, ...account.leftOut.filter(isOther), {
    what: "sheet",
    reason: "notCounts",
    sheet,
    facts: {},
  });
}

/**
 * What is read of a hidden sheet: figures of the farm such as Blocks and Settings. Counts may be an old copy, so they are
 * left out and asked about, but where somebody has said what their heads mean.
 */
function laidHidden(area: SheetArea, options: LayoutOptions, account: OpenAccount): LaidTable[] {
  const { sheet } = area;
  const own: OpenAccount = { notes: [], questions: [], leftOut: [] };
  const laid = layOut(area, options, own);
  const isTold = options.told !== undefined || options.answers.heads?.some((heads) => heads.sheet === sheet);
  const hasCounts = laid.some(
    ({ area: { values }, place: { shape, headerIndex } }) =>
      shape.id !== "settings" && shape.id !== "blocks" && values.length > headerIndex + 1,
  );
  if (isTold === true || (!hasCounts && own.questions.length === 0)) {
    account.notes.push(...own.notes);
    account.questions.push(...own.questions);
    account.leftOut.push(...own.leftOut);
    return laid;
  }
  account.leftOut.push({ what: "sheet", reason: "hidden", sheet, facts: {} });
  account.questions.push({ code: "hidden", sheet, facts: {}, proposals: [] });
  return [];
}

/** Says which lines are no counts: those that add up others, heads that come again and remarks; and what is hidden. */
export function tellOtherLines(tables: readonly SurveyTable[], { notes }: OpenAccount): void {
  for (const [sheet, own] of grouped(tables, (table) => table.sheet))
    for (const [code, rows] of [
      ["totalLines", own.flatMap(({ totals }) => totals.map(({ sheetRow }) => sheetRow))],
      ["headsAgain", own.flatMap(({ headsAgain }) => headsAgain)],
      ["remarkLines", own.flatMap(({ remarks }) => remarks)],
    ] as const)
      if (rows.length > 0) notes.push({ code, sheet, facts: { lines: new Set(rows).size } });
  for (const table of tables) notes.push(...hiddenNotes(table));
}

/** Rows and columns that nobody sees and that were read like the others. */
function hiddenNotes({ sheet, shape, marks, columns, indexOfSheetRow }: SurveyTable): ReadingNote[] {
  if (!marks || shape.id === "settings") return [];
  const rows = marks.hiddenRows.filter((row) => indexOfSheetRow(row) !== undefined);
  const hidden = columns.filter(({ sheetColumn }) => marks.hiddenColumns.includes(sheetColumn));
  const notes: ReadingNote[] = [];
  if (rows.length > 0)
    notes.push({
      code: "hiddenRows",
      sheet,
      facts: { lines: rows.length, sheets: [`${sheet}!${stretches(rows)}`] },
    });
  if (hidden.length > 0)
    notes.push({ code: "hiddenColumns", sheet, facts: { columns: hidden.map(({ column }) => column.id) } });
  return notes;
}

/** Row numbers as a spreadsheet writes whole rows: "4:6, 9:9". */
function stretches(rows: readonly number[]): string {
  const found: [first: number, last: number][] = [];
  for (const row of rows) {
    const open = found.at(-1);
    if (open?.[1] === row - 1) open[1] = row;
    else found.push([row, row]);
  }
  return found.map((stretch) => stretch.join(":")).join(", ");
}

/** The winter that most days under heads of dates tell, for heads that name years; undefined without such days. */
export function winterOfHeads(areas: readonly SheetArea[]): number | undefined {
  const winters = new Map<number, number>();
  for (const { values } of areas) {
    const top = values.slice(0, 30);
    const index = top.findIndex((row) =>
      row.some((cell) => typeof cell === "string" && DATE_WORDS.has(headWords(cell).words)),
    );
    if (index < 0) continue;
    const at = values[index].findIndex(
      (cell) => typeof cell === "string" && DATE_WORDS.has(headWords(cell).words),
    );
    for (let row = index + 1; row < Math.min(values.length, index + 1000); row++) {
      const cell = values[row][at];
      const date = typeof cell === "string" ? textDate(cell) : undefined;
      const serial = typeof cell === "number" ? cell : date && "serial" in date ? date.serial : NaN;
      if (isPlausibleDay(serial)) winters.set(winterOf(serial), (winters.get(winterOf(serial)) ?? 0) + 1);
    }
  }
  return [...winters].sort((a, b) => b[1] - a[1])[0]?.[0];
}

const DATE_WORDS = new Set(["date", "fecha", "counted on", "day", "fecha de conteo", "date de comptage"]);

/** Names under heads of blocks, as they are compared, for lines that hold nothing but a block's name. */
export function blocksNamed(areas: readonly SheetArea[]): ReadonlySet<string> {
  const names = new Set<string>();
  for (const { values } of areas) {
    const index = values
      .slice(0, 10)
      .findIndex((row) => typeof row[0] === "string" && BLOCK_WORDS.has(headWords(row[0]).words));
    if (index < 0) continue;
    for (const row of values.slice(index + 1, index + 500))
      if (typeof row[0] === "string" && row.length > 1 && !isBlank(row[1])) names.add(wordKey(row[0]));
  }
  return names;
}

const BLOCK_WORDS = new Set(["block", "field", "cuartel", "parcelle", "lot", "bloque"]);

const METRIC_UNITS = new Set(["m", "cm", "mm", "kg", "g", "t"]);
const US_UNITS = new Set(["ft", "in", "lb", "oz", "ton"]);

function systemOf(
  found: readonly { area: SheetArea; place: FoundTable }[],
  setting: number | string | undefined,
): UnitSystem {
  if (setting === "US" || setting === "metric") return setting;
  let metric = 0;
  let us = 0;
  for (const { place } of found)
    for (const { id } of place.units?.values() ?? []) {
      if (METRIC_UNITS.has(id)) metric++;
      if (US_UNITS.has(id)) us++;
    }
  return metric > us ? "metric" : "US";
}

/** A table, or a piece of one, whose season is not told yet. */
export type TableRows = Omit<SurveyTable, "winter">;

/** How the rows and vines of a table are labelled. */
export function keyLabels({ columns }: Pick<SurveyTable, "columns">): ReadonlyMap<string, KeyLabels> {
  const isLetter = (cell: CellValue | undefined) =>
    typeof cell === "string" && /^[a-z]{1,2}$/i.test(cell.trim());
  return new Map(
    columns.flatMap(({ column: { id }, raw, states }) => {
      if (id !== "row" && id !== "vine") return [];
      const cells = Array.from({ length: raw.length }, (_, i) => raw.at(i));
      const areLetters = cells
        .slice(0, ROWS_TO_TELL)
        .some((cell, i) => states[i] === CELL.usable && isLetter(cell));
      return [[id, { areLetters, naming: namingLetters(cells) }] as const];
    }),
  );
}

/** Rows that tell whether a key's labels are letters. */
const ROWS_TO_TELL = 100;

/** The table that was found in a sheet. */
function readTable(
  area: SheetArea,
  place: FoundTable,
  system: UnitSystem,
  words: Words,
  odd: OddCells,
): SurveyTable {
  const rows = readRows(area, place, system, words, odd);
  const { winter } = place;
  return winter === undefined
    ? { ...rows, winter: winterOfTable(rows) }
    : { ...rows, winter, isWinterTold: true };
}

/** The rows of the table that was found in a sheet. */
export function readRows(
  area: SheetArea,
  place: FoundTable,
  system: UnitSystem,
  words: Words,
  odd: OddCells,
): TableRows {
  const sheetRowOf = place.sheetRowOf ?? ((index) => area.firstRow + index);
  const sheetColumnOf = place.sheetColumnOf ?? ((position) => area.firstColumn + position);
  const { rows, totals, moved, headsAgain, remarks } = dataRows(area, place, sheetRowOf);
  const sheetRows = new Int32Array(rows.length);
  for (let i = 0; i < sheetRows.length; i++) sheetRows[i] = sheetRowOf(rows[i]);
  const positions = new Map<string, number>([...place.columns].map(([{ id }, position]) => [id, position]));
  const lines = rows.map((index) => area.values[index]);
  const headers = area.values[place.headerIndex];
  const columns: SurveyColumn[] = [];
  const noNumbers = new Float64Array(rows.length).fill(NaN);
  for (const [column, position] of place.columns) {
    const header = String(headers[position] ?? "").trim();
    const raw = cellsAt(lines, position);
    const named = place.units?.get(column);
    const unit = named && holdsUnit(column.kind, named) ? named : columnUnit(column.kind, header, system);
    const base = {
      column,
      header,
      sheetColumn: sheetColumnOf(position),
      unit,
      perUnit: unit?.perUnit ?? 1,
      raw,
    };
    const { labels } = place;
    const cells = readCells(column, raw, { sheet: area.sheet, unit, odd, labels }, words, noNumbers);
    columns.push(withoutMoved({ ...base, ...cells, usable: cells.numbers }, moved));
  }
  columns.sort((a, b) => place.shape.columns.indexOf(a.column) - place.shape.columns.indexOf(b.column));
  const known = new Set([...place.columns.values(), ...place.repeated]);
  const heading = (position: number) => ({
    header: String(headers[position]).trim(),
    sheetColumn: sheetColumnOf(position),
  });
  return {
    shape: place.shape,
    sheet: area.sheet,
    headerRow: sheetRowOf(place.headerIndex),
    rowCount: rows.length,
    sheetRow: (index) => sheetRows[index],
    indexOfSheetRow: (sheetRow) => indexIn(sheetRows, sheetRow),
    ...columnsById(columns),
    totals,
    headsAgain,
    remarks,
    otherColumns: headers.flatMap((cell, position) =>
      typeof cell === "string" && !isBlank(cell) && !known.has(position)
        ? [{ ...heading(position), numbers: numbersAt(lines, position) }]
        : [],
    ),
    repeatedHeaders: place.repeated.map(heading),
    marks: area.marks,
    formulaAt: (index, column) => area.formulaAt(rows[index], positions.get(column.column.id) ?? -1),
  };
}

/** Tells of the rows of an area which of them have more cells than heads; none but in text files. */
function movedRows(
  { isText, values }: SheetArea,
  { headerIndex, hasMoved }: FoundTable,
): (index: number) => boolean {
  if (!isText) return () => false;
  const heads = lastFilled(values[headerIndex]);
  return hasMoved ?? ((index) => hasMovedCells(values[index], heads));
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
  const cellOf = (sheetColumn: number) => {
    const cell = row.values[sheetColumn - row.firstColumn] ?? null;
    return typeof cell === "string" ? readOnce(cell) : cell;
  };
  const noNumbers = new Float64Array(1).fill(NaN);
  const odd = new OddCells({});
  const columns = table.columns.map((column): SurveyColumn => {
    const raw = [cellOf(column.sheetColumn)];
    const place = { sheet: table.sheet, unit: column.unit, odd, labels: keyLabels(table) };
    const cells = readCells(column.column, raw, place, season.words, noNumbers);
    const counter = table.column("countedBy");
    const own = counter && column.ofCounters?.get(season.words.codeOf(cellOf(counter.sheetColumn)));
    if (own && typeof raw[0] === "number") cells.numbers[0] = raw[0] * own.perUnit;
    return { ...column, raw, ...cells, usable: cells.numbers };
  });
  if (columns.every((column) => column.states[0] === CELL.blank)) return undefined;
  return judgedTable({
    ...table,
    rowCount: 1,
    sheetRow: () => row.row,
    indexOfSheetRow: (sheetRow: number) => (sheetRow === row.row ? 0 : undefined),
    ...columnsById(columns),
    totals: [],
    headsAgain: [],
    remarks: [],
    formulaAt: () => null,
  });
}

function cellsAt(lines: readonly (readonly CellValue[])[], position: number): CellValue[] {
  const cells = new Array<CellValue>(lines.length);
  for (let i = 0; i < lines.length; i++) cells[i] = lines[i][position] ?? null;
  return cells;
}

function numbersAt(lines: readonly (readonly CellValue[])[], position: number): Float64Array {
  const numbers = new Float64Array(lines.length);
  for (let i = 0; i < lines.length; i++) {
    const cell = lines[i][position];
    numbers[i] = typeof cell === "number" ? cell : NaN;
  }
  return numbers;
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
  return yearOfName(sheet);
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

function dataRows(
  area: SheetArea,
  place: FoundTable,
  sheetRowOf: (index: number) => number,
): { rows: number[]; totals: TotalRow[]; moved: number[]; headsAgain: number[]; remarks: number[] } {
  const hasMoved = movedRows(area, place);
  const at = (id: string) => [...place.columns].find(([column]) => column.id === id)?.[1] ?? -1;
  const side = at("side");
  const cordon = at("cordon");
  const counted = at("positions");
  const isSum = (cells: readonly CellValue[]) => {
    const word = side < 0 ? undefined : cells[side];
    if (typeof word === "string" && word.length > 0) return word.length > 2 && sumWord(word);
    return side >= 0 && cordon >= 0 && isBlank(cells[cordon]) && Number(cells[counted] ?? 0) > 60;
  };
  const positions = [...place.columns.values()];
  const keys = [...place.columns].filter(([column]) => column.id === "vine");
  const texts = [...place.columns].filter(([column]) => column.kind === "text" && column.id !== "note");
  const rows: number[] = [];
  const totals: TotalRow[] = [];
  const moved: number[] = [];
  const headsAgain: number[] = [];
  const remarks: number[] = [];
  let blankBefore = false;
  for (let index = place.headerIndex + 1; index < area.values.length; index++) {
    const cells = area.values[index];
    if (hasMoved(index)) {
      moved.push(rows.length);
      rows.push(index);
      continue;
    }
    const filled = filledCells(cells, positions);
    if (filled === 0) {
      blankBefore = true;
      continue;
    }
    if (isSum(cells)) {
      totals.push(totalRow(area, index, place, rows.length, sheetRowOf));
      continue;
    }
    const placed = keys.some(([, position]) => typeof cells[position] === "number");
    if (!placed && isTotal(area, index, place, texts, keys.length > 0)) {
      totals.push(totalRow(area, index, place, rows.length, sheetRowOf));
      continue;
    }
    if (!placed && isHeaderAgain(cells, area.values[place.headerIndex], place)) {
      headsAgain.push(sheetRowOf(index));
      continue;
    }
    const isApart = blankBefore && filled === 1 && isRemark(cells, positions, rows.length);
    if (!placed && (isApart || (keys.length > 0 && isFoot(area, index, place, positions, rows)))) {
      remarks.push(sheetRowOf(index));
      continue;
    }
    blankBefore = false;
    rows.push(index);
  }
  return { rows, totals, moved, headsAgain, remarks };
}

const sums = new Map<string, boolean>();

/** True for a word in the Side column that means all sides together. */
function sumWord(word: string): boolean {
  let known = sums.get(word);
  if (known === undefined) sums.set(word, (known = meansAll(word)));
  return known;
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
      return startsAsTotal(String(cells[position] ?? ""));
    });
  const note = [...place.columns].find(([column]) => column.id === "note")?.[1];
  if (cells.some((cell, at) => at !== note && typeof cell === "string" && isTotalWord(cell))) return true;
  if (texts.some(([, position]) => !isBlank(cells[position]))) return false;
  return [...place.columns.values()].some((position) =>
    /^=.*\b(SUM|SUBTOTAL|AVERAGE|AGGREGATE|COUNT)\w*\(/i.test(area.formulaAt(index, position) ?? ""),
  );
}

function totalRow(
  area: SheetArea,
  index: number,
  place: FoundTable,
  rowsBefore: number,
  sheetRowOf: (index: number) => number,
): TotalRow {
  return {
    sheetRow: sheetRowOf(index),
    rowsBefore,
    cells: [...place.columns].flatMap(([column, position]) => {
      const value = area.values[index][position] ?? null;
      if (isBlank(value)) return [];
      return [{ columnId: column.id, value, formula: area.formulaAt(index, position) }];
    }),
  };
}

function isHeaderAgain(cells: readonly CellValue[], heads: readonly CellValue[], place: FoundTable): boolean {
  let same = 0;
  for (const [column, position] of place.columns) {
    const cell = cells[position];
    if (typeof cell !== "string") continue;
    const plain = plainHeader(cell);
    if (
      plain === plainHeader(String(heads[position] ?? "")) ||
      LANGUAGES.some((language) => plainHeader(column.header[language]) === plain) ||
      column.also?.includes(plain)
    )
      same++;
  }
  return same >= 3;
}

/**
 * True in a table of vines for the line before a blank one, heads that come again or the end that holds words alone, none of a vine and the
 * first of them nowhere above: what a printed page says at its foot, and no row that somebody began.
 */
function isFoot(
  { values }: SheetArea,
  index: number,
  place: FoundTable,
  positions: readonly number[],
  rows: readonly number[],
): boolean {
  const next = values.at(index + 1);
  if (rows.length === 0) return false;
  if (next && filledCells(next, positions) > 0 && !isHeaderAgain(next, values[place.headerIndex], place))
    return false;
  const [first] = positions.filter((position) => !isBlank(values[index][position])).sort((a, b) => a - b);
  if (rows.some((row) => values[row][first] === values[index][first])) return false;
  return [...place.columns].every(([{ id }, position]) => {
    const cell = values[index][position];
    if (isBlank(cell)) return true;
    return typeof cell === "string" && textNumber(cell) === undefined && !OF_A_VINE.has(id);
  });
}

/** Columns that a row of a vine fills first. */
const OF_A_VINE = new Set(["vine", "side", "cordon"]);

function isRemark(cells: readonly CellValue[], positions: readonly number[], rowsBefore: number): boolean {
  const only = positions.map((position) => cells[position]).find((value) => !isBlank(value));
  return rowsBefore > 0 && typeof only === "string" && textNumber(only) === undefined;
}
