import { grouped } from "../../domain/grouped";
import { isCellError, type CellValue } from "../../survey/sheets/cell";
import { WorkbookProblem, type CellWrite, type SurveyWorkbook } from "../surveyWorkbook";

/** What a cell is to hold: a formula, or a value. */
export type CellContent = { readonly formula: string } | { readonly value: CellValue };

/** A cell that is to be changed. */
export interface CellChangeWanted {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly content: CellContent;
}

/** A cell that was changed: what it held before, and what it holds since, as the workbook gave both back. */
export interface ChangedCell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly before: CellContent;
  readonly after: CellContent;
}

/** A cell that was left alone because somebody had changed it meanwhile. */
export interface LeftCell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly holds: CellContent;
}

export interface ChangeResult {
  readonly changed: readonly ChangedCell[];
  readonly left: readonly LeftCell[];
}

/**
 * Changes cells on any number of sheets, keeping what each held for a before-and-after and an exact undo. A cell with
 * an expected content that holds something else by now is left alone. When one sheet refuses, the sheets written
 * before it are brought back.
 *
 * @param expected what each cell should hold, in the order of `wanted`; undefined where that does not matter
 * @throws WorkbookProblem of the host; "cannotPutBack", before anything is changed on that sheet, when a cell holds
 * an error value without a formula
 */
export async function changeCells(
  workbook: SurveyWorkbook,
  wanted: readonly CellChangeWanted[],
  expected: readonly (CellContent | undefined)[] = [],
): Promise<ChangeResult> {
  const changed: ChangedCell[] = [];
  const left: LeftCell[] = [];
  const written: CellChangeWanted[] = [];
  try {
    for (const [sheet, indexes] of bySheet(wanted)) {
      const cells = indexes.map((i) => wanted[i]);
      const before = await contentsOf(workbook, sheet, cells);
      const chosen = indexes.flatMap((i, k) => {
        const wish = expected[i];
        if (!wish || sameContent(before[k], wish)) return [k];
        left.push({ ...placeOf(cells[k]), holds: before[k] });
        return [];
      });
      if (chosen.length === 0) continue;
      const former = chosen.map((k) => ({ ...placeOf(cells[k]), content: before[k] }));
      former.forEach(({ content, ...place }) => writeOf(place, content));
      await workbook.writeCells(
        sheet,
        chosen.map((k) => writeOf(cells[k], cells[k].content)),
      );
      for (const cell of former) written.push(cell);
      const after = await contentsOf(
        workbook,
        sheet,
        chosen.map((k) => cells[k]),
      );
      chosen.forEach((k, n) => changed.push({ ...placeOf(cells[k]), before: before[k], after: after[n] }));
    }
  } catch (error) {
    for (const [sheet, indexes] of bySheet(written))
      await workbook.writeCells(
        sheet,
        indexes.map((i) => writeOf(written[i], written[i].content)),
      );
    throw error;
  }
  return { changed, left };
}

/**
 * Brings changed cells back to exactly what they held. A cell that somebody has changed since is left alone and
 * named in the answer.
 */
export function undoChange(workbook: SurveyWorkbook, changed: readonly ChangedCell[]): Promise<ChangeResult> {
  return changed.length === 0
    ? Promise.resolve({ changed: [], left: [] })
    : changeCells(
        workbook,
        changed.map(({ before, ...cell }) => ({ ...placeOf(cell), content: before })),
        changed.map(({ after }) => after),
      );
}

/** As changeCells, all or nothing: where one cell was left alone, the others are brought back and none is changed. */
export async function changeAllOrNone(
  workbook: SurveyWorkbook,
  wanted: readonly CellChangeWanted[],
  expected: readonly (CellContent | undefined)[],
): Promise<ChangeResult> {
  const result = await changeCells(workbook, wanted, expected);
  if (result.left.length === 0) return result;
  await undoChange(workbook, result.changed);
  return { changed: [], left: result.left };
}

/** True when both are the same formula, or the same value. */
export function sameContent(one: CellContent, other: CellContent): boolean {
  if ("formula" in one || "formula" in other)
    return "formula" in one && "formula" in other && one.formula === other.formula;
  const [a, b] = [one.value === "" ? null : one.value, other.value === "" ? null : other.value];
  return isCellError(a) && isCellError(b) ? a.error === b.error : a === b;
}

interface Place {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

function placeOf({ sheet, row, column }: Place): Place {
  return { sheet, row, column };
}

/** Indexes of the cells of each sheet. */
function bySheet(cells: readonly Place[]): Map<string, number[]> {
  return grouped(cells.keys(), (i) => cells[i].sheet);
}

function writeOf({ sheet, row, column }: Place, content: CellContent): CellWrite {
  if ("formula" in content) return { row, column, formula: content.formula };
  if (isCellError(content.value)) throw new WorkbookProblem("cannotPutBack", { sheet, row, column });
  return { row, column, value: content.value };
}

/** What cells of one sheet hold now. */
async function contentsOf(
  workbook: SurveyWorkbook,
  sheet: string,
  cells: readonly Place[],
): Promise<CellContent[]> {
  const rows = cells.map(({ row }) => row);
  const first = rows.reduce((least, row) => Math.min(least, row), Infinity);
  const last = rows.reduce((most, row) => Math.max(most, row), 0);
  const area = await workbook.readSheet(sheet, { rows: { first, count: last - first + 1 } });
  return cells.map(({ row, column }) => {
    const [r, c] = [row - area.firstRow, column - area.firstColumn];
    const inside = r >= 0 && c >= 0 && r < area.values.length && c < (area.values[r]?.length ?? 0);
    const formula = inside ? area.formulaAt(r, c) : null;
    return formula === null ? { value: inside ? area.values[r][c] : null } : { formula };
  });
}
