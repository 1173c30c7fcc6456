import { FUNCTIONS } from "../../../src/functions/registry";
import { functionHelp, searchHelp, shownValues } from "../../../src/functions/functionHelp";
import { insertFormula } from "../../../src/taskpane/functions/insertFormula";
import type { Pane } from "../../../src/taskpane/pane";
import { LANGUAGES } from "../../../src/texts/language";
import { FUNCTIONS_TEXTS } from "../../../src/texts/pane";
import { MemoryWorkbook } from "../../workbook/memory/memoryWorkbook";

describe.each(LANGUAGES)("help in %s", (language) => {
  test("explains every function of the registry with all its parameters and an example", () => {
    const help = functionHelp(language);
    expect(help.map(({ id }) => id)).toEqual(FUNCTIONS.map(({ id }) => id));
    help.forEach((one, index) => {
      expect(one.parameters).toHaveLength(FUNCTIONS[index].parameters.length);
      expect(one.examples.length).toBeGreaterThan(0);
      expect(JSON.stringify(one)).not.toMatch(/\{\w+\}/);
    });
  });
});

test.each([
  { why: "a name", search: "nodebudget", found: "NODEBUDGET" },
  { why: "words of the description in any order", search: "prunings balanced", found: "NODEBUDGET" },
  { why: "a parameter", search: "confidence dead", found: "BUDINJURY" },
])("search finds by $why", ({ search, found }) => {
  expect(searchHelp(functionHelp("en"), search).map(({ id }) => id)).toContain(found);
});

test("search needs every word and forgives accents", () => {
  expect(searchHelp(functionHelp("en"), "nodebudget elephant")).toEqual([]);
  expect(searchHelp(functionHelp("es"), "formula")).toEqual(searchHelp(functionHelp("es"), "FÓRMULA"));
});

test("values are written in the language's own notation", () => {
  expect(shownValues([[1.5, "ask"], [true]], "fr")).toBe("1,5, ask; true");
});

describe("putting a formula into a cell", () => {
  const [help] = functionHelp("en");
  const formula = help.examples[0].formula;
  const insert = async (workbook: MemoryWorkbook, typed = formula) => {
    const told: unknown[] = [];
    const pane = { workbook, tell: (_intent: string, text: unknown) => told.push(text) };
    await insertFormula(pane as unknown as Pane, help, typed);
    return told;
  };

  test("writes it into the selected empty cell", async () => {
    const workbook = new MemoryWorkbook({ Plan: [["x"]] });
    await workbook.selectCell("Plan", 1, 2);
    expect(await insert(workbook)).toEqual([FUNCTIONS_TEXTS.inserted]);
    expect((await workbook.readSheet("Plan")).formulaAt(0, 1)).toBe(formula);
  });

  test("overwrites nothing", async () => {
    const workbook = new MemoryWorkbook({ Plan: [["x"]] });
    await workbook.selectCell("Plan", 1, 1);
    expect(await insert(workbook)).toEqual([FUNCTIONS_TEXTS.notEmpty]);
    expect((await workbook.readSheet("Plan")).values).toEqual([["x"]]);
  });

  test("asks for a cell when none is selected, and for a formula when none is typed", async () => {
    const workbook = new MemoryWorkbook({ Plan: [["x"]] });
    expect(await insert(workbook)).toEqual([FUNCTIONS_TEXTS.noCell]);
    await workbook.selectCell("Plan", 5, 5);
    expect(await insert(workbook, "50")).toEqual([FUNCTIONS_TEXTS.noFormula]);
  });
});
