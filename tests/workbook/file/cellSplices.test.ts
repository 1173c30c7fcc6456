import { strFromU8, unzipSync } from "fflate";
import { FileWorkbook } from "../../../src/workbook/file/fileWorkbook";
import { withCells } from "../../../src/workbook/file/cellSplices";
import { buildWorkbook } from "./buildWorkbook";

const sheet = (cells: string) =>
  `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData><row r="1">${cells}</row></sheetData></worksheet>`;
const SPILLED =
  '<c r="A1" s="3" t="str" cm="1"><f t="array" ref="A1:A2">_xldudf_CORDON_GAPSBYROW(Cordons!A1:T9)</f><v>Block</v></c>';

describe("a formula that is written with what it shows", () => {
  test("keeps the way it is stored where the cell already holds it, and shows the new value", () => {
    const after = withCells(sheet(SPILLED), [
      { row: 1, column: 1, formula: "=CORDON.GAPSBYROW(Cordons!A1:T9)", shown: "Cuartel" },
    ]);
    expect(after).toBe(
      sheet(SPILLED.replace('s="3" t="str" cm="1"', 's="3" cm="1" t="str"').replace("Block", "Cuartel")),
    );
  });

  test("is stored plainly where the cell held another one", () => {
    const after = withCells(sheet(SPILLED), [{ row: 1, column: 1, formula: "=1+1=2", shown: true }]);
    expect(after).toBe(sheet('<c r="A1" s="3" t="b"><f>1+1=2</f><v>1</v></c>'));
  });

  test.each([
    [3.5, '<c r="B1"><f>C1&amp;"&lt;"</f><v>3.5</v></c>'],
    ["a<b", '<c r="B1" t="str"><f>C1&amp;"&lt;"</f><v>a&lt;b</v></c>'],
    [{ error: "#N/A" }, '<c r="B1" t="e"><f>C1&amp;"&lt;"</f><v>#N/A</v></c>'],
    [null, '<c r="B1"><f>C1&amp;"&lt;"</f></c>'],
    [undefined, '<c r="B1"><f>C1&amp;"&lt;"</f></c>'],
  ])("shows %p", (shown, expected) => {
    expect(withCells(sheet(""), [{ row: 1, column: 2, formula: '=C1&"<"', shown }])).toBe(sheet(expected));
  });
});

test("functions that came after the file format are stored under their prefix, whether kept or typed", async () => {
  const stored = '_xlfn.XLOOKUP("XLOOKUP(",A1:A2,B1:B2)+_xlfn.STDEV.S(A1:A2)';
  const workbook = await FileWorkbook.open(
    "farm.xlsx",
    buildWorkbook({
      sheets: { Cordons: `<row r="1"><c r="A1"><f>${stored}</f><v>1</v></c></row>` },
    }),
  );
  const formula = (await workbook.readSheet("Cordons")).formulaAt(0, 0)!;
  expect(formula).toBe('=XLOOKUP("XLOOKUP(",A1:A2,B1:B2)+STDEV.S(A1:A2)');
  await workbook.writeCells("Cordons", [
    { row: 1, column: 1, formula, shown: 2 },
    { row: 2, column: 1, formula: '=sort(A1:A3)&"SORT("&MYSORT(1)&Sheet.SORT(2)' },
  ]);
  const xml = strFromU8(unzipSync(workbook.bytes())["xl/worksheets/sheet1.xml"]);
  expect(xml).toContain(`<f>${stored}</f><v>2</v>`);
  expect(xml).toContain('<f>_xlfn._xlws.SORT(A1:A3)&amp;"SORT("&amp;MYSORT(1)&amp;Sheet.SORT(2)</f>');
});
