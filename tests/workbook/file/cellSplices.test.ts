import { withCells } from "../../../src/workbook/file/cellSplices";

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
