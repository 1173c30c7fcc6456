import { READ_LIMITS } from "../../../src/workbook/file/readLimits";
import { sheetRows } from "../../../src/workbook/file/sheetRows";
import { XmlParser } from "../../../src/workbook/file/xmlParser";
import { partOf, rowsTold, withoutPlainRows } from "./sheetText";

const row = (number: number, cells = `<c r="A${number}"><v>${number}</v></c>`) =>
  `<row r="${number}">${cells}</row>`;
const sheet = (rows: string) => `<worksheet><sheetData>${row(1)}${rows}</sheetData></worksheet>`;

const inChunks = (text: string) => text.match(/[^]{1,32768}/g)!;

describe("rows in the spelling in which spreadsheets write plain values", () => {
  afterEach(() => jest.restoreAllMocks());

  test.each([
    ["one value a cell", row(2, `<c r="A2" t="s"><v>0</v></c><c r="C2" s="3"><v>-1.5E-3</v></c>`)],
    ["attributes that spreadsheets add", `<row r="2" spans="1:3" x14ac:dyDescent="0.25">${row(2).slice(11)}`],
    [
      "cells and rows without content",
      `${row(2, `<c r="A2" s="1"/><c r="B2"></c>`)}<row r="4" ht="15"/>${row(5)}`,
    ],
    [
      "texts of formulas, truths, errors",
      row(2, `<c r="A2" t="str"><v>a b</v></c><c r="B2" t="b"><v>1</v></c><c r="C2" t="e"><v>#N/A</v></c>`),
    ],
    ["line ends between rows", `\n  ${row(2)}\n\t${row(3)}\n`],
  ])("%s are not given to the XML parser and mean the same", async (_what, rows) => {
    const whole = sheet(rows);
    const expected = await rowsTold(withoutPlainRows(whole));
    const write = jest.spyOn(XmlParser.prototype, "write");
    expect(await rowsTold([whole])).toEqual(expected);
    expect(expected.rows).not.toHaveLength(1);
    const parsed = write.mock.calls.map(([text]) => text).join("");
    expect(parsed.replace(/\s/g, "")).toBe(sheet("").replace(/\s/g, ""));
  });

  test.each([
    ["a formula", row(2, `<c r="A2"><f>B2+1</f><v>3</v></c>`)],
    ["an inline text", row(2, `<c r="A2" t="inlineStr"><is><t>caf\u00e9</t></is></c>`)],
    ["signs of XML", row(2, `<c r="A2" t="str"><v>a &lt; b &amp; c</v></c>`)],
    ["another order of attributes", row(2, `<c t="s" r="A2"><v>0</v></c>`)],
    ["other quotes", row(2).replaceAll('"', "'")],
    ["a comment with a row in it", `<!-- ${row(2)} -->${row(3)}`],
    ["a comment that begins behind a row without content", `<row r="2"/><!-- </row>${row(7)} -->${row(3)}`],
    ["an instruction with a row in it", `<?note ${row(2)}?>${row(3)}`],
    ["a row of a namespace", `<x:row r="2"><c r="A2"><v>1</v></c></x:row>${row(3)}`],
    ["rows without numbers", `<row><c><v>5</v></c></row><row><c><v>6</v></c></row>`],
    ["what no list may hold", `${row(2)}text${row(3)}`],
  ])("%s goes to the XML parser, and the rows behind it mean the same", async (_what, rows) => {
    const whole = sheet(`${rows}${row(20)}${row(21)}`);
    const told = await rowsTold([whole]);
    expect(told.problem).toBeUndefined();
    expect(told).toEqual(await rowsTold(withoutPlainRows(whole)));
    expect(told.rows?.at(-1)).toMatchObject({ number: 21, values: [21] });
  });

  test.each([
    ["the same attribute twice", `<row r="2" ht="15" ht="15">${row(2).slice(11)}`, "badXml"],
    ["the row's number twice", `<row r="2" r="2">${row(2).slice(11)}`, "badXml"],
    ["a cell that is not closed", row(2, `<c r="A2"><v>1</v>`), "badXml"],
    ["the end of a text that is no text", row(2, `<c r="A2" t="str"><v>]]></v></c>`), "badXml"],
    ["a row that comes twice", row(2) + row(2), "rowTwice"],
    ["a cell that comes twice", row(2, `<c r="A2"><v>1</v></c><c r="A2"><v>1</v></c>`), "cellTwice"],
    ["a cell of another row", row(2, `<c r="A3"><v>1</v></c>`), "badCell"],
    ["a number that is none", row(2, `<c r="A2"><v>1,5</v></c>`), "badNumber"],
    ["a text that is not in the list", row(2, `<c r="A2" t="s"><v>77</v></c>`), "badCell"],
    ["a column past the limit", row(2, `<c r="ZZZ2"><v>1</v></c>`), "columnPastLimit"],
    ["a row past the limit", row(9_000_000), "rowPastLimit"],
  ])("%s is refused as ever", async (_what, rows, code) => {
    const whole = sheet(rows + row(30));
    const told = await rowsTold([whole]);
    expect(told.problem?.code).toBe(code);
    expect(told.problem).toEqual((await rowsTold(withoutPlainRows(whole))).problem);
  });

  test("are the same wherever the bytes are cut", async () => {
    const whole = sheet(
      `${row(2)}<row r="3" ht="15"/>${row(4, `<c r="A4"><f>1</f><v>1</v></c>`)}<!-- </row> -->${row(5)}${row(6)}`,
    );
    const expected = await rowsTold(withoutPlainRows(whole));
    for (let at = 1; at < whole.length; at++)
      expect(await rowsTold([whole.slice(0, at), whole.slice(at)])).toEqual(expected);
    expect(await rowsTold([...whole])).toEqual(expected);
  });

  test("a row without end is refused before it is held", async () => {
    let written = 0;
    const chunks = function* () {
      yield `${sheet("").replace("</sheetData></worksheet>", "")}${row(2)}<row r="3"><c r="A3"><v>`;
      for (; written < 1e9; written += 50_000) yield "1".repeat(50_000);
    };
    const told = await rowsTold(chunks());
    expect(told.problem?.code).toBe("tooMuchText");
    expect(written).toBeLessThan(50 * READ_LIMITS.cellCharacters);
  });

  test("as many as a sheet has are no text without end for the XML parser", async () => {
    const rows = Array.from({ length: 150_000 }, (_, i) => row(i + 2));
    const foot = ["<!-- </row>", " --></sheetData></worksheet>"];
    const chunks = ["<worksheet><sheetData>", row(1), ...inChunks(rows.join("")), ...foot];
    expect(rows.join("").length).toBeGreaterThan(40 * READ_LIMITS.cellCharacters);
    expect((await rowsTold(chunks)).rows).toHaveLength(150_001);
  });

  test("come in batches no larger than the chunks of the part", async () => {
    const rows = Array.from({ length: 50 }, (_, i) => row(i + 2));
    const batches: number[] = [];
    const context = { sharedStrings: [], styles: undefined, startsIn1904: false };
    const chunks = ["<worksheet><sheetData>", row(1), ...rows, "</sheetData></worksheet>"];
    for await (const batch of sheetRows(partOf(chunks), "sheet", "A", context, READ_LIMITS))
      batches.push(batch.length);
    expect(batches).toEqual(Array.from({ length: 51 }, () => 1));
  });
});
