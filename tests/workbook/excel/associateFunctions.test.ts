import metadata from "../../../src/functions/functions.json";
import {
  associateFunctions,
  type CustomFunctionsRuntime,
} from "../../../src/workbook/excel/associateFunctions";
import type { Language } from "../../../src/texts/language";

type Bound = (...given: unknown[]) => unknown[][];

class ExcelError {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
}

function bound(language: Language = "en") {
  const functions = new Map<string, Bound>();
  const runtime = {
    associate: (id: string, each: Bound) => functions.set(id, each),
    Error: ExcelError,
    ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
  } as unknown as CustomFunctionsRuntime;
  associateFunctions(runtime, () => language);
  return functions;
}

const INVOCATION = { functionName: "CORDON.X", address: "Sheet1!A1" };

describe("functions bound in Excel's custom functions runtime", () => {
  test("every id of functions.json is bound, and nothing else", () => {
    expect([...bound().keys()].sort()).toEqual(metadata.functions.map(({ id }) => id).sort());
  });

  test("a call with omitted optional arguments and Excel's invocation at the end", () => {
    const nodeBudget = bound().get("NODEBUDGET")!;
    expect(nodeBudget([[3]], [["30+10"]], null, null, null, null, INVOCATION)).toEqual([[50]]);
  });

  test("a column spills; its bad row is an error of Excel's own with our sentence", () => {
    const [good, bad, blank] = bound().get("NODEBUDGET")!(
      [[3], ["x"], [""]],
      [["30+10"]],
      null,
      null,
      null,
      null,
    );
    expect(good).toEqual([50]);
    expect(bad[0]).toBeInstanceOf(ExcelError);
    expect(bad[0]).toMatchObject({ code: "#VALUE!", message: expect.stringContaining("“x”") });
    expect(blank).toEqual([""]);
  });

  test.each([
    ["a custom functions error", new ExcelError("#DIV/0!")],
    ["a data type error", { type: "Error", basicType: "Error", basicValue: "#DIV/0!", errorType: "Div0" }],
  ])("%s as an argument is named in the sentence", (_, error) => {
    expect(() => bound().get("CROPLOAD")!([[error]], [[1]])).toThrow(
      expect.objectContaining({ code: "#VALUE!", message: expect.stringContaining("#DIV/0!") }),
    );
  });

  test("a formatted number arrives as its number", () => {
    const formatted = { type: "FormattedNumber", basicValue: 9.8, numberFormat: "0.0" };
    expect(bound().get("CROPLOAD")!([[formatted]], [[9.8]])).toEqual([[1]]);
  });

  test("a rule outside its source's range is #N/A, in the person's language", () => {
    expect(() => bound("es").get("NODESAFTERINJURY")!([[40]], [[0.17]], [["MSU 2002"]])).toThrow(
      expect.objectContaining({
        code: "#N/A",
        message: expect.stringContaining("MSU 2002 cubre hasta 15 %"),
      }),
    );
  });

  test("a range handed over as one row of cells is still a range", () => {
    expect(bound().get("BLOCKMEAN")!([[40, 50, 60]], null, null, null)[0][0]).toBe(50);
  });
});
