import { blockMean } from "../../src/domain/blockMean";
import { clustersToRemove } from "../../src/domain/clustersToRemove";
import { gapsByRow } from "../../src/domain/gapsByRow";
import { publishedOfGrape } from "../../src/domain/grapeFigures";
import { limitedNodes } from "../../src/domain/limitedNodes";
import { nodesAfterInjury } from "../../src/domain/nodesAfterInjury";
import { nodePlan } from "../../src/domain/plan/nodePlan";
import { isWorkday, plannedWork } from "../../src/domain/plan/orderOfWork";
import { clopperPearsonInterval, wilsonInterval } from "../../src/domain/proportionInterval";
import { seededRandom } from "../../src/domain/random";
import { shootsToThin } from "../../src/domain/shootsToThin";
import { kilograms, kilogramsPerHectare, metres, perMetre, vinesPerHectare } from "../../src/domain/units";
import { WINTER_CALENDAR } from "./plan/winterCalendar";

// Where a calculation turns from one case to the next; arithmetic by hand, beside each.

describe("a block's mean", () => {
  test("of counts reaches no lower than nothing: 0, 0, 3 is 1, less 4.303 x 1.732 / 1.732", () => {
    expect(blockMean([0, 0, 3], Infinity, 0.95)).toMatchObject({ mean: 1, low: 0 });
  });

  test("of figures below nothing, in any order: -1, 0, 4 is 1, less 4.302653 x 2.645751 / 1.732051", () => {
    for (const figures of [
      [-1, 0, 4],
      [4, 0, -1],
      [0, -1, 4],
    ])
      expect(blockMean(figures, Infinity, 0.95).low).toBeCloseTo(1 - (4.302653 * 2.645751) / 1.732051, 4);
  });

  test("of nothing has no spread for its size", () => {
    expect(blockMean([-1, 0, 1], Infinity, 0.95).cv).toBeUndefined();
    expect(blockMean([0, 0], Infinity, 0.95)).toMatchObject({ low: 0, high: 0, cv: undefined });
  });
});

test.each([wilsonInterval, clopperPearsonInterval])("%p ends at nothing and at all", (interval) => {
  for (const trials of [1, 7, 10, 148]) {
    expect(interval(0, trials, 0.95)).toMatchObject({ share: 0, low: 0 });
    expect(interval(trials, trials, 0.95)).toMatchObject({ share: 1, high: 1 });
    expect(interval(0, trials, 0.95).high).toBeLessThan(1);
    expect(interval(trials, trials, 0.95).low).toBeGreaterThan(0);
  }
});

describe("gaps by row", () => {
  const cordon = { block: "A", row: 1, vine: 1, positions: 8, liveSpurs: 6 };

  test("the longest gap is the longest of those written down, and of none there is none", () => {
    const gaps = (longest: readonly (number | undefined)[]) =>
      gapsByRow(longest.map((longestGap) => ({ ...cordon, longestGap })))[0].longestGap;
    expect(gaps([1, 3, 2])).toBe(3);
    expect(gaps([undefined, 0])).toBe(0);
    expect(gaps([2, undefined])).toBe(2);
    expect(gaps([undefined])).toBeUndefined();
  });

  test("a row without positions has no share", () => {
    expect(gapsByRow([{ ...cordon, positions: 0, liveSpurs: 0 }])).toMatchObject([
      { gaps: 0, share: undefined },
    ]);
  });

  test("rows of one number in two blocks are two rows, and a vine counts once", () => {
    const rows = gapsByRow([cordon, { ...cordon, block: "B" }, { ...cordon, liveSpurs: 8 }]);
    expect(rows).toMatchObject([
      { block: "A", vines: 1, cordons: 2, gaps: 2, share: 2 / 16 },
      { block: "B", vines: 1, cordons: 1, gaps: 2, share: 2 / 8 },
    ]);
  });
});

test("a budget on its limit is not limited, one beyond it is held to it", () => {
  expect(limitedNodes(20, 20, 60)).toEqual({ nodes: 20, limited: undefined });
  expect(limitedNodes(60, 20, 60)).toEqual({ nodes: 60, limited: undefined });
  expect(limitedNodes(19, 20, 20)).toEqual({ nodes: 20, limited: "least" });
  expect(limitedNodes(21, 20, 20)).toEqual({ nodes: 20, limited: "most" });
});

test.each([
  [5200, 52],
  [5199.99, 51],
  [300, 3],
])(
  "%p kg on 1,000 vines in clusters of 0.1 kg are %p whole ones, though 0.3 / 0.1 is a hair under 3",
  (crop, keep) => {
    expect(clustersToRemove(kilogramsPerHectare(crop), vinesPerHectare(1000), kilograms(0.1), 70)).toEqual({
      keep,
      remove: 70 - keep,
    });
  },
);

test("shoots that may all stay take no hour; 10 of 40 to rub off take 100 vines x 3 minutes = 5", () => {
  const thinned = (shoots: number) => shootsToThin(shoots, metres(2), perMetre(15), 100, 3);
  expect(thinned(30)).toEqual({ keep: 30, remove: 0, hours: 0 });
  expect(thinned(40)).toEqual({ keep: 30, remove: 10, hours: 5 });
});

test("an injury rule is known by its name however it is written", () => {
  expect(nodesAfterInjury(40, 0.1, " msu 2002 ")).toBe(40);
});

test("a grape's figure says whether it is published of the cultivar or of its kind", () => {
  expect(publishedOfGrape("secondaryWorth", "Norton")).toMatchObject({ of: "cultivar", kind: "american" });
  expect(publishedOfGrape("nodeRule", "Norton")).toMatchObject({ of: "kind", kind: "american" });
  expect(publishedOfGrape("nodeRule", "unheard of", "vinifera")).toMatchObject({
    of: "kind",
    kind: "vinifera",
  });
});

test("a seeded source walks by the golden ratio of 32 bits: its second number is the first of a seed so much further", () => {
  for (const seed of [0, 5, 20260301]) {
    const random = seededRandom(seed);
    random();
    expect(random()).toBe(seededRandom(seed + 0x9e3779b9)());
  }
});

describe("nodes over spurs", () => {
  test("no spur carries no node: all are short", () => {
    expect(nodePlan(40, 0, 1, 3)).toEqual({ spurs: [], nodes: 0, short: 40, surplusSpurs: 0 });
  });

  test("fewest above most a spur is refused", () => {
    expect(() => nodePlan(40, 10, 3, 2)).toThrow(
      expect.objectContaining({
        kind: "invalid",
        code: "leastAboveMost",
        facts: { argument: "least", least: 3, most: 2 },
      }),
    );
  });
});

describe("the crew's calendar", () => {
  const pass = { pass: "only", vinesDone: 0 } as const;

  test("a block that fills a day to its end lets the next begin on the day after: 100 vines x 6 min = 2 x 5 h", () => {
    const [first, second] = plannedWork(
      [
        { ...pass, block: "A", vines: 100 },
        { ...pass, block: "B", vines: 50 },
      ],
      WINTER_CALENDAR,
    );
    expect(first).toMatchObject({ firstDay: 46055, lastDay: 46055, days: [{ day: 46055, hours: 10 }] });
    expect(second).toMatchObject({ firstDay: 46056, lastDay: 46056, days: [{ day: 46056, hours: 5 }] });
  });

  test("a block with nothing left to do takes no day, and stands where the work stands", () => {
    const [, done, next] = plannedWork(
      [
        { ...pass, block: "A", vines: 100 },
        { ...pass, block: "B", vines: 50, vinesDone: 50 },
        { ...pass, block: "C", vines: 10 },
      ],
      WINTER_CALENDAR,
    );
    expect(done).toMatchObject({ hours: 0, firstDay: 46055, lastDay: 46055, days: [] });
    expect(next).toMatchObject({ firstDay: 46056, lastDay: 46056 });
  });

  test("ten years of days off are not searched to their end", () => {
    const daysOff = Array.from({ length: 4000 }, (_, day) => 46055 + day);
    expect(isWorkday(46055 + 3999, { daysAWeek: 7, daysOff })).toBe(false);
    expect(
      plannedWork([{ ...pass, block: "A", vines: 10 }], { ...WINTER_CALENDAR, daysAWeek: 7, daysOff })[0]
        .firstDay,
    ).toBe(46055);
  });
});
