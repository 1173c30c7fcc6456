import { DATA_SHEETS, type Check, type FindingKind, type Report } from "./check";
import { CELL, type SurveyColumn } from "../season/season";
import { winterOfSeason } from "../season/winterOfSeason";

const outsideLimits: FindingKind = { code: "outsideLimits", severity: "wrong", action: "correct" };
const notWhole: FindingKind = { code: "notWhole", severity: "wrong", action: "correct" };

/** Numbers that no true value reaches, years after the winter of the counts, and counts with a fraction. */
export const LIMITS: Check = {
  id: "limits",
  kinds: [outsideLimits, notWhole],
  sheets: DATA_SHEETS,
  scope: "row",
  prepare(table, { season }) {
    const years = table.columns.filter(({ column }) => YEARS_PAST.has(column.id));
    const winter = years.length > 0 ? winterOfSeason(season) : 0;
    return (from, to, report) => {
      for (const column of table.columns) judgeColumn(column, from, to, report);
      if (winter > 0) for (const column of years) judgeYears(column, winter, from, to, report);
    };
  },
};

/** Years in which something was planted or laid up that stood when it was counted. */
const YEARS_PAST = new Set(["planted", "trunkYear"]);

function judgeYears(column: SurveyColumn, winter: number, from: number, to: number, report: Report): void {
  const { least = null } = column.column;
  for (let i = from; i < to; i++)
    if (column.usable[i] > winter)
      report(outsideLimits, i, column, { value: column.usable[i], least, most: winter, unit: "" });
}

function judgeColumn(column: SurveyColumn, from: number, to: number, report: Report): void {
  const { states } = column;
  for (let i = from; i < to; i++)
    if (states[i] === CELL.outside) tellOutside(column, i, report);
    else if (states[i] === CELL.notWhole) report(notWhole, i, column, { value: column.raw.at(i) as number });
}

function tellOutside(column: SurveyColumn, index: number, report: Report): void {
  const { least, most } = column.column;
  report(outsideLimits, index, column, {
    value: column.raw.at(index) as number,
    least: least === undefined ? null : written(least / column.perUnit),
    most: most === undefined ? null : written(most / column.perUnit),
    unit: column.unit?.id ?? "",
  });
}

/** A limit in the sheet's unit, with three digits that count. */
function written(limit: number): number {
  return Number.isInteger(limit) ? limit : Number(limit.toPrecision(3));
}
