import type { CandidateCordon, Condition, VineToDecide } from "../../../src/domain/choice/candidateCordon";
import type { ScorePart } from "../../../src/domain/choice/choiceRules";
import { compareCordons, type WeighedCordon } from "../../../src/domain/choice/compareCordons";
import type { Trunk } from "../../../src/domain/choice/trunksOf";
import type { CordonDecision, SideDecision } from "../../../src/domain/choice/vineDecision";
import { vineNotes } from "../../../src/domain/choice/vineNotes";
import { weakestPoint } from "../../../src/domain/choice/weakestPoint";
import { metres } from "../../../src/domain/units";
import { RULES as STANDARD } from "./standardRules";

// Worked by hand with the weights of Settings, which add up to 1: spurs 0.20, stretch 0.30, placing 0.15, soundness 0.20,
// diameter 0.15; an injured trunk costs 0.10, a diseased one 0.20; a spur every 0.1 m.
const RULES = { ...STANDARD, spurSpacing: metres(0.1) };
const ALL = ["spurs", "stretch", "placing", "soundness", "diameter"] as const;
type Parts = Partial<Record<ScorePart, number | readonly [low: number, high: number]>>;

function weighed(
  candidate: Partial<CandidateCordon>,
  parts: Parts,
  trunkCondition?: Condition,
  score: { readonly low: number } = { low: 0 },
): WeighedCordon {
  const bounds = Object.entries(parts).map(([part, known]) => {
    const [low, high] = typeof known === "number" ? [known, known] : known;
    return [part, { low, high }] as const;
  });
  return {
    candidate: { side: "left", cordon: "A", ...candidate },
    score: { ...score, parts: Object.fromEntries(bounds) },
    trunkCondition,
  } as unknown as WeighedCordon;
}
const weighing = (weight: number) => expect.closeTo(weight, 9);
const EVEN = { mine: 0, theirs: 0 };

describe("two cordons taken apart", () => {
  const A = weighed(
    {
      trunk: 1,
      length: metres(1),
      liveSpurs: 8,
      longestGap: 1,
      spursDown: 4,
      spursLevel: 3,
      spursUp: 1,
      condition: "injured",
      diameter: metres(0.03),
    },
    { spurs: 0.8, stretch: 1, placing: 0.9, soundness: 0.5, diameter: 1 },
    "injured",
  );
  const B = weighed(
    {
      trunk: 2,
      length: metres(1.04),
      liveSpurs: 10,
      longestGap: 2,
      spursDown: 9,
      spursLevel: 1,
      spursUp: 0,
      condition: "sound",
      diameter: metres(0.02),
    },
    { spurs: 1, stretch: 0.7, placing: 1, soundness: 1, diameter: 0.5 },
    "diseased",
  );
  const forA = [
    { code: "ownTrunk", weight: weighing(0.15), facts: { trunk: 1, shared: 2 } },
    {
      code: "trunkCondition",
      weight: weighing(0.1),
      facts: { trunk: 1, mine: "injured", otherTrunk: 2, theirs: "diseased" },
    },
    { code: "stretch", weight: weighing(0.3 * 0.3), facts: { mine: 1, theirs: 2 } },
    { code: "diameter", weight: weighing(0.15 * 0.5), facts: { mine: 0.03, theirs: 0.02 } },
  ];
  const forB = [
    { code: "soundness", weight: weighing(0.2 * 0.5), facts: { mine: "sound", theirs: "injured" } },
    {
      code: "spurs",
      weight: weighing(0.2 * 0.2),
      facts: { mine: 10, theirs: 8, mineLength: 1.04, theirsLength: 1 },
    },
    {
      code: "placing",
      weight: weighing(0.15 * 0.1),
      facts: { points: "down", mine: 10, mineOf: 10, theirs: 7, theirsOf: 8 },
    },
  ];

  test("each list has its strongest argument first, with the facts of the better one before those of the other", () => {
    expect(compareCordons(A, B, { mine: 0.15, theirs: 0 }, "highWire", ALL, RULES)).toStrictEqual({
      mine: forA,
      theirs: forB,
    });
  });

  test("told for the other cordon the same arguments stand on the other side", () => {
    expect(compareCordons(B, A, { mine: 0, theirs: 0.15 }, "highWire", ALL, RULES)).toStrictEqual({
      mine: forB,
      theirs: forA,
    });
  });

  test("only parts in use are weighed, as shares of their own weights", () => {
    expect(compareCordons(A, B, EVEN, "highWire", ["spurs", "stretch"], RULES)).toMatchObject({
      mine: [{ code: "stretch", weight: weighing((0.3 * 0.3) / 0.5) }, { code: "trunkCondition" }],
      theirs: [{ code: "spurs", weight: weighing((0.2 * 0.2) / 0.5) }],
    });
    const free = { ...RULES, weights: { ...RULES.weights, spurs: 0 } };
    expect(compareCordons(A, B, EVEN, "highWire", ["spurs"], free).theirs).toEqual([]);
  });

  test("what is equal or not known of one of them is no argument", () => {
    const open = weighed({ trunk: 1 }, { spurs: [0.2, 0.9], stretch: 1 });
    const same = weighed({ trunk: 1 }, { spurs: 0.8, stretch: 1 });
    expect(
      compareCordons(open, same, { mine: 0.15, theirs: 0.15 }, "highWire", ["spurs", "stretch"], RULES),
    ).toEqual({ mine: [], theirs: [] });
    expect(compareCordons(same, open, EVEN, "highWire", ["spurs", "stretch"], RULES)).toEqual({
      mine: [],
      theirs: [],
    });
  });

  test("under catch wires spurs that point up are well placed, and those of no known direction are not counted", () => {
    const up = weighed({ liveSpurs: 8, spursUp: 6 }, { placing: 0.9 });
    const level = weighed({ liveSpurs: 9, spursLevel: 9 }, { placing: 0.6 });
    expect(compareCordons(up, level, EVEN, "upright", ["placing"], RULES).mine[0].facts).toEqual({
      points: "up",
      mine: 6,
      mineOf: 8,
      theirs: 0,
      theirsOf: 9,
    });
  });

  test("what was not written down stands as no words in the facts", () => {
    const parts = { spurs: 1, stretch: 1, placing: 1, soundness: 1, diameter: 1 };
    const better = weighed({}, parts);
    const worse = weighed({}, { spurs: 0, stretch: 0, placing: 0, soundness: 0, diameter: 0 }, "injured");
    const { mine } = compareCordons(better, worse, { mine: 0.05, theirs: 0 }, "highWire", ALL, RULES);
    expect(Object.fromEntries(mine.map(({ code, facts }) => [code, facts]))).toEqual({
      spurs: { mine: "", theirs: "", mineLength: "", theirsLength: "" },
      stretch: { mine: 0, theirs: 0 },
      placing: { points: "down", mine: 0, mineOf: "", theirs: 0, theirsOf: "" },
      soundness: { mine: "", theirs: "" },
      diameter: { mine: "", theirs: "" },
      trunkCondition: { trunk: "", mine: "", otherTrunk: "", theirs: "injured" },
      ownTrunk: { trunk: "", shared: "" },
    });
  });

  test.each([
    { why: "as counted", counts: { longestGap: 3, liveSpurs: 7, positions: 12 }, gap: 3 },
    { why: "the empty places, where it was not", counts: { liveSpurs: 7, positions: 12 }, gap: 5 },
    { why: "none, of more spurs than places", counts: { liveSpurs: 13, positions: 12 }, gap: 0 },
    {
      why: "the whole cordon, where no spur lives",
      counts: { longestGap: 3, liveSpurs: 0, positions: 12 },
      gap: 12,
    },
    {
      why: "as counted, where no spur lives on no known places",
      counts: { longestGap: 3, liveSpurs: 0 },
      gap: 3,
    },
    { why: "not known, where no spur lives and nothing else was counted", counts: { liveSpurs: 0 }, gap: "" },
  ])("the longest gap told is $why", ({ counts, gap }) => {
    const better = weighed({ longestGap: 0, liveSpurs: 9 }, { stretch: 1 });
    const { mine } = compareCordons(
      better,
      weighed(counts, { stretch: 0 }),
      EVEN,
      undefined,
      ["stretch"],
      RULES,
    );
    expect(mine[0].facts).toEqual({ mine: 0, theirs: gap });
  });

  test.each([
    { why: "a spur beyond its wire", length: 1.1, wire: 1, told: true },
    { why: "less than a spur beyond it", length: 1.09, wire: 1, told: false },
    { why: "of no known length", length: undefined, wire: 1, told: false },
    { why: "on wire of no known length", length: 1.1, wire: undefined, told: false },
  ])("the lesser cordon is named for its wire where it reaches $why: $told", ({ length, wire, told }) => {
    const long = length === undefined ? {} : { length: metres(length) };
    const parts = { spurs: 0.5, stretch: 0.5 };
    const facts = (around: { readonly sideLength?: number }) =>
      compareCordons(
        weighed({}, { spurs: 1, stretch: 1 }),
        weighed(long, parts),
        EVEN,
        undefined,
        ["spurs", "stretch"],
        RULES,
        around,
      ).mine.map(({ code, facts: { wire: named } }) => [code, named]);
    expect(facts(wire === undefined ? {} : { sideLength: wire })).toEqual([
      ["stretch", undefined],
      ["spurs", told ? 1 : undefined],
    ]);
  });

  test("beside a cane a trunk of its own is told as that", () => {
    const { theirs } = compareCordons(
      weighed({ trunk: 2 }, {}),
      weighed({ trunk: 1 }, {}),
      { mine: 0, theirs: 0.15 },
      undefined,
      [],
      RULES,
      { besideCane: true },
    );
    expect(theirs).toStrictEqual([
      { code: "ownTrunk", weight: 0.15, facts: { trunk: 1, shared: 2, besideCane: "cane" } },
    ]);
  });
});

describe("what takes most from a cordon", () => {
  const vine: VineToDecide = { candidates: [] };
  const weak = (cordon: WeighedCordon, inUse: readonly ScorePart[] = ALL) =>
    weakestPoint(cordon, vine, inUse, RULES).weak;
  const GOOD = { spurs: 1, stretch: 1, placing: 1, soundness: 1, diameter: 1 };

  test.each([
    // 0.20 x 0.5 = 0.10 against 0.30 x 0.25 = 0.075
    {
      why: "half of its spurs before a quarter of its stretch",
      parts: { spurs: 0.5, stretch: 0.75 },
      weak: "spurs",
    },
    // 0.10 against 0.12
    {
      why: "0.4 of its stretch before half of its spurs",
      parts: { spurs: 0.5, stretch: 0.6 },
      weak: "stretch",
    },
    { why: "placing", parts: { placing: 0.4 }, weak: "placing" },
    { why: "soundness", parts: { soundness: 0.5, diameter: 0.4 }, weak: "soundness" },
    { why: "thickness", parts: { soundness: 0.6, diameter: 0.4 }, weak: "diameter" },
    // the middle of what is not known: 0.15 x 0.5 = 0.075 against 0.20 x 0.3 = 0.06
    { why: "what nobody knows, by half", parts: { spurs: 0.7, diameter: [0, 1] }, weak: "diameter" },
    // 0.15 x 0.3 = 0.045 against 0.06
    { why: "bounds of 0.4 and 1, by 0.3", parts: { spurs: 0.7, diameter: [0.4, 1] }, weak: "spurs" },
    { why: "nothing: its spurs", parts: {}, weak: "spurs" },
  ] as const)("$why", ({ parts, weak: expected }) => {
    expect(weak(weighed({}, { ...GOOD, ...parts }))).toBe(expected);
  });

  test("its trunk, where that costs more than any part does by the weights in use", () => {
    // an injured trunk costs 0.10; 0.20 x 0.4 = 0.08, but of spurs and soundness alone, 0.40, it is 0.20
    const cordon = weighed({}, { ...GOOD, spurs: 0.6 }, "injured");
    expect(weak(cordon)).toBe("trunkCondition");
    expect(weak(cordon, ["spurs", "soundness"])).toBe("spurs");
    expect(weak(weighed({}, {}, "injured"), [])).toBe("trunkCondition");
  });

  test("a dead stretch, where it holds the cordon below its score", () => {
    // 5 of 10 places in one stretch: at most 0.50
    const counts = { positions: 10, liveSpurs: 5, longestGap: 5 };
    const of = (low: number) => weak(weighed(counts, { ...GOOD, soundness: 0 }, undefined, { low }));
    expect([of(0.51), of(0.5), of(0.3)]).toEqual(["deadStretch", "soundness", "soundness"]);
  });

  test("is told with all its figures, and with no words for what is not known", () => {
    const cordon = weighed(
      {
        trunk: 3,
        length: metres(0.5),
        liveSpurs: 4,
        longestGap: 2,
        spursDown: 1,
        spursLevel: 2,
        spursUp: 1,
        diameter: metres(0.02),
        condition: "injured",
      },
      { spurs: 0.4 },
      "diseased",
    );
    const wired = { ...vine, training: "highWire" as const, sideLength: metres(1.04) };
    expect(weakestPoint(cordon, wired, ["spurs"], { ...RULES, fullDiameter: metres(0.0254) })).toStrictEqual({
      weak: "spurs",
      spurs: 4,
      carry: 10,
      well: 3,
      gap: 2,
      diameter: 0.02,
      fullDiameter: 0.0254,
      condition: "injured",
      trunk: 3,
      trunkCondition: "diseased",
    });
    expect(weakestPoint(weighed({ positions: 7 }, { spurs: 0 }), vine, ["spurs"], RULES)).toMatchObject({
      carry: 7,
      gap: 7,
    });
    expect(weakestPoint(weighed({}, { spurs: 0 }), vine, ["spurs"], RULES)).toStrictEqual({
      weak: "spurs",
      spurs: "",
      carry: "",
      well: "",
      gap: "",
      diameter: "",
      fullDiameter: RULES.fullDiameter,
      condition: "",
      trunk: "",
      trunkCondition: "",
    });
  });
});

describe("what is said of a vine as a whole", () => {
  const row = (counts: Partial<CandidateCordon> = {}): CandidateCordon => ({
    side: "left",
    cordon: "A",
    ...counts,
  });
  const trunk = (number: number, condition?: Condition, live = true): Trunk => ({ number, condition, live });
  const kept = (side: string, cordon: string): SideDecision => ({ side, cordon, ask: false });
  const notesOf = (
    vine: Partial<VineToDecide>,
    trunks: readonly Trunk[] = [trunk(1), trunk(2)],
    {
      inUse = ALL,
      sides = [],
      cordons = [],
    }: {
      readonly inUse?: readonly ScorePart[];
      readonly sides?: readonly SideDecision[];
      readonly cordons?: readonly CordonDecision[];
    } = {},
  ) => vineNotes({ candidates: [], training: "highWire", ...vine }, trunks, inUse, sides, cordons);

  test("nothing of a vine on two trunks of which all was counted", () => {
    expect(notesOf({})).toEqual([]);
  });

  test.each([
    { why: "by its status", vine: { status: "young" }, notes: ["vineYoung"] },
    {
      why: "by its year of growth, which is told elsewhere",
      vine: { status: "young", yearOfGrowth: 2 },
      notes: [],
    },
    { why: "on one trunk, as it should be", vine: { status: "young", liveTrunks: 1 }, notes: ["vineYoung"] },
  ] as const)("a young vine, $why: $notes", ({ vine, notes }) => {
    expect(notesOf(vine).map(({ code }) => code)).toEqual(notes);
  });

  test("one live trunk, by its number where that is known, as written down or as its cordons tell", () => {
    expect(notesOf({ liveTrunks: 1 }, [trunk(4), trunk(5, "dead", false)])).toEqual([
      { code: "oneTrunk", facts: { trunk: 4 } },
    ]);
    expect(notesOf({ liveTrunks: 1 }, [])).toEqual([{ code: "oneTrunk", facts: { trunk: "" } }]);
    expect(notesOf({ candidates: [row({ trunk: 4 })] }, [trunk(4)])).toEqual([
      { code: "oneTrunk", facts: { trunk: 4 } },
    ]);
    // B may hang on another trunk
    expect(notesOf({ candidates: [row({ trunk: 4 }), row()] }, [trunk(4)])).toEqual([]);
  });

  test("no live trunk, as written down or as its cordons tell", () => {
    expect(notesOf({ liveTrunks: 0 }, [])).toEqual([{ code: "noLiveTrunk", facts: {} }]);
    expect(notesOf({ candidates: [row({ trunk: 1 })] }, [trunk(1, "dead", false)])).toEqual([
      { code: "noLiveTrunk", facts: {} },
    ]);
  });

  const rows = [
    row({ trunk: 2 }),
    row({ cordon: "B", trunk: 3 }),
    row({ side: "right", trunk: 3 }),
    row({ side: "right", cordon: "B", trunk: 2 }),
    row({ side: "right", cordon: "C" }),
    row({ cordon: "C" }),
  ];
  test.each([
    { why: "B and A on trunk 3", sides: [kept("left", "B"), kept("right", "A")], trunk: 3 },
    {
      why: "one A on each side, on two trunks",
      sides: [kept("left", "A"), kept("right", "A")],
      trunk: undefined,
    },
    { why: "one trunk not known", sides: [kept("left", "A"), kept("right", "C")], trunk: undefined },
    { why: "neither known", sides: [kept("left", "C"), kept("right", "C")], trunk: undefined },
    { why: "a vine with one side", sides: [kept("left", "A")], trunk: undefined },
  ])("both cordons on one trunk: $why", ({ sides, trunk: shared }) => {
    expect(notesOf({ candidates: rows }, [trunk(2), trunk(3)], { sides })).toEqual(
      shared === undefined ? [] : [{ code: "bothOnOneTrunk", facts: { trunk: shared } }],
    );
  });

  test.each([
    { why: "both", trunks: [trunk(1, "injured"), trunk(2, "diseased")], hurt: [1, 2] },
    {
      why: "both that live",
      trunks: [trunk(1, "injured"), trunk(2, "injured"), trunk(3, "dead", false)],
      hurt: [1, 2],
    },
    { why: "one of two", trunks: [trunk(1, "injured"), trunk(2, "sound")], hurt: undefined },
    {
      why: "both known of three",
      trunks: [trunk(1, "injured"), trunk(2, "injured")],
      live: 3,
      hurt: undefined,
    },
    {
      why: "both of two that are written down",
      trunks: [trunk(1, "injured"), trunk(2, "injured")],
      live: 2,
      hurt: [1, 2],
    },
  ])("every live trunk hurt: $why", ({ trunks, live, hurt }) => {
    expect(notesOf(live === undefined ? {} : { liveTrunks: live }, trunks)).toEqual(
      hurt ? [{ code: "everyTrunkHurt", facts: { trunks: hurt } }] : [],
    );
  });

  test("directions that were counted, where no training system tells what they are worth", () => {
    const codes = (counts: Partial<CandidateCordon>) =>
      vineNotes({ candidates: [row(), row(counts)] }, [trunk(1), trunk(2)], ALL, [], []).map(
        ({ code }) => code,
      );
    for (const way of ["spursDown", "spursLevel", "spursUp"] as const)
      expect(codes({ [way]: 0 })).toEqual(["trainingMissing"]);
    expect(codes({ spursDown: 5, spursLevel: 0, spursUp: 0 })).toEqual(["trainingMissing"]);
    expect(codes({ liveSpurs: 8 })).toEqual([]);
    expect(notesOf({ candidates: [row({ spursDown: 5 }), row({})] })).toEqual([]);
  });

  test("parts that nobody counted, and cordons of one side that are all fixed to stay", () => {
    const fixed = (side: string, cordon: string, code: string) =>
      ({ side, cordon, verdict: "stays", reason: { code } }) as unknown as CordonDecision;
    const cordons = [
      fixed("left", "A", "fixedStays"),
      fixed("left", "B", "fixedStaysDead"),
      fixed("left", "C", "besideFixed"),
      fixed("right", "D", "fixedStays"),
    ];
    const sides = [kept("left", "A"), kept("right", "D")];
    expect(notesOf({}, undefined, { inUse: ["spurs", "stretch", "soundness"], sides, cordons })).toEqual([
      { code: "leftOut", facts: { parts: ["placing", "diameter"] } },
      { code: "fixedTwice", facts: { side: "left", cordons: ["A", "B"] } },
    ]);
  });
});
