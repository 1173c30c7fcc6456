import { CELL, type Season, type SurveyColumn, type SurveyTable } from "../season/season";
import type { CellValue } from "../sheets/cell";
import type { Finding } from "./finding";

/** The cell of a table that a finding is about. */
export interface FindingCell {
  readonly table: SurveyTable;
  readonly index: number;
  readonly column: SurveyColumn;
  readonly value: CellValue;
}

/** The cell that a finding is about; undefined for a whole row, a header, or a row that is none of a table's. */
export function findingCell({ sheet, row, columnNumber }: Finding, season: Season): FindingCell | undefined {
  for (const table of season.allTables) {
    if (table.sheet !== sheet) continue;
    const index = table.indexOfSheetRow(row);
    const column = table.columns.find(({ sheetColumn }) => sheetColumn === columnNumber);
    if (index !== undefined && column) return { table, index, column, value: column.raw.at(index) ?? null };
  }
  return undefined;
}

/** True for a date that can be read with the day or the month first. */
export function isUnclearDate({ column, index }: FindingCell): boolean {
  return column.states[index] === CELL.unclearDate;
}
