import { isCellError } from "../../survey/sheets/cell";
import { planRepairs, type FormulaCell, type RepairPlan } from "../../functions/repairFormula";
import type { ReadOptions, SurveyWorkbook } from "../surveyWorkbook";
import { changeCells, type ChangeResult } from "./changeCells";

/**
 * Looks through every sheet for formulas of ours that no longer calculate: kept in the form that a file stores, with
 * another add-in's or file's reference in front, or left at #NAME? since they were typed while the add-in was
 * missing. Nothing is changed.
 *
 * @returns the plan, for a preview
 */
export async function lookForRepairs(
  workbook: SurveyWorkbook,
  options: Omit<ReadOptions, "rows"> = {},
): Promise<RepairPlan> {
  const names = await workbook.sheetNames();
  const cells: FormulaCell[] = [];
  for (const [index, name] of names.entries()) {
    const area = await workbook.readSheet(name, {
      signal: options.signal,
      onProgress: (done) => options.onProgress?.((index + done) / names.length),
    });
    area.values.forEach((line, r) =>
      line.forEach((value, c) => {
        const formula = area.formulaAt(r, c);
        if (formula === null) return;
        const shows = isCellError(value) ? value.error : value;
        cells.push({
          sheet: area.sheet,
          row: area.firstRow + r,
          column: area.firstColumn + c,
          formula,
          shows,
        });
      }),
    );
  }
  return planRepairs(cells);
}

/**
 * Enters the repaired formulas. A cell that somebody has changed since the preview is left alone. The answer is what
 * undoChange needs to bring every cell back as it was.
 */
export function applyRepairs(workbook: SurveyWorkbook, { repairs }: RepairPlan): Promise<ChangeResult> {
  return changeCells(
    workbook,
    repairs.map(({ sheet, row, column, after }) => ({ sheet, row, column, content: { formula: after } })),
    repairs.map(({ before }) => ({ formula: before })),
  );
}
