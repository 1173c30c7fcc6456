import fc from "fast-check";
import { isYoung, type CandidateCordon, type VineToDecide } from "../../../src/domain/choice/candidateCordon";
import { chooseCordons } from "../../../src/domain/choice/chooseCordons";
import { metres } from "../../../src/domain/units";
import { trunksOf } from "../../../src/domain/choice/trunksOf";
import { anyCandidate, fullCandidate, vineOf } from "../choice/counts";
import { planned, RULES } from "../choice/standardRules";

/** A sound cordon of 40 in with so many of 10 places bearing a spur. */
function cordon(
  place: string,
  trunk: number | undefined,
  spurs: number,
  rest: Partial<CandidateCordon> = {},
): CandidateCordon {
  const [side, letter] = place.split(" ");
  return {
    side,
    cordon: letter,
    ...(trunk === undefined ? {} : { trunk }),
    length: 1.016 as NonNullable<CandidateCordon["length"]>,
    positions: 10,
    liveSpurs: spurs,
    longestGap: Math.min(1, 10 - spurs),
    condition: "sound",
    ...rest,
  };
}

const planOf = (candidates: readonly CandidateCordon[], rest: Partial<VineToDecide> = {}) => {
  const vine: VineToDecide = { candidates, training: "highWire", status: "bearing", ...rest };
  return planned(vine, chooseCordons(vine, RULES));
};

const cutsOf = (plan: ReturnType<typeof planOf>) =>
  plan.cuts.map(({ side, cordon: letter, backTo }) => `${side} ${letter} ${backTo}`);

describe("plans worked by hand, common practice", () => {
  test("the only cordon of the trunk that gives the cane is cut only as far as the cane, on whichever side it is", () => {
    // A stays on trunk 1; B, a person's own choice, goes; the cane for the right comes from trunk 2, whose only cordon is B.
    const plan = planOf([
      cordon("left A", 1, 9),
      cordon("left B", 2, 9, { fixedChoice: "goes" }),
      cordon("right C", 1, 9, { condition: "dead" }),
    ]);
    expect(plan.canes).toEqual([
      { side: "right", from: 2, source: { side: "left", cordon: "B" }, ask: false },
    ]);
    expect(cutsOf(plan)).toEqual(["right C head", "left B cane"]);
  });

  test("a dead cordon is not searched for a cane; the living one of its trunk is", () => {
    const plan = planOf([
      cordon("left A", 1, 9),
      cordon("right C", 2, 9, { condition: "dead", trunkCondition: "sound" }),
      cordon("right D", 2, 2, { longestGap: 8 }),
    ]);
    expect(plan.canes).toEqual([
      { side: "right", from: 2, source: { side: "right", cordon: "D" }, ask: false },
    ]);
    expect(cutsOf(plan)).toEqual(["right C head", "right D cane"]);
  });

  test("a sound trunk comes before a hurt one, though the hurt one would be a second trunk", () => {
    const plan = planOf([
      cordon("left A", 1, 9, { trunkCondition: "sound" }),
      cordon("left B", 2, 4, { trunkCondition: "injured", fixedChoice: "goes" }),
    ]);
    expect(plan.canes.map(({ from, source }) => [from, source?.cordon])).toEqual([[1, "A"]]);
    expect(cutsOf(plan)).toEqual(["left B spur"]);
  });

  test("a sound trunk that loses both its cordons keeps one renewal spur, a diseased one none", () => {
    const vine = (condition: "sound" | "diseased") =>
      planOf([
        cordon("left A", 1, 10),
        cordon("left B", 2, 3, { trunkCondition: condition, fixedChoice: "goes" }),
        cordon("right C", 3, 10),
        cordon("right D", 2, 3, { fixedChoice: "goes" }),
      ]);
    expect(cutsOf(vine("sound"))).toEqual(["left B head", "right D spur"]);
    expect(cutsOf(vine("diseased"))).toEqual(["left B head", "right D head"]);
  });

  test("a dead trunk comes out once, with the last of its cordons, and not from under one that a person keeps", () => {
    const vine = (fixedChoice?: "stays") =>
      planOf([
        cordon("left A", 1, 9, { trunkCondition: "dead", ...(fixedChoice ? { fixedChoice } : {}) }),
        cordon("right B", 1, 9),
        cordon("left C", 2, 9),
        cordon("right D", 2, 9),
      ]);
    expect(cutsOf(vine())).toEqual(["left A head", "right B trunk"]);
    expect(cutsOf(vine("stays"))).toEqual(["right B head", "left C head"]);
  });

  test("a cordon that stays and is to be renewed keeps the living wood beside it", () => {
    // A has 4 of 10 places empty, 0.4, above a third: it is to be renewed; B beside it is living and goes.
    const plan = planOf([
      cordon("left A", 1, 6, { longestGap: 4, fixedChoice: "stays" }),
      cordon("left B", 2, 5),
      cordon("right C", 2, 9),
    ]);
    expect(plan.keeps.find(({ cordon: letter }) => letter === "A")?.renewal.action).toBe("replace");
    expect(plan.cuts).toEqual([{ side: "left", cordon: "B", trunk: 2, backTo: "cane", renews: ["A"] }]);
  });
});

describe("where the gap lies and what grows near the head, common practice", () => {
  const renewalOf = (plan: ReturnType<typeof planOf>, letter: string) =>
    plan.keeps.find(({ cordon: kept }) => kept === letter)?.renewal;

  test("a dead stretch beyond living spurs is laid over from the last of them, and nothing else is kept for it", () => {
    // A: places 1 to 3 live, 4 to 7 dead, 8 to 10 live. The cane comes from the spur on place 3; B may go to the head.
    const plan = planOf([
      cordon("left A", 1, 6, { longestGap: 4, gapFrom: 3, fixedChoice: "stays" }),
      cordon("left B", 2, 5),
      cordon("right C", 2, 9),
    ]);
    expect(renewalOf(plan, "A")).toMatchObject({
      action: "layOver",
      gap: { from: 3, places: 4 },
      wanted: [],
    });
    expect(cutsOf(plan)).toEqual(["left B head"]);
  });

  test("a dead stretch that begins at the head leaves nothing to lay from: the cordon is replaced", () => {
    const plan = planOf([
      cordon("left A", 1, 6, { longestGap: 4, gapFrom: 0, fixedChoice: "stays" }),
      cordon("left B", 2, 5),
      cordon("right C", 2, 9),
    ]);
    expect(renewalOf(plan, "A")).toMatchObject({ action: "replace", wanted: ["canesNearHead"] });
    expect(cutsOf(plan)).toEqual(["left B cane"]);
  });

  test("a cane near the cordon's own head renews it, so that the wood beside it may go", () => {
    const vine = (canesNearHead: number) =>
      planOf([
        cordon("left A", 1, 6, { longestGap: 4, gapFrom: 0, canesNearHead, fixedChoice: "stays" }),
        cordon("left B", 2, 5),
        cordon("right C", 2, 9),
      ]);
    expect(renewalOf(vine(1), "A")).toMatchObject({ action: "replace", wanted: [] });
    expect(cutsOf(vine(1))).toEqual(["left B head"]);
    expect(renewalOf(vine(0), "A")).toMatchObject({ action: "replaceLater", wanted: [] });
    expect(cutsOf(vine(0))).toEqual(["left B cane"]);
  });

  test("the cane is taken from the trunk on which one was counted", () => {
    const plan = planOf([
      cordon("left A", 1, 9, { canesNearHead: 0 }),
      cordon("left B", 2, 9, { fixedChoice: "goes", canesNearHead: 2 }),
      cordon("right C", 1, 9, { condition: "dead" }),
    ]);
    expect(plan.canes).toEqual([
      { side: "right", from: 2, source: { side: "left", cordon: "B" }, ask: false },
    ]);
  });

  test("where no cane was counted anywhere, none is ordered: the source keeps a renewal spur for the next winter", () => {
    const plan = planOf([
      cordon("left A", 1, 9, { canesNearHead: 0 }),
      cordon("right C", 1, 9, { fixedChoice: "goes", canesNearHead: 0 }),
    ]);
    expect(plan.canes).toEqual([
      { side: "right", from: 1, source: { side: "right", cordon: "C" }, later: true, ask: false },
    ]);
    expect(cutsOf(plan)).toEqual(["right C spur"]);
  });

  test("a cordon that is worth less than a cane stays while no cane could be laid", () => {
    // C has 3 of 10 spurs: with a cane near the head it goes, without one it is all that bears on its side.
    const vine = (canesNearHead: number) =>
      planOf([
        cordon("left A", 1, 10, { canesNearHead }),
        cordon("right C", 1, 3, { longestGap: 7, canesNearHead }),
      ]);
    expect(cutsOf(vine(1))).toEqual(["right C cane"]);
    expect(cutsOf(vine(0))).toEqual([]);
    expect(renewalOf(vine(0), "C")?.action).toBe("replaceLater");
  });

  test.each([
    { why: "two places between two spurs", longestGap: 2, gapFrom: 4, bridged: true },
    { why: "one place is a missing spur, not a stretch", longestGap: 1, gapFrom: 4, bridged: false },
    { why: "at the head only one spur stands beside it", longestGap: 2, gapFrom: 0, bridged: false },
    {
      why: "at the end only one spur stands beside it: 8 and 2 are 10",
      longestGap: 2,
      gapFrom: 8,
      bridged: false,
    },
  ])(
    "spurs on both sides are left longer across $longestGap places after $gapFrom: $why",
    ({ bridged, why, ...gap }) => {
      const plan = planOf([cordon("left A", 1, 8, gap), cordon("right B", 2, 9)]);
      expect({ why, gap: renewalOf(plan, "A")?.gap }).toEqual({
        why,
        gap: bridged ? { from: 4, places: 2 } : undefined,
      });
    },
  );

  test("spurs that have crept up by the figure of Settings, 4 in, are brought down; lower ones are left", () => {
    // 4 in are 0.1016 m
    const vine = (spurHeight: number) => planOf([cordon("left A", 1, 9, { spurHeight: metres(spurHeight) })]);
    expect(renewalOf(vine(0.1016), "A")).toMatchObject({ action: "keep", spurHeight: 0.1016 });
    expect(renewalOf(vine(0.1), "A")?.spurHeight).toBeUndefined();
  });
});

test("a person asked between a cordon and a cane finds the wood of that cane, though its cordon goes elsewhere", () => {
  // C has a dead stretch of 4 of its 10 places and no other empty one: worth a cane, 0.50, so a person is asked. The only
  // other wood of trunk 2 is B, which goes on the left.
  const plan = planOf([
    cordon("left A", 1, 10),
    cordon("left B", 2, 9, { fixedChoice: "goes" }),
    cordon("right C", 3, 6, { longestGap: 4 }),
    cordon("right D", 2, 1, { condition: "dead" }),
  ]);
  expect(plan.keeps.find(({ cordon: letter }) => letter === "C")?.orCane).toEqual({
    from: 2,
    source: { side: "left", cordon: "B" },
  });
  expect(cutsOf(plan)).toEqual(["right D head", "left B cane"]);
});

const sights = {
  gapFrom: fc.integer({ min: 0, max: 10 }),
  canesNearHead: fc.integer({ min: 0, max: 2 }),
  spurHeight: fc.double({ min: 0, max: 0.3, noNaN: true }).map(metres),
  trunkAge: fc.integer({ min: 0, max: 15 }),
};
/** What a counter may have seen besides; where a gap begins more often than not, so that enough are laid over. */
const seen = fc.oneof(
  fc.record(sights, { requiredKeys: [] }),
  fc.record(sights, { requiredKeys: ["gapFrom"] }),
);

describe("on 10,000 random vines", () => {
  test("every plan can be carried out", () => {
    let vines = 0;
    let canes = 0;
    let spurs = 0;
    let renewed = 0;
    let laterCanes = 0;
    let laidOver = 0;
    let alternatives = 0;
    let alternativesCut = 0;
    let due = 0;
    let young = 0;
    let grown = 0;
    fc.assert(
      fc.property(
        fc.oneof(vineOf(fullCandidate, 3), vineOf(anyCandidate, 3)),
        fc.array(seen, { minLength: 6, maxLength: 6 }),
        fc.oneof(
          { weight: 5, arbitrary: fc.constant({ status: "bearing" as const }) },
          { weight: 1, arbitrary: fc.constant({}) },
          {
            weight: 1,
            arbitrary: fc.record({
              yearOfGrowth: fc.constantFrom(1 as const, 2 as const, 3 as const, 4 as const),
            }),
          },
        ),
        (drawn, more, age) => {
          vines++;
          const candidates = drawn.candidates.map((one, at) => ({ ...one, ...more[at] }));
          const vine: VineToDecide = { ...drawn, candidates, ...age };
          const { yearOfGrowth } = vine;
          const decision = chooseCordons(vine, RULES);
          const plan = planned(vine, decision);
          const trunks = trunksOf(vine);
          const trunkOf = (one: CandidateCordon) => trunks.find(({ number }) => number === one.trunk);
          const named = (side: string, letter: string) =>
            vine.candidates.find((one) => one.side === side && one.cordon === letter)!;
          const isDead = (one: CandidateCordon) =>
            one.condition === "dead" || one.trunkCondition === "dead" || trunkOf(one)?.condition === "dead";
          const cutOf = (side: string, letter: string) =>
            plan.cuts.find((cut) => cut.side === side && cut.cordon === letter);

          for (const { from, source, later } of plan.canes) {
            canes++;
            if (later) laterCanes++;
            const bearing = vine.candidates.filter(
              (one) =>
                !isDead(one) && (typeof from === "number" ? one.trunk === from : one.trunk === undefined),
            );
            if (from !== "ground" && bearing.length > 0) expect(source).toBeDefined();
            if (typeof from === "number")
              expect(trunks.find(({ number }) => number === from)?.live).toBe(true);
            if (!source) continue;
            const wood = named(source.side, source.cordon);
            expect(isDead(wood)).toBe(false);
            if (typeof from === "number") expect(wood.trunk).toBe(from);
            expect(wood.canesNearHead === 0).toBe(later === true);
            const cut = cutOf(source.side, source.cordon);
            if (!cut) continue;
            if (later) expect(["cane", "spur"]).toContain(cut.backTo);
            else expect(cut.backTo).toBe("cane");
          }
          for (const { ask, orCane } of plan.keeps) {
            if (!orCane) continue;
            alternatives++;
            expect(ask).toBe(true);
            const bearing = vine.candidates.filter(
              (one) =>
                !isDead(one) &&
                (typeof orCane.from === "number" ? one.trunk === orCane.from : one.trunk === undefined),
            );
            if (orCane.from !== "ground" && bearing.length > 0) expect(orCane.source).toBeDefined();
            if (!orCane.source) continue;
            expect(isDead(named(orCane.source.side, orCane.source.cordon))).toBe(false);
            const cut = cutOf(orCane.source.side, orCane.source.cordon);
            if (cut) {
              alternativesCut++;
              expect(["cane", ...(orCane.later ? ["spur"] : [])]).toContain(cut.backTo);
            }
          }
          for (const cut of plan.cuts) {
            const wood = named(cut.side, cut.cordon);
            if (cut.backTo === "cane" || cut.backTo === "spur") expect(isDead(wood)).toBe(false);
            if (cut.backTo === "cane") expect(wood.canesNearHead).not.toBe(0);
            if (cut.backTo === "trunk") {
              expect(trunkOf(wood)?.condition).toBe("dead");
              const staying = plan.keeps.filter((keep) => keep.trunk === wood.trunk);
              expect(staying).toEqual([]);
            }
          }
          for (const { number, condition, live } of trunks) {
            const own = vine.candidates.filter((one) => one.trunk === number);
            const verdicts = decision.cordons.filter((_, at) => vine.candidates[at].trunk === number);
            if (!live || condition === "diseased" || verdicts.some(({ verdict }) => verdict !== "goes"))
              continue;
            if (own.every(isDead)) continue;
            spurs++;
            const left = own.map((one) => cutOf(one.side, one.cordon)?.backTo);
            expect(left.some((backTo) => backTo === "spur" || backTo === "cane")).toBe(true);
          }
          if (!isYoung(vine)) grown++;
          expect(plan.young?.year).toBe(yearOfGrowth);
          if (yearOfGrowth) {
            young++;
            for (const keep of plan.keeps) expect(["extend", "keep"]).toContain(keep.renewal.action);
            expect(plan.cuts.flatMap(({ renews }) => renews)).toEqual([]);
          }
          const old = trunks.filter(
            ({ live, condition, age }) =>
              live && condition !== "injured" && condition !== "diseased" && age !== undefined && age >= 10,
          );
          due += old.length;
          expect((plan.dueTrunks ?? []).map(({ trunk }) => trunk).sort()).toEqual(
            old.map(({ number }) => number).sort(),
          );
          for (const keep of plan.keeps) {
            if (keep.renewal.action === "layOver") {
              laidOver++;
              expect(keep.renewal.gap!.from).toBeGreaterThan(0);
            }
            if (keep.ask || !keep.renewal.action.startsWith("replace")) continue;
            if (named(keep.side, keep.cordon).canesNearHead! > 0) continue;
            const beside = plan.cuts.filter(
              (cut) =>
                cut.side === keep.side &&
                !isDead(named(cut.side, cut.cordon)) &&
                named(cut.side, cut.cordon).canesNearHead !== 0,
            );
            if (beside.length === 0) continue;
            renewed++;
            expect(plan.cuts.some((cut) => cut.backTo === "cane" && cut.renews.includes(keep.cordon))).toBe(
              true,
            );
          }
        },
      ),
      { numRuns: 10_000 },
    );
    for (const [what, times, of, least] of [
      ["canes", canes, vines, 0.1],
      ["spurs", spurs, vines, 0.01],
      ["renewed", renewed, grown, 0.01],
      ["laterCanes", laterCanes, vines, 0.01],
      ["laidOver", laidOver, grown, 0.01],
      ["alternatives", alternatives, vines, 0.01],
      ["alternativesCut", alternativesCut, vines, 0.001],
      ["due", due, vines, 0.1],
      ["young", young, vines, 0.1],
    ] as const)
      expect({ what, share: times / of, enough: times / of > least }).toMatchObject({ what, enough: true });
  });
});
