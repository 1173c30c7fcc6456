import type { Finding } from "../../survey/checks/finding";
import type { CellMark } from "../../workbook/surveyWorkbook";
import { SEVERITIES } from "./checkState";

/**
 * One mark for each cell that a finding is about, as severe as its worst finding. A finding about a whole row marks
 * the row's first cell.
 */
export function cellMarks(findings: readonly Finding[]): CellMark[] {
  const marks = new Map<string, CellMark>();
  for (const { sheet, row, columnNumber, severity } of findings) {
    const column = columnNumber || 1;
    const key = `${row} ${column} ${sheet}`;
    const known = marks.get(key);
    if (known === undefined || SEVERITIES.indexOf(severity) < SEVERITIES.indexOf(known.severity))
      marks.set(key, { sheet, row, column, severity });
  }
  return [...marks.values()];
}
