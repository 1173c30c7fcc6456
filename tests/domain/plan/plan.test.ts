import fc from "fast-check";
import { nodePlan } from "../../../src/domain/plan/nodePlan";
import {
  isWorkday,
  mondayOf,
  orderOfWork,
  plannedWork,
  type BlockOfWork,
  type CrewCalendar,
} from "../../../src/domain/plan/orderOfWork";

describe("nodes over the spurs that stay", () => {
  test.each([
    {
      why: "published: 40 buds are 20 two-bud spurs (cooksplace, Pruning 2013 part 2)",
      call: [40, 20, 1, 3],
      spurs: [{ spurs: 20, nodes: 2 }],
      short: 0,
      surplus: 0,
    },
    {
      why: "the same page: 12 spurs of 2 leave the budget 16 buds short",
      call: [40, 12, 2, 2],
      spurs: [{ spurs: 12, nodes: 2 }],
      short: 16,
      surplus: 0,
    },
    {
      why: "the same 12 spurs at up to 3 nodes (Klodd 2022: change buds per spur) are 4 short",
      call: [40, 12, 1, 3],
      spurs: [{ spurs: 12, nodes: 3 }],
      short: 4,
      surplus: 0,
    },
    {
      why: "16 spurs: 8 of three nodes and 8 of two",
      call: [40, 16, 1, 3],
      spurs: [
        { spurs: 8, nodes: 3 },
        { spurs: 8, nodes: 2 },
      ],
      short: 0,
      surplus: 0,
    },
    {
      why: "more spurs than nodes: the rest is cut off",
      call: [10, 16, 1, 3],
      spurs: [{ spurs: 10, nodes: 1 }],
      short: 0,
      surplus: 6,
    },
    { why: "no spur left: the whole budget is short", call: [40, 0, 1, 3], spurs: [], short: 40, surplus: 0 },
    {
      why: "published: 3 lb at 30+10 is 50 buds as ten 5-bud spurs (Growing Grapes in WV)",
      call: [50, 10, 1, 5],
      spurs: [{ spurs: 10, nodes: 5 }],
      short: 0,
      surplus: 0,
    },
  ] as const)("$why", ({ call, spurs, short, surplus }) => {
    const [budget, on, least, most] = call;
    const plan = nodePlan(budget, on, least, most);
    expect(plan.spurs).toEqual(spurs);
    expect([plan.short, plan.surplusSpurs]).toEqual([short, surplus]);
  });

  test("the plan adds up, keeps its limits and wastes no room", () => {
    const small = fc.integer({ min: 1, max: 5 });
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 200 }),
        fc.integer({ min: 0, max: 60 }),
        small,
        small,
        (budget, spurs, a, b) => {
          const [least, most] = [Math.min(a, b), Math.max(a, b)];
          const plan = nodePlan(budget, spurs, least, most);
          const planned = plan.spurs.reduce((sum, part) => sum + part.spurs * part.nodes, 0);
          const kept = plan.spurs.reduce((sum, part) => sum + part.spurs, 0);
          expect(planned).toBe(plan.nodes);
          expect(plan.nodes + plan.short).toBe(budget);
          expect(kept + plan.surplusSpurs).toBe(spurs);
          for (const { nodes } of plan.spurs) {
            expect(nodes).toBeGreaterThanOrEqual(least);
            expect(nodes).toBeLessThanOrEqual(most);
          }
          if (plan.short >= least) expect(plan.surplusSpurs).toBe(0);
          if (plan.short > 0 && kept > 0) expect(plan.nodes === kept * most).toBe(true);
        },
      ),
    );
  });
});

describe("the order of work", () => {
  const block = (name: string, rest: Partial<BlockOfWork> = {}): BlockOfWork => ({
    block: name,
    vines: 100,
    vinesDone: 0,
    tender: false,
    fruitfulSecondaries: false,
    twice: false,
    ...rest,
  });
  /** 46055 is Monday 2 February 2026. */
  const MONDAY = 46055;
  const calendar: CrewCalendar = {
    startsOn: MONDAY,
    secondPassOn: MONDAY + 70,
    crew: 2,
    hoursADay: 5,
    daysAWeek: 5,
    daysOff: [],
    minutesAVine: 6,
    secondPassShare: 0.5,
    thinningOn: MONDAY + 105,
    minutesAVineThinning: 2,
  };

  test("University of Georgia, Bulletin 1505: hardy blocks and fruitful secondaries first, tender ones last", () => {
    const passes = orderOfWork([
      block("tender", { tender: true, deadShare: 0.1 }),
      block("hardy, hurt", { deadShare: 0.4 }),
      block("hardy", { deadShare: 0.2 }),
      block("not cut"),
      block("secondaries", { fruitfulSecondaries: true, deadShare: 0.5 }),
    ]);
    expect(passes.map(({ block: name }) => name)).toEqual([
      "secondaries",
      "hardy",
      "hardy, hurt",
      "not cut",
      "tender",
    ]);
  });

  test("a block of which no buds were cut comes after those that have a count, wherever it is written", () => {
    const blocks = [block("not cut"), block("hurt", { deadShare: 1 }), block("whole", { deadShare: 0 })];
    for (const written of [blocks, [...blocks].reverse()])
      expect(orderOfWork(written).map(({ block: name }) => name)).toEqual(["whole", "hurt", "not cut"]);
  });

  test("a block pruned twice comes again after all first passes", () => {
    const passes = orderOfWork([block("A", { twice: true, vinesDone: 40 }), block("B")]);
    expect(passes.map(({ block: name, pass, vinesDone }) => [name, pass, vinesDone])).toEqual([
      ["A", "first", 40],
      ["B", "only", 0],
      ["A", "second", 0],
    ]);
  });

  test("by hand: 100 vines at 6 min are 10 h, one day of two people at 5 h", () => {
    const plan = plannedWork(orderOfWork([block("A"), block("B", { vines: 250, vinesDone: 100 })]), calendar);
    expect(
      plan.map(({ hours, crewDays, firstDay, lastDay }) => [
        hours,
        crewDays,
        firstDay - MONDAY,
        lastDay - MONDAY,
      ]),
    ).toEqual([
      [10, 1, 0, 0],
      [15, 1.5, 1, 2],
    ]);
  });

  test("weekends and days off are passed over, and hours stand on their day", () => {
    const plan = plannedWork(orderOfWork([block("A", { vines: 600 })]), {
      ...calendar,
      daysOff: [MONDAY + 1],
    });
    // Monday, Wednesday, Thursday, Friday: 40 h; Monday and Tuesday of the next week: 20 h
    expect(plan[0].days.map(({ day, hours }) => [day - MONDAY, hours])).toEqual([
      [0, 10],
      [2, 10],
      [3, 10],
      [4, 10],
      [7, 10],
      [8, 10],
    ]);
    expect(plan[0].lastDay).toBe(MONDAY + 8);
  });

  test("a first day before 1900 or after 9999 is no day of a spreadsheet", () => {
    for (const startsOn of [-1, 2958466])
      expect(() => plannedWork([], { ...calendar, startsOn })).toThrow(
        expect.objectContaining({
          code: "outside",
          facts: { argument: "starts_on", value: startsOn, least: 0, most: 2958465, unit: "" },
        }),
      );
  });

  test("the second pass waits for its day", () => {
    const plan = plannedWork(orderOfWork([block("A", { twice: true })]), calendar);
    expect(plan.map(({ pass, hours, firstDay }) => [pass, hours, firstDay - MONDAY])).toEqual([
      ["first", 10, 0],
      ["second", 5, 70],
    ]);
  });

  test("shoots are thinned after all pruning, on the vines that have too many, at their own minutes", () => {
    const blocks = [
      block("A", { twice: true, vinesToThin: 60 }),
      block("B"),
      block("C", { vinesToThin: 150 }),
    ];
    // 60 x 2 / 60 = 2 h and 150 x 2 / 60 = 5 h, both on the one day of 10 h
    expect(
      plannedWork(orderOfWork(blocks), calendar).map(({ block: name, pass, hours, firstDay }) => [
        name,
        pass,
        hours,
        firstDay - MONDAY,
      ]),
    ).toEqual([
      ["A", "first", 10, 0],
      ["B", "only", 10, 1],
      ["C", "only", 10, 2],
      ["A", "second", 5, 70],
      ["A", "thinning", 2, 105],
      ["C", "thinning", 5, 105],
    ]);
  });

  test("where pruning lasts into it, thinning waits for the end of pruning", () => {
    const late = plannedWork(orderOfWork([block("A", { vinesToThin: 60 })]), {
      ...calendar,
      thinningOn: MONDAY - 30,
    });
    expect(late.map(({ pass, firstDay }) => [pass, firstDay - MONDAY])).toEqual([
      ["only", 0],
      ["thinning", 1],
    ]);
  });

  test("the Monday of a day agrees with the calendar of JavaScript", () => {
    for (let serial = 40000; serial < 47000; serial += 13) {
      const date = new Date(Date.UTC(1899, 11, 30) + mondayOf(serial) * 86400000);
      expect(date.getUTCDay()).toBe(1);
      expect(serial - mondayOf(serial)).toBeGreaterThanOrEqual(0);
      expect(serial - mondayOf(serial)).toBeLessThan(7);
    }
  });

  test("no day holds more hours than the crew works, and all hours are there", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 900 }), { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 1, max: 7 }),
        (vines, daysAWeek) => {
          const plan = plannedWork(
            orderOfWork(vines.map((count, index) => block(`B${index}`, { vines: count }))),
            { ...calendar, daysAWeek },
          );
          const byDay = new Map<number, number>();
          for (const { days, hours } of plan) {
            expect(days.reduce((sum, one) => sum + one.hours, 0)).toBeCloseTo(hours, 6);
            for (const { day, hours: here } of days) {
              expect(isWorkday(day, { ...calendar, daysAWeek })).toBe(true);
              byDay.set(day, (byDay.get(day) ?? 0) + here);
            }
          }
          for (const hours of byDay.values()) expect(hours).toBeLessThanOrEqual(10 + 1e-6);
        },
      ),
    );
  });
});
