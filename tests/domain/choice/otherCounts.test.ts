import type { CandidateCordon, VineToDecide } from "../../../src/domain/choice/candidateCordon";
import type { ChoiceRules } from "../../../src/domain/choice/choiceRules";
import { countingRisk } from "../../../src/domain/choice/countingRisk";
import { whatWouldTurn, withCounts } from "../../../src/domain/choice/whatWouldTurn";
import { metres } from "../../../src/domain/units";
import { RULES } from "./standardRules";

/** One cordon a vine is wanted and only its live spurs are weighed: its score is live spurs over those it should carry. */
const SPURS_ONLY: ChoiceRules = {
  ...RULES,
  weights: { spurs: 1, stretch: 0, placing: 0, soundness: 0, diameter: 0 },
  spurSpacing: metres(0.1),
  sidesWanted: 1,
  closeCall: 0,
  renewingShare: 2,
};
const on = (cordon: string, liveSpurs: number, rest: Partial<CandidateCordon> = {}): CandidateCordon => ({
  side: "left",
  cordon,
  trunk: 1,
  length: metres(1),
  liveSpurs,
  ...rest,
});
const turnsOf = (candidates: readonly CandidateCordon[], rules: Partial<ChoiceRules> = {}) =>
  whatWouldTurn({ candidates }, { ...SPURS_ONLY, ...rules }).map((turn) =>
    turn.kind === "count"
      ? `${turn.cordon} ${turn.count} ${turn.from} to ${turn.to}`
      : `${turn.figure} ${turn.from} to ${turn.to}`,
  );

describe("the nearest other count or figure, by hand", () => {
  test("0.8 against 0.6: A falls behind at 5, B passes at 9, a new cane above 0.8; of equals the first stays", () => {
    expect(turnsOf([on("A", 8), on("B", 6)])).toEqual([
      "A liveSpurs 8 to 5",
      "B liveSpurs 6 to 9",
      "newCane 0.5 to 0.81",
    ]);
  });

  test("whole: of which cordon, which count, from what to what", () => {
    expect(whatWouldTurn({ candidates: [on("A", 8), on("B", 6)] }, SPURS_ONLY)).toEqual([
      {
        kind: "count",
        side: "left",
        cordon: "A",
        count: "liveSpurs",
        from: 8,
        to: 5,
      },
      {
        kind: "count",
        side: "left",
        cordon: "B",
        count: "liveSpurs",
        from: 6,
        to: 9,
      },
      { kind: "figure", figure: "newCane", from: 0.5, to: 0.81 },
    ]);
  });

  test("a count is tried down to none, and five away at most", () => {
    // A has 1 spur of 10, B 1 of 20: 0.10 against 0.05
    expect(
      turnsOf([on("A", 1), on("B", 1, { length: metres(2) })], {
        newCane: 0,
      }).slice(0, 2),
    ).toEqual(["A liveSpurs 1 to 0", "B liveSpurs 1 to 3"]);
    expect(turnsOf([on("A", 10), on("B", 6)], { newCane: 0 })).toContain("A liveSpurs 10 to 5");
    // B would have to reach 1.00 and more
    expect(
      turnsOf([on("A", 10), on("B", 5)], { newCane: 0 }).filter((one) => !one.startsWith("newCane")),
    ).toEqual([]);
  });

  test("the nearer count comes first", () => {
    // 0.80 against 0.70: A, of 20, falls behind at 13, B passes at 9
    const rows = [on("A", 16, { length: metres(2) }), on("B", 7)];
    expect(turnsOf(rows).slice(0, 2)).toEqual(["B liveSpurs 7 to 9", "A liveSpurs 16 to 13"]);
  });

  test("a gap is tried beside the spurs: with gaps alone weighed each place beyond the first costs a quarter", () => {
    const weights = {
      spurs: 0,
      stretch: 1,
      placing: 0,
      soundness: 0,
      diameter: 0,
    };
    const [a, b] = [on("A", 8, { longestGap: 1 }), on("B", 8, { longestGap: 2 })];
    // 1 against 0.75; of equals the first stays, and with no weight on gaps the two are equal
    expect(turnsOf([a, b], { weights })).toEqual(["A longestGap 1 to 3"]);
    expect(turnsOf([b, a], { weights })).toEqual([
      "B longestGap 2 to 1",
      "A longestGap 1 to 2",
      "stretch 1 to 0",
    ]);
  });

  test("what two trunks earn: 0.70 + 0.15 against 0.80, equal at 0.10", () => {
    const rules = { sidesWanted: 2 as const, newCane: 0 };
    const rows = [on("A", 7), on("B", 8, { trunk: 2 }), on("C", 10, { side: "right", trunk: 2 })];
    expect(turnsOf(rows, rules)).toContain("twoTrunks 0.15 to 0.09");
  });

  test.each([
    { condition: "injured", figure: "injuredTrunk", from: 0.1 },
    { condition: "diseased", figure: "diseasedTrunk", from: 0.2 },
  ] as const)("what an $condition trunk costs: 1.00 less $from against 0.95, equal at 0.05", (row) => {
    const two = { length: metres(2) };
    const hurt = on("A", 20, { ...two, trunkCondition: row.condition });
    const sound = on("B", 19, { ...two, trunk: 2 });
    expect(turnsOf([sound, hurt], { newCane: 0 })).toContain(`${row.figure} ${row.from} to 0.04`);
    expect(turnsOf([hurt, sound], { newCane: 0 })).toContain(`${row.figure} ${row.from} to 0.05`);
  });

  test("the last hundredths before 0 and 1 are tried too", () => {
    const hurt = on("A", 50, { length: metres(5), trunkCondition: "injured" });
    const sound = on("B", 49, { length: metres(5), trunk: 2 });
    // 1.00 - 0.03 against 0.98; equal at 0.02, where the first row stays
    expect(turnsOf([sound, hurt], { newCane: 0, injuredTrunk: 0.03 })).toContain("injuredTrunk 0.03 to 0.01");
    // a new cane, worth 0.97, passes 0.98 at 0.99
    expect(turnsOf([sound], { newCane: 0.97 })).toContain("newCane 0.97 to 0.99");
    // and a cordon of 0.02 passes a cane that is worth 0.03, as soon as that is worth no more
    expect(turnsOf([on("A", 1, { length: metres(5) })], { newCane: 0.03 })).toContain("newCane 0.03 to 0.02");
  });

  test("a weight turns it where two parts speak for two cordons", () => {
    // spurs 0.80 against 0.60, stretch 0.75 against 1: 0.80 w + 0.75 v against 0.60 w + 1 v; with v = 1 equal at w = 1.25,
    // with w = 1 at v = 0.80
    const weights = {
      spurs: 1,
      stretch: 1,
      placing: 0,
      soundness: 0,
      diameter: 0,
    };
    const rows = [on("A", 8, { longestGap: 2 }), on("B", 6, { longestGap: 1 })];
    const figures = turnsOf(rows, { weights, newCane: 0 });
    expect(figures).toContain("stretch 1 to 0.8");
    expect(figures.some((one) => one.startsWith("spurs"))).toBe(false);
  });
});

describe("a vine with some counts changed", () => {
  const changed = (one: Partial<CandidateCordon>, counts: Parameters<typeof withCounts>[2]) =>
    withCounts({ candidates: [{ side: "left", cordon: "A", ...one }] }, 0, counts).candidates[0];

  test.each([
    { why: "fewer spurs leave the gap", live: 7, gap: 2 },
    { why: "9 of 10 places live: one is empty", live: 9, gap: 1 },
    { why: "more spurs than places: none is empty", live: 12, gap: 0 },
  ])("$why", ({ live, gap }) => {
    const before = { positions: 10, liveSpurs: 8, longestGap: 2 };
    expect(changed(before, { liveSpurs: live })).toStrictEqual({
      side: "left",
      cordon: "A",
      positions: 10,
      liveSpurs: live,
      longestGap: gap,
    });
  });

  test.each([
    { live: 9, ways: [5, 2, 1] },
    { live: 8, ways: [5, 2, 1] },
    { live: 7, ways: [5, 1, 1] },
    { live: 5, ways: [4, 0, 1] },
    { live: 1, ways: [0, 0, 1] },
    { live: 0, ways: [0, 0, 0] },
  ])(
    "5 down, 2 level and 1 up on $live spurs: level ones are taken off first, those up last",
    ({ live, ways }) => {
      const { spursDown, spursLevel, spursUp } = changed(
        { liveSpurs: 8, spursDown: 5, spursLevel: 2, spursUp: 1 },
        { liveSpurs: live },
      );
      expect([spursDown, spursLevel, spursUp]).toEqual(ways);
    },
  );

  test("what nobody counted stays uncounted", () => {
    const name = { side: "left", cordon: "A" };
    expect(changed({ liveSpurs: 8, spursDown: 8 }, { liveSpurs: 6 })).toStrictEqual({
      ...name,
      liveSpurs: 6,
      spursDown: 6,
    });
    expect(changed({ positions: 10 }, { longestGap: 3 })).toStrictEqual({
      ...name,
      positions: 10,
      longestGap: 3,
    });
    expect(changed({ liveSpurs: 8 }, { longestGap: 3 })).toStrictEqual({
      ...name,
      liveSpurs: 8,
      longestGap: 3,
    });
    expect(changed({ liveSpurs: 8, positions: 10 }, { liveSpurs: 9 })).toStrictEqual({
      ...name,
      liveSpurs: 9,
      positions: 10,
    });
  });

  test("only the cordon that is meant is changed, and the vine is kept as it is", () => {
    const vine: VineToDecide = {
      candidates: [on("A", 8), on("B", 6), on("C", 4)],
      training: "upright",
    };
    const other = withCounts(vine, 1, { liveSpurs: 7 });
    expect(other).toEqual({
      ...vine,
      candidates: [on("A", 8), on("B", 7), on("C", 4)],
    });
  });
});

describe("counts off by one, drawn by hand", () => {
  /** Draws these numbers over and over: below 0.5 is one less, or one spur more that points down. */
  const drawing = (...draws: readonly number[]) => {
    let at = 0;
    return () => draws[at++ % draws.length];
  };
  const [LESS, MORE] = [0, 0.9];
  /** A and B are 0.1 apart: one spur less on A and one more on B turns them. */
  const turning: VineToDecide = { candidates: [on("A", 8), on("B", 7)] };
  const alone: VineToDecide = { candidates: [on("A", 9)] };

  test("a vine that turns at every draw, and one that turns at none", () => {
    expect(countingRisk([turning], SPURS_ONLY, drawing(LESS, MORE), 3)).toEqual({
      vines: 1,
      flips: 1,
      flipsDecided: 1,
      decided: 1,
    });
    expect(countingRisk([turning], SPURS_ONLY, drawing(MORE, LESS), 3)).toMatchObject({
      flips: 0,
      flipsDecided: 0,
    });
    // both one less, both one more: the same distance
    expect(countingRisk([turning], SPURS_ONLY, drawing(LESS), 1).flips).toBe(0);
    expect(countingRisk([turning], SPURS_ONLY, drawing(MORE), 1).flips).toBe(0);
  });

  test("the draw stands exactly at even odds: from 0.5 on it is one more", () => {
    expect(countingRisk([turning], SPURS_ONLY, drawing(0.49, 0.5), 1).flips).toBe(1);
  });

  test("shares are of all vines and draws, and of those that are decided without a question", () => {
    // 2 of 4 draws turn; both vines are decided: 2 of 4
    expect(countingRisk([turning, alone], SPURS_ONLY, drawing(LESS, MORE), 2)).toEqual({
      vines: 2,
      flips: 0.5,
      flipsDecided: 0.5,
      decided: 2,
    });
    // within a margin of 0.1 the first is asked about: only the other is decided, and that never turns
    expect(countingRisk([turning, alone], { ...SPURS_ONLY, closeCall: 0.1 }, drawing(LESS, MORE), 2)).toEqual(
      {
        vines: 2,
        flips: 0.5,
        flipsDecided: 0,
        decided: 1,
      },
    );
  });

  test("a vine to recount has nothing that could turn, and is not decided", () => {
    const recount = { ...turning, recount: ["live spurs of A"] };
    expect(countingRisk([recount, turning], SPURS_ONLY, drawing(LESS, MORE), 1)).toEqual({
      vines: 2,
      flips: 0.5,
      flipsDecided: 1,
      decided: 1,
    });
  });

  test("a spur turned the other way turns the vine where only directions are weighed", () => {
    // upright shoots, down 0.2, level 0.6, up 1: A (5 x 0.2 + 5 x 1) / 10 = 0.6 as B's ten level ones, and A is the first.
    // One more live spur counts as level: 6 down and 4 up make 5.8 / 11, 4 down and 6 up 7.4 / 11.
    const weights = {
      spurs: 0,
      stretch: 0,
      placing: 1,
      soundness: 0,
      diameter: 0,
    };
    const { length: _length, ...bare } = on("A", 10, { longestGap: 1 });
    const vine: VineToDecide = {
      candidates: [
        { ...bare, spursDown: 5, spursLevel: 0, spursUp: 5 },
        { ...bare, cordon: "B", spursDown: 0, spursLevel: 10, spursUp: 0 },
      ],
      training: "upright",
    };
    const rules = { ...SPURS_ONLY, weights };
    // for each cordon its direction, gap and spurs are drawn in turn; a cordon of level spurs has none to turn
    expect(countingRisk([vine], rules, drawing(LESS, MORE, MORE, MORE, MORE, MORE), 1).flips).toBe(1);
    expect(countingRisk([vine], rules, drawing(MORE, MORE, MORE, MORE, MORE, MORE), 1).flips).toBe(0);
  });

  test("no count is drawn below nothing", () => {
    const none = on("A", 0, {
      longestGap: 0,
      spursDown: 0,
      spursLevel: 0,
      spursUp: 0,
    });
    for (const draw of [LESS, MORE])
      expect(
        countingRisk([{ candidates: [none], training: "highWire" }], SPURS_ONLY, drawing(draw), 1).vines,
      ).toBe(1);
  });
});
