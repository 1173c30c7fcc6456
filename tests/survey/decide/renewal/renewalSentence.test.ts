import type { CordonRenewal } from "../../../../src/domain/renewal/cordonRenewal";
import type { PlannedKeep, VinePlan } from "../../../../src/domain/plan/vinePlan";
import { youngVine, type YearOfGrowth } from "../../../../src/domain/plan/youngVine";
import { trunkRenewal, type VineTrunks } from "../../../../src/domain/renewal/trunkRenewal";
import { metres } from "../../../../src/domain/units";
import {
  caneSentence,
  cordonRenewalSentences,
  dueSentences,
  renewalSentences,
  trunkRenewalSentence,
} from "../../../../src/survey/decide/renewal/renewalSentence";
import { youngCardWords, youngVineSentences } from "../../../../src/survey/decide/renewal/youngVineSentence";

const IN = 0.0254;

describe("what is done about a vine's trunks, two wanted", () => {
  const due = [{ trunk: 2, age: 11 }];
  const DUE =
    "Trunk 2 has stood 11 years: keep a shoot low on it or a sucker in its place, and take it out when that is 2 to 3 years old.";
  test.each<[string, VineTrunks, string]>([
    [
      "none lives",
      { liveTrunks: 0, noted: [] },
      "No trunk lives: keep about five suckers, none thicker than a little finger, and train one.",
    ],
    [
      "the last one is hurt",
      { liveTrunks: 1, noted: [{ number: 1, condition: "injured" }] },
      "The only live trunk is hurt: bring up 2 from suckers before it is lost.",
    ],
    ["one", { liveTrunks: 1, noted: [] }, "One live trunk: bring up 1 more from a sucker."],
    [
      "one beside a dead one",
      { liveTrunks: 1, noted: [{ number: 2, condition: "dead" }] },
      "One live trunk: bring up 1 more from a sucker. Take out dead trunk 2.",
    ],
    [
      "one of two hurt",
      { liveTrunks: 2, noted: [{ number: 2, condition: "injured" }] },
      "Live trunks: 2; hurt: trunk 2. Bring up 1 and take the hurt one out once the new one stands.",
    ],
    ["enough", { liveTrunks: 2, noted: [] }, "Enough trunks."],
    ["enough, one of them old", { liveTrunks: 2, noted: [], due }, DUE],
    [
      "one, and that is old",
      { liveTrunks: 1, noted: [], due },
      `One live trunk: bring up 2 more from a sucker. ${DUE}`,
    ],
  ])("%s", (_what, trunks, sentence) => {
    expect(trunkRenewalSentence(trunkRenewal(trunks, 2), trunks.liveTrunks, 2, "en")).toBe(sentence);
  });

  test("fewer than wanted, and all of several hurt, are told by their number", () => {
    expect(trunkRenewalSentence(trunkRenewal({ liveTrunks: 2, noted: [] }, 4), 2, 4, "en")).toBe(
      "2 live trunks, 4 wanted: bring up 2 from suckers.",
    );
    const noted = [1, 2].map((number) => ({ number, condition: "diseased" as const }));
    expect(trunkRenewalSentence(trunkRenewal({ liveTrunks: 2, noted }, 2), 2, 2, "en")).toBe(
      "All 2 live trunks are hurt: bring up 2 from suckers.",
    );
  });

  test("an old trunk beside a younger one in its place goes when that is old enough", () => {
    expect(dueSentences([{ trunk: 1, age: 12, renewalStands: true }], "en")).toEqual([
      "Trunk 1 has stood 12 years and a younger one stands in its place: take it out once that is 2 to 3 years old.",
    ]);
  });
});

const renewal = (rest: Partial<CordonRenewal> = {}): CordonRenewal => ({
  action: "keep",
  triggers: [],
  wanted: [],
  ...rest,
});

describe("what a cordon that stays needs", () => {
  test.each<[string, Partial<CordonRenewal>, string[]]>([
    ["nothing", {}, []],
    [
      "20 in of wire to fill",
      { action: "extend", toExtend: metres(20 * IN) },
      ["Extend B by 20 in, with the thick part of a cane at its end."],
    ],
    [
      "a new one, for each cause",
      { action: "replace", triggers: ["tooFewSpurs", "deadArea", "poorSpurs"] },
      [
        "Renew B (too few spurs, a dead area, badly placed spurs): lay a cane that starts nearer the head than the dead stretch.",
      ],
    ],
    [
      "a new one in a later winter",
      { action: "replaceLater", triggers: ["poorSpurs"] },
      [
        "Renew B (badly placed spurs) in a later winter: no cane near its head could be laid now, so keep a renewal spur there.",
      ],
    ],
    [
      "a cane over its gap",
      { action: "layOver", triggers: ["deadArea"], gap: { from: 1, places: 4 } },
      [
        "B has a dead area of 4 places: lay a cane over it, from the last spur before it, 1 place from the head.",
      ],
    ],
    [
      "spurs brought down",
      { spurHeight: metres(5 * IN) },
      ["B: its spurs stand 5 in above it; cut each back to a shoot near the cordon."],
    ],
    [
      "counts that would tell",
      { action: "replace", triggers: ["deadArea"], wanted: ["gapFrom", "canesNearHead"] },
      [
        "Renew B (a dead area): lay a cane that starts nearer the head than the dead stretch.",
        "How B is renewed depends on what was not counted: how far its longest gap lies from the head, the canes near its head.",
      ],
    ],
  ])("%s", (_what, rest, sentences) => {
    expect(cordonRenewalSentences(renewal(rest), "B", "en", "US")).toEqual(sentences);
  });

  const keep = (rest: Partial<PlannedKeep>): PlannedKeep => ({
    ...{ side: "left", cordon: "B", ask: false, against: [], renewal: renewal() },
    ...rest,
  });
  const extended = renewal({ action: "extend", toExtend: metres(20 * IN) });
  const plan = (rest: Partial<VinePlan>) =>
    renewalSentences({ keeps: [], canes: [], cuts: [], ...rest }, "en", "US");

  test("of a vine: its year first, then its cordons, then its old trunks", () => {
    const sentences = plan({
      keeps: [keep({ renewal: extended })],
      dueTrunks: [{ trunk: 1, age: 12, renewalStands: true }],
      young: { year: 1, rules: [] },
    });
    expect(sentences.map((sentence) => sentence.slice(0, 8))).toEqual([
      ...["Year 1 o", "No publi", "Extend B", "Trunk 1 "],
    ]);
    expect(plan({})).toEqual([]);
  });

  test("of a cordon that is asked about only the count that would tell whether it can be kept", () => {
    expect(plan({ keeps: [keep({ ask: true, renewal: extended })] })).toEqual([]);
    expect(
      plan({ keeps: [keep({ ask: true, renewal: { ...extended, wanted: ["canesNearHead"] } })] }),
    ).toEqual([]);
    expect(plan({ keeps: [keep({ ask: true, renewal: { ...extended, wanted: ["gapFrom"] } })] })).toEqual([
      "Whether B can be kept depends on what was not counted: how far its longest gap lies from the head. A cane from living wood nearer the head could be laid over its dead area.",
    ]);
  });
});

test("the cane to look for has its thickness and length; where the wire is not known nothing is said", () => {
  // Westover 2016: 5/16 to 1/2 in, of which the larger end is for cordons
  const cane = { leastDiameter: metres(0.41 * IN), mostDiameter: metres(0.5 * IN) };
  expect(caneSentence({ ...cane, length: metres(40 * IN) }, "en", "US")).toBe(
    "Cane wanted: 0.41 in to 0.5 in thick, thick enough over 40 in; the outer half of a cane is thin and weak, so fill the wire in stages.",
  );
  expect(caneSentence(cane, "en", "US")).toBe("");
});

describe("what publications leave on a young vine", () => {
  const NO_NODES = "No publication seen gives nodes to leave on a vine of this year.";
  test.each<[YearOfGrowth, string[], string]>([
    [
      1,
      [
        "Year 1 of this vine.",
        "Shoots to keep, the best two of them led to the wire: 3 to 6 (Amberg nursery).",
        "Flower clusters to leave: 0 at most (UW-Madison 2016).",
        NO_NODES,
      ],
      "year 1: 3 to 6 shoots, no clusters",
    ],
    [
      2,
      [
        "Year 2 of this vine.",
        "Best shoots that become the cordons: 2 (UMN 2010).",
        "Share of a cane that is laid, its thick part: 0.5 at most (UMN 2020).",
        NO_NODES,
      ],
      "year 2: the 2 best shoots become cordons, half a cane at most, 0 clusters at most",
    ],
    [
      3,
      [
        "Year 3 of this vine.",
        "Shoots from the cordon are grown (UMN 2010).",
        "Share of a cane that is laid, its thick part: 0.5 at most (UMN 2020).",
        "Flower clusters to leave: 10 at most (Winegrowers UK).",
        NO_NODES,
      ],
      "year 3: shoots of the cordon, on by half a cane at most, 10 clusters at most",
    ],
    [
      4,
      [
        "Year 4 of this vine.",
        "Spurs to leave on a cordon: 8 to 15 (NC State).",
        "Nodes on a spur: 2 (NC State).",
        "Nodes on a cordon: 16 to 30 (NC State).",
      ],
      "year 4: 8 to 15 spurs a cordon, 2 nodes each",
    ],
  ])("in year %d on a high wire", (year, sentences, card) => {
    expect(youngVineSentences(youngVine(year, "highWire"), "en")).toEqual(sentences);
    expect(youngCardWords(youngVine(year, "highWire"), "en")).toBe(card);
  });

  test("in year 4 on another training nothing, and a figure of the farm's own is Settings'", () => {
    expect(youngVineSentences(youngVine(4, "upright"), "en")).toEqual(["Year 4 of this vine.", NO_NODES]);
    expect(youngCardWords(youngVine(4, "upright"), "en")).toBe("year 4: no rule seen for this training");
    expect(youngVineSentences(youngVine(3, "upright", { 3: 1 }), "en")).toContain(
      "Flower clusters to leave: 1 at most (Settings).",
    );
    expect(youngCardWords(youngVine(3, "upright", { 3: 1 }), "en")).toContain("1 cluster at most");
  });
});
