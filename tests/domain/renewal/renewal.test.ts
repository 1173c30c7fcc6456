import fc from "fast-check";
import { cordonRenewal } from "../../../src/domain/renewal/cordonRenewal";
import { caneToLay } from "../../../src/domain/renewal/caneToLay";
import { renewalForecast } from "../../../src/domain/renewal/renewalForecast";
import { dueTrunks } from "../../../src/domain/renewal/dueTrunks";
import { trunkRenewal, type VineTrunks } from "../../../src/domain/renewal/trunkRenewal";
import { metres } from "../../../src/domain/units";
// eslint-disable-next-line @typescript-eslint/no-require-imports
const { jStat } = require("jstat") as {
  jStat: { binomial: { pdf(k: number, n: number, p: number): number } };
};

describe("trunks to renew", () => {
  const trunks = (liveTrunks: number, ...noted: VineTrunks["noted"]): VineTrunks => ({ liveTrunks, noted });
  const cases = [
    { why: "two sound trunks are what is wanted", vine: trunks(2), bringUp: 0, urgency: "none" },
    {
      why: "common practice: a vine in a cold climate keeps at least two trunks",
      vine: trunks(1),
      bringUp: 1,
      urgency: "oneTrunk",
    },
    { why: "dead to the ground", vine: trunks(0), bringUp: 2, urgency: "noTrunk" },
    {
      why: "the last trunk is hurt: it does not count as one of the two",
      vine: trunks(1, { number: 1, condition: "injured" }),
      bringUp: 2,
      urgency: "lastTrunkHurt",
      replace: [1],
    },
    {
      why: "both hurt, the diseased one is replaced first",
      vine: trunks(2, { number: 1, condition: "injured" }, { number: 2, condition: "diseased" }),
      bringUp: 2,
      urgency: "everyTrunkHurt",
      replace: [2, 1],
    },
    {
      why: "one of two hurt",
      vine: trunks(2, { number: 1, condition: "sound" }, { number: 2, condition: "injured" }),
      bringUp: 1,
      urgency: "hurtTrunk",
      replace: [2],
    },
    {
      why: "a third sound trunk makes up for the hurt one",
      vine: trunks(3, { number: 2, condition: "injured" }),
      bringUp: 0,
      urgency: "none",
      replace: [],
    },
    {
      why: "Zabadal, MSU E-2774: up to four trunks for very tender cultivars; three of four stand",
      vine: trunks(3),
      wanted: 4,
      bringUp: 1,
      urgency: "belowWanted",
    },
    {
      why: "a dead trunk is taken out even when enough others live",
      vine: trunks(2, { number: 3, condition: "dead" }),
      bringUp: 0,
      urgency: "none",
      takeOut: [3],
    },
  ] as const;
  test.each(cases)("$why", (row) => {
    const renewal = trunkRenewal(row.vine, "wanted" in row ? row.wanted : 2);
    expect(renewal).toEqual({
      bringUp: row.bringUp,
      urgency: row.urgency,
      replace: "replace" in row ? row.replace : [],
      takeOut: "takeOut" in row ? row.takeOut : [],
    });
  });

  test.each([
    {
      why: "two trunks wanted, the old one does not count: one is brought up in its place",
      vine: {
        liveTrunks: 2,
        candidates: [
          { trunk: 1, trunkAge: 11 },
          { trunk: 2, trunkAge: 4 },
        ],
      },
      due: [{ trunk: 1, age: 11 }],
      bringUp: 1,
      urgency: "trunkDue",
    },
    {
      why: "the younger of two trunks is 9 years old: due next winter only, and by no other reason",
      vine: {
        liveTrunks: 2,
        candidates: [
          { trunk: 1, trunkAge: 9 },
          { trunk: 2, trunkAge: 4 },
        ],
      },
      due: undefined,
      bringUp: 0,
      urgency: "none",
    },
    {
      why: "of three trunks two are younger, as many as wanted: the renewal of the old one stands",
      vine: { liveTrunks: 3, candidates: [{ trunk: 1, trunkAge: 12 }] },
      due: [{ trunk: 1, age: 12, renewalStands: true }],
      bringUp: 0,
      urgency: "trunkDue",
    },
    {
      why: "three trunks, two old: one younger stands, so one more is brought up, and the oldest may go first",
      vine: {
        liveTrunks: 3,
        candidates: [
          { trunk: 1, trunkAge: 10 },
          { trunk: 2, trunkAge: 14 },
        ],
      },
      due: [
        { trunk: 2, age: 14, renewalStands: true },
        { trunk: 1, age: 10 },
      ],
      bringUp: 1,
      urgency: "trunkDue",
    },
    {
      why: "a hurt trunk is replaced because it is hurt, not because it is old: 2 - (2 - 1) = 1",
      vine: {
        liveTrunks: 2,
        candidates: [{ trunk: 1, trunkAge: 20, trunkCondition: "injured" }, { trunk: 2 }],
      },
      due: undefined,
      bringUp: 1,
      urgency: "hurtTrunk",
    },
  ] as const)("$why", ({ vine, due, bringUp, urgency }) => {
    const candidates = vine.candidates.map((one, at) => ({ side: "left", cordon: "ABC"[at], ...one }));
    const byAge = dueTrunks({ ...vine, candidates }, 10, 2);
    expect(byAge.due).toEqual(due ?? []);
    const noted = candidates.flatMap((one) =>
      "trunkCondition" in one ? [{ number: one.trunk, condition: one.trunkCondition }] : [],
    );
    const renewal = trunkRenewal({ liveTrunks: vine.liveTrunks, noted, due: byAge.due }, 2);
    expect([renewal.due, renewal.bringUp, renewal.urgency]).toEqual([due, bringUp, urgency]);
  });

  test("two rows that give one trunk different years: the older holds, so that it is not renewed too late", () => {
    const row = { side: "left", cordon: "A", trunk: 1 };
    const vine = {
      candidates: [
        { ...row, trunkAge: 8 },
        { ...row, side: "right", trunkAge: 10 },
      ],
    };
    expect(dueTrunks(vine, 10, 1).due).toEqual([{ trunk: 1, age: 10 }]);
  });

  test("impossible numbers are refused", () => {
    expect(() => trunkRenewal(trunks(-1), 2)).toThrow(/outside/);
    expect(() => trunkRenewal(trunks(1.5), 2)).toThrow(/notWhole/);
  });
});

describe("cordons to renew", () => {
  const triggers = {
    emptyShare: 0.33,
    badlyPlacedShare: 0.5,
    spurSpacing: metres(0.1),
    spurHeight: metres(0.1),
  };
  const on = { side: "left", cordon: "A" };

  test.each([
    {
      why: "9 of 10 places live",
      cordon: { positions: 10, liveSpurs: 9, longestGap: 1 },
      action: "keep",
      found: [],
    },
    {
      why: "6 of 10: 0.40 of the places are empty",
      cordon: { positions: 10, liveSpurs: 6, longestGap: 1 },
      action: "replace",
      found: ["tooFewSpurs"],
    },
    {
      why: "8 of 12 with a dead stretch of 4: a third of the cordon in one piece",
      cordon: { positions: 12, liveSpurs: 8, longestGap: 4 },
      action: "replace",
      found: ["tooFewSpurs", "deadArea"],
    },
    {
      why: "high wire: 5 of 8 spurs point up",
      cordon: { positions: 8, liveSpurs: 8, spursUp: 5 },
      action: "replace",
      found: ["poorSpurs"],
    },
    {
      why: "0.8 m of cordon on 1 m of wire: room for two spurs more at 0.1 m",
      cordon: { length: metres(0.8), liveSpurs: 8 },
      action: "extend",
      found: [],
    },
    { why: "nothing counted, nothing said", cordon: {}, action: "keep", found: [] },
  ])("$why", ({ cordon, action, found }) => {
    const renewal = cordonRenewal({ ...on, ...cordon }, "highWire", triggers, metres(1));
    expect([renewal.action, renewal.triggers]).toEqual([action, found]);
  });

  test("a cane for one metre of wire is two metres long when half of it is thick enough", () => {
    expect(caneToLay({ sideLength: metres(1), thickShare: 0.5 })).toMatchObject({ length: 1, caneLength: 2 });
  });
});

describe("renewal over the next winters", () => {
  test("without renewal the trunks of each vine die as a binomial says (jStat)", () => {
    for (const trunks of [1, 2, 3, 4])
      for (const loss of [0, 0.05, 0.2, 0.7, 1]) {
        const start = [...Array.from({ length: trunks }, () => 0), 1000];
        renewalForecast(start, 1, loss, 0, 5).forEach(({ year, vines }) => {
          const alive = (1 - loss) ** year;
          for (let live = 0; live <= trunks; live++)
            expect(vines[live]).toBeCloseTo(1000 * jStat.binomial.pdf(live, trunks, alive), 6);
        });
      }
  });

  test("by hand: 100 vines of two trunks, a tenth of the trunks lost, half of the one-trunk vines renewed", () => {
    // winter: 81 keep two, 18 keep one, 1 keeps none; 20 trunks lost; 9 of the 18 get their second again
    const [first] = renewalForecast([0, 0, 100], 2, 0.1, 0.5, 1);
    expect(first.vines.map((count) => Math.round(count * 1e9) / 1e9)).toEqual([1, 9, 90]);
    expect(first.trunksLost).toBeCloseTo(20, 9);
    expect(first.trunksBroughtUp).toBeCloseTo(9, 9);
  });

  test("no vine is lost or made, and more renewal never leaves fewer trunks", () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 500 }), { minLength: 1, maxLength: 6 }),
        share,
        share,
        share,
        (vines, loss, one, other) => {
          const total = vines.reduce((sum, count) => sum + count, 0);
          const trunks = (broughtUp: number) => {
            const last = renewalForecast(vines, 3, loss, broughtUp, 5)[4].vines;
            expect(last.reduce((sum, count) => sum + count, 0)).toBeCloseTo(total, 6);
            return last.reduce((sum, count, live) => sum + count * live, 0);
          };
          expect(trunks(Math.max(one, other))).toBeGreaterThanOrEqual(trunks(Math.min(one, other)) - 1e-6);
        },
      ),
    );
  });
});
