import type { CellValue } from "../sheets/cell";
import { CHECKS } from "./checks";
import { contextOf, reporter, type CheckOptions } from "./checkSeason";
import type { Finding } from "./finding";
import { readRow } from "../reading/readSeason";
import type { Season } from "../season/season";

/** One row of a sheet as it stands now. */
export interface ChangedRow {
  readonly sheet: string;
  /** Row as the sheet shows it. */
  readonly row: number;
  /** Sheet column of values[0]; 1 is A. */
  readonly firstColumn: number;
  readonly values: readonly CellValue[];
}

/**
 * Judges rows while they are typed, against a survey that was read once: each call looks at one row and its vine's
 * place in the register only. What needs the whole block is left to the full check.
 *
 * @returns a function that takes a row and gives its findings; none when the row belongs to no table, stands in or
 * above the headers, or is blank
 */
export function rowChecker(season: Season, options: CheckOptions = {}): (row: ChangedRow) => Finding[] {
  const context = contextOf(season, options.today);
  const checks = CHECKS.filter((check) => check.scope === "row");
  return (row) => {
    const table = season.allTables.find((own) => own.sheet === row.sheet && own.headerRow < row.row);
    if (!table) return [];
    const single = readRow(season, table, row);
    if (!single) return [];
    const findings: Finding[] = [];
    const report = reporter(season, single, (finding) => {
      if (finding.row === row.row) findings.push(finding);
    });
    for (const check of checks)
      if (check.sheets.includes(single.shape.id)) check.prepare(single, context)?.(0, 1, report);
    return findings.sort((a, b) => a.columnNumber - b.columnNumber);
  };
}
