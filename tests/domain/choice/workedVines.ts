import type { CandidateCordon, VineToDecide } from "../../../src/domain/choice/candidateCordon";
import type { ChoiceRules } from "../../../src/domain/choice/choiceRules";
import { metresFromFeet } from "../../../src/domain/units";

/** A vine decided by hand. */
export interface WorkedVine {
  readonly name: string;
  /** The arithmetic or the fact of the trade that the answer follows from. */
  readonly why: string;
  readonly source?: "common practice";
  readonly vine: VineToDecide;
  readonly rules?: Partial<ChoiceRules>;
  /** Verdict and reason of each cordon, "left A" and so on. */
  readonly cordons: Readonly<Record<string, readonly [verdict: "stays" | "goes" | "ask", reason: string]>>;
  readonly sides?: readonly string[];
  readonly cuts?: readonly string[];
  readonly notes?: readonly string[];
}

const inches = (value: number) => metresFromFeet(value / 12);
/** The wire of one side; at a spur every 4 inches it carries 10. */
const SIDE = inches(40);

/**
 * A sound cordon of 40 in and an inch thick whose spurs all point down. With the standard settings its score is
 * 0.02 a spur + 0.075 for each position that a gap of two or more falls short of 5, at most 0.30, + 0.15 placing + 0.20 +
 * 0.15: 0.80 + 0.02 x spurs - 0.075 x (gap - 1).
 */
export function cordon(
  place: string,
  trunk: number | undefined,
  spurs: number,
  gap: number | undefined,
  rest: Partial<CandidateCordon> = {},
): CandidateCordon {
  const [side, letter] = place.split(" ");
  return {
    side,
    cordon: letter,
    ...(trunk === undefined ? {} : { trunk }),
    length: SIDE,
    liveSpurs: spurs,
    ...(gap === undefined ? {} : { longestGap: gap }),
    spursDown: spurs,
    spursLevel: 0,
    spursUp: 0,
    diameter: inches(1),
    condition: "sound",
    ...rest,
  };
}

const vine = (candidates: readonly CandidateCordon[], rest: Partial<VineToDecide> = {}): VineToDecide => ({
  candidates,
  training: "highWire",
  sideLength: SIDE,
  status: "bearing",
  ...rest,
});

const UP = { spursDown: 0, spursLevel: 0, spursUp: 10 };

export const WORKED_VINES: readonly WorkedVine[] = [
  {
    name: "no gap and a trunk of its own against one spur more",
    source: "common practice",
    why: "a stretch without spurs counts for a cordon's whole life, and the two cordons should not hang on one trunk; 0.96 + 0.15 against 0.83",
    vine: vine([cordon("left A", 1, 8, 0), cordon("left B", 2, 9, 3), cordon("right C", 2, 9, 1)]),
    cordons: {
      "left A": [
        "stays",
        "Keep A on the left: no gap against one of 3; it comes from trunk 1, so that both cordons do not hang on trunk 2. In favour of B: 9 live spurs against 8.",
      ],
      "left B": [
        "goes",
        "Cut B on the left; A is better: no gap against one of 3; it comes from trunk 1, so that both cordons do not hang on trunk 2. In favour of B: 9 live spurs against 8.",
      ],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
    sides: ["A stays on the left.", "C stays on the right."],
    cuts: ["Cut B on the left from the outer end back to the head."],
    notes: [],
  },
  {
    name: "the cordon from a trunk of its own wins a close choice",
    source: "common practice",
    why: "one spur apart decides little between sound cordons; 0.96 + 0.15 against 0.98",
    vine: vine([cordon("left A", 1, 8, 1), cordon("left B", 2, 9, 1), cordon("right C", 2, 9, 1)]),
    cordons: {
      "left A": [
        "stays",
        "Keep A on the left: it comes from trunk 1, so that both cordons do not hang on trunk 2. In favour of B: 9 live spurs against 8.",
      ],
      "left B": [
        "goes",
        "Cut B on the left; A is better: it comes from trunk 1, so that both cordons do not hang on trunk 2. In favour of B: 9 live spurs against 8.",
      ],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
  },
  {
    name: "one spur apart on one trunk is a close call",
    source: "common practice",
    why: "0.96 against 0.98: 0.02 apart, within 0.02",
    vine: vine([cordon("left A", 1, 8, 1), cordon("left B", 1, 9, 1), cordon("right C", 2, 9, 1)]),
    cordons: {
      "left A": ["ask", "Look at the vine: A and B on the left are close. For B: 9 live spurs against 8."],
      "left B": ["ask", "Look at the vine: B and A on the left are close. For B: 9 live spurs against 8."],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
    sides: ["B on the left, if the person who looks agrees.", "C stays on the right."],
    cuts: [],
  },
  {
    name: "a close call with arguments on both sides",
    why: "A 0.80 + 0.14 = 0.94, B 0.80 + 0.20 - 0.075 = 0.925: 0.015 apart, each better in one thing",
    vine: vine([cordon("left A", 1, 7, 1), cordon("left B", 1, 10, 2), cordon("right C", 2, 9, 1)]),
    cordons: {
      "left A": [
        "ask",
        "Look at the vine: A and B on the left are close. For A: longest gap 1 against 2. For B: 10 live spurs against 7.",
      ],
      "left B": [
        "ask",
        "Look at the vine: B and A on the left are close. For B: 10 live spurs against 7. For A: longest gap 1 against 2.",
      ],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
  },
  {
    name: "two spurs apart on one trunk is decided",
    why: "0.96 against 1.00: 0.04 apart, more than 0.02",
    vine: vine([cordon("left A", 1, 8, 1), cordon("left B", 1, 10, 1), cordon("right C", 2, 9, 1)]),
    cordons: {
      "left A": ["goes", "Cut A on the left; B is better: 10 live spurs against 8."],
      "left B": ["stays", "Keep B on the left: 10 live spurs against 8."],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
  },
  {
    name: "a tie",
    why: "nothing that was written down differs",
    vine: vine([cordon("left A", 1, 8, 1), cordon("left B", 1, 8, 1), cordon("right C", 2, 9, 1)]),
    cordons: {
      "left A": ["ask", "Look at the vine: A and B on the left are equal in all that was written down."],
      "left B": ["ask", "Look at the vine: B and A on the left are equal in all that was written down."],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
  },
  {
    name: "a far better cordon wins although both then hang on one trunk",
    why: "A 0.80 + 0.08 - 0.225 = 0.655, but 4 of 10 places are one dead stretch and 2 more are empty: at most 0.50 - 0.20 = 0.30, + 0.15 = 0.45; a new cane from trunk 1 0.50 + 0.15 = 0.65, B 1.00",
    vine: vine([cordon("left A", 1, 4, 4), cordon("left B", 2, 10, 0), cordon("right C", 2, 9, 1)]),
    cordons: {
      "left A": [
        "goes",
        "Cut A on the left; B is better: no gap against one of 4; 10 live spurs against 4. In favour of A: it comes from trunk 1, so that both cordons do not hang on trunk 2.",
      ],
      "left B": [
        "stays",
        "Keep B on the left: no gap against one of 4; 10 live spurs against 4. In favour of A: it comes from trunk 1, so that both cordons do not hang on trunk 2.",
      ],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
    notes: ["Both cordons hang on trunk 2."],
  },
  {
    name: "the pair is chosen together, not the best of each side",
    why: "A 0.96 is the best on the left and C 0.98 on the right, but both hang on trunk 1: A+C 1.94, A+D 0.96 + 0.885 + 0.15 = 1.995, B+C 0.905 + 0.98 + 0.15 = 2.035, B+D 1.79",
    vine: vine([
      cordon("left A", 1, 8, 0),
      cordon("left B", 2, 9, 2),
      cordon("right C", 1, 9, 0),
      cordon("right D", 2, 8, 2),
    ]),
    cordons: {
      "left A": [
        "goes",
        "Cut A on the left; B is better: it comes from trunk 2, so that both cordons do not hang on trunk 1. In favour of A: no gap against one of 2.",
      ],
      "left B": [
        "stays",
        "Keep B on the left: it comes from trunk 2, so that both cordons do not hang on trunk 1. In favour of A: no gap against one of 2.",
      ],
      "right C": [
        "stays",
        "Keep C on the right: it comes from trunk 1, so that both cordons do not hang on trunk 2; no gap against one of 2.",
      ],
      "right D": [
        "goes",
        "Cut D on the right; C is better: it comes from trunk 1, so that both cordons do not hang on trunk 2; no gap against one of 2.",
      ],
    },
  },
  {
    name: "two pairs are equal, and each cordon goes with one across",
    why: "four cordons of 0.96: A+D and B+C hang on two trunks, 2.07 each; A+C and B+D on one, 1.92; one question with both sides in it",
    vine: vine([
      cordon("left A", 1, 8, 1),
      cordon("left B", 2, 8, 1),
      cordon("right C", 1, 8, 1),
      cordon("right D", 2, 8, 1),
    ]),
    cordons: {
      "left A": [
        "ask",
        "Look at the vine: A or B on the left; D or C on the right. A goes with D, B with C.",
      ],
      "left B": [
        "ask",
        "Look at the vine: A or B on the left; D or C on the right. A goes with D, B with C.",
      ],
      "right C": [
        "ask",
        "Look at the vine: A or B on the left; D or C on the right. A goes with D, B with C.",
      ],
      "right D": [
        "ask",
        "Look at the vine: A or B on the left; D or C on the right. A goes with D, B with C.",
      ],
    },
    cuts: [],
  },
  {
    name: "high wire: spurs that point down are better placed",
    source: "common practice",
    why: "all up: placing 0.4, 1.00 - 0.15 x 0.6 = 0.91; all down: 1.00",
    vine: vine([cordon("left A", 1, 10, 0, UP), cordon("left B", 1, 10, 0), cordon("right C", 2, 9, 1)]),
    cordons: {
      "left A": [
        "goes",
        "Cut A on the left; B is better: 10 of 10 spurs point down or sideways against 0 of 10.",
      ],
      "left B": ["stays", "Keep B on the left: 10 of 10 spurs point down or sideways against 0 of 10."],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
  },
  {
    name: "high wire: spurs to the side are nearly as well placed as those that hang",
    source: "common practice",
    why: "all level: placing 0.9, score 0.985; all down 1.00: a close call",
    vine: vine([
      cordon("left A", 1, 10, 0, { spursDown: 0, spursLevel: 10 }),
      cordon("left B", 1, 10, 0),
      cordon("right C", 2, 9, 1),
    ]),
    cordons: {
      "left A": [
        "ask",
        "Look at the vine: A and B on the left are close. For B: its spurs point the better way.",
      ],
      "left B": [
        "ask",
        "Look at the vine: B and A on the left are close. For B: its spurs point the better way.",
      ],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
  },
  {
    name: "upright shoots: spurs on top of the cordon are better placed",
    source: "common practice",
    why: "all up 1.00; all down: placing 0.2, score 0.88",
    vine: vine(
      [cordon("left A", 1, 10, 0, UP), cordon("left B", 1, 10, 0), cordon("right C", 2, 10, 0, UP)],
      {
        training: "upright",
      },
    ),
    cordons: {
      "left A": ["stays", "Keep A on the left: 10 of 10 spurs point up against 0 of 10."],
      "left B": ["goes", "Cut B on the left; A is better: 10 of 10 spurs point up against 0 of 10."],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 10 live spurs and a longest gap of 0.",
      ],
    },
  },
  {
    name: "divided canopy: shoots hang as on a high wire",
    source: "common practice",
    why: "all up 0.91, all down 1.00",
    vine: vine([cordon("left A", 1, 10, 0, UP), cordon("left B", 1, 10, 0), cordon("right C", 2, 9, 1)], {
      training: "divided",
    }),
    cordons: {
      "left A": [
        "goes",
        "Cut A on the left; B is better: 10 of 10 spurs point down or sideways against 0 of 10.",
      ],
      "left B": ["stays", "Keep B on the left: 10 of 10 spurs point down or sideways against 0 of 10."],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
  },
  {
    name: "sound wood outweighs one spur",
    why: "injured with 10 spurs 1.00 - 0.20 x 0.5 = 0.90, sound with 9 spurs 0.98",
    vine: vine([
      cordon("left A", 1, 10, 0, { condition: "injured" }),
      cordon("left B", 1, 9, 0),
      cordon("right C", 2, 9, 1),
    ]),
    cordons: {
      "left A": [
        "goes",
        "Cut A on the left; B is better: it is sound, A is injured. In favour of A: 10 live spurs against 9.",
      ],
      "left B": [
        "stays",
        "Keep B on the left: it is sound, A is injured. In favour of A: 10 live spurs against 9.",
      ],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
  },
  {
    name: "an injured trunk weighs",
    why: "A 1.00 - 0.10 on an injured trunk, B 0.98 on a sound one, C on a third trunk",
    vine: vine([
      cordon("left A", 1, 10, 0, { trunkCondition: "injured" }),
      cordon("left B", 2, 9, 0, { trunkCondition: "sound" }),
      cordon("right C", 3, 9, 1),
    ]),
    cordons: {
      "left A": [
        "goes",
        "Cut A on the left; B is better: its trunk 2 is sound, trunk 1 is injured. In favour of A: 10 live spurs against 9.",
      ],
      "left B": [
        "stays",
        "Keep B on the left: its trunk 2 is sound, trunk 1 is injured. In favour of A: 10 live spurs against 9.",
      ],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
  },
  {
    name: "a dead cordon goes however many spurs were written down",
    why: "dead wood carries nothing; trunk 1 may still live, so it is not taken out",
    vine: vine([
      cordon("left A", 1, 10, 0, { condition: "dead" }),
      cordon("left B", 2, 7, 2),
      cordon("right C", 3, 9, 1),
    ]),
    cordons: {
      "left A": ["goes", "Cut A on the left: it is dead."],
      "left B": [
        "stays",
        "Keep B on the left: it is the only one there and worth keeping, with 7 live spurs and a longest gap of 2.",
      ],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
    cuts: ["Cut A on the left from the outer end back to the head."],
  },
  {
    name: "a dead trunk comes out with its cordon",
    why: "the cordon was counted sound, but its trunk is written down as dead",
    vine: vine([
      cordon("left A", 1, 10, 0, { trunkCondition: "dead" }),
      cordon("left B", 2, 7, 2),
      cordon("right C", 3, 9, 1),
    ]),
    cordons: {
      "left A": ["goes", "Cut A on the left: its trunk 1 is dead."],
      "left B": [
        "stays",
        "Keep B on the left: it is the only one there and worth keeping, with 7 live spurs and a longest gap of 2.",
      ],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
    cuts: ["Cut A on the left from the outer end back to the head, and take out the dead trunk 1."],
  },
  {
    name: "a one-sided vine with a second live trunk",
    why: "nothing on the right; a cane from the other trunk earns 0.50 + 0.15, from trunk 1 only 0.50",
    vine: vine([cordon("left A", 1, 8, 1)], { liveTrunks: 2 }),
    cordons: {
      "left A": [
        "stays",
        "Keep A on the left: it is the only one there and worth keeping, with 8 live spurs and a longest gap of 1.",
      ],
    },
    sides: ["A stays on the left.", "Lay a cane on the right from the live trunk that carries no cordon."],
    cuts: [],
    notes: [],
  },
  {
    name: "a one-sided vine on its only trunk",
    source: "common practice",
    why: "the cane can only come from trunk 1; in cold climates a vine keeps at least two trunks",
    vine: vine([cordon("right A", 1, 8, 1)], { liveTrunks: 1 }),
    cordons: {
      "right A": [
        "stays",
        "Keep A on the right: it is the only one there and worth keeping, with 8 live spurs and a longest gap of 1.",
      ],
    },
    sides: ["Lay a cane on the left from trunk 1: a good cane of A, near the head.", "A stays on the right."],
    notes: ["One live trunk is written down for this vine; bring up a second."],
  },
  {
    name: "a head-trained remnant is no cordon",
    why: "6 in and 8 in are shorter than 12 in; cut towards the trunk and stop at a cane that can be laid",
    vine: vine(
      [cordon("left A", 1, 2, 0, { length: inches(6) }), cordon("right B", 1, 2, 0, { length: inches(8) })],
      {
        liveTrunks: 1,
      },
    ),
    cordons: {
      "left A": ["goes", "Cut A on the left: at 6 in it is a remnant at the head, not a cordon."],
      "right B": ["goes", "Cut B on the right: at 8 in it is a remnant at the head, not a cordon."],
    },
    sides: [
      "Lay a cane on the left from trunk 1: a good cane of A, near the head.",
      "Lay a cane on the right from trunk 1: a good cane of B, near the head.",
    ],
    cuts: [
      "Cut A on the left from the outer end towards the trunk, and stop at the first good cane that can be laid.",
      "Cut B on the right from the outer end towards the trunk, and stop at the first good cane that can be laid.",
    ],
  },
  {
    name: "a vine on one trunk keeps both its cordons",
    why: "0.96 and 0.98, each far above a new cane; the second trunk is brought up from below",
    vine: vine([cordon("left A", 1, 8, 0), cordon("right B", 1, 9, 1)], { liveTrunks: 1 }),
    cordons: {
      "left A": [
        "stays",
        "Keep A on the left: it is the only one there and worth keeping, with 8 live spurs and a longest gap of 0.",
      ],
      "right B": [
        "stays",
        "Keep B on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
    notes: ["One live trunk is written down for this vine; bring up a second."],
  },
  {
    name: "every trunk hurt: the best is still kept, and new trunks are asked for",
    why: "A 0.96 - 0.10, B 0.96 - 0.20, both above a cane from the same trunks",
    vine: vine([
      cordon("left A", 1, 8, 0, { trunkCondition: "injured" }),
      cordon("right B", 2, 8, 0, { trunkCondition: "diseased" }),
    ]),
    cordons: {
      "left A": [
        "stays",
        "Keep A on the left: it is the only one there and worth keeping, with 8 live spurs and a longest gap of 0.",
      ],
      "right B": [
        "stays",
        "Keep B on the right: it is the only one there and worth keeping, with 8 live spurs and a longest gap of 0.",
      ],
    },
    notes: ["Every live trunk of this vine is hurt; bring up suckers for new ones."],
  },
  {
    name: "a vine dead to the ground",
    why: "Klodd, University of Minnesota: keep about five suckers and train one",
    vine: vine(
      [cordon("left A", 1, 0, 0, { condition: "dead" }), cordon("right B", 2, 0, 0, { condition: "dead" })],
      {
        liveTrunks: 0,
      },
    ),
    cordons: {
      "left A": ["goes", "Cut A on the left: it is dead."],
      "right B": ["goes", "Cut B on the right: it is dead."],
    },
    sides: [
      "Lay a cane on the left from a sucker at the ground.",
      "Lay a cane on the right from a sucker at the ground.",
    ],
    notes: ["No trunk of this vine is alive; keep about five suckers and train one."],
  },
  {
    name: "not worth keeping: lay a cane from the same trunk",
    why: "C 0.04 + 0 + 0.15 + 0.10 + 0.15 = 0.44, and 6 of 10 places are one dead stretch and 2 more are empty: at most 0.50 - 0.20 = 0.30 against 0.50 for a cane from trunk 2, both with 0.15 for two trunks",
    vine: vine([cordon("left A", 1, 8, 1), cordon("right C", 2, 2, 6, { condition: "injured" })]),
    cordons: {
      "left A": [
        "stays",
        "Keep A on the left: it is the only one there and worth keeping, with 8 live spurs and a longest gap of 1.",
      ],
      "right C": [
        "goes",
        "Cut C on the right and lay a cane from trunk 2: one stretch of 6 places is dead, and 2 live spurs are left where its wire should carry 10.",
      ],
    },
    sides: ["A stays on the left.", "Lay a cane on the right from trunk 2: a good cane of C, near the head."],
    cuts: [
      "Cut C on the right from the outer end towards the trunk, and stop at the first good cane that can be laid.",
    ],
  },
  {
    name: "worth about as much as a new cane",
    why: "4 of 10 places are one dead stretch, more than a third, and none is empty besides: C is worth 0.50, as a cane is",
    vine: vine([cordon("left A", 1, 8, 1), cordon("right C", 2, 6, 4)]),
    cordons: {
      "left A": [
        "stays",
        "Keep A on the left: it is the only one there and worth keeping, with 8 live spurs and a longest gap of 1.",
      ],
      "right C": [
        "ask",
        "Look at the vine: C on the right may be worth keeping, or a new cane may be better; one stretch of 4 places is dead, and 6 live spurs are left where its wire should carry 10.",
      ],
    },
    sides: ["A stays on the left.", "C on the right, if the person who looks agrees."],
    cuts: [],
  },
  {
    name: "a cane from the spare trunk replaces a weak cordon on the shared one",
    why: "B, with 4 of 10 places in one dead stretch and 2 more empty, at most 0.50 - 0.20 = 0.30 against 0.50 + 0.15 for a cane from the trunk that carries nothing",
    vine: vine([cordon("left A", 1, 8, 0), cordon("right B", 1, 4, 4)], { liveTrunks: 2 }),
    cordons: {
      "left A": [
        "stays",
        "Keep A on the left: it is the only one there and worth keeping, with 8 live spurs and a longest gap of 0.",
      ],
      "right B": [
        "goes",
        "Cut B on the right and lay a cane from the live trunk that carries no cordon: one stretch of 4 places is dead, and 4 live spurs are left where its wire should carry 10, and the new cane brings a trunk of its own.",
      ],
    },
  },
  {
    name: "a person's choice is kept and the rest decided around it",
    why: "B is fixed on trunk 1 although A 0.96 is better; then D 0.96 + 0.15 beats C 0.98 on trunk 1",
    vine: vine([
      cordon("left A", 2, 8, 0),
      cordon("left B", 1, 5, 3, { fixedChoice: "stays" }),
      cordon("right C", 1, 9, 1),
      cordon("right D", 2, 8, 1),
    ]),
    cordons: {
      "left A": ["goes", "Cut A on the left: a person has decided that B stays there."],
      "left B": ["stays", "Keep B on the left: a person has decided it."],
      "right C": [
        "goes",
        "Cut C on the right; D is better: it comes from trunk 2, so that both cordons do not hang on trunk 1. In favour of C: 9 live spurs against 8.",
      ],
      "right D": [
        "stays",
        "Keep D on the right: it comes from trunk 2, so that both cordons do not hang on trunk 1. In favour of C: 9 live spurs against 8.",
      ],
    },
  },
  {
    name: "a person's cut is kept too",
    why: "A is the better one but fixed to go; B 0.96 is what is left",
    vine: vine([
      cordon("left A", 1, 10, 0, { fixedChoice: "goes" }),
      cordon("left B", 1, 8, 1),
      cordon("right C", 2, 9, 1),
    ]),
    cordons: {
      "left A": ["goes", "Cut A on the left: a person has decided it."],
      "left B": [
        "stays",
        "Keep B on the left: it is the only one there and worth keeping, with 8 live spurs and a longest gap of 1.",
      ],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
  },
  {
    name: "a fixed cordon that is written down as dead is kept and questioned",
    why: "what a person fixed is never overruled, but the two entries do not fit",
    vine: vine([
      cordon("left A", 1, 8, 0, { condition: "dead", fixedChoice: "stays" }),
      cordon("right B", 2, 9, 1),
    ]),
    cordons: {
      "left A": [
        "stays",
        "Keep A on the left, as a person has decided; but it or its trunk is written down as dead, so look again.",
      ],
      "right B": [
        "stays",
        "Keep B on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
  },
  {
    name: "two cordons fixed on one side both stay",
    why: "a person may want two for a season",
    vine: vine([
      cordon("left A", 1, 8, 0, { fixedChoice: "stays" }),
      cordon("left B", 2, 8, 0, { fixedChoice: "stays" }),
      cordon("right C", 3, 9, 1),
    ]),
    cordons: {
      "left A": ["stays", "Keep A on the left: a person has decided it."],
      "left B": ["stays", "Keep B on the left: a person has decided it."],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
    notes: ["A, B on the left are all fixed to stay."],
  },
  {
    name: "a missing gap that could turn the decision",
    why: "A lies between 0.66 and 0.96 by its gap, B is 0.94",
    vine: vine([cordon("left A", 1, 8, undefined), cordon("left B", 1, 7, 1), cordon("right C", 2, 9, 1)]),
    cordons: {
      "left A": [
        "ask",
        "Look again: A and B on the left cannot be told apart before this is written down: longest gap of A.",
      ],
      "left B": [
        "ask",
        "Look again: B and A on the left cannot be told apart before this is written down: longest gap of A.",
      ],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
  },
  {
    name: "a missing diameter that cannot turn the decision",
    why: "A lies between 0.85 and 1.00, B is 0.80 + 0.10 - 0.075 = 0.825",
    vine: vine([
      cordon("left A", 1, 10, 0, { diameter: undefined }),
      cordon("left B", 1, 5, 2),
      cordon("right C", 2, 9, 1),
    ]),
    cordons: {
      "left A": ["stays", "Keep A on the left: 10 live spurs against 5; no gap against one of 2."],
      "left B": ["goes", "Cut B on the left; A is better: 10 live spurs against 5; no gap against one of 2."],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
  },
  {
    name: "what nobody counted is left out for all and named",
    why: "without diameters and conditions: 0.65 of the weight is left; A (0.16 + 0.30 + 0.15) / 0.65 = 0.94, B (0.10 + 0.225 + 0.15) / 0.65 = 0.73",
    vine: vine([
      cordon("left A", 1, 8, 0, { diameter: undefined, condition: undefined }),
      cordon("left B", 1, 5, 2, { diameter: undefined, condition: undefined }),
      cordon("right C", 2, 9, 1, { diameter: undefined, condition: undefined }),
    ]),
    cordons: {
      "left A": ["stays", "Keep A on the left: no gap against one of 2; 8 live spurs against 5."],
      "left B": ["goes", "Cut B on the left; A is better: no gap against one of 2; 8 live spurs against 5."],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
    notes: ["Not counted on this vine, so not weighed: condition, diameter."],
  },
  {
    name: "a trunk that was not written down",
    why: "A 0.96 could earn 0.15 for a trunk of its own or not, B 0.98 shares trunk 1 with C",
    vine: vine([cordon("left A", undefined, 8, 1), cordon("left B", 1, 9, 1), cordon("right C", 1, 9, 1)]),
    cordons: {
      "left A": [
        "ask",
        "Look again: A and B on the left cannot be told apart before this is written down: trunk of A.",
      ],
      "left B": [
        "ask",
        "Look again: B and A on the left cannot be told apart before this is written down: trunk of A.",
      ],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
  },
  {
    name: "of three, the two that are close are asked about and the third goes",
    why: "A 0.96, B 0.98, D at most 0.40: only D is out of reach",
    vine: vine([
      cordon("left A", 1, 8, 1),
      cordon("left B", 1, 9, 1),
      cordon("left D", 1, 4, 5),
      cordon("right C", 2, 9, 1),
    ]),
    cordons: {
      "left A": ["ask", "Look at the vine: A and B on the left are close. For B: 9 live spurs against 8."],
      "left B": ["ask", "Look at the vine: B and A on the left are close. For B: 9 live spurs against 8."],
      "left D": ["goes", "Cut D on the left; B is better: longest gap 1 against 5; 9 live spurs against 4."],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
  },
  {
    name: "a young vine is measured by its own length and not sent to a new cane",
    why: "a 20 in cordon of a young vine is still being built (UMN 2020: extend in stages)",
    vine: vine(
      [cordon("left A", 1, 2, 2, { length: inches(20) }), cordon("right B", 1, 1, 0, { length: inches(10) })],
      { status: "young", liveTrunks: 2 },
    ),
    cordons: {
      "left A": ["stays", "Keep A on the left: the vine is young and its cordon is still being built."],
      "right B": ["stays", "Keep B on the right: the vine is young and its cordon is still being built."],
    },
    notes: [
      "The vine is young: its cordons are measured by their own length only. What publications leave on it depends on its year planted, which is not written or more than four years back.",
      "Both cordons hang on trunk 1.",
    ],
  },
  {
    name: "a vine that is listed as missing",
    why: "the two sheets do not fit; nothing is decided",
    vine: vine([cordon("left A", 1, 8, 1)], { status: "missing" }),
    cordons: {
      "left A": ["ask", "Look at the place: the vine is listed as missing, but cordon A was counted on it."],
    },
    sides: [],
    notes: ["The vine is listed as missing, so nothing is decided."],
  },
  {
    name: "left beside north",
    why: "nobody can say which side lies across from which",
    vine: vine([cordon("left A", 1, 8, 1), cordon("north B", 2, 8, 1)]),
    cordons: {
      "left A": [
        "ask",
        "Write down the side of A again: the cordons of a vine lie left and right, or on two opposite compass sides.",
      ],
      "north B": [
        "ask",
        "Write down the side of B again: the cordons of a vine lie left and right, or on two opposite compass sides.",
      ],
    },
    sides: [],
  },
  {
    name: "two rows with one name",
    why: "the cut list could not say which of the two is meant",
    vine: vine([cordon("left A", 1, 8, 1), cordon("left A", 1, 3, 5), cordon("right C", 2, 9, 1)]),
    cordons: {
      "left A": ["ask", "Look at the sheet: two cordons on the left are both named A."],
      "right C": [
        "stays",
        "Keep C on the right: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
  },
  {
    name: "compass sides, and the same letter on both",
    why: "0.96 and 0.98 from two trunks",
    vine: vine([cordon("south A", 1, 8, 0), cordon("north A", 2, 9, 1)]),
    cordons: {
      "south A": [
        "stays",
        "Keep A on the south side: it is the only one there and worth keeping, with 8 live spurs and a longest gap of 0.",
      ],
      "north A": [
        "stays",
        "Keep A on the north side: it is the only one there and worth keeping, with 9 live spurs and a longest gap of 1.",
      ],
    },
    sides: ["A stays on the north side.", "A stays on the south side."],
  },
  {
    name: "vines trained to a single cordon",
    why: "one cordon wanted: A 0.96 on the left against B 0.98 - 0.075 on the right",
    vine: vine([cordon("left A", 1, 8, 0), cordon("right B", 1, 9, 2)]),
    rules: { sidesWanted: 1 },
    cordons: {
      "left A": [
        "stays",
        "Keep A on the left: no gap against one of 2. In favour of B: 9 live spurs against 8.",
      ],
      "right B": [
        "goes",
        "Cut B on the right; A is better: no gap against one of 2. In favour of B: 9 live spurs against 8.",
      ],
    },
    sides: ["A stays on the left."],
  },
  {
    name: "eight candidates on one side",
    why: "only H has all 10 spurs and no gap: 1.00; the others 0.80 + 0.02 x spurs - 0.075 x (gap - 1) reach 0.865 at most",
    vine: vine([
      ...["A", "B", "C", "D", "E", "F", "G"].map((letter, index) =>
        cordon(`left ${letter}`, 1, index + 1, 5 - Math.floor(index / 2)),
      ),
      cordon("left H", 1, 10, 0),
      cordon("right I", 2, 9, 1),
    ]),
    cordons: {
      "left H": ["stays", "Keep H on the left: no gap against one of 2; 10 live spurs against 7."],
      "left G": ["goes", "Cut G on the left; H is better: no gap against one of 2; 10 live spurs against 7."],
      "left A": ["goes", "Cut A on the left; H is better: no gap against one of 5; 10 live spurs against 1."],
    },
  },
];
