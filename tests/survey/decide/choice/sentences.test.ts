import type { PlannedCane, PlannedCut, PlannedKeep, VinePlan } from "../../../../src/domain/plan/vinePlan";
import type { Argument, CordonDecision, Reason } from "../../../../src/domain/choice/vineDecision";
import { lengthWords } from "../../../../src/survey/decide/choice/lengthWords";
import {
  caneOriginWords,
  reasonSentence,
  sideWords,
  strongestAgainst,
} from "../../../../src/survey/decide/choice/reasonSentence";
import {
  cutSentence,
  keepSentence,
  laySentence,
  sideSentences,
  vineNoteSentence,
} from "../../../../src/survey/decide/choice/vineSentences";
import type { UnitSystem } from "../../../../src/domain/units";
import type { Language } from "../../../../src/texts/language";

const IN = 0.0254;

describe("a short length as a crew says it", () => {
  test.each<[number, Language, UnitSystem, string]>([
    [10 * IN, "en", "US", "10 in"],
    [2.44 * IN, "en", "US", "2.4 in"],
    [1.554 * IN, "en", "US", "1.55 in"],
    [1.999 * IN, "en", "US", "2 in"],
    [0.254, "en", "metric", "25 cm"],
    [1.2, "fr", "metric", "120 cm"],
    [0.1, "en", "metric", "10 cm"],
    [0.0994, "en", "metric", "99 mm"],
    [0.0127, "en", "metric", "13 mm"],
  ])("%d m in %s, %s: %s", (metres, language, units, words) => {
    expect(lengthWords(metres, language, units)).toBe(words);
  });
});

describe("what is done on a vine, in sentences", () => {
  const keep: PlannedKeep = {
    ...{ side: "right", cordon: "A", ask: false, against: [] },
    renewal: { action: "keep", triggers: [], wanted: [] },
  };
  const cane: PlannedCane = { side: "left", from: 2, ask: false };
  const source = { side: "right", cordon: "B" };

  test.each([
    ["left", "right"],
    ["north", "south"],
    ["east", "west"],
  ])("the %s side is told before the %s, whether a cordon stays there or a cane is laid", (first, second) => {
    const plan = (one: string, other: string): VinePlan => ({
      ...{ cuts: [], keeps: [{ ...keep, side: one }], canes: [{ ...cane, side: other }] },
    });
    const [at, across] = [sideWords(first, "en"), sideWords(second, "en")];
    expect(sideSentences(plan(second, first), "en")).toEqual([
      `Lay a cane ${at} from trunk 2.`,
      `A stays ${across}.`,
    ]);
    expect(sideSentences(plan(first, second), "en")).toEqual([
      `A stays ${at}.`,
      `Lay a cane ${across} from trunk 2.`,
    ]);
  });

  test("sides that have no name of their own stand as they are written", () => {
    expect(sideWords("upwards", "fr")).toBe("upwards");
    expect(sideWords("left", "fr")).toBe("à gauche");
  });

  test("a cordon stays, or would if the person who looks agrees", () => {
    expect(keepSentence(keep, "en")).toBe("A stays on the right.");
    expect(keepSentence({ ...keep, ask: true }, "en")).toBe(
      "A on the right, if the person who looks agrees.",
    );
  });

  test.each<[Partial<PlannedCane>, string]>([
    [{}, "Lay a cane on the left from trunk 2."],
    [{ from: "otherTrunk" }, "Lay a cane on the left from the live trunk that carries no cordon."],
    [{ from: "head", ask: true }, "Lay a cane on the left from the head, if the person who looks agrees."],
    [{ source }, "Lay a cane on the left from trunk 2: a good cane of B, near the head."],
    [
      { source, ask: true },
      "Lay a cane on the left from trunk 2, if the person who looks agrees: a good cane of B, near the head.",
    ],
    [
      { source, later: true },
      "No cane on the left can be laid this winter: none was counted near the head on B. Keep a renewal spur at the head of B and lay its cane next winter.",
    ],
  ])("a cane, %p", (rest, sentence) => {
    expect(laySentence({ ...cane, ...rest }, "en")).toBe(sentence);
  });

  test("a cane from the ground is one of a sucker", () => {
    expect(caneOriginWords("ground", "en")).toBe("from a sucker at the ground");
  });

  test.each<[Partial<PlannedCut>, string]>([
    [{ backTo: "head" }, "Cut B on the left from the outer end back to the head."],
    [
      { backTo: "trunk", trunk: 3 },
      "Cut B on the left from the outer end back to the head, and take out the dead trunk 3.",
    ],
    [
      { backTo: "spur" },
      "Cut B on the left from the outer end towards the trunk, and leave a renewal spur of two nodes at the head.",
    ],
    [
      { backTo: "cane" },
      "Cut B on the left from the outer end towards the trunk, and stop at the first good cane that can be laid.",
    ],
    [
      { backTo: "cane", renews: ["A", "C"] },
      "Cut B on the left from the outer end towards the trunk, and stop at the first good cane: it is kept to renew A, C.",
    ],
  ])("a cut, %p", (rest, sentence) => {
    expect(cutSentence({ side: "left", cordon: "B", backTo: "head", renews: [], ...rest }, "en")).toBe(
      sentence,
    );
  });

  test("what was not counted on a vine is named", () => {
    expect(vineNoteSentence({ code: "leftOut", facts: { parts: ["diameter", "placing"] } }, "en")).toBe(
      "Not counted on this vine, so not weighed: diameter, where the spurs point.",
    );
    expect(vineNoteSentence({ code: "fixedTwice", facts: { side: "left", cordons: ["A", "B"] } }, "en")).toBe(
      "A, B on the left are all fixed to stay.",
    );
    expect(vineNoteSentence({ code: "vineMissing", facts: {} }, "en")).toBe(
      "The vine is listed as missing, so nothing is decided.",
    );
  });
});

const argument = (code: Argument["code"], facts: Argument["facts"], weight = 1): Argument => ({
  code,
  weight,
  facts,
});
const because = (
  code: Reason["code"],
  rest: Partial<Reason> = {},
): Pick<CordonDecision, "side" | "cordon" | "verdict" | "reason"> => ({
  ...{ side: "left", cordon: "A", verdict: "ask" },
  reason: { code, mine: [], theirs: [], facts: {}, ...rest },
});
const said = (...reason: Parameters<typeof because>) => reasonSentence(because(...reason), "en", "US");
/** The conditions that stand beside every weak point. */
const SOUND = { condition: "sound", trunkCondition: "sound" };
const SPURS = argument("spurs", { mine: 9, theirs: 8 });
const GAP = argument("stretch", { mine: 1, theirs: 3 });

describe("why a cordon stays, goes or is asked about", () => {
  test.each<[string, Parameters<typeof because>, string]>([
    ["better", ["better", { rival: "B", mine: [SPURS] }], "Keep A on the left: 9 live spurs against 8."],
    [
      "better in spite of something",
      ["better", { rival: "B", mine: [SPURS], theirs: [GAP] }],
      "Keep A on the left: 9 live spurs against 8. In favour of B: longest gap 1 against 3.",
    ],
    [
      "worse",
      ["worse", { rival: "B", theirs: [SPURS] }],
      "Cut A on the left; B is better: 9 live spurs against 8.",
    ],
    [
      "worse in spite of something",
      ["worse", { rival: "B", theirs: [SPURS], mine: [GAP] }],
      "Cut A on the left; B is better: 9 live spurs against 8. In favour of A: longest gap 1 against 3.",
    ],
    [
      "better by nothing that was counted",
      ["better", { rival: "B" }],
      "Keep A on the left: nothing that was written down.",
    ],
    ["the only one", ["onlyOne"], "Keep A on the left: it is the only one there and worth keeping."],
    [
      "the only one, of counted spurs",
      ["onlyOne", { facts: { spurs: 7 } }],
      "Keep A on the left: it is the only one there and worth keeping, with 7 live spurs.",
    ],
    [
      "the only one, of counted spurs and gap",
      ["onlyOne", { facts: { spurs: 7, gap: 0 } }],
      "Keep A on the left: it is the only one there and worth keeping, with 7 live spurs and a longest gap of 0.",
    ],
    ["young", ["building"], "Keep A on the left: the vine is young and its cordon is still being built."],
    ["fixed to go", ["fixedGoes"], "Cut A on the left: a person has decided it."],
    [
      "fixed to give a cane",
      ["fixedCane"],
      "Cut A on the left back to a good cane near the head and lay that: a person has decided it.",
    ],
    [
      "beside a fixed one",
      ["besideFixed", { rival: "B" }],
      "Cut A on the left: a person has decided that B stays there.",
    ],
    ["on a dead trunk", ["trunkDead", { facts: { trunk: 2 } }], "Cut A on the left: its trunk 2 is dead."],
    [
      "a remnant of 8 in",
      ["remnant", { facts: { length: 8 * IN } }],
      "Cut A on the left: at 8 in it is a remnant at the head, not a cordon.",
    ],
    [
      "worth less than a cane",
      ["notWorthKeeping", { facts: { ...SOUND, from: 2, weak: "spurs", spurs: 3, carry: 10, gain: 0 } }],
      "Cut A on the left and lay a cane from trunk 2: it carries 3 live spurs where its wire should carry 10.",
    ],
    [
      "worth less than a cane on a trunk of its own",
      ["notWorthKeeping", { facts: { ...SOUND, from: "ground", weak: "stretch", gap: 5, gain: 0.15 } }],
      "Cut A on the left and lay a cane from a sucker at the ground: it has a gap of 5 positions, and the new cane brings a trunk of its own.",
    ],
    [
      "about as good as a cane",
      ["closeToNewCane", { facts: { ...SOUND, weak: "soundness", condition: "diseased" } }],
      "Look at the vine: A on the left may be worth keeping, or a new cane may be better; it is diseased.",
    ],
    [
      "equal",
      ["closeCall", { rival: "B" }],
      "Look at the vine: A and B on the left are equal in all that was written down.",
    ],
    [
      "close, with something for each",
      ["closeCall", { rival: "B", mine: [SPURS], theirs: [GAP] }],
      "Look at the vine: A and B on the left are close. For A: 9 live spurs against 8. For B: longest gap 1 against 3.",
    ],
    [
      "close, with something for it",
      ["closeCall", { rival: "B", mine: [SPURS] }],
      "Look at the vine: A and B on the left are close. For A: 9 live spurs against 8.",
    ],
    [
      "close, with something for the other",
      ["closeCall", { rival: "B", theirs: [SPURS] }],
      "Look at the vine: A and B on the left are close. For B: 9 live spurs against 8.",
    ],
    [
      "not to be told apart",
      ["missingCounts", { rival: "B", facts: { missing: ["stretch A", "trunk B"] } }],
      "Look again: A and B on the left cannot be told apart before this is written down: longest gap of A, trunk of B.",
    ],
    [
      "not to be judged",
      ["missingCounts", { facts: { missing: ["spurs upper left"] } }],
      "Look again: A on the left cannot be judged before this is written down: live spurs and length of upper left.",
    ],
    [
      "to be counted again",
      ["recount", { facts: { cells: "Cordons I2" } }],
      "Count this vine again; nothing is decided on it before these cells are right: Cordons I2.",
    ],
    [
      "with one across on the other trunk",
      ["closeCall", { rival: "B", facts: { mineWith: "D", theirsWith: "C" } }],
      "Look at the vine: A and B on the left are equal in all that was written down. A goes with D, B with C.",
    ],
    [
      "with one across for it alone",
      ["closeCall", { rival: "B", facts: { mineWith: "D" } }],
      "Look at the vine: A and B on the left are equal in all that was written down.",
    ],
  ])("%s", (_why, reason, sentence) => {
    expect(said(...reason)).toBe(sentence);
  });

  test.each<[Argument["code"], Argument["facts"], string]>([
    ["spurs", { mine: 9, theirs: 8 }, "9 live spurs against 8"],
    [
      "spurs",
      { mine: 8, theirs: 8, mineLength: 30 * IN, theirsLength: 40 * IN },
      "8 live spurs on 30 in against 8 on 40 in",
    ],
    [
      "spurs",
      { mine: 8, theirs: 12, theirsLength: 60 * IN, wire: 40 * IN },
      "8 live spurs against 12, and B is longer than its wire (60 in for 40 in)",
    ],
    ["stretch", { mine: 1, theirs: 3 }, "longest gap 1 against 3"],
    ["stretch", { mine: 0, theirs: 3 }, "no gap against one of 3"],
    [
      "placing",
      { mine: 9, mineOf: 10, theirs: 4, theirsOf: 8, points: "down" },
      "9 of 10 spurs point down or sideways against 4 of 8",
    ],
    [
      "placing",
      { mine: 9, mineOf: 10, theirs: 4, theirsOf: 8, points: "up" },
      "9 of 10 spurs point up against 4 of 8",
    ],
    [
      "placing",
      { mine: 5, mineOf: 10, theirs: 4, theirsOf: 8, points: "up" },
      "its spurs point the better way",
    ],
    ["soundness", { mine: "sound", theirs: "injured" }, "it is sound, B is injured"],
    ["soundness", { theirs: "diseased" }, "it is not noted as hurt, B is diseased"],
    ["diameter", { mine: 1 * IN, theirs: 0.5 * IN }, "it is thicker, 1 in against 0.5 in"],
    [
      "ownTrunk",
      { trunk: 1, shared: 2 },
      "it comes from trunk 1, so that both cordons do not hang on trunk 2",
    ],
    [
      "ownTrunk",
      { trunk: "", shared: 2 },
      "it may come from a trunk of its own, but a trunk is not written down",
    ],
    [
      "ownTrunk",
      { trunk: 1, shared: "" },
      "it may come from a trunk of its own, but a trunk is not written down",
    ],
    [
      "ownTrunk",
      { trunk: 1, shared: 2, besideCane: "true" },
      "it comes from trunk 1 and the new cane across from another",
    ],
    [
      "ownTrunk",
      { trunk: "", shared: 2, besideCane: "true" },
      "it may come from a trunk of its own, but a trunk is not written down",
    ],
    [
      "trunkCondition",
      { trunk: 2, otherTrunk: 1, mine: "sound", theirs: "injured" },
      "its trunk 2 is sound, trunk 1 is injured",
    ],
    [
      "trunkCondition",
      { trunk: "", otherTrunk: 1, mine: "sound", theirs: "injured" },
      "its trunk is sound, that of B is injured",
    ],
    [
      "trunkCondition",
      { trunk: 2, otherTrunk: "", mine: "sound", theirs: "injured" },
      "its trunk is sound, that of B is injured",
    ],
  ])("an argument of %s, %p: %s", (code, facts, words) => {
    expect(said("better", { rival: "B", mine: [argument(code, facts)] })).toBe(
      `Keep A on the left: ${words}.`,
    );
  });

  test.each<[Reason["facts"], string]>([
    [{ weak: "spurs", spurs: 3, carry: 10 }, "it carries 3 live spurs where its wire should carry 10"],
    [{ weak: "stretch", gap: 1 }, "it has a gap of 1 position"],
    [
      { weak: "deadStretch", gap: 4, spurs: 1, carry: 10 },
      "one stretch of 4 places is dead, and 1 live spur is left where its wire should carry 10",
    ],
    [{ weak: "placing", well: 2, spurs: 8 }, "only 2 of its 8 spurs point the right way"],
    [{ weak: "soundness", condition: "injured" }, "it is injured"],
    [
      { weak: "diameter", diameter: 0.5 * IN, fullDiameter: 1 * IN },
      "it is 0.5 in thick, and 1 in is thick enough",
    ],
    [{ weak: "trunkCondition", trunk: 2, trunkCondition: "diseased" }, "its trunk 2 is diseased"],
  ])("what takes most from a cordon, %p: %s", (facts, words) => {
    expect(said("closeToNewCane", { facts: { ...SOUND, ...facts } })).toBe(
      `Look at the vine: A on the left may be worth keeping, or a new cane may be better; ${words}.`,
    );
  });

  test("two arguments are told at most, and a second one from a quarter of the first on", () => {
    const gap = (weight: number) => ({ ...GAP, weight });
    const thick = argument("diameter", { mine: 1 * IN, theirs: 0.5 * IN }, 0.9);
    const kept = (...mine: Argument[]) => said("better", { rival: "B", mine });
    expect(kept(SPURS, gap(0.25))).toBe(
      "Keep A on the left: 9 live spurs against 8; longest gap 1 against 3.",
    );
    expect(kept(SPURS, gap(0.24))).toBe("Keep A on the left: 9 live spurs against 8.");
    expect(kept(SPURS, thick, gap(0.8))).toBe(
      "Keep A on the left: 9 live spurs against 8; it is thicker, 1 in against 0.5 in.",
    );
  });

  test("one question holds both sides of a vine, who goes with whom and what speaks for each", () => {
    const left = { side: "left", cordon: "A", rival: "B", mine: [SPURS], theirs: [GAP], facts: {} };
    const right = {
      side: "right",
      cordon: "C",
      mine: [],
      theirs: [],
      facts: { ...SOUND, weak: "stretch", gap: 3 },
    };
    const asked = (question: Reason["question"]) => said("closeCall", { rival: "B", question });
    expect(asked([left, right])).toBe(
      "Look at the vine: A or B on the left; C or a new cane on the right: it has a gap of 3 positions. For A: 9 live spurs against 8. For B: longest gap 1 against 3.",
    );
    const pair = { ...left, mine: [], theirs: [], facts: { mineWith: "D", theirsWith: "C" } };
    const across = { side: "right", cordon: "D", rival: "C", mine: [], theirs: [], facts: {} };
    expect(asked([pair, across])).toBe(
      "Look at the vine: A or B on the left; D or C on the right. A goes with D, B with C.",
    );
    expect(asked([{ ...pair, facts: { mineWith: "D" } }, across])).toBe(
      "Look at the vine: A or B on the left; D or C on the right.",
    );
  });

  test("in the language and the units of who reads", () => {
    expect(reasonSentence(because("remnant", { facts: { length: 0.2 } }), "es", "metric")).toContain("20 cm");
    expect(reasonSentence(because("trunkDead", { facts: { trunk: 2 } }), "fr", "metric")).toContain(
      "à gauche",
    );
  });

  test("the strongest argument against a cordon is the first one for its rival", () => {
    const against = (reason: Partial<Reason>) => strongestAgainst(because("worse", reason), "en", "US");
    expect(against({ rival: "B", theirs: [SPURS, GAP] })).toBe("9 live spurs against 8");
    expect(
      against({ rival: "B", theirs: [argument("soundness", { mine: "sound", theirs: "injured" })] }),
    ).toBe("it is sound, A is injured");
    expect(against({ rival: "B", mine: [SPURS] })).toBeUndefined();
    expect(against({ theirs: [SPURS] })).toBeUndefined();
  });
});
