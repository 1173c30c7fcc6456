import type { CandidateCordon, VineToDecide } from "../../../src/domain/choice/candidateCordon";
import type { ChoiceRules } from "../../../src/domain/choice/choiceRules";
import { chooseCordons } from "../../../src/domain/choice/chooseCordons";
import { metres } from "../../../src/domain/units";
import { RULES as STANDARD } from "./standardRules";
import { cordon as soundCordon } from "./workedVines";

/** A spur every 0.1 m on 1 m of wire a side: 10 to carry. */
const RULES: ChoiceRules = { ...STANDARD, spurSpacing: metres(0.1) };

/** The sound cordon of the worked vines, 1 m long; its gap is no longer than one position. */
const cordon = (
  place: string,
  trunk: number | undefined,
  spurs: number,
  gap: number | undefined = 1,
  rest: Partial<CandidateCordon> = {},
) => soundCordon(place, trunk, spurs, gap, { length: metres(1), ...rest });
/** 4 of 10 places in one dead stretch and no other empty one: worth 0.50, as a new cane is. */
const likeCane = (place: string, trunk: number) => cordon(place, trunk, 6, 4);
/** Its gap was not written down. */
const gapUnknown = (place: string, trunk: number, spurs: number) => {
  const { longestGap: _gap, ...rest } = cordon(place, trunk, spurs);
  return rest;
};

const decide = (
  candidates: readonly CandidateCordon[],
  vine: Partial<VineToDecide> = {},
  rules: Partial<ChoiceRules> = {},
) =>
  chooseCordons(
    { candidates, training: "highWire", sideLength: metres(1), status: "bearing", ...vine },
    { ...RULES, ...rules },
  );
const answersOf = ({ cordons }: ReturnType<typeof decide>) =>
  cordons.map(({ cordon: letter, verdict, reason: { code, rival } }) =>
    [letter, verdict, code, ...(rival === undefined ? [] : [rival])].join(" "),
  );
const reasonOf = ({ cordons }: ReturnType<typeof decide>, letter: string, on = "left") =>
  cordons.find((one) => one.cordon === letter && one.side === on)!.reason;

describe("a vine that is not decided", () => {
  test("one without a cordon has no answers, no sides and no worth", () => {
    expect(decide([])).toStrictEqual({ cordons: [], sides: [], notes: [], worth: 0 });
  });

  test("with cells to recount every cordon is asked about, what a person fixed too, and the cells are named", () => {
    const rows = [cordon("left A", 1, 9), cordon("right B", 2, 9, 1, { fixedChoice: "stays" })];
    const decision = decide(rows, { recount: ["live spurs of A", "length of B"] });
    const facts = { cells: "live spurs of A, length of B" };
    expect(decision).toMatchObject({ sides: [], notes: [{ code: "recount", facts }], worth: 0 });
    expect(decision.cordons.map(({ verdict, reason }) => ({ verdict, reason }))).toEqual(
      rows.map(() => ({ verdict: "ask", reason: { code: "recount", mine: [], theirs: [], facts } })),
    );
    expect(answersOf(decide(rows, { recount: [] }))).toEqual(["A stays onlyOne", "B stays fixedStays"]);
  });

  const bare = (place: string, rest: Partial<CandidateCordon> = {}): CandidateCordon => {
    const [side, letter] = place.split(" ");
    return { side, cordon: letter, trunk: 1, condition: "sound", ...rest };
  };
  test.each<{ why: string; rows: readonly CandidateCordon[]; answers: readonly string[] }>([
    {
      why: "neither spurs nor gaps: only what a person fixed stands",
      rows: [
        bare("left A"),
        bare("left B"),
        bare("left C", { fixedChoice: "goes" }),
        bare("right D", { fixedChoice: "stays" }),
      ],
      answers: ["A ask uncounted", "B ask uncounted", "C goes fixedGoes", "D stays fixedStays"],
    },
    {
      why: "nothing at all is known, so not even the only cordon of a side is weighed against a new cane",
      rows: [bare("left A", { condition: undefined }), bare("right B", { condition: undefined })],
      answers: ["A ask uncounted", "B ask uncounted"],
    },
    {
      why: "nor where a person keeps the cordon across",
      rows: [
        bare("left A", { condition: undefined, fixedChoice: "stays" }),
        bare("right B", { condition: undefined }),
      ],
      answers: ["A stays fixedStays", "B ask uncounted"],
    },
    {
      why: "the condition of the only cordon of each side is enough",
      rows: [bare("left A"), bare("right B")],
      answers: ["A stays onlyOne", "B stays onlyOne"],
    },
    {
      why: "spurs alone are enough",
      rows: [
        bare("left A", { liveSpurs: 9, length: metres(1) }),
        bare("left B", { liveSpurs: 2, length: metres(1) }),
      ],
      answers: ["A stays better B", "B goes worse A"],
    },
    {
      why: "gaps alone are enough",
      rows: [bare("left A", { longestGap: 1 }), bare("left B", { longestGap: 4 })],
      answers: ["A stays better B", "B goes worse A"],
    },
    {
      why: "where a person keeps one of a side there is nothing to count for",
      rows: [bare("left A"), bare("left B"), bare("left C", { fixedChoice: "stays" })],
      answers: ["A goes besideFixed C", "B goes besideFixed C", "C stays fixedStays"],
    },
    {
      why: "nor where all but one are dead or cut",
      rows: [bare("left A"), bare("left B", { condition: "dead" }), bare("left C", { fixedChoice: "goes" })],
      answers: ["A stays onlyOne", "B goes dead", "C goes fixedGoes"],
    },
  ])("of two cordons of one side was counted: $why", ({ rows, answers }) => {
    expect(answersOf(decide(rows))).toEqual(answers);
  });

  test("the cordons of a young vine stay without counts where no other contends", () => {
    const rows = [bare("left A", { condition: undefined }), bare("right B", { condition: undefined })];
    expect(answersOf(decide(rows, { status: "young" }))).toEqual(["A stays building", "B stays building"]);
  });

  test("of a vine on which nothing is known of one cordon only that one is asked about", () => {
    const rows = [cordon("left A", 1, 10, 0), bare("right B", { condition: undefined, trunk: 2 })];
    expect(answersOf(decide(rows))).toEqual(["A stays onlyOne", "B ask missingCounts"]);
  });
});

describe("where a cane is laid", () => {
  test.each<{ why: string; rows: readonly CandidateCordon[]; from: unknown }>([
    {
      why: "from the head, while a cordon of no numbered trunk lives",
      rows: [cordon("left A", undefined, 9), cordon("right B", undefined, 0, 10, { condition: "dead" })],
      from: "head",
    },
    {
      why: "from the ground, when none does",
      rows: [
        cordon("left A", undefined, 9, 1, { condition: "dead" }),
        cordon("right B", undefined, 9, 1, { trunkCondition: "dead" }),
      ],
      from: "ground",
    },
    {
      why: "from where a person wants it, though a full cordon stands beside it",
      rows: [
        cordon("left A", 1, 9),
        cordon("right B", 1, 10),
        cordon("right C", 2, 2, 4, { fixedChoice: "cane" }),
      ],
      from: 2,
    },
    {
      why: "from the head, where the trunk of that is not known",
      rows: [cordon("left A", 1, 9), cordon("right C", undefined, 2, 4, { fixedChoice: "cane" })],
      from: "head",
    },
    {
      why: "not from a dead cordon, whatever a person wants",
      rows: [cordon("left A", 1, 9), cordon("right C", 2, 2, 4, { fixedChoice: "cane", condition: "dead" })],
      from: 1,
    },
  ])("$why", ({ rows, from }) => {
    expect(decide(rows).sides[1]).toStrictEqual({ side: "right", ask: false, layCaneFrom: from });
  });

  test("a person's wish for a cane decides for the cordons of that side only", () => {
    const rows = [
      cordon("left A", 1, 9),
      cordon("right B", 1, 10),
      cordon("right C", 2, 2, 4, { fixedChoice: "cane" }),
    ];
    expect(answersOf(decide(rows))).toEqual([
      "A stays onlyOne",
      "B goes notWorthKeeping",
      "C goes fixedCane",
    ]);
  });

  test("a cordon of a young vine is weighed against no cane; where none lives a cane is laid", () => {
    // 0.80 + 0.02 - 0.30 = 0.52 beside a cane of 0.50
    const weak = cordon("left A", 1, 1, 5);
    expect(decide([weak, cordon("right B", 1, 9)], { status: "young" }).sides[0]).toStrictEqual({
      side: "left",
      ask: false,
      cordon: "A",
    });
    const dead = cordon("left A", 1, 9, 1, { condition: "dead" });
    expect(decide([dead, cordon("right B", 1, 9)], { status: "young" }).sides[0]).toStrictEqual({
      side: "left",
      ask: false,
      layCaneFrom: 1,
    });
  });
});

describe("what a side is told", () => {
  test("how far the next plan lies behind, where there is one: 1.00 against 0.94", () => {
    const rows = [
      cordon("left A", 1, 10),
      cordon("left B", 1, 7),
      cordon("right C", 2, 9, 1, { fixedChoice: "stays" }),
    ];
    expect(decide(rows).lead).toBeCloseTo(0.06, 9);
    const fixed = rows
      .filter(({ cordon: letter }) => letter !== "B")
      .map((one) => ({ ...one, fixedChoice: "stays" as const }));
    expect("lead" in decide(fixed)).toBe(false);
  });

  test("a cane is named as the other choice only where one is close", () => {
    const between = [cordon("left A", 1, 9), cordon("left B", 1, 9), cordon("right C", 2, 9)];
    expect(decide(between).sides[0]).toStrictEqual({ side: "left", ask: true, cordon: "A" });
    expect(decide([likeCane("left A", 1), cordon("right C", 2, 9)]).sides[0]).toStrictEqual({
      side: "left",
      ask: true,
      cordon: "A",
      orLayFrom: 1,
    });
  });

  test("two cordons of one name are asked about, though no other is close", () => {
    const rows = [
      cordon("left A", 1, 9),
      cordon("left B", 1, 2, 5),
      cordon("left B", 1, 2, 5),
      cordon("right C", 2, 9),
    ];
    const decision = decide(rows);
    expect(answersOf(decision).slice(1, 3)).toEqual(["B ask namedTwice", "B ask namedTwice"]);
    expect(decision.sides.map(({ ask }) => ask)).toEqual([true, false]);
  });

  test("of two that a person keeps on one side neither is asked about, however close", () => {
    const stays = { fixedChoice: "stays" as const };
    const decision = decide([
      cordon("left A", 1, 9, 1, stays),
      cordon("left B", 1, 9, 1, stays),
      cordon("right C", 2, 9),
    ]);
    expect(decision.sides[0]).toStrictEqual({ side: "left", ask: false, cordon: "A" });
  });

  test("a cordon that cannot stay is told with its trunk and length, as far as they are known", () => {
    const dead = { condition: "dead" as const };
    const { length: _length, ...short } = cordon("left B", undefined, 9, 1, dead);
    const decision = decide([cordon("left A", 3, 9, 1, dead), short, cordon("right C", 2, 9)]);
    expect(reasonOf(decision, "A")).toStrictEqual({
      code: "dead",
      mine: [],
      theirs: [],
      facts: { trunk: 3, length: 1 },
    });
    expect(reasonOf(decision, "B").facts).toStrictEqual({ trunk: "", length: "" });
  });

  test("a cordon is kept by a person though its trunk is dead: told as such", () => {
    const rows = [
      cordon("left A", 1, 9, 1, { trunkCondition: "dead", fixedChoice: "stays" }),
      cordon("right C", 2, 9),
    ];
    expect(answersOf(decide(rows))[0]).toBe("A stays fixedStaysDead");
  });
});

describe("the cordon that another is weighed against", () => {
  const threeLeft = (b: number, c: number) => [
    cordon("left A", 1, 10),
    cordon("left B", 1, b),
    cordon("left C", 1, c),
    cordon("right D", 2, 9),
  ];

  test("is the next best of its side, whichever stands first: 0.94 before 0.90; of two alike the first", () => {
    expect(answersOf(decide(threeLeft(5, 7)))[0]).toBe("A stays better C");
    expect(answersOf(decide(threeLeft(7, 5)))[0]).toBe("A stays better B");
    expect(answersOf(decide(threeLeft(7, 7)))[0]).toBe("A stays better B");
  });

  test("is the next best with what two trunks earn: 0.90 + 0.15 before 0.94", () => {
    const rows = [
      cordon("left A", 1, 10),
      cordon("left B", 2, 7),
      cordon("left C", 1, 5),
      cordon("right D", 2, 9),
    ];
    expect(answersOf(decide(rows))[0]).toBe("A stays better C");
  });

  test("is the closest of several close ones, and of two as close the first", () => {
    // within 0.05: B 0.04 behind, C 0.02
    const margin = { closeCall: 0.05 };
    expect(answersOf(decide(threeLeft(8, 9), {}, margin)).slice(0, 3)).toEqual([
      "A ask closeCall C",
      "B ask closeCall A",
      "C ask closeCall A",
    ]);
    expect(answersOf(decide(threeLeft(9, 8), {}, margin))[0]).toBe("A ask closeCall B");
    expect(answersOf(decide(threeLeft(9, 9), {}, margin))[0]).toBe("A ask closeCall B");
  });

  test("on one of the two sides is told with the wire of that side, where it is longer", () => {
    const rows = [
      cordon("left A", 1, 10),
      cordon("left B", 1, 10, 1, { length: metres(1.5) }),
      cordon("right C", 2, 9),
    ];
    const spurs = reasonOf(decide(rows), "A").mine.find(({ code }) => code === "spurs");
    // 10 of 15 spurs against 10 of 10: 0.20 x 1 / 3
    expect(spurs).toMatchObject({ weight: expect.closeTo(0.2 / 3, 9), facts: { wire: 1 } });
    const untold = chooseCordons({ candidates: rows, training: "highWire" }, RULES);
    expect(reasonOf(untold, "A").mine[0].facts).not.toHaveProperty("wire");
  });

  test.each(["left", "right"])(
    "beside a new cane across a cordon on the %s from another trunk is told so",
    (side) => {
      // across a person wants a cane from trunk 2
      const other = side === "left" ? "right" : "left";
      const rows = [
        cordon(`${side} A`, 1, 9),
        cordon(`${side} B`, 2, 9),
        cordon(`${other} C`, 2, 2, 4, { fixedChoice: "cane" }),
      ];
      const decision = decide(rows);
      for (const [letter, speaks] of [
        ["A", "mine"],
        ["B", "theirs"],
      ] as const)
        expect(reasonOf(decision, letter, side)[speaks]).toStrictEqual([
          {
            code: "ownTrunk",
            weight: expect.closeTo(0.15, 9),
            facts: { trunk: 1, shared: 2, besideCane: "cane" },
          },
        ]);
      const cordonAcross = decide([...rows.slice(0, 2), cordon(`${other} C`, 2, 9)]);
      expect(reasonOf(cordonAcross, "A", side).mine[0].facts).toStrictEqual({ trunk: 1, shared: 2 });
    },
  );

  test("none is there: its spurs and its gap, as far as they were counted", () => {
    const counted = decide([cordon("left A", 1, 8, 2), cordon("right C", 2, 9)]);
    expect(reasonOf(counted, "A")).toStrictEqual({
      code: "onlyOne",
      mine: [],
      theirs: [],
      facts: { spurs: 8, gap: 2 },
    });
    const sound = { condition: "sound" as const };
    const uncounted = decide([
      { side: "left", cordon: "A", trunk: 1, ...sound },
      { side: "right", cordon: "C", trunk: 2, ...sound },
    ]);
    expect(reasonOf(uncounted, "A")).toStrictEqual({ code: "onlyOne", mine: [], theirs: [], facts: {} });
  });
});

describe("what is asked", () => {
  test("with which cordon across each goes, where two pairs are equal", () => {
    // A and D, B and C hang on two trunks each
    const decision = decide([
      cordon("left A", 1, 8),
      cordon("left B", 2, 8),
      cordon("right C", 1, 8),
      cordon("right D", 2, 8),
    ]);
    const facts = (letter: string, side: string) => reasonOf(decision, letter, side).facts;
    expect([facts("A", "left"), facts("B", "left"), facts("C", "right"), facts("D", "right")]).toEqual([
      { mineWith: "D", theirsWith: "C" },
      { mineWith: "C", theirsWith: "D" },
      { mineWith: "B", theirsWith: "A" },
      { mineWith: "A", theirsWith: "B" },
    ]);
  });

  test("no such pairs where one of the two goes with a new cane", () => {
    // C is worth 0.50, as a cane: A on trunk 2 goes with C on trunk 1, B on trunk 1 with a cane from trunk 2
    const decision = decide([cordon("left A", 2, 8), cordon("left B", 1, 8), likeCane("right C", 1)]);
    expect(answersOf(decision)).toEqual(["A ask closeCall B", "B ask closeCall A", "C ask closeToNewCane"]);
    expect([reasonOf(decision, "A").facts, reasonOf(decision, "B").facts]).toEqual([{}, {}]);
  });

  test("on a vine with one side two close cordons and nothing across", () => {
    const decision = decide([cordon("left A", 1, 8), cordon("left B", 1, 8)], {}, { sidesWanted: 1 });
    expect(answersOf(decision)).toEqual(["A ask closeCall B", "B ask closeCall A"]);
    expect(reasonOf(decision, "A")).toStrictEqual({
      code: "closeCall",
      rival: "B",
      mine: [],
      theirs: [],
      facts: {},
    });
  });

  test("what is missing of the cordons in which two plans differ, and of no other", () => {
    const across = gapUnknown("right C", 2, 9);
    const equal = decide([cordon("left A", 1, 8), cordon("left B", 1, 8), across]);
    expect(reasonOf(equal, "A")).toMatchObject({ code: "closeCall", facts: {} });
    const open = decide([gapUnknown("left A", 1, 8), cordon("left B", 1, 8), across]);
    expect(reasonOf(open, "A")).toMatchObject({ code: "missingCounts", facts: { missing: ["stretch A"] } });
    const trunkless = decide([
      cordon("left A", 1, 8),
      cordon("left B", 1, 8),
      cordon("right C", undefined, 9),
    ]);
    expect(reasonOf(trunkless, "A")).toMatchObject({
      code: "missingCounts",
      facts: { missing: ["trunk C"] },
    });
  });

  test("between a cordon and a new cane with what is missing of it, and what weighs on it most", () => {
    // 5 spurs of 10: its gap is one place at least, 0.90, or all 5, at most 0.50
    const decision = decide([gapUnknown("left A", 1, 5), cordon("right C", 2, 9)]);
    expect(reasonOf(decision, "A")).toMatchObject({
      code: "missingCounts",
      facts: { missing: ["stretch A"], weak: "deadStretch", spurs: 5, carry: 10 },
    });
    expect(reasonOf(decide([likeCane("left A", 1), cordon("right C", 2, 9)]), "A")).toMatchObject({
      code: "closeToNewCane",
      facts: { weak: "deadStretch", gap: 4 },
    });
  });
});

describe("one question for both sides", () => {
  const questionOf = (decision: ReturnType<typeof decide>) =>
    decision.cordons.map(({ reason }) => reason.question);

  test("where both are close, each with its own arguments, though their letters are the same", () => {
    // left: 7 spurs and no gap against 10 and a gap of 2, 0.94 and 0.925; right: two alike; E is out of reach
    const decision = decide([
      cordon("left A", 1, 7),
      cordon("left B", 1, 10, 2),
      cordon("right A", 2, 9),
      cordon("right B", 2, 9),
      cordon("right E", 2, 2, 5),
    ]);
    const question = [
      {
        side: "left",
        cordon: "A",
        rival: "B",
        mine: [expect.objectContaining({ code: "stretch" })],
        theirs: [expect.objectContaining({ code: "spurs" })],
        facts: {},
      },
      { side: "right", cordon: "A", rival: "B", mine: [], theirs: [], facts: {} },
    ];
    expect(questionOf(decision)).toEqual([question, question, question, question, undefined]);
  });

  test("where both are close to a new cane, without a rival", () => {
    const decision = decide([likeCane("left A", 1), likeCane("right C", 2)]);
    const [question] = questionOf(decision);
    expect(question?.map(({ side, cordon: letter }) => `${side} ${letter}`)).toEqual(["left A", "right C"]);
    for (const side of question!) expect(side).not.toHaveProperty("rival");
    expect(questionOf(decision)[1]).toEqual(question);
  });

  test.each<{ why: string; right: readonly CandidateCordon[] }>([
    { why: "is decided", right: [cordon("right C", 2, 9)] },
    { why: "waits for a count", right: [gapUnknown("right C", 2, 8), cordon("right D", 2, 8)] },
    { why: "has two cordons of one name", right: [cordon("right C", 2, 9), cordon("right C", 2, 9)] },
  ])("not where the other side $why", ({ right }) => {
    const decision = decide([cordon("left A", 1, 9), cordon("left B", 1, 9), ...right]);
    expect(answersOf(decision).slice(0, 2)).toEqual(["A ask closeCall B", "B ask closeCall A"]);
    expect(questionOf(decision).every((question) => question === undefined)).toBe(true);
  });
});
