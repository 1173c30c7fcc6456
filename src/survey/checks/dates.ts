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
    const isOfWalk = daysOfWalk(context.season, table);
    return (from, to, report) => {
      for (let i = from; i < to; i++) {
        const day = column.numbers[i];
        if (Number.isNaN(day) || (i > 0 && column.numbers[i - 1] === day)) continue;
        const facts = { value: isoDay(day), rows: stretch(column.numbers, i) };
        if (today !== undefined && Math.floor(day) > today)
          report(dateInFuture, i, column, { ...facts, today: isoDay(today) });
        else if (table.winter !== undefined && winterOf(day) !== table.winter && !isOfWalk(day))
          report(dateOtherYear, i, column, { ...facts, season: `${table.winter - 1}/${table.winter % 100}` });
        else if (DORMANT.has(table.shape.id) && !inSeason(monthOf(day)))
          report(dateOutOfSeason, i, column, { ...facts, firstMonth, lastMonth });
      }
    };
  },
};

/** Tells of a day whether it is of the walk on which most of a sheet was counted, on whichever side of the winters' border it lies. */
function daysOfWalk(season: Season, { shape, sheet, headerRow }: SurveyTable): (day: number) => boolean {
  const whole = season
    .tables(shape.id)
    .find((table) => table.sheet === sheet && table.headerRow === headerRow);
  const middle = whole && middleDay(whole);
  return (day) => middle !== undefined && Math.abs(day - middle) <= ONE_WALK_DAYS;
}
