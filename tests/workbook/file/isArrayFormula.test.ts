import { isArrayFormula } from "../../../src/workbook/file/isArrayFormula";

test.each([
  ["=SUM(B2:B4)", false],
  ["=SUM(B2:B4,C2)/COUNT(B2:B4)", false],
  ["=SUMPRODUCT(B2:B4*(C2:C4>1))", false],
  ["=VLOOKUP(A1,'Bud cuts'!A2:C9,2,FALSE)", false],
  ["=CORDON.SHOOTS(Vines[Count],2)", false],
  ["=Vines[[#This Row],[Count]]*2", false],
  ['="A1:A3"&A1', false],
  ["=B2+C2*$D$1", false],
  ["=SUM(B2:B4*C2:C4)", true],
  ["=SUM(IF(Vines[Count]>1,1,0))", true],
  ["=MAX(ABS($B$2:$B$4))", true],
  ["=A1:A3", true],
  ["=SUM({1,2}*A1)", true],
  ["=SEQUENCE(1)", true],
])("%s is stored as an array: %s", (formula, expected) => {
  expect(isArrayFormula(formula)).toBe(expected);
});
