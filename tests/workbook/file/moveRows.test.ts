import { writeFileSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import ExcelJS from "exceljs";
import { strFromU8, unzipSync } from "fflate";
import { writeXlsx } from "hucre";
import { FileWorkbook } from "../../../src/workbook/file/fileWorkbook";
import { movedFormula, type RowStep } from "../../../src/workbook/file/movedReferences";
import { hasValidator, openXmlFaults } from "../../samples/openXmlFaults";
import { packageFaults } from "../../samples/packageFaults";
import { buildWorkbook } from "./buildWorkbook";
import { spursChart, spursPivotSheet } from "./spursChart";

/** The validator of every copy takes its time. */
jest.setTimeout(60_000);

const inserted = (first: number, count = 1): RowStep => ({ kind: "inserted", first, count });
const deleted = (first: number, count = 1): RowStep => ({ kind: "deleted", first, count });

test.each<[formula: string, steps: RowStep[], isOn: boolean, expected: string]>([
  // One row before row 3: what stood in rows 3 and below is one lower, areas over it are one longer.
  ["SUM(A2:A4)+$B$3*C2", [inserted(3)], true, "SUM(A2:A5)+$B$4*C2"],
  ["SUM(A:A)+SUM(2:9)", [inserted(3)], true, "SUM(A:A)+SUM(2:10)"],
  // Another sheet's formula: only what names the sheet.
  [
    "A9+Vines!A9+'vines'!B9:B12&\"Vines!A9\"",
    [inserted(3)],
    false,
    "A9+Vines!A10+'vines'!B10:B13&\"Vines!A9\"",
  ],
  ["[1]Vines!A9+Other!A9+'[b.xlsx]Vines'!A9", [inserted(3)], true, "[1]Vines!A9+Other!A9+'[b.xlsx]Vines'!A9"],
  [
    "LOG10(A9)+A9x+Vines[[#This Row],[A9]]+1E9",
    [inserted(3)],
    true,
    "LOG10(A10)+A9x+Vines[[#This Row],[A9]]+1E9",
  ],
  // Rows 3 and 4 go: 2 to 9 are then 2 to 7, 3 to 9 are 3 to 7, 2 to 4 are 2 alone.
  ["A2:A9+A3:A9+A2:A4+A3+A9", [deleted(3, 2)], true, "A2:A7+A3:A7+A2:A2+#REF!+A7"],
  // Inserted in two steps and one of them taken out again.
  ["A5", [inserted(1, 2), deleted(1)], true, "A6"],
])("%s reads otherwise after rows moved", (formula, steps, isOn, expected) => {
  expect(movedFormula(formula, { sheet: "Vines", isOn, steps })).toBe(expected);
});

describe("rows inserted and deleted in a file", () => {
  const folder = mkdtempSync(path.join(tmpdir(), "cordonbook-rows-"));
  afterAll(() => rmSync(folder, { recursive: true }));

  async function moved(before: Uint8Array, sheet: string, steps: RowStep[]) {
    const book = await FileWorkbook.open("vines.xlsx", before);
    const isDone = await book.moveRows(sheet, steps);
    const copy = book.bytes();
    const saved = path.join(folder, "copy.xlsx");
    writeFileSync(saved, copy);
    expect(packageFaults(copy)).toEqual(packageFaults(before));
    const was = path.join(folder, "before.xlsx");
    writeFileSync(was, before);
    if (hasValidator) expect(await openXmlFaults(saved)).toHaveLength((await openXmlFaults(was)).length);
    return { isDone, copy, parts: unzipSync(copy) };
  }

  async function vines(): Promise<Uint8Array> {
    const book = new ExcelJS.Workbook();
    const sheet = book.addWorksheet("Vines");
    sheet.addTable({
      name: "Vines",
      ref: "A1",
      headerRow: true,
      columns: ["Block", "Count"].map((name) => ({ name, filterButton: true })),
      rows: [
        ["North Bench", 1],
        ["Creek Side", 2],
        ["Creek Side", 3],
      ],
    });
    sheet.getCell("B4").numFmt = "0.00";
    sheet.getRow(4).height = 40;
    sheet.getCell("B4").dataValidation = { type: "list", formulae: ["$F$3:$F$9"] };
    sheet.getCell("B3").note = "counted twice";
    sheet.addConditionalFormatting({
      ref: "B2:B4",
      rules: [{ type: "expression", formulae: ["$B3>2"], style: { font: { bold: true } }, priority: 1 }],
    });
    sheet.mergeCells("D6:E7");
    const other = book.addWorksheet("Sums");
    other.getCell("A1").value = { formula: "SUM(Vines!B2:B4)", result: 6 };
    book.definedNames.add("Vines!$B$4", "Last");
    return new Uint8Array((await book.xlsx.writeBuffer()) as ArrayBuffer);
  }

  test("formats, rules, notes, merges, the table and references of other sheets follow", async () => {
    const { isDone, copy, parts } = await moved(await vines(), "Vines", [inserted(3, 2)]);
    expect(isDone).toBe(true);
    const table = strFromU8(parts["xl/tables/table1.xml"]);
    expect(table).toMatch(/<table [^>]*\bref="A1:B6"/);
    expect(table).toMatch(/<autoFilter ref="A1:B6"/);
    const book = new ExcelJS.Workbook();
    await book.xlsx.load(copy.buffer as ArrayBuffer);
    const sheet = book.getWorksheet("Vines")!;
    expect([2, 3, 4, 5, 6].map((row) => sheet.getCell(row, 2).value)).toEqual([1, null, null, 2, 3]);
    expect([sheet.getCell("B4").numFmt, sheet.getCell("B6").numFmt]).toEqual([undefined, "0.00"]);
    expect(sheet.getRow(6).height).toBe(40);
    expect(sheet.getCell("B6").dataValidation.formulae).toEqual(["$F$5:$F$11"]);
    expect(sheet.getCell("B5").note).toBe("counted twice");
    const [{ ref, rules }] = (
      sheet as unknown as { conditionalFormattings: { ref: string; rules: { formulae: string[] }[] }[] }
    ).conditionalFormattings;
    expect([ref, rules[0].formulae]).toEqual(["B2:B6", ["$B5>2"]]);
    expect(sheet.getCell("D8").isMerged && sheet.getCell("E9").isMerged).toBe(true);
    expect(sheet.getCell("D7").isMerged).toBe(false);
    expect(book.getWorksheet("Sums")!.getCell("A1").formula).toBe("SUM(Vines!B2:B6)");
    expect(book.definedNames.getRanges("Last").ranges).toEqual(["Vines!$B$6"]);
    expect(strFromU8(parts["xl/drawings/vmlDrawing1.vml"])).toMatch(/<x:Row>4<\/x:Row>/);
  });

  test.each<[string, RowStep[]]>([
    ["the heads of a table", [deleted(1)]],
    ["every row of a table", [deleted(2, 3)]],
    ["the only cell of a rule", [deleted(4)]],
  ])("where %s would go nothing is changed", async (_what, steps) => {
    const before = await vines();
    const { isDone, copy } = await moved(before, "Vines", steps);
    expect(isDone).toBe(false);
    expect(Buffer.compare(copy, before)).toBe(0);
  });

  test("charts and pivots over the rows see them where they are", async () => {
    const before = await writeXlsx({
      sheets: [
        {
          name: "Cordons",
          rows: [
            ["Block", "Live spurs"],
            ["North Bench", 7],
            ["Creek Side", 4],
          ],
          charts: [spursChart("$B$2:$B$3", "$A$2:$A$3")],
        },
        spursPivotSheet("A1:B3"),
      ],
    } as Parameters<typeof writeXlsx>[0]);
    const { isDone, parts } = await moved(before, "Cordons", [inserted(3)]);
    expect(isDone).toBe(true);
    const text = (pattern: RegExp) =>
      strFromU8(parts[Object.keys(parts).find((part) => pattern.test(part))!]);
    expect(text(/charts\/chart\d+\.xml$/)).toContain("Cordons!$B$2:$B$4");
    expect(text(/pivotCacheDefinition\d+\.xml$/)).toMatch(/ref="A1:B4"/);
    expect(text(/drawings\/drawing\d+\.xml$/)).toMatch(/<xdr:row>7<\/xdr:row>[^]*<xdr:row>21<\/xdr:row>/);
  });

  test("cells that share a formula have each their own, an array of old is not cut", async () => {
    const data = (rows: string) => buildWorkbook({ sheets: { Data: rows } });
    const shared = data(
      '<row r="1"><c r="A1"><v>3</v></c></row><row r="2"><c r="A2"><f t="shared" ref="A2:A3" si="0">A1+1</f><v>4</v></c></row>' +
        '<row r="3"><c r="A3"><f t="shared" si="0"/><v>5</v></c></row>',
    );
    const { parts } = await moved(shared, "Data", [inserted(3)]);
    const xml = strFromU8(parts["xl/worksheets/sheet1.xml"]);
    expect(xml).toContain('<row r="2"><c r="A2"><f>A1+1</f><v>4</v></c></row>');
    expect(xml).toContain('<row r="4"><c r="A4"><f>A2+1</f><v>5</v></c></row>');
    const array = data(
      '<row r="2"><c r="A2"><f t="array" ref="A2:A3">B2:B3*2</f><v>4</v></c></row><row r="3"><c r="A3"><v>5</v></c></row>',
    );
    expect((await moved(array, "Data", [inserted(3)])).isDone).toBe(false);
    expect((await moved(array, "Data", [inserted(2)])).isDone).toBe(true);
  });

  test("a cell written over a formula that others share leaves them theirs", async () => {
    const book = await FileWorkbook.open(
      "data.xlsx",
      buildWorkbook({
        sheets: {
          Data:
            '<row r="2"><c r="A2"><f t="shared" ref="A2:A3" si="0">B1+1</f><v>4</v></c></row>' +
            '<row r="3"><c r="A3"><f t="shared" si="0"/><v>5</v></c></row>',
        },
      }),
    );
    await book.writeCells("Data", [{ row: 2, column: 1, value: 9 }]);
    const { values, formulaAt } = await book.readSheet("Data");
    expect([values[0][0], formulaAt(1, 0)]).toEqual([9, "=B2+1"]);
  });
});
