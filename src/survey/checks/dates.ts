import { COUNT_SHEETS, type Check, type FindingKind } from "./check";
import { isoDay, monthOf, winterOf } from "../reading/serialDate";
import { middleDay, ONE_WALK_DAYS } from "../reading/winters";
import type { Season, SurveyTable } from "../season/season";
import { stretch } from "../season/stretch";

const dateInFuture: FindingKind = { code: "dateInFuture", severity: "wrong", action: "correct" };
const dateOutOfSeason: FindingKind = { code: "dateOutOfSeason", severity: "ask", action: "correct" };
const dateOtherYear: FindingKind = { code: "dateOtherYear", severity: "ask", action: "correct" };

/** Sheets whose counts are made on dormant vines. */
const DORMANT = new Set(["cordons", "budCuts"]);

/** Dates after today, outside the dormant season, or of another winter than the sheet; told once for a stretch of rows. */
export const DATES: Check = {
  id: "dates",
  kinds: [dateInFuture, dateOutOfSeason, dateOtherYear],
  sheets: COUNT_SHEETS,
  scope: "row",
  prepare(table, context) {
    const column = table.column("countedOn");
    if (!column) return undefined;
    const { today } = context;
    const firstMonth = context.season.settings.seasonOfCountsFirstMonth;
    const lastMonth = context.season.settings.seasonOfCountsLastMonth;
    const inSeason = (month: number) =>
      firstMonth <= lastMonth
        ? month >= firstMonth && month <= lastMonth
        : month >= firstMonth || month <= lastMonth;
    const straddles = isStraddling(context.season, table);
    return (from, to, report) => {
      for (let i = from; i < to; i++) {
        const day = column.numbers[i];
        if (Number.isNaN(day) || (i > 0 && column.numbers[i - 1] === day)) continue;
        const facts = { value: isoDay(day), rows: stretch(column.numbers, i) };
        if (today !== undefined && Math.floor(day) > today)
          report(dateInFuture, i, column, { ...facts, today: isoDay(today) });
        else if (table.winter !== undefined && winterOf(day) !== table.winter && !straddles(day))
          report(dateOtherYear, i, column, { ...facts, season: `${table.winter - 1}/${table.winter % 100}` });
        else if (DORMANT.has(table.shape.id) && !inSeason(monthOf(day)))
          report(dateOutOfSeason, i, column, { ...facts, firstMonth, lastMonth });
      }
    };
  },
};

/** True for a day that lies with the others of a table which was taken as one winter with later ones, as is said once. */
function isStraddling({ account }: Season, table: SurveyTable): (day: number) => boolean {
  const isOne = account.notes.some(
    ({ code, facts }) => code === "oneWinter" && (facts.sheets as readonly string[]).includes(table.sheet),
  );
  const middle = isOne ? middleDay(table) : undefined;
  return (day) => middle !== undefined && Math.abs(day - middle) <= ONE_WALK_DAYS;
}
