import type { CandidateCordon, VineToDecide } from "../../../src/domain/choice/candidateCordon";
import { metresFromFeet } from "../../../src/domain/units";

/** A vine that was decided by hand, with its reason, before anything worked it out. */
export interface VineByHand {
  readonly name: string;
  /** The rule of the trade that decides it, with its source; common practice where none is named. */
  readonly reason: string;
  readonly vine: VineToDecide;
  /** Each cordon and what becomes of it. */
  readonly expected: string;
  /** Where a cane is laid: side and origin. */
  readonly lays?: string;
  /** How far each cordon is cut. */
  readonly cuts?: string;
}

const inches = (value: number) => metresFromFeet(value / 12);

/** Live spurs of so many places a spur every 4 inches, an inch thick, sound, its spurs pointing down. */
function on(
  place: string,
  trunk: number,
  spurs: number,
  places: number,
  gap: number | undefined,
  rest: Partial<CandidateCordon> = {},
): CandidateCordon {
  const [side, cordon] = place.split(" ");
  return {
    side,
    cordon,
    trunk,
    length: inches(4 * places),
    positions: places,
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

/** A bearing vine on a high wire, 40 inches of it a side. */
const of = (candidates: readonly CandidateCordon[], rest: Partial<VineToDecide> = {}): VineToDecide => ({
  candidates,
  training: "highWire",
  sideLength: inches(40),
  status: "bearing",
  ...rest,
});

const UP = (spurs: number) => ({ spursDown: 0, spursUp: spurs });
const UNCOUNTED = {
  length: undefined,
  positions: undefined,
  liveSpurs: undefined,
  spursDown: undefined,
  spursLevel: undefined,
  spursUp: undefined,
  diameter: undefined,
} as unknown as Partial<CandidateCordon>;

export const VINES_BY_HAND: readonly VineByHand[] = [
  {
    name: "alike but for the trunk",
    reason: "the two permanent cordons should not hang on one trunk",
    vine: of([on("left A", 1, 9, 10, 1), on("left B", 2, 9, 10, 1), on("right C", 2, 9, 10, 1)]),
    expected: "A stays, B goes, C stays",
    cuts: "B head",
  },
  {
    name: "own trunk against two spurs more",
    reason: "between two sound cordons the spur count decides little; the one from a trunk of its own wins",
    vine: of([on("left A", 1, 8, 10, 1), on("left B", 2, 10, 10, 0), on("right C", 2, 9, 10, 1)]),
    expected: "A stays, B goes, C stays",
  },
  {
    name: "own trunk, but half of it dead",
    reason:
      "a dead stretch counts for a cordon's whole life, a full sound cordon is not given up for it; trunk 1 is sound and keeps a renewal spur (Skinkis, Oregon State)",
    vine: of([on("left A", 1, 4, 10, 5), on("left B", 2, 9, 10, 1), on("right C", 2, 9, 10, 1)]),
    expected: "A goes, B stays, C stays",
    cuts: "A spur",
  },
  {
    name: "4 of 9 spurs and 16 inches dead",
    reason:
      "dead area and too few spurs (Skinkis): more than half is empty, a new cane from its trunk is better",
    vine: of([on("left A", 1, 9, 10, 1), on("right B", 2, 4, 9, 4)]),
    expected: "A stays, B goes",
    lays: "right 2",
    cuts: "B cane",
  },
  {
    name: "a third of it dead and the rest full",
    reason:
      "12 inches of 36 are dead, exactly the farm's share for renewal, the other places all bear: somebody must look",
    vine: of([on("left A", 1, 9, 10, 1), on("right B", 2, 6, 9, 3)]),
    expected: "A stays, B ask",
  },
  {
    name: "thin all over but no dead stretch",
    reason:
      "6 of 10 with single empty places bears on with longer spurs (Klodd, Minnesota 2022: change buds a spur)",
    vine: of([on("left A", 1, 9, 10, 1), on("right B", 2, 6, 10, 1)]),
    expected: "A stays, B stays",
  },
  {
    name: "a dead trunk",
    reason:
      "what stands on a dead trunk is gone whatever was counted; the trunk comes out with its last cordon",
    vine: of([
      on("left A", 1, 8, 10, 1, { trunkCondition: "dead" }),
      on("left B", 2, 7, 10, 2),
      on("right C", 2, 9, 10, 1),
    ]),
    expected: "A goes, B stays, C stays",
    cuts: "A trunk",
  },
  {
    name: "a hurt trunk against two spurs",
    reason: "a sound trunk is worth more than two spurs; neither hangs on the trunk across",
    vine: of([
      on("left A", 1, 10, 10, 0, { trunkCondition: "injured" }),
      on("left B", 3, 8, 10, 1),
      on("right C", 2, 9, 10, 1),
    ]),
    expected: "A goes, B stays, C stays",
  },
  {
    name: "a diseased cordon beside a sound one",
    reason:
      "cankers spread towards the trunk (Torres, UCCE): diseased wood goes where sound wood can take its place",
    vine: of([
      on("left A", 1, 9, 10, 1, { condition: "diseased" }),
      on("left B", 1, 8, 10, 1),
      on("right C", 2, 9, 10, 1),
    ]),
    expected: "A goes, B stays, C stays",
  },
  {
    name: "a stub on one side",
    reason:
      "8 inches are a remnant at the head; a cane from trunk 2 fills the side, found on the stub itself",
    vine: of([on("left A", 1, 9, 10, 1), on("right B", 2, 2, 2, 0)]),
    expected: "A stays, B goes",
    lays: "right 2",
    cuts: "B cane",
  },
  {
    name: "spurs that point up on a high wire",
    reason: "on a high wire spurs that point down or sideways are better placed; one spur decides little",
    vine: of([on("left A", 1, 9, 10, 1, UP(9)), on("left B", 1, 8, 10, 1), on("right C", 2, 9, 10, 1)]),
    expected: "A goes, B stays, C stays",
  },
  {
    name: "spurs that point down under catch wires",
    reason: "spurs on top of the cordon for upright shoots (New Zealand cordon training, handbook 2.3)",
    vine: of(
      [on("left A", 1, 9, 10, 1), on("left B", 1, 8, 10, 1, UP(8)), on("right C", 2, 9, 10, 1, UP(9))],
      { training: "upright" },
    ),
    expected: "A goes, B stays, C stays",
  },
  {
    name: "a short full cordon against one that fills its wire",
    reason: "20 inches of 40 leave half the wire bare, however full they are",
    vine: of([on("left A", 1, 5, 5, 0), on("left B", 1, 9, 10, 1), on("right C", 2, 9, 10, 1)]),
    expected: "A goes, B stays, C stays",
  },
  {
    name: "longer than its wire",
    reason:
      "56 inches on 40 reach into the neighbour: a hand's width belongs between the ends (Westover 2016); and it is thinly set, with a gap",
    vine: of([on("left A", 1, 10, 14, 2), on("left B", 1, 9, 10, 1), on("right C", 2, 9, 10, 1)]),
    expected: "A goes, B stays, C stays",
  },
  {
    name: "nothing tells them apart",
    reason: "same trunk, same counts: only somebody at the vine can see more",
    vine: of([on("left A", 1, 9, 10, 1), on("left B", 1, 9, 10, 1), on("right C", 2, 9, 10, 1)]),
    expected: "A ask, B ask, C stays",
  },
  {
    name: "crossed and alike",
    reason: "A with D or B with C are two trunks either way, and all four are alike",
    vine: of([
      on("left A", 1, 9, 10, 1),
      on("left B", 2, 9, 10, 1),
      on("right C", 1, 9, 10, 1),
      on("right D", 2, 9, 10, 1),
    ]),
    expected: "A ask, B ask, C ask, D ask",
  },
  {
    name: "crossed, and one pair plainly better",
    reason: "A and D are full and from two trunks, B and C have gaps of three",
    vine: of([
      on("left A", 1, 9, 10, 1),
      on("left B", 2, 6, 10, 3),
      on("right C", 1, 6, 10, 3),
      on("right D", 2, 9, 10, 1),
    ]),
    expected: "A stays, B goes, C goes, D stays",
  },
  {
    name: "crossed, one spur apart",
    reason:
      "10 and 9 against 8 and 10 on the other pair: one spur decides little, and both pairs are on two trunks",
    vine: of([
      on("left A", 1, 10, 10, 0),
      on("left B", 2, 8, 10, 1),
      on("right C", 1, 10, 10, 0),
      on("right D", 2, 9, 10, 1),
    ]),
    expected: "A ask, B ask, C ask, D ask",
  },
  {
    name: "a young vine",
    reason:
      "cordons of 16 and 20 inches are still being extended in stages (Klodd, Thull and Clark, Minnesota 2020)",
    vine: of([on("left A", 1, 4, 5, 1), on("right B", 1, 3, 4, 1)], { status: "young" }),
    expected: "A stays, B stays",
  },
  {
    name: "both trunks hurt",
    reason: "a hurt vine still bears on what it has; new trunks come up from suckers",
    vine: of([
      on("left A", 1, 8, 10, 1, { trunkCondition: "injured" }),
      on("right B", 2, 8, 10, 1, { trunkCondition: "injured" }),
    ]),
    expected: "A stays, B stays",
  },
  {
    name: "dead to the ground",
    reason: "keep about five suckers, train one (Klodd, Minnesota): both sides come from the ground",
    vine: of([
      on("left A", 1, 0, 10, 10, { condition: "dead", trunkCondition: "dead" }),
      on("right B", 2, 0, 10, 10, { condition: "dead", trunkCondition: "dead" }),
    ]),
    expected: "A goes, B goes",
    lays: "left ground, right ground",
  },
  {
    name: "a person has decided",
    reason: "what a person fixed at the vine is not overruled by counts",
    vine: of([
      on("left A", 1, 9, 10, 1),
      on("left B", 1, 6, 10, 2, { fixedChoice: "stays" }),
      on("right C", 2, 9, 10, 1),
    ]),
    expected: "A goes, B stays, C stays",
  },
  {
    name: "a gap that nobody wrote down",
    reason: "A's two empty places may lie apart or beside each other, and that is all that could differ",
    vine: of([on("left A", 1, 8, 10, undefined), on("left B", 1, 8, 10, 1), on("right C", 2, 9, 10, 1)]),
    expected: "A ask, B ask, C stays",
  },
  {
    name: "nothing counted but trunks",
    reason: "by the trunk alone nothing is decided: count again",
    vine: of([
      on("left A", 1, 0, 10, undefined, UNCOUNTED),
      on("left B", 2, 0, 10, undefined, UNCOUNTED),
      on("right C", 2, 0, 10, undefined, UNCOUNTED),
    ]),
    expected: "A ask, B ask, C ask",
  },
  {
    name: "one side bare, a second trunk without a cordon",
    reason: "in cold climates a vine keeps two trunks, each serving half the space (Zabadal, MSU E-2774)",
    vine: of([on("left A", 1, 9, 10, 1)], { liveTrunks: 2 }),
    expected: "A stays",
    lays: "right otherTrunk",
  },
];
