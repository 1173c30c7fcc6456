import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { CellValue } from "../../../src/survey/sheets/cell";
import type { SheetArea } from "../../../src/survey/reading/sheetArea";
import { openWorkbookBytes, type OpenWorkbook } from "../../../src/workbook/file/openWorkbook";
import { openWorkbookFile } from "../../../src/workbook/file/openWorkbookFile";
import { sheetTables } from "../../../src/workbook/file/workbookOutline";
import { bytesPackage } from "../../../src/workbook/file/bytesPackage";
import { READ_LIMITS } from "../../../src/workbook/file/readLimits";
import { writeXlsx } from "../../../sample-workbooks/make/writeXlsx";
import { buildWorkbook, workbookParts, zipParts, type BuiltWorkbook } from "./buildWorkbook";

const folder = mkdtempSync(join(tmpdir(), "cordonbook-read-"));
afterAll(() => rmSync(folder, { recursive: true }));

const WAYS: [string, (bytes: Uint8Array) => Promise<OpenWorkbook>][] = [
  ["from memory", (bytes) => openWorkbookBytes("book.xlsx", bytes)],
  [
    "from disk",
    (bytes) => {
      const path = join(folder, "book.xlsx");
      writeFileSync(path, bytes);
      return openWorkbookFile(path);
    },
  ],
];

describe.each(WAYS)("a workbook read %s", (_way, open) => {
  async function read(built: BuiltWorkbook, sheet = "Sheet1"): Promise<SheetArea> {
    const book = await open(buildWorkbook(built));
    const area = await book.readSheet(sheet);
    await book.close();
    return area;
  }
  const firstCell = async (cell: string, built: BuiltWorkbook = {}): Promise<CellValue> =>
    (await read({ ...built, sheets: { Sheet1: `<row r="1">${cell}</row>` } })).values[0]?.[0] ?? null;

  test.each([
    ["a number", '<c r="A1"><v>2.55</v></c>', 2.55],
    ["a number in scientific notation", '<c r="A1"><v>1.5E-3</v></c>', 0.0015],
    ["a shared text", '<c r="A1" t="s"><v>1</v></c>', "Creek Side"],
    ["a rich text without its pronunciation guide", '<c r="A1" t="s"><v>2</v></c>', "dead spur"],
    ["an inline text", '<c r="A1" t="inlineStr"><is><t>North &amp; Bench</t></is></c>', "North & Bench"],
    ["an inline rich text", '<c r="A1" t="inlineStr"><is><r><t>a</t></r><r><t>b</t></r></is></c>', "ab"],
    ["a formula's text", '<c r="A1" t="str"><f>"x"</f><v>x</v></c>', "x"],
    ["an escaped line end", '<c r="A1" t="inlineStr"><is><t>a_x000A_b</t></is></c>', "a\nb"],
    ["true", '<c r="A1" t="b"><v>1</v></c>', true],
    ["false", '<c r="A1" t="b"><v>0</v></c>', false],
    ["an error", '<c r="A1" t="e"><v>#N/A</v></c>', { error: "#N/A" }],
    ["a day as ISO text", '<c r="A1" t="d"><v>2026-01-12</v></c>', 46034],
    ["a moment as ISO text", '<c r="A1" t="d"><v>2026-01-12T12:00:00</v></c>', 46034.5],
    ["text in a CDATA section", '<c r="A1" t="inlineStr"><is><t><![CDATA[<b>]]></t></is></c>', "<b>"],
  ])("gives %s", async (_what, cell, expected) => {
    const strings =
      "<si><t>North Bench</t></si><si><t>Creek Side</t></si>" +
      "<si><r><t>dead</t></r><r><t> spur</t></r><rPh sb='0' eb='1'><t>ded</t></rPh></si>";
    expect(await firstCell(cell, { strings })).toEqual(expected);
  });

  test("keeps row and column numbers where rows and cells are left out", async () => {
    const area = await read({
      sheets: { Sheet1: '<row r="3"><c r="C3"><v>1</v></c></row><row r="6"><c r="B6"><v>2</v></c></row>' },
    });
    expect(area).toMatchObject({ firstRow: 3, firstColumn: 2 });
    expect(area.values).toEqual([
      [null, 1],
      [null, null],
      [null, null],
      [2, null],
    ]);
  });

  test("counts rows and cells on where their numbers are left out", async () => {
    const area = await read({
      sheets: { Sheet1: '<row><c><v>1</v></c><c><v>2</v></c></row><row r="4"><c><v>3</v></c></row>' },
    });
    expect(area.values).toEqual([
      [1, 2],
      [null, null],
      [null, null],
      [3, null],
    ]);
  });

  test("does not take formatted blank cells, or what the sheet says of its size, for content", async () => {
    const area = await read({
      sheets: { Sheet1: '<row r="1"><c r="A1"><v>1</v></c></row><row r="9"><c r="Z9" s="0"/></row>' },
    });
    expect(area.values).toEqual([[1]]);
  });

  test("moves days of workbooks that count from 1904, and nothing else", async () => {
    const styles =
      '<numFmts count="1"><numFmt numFmtId="164" formatCode="0.0&quot; days&quot;"/></numFmts>' +
      '<cellStyleXfs count="1"><xf numFmtId="14"/></cellStyleXfs>' +
      '<cellXfs count="3"><xf numFmtId="0"/><xf numFmtId="14"/><xf numFmtId="164"/></cellXfs>';
    const sheets = {
      Sheet1:
        '<row r="1"><c r="A1" s="1"><v>44572</v></c><c r="B1" s="2"><v>30</v></c><c r="C1"><v>30</v></c></row>',
    };
    expect((await read({ styles, sheets, workbookPr: 'date1904="1"' })).values).toEqual([[46034, 30, 30]]);
    expect((await read({ styles, sheets })).values).toEqual([[44572, 30, 30]]);
  });

  test("reads strict files and files with namespace prefixes", async () => {
    const cell = '<row r="1"><c r="A1"><v>7</v></c></row>';
    expect((await read({ strict: true, sheets: { Sheet1: cell } })).values).toEqual([[7]]);
    const prefixed =
      '<x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:sheetData><x:row r="1"><x:c r="A1"><x:v>7</x:v></x:c></x:row></x:sheetData></x:worksheet>';
    expect((await read({ parts: { "xl/worksheets/sheet1.xml": prefixed } })).values).toEqual([[7]]);
  });

  test("reads parts in UTF-16", async () => {
    const xml =
      '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData><row r="1"><c r="A1" t="inlineStr"><is><t>Sauvignon é</t></is></c></row></sheetData></worksheet>';
    const part = new Uint8Array(Buffer.from("\ufeff" + xml, "utf16le"));
    expect((await read({ parts: { "xl/worksheets/sheet1.xml": part } })).values).toEqual([["Sauvignon é"]]);
  });

  test("shows formulas as a person sees them, with the value that stood in the cell", async () => {
    const area = await read({
      sheets: {
        Sheet1:
          '<row r="1"><c r="A1"><f>_xldudf_CORDON_NODEBUDGET(3,"30+10")</f><v>50</v></c>' +
          '<c r="B1"><f>[2]!_xldudf_CORDON_VERSION()</f><v>1</v></c>' +
          '<c r="C1" t="str"><f>_xlfn.CONCAT("_xlfn.",A1)</f><v>x</v></c></row>' +
          '<row r="2"><c r="A2"><f t="shared" ref="A2:A4" si="0">B1*$C$1</f><v>1</v></c></row>' +
          '<row r="3"><c r="A3"><f t="shared" si="0"/><v>2</v></c></row>' +
          '<row r="4"><c r="A4" cm="1"><f t="array" ref="A4:B4">_xldudf_CORDON_BUDINJURY(15,148)</f><v>0.1</v></c><c r="B4"><v>0.06</v></c></row>',
      },
    });
    const formulas = area.values.map((row, r) => row.map((_, c) => area.formulaAt(r, c)));
    expect(formulas).toEqual([
      ['=CORDON.NODEBUDGET(3,"30+10")', "=CORDON.VERSION()", '=CONCAT("_xlfn.",A1)'],
      ["=B1*$C$1", null, null],
      ["=B2*$C$1", null, null],
      ["=CORDON.BUDINJURY(15,148)", null, null],
    ]);
    expect(area.values[3].slice(0, 2)).toEqual([0.1, 0.06]);
  });

  test("finds its parts by relations, wherever they stand", async () => {
    const parts = workbookParts({ sheets: { Sheet1: '<row r="1"><c r="A1"><v>5</v></c></row>' } });
    const moved: Record<string, string | Uint8Array> = {
      ...parts,
      "odd place/page.xml": parts["xl/worksheets/sheet1.xml"],
      "xl/_rels/workbook.xml.rels": String(parts["xl/_rels/workbook.xml.rels"]).replace(
        "worksheets/sheet1.xml",
        "../odd place/page.xml",
      ),
    };
    const { ["xl/worksheets/sheet1.xml"]: _gone, ...rest } = moved;
    const book = await open(zipParts(rest));
    expect((await book.readSheet("Sheet1")).values).toEqual([[5]]);
    await book.close();
  });

  test("lists sheets, names and refuses a sheet that is not there", async () => {
    const book = await open(
      buildWorkbook({
        sheets: { Blocks: "", "Bud cuts": "" },
        names:
          '<definedName name="Target">Blocks!$B$2</definedName><definedName name="_own" localSheetId="1" hidden="1">TRUE</definedName>',
      }),
    );
    expect(book.sheetNames).toEqual(["Blocks", "Bud cuts"]);
    expect(book.outline?.names).toEqual([
      { name: "Target", formula: "Blocks!$B$2", sheet: undefined, hidden: false },
      { name: "_own", formula: "TRUE", sheet: "Bud cuts", hidden: true },
    ]);
    await expect(book.readSheet("Vines")).rejects.toMatchObject({
      code: "noSheet",
      facts: { sheet: "Vines" },
    });
    expect((await book.readSheet("bud CUTS")).values).toEqual([]);
    await book.close();
  });

  test("hands rows over in batches and in order", async () => {
    const rows = Array.from(
      { length: 5000 },
      (_, i) => `<row r="${i + 1}"><c r="A${i + 1}"><v>${i}</v></c></row>`,
    );
    const book = await open(buildWorkbook({ sheets: { Sheet1: rows.join("") } }));
    const seen: number[] = [];
    let batches = 0;
    for await (const batch of book.rows("Sheet1")) {
      batches++;
      for (const row of batch) seen.push(row.values[0] as number);
    }
    expect(seen).toEqual(Array.from({ length: 5000 }, (_, i) => i));
    expect(batches).toBeGreaterThan(1);
    await book.close();
  });

  test("stops when asked to", async () => {
    const book = await open(buildWorkbook({ sheets: { Sheet1: '<row r="1"><c r="A1"><v>1</v></c></row>' } }));
    await expect(book.readSheet("Sheet1", { signal: AbortSignal.abort() })).rejects.toThrow();
    await book.close();
  });
});

test("tables are found through the sheet's relations", async () => {
  const bytes = await writeXlsx({
    sheets: [
      {
        name: "Cordons",
        rows: [["Block"], ["North Bench"]],
        tables: [{ name: "Cordons", range: "A1:A2", columns: [{ name: "Block" }] }],
      },
    ],
  });
  const book = await openWorkbookBytes("book.xlsx", bytes);
  const [sheet] = book.outline!.sheets;
  expect(await sheetTables(bytesPackage("book.xlsx", bytes), sheet, READ_LIMITS)).toMatchObject([
    { name: "Cordons", ref: "A1:A2" },
  ]);
});
