import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strToU8 } from "fflate";
import { FileWorkbook } from "../../../src/workbook/file/fileWorkbook";
import { openWorkbookBytes } from "../../../src/workbook/file/openWorkbook";
import { openWorkbookFile } from "../../../src/workbook/file/openWorkbookFile";
import { csvLine } from "../../../src/workbook/csvText";
import { jsonText } from "../../../src/workbook/withoutControls";
import { hasValidator, openXmlFaults } from "../../samples/openXmlFaults";
import { run } from "../../cli/testTerminal";
import { buildWorkbook, workbookParts, zipParts } from "./buildWorkbook";
import { zip64 } from "./zip64";

jest.setTimeout(60_000);

const folder = mkdtempSync(join(tmpdir(), "cordonbook-odd-"));
afterAll(() => rmSync(folder, { recursive: true }));

const SHEET =
  '<row r="1"><c r="A1" t="inlineStr"><is><t>Block</t></is></c></row><row r="2"><c r="A2"><v>7</v></c></row>';

describe.each([
  ["64-bit records", (parts: Record<string, string | Uint8Array>) => zip64(parts)],
  ["backslashes in its names", (parts: Record<string, string | Uint8Array>) => zip64(parts, "\\")],
])("a small workbook with %s", (_what, pack) => {
  const bytes = () => pack(workbookParts({ sheets: { Cordons: SHEET } }));

  test("is read alike from disk and from memory", async () => {
    const path = join(folder, "odd.xlsx");
    writeFileSync(path, bytes());
    const fromDisk = await openWorkbookFile(path);
    const fromMemory = await openWorkbookBytes("odd.xlsx", bytes());
    for (const book of [fromDisk, fromMemory])
      expect((await book.readSheet("Cordons")).values).toEqual([["Block"], [7]]);
    await fromDisk.close();
  });

  test("takes a sheet and marks of ours", async () => {
    const workbook = await FileWorkbook.open("odd.xlsx", bytes());
    await workbook.writeOwnSheet({ sheet: "Findings", headers: ["Cell"], rows: [["A2"]] });
    await workbook.markCells([{ sheet: "Cordons", row: 2, column: 1, severity: "ask" }]);
    const path = join(folder, "odd written.xlsx");
    writeFileSync(path, workbook.bytes());
    const book = await openWorkbookFile(path);
    expect((await book.readSheet("Findings")).values).toEqual([["Cell"], ["A2"]]);
    expect((await book.readSheet("Cordons")).values).toEqual([["Block"], [7]]);
    await book.close();
  });
});

test("a small workbook with 64-bit records has no more faults after it was written", async () => {
  const before = zip64(workbookParts({ sheets: { Cordons: SHEET } }));
  const workbook = await FileWorkbook.open("odd.xlsx", before);
  await workbook.writeCells("Cordons", [{ row: 2, column: 1, value: 8 }]);
  const faults = async (name: string, bytes: Uint8Array) => {
    writeFileSync(join(folder, name), bytes);
    return hasValidator ? openXmlFaults(join(folder, name)) : [];
  };
  expect(await faults("after.xlsx", workbook.bytes())).toEqual(await faults("before.xlsx", before));
});

describe("a part that reading does not need", () => {
  const parts = () => workbookParts({ sheets: { Cordons: SHEET } });
  const cases: [string, Record<string, string>][] = [
    ["[Content_Types].xml", { "[Content_Types].xml": "<Types><Override" }],
    ["xl/styles.xml", { "xl/styles.xml": "<styleSheet><fonts></styleSheet>" }],
    ["xl/styles.xml", { "xl/styles.xml": "no XML at all" }],
    [
      "xl/worksheets/sheet1.xml",
      { "xl/worksheets/sheet1.xml": '<worksheet><sheetData><row r="x"/></sheetData></worksheet>' },
    ],
  ];
  test.each(cases)("is named where it is not well formed: %s", async (part, changed) => {
    const bytes = zipParts({ ...parts(), ...changed });
    const workbook = await FileWorkbook.open("farm.xlsx", bytes);
    const writing = async () => {
      await workbook.writeOwnSheet({ sheet: "Findings", headers: ["Cell"], rows: [["A2"]] });
      await workbook.writeCells("Cordons", [{ row: 2, column: 1, value: 8 }]);
    };
    await expect(writing()).rejects.toMatchObject({
      code: "layoutUnknown",
      facts: { file: "farm.xlsx", part },
    });
  });

  test.each([
    ['<Relationship Id="rIdA" Target="a.xml"/>'],
    ['<Relationship Id="rIdA" Type="http://x/y" Target="http://[bad"/>'],
    ['<Relationship Id="rIdA" Type="http://x/y" Target="%E0%A4%A"/>'],
    ['<Relationship Id="RID1" Type="http://x/theme" Target="theme.xml"/>'],
  ])("is passed over where it is a relation like %s", async (relation) => {
    const all = parts();
    const name = "xl/_rels/workbook.xml.rels";
    const bytes = zipParts({
      ...all,
      [name]: String(all[name]).replace("</Relationships>", `${relation}</Relationships>`),
    });
    const workbook = await FileWorkbook.open("farm.xlsx", bytes);
    await workbook.writeOwnSheet({ sheet: "Findings", headers: ["Cell"], rows: [["A2"]] });
    await workbook.writeCells("Cordons", [{ row: 2, column: 1, value: 8 }]);
    await workbook.deleteOwnSheet("Findings");
    expect((await workbook.readSheet("Cordons")).values).toEqual([["Block"], [8]]);
  });
});

describe("values", () => {
  const valuesOf = async (row: string) => {
    const book = await openWorkbookBytes("a.xlsx", buildWorkbook({ sheets: { A: row } }));
    return (await book.readSheet("A")).values;
  };

  test.each(["0x10", "0b11", "0o7", " 0X1F"])("%s is no number", async (written) => {
    await expect(valuesOf(`<row r="1"><c r="A1"><v>${written}</v></c></row>`)).rejects.toMatchObject({
      code: "badNumber",
    });
  });

  test("minus zero is zero, in a workbook and in a csv file", async () => {
    const [[value]] = await valuesOf('<row r="1"><c r="A1"><v>-0</v></c></row>');
    expect(Object.is(value, 0)).toBe(true);
    const csv = await openWorkbookBytes("a.csv", strToU8("a,b\n-0,-0.0\n"));
    expect((await csv.readSheet("a")).values[1].map((each) => Object.is(each, 0))).toEqual([true, true]);
  });

  test("elements of other namespaces give a cell no value, those of the sheet's own under another prefix do", async () => {
    const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    expect(
      await valuesOf(
        `<row r="1"><c r="A1"><v>5</v><x:v xmlns:x="urn:other">6</x:v></c><c r="B1"><v xmlns="urn:other">6</v></c>` +
          `<c r="C1"><y:v xmlns:y="${main}">7</y:v></c></row>`,
      ),
    ).toEqual([[5, null, 7]]);
  });

  test("what stands within such an element, or within an extension, gives a cell no value either", async () => {
    const within = '<x:y xmlns:x="urn:other"><v>88</v><is><t>words</t></is><f>1+1</f></x:y>';
    const rich = "<is><r><rPr><b/><sz val='9'/></rPr><t>North </t></r><r><t>Bench</t></r></is>";
    expect(
      await valuesOf(
        `<row r="1"><c r="A1"><v>5</v>${within}</c><c r="B1">${within}<v>6</v></c><c r="C1">${within}</c>` +
          `<c r="D1"><v>7</v><extLst><ext uri="u"><v>66</v></ext></extLst></c><c r="E1" t="inlineStr">${rich}</c>` +
          `<c r="F1"><v>4${within}2</v></c></row>`,
      ),
    ).toEqual([[5, 6, null, 7, "North Bench", 42]]);
  });

  test("a text longer than a cell is cut where a spreadsheet would refuse the file", async () => {
    const workbook = await FileWorkbook.open("a.xlsx", buildWorkbook());
    await workbook.writeOwnSheet({ sheet: "Ours", headers: ["A"], rows: [["x".repeat(40_000)]] });
    const [, [text]] = (await workbook.readSheet("Ours")).values;
    expect(String(text)).toBe(`${"x".repeat(32_766)}…`);
  });

  test("a sentence shows no more than a thousand characters of a cell", async () => {
    const path = join(folder, "long.csv");
    writeFileSync(path, `Block,Row,Vine,Side,Cordon,Live spurs\n${"x".repeat(30_000)},1,1,left,A,-4\n`);
    const { exitCode, out } = await run(["check", path]);
    const sentence = out.split("\n").find((line) => line.startsWith("  F2 "))!;
    expect([exitCode, sentence]).toEqual([
      1,
      expect.stringContaining(`${"x".repeat(999)}…: Live spurs is -4; it must lie`),
    ]);
    expect(sentence.length).toBeLessThan(1200);
  });
});

describe("words that act", () => {
  const WORDS = "a\u001b[31mb\u0007c\u009bd\u009de\u202ef\u200eg";
  // eslint-disable-next-line no-control-regex
  const RAW = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/;

  test.each(["text", "csv", "json"])("never reach the terminal raw: %s", async (format) => {
    const path = join(folder, `${WORDS}.csv`);
    writeFileSync(
      path,
      `Block,Row,Vine,Side,Cordon,Live spurs\n${WORDS},1,1,left,A,${WORDS}\n${WORDS},1,1,left,A,-4\n`,
    );
    for (const command of ["check", "choose", "gaps"]) {
      const { out, told } = await run([command, path, "--format", format]);
      expect(out.length).toBeGreaterThan(20);
      expect(out).not.toMatch(RAW);
      expect(told).not.toMatch(RAW);
    }
    const missing = await run(["check", join(folder, `none ${WORDS}.csv`)]);
    expect([missing.exitCode, RAW.test(missing.told)]).toEqual([2, false]);
  });

  test("are escapes in JSON, so that nothing is lost", () => {
    expect(jsonText({ a: WORDS })).not.toMatch(RAW);
    expect(JSON.parse(jsonText({ a: WORDS }))).toEqual({ a: WORDS });
  });

  test("do not stand on printed cards", async () => {
    const path = join(folder, "cards.csv");
    const html = join(folder, "cards.html");
    writeFileSync(path, `Block,Row,Vine,Side,Cordon,Live spurs,Positions\n${WORDS},1,1,left,A,3,8\n`);
    const { exitCode } = await run(["cards", path, "--html", html]);
    const printed = readFileSync(html, "utf8");
    expect([exitCode, RAW.test(printed)]).toEqual([0, false]);
    expect(printed).toContain("a [31mb c d e f g");
  });

  test("are no formula in any csv reader: full width, and after a semicolon", () => {
    expect(csvLine(["\uff1d1+1", "\uff0b1", "\uff0d1", "\uff20x", "a;=1+1"])).toBe(
      "'\uff1d1+1,'\uff0b1,'\uff0d1,'\uff20x,\"a;=1+1\"",
    );
  });
});

test.each([
  [`=${"(".repeat(1000)}1${")".repeat(1000)}`, "#VALUE! At position 66 more than 64 parentheses"],
  [`=${"-".repeat(5000)}1`, "more than 64 parentheses"],
  [`=${"1+".repeat(5000)}1`, "#VALUE! The formula is longer than 8192 characters"],
  ["=1E308*10", "#NUM! The result is too large"],
  ["=1E999", "#NUM! The result is too large"],
])("a formula without measure comes to an error and a sentence", async (formula, sentence) => {
  const { exitCode, out } = await run(["formula", formula]);
  expect([exitCode, out]).toEqual([1, expect.stringContaining(sentence)]);
});
