import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import * as foreign from "@e965/xlsx";
import ExcelJS from "exceljs";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { writeXlsx } from "hucre";
import type { Browser, Page } from "playwright-core";
import { emptyWorkbook } from "../../src/workbook/file/emptyWorkbook";
import { FileWorkbook } from "../../src/workbook/file/fileWorkbook";
import type { CellWrite, OwnSheet } from "../../src/workbook/surveyWorkbook";
import { hasValidator, openXmlFaults } from "../samples/openXmlFaults";
import { packageFaults } from "../samples/packageFaults";
import { buildWorkbook } from "../workbook/file/buildWorkbook";
import { withPersonsRemarks } from "../workbook/file/withPersonsRemarks";
import { startChromium } from "./chromium";
import type { CopiesPage } from "./pages/deskCopies";
import { scriptPage } from "./scriptFor";
import { spursChart, spursPivotSheet } from "../workbook/file/spursChart";

type Opened = Window & CopiesPage;

/** The validator of every copy takes its time. */

describe("copies saved from the desk page, as other programs read them", () => {
  const folder = mkdtempSync(path.join(tmpdir(), "cordonbook-copies-"));
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await startChromium();
    page = await scriptPage(browser, "tests/browser/pages/deskCopies.ts", "window.openFile");
  });
  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true });
  });

  const open = (bytes: Uint8Array, file = "season.xlsx") =>
    page.evaluate(([name, all]) => (window as unknown as Opened).openFile(name, all), [
      file,
      [...bytes],
    ] as const);
  const write = (sheet: string, cells: readonly CellWrite[]) =>
    page.evaluate(([name, all]) => (window as unknown as Opened).desk().writeCells(name, all), [
      sheet,
      cells,
    ] as const);
  const save = async (validates = true) => {
    const { bytes, notKept } = await page.evaluate(() => (window as unknown as Opened).saveCopy());
    const copy = new Uint8Array(bytes);
    const saved = path.join(folder, "copy.xlsx");
    writeFileSync(saved, copy);
    expect(packageFaults(copy)).toEqual([]);
    expect(hasValidator && validates ? await openXmlFaults(saved) : []).toEqual([]);
    return { copy, notKept: Object.fromEntries(notKept) };
  };
  const readAgain = async (copy: Uint8Array) => {
    // The library stumbles over formulas of whole columns in the parts of tables.
    const parts = unzipSync(copy);
    for (const part of Object.keys(parts).filter((name) => name.startsWith("xl/tables/")))
      parts[part] = strToU8(
        strFromU8(parts[part]).replace(/<calculatedColumnFormula>[^<]*<\/calculatedColumnFormula>/g, ""),
      );
    const book = new ExcelJS.Workbook();
    await book.xlsx.load(zipSync(parts).buffer as ArrayBuffer);
    return book.worksheets[0];
  };
  const textOf = (copy: Uint8Array, part: string) => strFromU8(unzipSync(copy)[part]);

  /** Block, counts, a column formula, days; a rule for typing and a format on the counts. */
  async function vines(date1904 = false): Promise<Uint8Array> {
    const book = new ExcelJS.Workbook();
    book.properties.date1904 = date1904;
    const sheet = book.addWorksheet("Vines");
    const double = (result: number) => ({ formula: "Vines[[#This Row],[Count]]*2", result });
    const day = (date: number) => new Date(Date.UTC(2026, 2, date));
    sheet.addTable({
      name: "Vines",
      ref: "A1",
      headerRow: true,
      columns: ["Block", "Count", "Double", "Day"].map((name) => ({ name, filterButton: true })),
      rows: [
        ["North Bench", 1, double(2), day(1)],
        ["Creek Side", 2, double(4), day(2)],
      ],
    });
    for (const row of [2, 3]) {
      sheet.getCell(row, 2).numFmt = "0.0";
      sheet.getCell(row, 4).numFmt = "yyyy-mm-dd";
      sheet.getCell(row, 2).dataValidation = { type: "whole", operator: "between", formulae: [0, 60] };
    }
    sheet.addConditionalFormatting({
      ref: "B2:B3",
      rules: [
        {
          type: "cellIs",
          operator: "greaterThan",
          formulae: [50],
          style: { font: { bold: true } },
          priority: 1,
        },
      ],
    });
    sheet.getCell("F1").value = { formula: "SUM(Vines[Count])", result: 3 };
    sheet.getCell("F2").value = { formula: "YEAR(D2)", result: 2026 };
    const written = unzipSync(new Uint8Array((await book.xlsx.writeBuffer()) as ArrayBuffer));
    const parts = Object.fromEntries(Object.entries(written).filter(([part]) => !part.endsWith("/")));
    const table = strFromU8(parts["xl/tables/table1.xml"]).replace(
      /(<tableColumn id="3" name="Double"[^>]*?)\/>/,
      "$1><calculatedColumnFormula>Vines[[#This Row],[Count]]*2</calculatedColumnFormula></tableColumn>",
    );
    parts["xl/tables/table1.xml"] = strToU8(table);
    // The library writes the properties of its font in an order that the schema does not have.
    const styles = strFromU8(parts["xl/styles.xml"]).replace(
      /<font>(?:(?!<\/font>).)*<\/font>/,
      '<font><sz val="11"/></font>',
    );
    parts["xl/styles.xml"] = strToU8(styles);
    return zipSync(parts);
  }

  const formula = (row: number, column: number, text: string): CellWrite => ({ row, column, formula: text });

  test("functions that came later keep their prefixes, formulas that fill cells their marks", async () => {
    await open(await vines());
    await write("Vines", [
      formula(1, 8, "=FILTER(B2:B3,B2:B3>0)"),
      formula(5, 8, "=LET(x,2,x*3)"),
      formula(6, 8, "=SUM(B2:B3*B2:B3)"),
      formula(7, 8, "=STDEV.S(B2:B3)"),
      formula(8, 8, "=LAMBDA(a,b,a+b)(1,2)"),
      formula(9, 8, "=SUM(B2:B3)"),
    ]);
    const { copy, notKept } = await save();
    expect(notKept).toEqual({});
    const sheet = await readAgain(copy);
    const at = (cell: string) => sheet.getCell(cell).value;
    // FILTER keeps both counts, 1 and 2; LET 2 * 3; 1 * 1 + 2 * 2; the standard deviation of 1 and 2 is the root of 1/2.
    expect(at("H1")).toMatchObject({
      formula: "_xlfn._xlws.FILTER(B2:B3,B2:B3>0)",
      shareType: "array",
      ref: "H1:H2",
      result: 1,
    });
    expect(at("H2")).toBe(2);
    expect(at("H5")).toMatchObject({ formula: "_xlfn.LET(_xlpm.x,2,_xlpm.x*3)", result: 6 });
    expect(at("H6")).toMatchObject({ formula: "SUM(B2:B3*B2:B3)", shareType: "array", ref: "H6", result: 5 });
    expect(at("H7")).toMatchObject({
      formula: "_xlfn.STDEV.S(B2:B3)",
      result: expect.closeTo(Math.SQRT1_2, 12),
    });
    expect(at("H8")).toMatchObject({
      formula: "_xlfn.LAMBDA(_xlpm.a,_xlpm.b,_xlpm.a+_xlpm.b)(1,2)",
      result: 3,
    });
    expect(at("H9")).toEqual({ formula: "SUM(B2:B3)", result: 3 });
    const xml = textOf(copy, "xl/worksheets/sheet1.xml");
    expect(xml).toMatch(/<c r="H1"[^>]* cm="1"><f t="array" ref="H1:H2">/);
    expect(xml).toMatch(/<c r="H9"[^>]*><f>SUM/);
    expect(textOf(copy, "xl/metadata.xml")).toMatch(/fDynamic="1"/);

    await open(copy);
    await write("Vines", [{ row: 4, column: 2, value: 7 }, formula(1, 8, "=FILTER(B2:B4,B2:B4>0)")]);
    const again = await save();
    expect((await readAgain(again.copy)).getCell("H1").value).toMatchObject({ ref: "H1:H3", result: 1 });
    expect((await readAgain(again.copy)).getCell("H3").value).toBe(7);
    expect(textOf(again.copy, "xl/metadata.xml")).toBe(textOf(copy, "xl/metadata.xml"));
  });

  test("a dynamic array that fills more cells than in the file is stored with them", async () => {
    await open(await vines());
    await write("Vines", [formula(1, 8, "=FILTER(Vines[Count],Vines[Count]>0)")]);
    await open((await save()).copy);
    await write("Vines", [
      { row: 4, column: 1, value: "Creek Side" },
      { row: 4, column: 2, value: 9 },
    ]);
    const sheet = await readAgain((await save()).copy);
    expect(sheet.getCell("H1").value).toMatchObject({ ref: "H1:H3", result: 1 });
    expect([2, 3].map((row) => sheet.getCell(row, 8).value)).toEqual([2, 9]);
  });

  test("rows typed below a table belong to it, with formula, format and rule for typing", async () => {
    await open(await vines());
    await write("Vines", [
      { row: 4, column: 1, value: "Creek Side" },
      { row: 4, column: 2, value: 5 },
      { row: 5, column: 1, value: "Creek Side" },
      { row: 5, column: 2, value: 4 },
    ]);
    const { copy, notKept } = await save();
    expect(notKept).toEqual({});
    const table = textOf(copy, "xl/tables/table1.xml");
    expect(table).toMatch(/<table [^>]*\bref="A1:D5"/);
    expect(table).toMatch(/<autoFilter ref="A1:D5"/);
    const sheet = await readAgain(copy);
    expect(sheet.getCell("C4").value).toEqual({ formula: "Vines[[#This Row],[Count]]*2", result: 10 });
    expect(sheet.getCell("C5").value).toEqual({ formula: "Vines[[#This Row],[Count]]*2", result: 8 });
    expect(sheet.getCell("F1").value).toEqual({ formula: "SUM(Vines[Count])", result: 12 });
    expect([4, 5].map((row) => sheet.getCell(row, 2).numFmt)).toEqual(["0.0", "0.0"]);
    expect(sheet.getCell("D5").numFmt).toBe("yyyy-mm-dd");
    expect(sheet.getCell("B5").dataValidation).toMatchObject({ type: "whole", formulae: [0, 60] });
    const [{ ref }] = (sheet as unknown as { conditionalFormattings: { ref: string }[] })
      .conditionalFormattings;
    expect(ref).toBe("B2:B5");
  });

  test("in a workbook whose days count from 1904 the days stay the same", async () => {
    const before = await vines(true);
    await open(before);
    expect(Buffer.compare((await save()).copy, before)).toBe(0);
    // 46082 is 1 March 2026 counted from 1900: the page shows days so.
    await write("Vines", [
      { row: 4, column: 1, value: "Creek Side" },
      { row: 4, column: 4, value: 46_082 },
      formula(3, 6, "=YEAR(D4)"),
    ]);
    const { copy } = await save();
    const sheet = await readAgain(copy);
    expect(sheet.getCell("D4").value).toEqual(new Date(Date.UTC(2026, 2, 1)));
    expect(sheet.getCell("D2").value).toEqual(new Date(Date.UTC(2026, 2, 1)));
    expect(sheet.getCell("F3").value).toMatchObject({ result: 2026 });
    const book = foreign.read(copy, { UTC: true, cellDates: true });
    expect(book.Sheets.Vines.D4.v).toEqual(new Date(Date.UTC(2026, 2, 1)));
  });

  test("formats and rules for typing follow their rows where rows were inserted and deleted", async () => {
    await open(await vines());
    await page.evaluate(() => {
      const sheet = (window as unknown as Opened).engine.getActiveWorkbook()!.getActiveSheet();
      sheet.insertRowsBefore(2, 2);
      sheet.deleteRow(1);
    });
    await page.waitForTimeout(150);
    await write("Vines", [
      { row: 2, column: 1, value: "Creek Side" },
      { row: 2, column: 2, value: 6 },
    ]);
    const { copy, notKept } = await save();
    expect(notKept).toEqual({});
    const sheet = await readAgain(copy);
    // The row of North Bench went, two came before the one of Creek Side, which is now in row 4.
    expect([2, 3, 4].map((row) => sheet.getCell(row, 2).value)).toEqual([6, null, 2]);
    expect(sheet.getCell("F1").value).toEqual({ formula: "SUM(Vines[Count])", result: 8 });
    expect([2, 4].map((row) => sheet.getCell(row, 2).numFmt)).toEqual(["0.0", "0.0"]);
    expect(sheet.getCell("D4").numFmt).toBe("yyyy-mm-dd");
    expect([4, 5].map((row) => sheet.getCell(row, 2).dataValidation?.type)).toEqual(["whole", undefined]);
    expect(textOf(copy, "xl/tables/table1.xml")).toMatch(/<table [^>]*\bref="A1:D4"/);
    const [{ ref }] = (sheet as unknown as { conditionalFormattings: { ref: string }[] })
      .conditionalFormattings;
    expect(ref).toBe("B2:B4");
  });

  const OFFICE = {
    sheets: [
      {
        name: "Cordons",
        rows: [
          ["Block", "Live spurs"],
          ["North Bench", 7],
          ["Creek Side", 4],
        ],
        cells: new Map([
          ["1,1", { comment: { author: "AB", text: "count again" }, value: 7 }],
          ["3,1", { formula: "SUM(B2:B3)", formulaResult: 11 }],
        ]),
        charts: [spursChart("$B$2:$B$3", "$A$2:$A$3")],
      },
      spursPivotSheet("A1:B3"),
    ],
  } as Parameters<typeof writeXlsx>[0];

  const HANDMADE = buildWorkbook({
    sheets: {
      Data:
        '<row r="1"><c r="A1"><v>3</v></c><c r="B1" t="str"><f>_xlfn.WEBSERVICE("x")</f><v>kept</v></c><c r="E1"><v>1</v></c></row>' +
        '<row r="2"><c r="A2"><f t="array" ref="A2:A3">A1*{1;2}</f><v>3</v></c><c r="C2"><f t="array" ref="C2:C4">E1:E2*2</f><v>2</v></c><c r="E2"><v>2</v></c></row>' +
        '<row r="3"><c r="A3"><v>6</v></c><c r="C3"><v>4</v></c></row>' +
        '<row r="4"><c r="A4"><f t="shared" ref="A4:A5" si="0">A1+1</f><v>4</v></c><c r="C4" t="e"><v>#N/A</v></c></row>' +
        '<row r="5"><c r="A5"><f t="shared" si="0"/><v>4</v></c></row>',
    },
  });

  test.each([
    ["exceljs", () => vines()],
    ["hucre", () => writeXlsx(OFFICE)],
    [
      "SheetJS",
      async () => {
        const sheet = foreign.utils.aoa_to_sheet([
          ["Day", new Date(Date.UTC(2026, 2, 1))],
          ["Sum", 3],
        ]);
        sheet.B3 = { t: "n", f: "B2+1", v: 4 };
        sheet["!ref"] = "A1:B3";
        return foreign.write(
          { SheetNames: ["Data"], Sheets: { Data: sheet } },
          { type: "buffer", bookType: "xlsx" },
        );
      },
    ],
    ["hand", async () => HANDMADE],
  ])("an untouched workbook written by %s is saved byte for byte", async (_writer, make) => {
    const before = new Uint8Array(await make());
    await open(before);
    const { bytes, notKept } = await page.evaluate(() => (window as unknown as Opened).saveCopy());
    expect(notKept).toEqual([]);
    expect(Buffer.compare(Buffer.from(bytes), Buffer.from(before))).toBe(0);
  });

  test("charts, pivots and comments stay byte for byte where a cell beside them was changed", async () => {
    const before = await writeXlsx(OFFICE);
    await open(before);
    await write("Cordons", [{ row: 2, column: 2, value: 9 }]);
    const { copy, notKept } = await save();
    expect(notKept).toEqual({});
    const [old, now] = [unzipSync(before), unzipSync(copy)];
    const changed = Object.keys(old).filter(
      (part) => Buffer.compare(old[part], now[part] ?? Buffer.of()) !== 0,
    );
    expect(changed).toEqual(["xl/worksheets/sheet1.xml"]);
    const sheet = await readAgain(copy);
    expect([sheet.getCell("B2").value, sheet.getCell("B4").value]).toEqual([
      9,
      { formula: "SUM(B2:B3)", result: 13 },
    ]);
  });

  test("notes, comments, colours and formats on a sheet of ours are in the copy, by finding", async () => {
    const findings = (vines: readonly number[]): OwnSheet => ({
      sheet: "Findings",
      title: ["Made today"],
      headers: ["Vine", "Score"],
      columns: [{}, { format: "0.00" }],
      about: { thing: ["Vine"] },
      rows: vines.map((vine) => [vine, vine / 8]),
    });
    const made = await FileWorkbook.open("season.xlsx", emptyWorkbook("About"));
    await made.writeOwnSheet(findings([5, 7, 8]));
    await open(
      withPersonsRemarks(made.bytes(), "xl/worksheets/cordonbook1.xml", {
        notes: { A4: "fixed by hand" },
        comments: { A6: ["replant?", "yes"] },
        yellow: ["A4", "B5"],
        fourDigits: ["B6"],
      }),
    );
    const rewrite = (vines: readonly number[]) =>
      page.evaluate((content) => (window as unknown as Opened).rewrite(content), findings(vines));
    // Heads in row 3. Vine 7 stays in row 5, vine 8 goes from row 6 to 7 and back to 6; vine 5 has no row any more.
    expect(await rewrite([3, 7, 9, 8])).toMatchObject({ lost: [], lostLooks: ["A4"] });
    expect(await rewrite([3, 7, 8])).toMatchObject({ lost: [], lostLooks: [] });
    const shown = await page.evaluate(() => (window as unknown as Opened).desk().cellExtras("Findings"));
    expect(shown.filter(({ row }) => row > 3).map(({ row, column }) => [row, column])).toEqual([
      [5, 2],
      [6, 2],
    ]);
    const { copy, notKept } = await save();
    expect(notKept).toEqual({ remarks: ["Findings!A4 Cleo: fixed by hand", "Findings!A4"] });
    const extras = await (await FileWorkbook.open("copy.xlsx", copy)).cellExtras("Findings");
    const at = (row: number, column: number) =>
      extras.find((extra) => extra.row === row && extra.column === column);
    expect(at(6, 1)?.note).toBe("Ana Ruiz: replant? | Ben Hale: yes");
    expect([at(5, 2)?.dress.includes("FFFFFF00"), at(6, 2)?.format]).toEqual([true, "0.0000"]);
    expect(extras.filter(({ note }) => note !== "")).toHaveLength(1);
  });

  test("what the engine cannot work out keeps what the file says, an array formula of old its size", async () => {
    await open(HANDMADE);
    await write("Data", [
      { row: 1, column: 1, value: 5 },
      { row: 2, column: 5, value: 6 },
    ]);
    const { copy } = await save();
    const xml = textOf(copy, "xl/worksheets/sheet1.xml");
    expect(xml).toContain('<c r="B1" t="str"><f>_xlfn.WEBSERVICE("x")</f><v>kept</v></c>');
    expect(xml).toContain('<c r="A2"><f t="array" ref="A2:A3">A1*{1;2}</f><v>3</v></c>');
    expect(xml).toContain('<c r="A3"><v>6</v></c>');
    // A4 is now 5 + 1; A5 is worked out from A2, which the engine cannot read.
    expect(xml).toContain('<c r="A4"><f t="shared" ref="A4:A5" si="0">A1+1</f><v>6</v></c>');
    expect(xml).toContain('<c r="A5"><f t="shared" si="0"/><v>4</v></c>');
    // E1 and E2 are 1 and 6, twice that 2 and 12; the array has a third cell, which stays as it was.
    expect(xml).toContain('<c r="C2"><f t="array" ref="C2:C4">E1:E2*2</f><v>2</v></c>');
    expect(xml).toContain('<c r="C3"><v>12</v></c>');
    expect(xml).toContain('<c r="C4" t="e"><v>#N/A</v></c>');
  });

  test.each<[string, string, object]>([
    ["rows inserted", "book.getActiveSheet().insertRowBefore(1)", {}],
    [
      "rows deleted, the heads of a table among them",
      "book.getActiveSheet().deleteRow(0)",
      { moved: ["Vines"] },
    ],
    ["columns deleted", "book.getActiveSheet().deleteColumn(1)", { moved: ["Vines"] }],
    ["a sheet added", "book.insertSheet('Mine')", { addedSheets: ["Mine"] }],
    ["a sheet renamed", "book.getActiveSheet().setName('Mine')", { addedSheets: ["Mine"] }],
    ["letters", "book.getActiveSheet().getRange('A2').setFontWeight('bold')", { looks: ["Vines"] }],
    ["widths", "book.getActiveSheet().setColumnWidth(1, 300)", { sizes: ["Vines"] }],
    ["merged cells", "book.getActiveSheet().getRange('F5:G6').merge()", { sizes: ["Vines"] }],
    ["a name", "book.insertDefinedName('Spurs', 'Vines!$B$2')", { names: [""] }],
    ["a row inserted and taken back", "book.getActiveSheet().insertRowBefore(1); return engine.undo()", {}],
    [
      "what is no formula",
      "book.getActiveSheet().getRange('H1').setValue({ f: '=1+*2' })",
      { formulas: ["Vines!H1"] },
    ],
  ])("%s are named before a copy is saved", async (_what, action, expected) => {
    await open(await vines());
    await page.evaluate(
      (code) =>
        new Function("engine", "book", code)(
          (window as unknown as Opened).engine,
          (window as unknown as Opened).engine.getActiveWorkbook(),
        ),
      action,
    );
    await page.waitForTimeout(150);
    expect((await save(false)).notKept).toEqual(expected);
  });
});
