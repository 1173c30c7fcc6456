import { isBlank } from "../../survey/sheets/cell";
import { cellName } from "../../survey/sheets/cellName";
import { FUNCTIONS_TEXTS } from "../../texts/pane";
import { functionNamed } from "../../functions/registry";
import { formulaHere } from "../../workbook/actions/formulaHere";
import type { SurveyWorkbook } from "../../workbook/surveyWorkbook";
import type { Pane } from "../pane";
import type { FunctionHelp } from "../../functions/functionHelp";

/**
 * Puts a function into the selected cell, if that is empty; a cell that holds something is never overwritten. What a
 * person typed is taken as it is; without that the formula is made for the place.
 */
export async function insertFormula(
  pane: Pane,
  help: FunctionHelp,
  typed: string | undefined,
): Promise<void> {
  const example = help.examples[0]?.formula ?? `=${help.call}`;
  if (typed !== undefined && !/^=\s*[A-Za-z]/.test(typed.trim())) {
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
  const made =
    typed === undefined
      ? formulaHere(functionNamed(help.id)!, { ...(await surroundings(pane)), place })
      : { formula: typed.trim() };
  if ("problem" in made) {
    pane.tell("warning", FUNCTIONS_TEXTS.place[made.problem], made.facts);
    return;
  }
  await pane.workbook.writeCells(sheet, [{ row, column, formula: made.formula }]);
  if (made.blank === undefined) pane.tell("success", FUNCTIONS_TEXTS.inserted, where);
  else
    pane.tell("warning", FUNCTIONS_TEXTS.place.blank, {
      ...where,
      blank: cellName(made.blank.row, made.blank.column),
      of: made.blank.sheet,
    });
}

/** What a formula for a place is made from. */
export async function surroundings(pane: Pane) {
  const { season } = await pane.held.read();
  return { season, tables: (await pane.workbook.tables?.()) ?? [] };
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
