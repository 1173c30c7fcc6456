import { mustBeWhole, mustLieBetween } from "../refusal";

/** Serial of 31 December 9999, the last day of a spreadsheet. */
export const LAST_DAY = 2_958_465;

/** What is known of a block for putting it in its turn. */
export interface BlockOfWork {
  readonly block: string;
  /** Vines to prune, those that are done included. */
  readonly vines: number;
  readonly vinesDone: number;
  /** Listed as tender: pruned last. */
  readonly tender: boolean;
  /** Listed as bearing on its secondary buds: may be pruned first. */
  readonly fruitfulSecondaries: boolean;
  /** Share of primary buds that this winter killed; left out where no buds were cut. */
  readonly deadShare?: number;
  /** Pruned in two passes. */
  readonly twice: boolean;
  /** Vines from which shoots are rubbed off in spring; left out: none. */
  readonly vinesToThin?: number;
}

/** One pass over one block. */
export interface BlockPass {
  readonly block: string;
  readonly pass: "only" | "first" | "second" | "thinning";
  readonly vines: number;
  readonly vinesDone: number;
}

/**
 * The order in which blocks are pruned: hardy blocks and those with fruitful secondary buds first, tender ones last
 * (University of Georgia Extension, Bulletin 1505); among equals the one that this winter hurt least comes first, and a
 * block without a bud count after those that have one. Blocks that are pruned twice keep their turn for the first pass
 * and come again at the end, shortly after budbreak, in the same order (Purdue, "Double pruning grapevines"). Those whose
 * shoots are thinned come once more after all pruning, at 5 inches of growth (Atucha and Wimmer 2015).
 *
 * @example
 * orderOfWork([
 *   { block: "Low", vines: 10, vinesDone: 0, tender: true, fruitfulSecondaries: false, twice: false },
 *   { block: "High", vines: 10, vinesDone: 0, tender: false, fruitfulSecondaries: false, twice: true },
 * ]).map(({ block, pass }) => `${block} ${pass}`) // ["High first", "Low only", "High second"]
 */
export function orderOfWork(blocks: readonly BlockOfWork[]): BlockPass[] {
  blocks.forEach(({ vines, vinesDone, vinesToThin = 0 }) => {
    mustBeWhole("vines", vines, 0, 1e7);
    mustBeWhole("vines_to_thin", vinesToThin, 0, 1e7);
    mustBeWhole("vines_done", vinesDone, 0, vines);
  });
  const turn = (block: BlockOfWork) => (block.tender ? 2 : block.fruitfulSecondaries ? 0 : 1);
  const inTurn = [...blocks].sort(
    (first, second) =>
      turn(first) - turn(second) || (first.deadShare ?? Infinity) - (second.deadShare ?? Infinity) || 0,
  );
  const passes = inTurn.map(({ block, vines, vinesDone, twice }): BlockPass => ({
    block,
    pass: twice ? "first" : "only",
    vines,
    vinesDone,
  }));
  const again = inTurn.filter(({ twice }) => twice);
  return [
    ...passes,
    ...again.map(({ block, vines }): BlockPass => ({ block, pass: "second", vines, vinesDone: 0 })),
    ...inTurn.flatMap(({ block, vinesToThin: vines = 0 }): BlockPass[] =>
      vines > 0 ? [{ block, pass: "thinning", vines, vinesDone: 0 }] : [],
    ),
  ];
}

/** When the crew works and how fast. Days are spreadsheet serial numbers. */
export interface CrewCalendar {
  readonly startsOn: number;
  /** First day of the second pass. */
  readonly secondPassOn: number;
  readonly crew: number;
  readonly hoursADay: number;
  /** Days worked from Monday on: 5 is Monday to Friday. */
  readonly daysAWeek: number;
  readonly daysOff: readonly number[];
  readonly minutesAVine: number;
  /** Share of the minutes that the second pass takes. */
  readonly secondPassShare: number;
  /** First day on which shoots are thinned. */
  readonly thinningOn: number;
  readonly minutesAVineThinning: number;
}

/** A pass with its place in the calendar. */
export interface PlannedPass extends BlockPass {
  /** Hours of one person that are left. */
  readonly hours: number;
  /** Days of the whole crew that are left. */
  readonly crewDays: number;
  readonly firstDay: number;
  readonly lastDay: number;
  /** Hours by day, in order. */
  readonly days: readonly { readonly day: number; readonly hours: number }[];
}

/**
 * Puts the passes into the calendar, one after the other: a pass begins where the one before ended, on the same day when
 * hours of it are left. What is done already takes no more time.
 *
 * @throws Refusal "outside" or "notWhole" when a figure of the calendar is impossible
 * @example
 * plannedWork([{ block: "A", pass: "only", vines: 100, vinesDone: 0 }], {
 *   startsOn: 46054, secondPassOn: 46127, crew: 2, hoursADay: 5, daysAWeek: 5, daysOff: [], minutesAVine: 6, secondPassShare: 0.4, thinningOn: 46162,
 *   minutesAVineThinning: 2,
 * })[0].crewDays // 1
 */
export function plannedWork(passes: readonly BlockPass[], calendar: CrewCalendar): PlannedPass[] {
  mustBeWhole("starts_on", Math.floor(calendar.startsOn), 0, LAST_DAY);
  mustLieBetween("crew", calendar.crew, 1, 500);
  mustLieBetween("hours_a_day", calendar.hoursADay, 0.5, 16, "h");
  mustBeWhole("days_a_week", calendar.daysAWeek, 1, 7);
  mustLieBetween("minutes", calendar.minutesAVine, 0, 240, "min");
  mustLieBetween("minutes", calendar.minutesAVineThinning, 0, 240, "min");
  mustLieBetween("second_pass_share", calendar.secondPassShare, 0, 1);
  const perDay = calendar.crew * calendar.hoursADay;
  let day = nextWorkday(Math.floor(calendar.startsOn), calendar);
  let leftToday = perDay;
  const { startsOn, secondPassOn, secondPassShare, thinningOn, minutesAVine, minutesAVineThinning } =
    calendar;
  const once = { notBefore: startsOn, minutes: minutesAVine };
  const work: Readonly<Record<BlockPass["pass"], { notBefore: number; minutes: number }>> = {
    only: once,
    first: once,
    second: { notBefore: secondPassOn, minutes: minutesAVine * secondPassShare },
    thinning: { notBefore: thinningOn, minutes: minutesAVineThinning },
  };
  return passes.map((pass) => {
    const { notBefore, minutes } = work[pass.pass];
    if (day < Math.floor(notBefore)) {
      day = nextWorkday(Math.floor(notBefore), calendar);
      leftToday = perDay;
    }
    const hours = ((pass.vines - pass.vinesDone) * minutes) / 60;
    if (hours > 0 && leftToday < ROUNDING) {
      day = nextWorkday(day + 1, calendar);
      leftToday = perDay;
    }
    const firstDay = day;
    const days: { day: number; hours: number }[] = [];
    let left = hours;
    while (left > ROUNDING) {
      if (leftToday < ROUNDING) {
        day = nextWorkday(day + 1, calendar);
        leftToday = perDay;
      }
      const now = Math.min(left, leftToday);
      left -= now;
      leftToday -= now;
      days.push({ day, hours: now });
    }
    return { ...pass, hours, crewDays: hours / perDay, firstDay, lastDay: day, days };
  });
}

const ROUNDING = 1e-9;

/** 0 is Monday: day 2 of the spreadsheet calendar, 1 January 1900, stands for a Monday from March 1900 on. */
function weekday(serial: number): number {
  return (((serial - 2) % 7) + 7) % 7;
}

/**
 * The Monday of a day's week.
 *
 * @example
 * mondayOf(46056) // 46055
 */
export function mondayOf(serial: number): number {
  return serial - weekday(serial);
}

/**
 * True for a day on which the crew works: one of the week's first days, and none of the days off.
 *
 * @example
 * isWorkday(46059, { daysAWeek: 5, daysOff: [] }) // true
 * @example
 * isWorkday(46060, { daysAWeek: 5, daysOff: [] }) // false
 */
export function isWorkday(
  day: number,
  { daysAWeek, daysOff }: Pick<CrewCalendar, "daysAWeek" | "daysOff">,
): boolean {
  return weekday(day) < daysAWeek && !daysOff.includes(day);
}

function nextWorkday(from: number, calendar: CrewCalendar): number {
  let day = from;
  while (!isWorkday(day, calendar)) {
    day++;
    if (day - from > 3660) return from;
  }
  return day;
}
