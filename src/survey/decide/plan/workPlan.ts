import {
  isWorkday,
  mondayOf,
  orderOfWork,
  plannedWork,
  type BlockOfWork,
  type BlockPass,
  type CrewCalendar,
  type PlannedPass,
} from "../../../domain/plan/orderOfWork";
import { yearsLater } from "../../reading/serialDate";
import { daysListed } from "../../settings/daysListed";
import type { SettingValues } from "../../settings/settings";
import { blockFigures } from "../../season/blockFigures";
import type { Season } from "../../season/season";
import { NO_PLACE, placeOf } from "../../season/vinePlaces";
import { wordKey } from "../../sheets/words";
import type { TrunksDue } from "../renewal/trunksToRenew";
import { deadShares } from "./deadShares";

/** The work of the winter, block by block in its turn, and the thinning of shoots in the spring after it. */
export interface WorkPlan {
  readonly passes: readonly PlannedPass[];
  readonly pruning: WorkLeft;
  /** Without hours where no shoots have to go. */
  readonly thinning: WorkLeft;
  /** Share of all vines that were pruned already. */
  readonly doneShare: number;
  /** Trunks that are renewed by plan; left out where no trunk's year is known. */
  readonly trunks?: TrunksDue;
  /** The weeks in which something is pruned, Monday to Sunday. */
  readonly weeks: readonly (readonly WorkDay[])[];
}

/** A day of the calendar, as a spreadsheet serial number, and what the crew prunes on it. */
export interface WorkDay {
  readonly day: number;
  readonly isWorkday: boolean;
  readonly parts: readonly DayPart[];
}

/** What is pruned of one pass on one day. */
export interface DayPart {
  readonly block: string;
  readonly pass: BlockPass["pass"];
  readonly hours: number;
  /** First and last row; left out where the Vines sheets do not list the block's vines. */
  readonly rows?: { readonly first: number; readonly last: number };
}

/** What is left of a work. */
export interface WorkLeft {
  /** Of one person. */
  readonly hours: number;
  /** Of the whole crew. */
  readonly crewDays: number;
}

/**
 * The order of work over the survey's blocks with hours and days by the crew calendar of the Settings sheet. Vines come
 * from the Vines sheets, missing ones left out; where a block has none there, the Blocks sheet's number of vine places
 * stands in, and where it has no number either, the vines with a row of cordons. A vine counts as done when its day of pruning is written down. What is left begins on the day of Settings,
 * or today where that day is over.
 *
 * @param thinned shoots to thin the vines of a block to, by the number of its name
 * @param today as a spreadsheet serial number
 * @param trunks the count of the trunks to renew by plan
 */
export function workPlan(
  season: Season,
  thinned: ReadonlyMap<number, VinesToThin>,
  today = -Infinity,
  trunks?: TrunksDue,
): WorkPlan {
  const planned = crewCalendar(season.settings, lastCountedOn(season));
  const calendar = { ...planned, startsOn: Math.max(planned.startsOn, today) };
  const blocks = blocksOfWork(season, thinned);
  const passes = plannedWork(orderOfWork(blocks), calendar);
  const pruned = passes.filter(({ pass }) => pass === "only" || pass === "first");
  const vines = pruned.reduce((sum, pass) => sum + pass.vines, 0);
  const done = pruned.reduce((sum, pass) => sum + pass.vinesDone, 0);
  return {
    passes,
    pruning: leftOf(passes.filter(({ pass }) => pass !== "thinning")),
    thinning: leftOf(passes.filter(({ pass }) => pass === "thinning")),
    doneShare: vines === 0 ? 0 : done / vines,
    weeks: weeksOf(passes, new Map(blocks.map(({ block, rows }) => [block, rows])), calendar),
    ...(trunks ? { trunks } : {}),
  };
}

const leftOf = (passes: readonly PlannedPass[]): WorkLeft => ({
  hours: passes.reduce((sum, { hours }) => sum + hours, 0),
  crewDays: passes.reduce((sum, { crewDays }) => sum + crewDays, 0),
});

function weeksOf(
  passes: readonly PlannedPass[],
  rows: ReadonlyMap<string, readonly RowOfWork[]>,
  calendar: CrewCalendar,
): WorkDay[][] {
  const parts = new Map<number, DayPart[]>();
  for (const { block, pass, days, hours } of passes) {
    const own = rows.get(block)!;
    const vinesOf = (row: RowOfWork) => (pass === "second" || pass === "thinning" ? row.vines : row.left);
    const perVine = hours / own.reduce((sum, row) => sum + vinesOf(row), 0);
    let done = 0;
    for (const { day, hours: here } of days) {
      const between = rowsBetween(own, vinesOf, done / perVine, (done + here) / perVine);
      done += here;
      const part = { block, pass, hours: here, ...(between === undefined ? {} : { rows: between }) };
      const known = parts.get(day);
      if (known) known.push(part);
      else parts.set(day, [part]);
    }
  }
  const mondays = new Set([...parts.keys()].map(mondayOf));
  return [...mondays].map((monday) =>
    Array.from({ length: 7 }, (_, index) => {
      const day = monday + index;
      return { day, isWorkday: isWorkday(day, calendar), parts: parts.get(day) ?? [] };
    }),
  );
}

/** Rows of which a vine lies between two counts of vines along the walk. */
function rowsBetween(
  rows: readonly RowOfWork[],
  vinesOf: (row: RowOfWork) => number,
  from: number,
  to: number,
): DayPart["rows"] {
  let start = 0;
  let found: { first: number; last: number } | undefined;
  for (const row of rows) {
    const end = start + vinesOf(row);
    if (end > from + ROUNDING && start < to - ROUNDING)
      found = { first: found?.first ?? row.row, last: row.row };
    start = end;
  }
  return found;
}

const ROUNDING = 1e-6;

/**
 * The crew calendar as the Settings sheet has it. A start that lies more than half a year before the last count is the
 * day of another winter: its day and month stand for this one.
 *
 * @param countedOn last day on which something was counted, as a spreadsheet serial number; -Infinity without one
 * @example
 * crewCalendar(defaultSettings()).daysAWeek // 5
 */
export function crewCalendar(settings: SettingValues, countedOn = -Infinity): CrewCalendar {
  return {
    startsOn: inTheWinterOf(countedOn, settings.pruningStarts),
    secondPassOn: inTheWinterOf(countedOn, settings.secondPassStarts),
    crew: settings.crew,
    hoursADay: settings.hoursADay,
    daysAWeek: Math.round(settings.daysAWeek),
    daysOff: daysListed(settings.daysOff) ?? [],
    minutesAVine: settings.minutesAVinePruning,
    secondPassShare: settings.doublePruningTimeOfTheSecondPass,
    thinningOn: inTheWinterOf(countedOn, settings.shootThinningStarts),
    minutesAVineThinning: settings.minutesAVineShootThinning,
  };
}

const HALF_A_YEAR = 183;
const DAYS_A_YEAR = 365;

function inTheWinterOf(countedOn: number, day: number): number {
  let later = day;
  for (let years = 1; countedOn - later > HALF_A_YEAR; years++)
    later = yearsLater(day, years) ?? later + DAYS_A_YEAR;
  return later;
}

function lastCountedOn(season: Season): number {
  let last = -Infinity;
  for (const id of ["cordons", "vines", "budCuts"] as const)
    for (const table of season.tables(id))
      for (const day of table.column("countedOn")?.usable ?? []) if (day > last) last = day;
  return last;
}

function listOf(written: string): string[] {
  return written
    .split(/[,;]/)
    .map(wordKey)
    .filter((word) => word !== "");
}

/** Vines of a block and the shoots that go from each. */
interface VinesToThin {
  readonly vines: number;
  readonly remove: number;
}

/** A row of vines in the order of the walk: all of its vines, and those that are not pruned yet. */
interface RowOfWork {
  readonly row: number;
  readonly vines: number;
  readonly left: number;
}

function blocksOfWork(
  season: Season,
  thinned: ReadonlyMap<number, VinesToThin>,
): (BlockOfWork & { readonly rows: readonly RowOfWork[] })[] {
  const places = season.places;
  const dead = deadShares(season);
  const figuresOf = blockFigures(season);
  const counts = new Map<number, { vines: number; done: number; rows: Map<number, RowOfWork> }>();
  const add = (key: number, isDone: boolean) => {
    if (places.statusOf(key) === "missing") return;
    const { block, row } = placeOf(key);
    const count = counts.get(block) ?? { vines: 0, done: 0, rows: new Map<number, RowOfWork>() };
    const { vines, left } = count.rows.get(row) ?? { vines: 0, left: 0 };
    count.vines++;
    if (isDone) count.done++;
    count.rows.set(row, { row, vines: vines + 1, left: left + (isDone ? 0 : 1) });
    counts.set(block, count);
  };
  for (const [key, { table, index }] of places.register())
    add(key, (table.column("prunedOn")?.usable[index] ?? NaN) > 0);
  for (const [block, { table, index }] of places.blockRows()) {
    const vines = table.column("vines")?.usable[index] ?? NaN;
    if (!counts.has(block) && Number.isInteger(vines)) counts.set(block, { vines, done: 0, rows: new Map() });
  }
  const listed = new Set(counts.keys());
  for (const key of new Set(season.tables("cordons").flatMap((table) => [...places.keysOf(table)])))
    if (key !== NO_PLACE && !listed.has(placeOf(key).block)) add(key, false);
  const named = (written: string) => {
    const list = listOf(written);
    return (names: readonly string[]) => names.some((name) => list.includes(name));
  };
  const tender = named(season.settings.tenderCultivars);
  const fruitful = named(season.settings.fruitfulSecondaries);
  const twice = named(season.settings.doublePruning);
  return [...counts].map(([block, { vines, done, rows }]) => {
    const name = season.words.wordOf(block);
    const names = [wordKey(name), wordKey(figuresOf(block).nodeRule.cultivar)];
    const share = dead.get(name);
    const toThin = thinned.get(block);
    return {
      block: name,
      vines,
      vinesDone: done,
      tender: tender(names),
      fruitfulSecondaries: fruitful(names),
      ...(share === undefined ? {} : { deadShare: share }),
      twice: twice(names),
      ...(toThin && toThin.remove > 0 ? { vinesToThin: toThin.vines } : {}),
      rows: [...rows.values()].sort((one, other) => one.row - other.row),
    };
  });
}
