import { grouped } from "../../domain/grouped";
import type { SheetArea } from "../../survey/reading/sheetArea";
import { isBlank, isCellError, type CellValue } from "../../survey/sheets/cell";
import { say, type Language } from "../../texts/language";
import { RESULT_SHEET_TEXTS } from "../../texts/resultSheets";
import { cellName } from "../address";
import { movableFormula } from "../file/movableFormula";
import { layOutOwnSheet, type OwnSheetLayout, type OwnValue } from "../ownSheet";
import type {
  CarriedCell,
  CellExtras,
  CellPlace,
  CellWrite,
  OwnSheet,
  OwnSheetWritten,
  SurveyWorkbook,
} from "../surveyWorkbook";

/** What came of a sheet that was written again. */
export interface RewrittenSheet extends OwnSheetWritten {
  /**
   * What a person had written on cells that have no place any more, or put on them as notes and comments, with the cell
   * where it stood: "K7 Seen: yes".
   */
  readonly lost: readonly string[];
  /** Whether rows moved on a host that shows no notes, so that notes did not go along. */
  readonly leavesNotes?: boolean;
  /** Cells with colours or formats of a person that have no place any more: "A7:K7". */
  readonly lostLooks: readonly string[];
}

/** The sentences about what has no place any more on a sheet that was written again; none where nothing was lost. */
export function lostSentences(
  sheet: string,
  { lost, lostLooks }: Pick<RewrittenSheet, "lost" | "lostLooks">,
  language: Language,
): string[] {
  const { remarksLost, looksLost } = RESULT_SHEET_TEXTS;
  return [
    ...(lost.length > 0 ? [say(remarksLost, language, { sheet, remarks: lost.join("; ") })] : []),
    ...(lostLooks.length > 0 ? [say(looksLost, language, { sheet, cells: lostLooks.join(", ") })] : []),
  ];
}

/** The sentence about notes that did not go along with their rows; "" where none could be left behind. */
export function leftSentence(
  sheet: string,
  { leavesNotes }: Pick<RewrittenSheet, "leavesNotes">,
  language: Language,
): string {
  return leavesNotes ? say(RESULT_SHEET_TEXTS.notesLeft, language, { sheet }) : "";
}

/** A column that a person filled on a sheet of ours: one that was added, or one that is left blank for it. */
interface FilledColumn {
  readonly head: string;
  /** Where it stood and where it will stand, from 0. */
  readonly column: number;
  readonly to: number;
}

/** The sheet as it stands, seen as the table that it was. */
interface FormerTable {
  readonly area: SheetArea;
  /** Index of the line of heads; -1 where none is found. */
  readonly heads: number;
  /** Index behind the last row of the table. */
  readonly end: number;
  readonly own: readonly number[];
  readonly filled: readonly FilledColumn[];
  /** Rows of the content that are about the same things as the rows of the table; undefined for one that is gone. */
  readonly places: readonly (number | undefined)[];
}

/**
 * Writes a sheet of ours, as `writeOwnSheet` does. What a person added to the one that stands there is carried over:
 * columns, entries, notes, comments, colours and number formats go to the row about the same thing, by `about` of the
 * content; what stands outside the table stays where it is. What has no place any more is listed.
 *
 * @param addsColumns false where the content has a person's columns already
 */
export async function rewriteOwnSheet(
  workbook: SurveyWorkbook,
  content: OwnSheet,
  addsColumns = true,
): Promise<RewrittenSheet> {
  const there = (await workbook.sheetNames()).some(
    (name) => name.toLowerCase() === content.sheet.toLowerCase(),
  );
  if (!there || !(await workbook.isOwnSheet(content.sheet)))
    return { ...(await workbook.writeOwnSheet(content)), lost: [], lostLooks: [] };
  const former = formerTable(content, await workbook.readSheet(content.sheet), addsColumns);
  const extras = (await workbook.cellExtras?.(content.sheet)) ?? [];
  const { wider, formulas, lost } = withRemarks(content, former);
  const beside = cellsBeside(former, wider);
  const { carriedCells, lostNotes, lostLooks } = withExtras(wider, former, extras);
  const written = await workbook.writeOwnSheet({ ...wider, carriedCells });
  const again = await cellsToPutBack(workbook, content.sheet, beside.stay);
  if (formulas.length + again.length > 0) await workbook.writeCells(content.sheet, [...formulas, ...again]);
  return {
    ...written,
    lost: [...lost, ...beside.lost, ...(written.lostNotes?.map(noteOf) ?? lostNotes)],
    lostLooks,
    leavesNotes: workbook.hidesNotes === true && movesRows(former, wider),
  };
}

function formerTable(content: OwnSheet, area: SheetArea, addsColumns: boolean): FormerTable {
  const heads = area.values.findIndex((row) => isHeadRow(row, area, content));
  if (heads < 0) return { area, heads, end: 0, own: [], filled: [], places: [] };
  const { own, added, entries } = columnsOf(area.values[heads], area, content);
  const filled = addsColumns ? [...entries, ...added] : [];
  const isBlankRow = (_values: unknown, index: number) =>
    index > heads &&
    [...own, ...added.map(({ column }) => column)].every((column) => !isFilled(area, index, column));
  const blank = area.values.findIndex(isBlankRow);
  const end = blank < 0 ? area.values.length : blank;
  const rows = area.values.slice(heads + 1, end).map((row) => own.map((column) => row[column] ?? null));
  return { area, heads, end, own, filled, places: placesOf(content, rows) };
}

/** The content with what a person wrote into the table. */
function withRemarks(
  content: OwnSheet,
  { area, heads, end, filled, places }: FormerTable,
): { wider: OwnSheet; formulas: CellWrite[]; lost: string[] } {
  if (filled.length === 0) return { wider: content, formulas: [], lost: [] };
  const width = content.headers.length;
  const { headerRow } = layOutOwnSheet(content);
  const newRows = content.rows.map((row) => [...row, ...new Array<OwnValue>(width - row.length).fill(null)]);
  const formulas: CellWrite[] = [];
  const lost: string[] = [];
  for (let index = heads + 1; index < end; index++) {
    const to = places[index - heads - 1];
    for (const { head, column, to: newColumn } of filled) {
      if (!isFilled(area, index, column)) continue;
      const formula = area.formulaAt(index, column);
      const shown = shownValue(area.values[index][column] ?? null);
      const [row, wasColumn] = [area.firstRow + index, area.firstColumn + column];
      if (to === undefined) {
        lost.push(`${cellName(row, wasColumn)} ${head}: ${formula ?? shown}`);
        continue;
      }
      newRows[to][newColumn] = shown;
      const place = { row: headerRow + 1 + to, column: newColumn + 1 };
      if (formula !== null)
        formulas.push({
          ...place,
          formula: movableFormula(formula)(place.row - row, place.column - wasColumn),
        });
    }
  }
  const added = filled.filter(({ to }) => to >= width);
  const taken = new Set(content.headers.map((head) => head.toLowerCase()));
  return {
    wider: {
      ...content,
      carriedColumns: area.firstColumn + Math.max(...filled.map(({ column }) => column)),
      headers: [...content.headers, ...added.map(({ head }) => freeHead(head, taken))],
      rows: newRows.map((row) => Array.from({ length: width + added.length }, (_, at) => row[at] ?? null)),
    },
    formulas,
    lost,
  };
}

/** What a person wrote outside the table: it stays where it stands, unless the new table comes over it. */
function cellsBeside(former: FormerTable, content: OwnSheet): { stay: CellWrite[]; lost: string[] } {
  const stay: CellWrite[] = [];
  const lost: string[] = [];
  const { area } = former;
  const layout = layOutOwnSheet(content);
  area.values.forEach((values, index) =>
    values.forEach((value, at) => {
      const place = { row: area.firstRow + index, column: area.firstColumn + at };
      if (!isFilled(area, index, at) || !isOutside(former, place)) return;
      const formula = area.formulaAt(index, at);
      const shown = shownValue(value);
      if (!staysOutside(layout, place))
        lost.push(`${cellName(place.row, place.column)}: ${formula ?? shown}`);
      else stay.push(formula === null ? { ...place, value: shown } : { ...place, formula });
    }),
  );
  return { stay, lost };
}

/** Those of the cells that a host took away with the former table. */
async function cellsToPutBack(
  workbook: SurveyWorkbook,
  sheet: string,
  cells: readonly CellWrite[],
): Promise<readonly CellWrite[]> {
  if (cells.length === 0) return [];
  const now = await workbook.readSheet(sheet);
  return cells.filter(({ row, column }) => {
    const [r, c] = [row - now.firstRow, column - now.firstColumn];
    return isBlank(now.values[r]?.[c] ?? null) && now.formulaAt(r, c) === null;
  });
}

/** Whether a row of the former table is gone, or stands elsewhere now. */
function movesRows({ area, heads, places }: FormerTable, content: OwnSheet): boolean {
  const moved = layOutOwnSheet(content).headerRow - area.firstRow - heads;
  return places.some((to, at) => to === undefined || to + moved !== at);
}

/** Where notes, comments and looks go. */
function withExtras(
  content: OwnSheet,
  former: FormerTable,
  extras: readonly CellExtras[],
): { carriedCells: CarriedCell[]; lostNotes: string[]; lostLooks: string[] } {
  const { area, heads, end, own, filled } = former;
  const layout = layOutOwnSheet(content);
  const newColumns = new Map([
    ...own.map((column, at) => [column, at] as const),
    ...filled.map(({ column, to }) => [column, to] as const),
  ]);
  const newColumn = (column: number) => newColumns.get(column - area.firstColumn);
  const isGiven = ({ row, column, format, dress }: CellExtras) => {
    const at = row - area.firstRow > heads ? newColumn(column) : undefined;
    const ours = (at === undefined ? undefined : content.columns?.[at]?.format) ?? "General";
    return dress !== "" || (format !== "General" && format !== ours);
  };
  const placeOf = (place: CellPlace): CellPlace | undefined => {
    if (isOutside(former, place)) return staysOutside(layout, place) ? place : undefined;
    const index = place.row - area.firstRow;
    if (index < heads) return place.row < layout.headerRow ? place : undefined;
    const column = newColumn(place.column);
    const at = index === heads ? -1 : former.places[index - heads - 1];
    return column === undefined || at === undefined
      ? undefined
      : { row: layout.headerRow + 1 + at, column: column + 1 };
  };
  const whole = looksOfColumns(former, extras.filter(isGiven));
  const carriedCells: CarriedCell[] = [];
  const gone: CellExtras[] = [];
  for (const extra of extras) {
    const { row, column, note } = extra;
    const to = placeOf(extra);
    if (!isGiven(extra) && note === "") continue;
    if (to) carriedCells.push({ from: { row, column }, to, look: isGiven(extra), note: note !== "" });
    else gone.push(extra);
  }
  const dressed = new Set(
    carriedCells.filter(({ look }) => look).map(({ to }) => cellName(to.row, to.column)),
  );
  for (const [column, first] of whole) {
    const at = newColumn(column);
    if (at === undefined) continue;
    content.rows.forEach((_row, index) => {
      const to = { row: layout.headerRow + 1 + index, column: at + 1 };
      if (!dressed.has(cellName(to.row, to.column)))
        carriedCells.push({ from: first, to, look: true, note: false });
    });
  }
  const isOfColumn = ({ row, column }: CellExtras) =>
    whole.has(column) && row - area.firstRow > heads && row - area.firstRow < end;
  return {
    carriedCells,
    lostNotes: gone.filter(({ note }) => note !== "").map(noteOf),
    lostLooks: areasOf(gone.filter((extra) => isGiven(extra) && !isOfColumn(extra))),
  };
}

/** Columns whose every cell looks alike, with their first cell: new rows look so too. */
function looksOfColumns(
  { area, heads, end }: FormerTable,
  given: readonly CellExtras[],
): ReadonlyMap<number, CellPlace> {
  const inTable = ({ row }: CellExtras) => row - area.firstRow > heads && row - area.firstRow < end;
  const rows = end - heads - 1;
  return new Map(
    [
      ...grouped(
        given.filter(inTable),
        ({ column, format, dress }) => `${column} ${format} ${dress}`,
      ).values(),
    ]
      .filter((cells) => cells.length === rows && rows > 1)
      .map((cells) => [cells[0].column, cells[0]]),
  );
}

/** Beside the title, under no head of a column, or below the table. */
function isOutside({ area, heads, end }: FormerTable, { row, column }: CellPlace): boolean {
  const index = row - area.firstRow;
  if (heads < 0 || index >= end) return true;
  if (index < heads) return column > 1;
  return isBlank(area.values[heads][column - area.firstColumn] ?? null);
}

/** True where the new sheet leaves such a cell free. */
function staysOutside(
  { headerRow, values, columnCount }: OwnSheetLayout,
  { row, column }: CellPlace,
): boolean {
  return row < headerRow ? column > 1 : column > columnCount || row > Math.max(values.length, headerRow + 1);
}

/** Cells that stand in a row beside each other, as one address. */
function areasOf(cells: readonly CellPlace[]): string[] {
  const runs: { row: number; first: number; last: number }[] = [];
  const inOrder = [...cells].sort((one, other) => one.row - other.row || one.column - other.column);
  for (const { row, column } of inOrder) {
    const run = runs[runs.length - 1];
    if (run && run.row === row && run.last === column - 1) run.last = column;
    else runs.push({ row, first: column, last: column });
  }
  return runs.map(({ row, first, last }) =>
    first === last ? cellName(row, first) : `${cellName(row, first)}:${cellName(row, last)}`,
  );
}

function noteOf({ row, column, note }: Pick<CellExtras, "row" | "column" | "note">): string {
  return `${cellName(row, column)} ${note}`;
}

function shownValue(value: CellValue): OwnValue {
  return isCellError(value) ? value.error : value;
}

function isFilled(former: SheetArea, row: number, column: number): boolean {
  return !isBlank(former.values[row][column] ?? null) || former.formulaAt(row, column) !== null;
}

/** A head that no other column has: a table has none twice. */
function freeHead(head: string, taken: Set<string>): string {
  let free = head;
  for (let n = 2; taken.has(free.toLowerCase()); n++) free = `${head} ${n}`;
  taken.add(free.toLowerCase());
  return free;
}

/**
 * The line of heads: the first one that holds most of the content's heads, or, where the sheet was written in another
 * language or with other units, the line where they would stand.
 */
function isHeadRow(row: readonly CellValue[], former: SheetArea, content: OwnSheet): boolean {
  const known = new Set(row.map((value) => String(value ?? "").toLowerCase()));
  const found = content.headers.filter((head) => known.has(head.toLowerCase())).length;
  if (2 * found >= content.headers.length) return true;
  const filled = row.filter((value) => !isBlank(value)).length;
  return former.firstColumn === 1 && filled >= content.headers.length && content.headers.length > 1;
}

/** Our columns as they stood, by their heads or else by their places, and those that a person added. */
function columnsOf(
  row: readonly CellValue[],
  former: SheetArea,
  { headers, about }: OwnSheet,
): { own: number[]; added: FilledColumn[]; entries: FilledColumn[] } {
  const heads = row.map((value) => String(value ?? "").trim());
  const byHead = headers.map((head) => heads.findIndex((one) => one.toLowerCase() === head.toLowerCase()));
  const isSame = byHead.every((column) => column >= 0);
  const own = isSame ? byHead : headers.map((_head, at) => at + 1 - former.firstColumn);
  const kinds = new Set(headers.map(kindOf));
  const added: FilledColumn[] = [];
  heads.forEach((head, column) => {
    if (head === "" || own.includes(column) || kinds.has(kindOf(head))) return;
    added.push({ head, column, to: headers.length + added.length });
  });
  const entries = (about?.entries ?? []).map((head) => {
    const to = headers.indexOf(head);
    return { head, column: own[to], to };
  });
  return { own, added, entries };
}

/** Heads that differ in their numbers only are of one kind: those of a map have the numbers of its vines. */
function kindOf(head: string): string {
  return head.toLowerCase().replace(/\d+/g, "#");
}

/** For each former row the new one about the same thing; of several alike the first goes to the first. */
function placesOf(content: OwnSheet, former: readonly (readonly CellValue[])[]): (number | undefined)[] {
  const { headers, rows } = content;
  const about = content.about ?? { thing: headers };
  const exact = [...about.thing, ...(about.kind ?? []), ...(about.cell ?? [])];
  const passes = about.cell ? [exact, [...about.thing, ...(about.kind ?? [])]] : [exact];
  const places: (number | undefined)[] = new Array<undefined>(former.length).fill(undefined);
  const taken = new Set<number>();
  passes.forEach((names, pass) => {
    const columns = names.map((name) => headers.indexOf(name));
    const things = about.thing.map((name) => headers.indexOf(name));
    const keyOf = (row: readonly CellValue[]) =>
      pass > 0 && things.every((column) => isBlank(row[column] ?? null))
        ? undefined
        : JSON.stringify(columns.map((column) => String(row[column] ?? "")));
    const free = new Map<string, number[]>();
    rows.forEach((row, at) => {
      const key = keyOf(row);
      if (taken.has(at) || key === undefined) return;
      free.set(key, [...(free.get(key) ?? []), at]);
    });
    former.forEach((row, at) => {
      const key = keyOf(row);
      if (places[at] !== undefined || key === undefined) return;
      const to = free.get(key)?.shift();
      if (to === undefined) return;
      places[at] = to;
      taken.add(to);
    });
  });
  return places;
}
