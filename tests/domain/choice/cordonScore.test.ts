import fc from "fast-check";
import type { CandidateCordon } from "../../../src/domain/choice/candidateCordon";
import { cordonScore } from "../../../src/domain/choice/cordonScore";
import type { ChoiceRules } from "../../../src/domain/choice/choiceRules";
import { Refusal } from "../../../src/domain/refusal";
import { metres, metresFromFeet } from "../../../src/domain/units";
import { CONDITIONS, fullCandidate, TRAININGS } from "./counts";
import { RULES } from "./standardRules";

const training = fc.constantFrom(...TRAININGS);
const share = fc.double({ min: 0, max: 1, noNaN: true });
/** Any settings a farm could choose, with the order of the worths that the trade knows. */
const rules: fc.Arbitrary<ChoiceRules> = fc
  .record({
    spurs: share,
    stretch: share,
    placing: share,
    soundness: share,
    diameter: share,
    longestStretch: fc.integer({ min: 1, max: 20 }),
    worths: fc.tuple(share, share, share),
  })
  .filter(({ spurs, stretch }) => spurs + stretch > 0.01)
  .map(({ worths, longestStretch, ...weights }) => {
    const [low, middle, high] = [...worths].sort((first, second) => first - second);
    const hanging = { down: high, level: middle, up: low };
    return {
      ...RULES,
      weights,
      longestStretch,
      spurWorth: { highWire: hanging, divided: hanging, upright: { down: low, level: middle, up: high } },
    };
  });
const scoreOf = (cordon: CandidateCordon, ...rest: [Parameters<typeof cordonScore>[1], ChoiceRules]) =>
  cordonScore(cordon, ...rest, metres(1)).score;

describe("a cordon's score only rises with what is good for a cordon", () => {
  const directions = ["spursDown", "spursLevel", "spursUp"] as const;

  test("one more live spur, whichever way it points", () => {
    fc.assert(
      fc.property(
        fullCandidate,
        training,
        rules,
        fc.constantFrom(...directions),
        (cordon, system, own, way) => {
          const more = { ...cordon, [way]: cordon[way]! + 1, liveSpurs: cordon.liveSpurs! + 1 };
          expect(scoreOf(more, system, own)).toBeGreaterThanOrEqual(scoreOf(cordon, system, own) - 1e-12);
        },
      ),
      { numRuns: 2000 },
    );
  });

  test("a shorter gap", () => {
    fc.assert(
      fc.property(fullCandidate, training, rules, (cordon, system, own) => {
        fc.pre(cordon.longestGap! > 0);
        const shorter = { ...cordon, longestGap: cordon.longestGap! - 1 };
        expect(scoreOf(shorter, system, own)).toBeGreaterThanOrEqual(scoreOf(cordon, system, own) - 1e-12);
      }),
    );
  });

  test("a spur that points the better way", () => {
    fc.assert(
      fc.property(fullCandidate, training, rules, fc.boolean(), (cordon, system, own, twoSteps) => {
        const order = system === "upright" ? [...directions] : [...directions].reverse();
        const from = twoSteps ? order[0] : order[1];
        const to = twoSteps ? order[1] : order[2];
        fc.pre(cordon[from]! > 0);
        const turned = { ...cordon, [from]: cordon[from]! - 1, [to]: cordon[to]! + 1 };
        expect(scoreOf(turned, system, own)).toBeGreaterThanOrEqual(scoreOf(cordon, system, own) - 1e-12);
      }),
    );
  });

  test("sounder and thicker wood", () => {
    fc.assert(
      fc.property(fullCandidate, training, rules, (cordon, system, own) => {
        const inOrder = CONDITIONS.map((condition) => scoreOf({ ...cordon, condition }, system, own));
        expect(inOrder).toEqual([...inOrder].sort((first, second) => second - first));
        const thicker = { ...cordon, diameter: metres(cordon.diameter! + 0.001) };
        expect(scoreOf(thicker, system, own)).toBeGreaterThanOrEqual(scoreOf(cordon, system, own) - 1e-12);
      }),
    );
  });

  test("it lies between 0 and 1, and is the weighed sum of its parts", () => {
    fc.assert(
      fc.property(fullCandidate, training, rules, (cordon, system, own) => {
        const { score, parts, missing } = cordonScore(cordon, system, own, metres(1));
        expect(missing).toEqual([]);
        const names = Object.keys(parts) as (keyof typeof parts)[];
        const total = names.reduce((sum, part) => sum + own.weights[part], 0);
        const sum = names.reduce((all, part) => all + own.weights[part] * parts[part].low, 0);
        expect(score).toBeCloseTo(sum / total, 10);
        expect(score).toBeGreaterThanOrEqual(0);
        expect(score).toBeLessThanOrEqual(1 + 1e-12);
      }),
    );
  });
});

describe("parts worked by hand", () => {
  /** 40 inches at a spur every 4 inches: 10 spurs to carry. */
  const forty = { side: "left", cordon: "A", length: metresFromFeet(40 / 12) };
  const cases: readonly {
    why: string;
    cordon: Partial<CandidateCordon>;
    training?: "highWire" | "upright" | "divided";
    side?: number;
    parts: Partial<Record<"spurs" | "stretch" | "placing" | "soundness" | "diameter", number>>;
  }[] = [
    { why: "8 of the 10 spurs that 40 in should carry", cordon: { liveSpurs: 8 }, parts: { spurs: 0.8 } },
    { why: "more spurs than it should carry earn no more", cordon: { liveSpurs: 14 }, parts: { spurs: 1 } },
    {
      why: "20 in of cordon on a side of 40 in of wire: measured by the wire, 5 of 10",
      cordon: { length: metresFromFeet(20 / 12), liveSpurs: 5 },
      side: 40,
      parts: { spurs: 0.5 },
    },
    {
      why: "60 in of cordon on a side of 40 in: measured by its own length, 9 of 15",
      cordon: { length: metresFromFeet(5), liveSpurs: 9 },
      side: 40,
      parts: { spurs: 0.6 },
    },
    {
      why: "no length: 6 spurs on 12 counted positions",
      cordon: { length: undefined, positions: 12, liveSpurs: 6 },
      parts: { spurs: 0.5 },
    },
    { why: "no gap", cordon: { liveSpurs: 8, longestGap: 0 }, parts: { stretch: 1 } },
    {
      why: "2 empty places in a row, one of the four from a single one to 5 that score nothing: 3 of 4",
      cordon: { liveSpurs: 8, longestGap: 2 },
      parts: { stretch: 0.75 },
    },
    {
      why: "one empty place is a missing spur, no stretch",
      cordon: { liveSpurs: 8, longestGap: 1 },
      parts: { stretch: 1 },
    },
    { why: "a gap beyond the setting", cordon: { liveSpurs: 3, longestGap: 7 }, parts: { stretch: 0 } },
    {
      why: "no live spur is one gap, and nothing is well placed",
      training: "highWire",
      cordon: { liveSpurs: 0, longestGap: 0, spursDown: 0 },
      parts: { stretch: 0, placing: 0 },
    },
    {
      why: "12 positions, 11 live: the one empty place is a gap of 1",
      cordon: { positions: 12, liveSpurs: 11 },
      parts: { stretch: 1 },
    },
    {
      why: "every place is filled, so there is no gap",
      cordon: { positions: 9, liveSpurs: 9 },
      parts: { stretch: 1 },
    },
    {
      why: "high wire: 5 down (1) and 5 up (0.4)",
      training: "highWire",
      cordon: { liveSpurs: 10, spursDown: 5, spursLevel: 0, spursUp: 5 },
      parts: { placing: 0.7 },
    },
    {
      why: "upright: 5 down (0.2) and 5 up (1)",
      training: "upright",
      cordon: { liveSpurs: 10, spursDown: 5, spursLevel: 0, spursUp: 5 },
      parts: { placing: 0.6 },
    },
    {
      why: "divided hangs like a high wire: 10 level (0.9)",
      training: "divided",
      cordon: { liveSpurs: 10, spursLevel: 10 },
      parts: { placing: 0.9 },
    },
    {
      why: "12 spurs where 10 are wanted: the 2 that point up are cut off at pruning",
      training: "highWire",
      cordon: { liveSpurs: 12, spursDown: 10, spursLevel: 0, spursUp: 2 },
      parts: { spurs: 1, placing: 1 },
    },
    {
      why: "4 of 8 directions written down: the others count as level, (4 + 4 x 0.9) / 8",
      training: "highWire",
      cordon: { liveSpurs: 8, spursDown: 4 },
      parts: { placing: 0.95 },
    },
    { why: "sound", cordon: { condition: "sound" }, parts: { soundness: 1 } },
    { why: "injured", cordon: { condition: "injured" }, parts: { soundness: 0.5 } },
    { why: "diseased", cordon: { condition: "diseased" }, parts: { soundness: 0.2 } },
    { why: "dead", cordon: { condition: "dead" }, parts: { soundness: 0 } },
    {
      why: "Westover 2016: 1/2 in is the thick end of a cane, no cordon yet",
      cordon: { diameter: metresFromFeet(0.5 / 12) },
      parts: { diameter: 0 },
    },
    {
      why: "an inch earns all",
      cordon: { diameter: metresFromFeet(1 / 12) },
      parts: { diameter: 1 },
    },
    {
      why: "3/4 in lies halfway between",
      cordon: { diameter: metresFromFeet(0.75 / 12) },
      parts: { diameter: 0.5 },
    },
  ];

  test.each(cases)("$why", ({ cordon, training: system, side, parts }) => {
    const length = side === undefined ? undefined : metresFromFeet(side / 12);
    const scored = cordonScore({ ...forty, ...cordon }, system, RULES, length);
    for (const [part, value] of Object.entries(parts)) {
      const bounds = scored.parts[part as keyof typeof scored.parts];
      expect(bounds.low).toBeCloseTo(value, 10);
      expect(bounds.high).toBeCloseTo(value, 10);
    }
  });

  test("without the longest gap, 12 positions with 9 live leave it between 1 and 3", () => {
    const { parts, missing } = cordonScore({ ...forty, positions: 12, liveSpurs: 9 }, undefined, RULES);
    expect(parts.stretch.low).toBeCloseTo(0.5, 10);
    expect(parts.stretch.high).toBeCloseTo(1, 10);
    expect(missing).toEqual(["stretch"]);
  });

  test("parts that nothing speaks of are left out and named", () => {
    const scored = cordonScore({ ...forty, liveSpurs: 8, longestGap: 2 }, "highWire", RULES);
    expect(scored.leftOut).toEqual(["placing", "soundness", "diameter"]);
    expect(scored.score).toBeCloseTo((0.2 * 0.8 + 0.3 * 0.75) / 0.5, 10);
  });

  test("nothing counted is refused, never scored", () => {
    expect(() => cordonScore({ side: "left", cordon: "A" }, "highWire", RULES)).toThrow(Refusal);
    expect(() => cordonScore({ ...forty, liveSpurs: 2.5 }, "highWire", RULES)).toThrow(/notWhole/);
    expect(() => cordonScore({ ...forty, liveSpurs: -1 }, "highWire", RULES)).toThrow(/outside/);
    expect(() => cordonScore({ ...forty, length: metres(NaN), liveSpurs: 1 }, "highWire", RULES)).toThrow(
      /outside/,
    );
  });
});
