import Papa from "papaparse";
import { csvLine } from "../../src/workbook/csvText";

test.each([
  ["=1+1", "'=1+1"],
  ["+1", "'+1"],
  ["-1+2", "'-1+2"],
  ["@SUM(A1)", "'@SUM(A1)"],
  ["\t=1", "'\t=1"],
  ["\r=1", "'\r=1"],
  ["  =1", "'  =1"],
  ["plain", "plain"],
])("text that would run as a formula is written as text: %j", (text, expected) => {
  expect(Papa.parse<string[]>(csvLine([text, "x"])).data[0]).toEqual([expected, "x"]);
});

test("numbers stay numbers, blanks stay blank, delimiters and quotes are kept", () => {
  expect(csvLine([-2.5, null, undefined, true, 'a "b", c'])).toBe('-2.5,,,true,"a ""b"", c"');
  expect(csvLine(["a;b", 1], ";")).toBe('"a;b";1');
});
