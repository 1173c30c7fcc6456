import { isYoung, type CandidateCordon } from "../../../src/domain/choice/candidateCordon";
import { cordonScore, partsInUse, scoreOver } from "../../../src/domain/choice/cordonScore";
import type { CordonParts } from "../../../src/domain/choice/cordonParts";
import { diameterPart } from "../../../src/domain/choice/diameterPart";
import { liveSpursOf } from "../../../src/domain/choice/liveSpurs";
import { mustBeCandidate } from "../../../src/domain/choice/mustBeCandidate";
import { placesOn } from "../../../src/domain/choice/placesOn";
import { spursAndPlacing } from "../../../src/domain/choice/spursAndPlacing";
import { spursToCarry } from "../../../src/domain/choice/spursToCarry";
import { stretchPart } from "../../../src/domain/choice/stretchPart";
import { trunksOf } from "../../../src/domain/choice/trunksOf";
import { graver, trunkCost } from "../../../src/domain/choice/trunkWorth";
import { vineSides } from "../../../src/domain/choice/vineSides";
import { weighedVine } from "../../../src/domain/choice/weighedVine";
import { canBeLaidOver, worthWithDeadStretch } from "../../../src/domain/choice/worthWithDeadStretch";
import { metres } from "../../../src/domain/units";
import { RULES } from "./standardRules";

// Worked by hand.

const on = (counts: Partial<CandidateCordon>): CandidateCordon => ({ side: "left", cordon: "A", ...counts });

describe("what a dead stretch leaves a cordon worth, beside a cane of 0.50, where 0.4 of the places make it dead", () => {
  const rules = { newCane: 0.5, renewingShare: 0.4, spurSpacing: metres(0.1) };
  const FREE = { low: Infinity, high: Infinity };
  const known = (worth: number) => ({ low: expect.closeTo(worth, 9), high: expect.closeTo(worth, 9) });

  test.each([
    { why: "places nobody knows", counts: { longestGap: 9 }, worth: FREE },
    { why: "no place at all", counts: { positions: 0, longestGap: 0 }, worth: FREE },
    { why: "places alone", counts: { positions: 10 }, worth: FREE },
    { why: "3 of 10", counts: { positions: 10, liveSpurs: 7, longestGap: 3 }, worth: FREE },
    { why: "just 4 of 10", counts: { positions: 10, liveSpurs: 6, longestGap: 4 }, worth: known(0.5) },
    { why: "5 of 10 and 2 more", counts: { positions: 10, liveSpurs: 3, longestGap: 5 }, worth: known(0.3) },
    {
      why: "5 of the 10 of 1 m",
      counts: { length: metres(1), liveSpurs: 5, longestGap: 5 },
      worth: known(0.5),
    },
    { why: "5 of 10, spurs not counted", counts: { positions: 10, longestGap: 5 }, worth: known(0.5) },
    {
      why: "5 of 10, though only 2 are empty",
      counts: { positions: 10, liveSpurs: 8, longestGap: 5 },
      worth: known(0.5),
    },
    {
      why: "5 of 10 with a spur too many",
      counts: { positions: 10, liveSpurs: 11, longestGap: 5 },
      worth: known(0.5),
    },
    // 5 empty among 6 gaps: one in a row at least, all 5 at most
    {
      why: "5 of 10 live, the gap not counted",
      counts: { positions: 10, liveSpurs: 5 },
      worth: { low: 0.5, high: Infinity },
    },
    // 9 empty on both sides of one spur: 5 in a row at least, 4 besides; all 9 at most, none besides
    {
      why: "1 of 10 live, the gap not counted",
      counts: { positions: 10, liveSpurs: 1 },
      worth: { low: expect.closeTo(0.1, 9), high: 0.5 },
    },
    {
      why: "5 of 10 beyond two spurs",
      counts: { positions: 10, liveSpurs: 5, longestGap: 5, gapFrom: 2 },
      worth: FREE,
    },
    {
      why: "5 of 10 from the head",
      counts: { positions: 10, liveSpurs: 5, longestGap: 5, gapFrom: 0 },
      worth: known(0.5),
    },
  ])("$why", ({ counts, worth }) => {
    expect(worthWithDeadStretch(on(counts), rules)).toStrictEqual(worth);
  });

  test.each([
    { why: "beyond one spur", gap: { gapFrom: 1, longestGap: 4 }, empty: 4, can: true },
    { why: "from the head", gap: { gapFrom: 0, longestGap: 4 }, empty: 4, can: false },
    { why: "from nobody knows where", gap: { longestGap: 4 }, empty: 4, can: false },
    { why: "of nobody knows which length", gap: { gapFrom: 1 }, empty: 4, can: false },
    { why: "3 of 10 empty besides", gap: { gapFrom: 1, longestGap: 4 }, empty: 7, can: true },
    { why: "4 of 10 empty besides", gap: { gapFrom: 1, longestGap: 4 }, empty: 8, can: false },
    {
      why: "nobody knows what is empty besides",
      gap: { gapFrom: 1, longestGap: 4 },
      empty: undefined,
      can: true,
    },
  ])("a cane over the stretch, $why: $can", ({ gap, empty, can }) => {
    expect(canBeLaidOver(gap, 10, empty, 0.4)).toBe(can);
  });
});

describe("the trunks of a vine", () => {
  test("lowest number first, with the graver note and the greater age of two", () => {
    const rows = [
      on({ trunk: 3, trunkCondition: "injured", trunkAge: 9 }),
      on({ trunk: 1, trunkAge: 0 }),
      on({}),
      on({ trunk: 3, trunkCondition: "diseased", trunkAge: 4 }),
    ];
    expect(trunksOf({ candidates: rows })).toStrictEqual([
      { number: 1, condition: undefined, live: true, age: 0 },
      { number: 3, condition: "diseased", live: true, age: 9 },
    ]);
  });

  test.each([
    { why: "a living cordon", rows: [{ condition: "dead" }, {}], live: true },
    { why: "dead cordons only", rows: [{ condition: "dead" }, { condition: "dead" }], live: false },
    {
      why: "dead cordons, but written down as sound",
      rows: [{ condition: "dead", trunkCondition: "sound" }],
      live: true,
    },
    {
      why: "a living cordon, but written down as dead",
      rows: [{ condition: "sound", trunkCondition: "dead" }],
      live: false,
    },
  ] as const)("a trunk with $why: live is $live", ({ rows, live }) => {
    expect(trunksOf({ candidates: rows.map((row) => on({ trunk: 1, ...row })) })[0].live).toBe(live);
  });

  test.each([
    { why: "none counted on its one cordon", rows: [{ canesNearHead: 0 }], none: true },
    { why: "one counted", rows: [{ canesNearHead: 0 }, { canesNearHead: 1 }], none: false },
    { why: "nobody looked at the other", rows: [{ canesNearHead: 0 }, {}], none: false },
    {
      why: "some on a dead cordon",
      rows: [{ canesNearHead: 0 }, { canesNearHead: 2, condition: "dead" }],
      none: true,
    },
    { why: "dead cordons only", rows: [{ canesNearHead: 0, condition: "dead" }], none: false },
  ] as const)("no cane near the head of a trunk, $why: $none", ({ rows, none }) => {
    const [trunk] = trunksOf({ candidates: rows.map((row) => on({ trunk: 1, ...row })) });
    expect("noCane" in trunk).toBe(none);
  });

  test("the graver of two notes, whichever comes first; a note before none", () => {
    const inOrder = ["sound", "injured", "diseased", "dead"] as const;
    inOrder.forEach((worse, at) =>
      inOrder.slice(0, at + 1).forEach((better) => {
        expect(graver(better, worse)).toBe(worse);
        expect(graver(worse, better)).toBe(worse);
      }),
    );
    expect([graver(undefined, "sound"), graver("sound", undefined), graver(undefined, undefined)]).toEqual([
      "sound",
      "sound",
      undefined,
    ]);
  });

  test("Settings: an injured trunk costs 0.10, a diseased one 0.20, any other nothing", () => {
    const costs = [undefined, "sound", "injured", "diseased", "dead"] as const;
    expect(costs.map((condition) => trunkCost(condition, RULES))).toEqual([0, 0, 0.1, 0.2, 0]);
  });
});

describe("the sides of a vine", () => {
  const sidesOf = (sides: readonly string[], wanted: 1 | 2 = 2) =>
    vineSides(
      sides.map((side, at) => ({ candidate: { side, cordon: "ABCD"[at] } })),
      wanted,
    )?.map(({ side, members }) => `${side} ${members.map(({ candidate: { cordon } }) => cordon).join("")}`);

  test.each([
    { of: ["right", "left", "right"], sides: ["left B", "right AC"] },
    { of: ["south", "north"], sides: ["north B", "south A"] },
    { of: ["west"], sides: ["east ", "west A"] },
    { of: ["east"], sides: ["east A", "west "] },
    { of: [], sides: [] },
    { of: ["left", "north"], sides: undefined },
    { of: ["north", "left"], sides: undefined },
    { of: ["upper", "lower"], sides: undefined },
    { of: [""], sides: undefined },
  ])("of cordons on $of: $sides", ({ of, sides }) => {
    expect(sidesOf(of)).toEqual(sides);
  });

  test("a vine trained to one cordon has one side, that of its first candidate, whatever the names", () => {
    expect(sidesOf(["upper", "left", "north"], 1)).toEqual(["upper ABC"]);
  });
});

describe("what cannot stay", () => {
  const whyOut = (counts: Partial<CandidateCordon>, status: "bearing" | "young" = "bearing") =>
    weighedVine({ candidates: [on(counts)], status }, RULES).cordons[0].ruledOut;

  test.each([
    { counts: {}, why: undefined },
    { counts: { fixedChoice: "goes" }, why: "fixedGoes" },
    { counts: { fixedChoice: "cane", condition: "dead" }, why: "fixedCane" },
    {
      counts: { fixedChoice: "stays", condition: "dead", trunkCondition: "dead", length: metres(0.1) },
      why: undefined,
    },
    { counts: { condition: "dead", trunkCondition: "dead" }, why: "trunkDead" },
    { counts: { condition: "dead", trunk: 1, length: metres(0.1) }, why: "dead" },
    { counts: { condition: "injured", trunkCondition: "injured" }, why: undefined },
    // Settings: shorter than 12 in, 0.3048 m, it is a remnant
    { counts: { length: metres(0.3047) }, why: "remnant" },
    { counts: { length: metres(0.3048) }, why: undefined },
  ] as const)("$counts: $why", ({ counts, why }) => {
    expect(whyOut(counts)).toBe(why);
  });

  test("on a young vine none is too short", () => {
    expect(whyOut({ length: metres(0.1) }, "young")).toBeUndefined();
  });

  test("a dead trunk rules out each cordon on it, on whichever row it was written, and no other", () => {
    const { cordons } = weighedVine(
      {
        candidates: [
          on({ trunk: 1 }),
          on({ cordon: "B", trunk: 1, trunkCondition: "dead" }),
          on({ cordon: "C", trunk: 2 }),
        ],
      },
      RULES,
    );
    expect(cordons.map(({ ruledOut, trunkCondition }) => [ruledOut, trunkCondition])).toEqual([
      ["trunkDead", "dead"],
      ["trunkDead", "dead"],
      [undefined, undefined],
    ]);
  });

  test("a name is given twice on one side only where side and letter are the same", () => {
    const { cordons } = weighedVine(
      { candidates: [on({}), on({ side: "right" }), on({ cordon: "B" }), on({ cordon: "B" })] },
      RULES,
    );
    expect(cordons.map(({ namedTwice }) => namedTwice)).toEqual([false, false, true, true]);
  });

  test("the cordon of a young vine is measured by its own length, that of an older one by its wire", () => {
    // 5 spurs on 0.508 m, at one every 4 in: 5 of 5, or 5 of the 10 of a side of 1.016 m
    const spursOf = (status: "bearing" | "young") =>
      weighedVine(
        {
          candidates: [on({ length: metres(0.508), liveSpurs: 5 })],
          status,
          sideLength: metres(1.016),
        },
        RULES,
      ).cordons[0].score.parts.spurs.low;
    expect(spursOf("young")).toBeCloseTo(1, 9);
    expect(spursOf("bearing")).toBeCloseTo(0.5, 9);
  });

  test("a vine is young by its year of growth, or as a young or replanted one", () => {
    expect(
      (
        [
          { yearOfGrowth: 4 },
          { status: "young" },
          { status: "replanted" },
          { status: "bearing" },
          {},
        ] as const
      ).map((vine) => isYoung(vine)),
    ).toEqual([true, true, true, false, false]);
    expect(isYoung({ status: "bearing", yearOfGrowth: 2 })).toBe(true);
  });
});

describe("parts of a score where counts are missing", () => {
  const NOTHING = { low: 0, high: 1 };
  const exactly = (value: number) => ({ low: expect.closeTo(value, 9), high: expect.closeTo(value, 9) });

  test("live spurs are the sum of three directions, and of two nothing", () => {
    expect(liveSpursOf(on({ spursDown: 5, spursLevel: 2, spursUp: 1 }))).toBe(8);
    expect(liveSpursOf(on({ liveSpurs: 9, spursDown: 5, spursLevel: 2, spursUp: 1 }))).toBe(9);
    for (const way of ["spursDown", "spursLevel", "spursUp"] as const) {
      const { [way]: _missing, ...two } = { spursDown: 5, spursLevel: 2, spursUp: 1 };
      expect(liveSpursOf(on(two))).toBeUndefined();
    }
  });

  test("places are those counted, else a length over the distance from spur to spur, rounded", () => {
    expect(placesOn({ positions: 7, length: metres(1) }, metres(0.1))).toBe(7);
    expect(placesOn({ length: metres(0.96) }, metres(0.1))).toBe(10);
    expect(placesOn({ length: metres(0.94) }, metres(0.1))).toBe(9);
    expect(placesOn({}, metres(0.1))).toBeUndefined();
  });

  test.each([
    { why: "its own length", counts: { length: metres(1.2), positions: 7 }, wire: 1, carry: 12 },
    { why: "a longer wire", counts: { length: metres(0.5) }, wire: 1, carry: 10 },
    { why: "no wire known", counts: { length: metres(0.5) }, wire: undefined, carry: 5 },
    { why: "places, where no length is known", counts: { positions: 7 }, wire: 1, carry: 7 },
    { why: "nothing, of no place", counts: { positions: 0 }, wire: 1, carry: undefined },
    { why: "nothing, of no length", counts: { length: metres(0) }, wire: undefined, carry: undefined },
    { why: "nothing known", counts: {}, wire: 1, carry: undefined },
  ])("spurs to carry by $why: $carry", ({ counts, wire, carry }) => {
    const found = spursToCarry(
      on(counts),
      { spurSpacing: metres(0.1) },
      wire === undefined ? undefined : metres(wire),
    );
    if (carry === undefined) expect(found).toBeUndefined();
    else expect(found).toBeCloseTo(carry, 9);
  });

  // high wire: down 1, level 0.9, up 0.4
  test.each([
    { why: "no spur counted", counts: { spursDown: 4 }, carry: 10, spurs: NOTHING, placing: NOTHING },
    {
      why: "no direction counted",
      counts: { liveSpurs: 8 },
      carry: 10,
      spurs: exactly(0.8),
      placing: NOTHING,
    },
    {
      why: "how many it should carry not known: the mean of all directions, (4 + 2 x 0.9 + 2 x 0.4) / 8",
      counts: { liveSpurs: 8, spursDown: 4, spursLevel: 2, spursUp: 2 },
      carry: undefined,
      spurs: NOTHING,
      placing: exactly(0.825),
    },
    {
      why: "only those up counted: the others are level, (6 x 0.9 + 2 x 0.4) / 8",
      counts: { liveSpurs: 8, spursUp: 2 },
      carry: undefined,
      spurs: NOTHING,
      placing: exactly(0.775),
    },
    {
      why: "only level ones counted, fewer than live ones",
      counts: { liveSpurs: 8, spursLevel: 2 },
      carry: 8,
      spurs: exactly(1),
      placing: exactly(0.9),
    },
    {
      why: "no spur lives",
      counts: { liveSpurs: 0, spursDown: 0 },
      carry: 10,
      spurs: exactly(0),
      placing: exactly(0),
    },
    {
      why: "no spur lives on no known length",
      counts: { liveSpurs: 0 },
      carry: undefined,
      spurs: exactly(0),
      placing: NOTHING,
    },
  ])("spurs and placing, $why", ({ counts, carry, spurs, placing }) => {
    expect(spursAndPlacing(on(counts), carry, "highWire", RULES)).toEqual({ spurs, placing });
  });

  test("without a training system directions say nothing", () => {
    expect(spursAndPlacing(on({ liveSpurs: 8, spursDown: 8 }), 10, undefined, RULES).placing).toEqual(
      NOTHING,
    );
  });

  test("spurs that cost more by pointing up than they earn are left out of both parts", () => {
    // Weights 0.20 and 0.15: 5 down alone are 0.20 x 0.5 + 0.15 = 0.25. A sixth, up, makes 0.12 + 0.15 x 5.4 / 6 = 0.255, a
    // seventh 0.14 + 0.15 x 5.8 / 7 = 0.2643: they are worth having. With placing at 0.60 the five alone are 0.70, with the
    // sixth 0.12 + 0.6 x 0.9 = 0.66 and with all five up 0.20 + 0.6 x 0.7 = 0.62.
    const cordon = on({ liveSpurs: 10, spursDown: 5, spursLevel: 0, spursUp: 5 });
    expect(spursAndPlacing(cordon, 10, "highWire", RULES)).toEqual({
      spurs: exactly(1),
      placing: exactly(0.7),
    });
    const weights = { ...RULES.weights, placing: 0.6 };
    expect(spursAndPlacing(cordon, 10, "highWire", { ...RULES, weights })).toEqual({
      spurs: exactly(0.5),
      placing: exactly(1),
    });
  });

  test.each([
    { why: "a single empty place", counts: { longestGap: 1 }, part: exactly(1) },
    { why: "one short of the setting", counts: { longestGap: 4 }, part: exactly(0.25) },
    { why: "just the setting", counts: { longestGap: 5 }, part: exactly(0) },
    { why: "no live spur", counts: { liveSpurs: 0, longestGap: 1 }, part: exactly(0) },
    { why: "spurs without places", counts: { liveSpurs: 8 }, part: NOTHING },
    { why: "places without spurs", counts: { positions: 10 }, part: NOTHING },
    { why: "more spurs than places", counts: { liveSpurs: 11, positions: 10 }, part: exactly(1) },
    // 7 empty beside 3 spurs: in four gaps 2 at least, 0.75, all 7 at most
    { why: "3 of 10", counts: { liveSpurs: 3, positions: 10 }, part: { low: 0, high: 0.75 } },
  ])("the longest stretch of 5 that scores nothing, $why", ({ counts, part }) => {
    expect(stretchPart(on(counts), { longestStretch: 5 })).toEqual(part);
  });

  test("where a stretch of one place scores nothing, none scores all", () => {
    const part = (longestGap: number) => stretchPart(on({ longestGap }), { longestStretch: 1 });
    expect([part(0), part(1)]).toEqual([exactly(1), exactly(0)]);
  });

  test("thickness at both ends of its range and where both ends are one", () => {
    const part = (diameter: number, weak = 0.01, full = 0.02) =>
      diameterPart(on({ diameter: metres(diameter) }), {
        weakDiameter: metres(weak),
        fullDiameter: metres(full),
      }).low;
    expect([part(0.01), part(0.0125), part(0.02), part(0.03)]).toEqual([0, expect.closeTo(0.25, 9), 1, 1]);
    expect([part(0.02, 0.02, 0.02), part(0.019, 0.02, 0.02)]).toEqual([1, 0]);
  });
});

describe("the score of parts", () => {
  const parts: CordonParts = {
    spurs: { low: 0.8, high: 0.8 },
    stretch: { low: 0.5, high: 1 },
    placing: { low: 0, high: 1 },
    soundness: { low: 0, high: 0 },
    diameter: { low: 1, high: 1 },
  };
  const weights = { spurs: 0.2, stretch: 0.3, placing: 0.1, soundness: 0.4, diameter: 0.5 };

  test("a part is in use where any cordon says something, be it the worst or the best", () => {
    expect(partsInUse([parts])).toEqual(["spurs", "stretch", "soundness", "diameter"]);
    const nothing = { low: 0, high: 1 };
    const none = {
      spurs: nothing,
      stretch: nothing,
      placing: nothing,
      soundness: nothing,
      diameter: nothing,
    };
    expect(partsInUse([none, { ...none, placing: { low: 0, high: 0.9 } }])).toEqual(["placing"]);
    expect(partsInUse([{ ...none, placing: { low: 0.1, high: 1 } }, none])).toEqual(["placing"]);
  });

  test("(0.2 x 0.8 + 0.3 x 0.5 to 1 + 0.5 x 1) / 1.0, without the parts that are not in use", () => {
    expect(scoreOver(parts, ["spurs", "stretch", "diameter"], { weights })).toEqual({
      score: expect.closeTo(0.885, 9),
      low: expect.closeTo(0.81, 9),
      high: expect.closeTo(0.96, 9),
      parts,
      missing: ["stretch"],
      leftOut: ["placing", "soundness"],
    });
  });

  test("with all parts in use none is left out, with all of them known none is missing", () => {
    const all = ["spurs", "stretch", "placing", "soundness", "diameter"] as const;
    expect(scoreOver(parts, all, { weights })).toMatchObject({
      missing: ["stretch", "placing"],
      leftOut: [],
    });
    expect(scoreOver(parts, ["spurs", "soundness"], { weights }).missing).toEqual([]);
  });

  test("a part without weight is missed by nobody, and without any weight the score may be anything", () => {
    const free = { ...weights, stretch: 0 };
    expect(scoreOver(parts, ["spurs", "stretch"], { weights: free }).missing).toEqual([]);
    expect(scoreOver(parts, ["stretch"], { weights: free })).toMatchObject({ score: 0.5, low: 0, high: 1 });
  });

  test("a cordon of which only a part without weight is known is not scored", () => {
    const rules = { ...RULES, weights: { ...RULES.weights, soundness: 0 } };
    expect(() => cordonScore(on({ condition: "sound" }), undefined, rules)).toThrow(
      expect.objectContaining({ kind: "notAvailable", code: "nothingToScore", facts: { cordon: "A" } }),
    );
    expect(cordonScore(on({ condition: "sound" }), undefined, RULES).score).toBe(1);
  });
});

describe("counts that no cordon can have", () => {
  const COUNTS = ["positions", "liveSpurs", "longestGap", "spursDown", "spursLevel", "spursUp"] as const;

  test.each([
    ...COUNTS.map((count) => [count, 0, 500, ""] as const),
    ["trunk", 1, 99, ""],
    ["length", 0, 30, "m"],
    ["diameter", 0, 1, "m"],
  ] as const)("%s lies between %d and %d %s", (count, least, most, unit) => {
    for (const value of [least, most])
      expect(mustBeCandidate(on({ [count]: value }))).toMatchObject({ [count]: value });
    for (const value of [least - 1, most + 1])
      expect(() => mustBeCandidate(on({ [count]: value }))).toThrow(
        expect.objectContaining({ code: "outside", facts: { argument: count, value, least, most, unit } }),
      );
  });

  test.each([...COUNTS, "trunk"] as const)("%s is a whole number", (count) => {
    expect(() => mustBeCandidate(on({ [count]: 1.5 }))).toThrow(
      expect.objectContaining({ code: "notWhole" }),
    );
  });
});
