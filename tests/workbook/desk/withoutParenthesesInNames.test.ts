import { STOOD_FOR, withoutParenthesesInNames } from "../../../src/workbook/desk/withoutParenthesesInNames";

const restored = (formula: string) => formula.replace(/[\uE0A8\uE0A9]/g, (sign) => STOOD_FOR[sign]);

describe("parentheses in the column names of a formula", () => {
  test.each([
    "=SUM(Vines[Prunings (lb)])",
    "=SUM(Vines[[Prunings (lb)]])",
    "=SUM(Vines[[#This Row],[Prunings (lb)]],(1+2))",
    "=IF(Vines[Prunings (lb)]>0,\"[a (b)]\",'Old (2024)'!A1)",
  ])("%s: none is left inside brackets, and all come back", (formula) => {
    const hidden = withoutParenthesesInNames(formula);
    expect(hidden).toHaveLength(formula.length);
    expect(hidden).not.toBe(formula);
    expect(hidden).not.toContain("(lb)");
    expect(restored(hidden)).toBe(formula);
  });

  test("texts, sheet names and the formula's own parentheses are left alone", () => {
    for (const formula of ["=(1+2)*SUM(A1:A9)", '="[a (b)]"', "='Old [2024] (b)'!A1", "=SUM(Vines[Vine])"])
      expect(withoutParenthesesInNames(formula)).toBe(formula);
  });
});
