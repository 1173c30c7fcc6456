import fc from "fast-check";
import type { CandidateCordon } from "../../../src/domain/choice/candidateCordon";
import { chooseCordons } from "../../../src/domain/choice/chooseCordons";
import { reasonSentence } from "../../../src/survey/decide/choice/reasonSentence";
import { vineNoteSentence } from "../../../src/survey/decide/choice/vineSentences";
import { metres } from "../../../src/domain/units";
import { anyCandidate, fullCandidate, vineOf } from "./counts";
import { everyPlan } from "./everyPlan";
import { planned, RULES } from "./standardRules";

describe("against every plan, one after the other", () => {
  test("with every count known the answer is the best plan, and a side is asked about exactly when another is close", () => {
    fc.assert(
      fc.property(vineOf(fullCandidate, 4, ["training"]), (vine) => {
        const decision = chooseCordons(vine, RULES);
        const plans = everyPlan(vine, RULES);
        const best = Math.max(...plans.map(({ worth }) => worth));
        expect(decision.worth).toBeCloseTo(best, 9);
        decision.sides.forEach(({ side, cordon, ask }, index) => {
          const here = ({ stays }: (typeof plans)[number]) => stays[index];
          const chosen = plans.filter((plan) => here(plan) === cordon);
          expect(Math.max(...chosen.map(({ worth }) => worth))).toBeCloseTo(best, 9);
          const fixed = vine.candidates.some((one) => one.side === side && one.fixedChoice === "stays");
          const otherwise = plans.filter((plan) => here(plan) !== cordon).map(({ worth }) => worth);
          const lead = best - Math.max(-Infinity, ...otherwise);
          fc.pre(Math.abs(lead - RULES.closeCall) > 1e-7);
          expect(ask).toBe(!fixed && lead <= RULES.closeCall);
        });
      }),
      { numRuns: 600 },
    );
  });

  test("with counts missing, no way of filling them in turns a decided side by more than the margin allows", () => {
    fc.assert(
      fc.property(
        vineOf(anyCandidate, 3),
        fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
        (vine, draws) => {
          const decision = chooseCordons(vine, RULES);
          const plans = everyPlan(vine, RULES, () => draws.next().value as number);
          const best = Math.max(...plans.map(({ worth }) => worth));
          decision.sides.forEach(({ side, cordon, ask }, index) => {
            if (ask || vine.candidates.some((one) => one.side === side && one.fixedChoice === "stays"))
              return;
            const chosen = plans.filter(({ stays }) => stays[index] === cordon);
            expect(Math.max(...chosen.map(({ worth }) => worth))).toBeCloseTo(best, 9);
          });
        },
      ),
      { numRuns: 600 },
    );
  });
});

const spursOf = ({ liveSpurs, spursDown, spursLevel, spursUp }: CandidateCordon) =>
  liveSpurs ??
  (spursDown === undefined || spursLevel === undefined || spursUp === undefined
    ? undefined
    : spursDown + spursLevel + spursUp);

/** Live spurs, and either length or positions to hold them against; or no spur at all. */
const isSpurCounted = (one: CandidateCordon) =>
  spursOf(one) === 0 || (spursOf(one) !== undefined && Boolean(one.length || one.positions));

/** The longest gap, or what bounds it. */
const isGapKnown = (one: CandidateCordon) =>
  one.longestGap !== undefined ||
  spursOf(one) === 0 ||
  (spursOf(one) !== undefined && one.positions !== undefined);

describe("whatever is written down", () => {
  test("every cordon gets one answer with a whole sentence, every side has one cordon or one cane", () => {
    fc.assert(
      fc.property(vineOf(anyCandidate), (vine) => {
        const decision = chooseCordons(vine, RULES);
        expect(decision.cordons.map(({ cordon }) => cordon)).toEqual(
          vine.candidates.map(({ cordon }) => cordon),
        );
        for (const cordon of decision.cordons)
          expect(reasonSentence(cordon, "fr", "metric")).not.toMatch(/[{}]|undefined|NaN/);
        const { spurs, stretch } = {
          spurs: vine.candidates.some(isSpurCounted),
          stretch: vine.candidates.some(isGapKnown),
        };
        if (decision.sides.length === 0) {
          expect([spurs, stretch]).toEqual([false, false]);
          expect(decision.notes.map(({ code }) => code)).toEqual(["uncounted"]);
          return;
        }
        expect(decision.sides).toHaveLength(2);
        for (const side of decision.sides)
          expect([side.cordon, side.layCaneFrom].filter((one) => one !== undefined)).toHaveLength(1);
        for (const side of decision.sides) {
          const fixed = vine.candidates.filter(
            (one) => one.side === side.side && one.fixedChoice === "stays",
          );
          const staying = decision.cordons.filter((one) => one.side === side.side && one.verdict === "stays");
          expect(staying.length).toBeLessThanOrEqual(Math.max(1, fixed.length));
        }
      }),
      { numRuns: 500 },
    );
  });

  test("what a person has fixed is never answered otherwise", () => {
    fc.assert(
      fc.property(vineOf(anyCandidate), (vine) => {
        const decision = chooseCordons(vine, RULES);
        vine.candidates.forEach(({ fixedChoice }, index) => {
          if (fixedChoice) expect(decision.cordons[index].verdict).toBe(fixedChoice);
        });
      }),
      { numRuns: 2000 },
    );
  });

  test("what a person has fixed stands on a vine that is counted nowhere; the rest of it is asked about", () => {
    const { cordons, sides } = chooseCordons(
      {
        candidates: [
          { side: "left", cordon: "A", trunk: 1, fixedChoice: "stays" },
          { side: "left", cordon: "B", trunk: 1, fixedChoice: "goes" },
          { side: "right", cordon: "C", trunk: 1 },
          { side: "right", cordon: "D", trunk: 2 },
        ],
      },
      RULES,
    );
    expect(cordons.map(({ verdict, reason: { code } }) => `${verdict} ${code}`)).toEqual([
      "stays fixedStays",
      "goes fixedGoes",
      "ask uncounted",
      "ask uncounted",
    ]);
    expect(sides).toEqual([]);
  });

  test("the order of the rows decides nothing but ties", () => {
    fc.assert(
      fc.property(vineOf(fullCandidate, 3, ["training"]), (vine) => {
        const back = chooseCordons({ ...vine, candidates: [...vine.candidates].reverse() }, RULES);
        const there = chooseCordons(vine, RULES);
        expect(back.worth).toBeCloseTo(there.worth, 9);
        fc.pre(there.lead === undefined || there.lead > 1e-6);
        expect([...back.cordons].reverse().map(({ verdict }) => verdict)).toEqual(
          there.cordons.map(({ verdict }) => verdict),
        );
      }),
    );
  });

  test("the cut list holds exactly the cordons that go", () => {
    fc.assert(
      fc.property(vineOf(anyCandidate), (vine) => {
        const decision = chooseCordons(vine, RULES);
        const { cordons } = decision;
        const { cuts } = planned(vine, decision);
        const going = cordons.filter(({ verdict }) => verdict === "goes").map(({ cordon }) => cordon);
        expect(cuts.map(({ cordon }) => cordon).sort()).toEqual(going.sort());
      }),
    );
  });
});

describe("only the trunk differs", () => {
  test("the cordon from a trunk of its own stays, without a question, whatever the counts are", () => {
    fc.assert(
      fc.property(fullCandidate, fullCandidate, (one, across) => {
        const sound = { condition: "sound", trunkCondition: "sound", fixedChoice: undefined } as const;
        const left = { ...one, ...sound, side: "left", length: metres(1), positions: 30 };
        const right = {
          ...across,
          ...sound,
          side: "right",
          cordon: "C",
          trunk: 2,
          length: metres(1),
          positions: 30,
        };
        const candidates = [
          { ...left, cordon: "A", trunk: 2, fixedChoice: undefined },
          { ...left, cordon: "B", trunk: 1, fixedChoice: undefined },
          { ...right, fixedChoice: "stays" as const },
        ] as unknown as CandidateCordon[];
        const decision = chooseCordons({ candidates, training: "highWire", status: "bearing" }, RULES);
        const [a, b] = decision.cordons;
        expect(a.verdict).not.toBe("stays");
        if (decision.sides[0].layCaneFrom === undefined && !decision.sides[0].orLayFrom)
          expect([a.verdict, b.verdict]).toEqual(["goes", "stays"]);
      }),
    );
  });
});

describe("trunks alone", () => {
  // nothing is known of A and B but that they come from two trunks
  const bare = (side: string, letter: string, trunk: number): CandidateCordon => ({
    side,
    cordon: letter,
    trunk,
    condition: "sound",
  });

  test("two cordons of which neither spurs nor gaps were counted are to be counted, not decided", () => {
    const decision = chooseCordons(
      { candidates: [bare("left", "A", 1), bare("left", "B", 2), bare("right", "C", 2)] },
      RULES,
    );
    expect(decision.sides).toEqual([]);
    expect(decision.cordons.map((cordon) => reasonSentence(cordon, "en", "US"))[0]).toBe(
      "Count this vine: neither live spurs nor gaps are written down, and by its trunks alone nothing is decided.",
    );
    expect(decision.notes.map((note) => vineNoteSentence(note, "en"))).toEqual([
      "Count live spurs and gaps on this vine before anything is cut on it.",
    ]);
  });

  test("one cordon a side needs no counts to stay", () => {
    const { sides } = chooseCordons({ candidates: [bare("left", "A", 1), bare("right", "C", 2)] }, RULES);
    expect(sides.map(({ cordon }) => cordon)).toEqual(["A", "C"]);
  });
});
