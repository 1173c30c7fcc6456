import type { CellMend } from "../../survey/checks/mendOf";
import type { SurveyWorkbook } from "../surveyWorkbook";
import { changeCells, type ChangeResult } from "./changeCells";

/** Mends cells that still hold what was found in them; one that holds something else by now is left alone. */
export function mendCells(workbook: SurveyWorkbook, mends: readonly CellMend[]): Promise<ChangeResult> {
  return changeCells(
    workbook,
    mends.map(({ sheet, row, column, to }) => ({ sheet, row, column, content: { value: to } })),
    mends.map(({ from }) => ({ value: from })),
  );
}
