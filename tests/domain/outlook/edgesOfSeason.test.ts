import { cropOutlook } from "../../../src/domain/outlook/cropOutlook";
import { clustersWeighedTogether } from "../../../src/domain/outlook/clustersWeighed";
import { betaEstimate, exactly, fromYears } from "../../../src/domain/outlook/estimate";
import { fruitfulNodes } from "../../../src/domain/outlook/fruitfulNodes";
import { nextSteps, sampledUnits, type StepLimits } from "../../../src/domain/outlook/nextSteps";
import { disagreement, ownHarvests } from "../../../src/domain/outlook/ownHarvests";
import { samplingPlan } from "../../../src/domain/outlook/samplingPlan";
import { secondariesOnly, secondariesWritten } from "../../../src/domain/outlook/secondariesWritten";
import { shrunkRatio, shrunkShare } from "../../../src/domain/outlook/shrunkYears";
import { spurLoss, yearsToFloor, type RowSeason } from "../../../src/domain/outlook/spurLoss";
import { thinning, thinningGroups } from "../../../src/domain/outlook/thinning";
import { fewVines, vinesAtRandom, vinesByRow } from "../../../src/domain/outlook/vinesCounted";
import { vinesPerHectare } from "../../../src/domain/units";

// Where a calculation turns from one case to the next; arithmetic by hand, beside each.

describe("vines counted", () => {
  test("40 and 60 of 8 vines: 50, root of 200 x 0.75 / 2", () => {
    const { standardError, ...rest } = vinesAtRandom([40, 60], 8);
    expect(standardError).toBeCloseTo(Math.sqrt(75), 12);
    expect(rest).toEqual({
      source: "vines",
      value: 50,
      degrees: 1,
      law: "t",
      sample: { unit: "vines", n: 2, of: 8 },
    });
    expect(vinesAtRandom([40, 60]).standardError).toBeCloseTo(10, 12);
  });

  test.each([
    ["at random", () => vinesAtRandom([40], 100), 1],
    [
      "row by row",
      () =>
        vinesByRow([
          { vines: 10, counts: [40] },
          { vines: 10, counts: [] },
        ]),
      1,
    ],
    ["row by row, none", () => vinesByRow([]), 0],
    ["few", () => fewVines([40], 100, 0.4), 1],
  ])("%s: fewer than two say nothing", (_why, call, value) => {
    expect(call).toThrow(
      expect.objectContaining({
        kind: "notAvailable",
        code: "tooFewVines",
        facts: { argument: "counts", value, needed: 2 },
      }),
    );
  });

  test("two rows that scatter alike: variance 2 x 0.96 / 2 each, a quarter of it counts, two degrees", () => {
    const { standardError, ...rest } = vinesByRow([
      { vines: 50, counts: [40, 42] },
      { vines: 50, counts: [60, 62] },
    ]);
    expect(standardError).toBeCloseTo(Math.sqrt(0.48), 12);
    expect(rest).toEqual({
      source: "vines",
      value: 51,
      degrees: 2,
      law: "t",
      sample: { unit: "vines", n: 4, of: 100 },
    });
  });

  test("where one row of five scatters alone, its own four degrees are behind the doubt", () => {
    const { degrees } = vinesByRow([
      { vines: 50, counts: [40, 42, 44, 46, 48] },
      { vines: 50, counts: [60, 60, 60, 60, 60] },
    ]);
    expect(degrees).toBeCloseTo(4, 12);
  });

  test("a row of one vine that was counted stands alone; beside it 50 and 70 of 10: (40 + 10 x 60) / 11", () => {
    const ours = vinesByRow([
      { vines: 1, counts: [40] },
      { vines: 10, counts: [50, 70] },
    ]);
    expect(ours.value).toBeCloseTo(640 / 11, 12);
    expect(ours.standardError).toBeCloseTo((10 / 11) * Math.sqrt((200 * 0.8) / 2), 12);
    expect(ours).toMatchObject({ degrees: 1, sample: { n: 3, of: 11 } });
  });

  test("a row with one count joins the next, a last one the row before it", () => {
    const [first, second, third] = [
      { vines: 10, counts: [40, 44] },
      { vines: 20, counts: [60] },
      { vines: 30, counts: [50, 58] },
    ];
    const joined = { vines: 50, counts: [60, 50, 58] };
    expect(vinesByRow([first, second, third])).toEqual(vinesByRow([first, joined]));
    expect(vinesByRow([first, third, second])).toEqual(
      vinesByRow([first, { vines: 50, counts: [50, 58, 60] }]),
    );
  });

  test("a row without bearing vines changes nothing", () => {
    const row = { vines: 50, counts: [40, 42] };
    const none = { vines: 0, counts: [] };
    expect(vinesByRow([none, row, none])).toEqual(vinesByRow([row]));
  });

  test("every vine of every row counted leaves no doubt", () => {
    expect(
      vinesByRow([
        { vines: 2, counts: [40, 42] },
        { vines: 1, counts: [50] },
      ]),
    ).toEqual({
      source: "vines",
      value: 44,
      standardError: 0,
      degrees: Infinity,
      law: "exact",
      sample: { unit: "vines", n: 3, of: 3 },
    });
  });

  test("too few to show how they differ borrow it: 45 x 0.4 x root of 0.98 / 2", () => {
    const { standardError, ...rest } = fewVines([40, 50], 100, 0.4);
    expect(standardError).toBeCloseTo(12.6, 12);
    expect(rest).toEqual({
      source: "vines",
      value: 45,
      degrees: Infinity,
      law: "t",
      sample: { unit: "vines", n: 2, of: 100 },
    });
  });
});

describe("own harvests", () => {
  const own = () =>
    ownHarvests([
      { year: 2025, picked: 900 },
      { year: 2023, picked: 600 },
      { year: 2024, picked: 720 },
    ])!;

  test("oldest first, with least, mean and most; of none there is nothing", () => {
    expect(own()).toEqual({
      years: [
        { year: 2023, picked: 600 },
        { year: 2024, picked: 720 },
        { year: 2025, picked: 900 },
      ],
      least: 600,
      mean: 740,
      most: 900,
    });
    expect(ownHarvests([])).toBeUndefined();
  });

  test.each([
    [300, 599, "allAbove"],
    [300, 600, "meanAbove"],
    [300, 739, "meanAbove"],
    [300, 740, "none"],
    [740, 950, "none"],
    [741, 950, "meanBelow"],
    [900, 950, "meanBelow"],
    [901, 950, "allBelow"],
    [730, 750, "leftOut"],
    [601, 719, "leftOut"],
    [720, 720, "meanAbove"],
  ])("%p to %p against 600, 720 and 900 kg, mean 740: %p", (low, high, verdict) => {
    expect(disagreement({ low, likely: low, high }, own())).toBe(verdict);
  });
});

describe("live secondaries as written", () => {
  const cane = (nodes: number, primaries: number, secondaries: number) => ({ nodes, primaries, secondaries });

  test.each([
    ["no cane: either way the same", [], "ofAllNodes", true],
    [
      "fewer than primaries, none too many: under dead primaries",
      [cane(8, 5, 3)],
      "underDeadPrimaries",
      true,
    ],
    ["as many as primaries and more than dead ones: of all nodes", [cane(8, 5, 5)], "ofAllNodes", true],
    ["as many as primaries and as dead ones: not told", [cane(8, 4, 4)], "ofAllNodes", false],
    ["canes against each other, one to one: not told", [cane(8, 5, 3), cane(8, 5, 7)], "ofAllNodes", false],
    [
      "canes against each other, two to one: the way of the two, not told",
      [cane(8, 5, 3), cane(8, 6, 1), cane(8, 5, 7)],
      "underDeadPrimaries",
      false,
    ],
    ["no dead primary, so either way the same", [cane(8, 8, 0), cane(8, 8, 8)], "ofAllNodes", true],
    ["no dead primary on one cane only", [cane(8, 8, 0), cane(8, 5, 7)], "ofAllNodes", false],
  ] as const)("%s", (_why, canes, written, told) => {
    expect(secondariesWritten(canes)).toEqual({ written, told });
  });

  test.each([
    [cane(8, 5, 7), "ofAllNodes", 2],
    [cane(8, 5, 3), "ofAllNodes", 0],
    [cane(8, 5, 9), "ofAllNodes", 3],
    [cane(8, 5, 2), "underDeadPrimaries", 2],
    [cane(8, 5, 4), "underDeadPrimaries", 3],
  ] as const)("%p written %p: %p dead primaries with a live secondary", (written, way, only) => {
    expect(secondariesOnly(written, way)).toBe(only);
  });
});

describe("the farm's own years", () => {
  const usual = { value: 1, yearSpread: 0.2, farmSpread: 0.2 };

  test("none: the usual figure, its spreads of years and farms together, four degrees", () => {
    expect(shrunkRatio([], { ...usual, value: 1.9, farmSpread: 0.15 })).toEqual({
      value: expect.closeTo(1.9, 12),
      spread: expect.closeTo(0.25, 12),
      degrees: 4,
      weight: 0,
      years: 0,
    });
  });

  test("one: as much weight as the usual figure where years differ as farms do, still four degrees", () => {
    expect(shrunkRatio([4], usual)).toEqual({
      value: expect.closeTo(2, 12),
      spread: expect.closeTo(Math.sqrt(0.04 + 0.02), 12),
      degrees: 4,
      weight: expect.closeTo(0.5, 12),
      years: 1,
    });
  });

  test("two, a tenth above and below on the logarithm: (4 x 0.04 + 0.02) / 5 = 0.036 between years", () => {
    expect(shrunkRatio([Math.exp(0.1), Math.exp(-0.1)], usual)).toEqual({
      value: expect.closeTo(1, 12),
      spread: expect.closeTo(Math.sqrt(0.036 + (0.04 * 0.036) / 0.116), 12),
      degrees: 5,
      weight: expect.closeTo(0.08 / 0.116, 12),
      years: 2,
    });
  });

  test.each([
    ["all, taken as 99.5 %: the logit of 0.995 and that of a half, midway", 1, 1],
    ["nothing, taken as 0.5 %", 0, -1],
  ])("a share of %s", (_why, year, sign) => {
    const value = 1 / (1 + Math.exp((-sign * Math.log(199)) / 2));
    expect(shrunkShare([year], { value: 0.5, yearSpread: 0.05, farmSpread: 0.05 })).toEqual({
      value: expect.closeTo(value, 12),
      spread: expect.closeTo(Math.sqrt(0.06) * value * (1 - value), 12),
      degrees: 4,
      weight: expect.closeTo(0.5, 12),
      years: 1,
    });
  });

  test("spreads of a share are carried over by the slope at the usual one: 0.032 over 0.8 x 0.2 is 0.2", () => {
    const { value, spread } = shrunkShare([], { value: 0.8, yearSpread: 0.032, farmSpread: 0.024 });
    expect(value).toBeCloseTo(0.8, 12);
    expect(spread).toBeCloseTo(0.04, 12);
  });
});

describe("spurs lost from winter to winter", () => {
  const season = (row: number, year: number, liveSpurs: number, positions = 200): RowSeason => ({
    row,
    year,
    positions,
    liveSpurs,
  });
  /** Student's t, 95 %, one degree: tables. */
  const T1 = 6.313752;

  test("100 to 90 and 100 to 80: 15 %, give or take t x root of 2 x 50 / 200", () => {
    expect(
      spurLoss([season(1, 2025, 100), season(1, 2026, 90), season(2, 2026, 80), season(2, 2025, 100)], 0.9),
    ).toEqual({
      lossAYear: {
        low: expect.closeTo(0.15 - T1 * 0.05, 6),
        likely: expect.closeTo(0.15, 12),
        high: expect.closeTo(0.15 + T1 * 0.05, 6),
      },
      liveShare: 0.425,
      latestYear: 2026,
      rows: 2,
      pairs: 2,
    });
  });

  test("a row is one observation, its winters together: residuals -1 and 1 of 380 spurs", () => {
    const { lossAYear, rows, pairs } = spurLoss(
      [
        ...[100, 90, 80].map((live, at) => season(1, 2024 + at, live)),
        ...[100, 90, 82].map((live, at) => season(2, 2024 + at, live)),
      ],
      0.9,
    );
    expect(lossAYear.likely).toBeCloseTo(0.1, 12);
    expect(lossAYear.high - lossAYear.likely).toBeCloseTo((T1 * 2) / 380, 6);
    expect({ rows, pairs }).toEqual({ rows: 2, pairs: 4 });
  });

  test("over two winters: 100 to 90 and to 72 are 81 %, 10 % a year, root of 2 x 162 over 2 x 0.9 x 200", () => {
    const { lossAYear } = spurLoss(
      [season(1, 2024, 100), season(1, 2026, 90), season(2, 2024, 100), season(2, 2026, 72)],
      0.9,
    );
    expect(lossAYear.likely).toBeCloseTo(0.1, 12);
    expect(lossAYear.likely - lossAYear.low).toBeCloseTo(T1 * 0.05, 6);
  });

  test("a row seen once tells nothing of the loss, but stands in the latest winter's share", () => {
    const two = [season(1, 2025, 100), season(1, 2026, 90), season(2, 2025, 100), season(2, 2026, 90)];
    const { lossAYear, ...rest } = spurLoss([...two, season(3, 2026, 10, 100), season(4, 2025, 100)], 0.9);
    expect(lossAYear.likely).toBeCloseTo(0.1, 12);
    expect(rest).toEqual({ liveShare: 190 / 500, latestYear: 2026, rows: 2, pairs: 2 });
  });

  test("rows grubbed up have lost all, and of no position none lives", () => {
    expect(
      spurLoss(
        [season(1, 2025, 100), season(1, 2026, 0, 0), season(2, 2025, 90), season(2, 2026, 0, 0)],
        0.9,
      ),
    ).toMatchObject({ lossAYear: { likely: expect.closeTo(1, 9), high: 1 }, liveShare: 0 });
  });

  test("a loss reaches no further than all", () => {
    const { high } = spurLoss(
      [season(1, 2025, 100), season(1, 2026, 100), season(2, 2025, 100), season(2, 2026, 0)],
      0.9,
    ).lossAYear;
    expect(high).toBe(1);
  });

  test.each([
    ["one row of two winters", [season(1, 2025, 100), season(1, 2026, 90), season(2, 2026, 90)], 1],
    ["no spur to lose", [season(1, 2025, 0), season(1, 2026, 5), season(2, 2025, 0), season(2, 2026, 5)], 2],
  ])("%s: no loss can be told", (_why, seasons, value) => {
    expect(() => spurLoss(seasons, 0.9)).toThrow(
      expect.objectContaining({
        kind: "notAvailable",
        code: "tooFewRows",
        facts: { argument: "seasons", value, needed: 2 },
      }),
    );
  });

  test("more spurs than positions are refused with their place, as many are not", () => {
    expect(() => spurLoss([season(7, 2025, 201)], 0.9)).toThrow(
      expect.objectContaining({
        kind: "invalid",
        code: "rowSpursAbovePositions",
        facts: { argument: "live_spurs", row: 7, year: 2025, value: 201, most: 200 },
      }),
    );
    expect(() => spurLoss([season(7, 2025, 200)], 0.9)).toThrow(
      expect.objectContaining({ code: "tooFewRows" }),
    );
  });

  test("a row twice in a winter is refused by its year", () => {
    expect(() => spurLoss([season(1, 2025, 100), season(1, 2025, 90)], 0.9)).toThrow(
      expect.objectContaining({ facts: { argument: "year", value: 0, least: 1, most: 200, unit: "" } }),
    );
  });

  test.each([
    ["on the floor it is there", 0.1, 0.7, 0.7, 0],
    ["without a loss it is never reached", 0, 0.9, 0.7, Infinity],
    ["no floor is never reached", 0.1, 0.9, 0, Infinity],
    ["with all lost a year is enough", 1, 0.9, 0.7, 1],
    ["half lost, from 80 % to 20 % in two years", 0.5, 0.8, 0.2, 2],
  ])("years to a floor: %s", (_why, loss, liveShare, floor, years) => {
    const certain = { low: loss, likely: loss, high: loss };
    const reached = expect.closeTo(years, 12);
    expect(yearsToFloor(certain, liveShare, floor)).toEqual({ low: reached, likely: reached, high: reached });
  });
});

describe("thinning", () => {
  const light = { name: "light", vines: 50, clusters: 40 };
  const heavy = { name: "heavy", vines: 50, clusters: 80 };

  test("all that hang may stay: nothing goes, no hour is spent", () => {
    expect(thinning([light, heavy], 6000, 3)).toEqual({
      keep: Infinity,
      groups: [
        { ...light, remove: 0, left: 40, hours: 0 },
        { ...heavy, remove: 0, left: 80, hours: 0 },
      ],
      hours: 0,
      left: 6000,
    });
  });

  test.each([
    [5999, 79, 5950],
    [5049, 60, 5000],
    [5050, 61, 5050],
    [4000, 40, 4000],
    [3999, 39, 3900],
    [100, 1, 100],
    [99, 0, 0],
    [0, 0, 0],
  ])("of 6,000 clusters %p may stay: %p on a vine at most, %p in all", (allowed, keep, left) => {
    expect(thinning([light, heavy], allowed, 3)).toMatchObject({ keep, left });
  });

  test("hours of the vines that are thinned alone, and of all together: 50 x 3 minutes are 2.5", () => {
    const hours = (allowed: number) => {
      const done = thinning([light, heavy], allowed, 3);
      return [...done.groups.map((group) => group.hours), done.hours];
    };
    expect(hours(5000)).toEqual([0, 2.5, 2.5]);
    expect(hours(3000)).toEqual([2.5, 2.5, 5]);
  });

  test("a mean of 70.4 with 52 allowed loses 19, with none allowed what it has", () => {
    const only = { name: "all", vines: 100, clusters: 70.4 };
    expect(thinning([only], 5200, 3).groups[0]).toMatchObject({
      remove: expect.closeTo(19, 9),
      left: expect.closeTo(51.4, 9),
    });
    expect(thinning([only], 0, 3).groups[0]).toMatchObject({ remove: 70.4, left: 0 });
  });

  test("counted vines are parted by how much they carry, the middle ones to the lighter group", () => {
    expect(thinningGroups([80, 30, 70, 50, 40], 11, ["light", "heavy"])).toEqual([
      { name: "light", vines: 6, clusters: 40 },
      { name: "heavy", vines: 5, clusters: 75 },
    ]);
  });
});

describe("which vines to count", () => {
  const rows = [
    { row: 1, vines: [1, 2, 3, 4] },
    { row: 2, vines: [] },
    { row: 3, vines: [11, 12, 13, 14] },
  ];
  const walk = (drawn: number, vines = 4) =>
    samplingPlan(rows, vines, () => drawn).map(({ row, vine }) => [row, vine]);

  test("two of four in each row: the first two, or with the largest numbers the last and then the first; up, then down", () => {
    expect(walk(0)).toEqual([
      [1, 1],
      [1, 2],
      [3, 12],
      [3, 11],
    ]);
    expect(walk(0.999)).toEqual([
      [1, 1],
      [1, 4],
      [3, 14],
      [3, 11],
    ]);
  });

  test("one of eight stands where the random start falls", () => {
    expect(walk(0.49, 1)).toEqual([[1, 2]]);
    expect(walk(0.5, 1)).toEqual([[3, 13]]);
  });
});

describe("what narrows the range", () => {
  const block = { planted: 200, bearing: exactly("missing", 1) };
  const costs = { vines: 3, canes: 4, clusters: 0.5 };
  const limits = (minutes: number, part: Partial<StepLimits> = {}): StepLimits => ({
    minutes,
    leastGain: 0,
    margin: 0.001,
    ...part,
  });
  const weighed = (n: number) =>
    ({
      stage: "clusters",
      clusters: exactly("vines", 60),
      clusterWeight: clustersWeighedTogether(0.1, 0.4, n),
    }) as const;

  test("75 minutes at half a minute are 150 clusters: the range of 200 in place of 50", () => {
    const now = cropOutlook(weighed(50), block, 0.9);
    const then = cropOutlook(weighed(200), block, 0.9);
    const near = (value: number) => expect.closeTo(value, 9);
    expect(nextSteps(weighed(50), block, 0.9, costs, limits(75))).toEqual([
      {
        unit: "clusters",
        more: 150,
        minutes: 75,
        block: { low: near(then.block.low), likely: near(1200), high: near(then.block.high) },
        halfWidth: near(then.halfWidth),
        gain: near(1 - then.halfWidth / now.halfWidth),
      },
    ]);
  });

  test("the crop of a hectare comes with it where the vines of a hectare are known", () => {
    const [step] = nextSteps(
      weighed(50),
      { ...block, density: vinesPerHectare(2000) },
      0.9,
      costs,
      limits(75),
    );
    expect(step.perHectare?.likely).toBeCloseTo(12000, 9);
    expect(step.perHectare?.high).toBeCloseTo(step.block.high * 10, 9);
  });

  test.each([
    ["not time for one", 2.9, 3, undefined],
    ["time for one to the minute", 3, 3, 1],
    ["three of 1.1 minutes in 3.3, though 3.3 / 1.1 is a hair less in the arithmetic", 3.3, 1.1, 3],
  ])("%s", (_why, minutes, each, more) => {
    const [step] = nextSteps(weighed(50), block, 0.9, { ...costs, clusters: each }, limits(minutes));
    expect(step?.more).toBe(more);
  });

  test("a pooled count of cut buds four times as large is four times as sure: same share, both sides fourfold", () => {
    const winter = (buds: ReturnType<typeof fruitfulNodes>) =>
      ({
        stage: "winter",
        nodes: exactly("vines", 40),
        buds,
        budbreak: exactly("budbreak", 0.9),
        clustersPerShoot: exactly("clustersPerShoot", 1.9),
        clusterWeight: exactly("clusterWeight", 0.1),
      }) as const;
    const buds = fruitfulNodes([{ nodes: 40, primaries: 22, secondariesOnly: 6 }], 0.38);
    const { a, b } = buds.shape!;
    const then = cropOutlook(winter(betaEstimate("buds", buds.value, 4 * a, 4 * b)), block, 0.9);
    const [step] = nextSteps(winter(buds), block, 0.9, costs, limits(12));
    expect(step).toMatchObject({ unit: "canes", more: 3, minutes: 12 });
    expect(step.halfWidth).toBeCloseTo(then.halfWidth, 9);
  });

  test("clusters have no plan of a count that ends them: at a margin of 5 % 175 vines of their scatter would do", () => {
    const [step] = nextSteps(weighed(50), block, 0.9, costs, limits(75, { margin: 0.05 }));
    expect(step.more).toBe(150);
  });

  test("the step that leaves the narrower range stands first, whichever it is", () => {
    const figures = { ...weighed(2), clusters: vinesAtRandom([60, 75, 50, 81, 66, 70, 58, 62], 200) };
    const units = (part: Partial<typeof costs>) =>
      nextSteps(figures, block, 0.9, { ...costs, ...part }, limits(60)).map(({ unit }) => unit);
    expect(units({ vines: 60 })).toEqual(["clusters", "vines"]);
    expect(units({ vines: 0.5, clusters: 60 })).toEqual(["clusters", "vines"]);
  });

  test("what is sampled has a unit, what is certain or of other years has none", () => {
    expect(
      sampledUnits({
        stage: "lagPhase",
        clusters: vinesAtRandom([60, 75, 50], 200),
        clusterWeight: clustersWeighedTogether(0.1, 0.4, 50),
        multiplier: fromYears("lagMultiplier", 2, 0.1),
      }),
    ).toEqual(["vines", "clusters"]);
    expect(sampledUnits(weighed(50))).toEqual(["clusters"]);
    expect(
      sampledUnits({
        stage: "clusters",
        clusters: vinesAtRandom([60, 75], 2),
        clusterWeight: clustersWeighedTogether(0.1, 0, 50),
      }),
    ).toEqual([]);
  });

  test("a gain on its least is advised", () => {
    const [{ gain }] = nextSteps(weighed(50), block, 0.9, costs, limits(75));
    expect(nextSteps(weighed(50), block, 0.9, costs, limits(75, { leastGain: gain }))).toHaveLength(1);
    expect(nextSteps(weighed(50), block, 0.9, costs, limits(75, { leastGain: gain + 1e-9 }))).toEqual([]);
  });

  test("a block without vines gains nothing", () => {
    const [step] = nextSteps(
      weighed(50),
      { planted: 200, bearing: exactly("missing", 0) },
      0.9,
      costs,
      limits(75),
    );
    expect(step).toMatchObject({ halfWidth: 0, gain: 0 });
  });
});
