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
    const all = DORMANT.has(table.shape.id)
      ? outOfSeason(context.season, table.shape.id, inSeason)
      : undefined;
    const isOfAll = all?.tables.includes(table);
    return (from, to, report) => {
      for (let i = from; i < to; i++) {
        const day = column.numbers[i];
        if (Number.isNaN(day) || (i > 0 && column.numbers[i - 1] === day)) continue;
        const facts = { value: isoDay(day), rows: stretch(column.numbers, i) };
        if (today !== undefined && Math.floor(day) > today)
          report(dateInFuture, i, column, { ...facts, today: isoDay(today) });
        else if (table.winter !== undefined && winterOf(day) !== table.winter && !isOfWalk(day))
          report(dateOtherYear, i, column, { ...facts, season: `${table.winter - 1}/${table.winter % 100}` });
        else if (DORMANT.has(table.shape.id) && !inSeason(monthOf(day))) {
          if (!all || !isOfAll) report(dateOutOfSeason, i, column, { ...facts, firstMonth, lastMonth });
          else if (all.tables[0] === table && all.index === i)
            report(dateOutOfSeason, i, column, { value: all.days, rows: all.rows, firstMonth, lastMonth });
        }
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

/** Counts of a whole farm that were dated outside the dormant season, which is one question. */
interface OutOfSeason {
  /** Tables with such dates, and the row of the first of them in the first table. */
  readonly tables: readonly SurveyTable[];
  readonly index: number;
  readonly rows: number;
  /** The first and the last day. */
  readonly days: string;
}

/** Dates from which on, and share of them outside the season from which on, they are no slips of single rows; ours. */
const LEAST_DATES = 20;
const MOST_OF_ALL = 0.5;

const known = new WeakMap<Season, Map<string, OutOfSeason | undefined>>();

/** Dates outside the dormant season that are most of a kind of sheet's; undefined where they are not. */
function outOfSeason(
  season: Season,
  shape: SurveyTable["shape"]["id"],
  inSeason: (month: number) => boolean,
): OutOfSeason | undefined {
  const found = known.get(season) ?? new Map<string, OutOfSeason | undefined>();
  known.set(season, found);
  if (!found.has(shape)) found.set(shape, findOutOfSeason(season.tables(shape), inSeason));
  return found.get(shape);
}

function findOutOfSeason(
  all: readonly SurveyTable[],
  inSeason: (month: number) => boolean,
): OutOfSeason | undefined {
  const tables = new Set<SurveyTable>();
  let index = 0;
  let dated = 0;
  let rows = 0;
  let [first, last] = [Infinity, -Infinity];
  for (const table of all) {
    const days = table.column("countedOn")?.numbers ?? [];
    let isOut = false;
    for (let i = 0; i < days.length; i++) {
      if (Number.isNaN(days[i])) continue;
      dated++;
      if (i === 0 || days[i] !== days[i - 1]) isOut = !inSeason(monthOf(days[i]));
      if (!isOut) continue;
      if (tables.size === 0) index = i;
      tables.add(table);
      rows++;
      first = Math.min(first, days[i]);
      last = Math.max(last, days[i]);
    }
  }
  if (rows < LEAST_DATES || rows <= dated * MOST_OF_ALL) return undefined;
  const days = [...new Set([isoDay(first), isoDay(last)])].join(" … ");
  return { tables: [...tables], index, rows, days };
}
