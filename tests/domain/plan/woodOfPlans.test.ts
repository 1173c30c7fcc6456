import type { CandidateCordon, VineToDecide } from "../../../src/domain/choice/candidateCordon";
import type { SideDecision, Verdict, VineDecision } from "../../../src/domain/choice/vineDecision";
import { vinePlan, type VinePlan } from "../../../src/domain/plan/vinePlan";
import { youngVine, youngVineIn, yearOfGrowth } from "../../../src/domain/plan/youngVine";
import type { RenewalTriggers } from "../../../src/domain/renewal/cordonRenewal";
import { metres } from "../../../src/domain/units";

// By hand, after the order that the doc block of vinePlan gives; common practice where it names no source.
const TRIGGERS: RenewalTriggers = {
  emptyShare: 0.4,
  badlyPlacedShare: 0.5,
  spurSpacing: metres(0.1),
  spurHeight: metres(0.1),
};
type Row = readonly [place: string, verdict: Verdict, rest?: Partial<CandidateCordon>];

/** The plan of rows that were decided so; the first row that stays or is asked about is the one of its side. */
function planOf(
  rows: readonly Row[],
  laid: readonly SideDecision[] = [],
  {
    triggers,
    ...rest
  }: Partial<VineToDecide> & {
    readonly triggers?: Partial<RenewalTriggers>;
  } = {},
): VinePlan {
  const candidates = rows.map(([place, , more]): CandidateCordon => {
    const [side, cordon] = place.split(" ");
    return { side, cordon, ...more };
  });
  const cordons = candidates.map(({ side, cordon }, at) => ({
    side,
    cordon,
    verdict: rows[at][1],
  }));
  const kept = ["left", "right"].flatMap((side): SideDecision[] => {
    const own = cordons.find((one) => one.side === side && one.verdict !== "goes");
    if (!own || laid.some((one) => one.side === side)) return [];
    return [{ side, cordon: own.cordon, ask: own.verdict === "ask" }];
  });
  const decision = {
    cordons,
    sides: [...kept, ...laid],
  } as unknown as VineDecision;
  return vinePlan({ candidates, ...rest }, decision, {
    ...TRIGGERS,
    ...triggers,
  });
}
const cutsOf = ({ cuts }: VinePlan) => cuts.map(({ cordon, backTo }) => `${cordon} ${backTo}`);
const KEEP = { action: "keep", triggers: [], wanted: [] };

describe("cordons that stay", () => {
  test("one that is asked about is weighed against those of its side that are asked about too", () => {
    const { keeps } = planOf([
      ["left A", "ask", { trunk: 1 }],
      ["left B", "ask", { trunk: 2 }],
      ["left C", "goes", { trunk: 2 }],
      ["right D", "ask"],
      ["right E", "ask"],
    ]);
    expect(keeps).toStrictEqual([
      {
        side: "left",
        cordon: "A",
        trunk: 1,
        ask: true,
        against: ["B"],
        renewal: KEEP,
      },
      { side: "right", cordon: "D", ask: true, against: ["E"], renewal: KEEP },
    ]);
  });

  test("one that stays is weighed against none, though two of its side have one name and are asked about", () => {
    const { keeps } = planOf([
      ["left A", "stays"],
      ["left B", "ask"],
      ["left B", "ask"],
    ]);
    expect(keeps).toStrictEqual([{ side: "left", cordon: "A", ask: false, against: [], renewal: KEEP }]);
  });

  test("of two rows with one name the one that goes is cut and not kept", () => {
    const plan = planOf([
      ["left A", "stays"],
      ["left A", "goes"],
      ["right A", "goes"],
    ]);
    expect(plan.keeps.map(({ side }) => side)).toEqual(["left"]);
    expect(plan.cuts).toStrictEqual([
      { side: "left", cordon: "A", backTo: "head", renews: [] },
      { side: "right", cordon: "A", backTo: "head", renews: [] },
    ]);
  });

  test("a letter is a cordon of its side: the proposal on the left is none on the right", () => {
    const { keeps } = planOf(
      [
        ["left A", "stays"],
        ["right A", "ask"],
      ],
      [{ side: "right", ask: true, layCaneFrom: "head" }],
    );
    expect(keeps.map(({ side }) => side)).toEqual(["left"]);
  });

  test("on a young vine it grows on and is not renewed, however few its spurs", () => {
    const counts = { length: metres(0.5), positions: 5, liveSpurs: 1 };
    const { keeps } = planOf([["left A", "stays", counts]], [], {
      status: "young",
      sideLength: metres(1),
    });
    expect(keeps[0].renewal).toStrictEqual({
      action: "extend",
      toExtend: metres(0.5),
      triggers: [],
      wanted: [],
    });
  });
});

describe("the wood that bears the cane for the right side, on trunk 1", () => {
  const laid = (from: SideDecision["layCaneFrom"]): SideDecision[] => [
    { side: "right", ask: false, layCaneFrom: from! },
  ];
  const on1 = { trunk: 1 };

  test.each<{ why: string; rows: readonly Row[]; source: string }>([
    {
      why: "one that goes before one that stays, though that is on the bare side",
      rows: [
        ["right A", "stays", on1],
        ["left B", "goes", on1],
      ],
      source: "B",
    },
    {
      why: "one that goes before one that is asked about on the bare side",
      rows: [
        ["right A", "ask", on1],
        ["left B", "goes", on1],
      ],
      source: "B",
    },
    {
      why: "one that is asked about across before one that stays on the bare side",
      rows: [
        ["right A", "stays", on1],
        ["left B", "ask", on1],
      ],
      source: "B",
    },
    {
      why: "of two that go, the one of the bare side",
      rows: [
        ["left A", "goes", on1],
        ["right B", "goes", on1],
      ],
      source: "B",
    },
    {
      why: "of two alike, the one written first",
      rows: [
        ["left A", "goes", on1],
        ["left B", "goes", on1],
      ],
      source: "A",
    },
    {
      why: "one that stays across before one near whose head no cane stands",
      rows: [
        ["right A", "goes", { ...on1, canesNearHead: 0 }],
        ["left B", "stays", on1],
      ],
      source: "B",
    },
    {
      why: "the one from which a person wants a cane laid on its side, whatever was counted",
      rows: [
        ["right A", "goes", { ...on1, canesNearHead: 3 }],
        ["right B", "goes", { ...on1, canesNearHead: 0, fixedChoice: "cane" }],
      ],
      source: "B",
    },
    {
      why: "a cane that a person wants on the left is none for the right",
      rows: [
        ["left A", "goes", { ...on1, fixedChoice: "cane" }],
        ["right B", "goes", on1],
      ],
      source: "B",
    },
    {
      why: "what a person only let go is not what a cane was seen on",
      rows: [
        ["right A", "goes", on1],
        ["right B", "goes", { ...on1, fixedChoice: "goes" }],
      ],
      source: "A",
    },
    {
      why: "no dead cordon, none of a dead trunk and none of another trunk",
      rows: [
        ["right A", "goes", { ...on1, condition: "dead" }],
        ["right B", "goes", { trunk: 2 }],
        ["right C", "goes"],
        ["left D", "stays", on1],
      ],
      source: "D",
    },
  ])("$why", ({ rows, source }) => {
    expect(planOf(rows, laid(1)).canes).toMatchObject([{ from: 1, source: { cordon: source } }]);
  });

  test("a cane from the head grows on a living cordon of no numbered trunk", () => {
    const rows: readonly Row[] = [
      ["right A", "goes", { trunkCondition: "dead" }],
      ["left B", "goes", on1],
      ["left C", "goes"],
    ];
    expect(planOf(rows, laid("head")).canes).toStrictEqual([
      {
        side: "right",
        from: "head",
        source: { side: "left", cordon: "C" },
        ask: false,
      },
    ]);
  });

  test("a sucker grows on no cordon", () => {
    const plan = planOf([["left A", "goes"]], laid("ground"));
    expect(plan.canes).toStrictEqual([{ side: "right", from: "ground", ask: false }]);
    expect(cutsOf(plan)).toEqual(["A head"]);
  });

  test("where none stands, the source keeps a renewal spur; where a person saw one, it is laid", () => {
    const of = (fixedChoice?: "cane") =>
      planOf(
        [
          [
            "right A",
            "goes",
            {
              ...on1,
              canesNearHead: 0,
              ...(fixedChoice ? { fixedChoice } : {}),
            },
          ],
        ],
        laid(1),
      );
    expect(of().canes).toStrictEqual([
      {
        side: "right",
        from: 1,
        source: { side: "right", cordon: "A" },
        later: true,
        ask: false,
      },
    ]);
    expect(cutsOf(of())).toEqual(["A spur"]);
    expect(of("cane").canes).toStrictEqual([
      {
        side: "right",
        from: 1,
        source: { side: "right", cordon: "A" },
        ask: false,
      },
    ]);
    expect(cutsOf(of("cane"))).toEqual(["A cane"]);
  });

  test("the cane that a person may prefer is named beside the cordon that is asked about, and beside no other", () => {
    const { keeps } = planOf(
      [
        ["left A", "ask", on1],
        ["right B", "stays", { trunk: 2 }],
      ],
      [
        { side: "left", cordon: "A", ask: true, orLayFrom: 2 },
        { side: "right", cordon: "B", ask: false },
      ],
    );
    expect(keeps.map(({ orCane }) => orCane)).toStrictEqual([
      { from: 2, source: { side: "right", cordon: "B" } },
      undefined,
    ]);
    expect(keeps.map((keep) => "orCane" in keep)).toEqual([true, false]);
  });
});

describe("the wood that renews A, which stays on the left with half of its places empty and no cane near its head", () => {
  const half = { positions: 10, liveSpurs: 5, canesNearHead: 0 };
  const A: Row = ["left A", "stays", { ...half, trunk: 1 }];

  test.each<{ why: string; rows: readonly Row[]; cuts: readonly string[] }>([
    {
      why: "a cordon that goes beside it",
      rows: [A, ["left B", "goes", { trunk: 2 }]],
      cuts: ["B cane"],
    },
    {
      why: "one that goes across on its own trunk",
      rows: [A, ["right B", "goes", { trunk: 1 }]],
      cuts: ["B cane"],
    },
    {
      why: "none across on another trunk; that keeps its renewal spur",
      rows: [A, ["right B", "goes", { trunk: 2 }]],
      cuts: ["B spur"],
    },
    {
      why: "none across where no trunk of the two was written down",
      rows: [
        ["left A", "stays", half],
        ["right B", "goes"],
      ],
      cuts: ["B head"],
    },
    {
      why: "none that stays or is asked about",
      rows: [A, ["left B", "ask", { trunk: 1 }], ["right C", "stays", { trunk: 1 }]],
      cuts: [],
    },
    {
      why: "none near whose head no cane stands",
      rows: [A, ["left B", "goes", { trunk: 2, canesNearHead: 0 }]],
      cuts: ["B spur"],
    },
    {
      why: "none that is dead",
      rows: [A, ["left B", "goes", { trunk: 1, condition: "dead" }]],
      cuts: ["B head"],
    },
    {
      why: "one beside it before one across, even from a diseased trunk",
      rows: [
        A,
        ["right B", "goes", { trunk: 1 }],
        ["left C", "goes", { trunk: 2, trunkCondition: "diseased" }],
      ],
      cuts: ["B head", "C cane"],
    },
    {
      why: "one from an injured trunk before one from a diseased one",
      rows: [
        A,
        ["left B", "goes", { trunk: 2, trunkCondition: "diseased" }],
        ["left C", "goes", { trunk: 3, trunkCondition: "injured" }],
      ],
      cuts: ["B head", "C cane"],
    },
    {
      why: "one from a sound trunk before one from an injured one, numbered or not",
      rows: [A, ["left B", "goes", { trunkCondition: "injured" }], ["left C", "goes"]],
      cuts: ["B head", "C cane"],
    },
  ])("$why", ({ rows, cuts }) => {
    expect(cutsOf(planOf(rows))).toEqual(cuts);
  });

  test("one cane may renew a cordon on each side", () => {
    const { cuts } = planOf([
      A,
      ["right C", "stays", { ...half, trunk: 2 }],
      ["left B", "goes", { trunk: 2 }],
    ]);
    expect(cuts).toStrictEqual([
      {
        side: "left",
        cordon: "B",
        trunk: 2,
        backTo: "cane",
        renews: ["A", "C"],
      },
    ]);
  });

  test("where somebody still looks at A, nothing is kept for it", () => {
    expect(
      cutsOf(
        planOf([
          ["left A", "ask", { ...half, trunk: 1 }],
          ["left B", "goes"],
        ]),
      ),
    ).toEqual(["B head"]);
  });
});

describe("how far cordons come off", () => {
  test("first to the head, then those that keep a spur, those searched for a cane last", () => {
    const rows: readonly Row[] = [
      ["right A", "goes", { trunk: 1 }],
      ["left B", "goes", { trunk: 2 }],
      ["left C", "goes"],
    ];
    expect(cutsOf(planOf(rows, [{ side: "right", ask: false, layCaneFrom: 1 }]))).toEqual([
      "C head",
      "B spur",
      "A cane",
    ]);
  });

  test.each([
    { why: "a cane is laid from it", canes: 1, cuts: ["C head", "B cane"] },
    {
      why: "its spur is kept for a later cane",
      canes: 0,
      cuts: ["C head", "B spur"],
    },
  ])("a trunk that loses both its cordons keeps no second piece of wood where $why", ({ canes, cuts }) => {
    const rows: readonly Row[] = [
      ["left B", "goes", { trunk: 2, canesNearHead: canes }],
      ["right C", "goes", { trunk: 2, canesNearHead: 0 }],
    ];
    expect(cutsOf(planOf(rows, [{ side: "left", ask: false, layCaneFrom: 2 }]))).toEqual(cuts);
  });

  test("the spur is left on the last living cordon of its trunk, not on a dead one after it", () => {
    const rows: readonly Row[] = [
      ["left B", "goes", { trunk: 2 }],
      ["left C", "goes", { trunk: 2 }],
      ["right D", "goes", { trunk: 2, condition: "dead" }],
    ];
    expect(cutsOf(planOf(rows))).toEqual(["B head", "D head", "C spur"]);
  });

  test("no spur where the trunk keeps a cordon or one that is asked about", () => {
    for (const verdict of ["stays", "ask"] as const)
      expect(
        cutsOf(
          planOf([
            ["left B", "goes", { trunk: 2 }],
            ["right C", verdict, { trunk: 2 }],
          ]),
        ),
      ).toEqual(["B head"]);
  });
});

describe("trunks due and young vines stand in the plan where there are any", () => {
  const rows: readonly Row[] = [
    ["left A", "stays", { trunk: 1, trunkAge: 12 }],
    ["right B", "stays", { trunk: 2, trunkAge: 4 }],
    ["right C", "goes", { trunk: 3, trunkAge: 4 }],
  ];

  test("from the age on that the farm says, against the trunks that it wants, two where it does not say", () => {
    const due = (triggers: Partial<RenewalTriggers>) => planOf(rows, [], { triggers }).dueTrunks;
    expect(due({ trunkAge: 12 })).toStrictEqual([{ trunk: 1, age: 12, renewalStands: true }]);
    expect(due({ trunkAge: 12, trunksWanted: 3 })).toStrictEqual([{ trunk: 1, age: 12 }]);
  });

  test("otherwise they are left out", () => {
    expect(Object.keys(planOf(rows, [], { triggers: { trunkAge: 13 } }))).toEqual(["keeps", "canes", "cuts"]);
    expect(Object.keys(planOf(rows))).toEqual(["keeps", "canes", "cuts"]);
  });

  test("a vine in its third year, with the farm's own most clusters", () => {
    const triggers = { youngClusters: { 3: 6 } };
    expect(planOf(rows, [], { yearOfGrowth: 3, triggers }).young).toEqual({
      year: 3,
      rules: [
        { rule: "shootsOfCordon", source: "vanDerLinden2010" },
        { rule: "growOn", most: 0.5, source: "klodd2020" },
        { rule: "clusters", most: 6 },
      ],
    });
  });
});

describe("a vine in its first four years", () => {
  test.each([
    [2027, undefined],
    [2026, 1],
    [2025, 2],
    [2024, 3],
    [2023, 4],
    [2022, undefined],
  ])("planted in %i it is, at the harvest of 2026, in year %p", (planted, year) => {
    expect(yearOfGrowth(planted, 2026)).toBe(year);
  });

  const clustersOf = (year: 1 | 2 | 3 | 4, own: number) =>
    youngVine(year, "highWire", { [year]: own }).rules.filter(({ rule }) => rule === "clusters");

  test("a farm's figure that is the published one keeps its source, another stands in its place", () => {
    expect(clustersOf(3, 10)).toEqual([{ rule: "clusters", most: 10, source: "winegrowersUk" }]);
    expect(clustersOf(3, 9)).toEqual([{ rule: "clusters", most: 9 }]);
    expect(clustersOf(1, 0)).toEqual([{ rule: "clusters", most: 0, source: "uw2016" }]);
  });

  test("where nothing is published of clusters the farm's figure joins the other rules, whatever their figures", () => {
    // Two cordons and two clusters are two different things.
    expect(youngVine(2, "highWire", { 2: 2 }).rules.map(({ rule, most }) => [rule, most])).toEqual([
      ["cordons", 2],
      ["growOn", 0.5],
      ["clusters", 2],
    ]);
    expect(youngVine(4, "upright", { 4: 20 }).rules).toEqual([{ rule: "clusters", most: 20 }]);
  });

  test("outside of them there is no answer, nor for the fourth year of another training system", () => {
    expect(() => youngVineIn(2020, 2026, "highWire")).toThrow(
      expect.objectContaining({
        kind: "notAvailable",
        code: "vineNotYoung",
        facts: { planted: "2020", season: "2026" },
      }),
    );
    expect(() => youngVineIn(2023, 2026, "upright")).toThrow(
      expect.objectContaining({
        kind: "notAvailable",
        code: "youngVineTraining",
      }),
    );
  });
});
