import Papa from "papaparse";
import { csvLine, csvResultLine } from "../../src/workbook/csvText";

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

test.each([
  "x;=1+1;y",
  'x; =HYPERLINK("a");',
  'x;"=1+1;',
  "x;\uff1d1+1;",
  "x\n=1+1\ny",
  "x\r\n@SUM(A1)\r\n",
  "x;;-1+1;",
  "x\t+1\t",
])("results with %j hold no formula for a reader that parts cells at another sign", (text) => {
  const line = csvResultLine(["farm", 3, text, "end"]);
  for (const delimiter of [";", "\t"])
    for (const cell of Papa.parse<string[]>(line, { delimiter }).data.flat())
      expect(cell.trimStart()).not.toMatch(/^"?[=+\-@\uff1d\uff0b\uff0d\uff20]/);
  // Such a reader heeds no quote in the middle of a line: every sign parts cells, and every line end lines.
  for (const cell of line.split(/[;\t\r\n]/))
    expect(cell.replace(/^[\s"]+/, "")).not.toMatch(/^[=+\-@\uff1d\uff0b\uff0d\uff20]/);
});
