import type { SheetArea } from "../../survey/reading/sheetArea";
import { isBlank, isCellError, type CellValue } from "../../survey/sheets/cell";
import { cellName } from "../address";
import { movableFormula } from "../file/movableFormula";
import { layOutOwnSheet, type OwnValue } from "../ownSheet";
import type { CellWrite, OwnSheet, OwnSheetWritten, SurveyWorkbook } from "../surveyWorkbook";

/** What came of a sheet that was written again. */
export interface RewrittenSheet extends OwnSheetWritten {
  /** What a person had written beside rows that the sheet no longer has, with the cell where it stood: "K7 Seen: yes". */
  readonly lost: readonly string[];
}

/** A column that a person filled on a sheet of ours: one that was added, or one that is left blank for it. */
interface FilledColumn {
  readonly head: string;
  /** Where it stood and where it will stand, from 0. */
  readonly column: number;
  readonly to: number;
}

/**
 * Writes a sheet of ours, as `writeOwnSheet` does. What a person added to the one that stands there is carried
 * over: each entry goes to the row about the same thing, by `about` of the content, and what has no row any more is
 * listed.
 */
export async function rewriteOwnSheet(workbook: SurveyWorkbook, content: OwnSheet): Promise<RewrittenSheet> {
  const there = (await workbook.sheetNames()).some(
    (name) => name.toLowerCase() === content.sheet.toLowerCase(),
  );
  if (!there || !(await workbook.isOwnSheet(content.sheet)))
    return { ...(await workbook.writeOwnSheet(content)), lost: [] };
  const former = await workbook.readSheet(content.sheet);
  const { wider, formulas, lost } = withRemarks(content, former);
  const written = await workbook.writeOwnSheet(wider);
  if (formulas.length > 0) await workbook.writeCells(content.sheet, formulas);
  return { ...written, lost };
}

function withRemarks(
  content: OwnSheet,
  former: SheetArea,
): { wider: OwnSheet; formulas: CellWrite[]; lost: string[] } {
  const heads = former.values.findIndex((row) => isHeadRow(row, former, content));
  if (heads < 0) return { wider: content, formulas: [], lost: [] };
  const { own, added, filled } = columnsOf(former.values[heads], former, content);
  if (filled.length === 0) return { wider: content, formulas: [], lost: [] };
  const rows = former.values
    .map((values, index) => ({ values, index }))
    .slice(heads + 1)
    .filter(({ index }) => filled.some(({ column }) => isFilled(former, index, column)));
  const columns = own.map((column) => (values: readonly CellValue[]) => values[column] ?? null);
  const places = placesOf(
    content,
    former.values.slice(heads + 1).map((values) => columns.map((cell) => cell(values))),
  );
  const width = content.headers.length;
  const { headerRow } = layOutOwnSheet(content);
  const newRows = content.rows.map((row) => [...row, ...new Array<OwnValue>(width - row.length).fill(null)]);
  const formulas: CellWrite[] = [];
  const lost: string[] = [];
  for (const { values, index } of rows) {
    const to = places[index - heads - 1];
    filled.forEach(({ head, column, to: newColumn }) => {
      const value = values[column] ?? null;
      if (!isFilled(former, index, column)) return;
      const formula = former.formulaAt(index, column);
      const shown = isCellError(value) ? value.error : value;
      const [row, wasColumn] = [former.firstRow + index, former.firstColumn + column];
      if (to === undefined) return void lost.push(`${cellName(row, wasColumn)} ${head}: ${formula ?? shown}`);
      newRows[to][newColumn] = shown;
      const place = { row: headerRow + 1 + to, column: newColumn + 1 };
      if (formula !== null)
        formulas.push({
          ...place,
          formula: movableFormula(formula)(place.row - row, place.column - wasColumn),
        });
    });
  }
  const taken = new Set(content.headers.map((head) => head.toLowerCase()));
  return {
    wider: {
      ...content,
      carriedColumns: former.firstColumn + Math.max(...filled.map(({ column }) => column)),
      headers: [...content.headers, ...added.map(({ head }) => freeHead(head, taken))],
      rows: newRows.map((row) => Array.from({ length: width + added.length }, (_, at) => row[at] ?? null)),
    },
    formulas,
    lost,
  };
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
): { own: number[]; added: FilledColumn[]; filled: FilledColumn[] } {
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
  return { own, added, filled: [...entries, ...added] };
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
