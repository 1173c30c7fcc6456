import { bestPlans, trunkGain } from "../../../src/domain/choice/bestPlans";
import type { WeighedCordon } from "../../../src/domain/choice/compareCordons";
import { keepPlan, layPlan, layPlans, type SidePlan } from "../../../src/domain/choice/sidePlans";
import type { Trunk } from "../../../src/domain/choice/trunksOf";
import { metres } from "../../../src/domain/units";
import { RULES } from "./standardRules";

// By hand; two trunks earn 0.15 and plans within 0.05 are close unless a case says otherwise.

function cordon(letter: string, low: number, high = low, rest: Partial<WeighedCordon["candidate"]> = {}) {
  const score = {
    score: (low + high) / 2,
    low,
    high,
    missing: [],
    leftOut: [],
  };
  return {
    candidate: { side: "left", cordon: letter, ...rest },
    score,
    trunkCondition: undefined,
  } as unknown as WeighedCordon;
}

const keeping = (letter: string, trunk: SidePlan["trunk"], low: number, high = low): SidePlan => ({
  keeps: cordon(letter, low, high),
  trunk,
  low,
  high,
});
const cane = (from: number | "head", worth: number): SidePlan => ({
  layFrom: from,
  trunk: from === "head" ? "none" : from,
  low: worth,
  high: worth,
});
const nameOf = (plan: SidePlan | undefined) => plan?.keeps?.candidate.cordon ?? plan?.layFrom;
const chosen = (first: readonly SidePlan[], second?: readonly SidePlan[], margin = 0.05) => {
  const { best, worth, lead, close } = bestPlans(first, second, 0.15, margin);
  return {
    best: [best.first, best.second].map(nameOf),
    worth,
    lead,
    close: close.map(({ plan, behind }) => [nameOf(plan.first), nameOf(plan.second), behind]),
  };
};

describe("the best plan of a vine with one side", () => {
  test("is the best of its plans, and those within the margin are close", () => {
    const { best, worth, lead, close } = bestPlans(
      [keeping("C", 1, 0.8), keeping("A", 1, 0.9), keeping("B", 1, 0.87)],
      undefined,
      0.15,
      0.05,
    );
    expect(best).toEqual({ first: keeping("A", 1, 0.9) });
    expect(worth).toBe(0.9);
    expect(lead).toBeCloseTo(0.03, 9);
    expect(close).toEqual([
      {
        plan: { first: keeping("B", 1, 0.87) },
        behind: expect.closeTo(0.03, 9),
      },
    ]);
  });

  test.each([
    { apart: 0.05, asked: ["B"] },
    { apart: 0.051, asked: [] },
  ])("a plan $apart below the best, with a margin of 0.05", ({ apart, asked }) => {
    const { close } = chosen([keeping("A", 1, 0.9), keeping("B", 1, 0.9 - apart)]);
    expect(close.map(([letter]) => letter)).toEqual(asked);
  });

  test("of equal plans the first is taken, also where only rounding sets them apart", () => {
    const rounded = 0.1 + 0.2; // 0.30000000000000004
    expect(chosen([keeping("A", 1, 0.3), keeping("B", 1, rounded)]).best[0]).toBe("A");
    expect(chosen([keeping("B", 1, rounded), keeping("A", 1, 0.3)]).best[0]).toBe("B");
  });

  test("two canes are no question, and without another cordon the lead has no end", () => {
    expect(chosen([cane(1, 0.5), cane(2, 0.5)])).toMatchObject({
      best: [1, undefined],
      lead: Infinity,
      close: [],
    });
  });

  test("without any plan there is nothing to choose from", () => {
    expect(() => chosen([])).toThrow(new RangeError("a side without any plan"));
  });
});

describe("the best pair of plans", () => {
  test("two cordons on two trunks may each be the lesser of their side: 0.8 + 0.85 + 0.15 against 0.85 + 0.85", () => {
    const pair = chosen([keeping("A", 1, 0.85), keeping("B", 2, 0.8)], [keeping("C", 1, 0.85)]);
    expect(pair.best).toEqual(["B", "C"]);
    expect(pair.worth).toBeCloseTo(1.8, 9);
    expect(pair.lead).toBeCloseTo(0.1, 9);
    expect(pair.close).toEqual([]);
  });

  test("a count that is missing on the plan both pairs share cancels out", () => {
    const open = keeping("A", 1, 0, 1);
    const sides = [keeping("C", 2, 0.9), keeping("D", 2, 0.87), keeping("E", 2, 0.6)];
    // A may be worth anything: D stays 0.03 behind C with it, E 0.3
    expect(chosen([open], sides).close).toEqual([["A", "D", expect.closeTo(0.03, 9)]]);
    expect(chosen(sides, [open]).close).toEqual([["D", "A", expect.closeTo(0.03, 9)]]);
  });

  test.each([
    // A lies at 0.8 at least and B at 0.84 at most: B could come out ahead, though in the middle it is 0.13 behind
    {
      why: "bounds that overlap",
      first: [keeping("A", 1, 0.8, 1), keeping("B", 1, 0.7, 0.84)],
      close: [0.13],
    },
    // 0.8 less 0.74 is 0.06
    {
      why: "bounds that lie 0.06 apart",
      first: [keeping("A", 1, 0.8, 1), keeping("B", 1, 0.6, 0.74)],
      close: [],
    },
  ])("$why, on either side of the vine", ({ first, close }) => {
    const across = [keeping("C", 2, 0.9)];
    const behind = close.map((one) => expect.closeTo(one, 9));
    expect(chosen(first, across).close.map(([, , distance]) => distance)).toEqual(behind);
    expect(chosen(across, first).close.map(([, , distance]) => distance)).toEqual(behind);
  });

  test.each([
    // C hangs on trunk 1 as well; B's trunk is not known: it is worth half of 0.15 and could earn all of it
    {
      why: "0.18 less 0.15 is close",
      first: [keeping("A", 1, 0.98), keeping("B", undefined, 0.8)],
      close: [0.105],
    },
    {
      why: "0.21 less 0.15 is not",
      first: [keeping("A", 1, 0.98), keeping("B", undefined, 0.77)],
      close: [],
    },
    // the better one's own trunk is not known: it may earn nothing of its 0.15
    {
      why: "0.02 is close",
      first: [keeping("A", undefined, 0.9), keeping("B", 1, 0.88)],
      close: [0.095],
    },
    {
      why: "0.06 is not",
      first: [keeping("A", undefined, 0.9), keeping("B", 1, 0.84)],
      close: [],
    },
  ])("a trunk that nobody wrote down: $why", ({ first, close }) => {
    expect(chosen(first, [keeping("C", 1, 0.9)]).close).toEqual(
      close.map((behind) => ["B", "C", expect.closeTo(behind, 9)]),
    );
  });
});

test.each([
  { why: "two trunks", trunks: [1, 2], gain: 0.15 },
  { why: "one trunk", trunks: [1, 1], gain: 0 },
  {
    why: "a numbered trunk and one that carries nothing",
    trunks: [1, "otherTrunk"],
    gain: 0.15,
  },
  { why: "a cane from the head beside a trunk", trunks: ["none", 2], gain: 0 },
  { why: "a trunk beside a cane from the head", trunks: [2, "none"], gain: 0 },
  {
    why: "a cane from the head beside a trunk that nobody wrote down",
    trunks: ["none", undefined],
    gain: 0,
  },
  { why: "one trunk not known", trunks: [undefined, 2], gain: 0.075 },
  { why: "the other not known", trunks: [2, undefined], gain: 0.075 },
  { why: "neither known", trunks: [undefined, undefined], gain: 0.075 },
] as const)("what two sides earn by their trunks, $why: $gain", ({ trunks: [one, two], gain }) => {
  expect(trunkGain({ first: keeping("A", one, 1), second: keeping("B", two, 1) }, 0.15)).toBeCloseTo(gain, 9);
});

test("a vine with one side earns nothing by its trunk", () => {
  expect(trunkGain({ first: keeping("A", 1, 1) }, 0.15)).toBe(0);
});

describe("keeping a cordon", () => {
  // a hurt trunk costs 0.10, a diseased one 0.20; a new cane is worth 0.50; from a third dead on a cordon is worth no more
  const DEAD_STRETCH = { positions: 10, liveSpurs: 6, longestGap: 4 };

  test("is worth its score between its bounds, less what its trunk costs", () => {
    const one = {
      ...cordon("A", 0.6, 0.9, { trunk: 3 }),
      trunkCondition: "injured" as const,
    };
    expect(keepPlan(one, RULES)).toEqual({
      keeps: one,
      trunk: 3,
      low: expect.closeTo(0.5, 9),
      high: expect.closeTo(0.8, 9),
    });
  });

  test("with a dead stretch it is worth no more than a cane, and with a lower score no more than that", () => {
    expect(keepPlan(cordon("A", 0.8, 0.9, DEAD_STRETCH), RULES)).toMatchObject({
      low: 0.5,
      high: 0.5,
    });
    expect(keepPlan(cordon("A", 0.3, 0.4, DEAD_STRETCH), RULES)).toMatchObject({
      low: 0.3,
      high: 0.4,
    });
  });

  test("on a young vine no stretch is dead", () => {
    expect(keepPlan(cordon("A", 0.8, 0.9, DEAD_STRETCH), RULES, true)).toMatchObject({ low: 0.8, high: 0.9 });
  });

  test("a stretch that may be as long costs only its lower bound: 5 of 10 empty, between 1 and 5 in a row", () => {
    // 5 in a row are half of the places: 0.50; one in a row is no dead stretch: the score
    const places = { positions: 10, liveSpurs: 5, length: metres(1) };
    expect(keepPlan(cordon("A", 0.8, 0.9, places), RULES)).toMatchObject({
      low: 0.5,
      high: 0.9,
    });
  });
});

describe("where a cane can be laid from", () => {
  const trunk = (number: number, rest: Partial<Trunk> = {}): Trunk => ({
    number,
    condition: undefined,
    live: true,
    ...rest,
  });
  const laid = (trunks: readonly Trunk[], liveTrunks?: number, anyLivingWood = true) =>
    layPlans(trunks, liveTrunks, anyLivingWood, RULES).map(({ layFrom, low }) => [layFrom, low]);

  test.each([
    {
      why: "each live trunk",
      trunks: [trunk(1), trunk(2), trunk(3, { live: false })],
      plans: [
        [1, 0.5],
        [2, 0.5],
      ],
    },
    {
      why: "sound before hurt",
      trunks: [trunk(1, { condition: "injured" }), trunk(2)],
      plans: [[2, 0.5]],
    },
    {
      why: "injured before diseased, less 0.10",
      trunks: [trunk(1, { condition: "injured" }), trunk(2, { condition: "diseased" })],
      plans: [[1, 0.4]],
    },
    {
      why: "one on which a cane stands",
      trunks: [trunk(1, { noCane: true }), trunk(2)],
      plans: [[2, 0.5]],
    },
    {
      why: "one where none stands anywhere: worth nothing yet",
      trunks: [trunk(1, { noCane: true })],
      plans: [[1, 0]],
    },
    {
      why: "a live trunk that carries nothing, besides",
      trunks: [trunk(1)],
      live: 2,
      plans: [
        [1, 0.5],
        ["otherTrunk", 0.5],
      ],
    },
    {
      why: "as many live trunks as are numbered",
      trunks: [trunk(1)],
      live: 1,
      plans: [[1, 0.5]],
    },
    {
      why: "a live trunk that carries nothing before one without a cane and before a hurt one",
      trunks: [trunk(1, { noCane: true }), trunk(2, { condition: "injured" })],
      live: 3,
      plans: [["otherTrunk", 0.5]],
    },
  ] as const)("$why", (row) => {
    expect(laid(row.trunks, "live" in row ? row.live : undefined)).toEqual(row.plans);
  });

  test("without a live trunk from the head while wood lives, else from the ground; neither brings a trunk", () => {
    expect(laid([], undefined, true)).toEqual([["head", 0.5]]);
    expect(laid([trunk(1, { live: false })], 0, false)).toEqual([["ground", 0.5]]);
    expect(layPlan("head", undefined, RULES).trunk).toBe("none");
    expect(layPlan("ground", undefined, RULES).trunk).toBe("none");
    expect(layPlan("otherTrunk", undefined, RULES).trunk).toBe("otherTrunk");
  });

  test("a cane from a diseased trunk is worth 0.50 - 0.20", () => {
    expect(layPlan(4, "diseased", RULES)).toEqual({
      layFrom: 4,
      trunk: 4,
      low: expect.closeTo(0.3, 9),
      high: expect.closeTo(0.3, 9),
    });
  });
});

test("a plan that a third one beats, whatever the missing counts are, is no question", () => {
  // Two canes are worth 0.5 + 0.5 + 0.15, which A with B of worth 0 could fall to; but A with the cane from trunk 2 is
  // worth 1 + 0.5 + 0.15 and so lies 0.5 above them for certain, and 0.15 above A with the cane from trunk 1.
  const { best, close } = chosen(
    [keeping("A", 1, 1), cane(1, 0.5), cane(2, 0.5)],
    [keeping("B", 2, 0, 1), cane(1, 0.5), cane(2, 0.5)],
  );
  expect(best).toEqual(["A", "B"]);
  expect(close.map(([one, two]) => [one, two])).toEqual([["A", 2]]);
});

test.each([
  { least: 0.451, asked: [] },
  { least: 0.45, asked: [["C", "B"]] },
])("a third plan that is above another by its worth of at least $least", ({ least, asked }) => {
  // C and B 0.4 + 0.5; A and B 0.451 or 0.45 and 0.5 at least: more than the margin of 0.05 above it, or within
  const { close } = chosen(
    [keeping("D", 1, 0.3, 0.9), keeping("A", 1, least), keeping("C", 1, 0.4)],
    [keeping("B", 2, 0.5)],
  );
  expect(close.map(([one, two]) => [one, two])).toEqual([["A", "B"], ...asked]);
});
