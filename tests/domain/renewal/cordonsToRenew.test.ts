import type { CandidateCordon } from "../../../src/domain/choice/candidateCordon";
import { caneToLay } from "../../../src/domain/renewal/caneToLay";
import {
  cordonExtension,
  cordonRenewal,
  renewalWork,
  type CordonRenewal,
} from "../../../src/domain/renewal/cordonRenewal";
import { dueTrunks } from "../../../src/domain/renewal/dueTrunks";
import { trunkRenewal } from "../../../src/domain/renewal/trunkRenewal";
import { metres, metresFromInches } from "../../../src/domain/units";

// By hand: a cordon is renewed from 0.4 of its places empty or half of its spurs badly placed on; a spur every 0.1 m,
// spurs brought down from 0.1 m above the cordon on. Whatever is not known is left out, never 0.
const TRIGGERS = {
  emptyShare: 0.4,
  badlyPlacedShare: 0.5,
  spurSpacing: metres(0.1),
  spurHeight: metres(0.1),
};
const renewalOf = (counts: Partial<CandidateCordon>, sideLength?: number) =>
  cordonRenewal(
    { side: "left", cordon: "A", ...counts },
    "highWire",
    TRIGGERS,
    sideLength === undefined ? undefined : metres(sideLength),
  );
const KEEP = { action: "keep", wanted: [], triggers: [] } as const;

describe("what a cordon that stays needs, whole", () => {
  test.each<{
    why: string;
    counts: Partial<CandidateCordon>;
    wire?: number;
    renewal: CordonRenewal;
  }>([
    { why: "nothing was counted", counts: {}, renewal: KEEP },
    {
      why: "places alone say nothing of empty ones",
      counts: { positions: 10 },
      renewal: KEEP,
    },
    { why: "nor do spurs alone", counts: { liveSpurs: 6 }, renewal: KEEP },
    {
      why: "a cordon without a place has no share",
      counts: { positions: 0, liveSpurs: 0 },
      renewal: KEEP,
    },
    {
      why: "6 of 10 places live: just 0.4 are empty",
      counts: { positions: 10, liveSpurs: 6, canesNearHead: 1 },
      renewal: {
        action: "replace",
        wanted: [],
        triggers: ["tooFewSpurs"],
        emptyShare: 0.4,
      },
    },
    {
      why: "11 of 18: 7 are empty, 0.389",
      counts: { positions: 18, liveSpurs: 11, canesNearHead: 1 },
      renewal: { ...KEEP, emptyShare: 7 / 18 },
    },
    {
      why: "more spurs than places: none is empty",
      counts: { positions: 8, liveSpurs: 9 },
      renewal: { ...KEEP, emptyShare: 0 },
    },
    {
      why: "a stretch of 4 of 10 places, of which nobody counted the spurs or where it begins",
      counts: { positions: 10, longestGap: 4 },
      renewal: {
        action: "replace",
        wanted: ["gapFrom", "canesNearHead"],
        triggers: ["deadArea"],
      },
    },
    {
      why: "a stretch of 4 of 11 places",
      counts: { positions: 11, longestGap: 4, canesNearHead: 0 },
      renewal: KEEP,
    },
    {
      why: "the places follow from the length: 1 m is 10 of them",
      counts: { length: metres(1), longestGap: 4, canesNearHead: 0 },
      renewal: {
        action: "replaceLater",
        wanted: ["gapFrom"],
        triggers: ["deadArea"],
      },
    },
    {
      why: "half of 8 spurs point up on a high wire: a cane from the head, wherever the stretch begins",
      counts: {
        positions: 10,
        liveSpurs: 8,
        spursUp: 4,
        longestGap: 2,
        gapFrom: 3,
        canesNearHead: 2,
      },
      renewal: {
        action: "replace",
        wanted: [],
        triggers: ["poorSpurs"],
        emptyShare: 0.2,
      },
    },
    {
      why: "a dead stretch beyond living wood, but spurs that point up as well: a cane laid over it mends only one",
      counts: {
        positions: 10,
        liveSpurs: 6,
        spursUp: 3,
        longestGap: 4,
        gapFrom: 3,
        canesNearHead: 2,
      },
      renewal: {
        action: "replace",
        wanted: [],
        triggers: ["tooFewSpurs", "deadArea", "poorSpurs"],
        emptyShare: 0.4,
      },
    },
    {
      why: "too few spurs all over, its longest stretch only 2: nothing to lay a cane over",
      counts: {
        positions: 10,
        liveSpurs: 5,
        longestGap: 2,
        gapFrom: 3,
        canesNearHead: 1,
      },
      renewal: {
        action: "replace",
        wanted: [],
        triggers: ["tooFewSpurs"],
        emptyShare: 0.5,
      },
    },
    {
      why: "3 of 8 spurs point up: 0.375",
      counts: { positions: 10, liveSpurs: 8, spursUp: 3 },
      renewal: { ...KEEP, emptyShare: 0.2 },
    },
    {
      why: "a dead stretch that begins at the head: a cane near the head, of which nobody wrote",
      counts: { positions: 10, liveSpurs: 6, longestGap: 4, gapFrom: 0 },
      renewal: {
        action: "replace",
        wanted: ["canesNearHead"],
        triggers: ["tooFewSpurs", "deadArea"],
        emptyShare: 0.4,
      },
    },
    {
      why: "a dead stretch beyond three living spurs",
      counts: { positions: 10, liveSpurs: 6, longestGap: 4, gapFrom: 3 },
      renewal: {
        action: "layOver",
        gap: { from: 3, places: 4 },
        wanted: [],
        triggers: ["tooFewSpurs", "deadArea"],
        emptyShare: 0.4,
      },
    },
    {
      why: "0.75 m on 0.95 m of wire: just room for two spurs more",
      counts: { length: metres(0.75) },
      wire: 0.95,
      renewal: {
        action: "extend",
        toExtend: metres(0.95 - 0.75),
        wanted: [],
        triggers: [],
      },
    },
    {
      why: "a cordon that is replaced is told of its bare wire too",
      counts: { length: metres(1), liveSpurs: 5, canesNearHead: 1 },
      wire: 1.5,
      renewal: {
        action: "replace",
        wanted: [],
        triggers: ["tooFewSpurs"],
        emptyShare: 0.5,
        toExtend: metres(0.5),
      },
    },
    {
      why: "spurs just 0.1 m above the cordon are brought down",
      counts: { spurHeight: metres(0.1) },
      renewal: { ...KEEP, spurHeight: metres(0.1) },
    },
    {
      why: "lower ones are left",
      counts: { spurHeight: metres(0.099) },
      renewal: KEEP,
    },
    {
      why: "on a cordon that is replaced, now or later, no spur is brought down",
      counts: {
        positions: 10,
        liveSpurs: 5,
        canesNearHead: 0,
        spurHeight: metres(0.2),
      },
      renewal: {
        action: "replaceLater",
        wanted: [],
        triggers: ["tooFewSpurs"],
        emptyShare: 0.5,
      },
    },
    {
      why: "three places between spurs are reached over from both sides: 4 + 3 = 7 of 10",
      counts: { positions: 10, liveSpurs: 7, longestGap: 3, gapFrom: 4 },
      renewal: { ...KEEP, gap: { from: 4, places: 3 }, emptyShare: 0.3 },
    },
    {
      why: "four places are too many to reach over",
      counts: { positions: 20, liveSpurs: 16, longestGap: 4, gapFrom: 4 },
      renewal: { ...KEEP, emptyShare: 0.2 },
    },
    {
      why: "a gap at nobody knows which place is reached over from nowhere",
      counts: { positions: 10, liveSpurs: 8, longestGap: 2 },
      renewal: { ...KEEP, emptyShare: 0.2 },
    },
    {
      why: "a place at which a gap of unknown length begins neither",
      counts: { positions: 10, liveSpurs: 8, gapFrom: 4 },
      renewal: { ...KEEP, emptyShare: 0.2 },
    },
    {
      why: "nor a gap on a cordon whose end nobody knows",
      counts: { longestGap: 2, gapFrom: 4 },
      renewal: KEEP,
    },
  ])("$why", ({ counts, wire, renewal }) => {
    expect(renewalOf(counts, wire)).toStrictEqual(renewal);
  });

  test.each([
    { length: 0.8, wire: 1, action: "extend" },
    { length: 0.81, wire: 1, action: "keep" },
    { length: 1.2, wire: 1, action: "keep" },
    { length: undefined, wire: 1, action: "keep" },
    { length: 0.8, wire: undefined, action: "keep" },
  ])("$length m on $wire m of wire with a spur every 0.1 m: $action", ({ length, wire, action }) => {
    const cordon = length === undefined ? {} : { length: metres(length) };
    const found = cordonExtension(cordon, TRIGGERS, wire === undefined ? undefined : metres(wire));
    expect(found).toStrictEqual(
      action === "extend" ? { action, toExtend: expect.closeTo(0.2, 9) } : { action },
    );
  });
});

test.each<{
  renewal: Parameters<typeof renewalWork>[0];
  work: readonly string[];
}>([
  { renewal: { action: "keep" }, work: [] },
  {
    renewal: { action: "keep", gap: { from: 3, places: 2 } },
    work: ["longerSpurs"],
  },
  {
    renewal: { action: "layOver", gap: { from: 3, places: 4 } },
    work: ["layOver"],
  },
  {
    renewal: {
      action: "extend",
      gap: { from: 3, places: 2 },
      spurHeight: metres(0.2),
    },
    work: ["extend", "longerSpurs", "lowerSpurs"],
  },
])("$renewal is the work $work", ({ renewal, work }) => {
  expect(renewalWork(renewal)).toEqual(work);
});

describe("the cane to look for", () => {
  test("Westover 2016: 5/16 to 1/2 in, for cordons the larger end, from 13/32 in on, halfway", () => {
    const { leastDiameter, mostDiameter } = caneToLay({ thickShare: 0.5 });
    expect(leastDiameter).toBeCloseTo(metresFromInches((5 / 16 + 1 / 2) / 2), 9);
    expect(mostDiameter).toBeCloseTo(metresFromInches(1 / 2), 9);
  });

  test.each([
    {
      why: "1.2 m of wire, 0.6 of a cane thick enough",
      wire: 1.2,
      share: 0.6,
      lengths: { length: 1.2, caneLength: 2 },
    },
    {
      why: "no part of a cane thick enough: no cane is long enough",
      wire: 1.2,
      share: 0,
      lengths: { length: 1.2 },
    },
    { why: "wire of unknown length", wire: undefined, share: 0.6, lengths: {} },
  ])("$why", ({ wire, share, lengths }) => {
    const sideLength = wire === undefined ? undefined : metres(wire);
    const {
      leastDiameter: _least,
      mostDiameter: _most,
      ...rest
    } = caneToLay({ sideLength, thickShare: share });
    expect(rest).toStrictEqual(lengths);
  });
});

describe("trunks by age", () => {
  const trunk = (number: number, trunkAge: number, rest: Partial<CandidateCordon> = {}): CandidateCordon => ({
    side: "left",
    cordon: "A",
    trunk: number,
    trunkAge,
    ...rest,
  });

  test("dead and hurt trunks are not among those due, and no new trunk counts for them", () => {
    // of four live trunks two are hurt and one is due: one younger stands where two are wanted
    const candidates = [
      trunk(1, 12),
      trunk(2, 12, { trunkCondition: "diseased" }),
      trunk(3, 12, { trunkCondition: "injured" }),
      trunk(4, 12, { trunkCondition: "dead" }),
    ];
    expect(dueTrunks({ candidates, liveTrunks: 4 }, 10, 2)).toEqual({
      due: [{ trunk: 1, age: 12 }],
      next: [],
      withoutYear: 0,
    });
  });

  test("next winter are due those that lack one year, and no younger ones", () => {
    const { due, next } = dueTrunks({ candidates: [trunk(1, 8), trunk(2, 9), trunk(3, 10)] }, 10, 2);
    expect([due.map((one) => one.trunk), next.map((one) => one.trunk)]).toEqual([[3], [2]]);
  });
});

test("a vine that is meant to have one trunk and has it needs none", () => {
  expect(trunkRenewal({ liveTrunks: 1, noted: [] }, 1)).toMatchObject({
    bringUp: 0,
    urgency: "none",
  });
  expect(trunkRenewal({ liveTrunks: 1, noted: [{ number: 1, condition: "injured" }] }, 1).urgency).toBe(
    "everyTrunkHurt",
  );
});

test("more trunks noted as hurt than live ones are written down: no more are replaced than live", () => {
  const noted = [
    { number: 1, condition: "injured" },
    { number: 2, condition: "diseased" },
  ] as const;
  expect(trunkRenewal({ liveTrunks: 1, noted }, 2)).toMatchObject({
    bringUp: 2,
    replace: [2],
  });
});
