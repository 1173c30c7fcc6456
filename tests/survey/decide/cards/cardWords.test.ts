import type { PlannedCane, PlannedCut, PlannedKeep } from "../../../../src/domain/plan/vinePlan";
import type { NodePlan } from "../../../../src/domain/plan/nodePlan";
import { metres } from "../../../../src/domain/units";
import type { CardVine } from "../../../../src/survey/decide/cards/crewCards";
import {
  cardLegend,
  cardLine,
  openSentence,
  shortageSentences,
  sideWord,
  voidSentences,
} from "../../../../src/survey/decide/cards/cardWords";

const vineOf = (rest: Partial<CardVine>): CardVine => ({
  ...{ vine: 1, status: "bearing", keeps: [], cuts: [], canes: [], trunksToBringUp: 0, deadTrunks: [] },
  ...{ notes: [], remarks: [] },
  ...rest,
});
const line = (rest: Partial<CardVine>) => cardLine(vineOf(rest), "en", "US");
const keep = (rest: Partial<PlannedKeep> = {}): PlannedKeep => ({
  ...{
    side: "left",
    cordon: "A",
    ask: false,
    against: [],
    renewal: { action: "keep", triggers: [], wanted: [] },
  },
  ...rest,
});
const cut = (backTo: PlannedCut["backTo"], rest: Partial<PlannedCut> = {}): PlannedCut => ({
  ...{ side: "right", cordon: "B", backTo, renews: [] },
  ...rest,
});
const cane = (rest: Partial<PlannedCane>): PlannedCane => ({ side: "right", from: 2, ask: false, ...rest });
const nodes = (rest: Partial<NodePlan>): NodePlan => ({
  spurs: [],
  nodes: 0,
  short: 0,
  surplusSpurs: 0,
  ...rest,
});

describe("the line of a card, each sign as its legend has it", () => {
  test.each<[Partial<PlannedKeep>, string]>([
    [{}, "A"],
    [{ trunk: 1 }, "A · T1"],
    [{ trunk: 1, ask: true, against: ["B", "C"] }, "A / B / C ?"],
    [{ trunk: 1, ask: true }, "A / cane ?"],
  ])("a cordon that stays, %p: %s", (rest, words) => {
    expect(line({ keeps: [keep(rest)] }).keep).toEqual([{ side: "left", words, ask: rest.ask ?? false }]);
  });

  test.each<[PlannedCut, string]>([
    [cut("head"), "B"],
    [cut("trunk", { trunk: 2 }), "B+T2"],
    [cut("spur"), "B ○"],
    [cut("cane"), "B ⟂"],
  ])("a cut, %p: %s", (one, words) => {
    expect(line({ cuts: [one] }).cut).toEqual([{ side: "right", words, ask: false }]);
  });

  test.each<[Partial<PlannedCane>, string]>([
    [{}, "cane: T2"],
    [{ source: { side: "left", cordon: "A" } }, "cane: T2 · A"],
    [{ from: "head" }, "cane: head"],
    [{ from: "ground", ask: true }, "cane: sucker"],
    [{ from: "otherTrunk" }, "cane: bare trunk"],
    [{ later: true, source: { side: "left", cordon: "A" } }, "next winter: T2"],
  ])("a cane that is laid, %p: %s", (rest, words) => {
    expect(line({ canes: [cane(rest)] }).lay).toEqual([{ side: "right", words, ask: rest.ask ?? false }]);
  });

  test.each<[NodePlan | undefined, string[]]>([
    [undefined, []],
    [nodes({ spurs: [{ spurs: 16, nodes: 3 }], nodes: 48 }), ["48: 3"]],
    [
      nodes({
        spurs: [
          { spurs: 4, nodes: 3 },
          { spurs: 9, nodes: 2 },
        ],
        nodes: 30,
      }),
      ["30: 4×3", "9×2"],
    ],
    [nodes({ spurs: [{ spurs: 25, nodes: 2 }], nodes: 50, surplusSpurs: 3 }), ["50: 2", "✂ 3"]],
    [nodes({ surplusSpurs: 4 }), ["✂ 4"]],
  ])("nodes over spurs, %p: %p", (plan, words) => {
    expect(line(plan ? { nodes: plan } : {}).nodes).toEqual(words);
  });
});

describe("what a crew looks out for on a vine", () => {
  const kept = { keeps: [keep()] };

  test.each<[string, Partial<CardVine>, string[]]>([
    ["a bearing vine with a cordon: nothing", kept, []],
    ["its remarks", { ...kept, remarks: ["frost crack", "B: split"] }, ["frost crack", "B: split"]],
    ["a replanted vine", { ...kept, status: "replanted" }, ["replanted"]],
    ["a vine that the register does not list: nothing", { ...kept, status: undefined }, []],
    ["a missing vine, and no more of it", { status: "missing" }, ["missing"]],
    [
      "a vine in its first year, and not that it is undecided",
      { young: { year: 1, rules: [{ rule: "shoots", least: 3, most: 6, source: "amberg" }] } },
      ["year 1: 3 to 6 shoots, no clusters"],
    ],
    [
      "both cordons on one trunk",
      { ...kept, notes: [{ code: "bothOnOneTrunk", facts: { trunk: 2 } }] },
      ["both on T2"],
    ],
    ["every trunk hurt", { ...kept, notes: [{ code: "everyTrunkHurt", facts: {} }] }, ["all trunks hurt"]],
    ["no trunk alive", { ...kept, notes: [{ code: "noLiveTrunk", facts: {} }] }, ["no live trunk"]],
    ["not what the list of trunks says anyway", { ...kept, notes: [{ code: "oneTrunk", facts: {} }] }, []],
    ["trunks to bring up", { ...kept, trunksToBringUp: 2 }, ["new trunks: 2"]],
    [
      "old trunks, with and without a younger one in their place",
      {
        ...kept,
        dueTrunks: [
          { trunk: 2, age: 14 },
          { trunk: 1, age: 11, renewalStands: true },
        ],
      },
      ["T2 old (14 y): keep a sucker", "T1 old (11 y): out once its renewal is 2-3 y"],
    ],
    [
      "wire to fill: 20 in",
      { keeps: [keep({ renewal: { action: "extend", triggers: [], wanted: [], toExtend: metres(0.508) } })] },
      ["extend A 20 in"],
    ],
    [
      "a cordon to renew",
      { keeps: [keep({ renewal: { action: "replace", triggers: ["poorSpurs"], wanted: [] } })] },
      ["renew A"],
    ],
    [
      "nothing to do on a cordon that is still asked about",
      { keeps: [keep({ ask: true, renewal: { action: "replace", triggers: ["poorSpurs"], wanted: [] } })] },
      [],
    ],
    ["a vine without an answer", {}, ["not decided"]],
    ["a vine to recount", { toCount: "recount" }, ["recount"]],
    ["a vine to count", { toCount: "toCount" }, ["still to be counted"]],
    ["a vine that gets a cane: nothing", { canes: [cane({})] }, []],
    ["a vine with a cordon and a cane: nothing", { ...kept, canes: [cane({})] }, []],
  ])("%s", (_what, rest, words) => {
    expect(line(rest).notes).toEqual(words);
  });
});

describe("what stands at the head of the cards", () => {
  const LEGEND = {
    keepTrunk: "A · T1: A stays, on trunk 1",
    ask: "A / B ?: look first, one of them stays",
    askCane: "A / cane ?: look first, A stays or a cane is laid",
    withTrunk: "A+T1: cut A, take dead trunk 1 out",
    withSpur: "A ○: cut A, leave a renewal spur",
    backToCane: "A ⟂: cut A back to its first good cane",
    evenSpurs: "30: 2 = 30 nodes, 2 on each spur",
    spurs: "30: 4×3 9×2 = 30 nodes: 4 spurs of 3, 9 of 2",
    surplus: "✂ 4: cut off the 4 worst placed spurs",
    trunk: "T1: trunk 1",
  };
  const two = [
    { spurs: 4, nodes: 3 },
    { spurs: 9, nodes: 2 },
  ];

  test.each<[string, Partial<CardVine>, (keyof typeof LEGEND)[]]>([
    ["a plain cordon", { keeps: [keep()] }, []],
    ["a cordon on a trunk", { keeps: [keep({ trunk: 1 })] }, ["keepTrunk"]],
    ["two to choose from", { keeps: [keep({ trunk: 1, ask: true, against: ["B"] })] }, ["ask"]],
    ["a cordon or a cane", { keeps: [keep({ trunk: 1, ask: true })] }, ["askCane"]],
    ["a plain cut", { cuts: [cut("head")] }, []],
    ["a dead trunk", { cuts: [cut("trunk", { trunk: 2 })] }, ["withTrunk"]],
    ["a renewal spur", { cuts: [cut("spur")] }, ["withSpur"]],
    ["a cane that is kept", { cuts: [cut("cane")] }, ["backToCane"]],
    ["spurs all alike", { nodes: nodes({ spurs: [two[1]], nodes: 18 }) }, ["evenSpurs"]],
    ["spurs of two lengths", { nodes: nodes({ spurs: two, nodes: 30 }) }, ["spurs"]],
    ["spurs to cut off", { nodes: nodes({ surplusSpurs: 1 }) }, ["surplus"]],
    ["a cane from a trunk", { canes: [cane({})] }, ["trunk"]],
    ["a cane from the head", { canes: [cane({ from: "head" })] }, []],
    ["an old trunk", { dueTrunks: [{ trunk: 1, age: 12 }] }, ["trunk"]],
    ["no old trunk", { dueTrunks: [] }, []],
    ["both on one trunk", { notes: [{ code: "bothOnOneTrunk", facts: { trunk: 1 } }] }, ["trunk"]],
    ["every trunk hurt", { notes: [{ code: "everyTrunkHurt", facts: {} }] }, []],
    ["a trunk once, with its cordon", { keeps: [keep({ trunk: 1 })], canes: [cane({})] }, ["keepTrunk"]],
  ])("the legend of %s", (_what, rest, signs) => {
    expect(cardLegend([vineOf({}), vineOf(rest)], "en")).toEqual(signs.map((sign) => LEGEND[sign]));
  });

  test("a block that lacks spurs says on how many of its budgeted vines and how many nodes; one that lacks none is silent", () => {
    const vine = (short?: number) => vineOf(short === undefined ? {} : { nodes: nodes({ short }) });
    const sentences = shortageSentences(
      [
        { block: "North", row: 1, vines: [vine(3), vine(0), vine()] },
        { block: "South", row: 1, vines: [vine(0)] },
        { block: "North", row: 2, vines: [vine(2)] },
      ],
      "en",
    );
    expect([...sentences]).toEqual([
      [
        "North",
        "North: on 2 of 3 vines the spurs, each as long as it may be, hold 5 nodes fewer than the budgets.",
      ],
    ]);
  });

  test("nothing open is said of a block and of all blocks", () => {
    const none = { asked: 0, recount: 0, uncounted: 0, wrong: 0, toAccept: 0 };
    expect(openSentence(none, "en")).toBe("Nothing is open: every vine is counted, decided and accepted.");
    expect(openSentence(none, "en", "Low")).toBe(
      "Nothing is open in Low: every vine is counted, decided and accepted.",
    );
    expect(openSentence({ ...none, uncounted: 1 }, "en", "Low")).toBe(
      "Still open in Low: 1 vine not counted.",
    );
  });

  test("lines of a card that hold no more are named by vine, a whole card as one", () => {
    const card = { block: "Low", row: 3, vines: [4, 12 + 1 / 64] };
    expect(
      voidSentences(
        [
          { ...card, isWhole: false },
          { ...card, row: 5, isWhole: true },
        ],
        "en",
      ),
    ).toEqual([
      "Void on the card of Low, row 3, printed before: 4, 12a.",
      "Void, the whole card of Low, row 5, printed before.",
    ]);
  });

  test("a side is said in the language, an unknown one as it stands", () => {
    expect(sideWord("left", "es")).toBe("izquierda");
    expect(sideWord("upwards", "es")).toBe("upwards");
  });
});
