import { edgesOfInjuryRule, INJURY_RULE_NAMES, injuryRule } from "../../src/domain/injuryRules";
import { nodesAfterEveryRule, nodesAfterInjury } from "../../src/domain/nodesAfterInjury";
import { Refusal } from "../../src/domain/refusal";
import { SOURCES } from "../../src/domain/sources";
import { REFUSALS } from "../../src/texts/refusals";
import { NODESAFTERINJURY_TEXT } from "../../src/texts/functions/injury";
import { checkRows, EXACT, half, type CheckRow } from "./checkRows";

const CORNELL = "Cornell Cooperative Extension, Northern NY Grape Update, 28 Feb 2014";
const MSU = "Zabadal, Michigan State University E-2774, 2002";
const PURDUE = "Purdue University, Double pruning grapevines";
const NORTHERN = "Particka, Northern Grapes Project, April 2014";
const PLAIN = "derived: nodes / (1 - dead), stated by no publication seen";

const row = (
  why: string,
  source: string,
  nodes: number,
  dead: number,
  rule: string,
  published: number,
  within: number,
): CheckRow => ({ why, source, ours: () => nodesAfterInjury(nodes, dead, rule), published, within });

checkRows("nodes after injury, a target of 40 live nodes", [
  row("the printed example: 35 % dead, 35 % more", CORNELL, 100, 0.35, "Cornell 2014", 135, EXACT),
  row("35 % dead", CORNELL, 40, 0.35, "Cornell 2014", 54, EXACT),
  row("15 % dead is below the 20 % from which it acts", CORNELL, 40, 0.15, "Cornell 2014", 40, EXACT),
  row("just below 20 %", CORNELL, 40, 0.1999, "Cornell 2014", 40, EXACT),
  row("from 20 %", CORNELL, 40, 0.2, "Cornell 2014", 48, EXACT),
  row("50 %", CORNELL, 40, 0.5, "Cornell 2014", 60, EXACT),
  row("80 % is still covered", CORNELL, 40, 0.8, "Cornell 2014", 72, EXACT),
  row("to 15 % as usual", MSU, 40, 0.15, "MSU 2002", 40, EXACT),
  row("from 20 % live nodes made up, our reading", MSU, 40, 0.2, "MSU 2002", 50, EXACT),
  row("50 % is still covered", MSU, 40, 0.5, "MSU 2002", 80, EXACT),
  row("14 % normal", PURDUE, 40, 0.14, "Purdue", 40, EXACT),
  row("15 to 35 %: 35 % more", PURDUE, 40, 0.2, "Purdue", 54, EXACT),
  row("35 to 50 %: 50 % more", PURDUE, 40, 0.4, "Purdue", 60, EXACT),
  row("50 % is still in a row", PURDUE, 40, 0.5, "Purdue", 60, EXACT),
  row("to 20 % as usual", NORTHERN, 40, 0.2, "Northern Grapes 2014", 40, EXACT),
  row("15 %", PLAIN, 40, 0.15, "compensation", 47.06, half(2)),
  row("20 %", PLAIN, 40, 0.2, "compensation", 50, EXACT),
  row("35 %", PLAIN, 40, 0.35, "compensation", 61.54, half(2)),
  row("80 %", PLAIN, 40, 0.8, "compensation", 200, 1e-6),
]);

checkRows("live nodes that Cornell's rule leaves of the 40", [
  ...[
    [0.15, 34.0],
    [0.2, 38.4],
    [0.35, 35.1],
    [0.5, 30.0],
    [0.8, 14.4],
  ].map(([dead, live]) => ({
    why: `${dead * 100} % dead`,
    source: "derived: N(1+m)(1-m)",
    ours: () => nodesAfterEveryRule(40, dead)[0].liveNodes!,
    published: live,
    within: half(1),
  })),
]);

describe("a rule asked where its source is silent gives no number", () => {
  test.each([
    ["Cornell 2014", 0.81, "cornellAbove80", "text above 80 % was cut off in the copy"],
    ["MSU 2002", 0.1501, "msuBetween15And20", "15 to 20 % stands in no row"],
    ["MSU 2002", 0.1999, "msuBetween15And20", "15 to 20 % stands in no row"],
    ["MSU 2002", 0.51, "msuAbove50", "advice without a number"],
    ["Purdue", 0.15, "purdueTwoRows", "0-15 and 15-35"],
    ["Purdue", 0.25, "purdueTwoRows", "15-35 and 25-50"],
    ["Purdue", 0.3, "purdueTwoRows", "15-35 and 25-50"],
    ["Purdue", 0.35, "purdueTwoRows", "15-35 and 25-50"],
    ["Purdue", 0.501, "purdueAbove50", "minimal pruning, no number"],
    ["Northern Grapes 2014", 0.21, "northernGrapesNoNumber", "leave more, not how many"],
    ["compensation", 1, "allDead", "division by nothing"],
  ])("%s at %p: %s (%s)", (rule, dead, code) => {
    expect(() => nodesAfterInjury(40, dead, rule)).toThrow(
      expect.objectContaining({ kind: "notAvailable", code }),
    );
  });

  test("Purdue's double rows name both answers", () => {
    const refusal = nodesAfterEveryRule(40, 0.3).find((answer) => answer.rule === "Purdue")?.refusal;
    expect(refusal?.facts).toMatchObject({ percent: 30, first: 54, second: 60 });
  });

  test("1 - 0.85, which is a hair above 0.15, meets the edge at 15 %", () => {
    expect(1 - 0.85).toBeGreaterThan(0.15);
    expect(nodesAfterInjury(40, 1 - 0.85, "MSU 2002")).toBe(40);
  });

  test("an unknown rule names the known ones", () => {
    expect(() => nodesAfterInjury(40, 0.2, "Oregon")).toThrow(
      expect.objectContaining({
        kind: "invalid",
        code: "unknownInjuryRule",
        facts: expect.objectContaining({ known: INJURY_RULE_NAMES }),
      }),
    );
  });

  test.each([NaN, -0.01, 1.01, Infinity])("a dead share of %p is invalid under every rule", (dead) => {
    for (const rule of INJURY_RULE_NAMES)
      expect(() => nodesAfterInjury(40, dead, rule)).toThrow(
        expect.objectContaining({ kind: "invalid", code: "outside" }),
      );
  });
});

test("side by side: every rule answers or says why not, and names its source", () => {
  for (const answer of nodesAfterEveryRule(40, 0.3)) {
    expect(Number.isFinite(answer.nodes)).toBe(answer.refusal === undefined);
    if (answer.refusal) expect(answer.refusal).toBeInstanceOf(Refusal);
    expect(SOURCES).toHaveProperty(injuryRule(answer.rule).source);
  }
});

describe.each(INJURY_RULE_NAMES)("the row of %s", (rule) => {
  const { steps, twice } = injuryRule(rule);

  test("says something of every share between its edges and at them, and no two things without a word for it", () => {
    const edges = [0, ...edgesOfInjuryRule(rule), 1];
    const between = edges.slice(1).map((edge, at) => (edge + edges[at]) / 2);
    for (const dead of [...edges, ...between]) {
      const said = (() => {
        try {
          return nodesAfterInjury(40, dead, rule);
        } catch (thrown) {
          return (thrown as Refusal).code;
        }
      })();
      if (typeof said === "string") expect(REFUSALS).toHaveProperty(said);
      else expect(said).toBeGreaterThanOrEqual(40);
    }
  });

  test("has a text for each refusal, and stands in the help of the function in every language", () => {
    const codes = [...steps.map(({ leave }) => leave), twice].filter((code) => typeof code === "string");
    for (const code of codes) expect(REFUSALS).toHaveProperty(code);
    for (const help of Object.values(NODESAFTERINJURY_TEXT.parameters.rule.description))
      expect(help).toContain(rule === "compensation" ? rule.slice(0, 4) : rule);
  });
});
