import { formulaCommand } from "../../src/cli/formulaCommand";
import { evaluateFormula } from "../../src/functions/evaluateFormula";
import { LANGUAGES } from "../../src/texts/language";

const gives = (formula: string) => {
  const outcome = evaluateFormula(formula);
  if ("error" in outcome) throw new Error(outcome.sentence);
  return outcome.values;
};

describe("formulas outside a spreadsheet", () => {
  test.each([
    { formula: "=1+2*3", values: [[7]], why: "multiplication before addition" },
    { formula: "=(1+2)*3", values: [[9]], why: "parentheses first" },
    { formula: "=10-4-3", values: [[3]], why: "from left to right" },
    { formula: "=12/4/3", values: [[1]], why: "from left to right" },
    { formula: "=-2+5", values: [[3]], why: "a sign before a number" },
    { formula: "=--2", values: [[2]], why: "two signs" },
    { formula: "=50%", values: [[0.5]], why: "a percentage" },
    { formula: "=50%%", values: [[0.005]], why: "a percentage of a percentage" },
    { formula: "=-50%*4", values: [[-2]], why: "sign and percentage" },
    { formula: "=1.5e2", values: [[150]], why: "scientific notation" },
    { formula: "= .5 + 1. ", values: [[1.5]], why: "spaces, and points at either end" },
    { formula: '="a ""b"""', values: [['a "b"']], why: "doubled quotation marks" },
    { formula: "=TRUE", values: [[true]], why: "a logical value" },
    {
      formula: "={1,2;3,4}",
      values: [
        [1, 2],
        [3, 4],
      ],
      why: "a list, comma across and semicolon down",
    },
    { formula: "={1;2}*10", values: [[10], [20]], why: "a list and a number" },
    { formula: "={1;2}+{10;20}", values: [[11], [22]], why: "two lists" },
    { formula: "={-1;50%}", values: [[-1], [0.5]], why: "signs and percentages in a list" },
    { formula: "1+1", values: [[2]], why: "without the equals sign" },
    { formula: "=cordon.clusters(24,2)", values: [[48]], why: "lower case" },
    { formula: "=CORDON.VINECROP(CORDON.CLUSTERS(24,2),0.25)/2", values: [[6]], why: "a call in a call" },
    {
      formula: "=_xldudf_CORDON_CLUSTERS(24,2)".replace("_xldudf_", ""),
      values: [[48]],
      why: "the stored name",
    },
    {
      formula: '=CORDON.NODEBUDGET(3,"30+10",,,40)',
      values: [[40]],
      why: "arguments left out between commas",
    },
    { formula: '=CORDON.NODEBUDGET({3;"";1},"30+10")', values: [[50], [""], [30]], why: "a blank in a list" },
    { formula: "=CORDON.VERSION()", values: gives("=CORDON.VERSION()"), why: "no arguments" },
  ])("$formula: $why", ({ formula, values }) => {
    expect(gives(formula)).toEqual(values);
  });

  test.each([
    { formula: "", code: "empty", says: "CORDON.NODEBUDGET" },
    { formula: "=", code: "empty", says: "empty" },
    { formula: "=1+", code: "unexpectedEnd", says: "position 4" },
    { formula: "=1 2", code: "unexpected", says: "“2” at position 4" },
    { formula: "=*2", code: "unexpected", says: "“*” at position 2" },
    { formula: "=(1+2", code: "unclosedParenthesis", says: "position 2" },
    { formula: "=1+2)", code: "unexpected", says: "“)” at position 5" },
    { formula: "=CORDON.CLUSTERS(24,2", code: "unclosedParenthesis", says: "position 17" },
    { formula: "=CORDON.CLUSTERS(24 2)", code: "unexpected", says: "“2” at position 21" },
    { formula: "=CORDON.CLUSTERS", code: "missingParenthesis", says: "CORDON.CLUSTERS" },
    { formula: '="abc', code: "unclosedText", says: "position 2" },
    { formula: "={1;2", code: "unclosedBrace", says: "position 2" },
    { formula: "={1,2;3}", code: "raggedArray", says: "position 2" },
    { formula: "=1#2", code: "unexpected", says: "“#” at position 3" },
    { formula: "=CORDON.CLUSTER(24,2)", code: "unknownFunction", says: "CORDON.CLUSTERS?" },
    { formula: "=CORDON.NODESBUDGET(3)", code: "unknownFunction", says: "CORDON.NODEBUDGET?" },
    { formula: "=CLUSTERS(24,2)", code: "unknownFunction", says: "CORDON.CLUSTERS?" },
    { formula: "=SUM(1,2)", code: "otherFunction", says: "SUM at position 2" },
    { formula: "=CORDON.CLUSTERS(A1,2)", code: "noSheet", says: "A1 at position 18" },
    { formula: "=CORDON.CLUSTERS(A1:A9,2)", code: "noSheet", says: "A1:A9" },
    { formula: "=CORDON.CLUSTERS('My sheet'!A1,2)", code: "noSheet", says: "'My sheet'!A1" },
    { formula: "=CORDON.GAPSBYROW(Cordons[#All])", code: "noSheet", says: "Cordons[#All]" },
    { formula: "={1;2}+{1;2;3}", code: "differentSizes", says: "2 x 1" },
  ])("$formula: $says", ({ formula, code, says }) => {
    const outcome = evaluateFormula(formula);
    if (!("error" in outcome)) throw new Error("not refused");
    expect(outcome.code).toBe(code);
    expect(outcome.sentence).toContain(says);
    for (const language of LANGUAGES) {
      const same = evaluateFormula(formula, language);
      expect(same).toMatchObject({ code });
      expect((same as { sentence: string }).sentence).not.toMatch(/\{[a-zA-Z]+\}/);
    }
  });

  test("errors inside a list stay in their cell", () => {
    expect(gives("={1;0}/0")[0][0]).toMatchObject({ error: "#DIV/0!" });
    expect(gives('={1;"x"}*2')).toEqual([[2], [expect.objectContaining({ error: "#VALUE!" })]]);
    expect(gives("={1;#N/A}+1")[1][0]).toMatchObject({ error: "#N/A" });
  });

  test("the error of an inner call is the error of the formula, with the inner sentence", () => {
    expect(evaluateFormula('=CORDON.VINECROP(CORDON.CLUSTERS("x",2),0.25)')).toMatchObject({
      error: "#VALUE!",
      sentence: expect.stringContaining("shoots"),
    });
  });
});

describe("the command formula", () => {
  test("prints a value", () => {
    expect(formulaCommand('=CORDON.NODEBUDGET(3,"30+10")')).toEqual({ lines: ["50"], exitCode: 0 });
  });

  test("prints a matrix with tabs, a line a row", () => {
    expect(formulaCommand('=CORDON.SPURFIT(40,2,{3;4},6,"US",2)').lines).toEqual(["20\t12\t16", "20\t16\t8"]);
  });

  test("prints the error and its sentence, exit code 1", () => {
    const { lines, exitCode } = formulaCommand('=CORDON.NODESAFTERINJURY(40,17%,"MSU 2002")');
    expect(exitCode).toBe(1);
    expect(lines).toEqual([expect.stringMatching(/^#N\/A 17 % .*MSU 2002.*\.$/)]);
  });

  test("prints good cells and the sentences of bad ones below, exit code 1", () => {
    const { lines, exitCode } = formulaCommand('=CORDON.CLUSTERS({24;"x";TRUE},2)');
    expect(exitCode).toBe(1);
    expect(lines.slice(0, 3)).toEqual(["48", "#VALUE!", "#VALUE!"]);
    expect(lines.slice(3)).toEqual([expect.stringContaining("“x”"), expect.stringContaining("TRUE")]);
  });

  test("prints numbers with a spreadsheet's fifteen digits", () => {
    expect(formulaCommand("=0.1+0.2").lines).toEqual(["0.3"]);
  });
});
