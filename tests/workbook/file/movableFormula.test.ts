import { columnLetters } from "../../../src/workbook/address";
import { movableFormula, numberOf } from "../../../src/workbook/file/movableFormula";
import { shownFormula, storedFormula } from "../../../src/workbook/storedFormula";

test.each([
  ["a plain reference", "A1", 1, 1, "B2"],
  ["fixed column and row", "$A1+A$1+$A$1", 2, 3, "$A3+D$1+$A$1"],
  ["a range", "SUM(A1:B2)", 1, 0, "SUM(A2:B3)"],
  ["whole columns and rows", "SUM(A:B,$C:C,2:3)", 1, 1, "SUM(B:C,$C:D,3:4)"],
  ["another sheet", "Vines!A1+'Bud cuts A1'!A1", 1, 0, "Vines!A2+'Bud cuts A1'!A2"],
  ["text that looks like a reference", '"A1"&A1', 1, 0, '"A1"&A2'],
  ["functions with a digit in their name", "LOG10(A1)+ATAN2(B1,C1)", 1, 0, "LOG10(A2)+ATAN2(B2,C2)"],
  ["names with a digit", "Rate_A1+x.B2+A1", 1, 0, "Rate_A1+x.B2+A2"],
  ["columns of a table", "T[A1]+T[[#This Row],[B2]]+A1", 1, 0, "T[A1]+T[[#This Row],[B2]]+A2"],
  ["the edge of the sheet", "A1", -1, -1, "XFD1048576"],
  ["columns past the last one", "XFE1+A1", 1, 0, "XFE1+A2"],
])("moves %s", (_what, formula, rows, columns, expected) => {
  expect(movableFormula(formula)(rows, columns)).toBe(expected);
});

test("letters and numbers of columns are each other's reverse up to the last column", () => {
  expect(columnLetters(16384)).toBe("XFD");
  for (let column = 1; column <= 16384; column++) expect(numberOf(columnLetters(column))).toBe(column);
});

test.each([
  ['=CORDON.NODEBUDGET(3,"30+10")', '_xldudf_CORDON_NODEBUDGET(3,"30+10")'],
  ["=SUM(CORDON.SHOOTS(A1,2),1)", "SUM(_xldudf_CORDON_SHOOTS(A1,2),1)"],
  ['="CORDON.SHOOTS("&A1', '"CORDON.SHOOTS("&A1'],
  ["=T.DIST.2T(A1,3)+STDEV.S(B1:B9)", "_xlfn.T.DIST.2T(A1,3)+_xlfn.STDEV.S(B1:B9)"],
  ["=SORT(FILTER(A1:A9,A1:A9>1))", "_xlfn._xlws.SORT(_xlfn._xlws.FILTER(A1:A9,A1:A9>1))"],
  // As the documentation of XlsxWriter writes it, "The Excel 365 LAMBDA() function".
  ["=LAMBDA(temp, (5/9) * (temp-32))(32)", "_xlfn.LAMBDA(_xlpm.temp, (5/9) * (_xlpm.temp-32))(32)"],
  ["=LET(a,A1,b,a+1,SUM(a,b))", "_xlfn.LET(_xlpm.a,A1,_xlpm.b,_xlpm.a+1,SUM(_xlpm.a,_xlpm.b))"],
  // As the same documentation writes it, "The Spilled Range Operator".
  ["=COUNTA(F2#)", "COUNTA(_xlfn.ANCHORARRAY(F2))"],
  ['="LET(x,1)"&LOG10(A1)', '"LET(x,1)"&LOG10(A1)'],
])("%s is stored as %s", (shown, stored) => {
  expect(storedFormula(shown)).toBe(stored);
  expect(shownFormula(stored)).toBe(shown);
});
