import { isBlank } from "../../survey/sheets/cell";
import { cellName } from "../../survey/sheets/cellName";
import { FUNCTIONS_TEXTS } from "../../texts/pane";
import type { SurveyWorkbook } from "../../workbook/surveyWorkbook";
import type { Pane } from "../pane";
import type { FunctionHelp } from "../../functions/functionHelp";

/** Puts a formula into the selected cell, if that is empty; a cell that holds something is never overwritten. */
export async function insertFormula(pane: Pane, formula: string, help: FunctionHelp): Promise<void> {
  const example = help.examples[0]?.formula ?? `=${help.call}`;
  if (!/^=\s*[A-Za-z]/.test(formula.trim())) {
    pane.tell("warning", FUNCTIONS_TEXTS.noFormula, { example });
    return;
  }
  const place = await pane.workbook.selectedCell();
  if (place === undefined) {
    pane.tell("warning", FUNCTIONS_TEXTS.noCell);
    return;
  }
  const { sheet, row, column } = place;
  const where = { sheet, cell: cellName(row, column) };
  if (!(await isEmpty(pane.workbook, place))) {
    pane.tell("warning", FUNCTIONS_TEXTS.notEmpty, where);
    return;
  }
  await pane.workbook.writeCells(sheet, [{ row, column, formula: formula.trim() }]);
  pane.tell("success", FUNCTIONS_TEXTS.inserted, where);
}

async function isEmpty(
  workbook: SurveyWorkbook,
  { sheet, row, column }: { sheet: string; row: number; column: number },
): Promise<boolean> {
  const area = await workbook.readSheet(sheet);
  const [r, c] = [row - area.firstRow, column - area.firstColumn];
  const value = area.values[r]?.[c];
  return isBlank(value) && (value === undefined || area.formulaAt(r, c) === null);
}
