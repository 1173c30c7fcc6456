import { isBlank, isCellError, type CellValue } from "../../survey/sheets/cell";
import type { SheetArea } from "../../survey/reading/sheetArea";
import { rewriteOwnSheet } from "../actions/rewriteOwnSheet";
import { cellName, holdsCell } from "../address";
import type { FileCellWrite } from "../file/cellSplices";
import { FileWorkbook } from "../file/fileWorkbook";
import { isArrayFormula } from "../file/isArrayFormula";
import { insertedAreas, type RowStep } from "../file/movedReferences";
import { sheetNameOfFile } from "../file/openWorkbook";
import { DAYS_TO_1904 } from "../file/sheetRows";
import type { DeskWorkbook } from "./deskWorkbook";
import { loadWorkbook, type LoadedWorkbook } from "./loadWorkbook";
import { PAGE_LIMITS, type LoadedSheet } from "./readContent";
import { dressOf } from "./ownSheetData";
import type { PageChange } from "./pageChanges";
import { savedCsv } from "./savedCsv";
import { cellArea, styleAt, type Area } from "./sheetLook";

/** What was done on the page and no file takes over, and remarks of the file whose rows are not on the page any more. */
type NotKept = PageChange | "formulas" | "remarks" | "values";

/** A file made from what is on the page, and what of it no file could take over. */
export interface SavedCopy {
  readonly bytes: Uint8Array;
  /** What is not in the file, with the sheets where, for formulas the cells, and for remarks what they say. */
  readonly notKept: ReadonlyMap<NotKept, readonly string[]>;
}

/**
 * A copy of the file that is open on the page, with every cell that was changed there, tables grown by what was typed
 * below them, the sheets that the pane wrote and its small facts. Cells are spliced into the file's own parts: all else,
 * pictures, pivots, macros and comments among it, stays byte for byte what it was.
 */
export async function savedCopy(file: string, original: Uint8Array, desk: DeskWorkbook): Promise<SavedCopy> {
  await desk.calculated();
  const copy = await FileWorkbook.open(file, original);
  const followed = new Map<string, readonly RowStep[]>();
  for (const [sheet, steps] of desk.pageChanges.movedRows())
    if (await copy.moveRows(sheet, steps)) followed.set(sheet, steps);
  const loaded = await loadWorkbook(file, copy.bytes());
  const isOwn = (name: string) => desk.ownContents.has(name.toLowerCase());
  const known = new Set(["", ...loaded.styles.map(dressOf)]);
  const [asText, notTaken, dressed]: string[][] = [[], [], []];
  const areas = new Map<string, SheetArea>();
  for (const { name } of loaded.sheets)
    if (!isOwn(name) && (await desk.sheetNames()).includes(name)) areas.set(name, await desk.readSheet(name));
  const knowsAll = loaded.sheets.every(({ name, rows }) =>
    rows.every(({ number, formulas }) =>
      [...(formulas ?? [])].every(([index, formula]) => {
        const area = areas.get(name);
        const value = area?.values[number - area.firstRow]?.[index + 1 - area.firstColumn];
        return !isCellError(value) || (value.error !== "#NAME?" && desk.isReadable(formula));
      }),
    ),
  );
  for (const name of await desk.sheetNames()) {
    const own = desk.ownContents.get(name.toLowerCase());
    const sheet = loaded.sheets.find((candidate) => candidate.name === name);
    if (own) {
      const { lost, lostLooks } = await rewriteOwnSheet(copy, own, false);
      notTaken.push(...[...lost, ...lostLooks].map((what) => `${name}!${what}`));
      if ((await desk.cellExtras(name)).some(({ dress }) => !known.has(dress))) dressed.push(name);
      const remarks = remarksOn(await desk.readSheet(name), await copy.readSheet(name));
      if (remarks.length > 0) await copy.writeCells(name, remarks);
    }
    if (!own && sheet) {
      for (const table of desk.tablesOf(name)) await copy.placeTable(name, table.name, table.area);
      const writes = changes(loaded, sheet, areas.get(name)!, desk, knowsAll).map((write) => {
        if (!("formula" in write) || desk.isReadable(write.formula)) return write;
        const { row, column, formula } = write;
        asText.push(`${name}!${cellName(row, column)}`);
        return { row, column, value: formula };
      });
      const looks = insertedLooks(areas.get(name)!, followed.get(name) ?? [], desk.styleOf(name));
      if (looks.length > 0) await copy.writeCells(name, looks);
      if (writes.length > 0) await copy.writeCells(name, writes);
    }
  }
  const flags = await desk.readFlags("");
  for (const key of (await copy.readFlags("")).keys())
    if (!flags.has(key)) await copy.writeFlag(key, undefined);
  for (const [key, value] of flags) await copy.writeFlag(key, value);
  const notKept = new Map<NotKept, string[]>(desk.pageChanges.list(loaded, followed, isOwn));
  if (asText.length > 0) notKept.set("formulas", asText);
  if (notTaken.length > 0) notKept.set("remarks", notTaken);
  if (dressed.length > 0) notKept.set("looks", [...(notKept.get("looks") ?? []), ...dressed]);
  return { bytes: copy.bytes(), notKept };
}

/** A csv file with what its sheet shows; no other sheet, and nothing beside the cells, has a place in it. */
export async function savedCsvCopy(
  file: string,
  original: Uint8Array,
  desk: DeskWorkbook,
): Promise<SavedCopy> {
  await desk.calculated();
  const sheet = sheetNameOfFile(file);
  const area = await desk.readSheet(sheet);
  const bytes = await savedCsv(file, original, area, desk.formatsOf(sheet), PAGE_LIMITS);
  const notKept = new Map<PageChange | "values", string[]>(
    desk.pageChanges.list(await loadWorkbook(file, original), new Map(), () => false),
  );
  notKept.delete("moved");
  const formulas = area.values.flatMap((cells, row) =>
    cells.flatMap((_, column) =>
      area.formulaAt(row, column) === null ? [] : [cellName(area.firstRow + row, area.firstColumn + column)],
    ),
  );
  if (formulas.length > 0) notKept.set("values", formulas);
  return { bytes, notKept };
}

/**
 * The cells that differ between a sheet of the file and the same sheet on the page. Where there is a formula that the
 * page cannot work out, a function that its engine does not know or a spelling that it does not read, errors of formulas
 * that nobody touched may come from there, and what the file says is kept.
 *
 * @param knowsAll false where there is such a formula
 */
function changes(
  { styles, startsIn1904 }: LoadedWorkbook,
  { name, rows, look }: LoadedSheet,
  now: SheetArea,
  desk: DeskWorkbook,
  knowsAll: boolean,
): FileCellWrite[] {
  const filled = desk.filledByFormula(name);
  const formatOf = desk.formatsOf(name);
  const before = new Map(rows.map((row) => [row.number, row]));
  const filledInFile = look?.filledByFormula ?? [];
  const writes: FileCellWrite[] = [];
  const lastRow = Math.max(now.firstRow + now.values.length - 1, rows[rows.length - 1]?.number ?? 0);
  const formulaAt = (row: number, column: number) =>
    row >= now.firstRow && row < now.firstRow + now.values.length
      ? now.formulaAt(row - now.firstRow, column - now.firstColumn)
      : null;
  const storedFormulaAt = (row: number, column: number): string | null => {
    const stored = before.get(row);
    const value = stored?.values[column - 1];
    const isTypedError = isCellError(value) && !filledInFile.some((each) => holds(each, row, column));
    return stored?.formulas?.get(column - 1) ?? (isTypedError ? `=${value.error}` : null);
  };
  const isChanged = ({ startRow, startColumn }: Area) =>
    formulaAt(startRow + 1, startColumn + 1) !== storedFormulaAt(startRow + 1, startColumn + 1);
  const isDynamicInFile = ({ startRow, startColumn }: Area) =>
    filledInFile.some(
      (each) => each.isDynamic && each.startRow === startRow && each.startColumn === startColumn,
    );
  const keepsItsSize = ({ isDynamic, startRow, startColumn }: (typeof filledInFile)[number]) =>
    !isDynamic ||
    (!knowsAll && isCellError(now.values[startRow + 1 - now.firstRow]?.[startColumn + 1 - now.firstColumn]));
  for (let row = 1; row <= lastRow; row++) {
    const stored = before.get(row);
    const values = now.values[row - now.firstRow];
    const width = Math.max(stored?.values.length ?? 0, values ? now.firstColumn - 1 + values.length : 0);
    for (let column = 1; column <= width; column++) {
      const value = values?.[column - now.firstColumn] ?? null;
      const formula = formulaAt(row, column);
      const oldValue = stored?.values[column - 1] ?? null;
      const isSameFormula = formula === storedFormulaAt(row, column);
      const area = filled.find((candidate) => holds(candidate, row, column));
      const inFile = filledInFile.find((candidate) => holds(candidate, row, column));
      const isWorkedOut = formula !== null || area !== undefined;
      const isResized = formula !== null && inFile?.isDynamic === true && area && !isSameArea(area, inFile);
      if (isSameFormula && !isResized && isSameResult(value, oldValue, isWorkedOut, startsIn1904)) continue;
      const isDoubtful = !knowsAll && isWorkedOut && isCellError(value) && !isCellError(oldValue);
      if (isSameFormula && isDoubtful) continue;
      if (formula === null && area && !inFile && !isChanged(area) && !isDynamicInFile(area)) continue;
      if (formula === null && inFile && !area && !isChanged(inFile) && keepsItsSize(inFile)) continue;
      const isTyped = formula === null ? !area : !isSameFormula;
      const format =
        isTyped && hasNoFormat(styles[styleAt(look, row - 1, column - 1)])
          ? formatOf(row, column)
          : undefined;
      const cell = { row, column, ...(format === undefined ? {} : { format }) };
      if (formula === null) writes.push({ ...cell, value });
      else {
        const isKeptArray = isSameFormula && inFile?.isDynamic === true;
        const fills =
          isKeptArray || !isSameFormula ? filledCells(formula, area, row, column, isKeptArray) : undefined;
        writes.push({ ...cell, formula, shown: value, ...(fills === undefined ? {} : { fills }) });
      }
    }
  }
  return writes;
}

/** What a person wrote on a sheet of ours after it was written. */
function remarksOn(now: SheetArea, written: SheetArea): FileCellWrite[] {
  return now.values.flatMap((values, r) =>
    values.flatMap((value, c): FileCellWrite[] => {
      const [row, column] = [now.firstRow + r, now.firstColumn + c];
      const formula = now.formulaAt(r, c);
      const before = written.values[row - written.firstRow]?.[column - written.firstColumn] ?? null;
      if (formula !== null) return [{ row, column, formula, shown: value }];
      return sameValue(value, before, false) ? [] : [{ row, column, value }];
    }),
  );
}

/** Blank cells of rows that were inserted, as they look on the page; as wide as what stands on the sheet. */
function insertedLooks(
  { firstColumn, values }: SheetArea,
  steps: readonly RowStep[],
  styleOf: (row: number, column: number) => number | undefined,
): FileCellWrite[] {
  const lastColumn = firstColumn + (values[0]?.length ?? 0) - 1;
  return insertedAreas(steps).flatMap(({ firstRow, lastRow }) => {
    const looks: FileCellWrite[] = [];
    for (let row = firstRow; row <= lastRow; row++)
      for (let column = 1; column <= lastColumn; column++) {
        const style = styleOf(row, column) ?? 0;
        if (style > 0) looks.push({ row, column, value: null, style });
      }
    return looks;
  });
}

/** The cells that a formula fills, as a file tells them of an array; undefined for one that is no array. */
function filledCells(
  formula: string,
  area: Area | undefined,
  row: number,
  column: number,
  isArray: boolean,
): string | undefined {
  if (area) return `${cellName(row, column)}:${cellName(area.endRow + 1, area.endColumn + 1)}`;
  return isArray || isArrayFormula(formula) ? cellName(row, column) : undefined;
}

function hasNoFormat(style: LoadedWorkbook["styles"][number] | undefined): boolean {
  return /^(?:General)?$/i.test(style?.n?.pattern ?? "");
}

/** True where the page shows what the file holds; numbers of days count from 1900 on the page. */
function isSameResult(
  value: CellValue,
  old: CellValue,
  isWorkedOut: boolean,
  startsIn1904: boolean,
): boolean {
  if (startsIn1904 && isWorkedOut && typeof value === "number" && typeof old === "number")
    if (sameValue(value - DAYS_TO_1904, old, true)) return true;
  return sameValue(value, old, isWorkedOut);
}

function isSameArea(one: Area, other: Area): boolean {
  return one.endRow === other.endRow && one.endColumn === other.endColumn;
}

function holds(area: Area, row: number, column: number): boolean {
  return holdsCell(cellArea(area), row, column);
}

/** Share by which two programs may differ in the last digits of what they work out. */
const LAST_DIGITS = 1e-12;

function sameValue(one: CellValue, other: CellValue, isWorkedOut: boolean): boolean {
  if (isWorkedOut && typeof one === "number" && typeof other === "number")
    return Math.abs(one - other) <= LAST_DIGITS * Math.abs(other);
  if (isBlank(one) || isBlank(other)) return isBlank(one) && isBlank(other);
  return isCellError(one) && isCellError(other) ? one.error === other.error : one === other;
}
