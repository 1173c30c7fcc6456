import { grownSheetXml, placedTableXml, renamedHeads } from "../../../src/workbook/file/tableChanges";

const TABLE =
  '<table xmlns="urn:main" id="1" name="T" displayName="T" ref="B2:C4"><autoFilter ref="B2:C4"/>' +
  '<tableColumns count="2"><tableColumn id="1" name="Block"/><tableColumn id="2" name="Count"/></tableColumns></table>';

test("a table and its filter are put at another place", () => {
  expect(placedTableXml(TABLE, { firstRow: 3, firstColumn: 2, lastRow: 9, lastColumn: 3 })).toBe(
    TABLE.replaceAll("B2:C4", "B3:C9"),
  );
});

test("above a row of totals the filter ends a row earlier", () => {
  const totals = TABLE.replace("<table ", '<table totalsRowCount="1" ');
  expect(placedTableXml(totals, { firstRow: 2, firstColumn: 2, lastRow: 5, lastColumn: 3 })).toBe(
    totals.replace('ref="B2:C4"', 'ref="B2:C5"'),
  );
});

test.each([
  ["Kind", "Kind"],
  [2026, "2026"],
  [null, "Column1"],
  ["block", "block2"],
  [{ error: "#REF!" }, "#REF!"],
])("a head that becomes %j is called %s in the table and in its cell", (value, name) => {
  const { xml, cells } = renamedHeads(TABLE, [
    { row: 2, column: 3, value },
    { row: 3, column: 3, value: 5 },
  ]);
  expect(xml).toBe(TABLE.replace('name="Count"', `name="${name}"`));
  expect(cells).toEqual([
    { row: 2, column: 3, value: name },
    { row: 3, column: 3, value: 5 },
  ]);
});

test("new rows of a table look like its last one, and what went for that goes for them, in extLst too", () => {
  const sheet = (row5: string, areas: readonly [string, string, string]) =>
    '<worksheet xmlns="urn:main" xmlns:x14="urn:x14" xmlns:xm="urn:xm"><sheetData>' +
    `<row r="4"><c r="B4" s="2"><v>1</v></c><c r="C4" s="3"/><c r="D4" s="4"/></row>${row5}</sheetData>` +
    `<conditionalFormatting sqref="${areas[0]}"/><dataValidations><dataValidation sqref="${areas[1]}"/></dataValidations>` +
    `<extLst><ext><x14:dataValidations><x14:dataValidation><xm:sqref>${areas[2]}</xm:sqref></x14:dataValidation></x14:dataValidations></ext></extLst></worksheet>`;
  expect(
    grownSheetXml(sheet('<row r="5"><c r="C5" s="9"><v>2</v></c></row>', ["B3:C4", "A3:A4 C4", "C3:C4"]), {
      firstColumn: 2,
      lastColumn: 3,
      lastRow: 4,
      newLastRow: 5,
    }),
  ).toBe(
    sheet('<row r="5"><c r="B5" s="2"/><c r="C5" s="9"><v>2</v></c></row>', [
      "B3:C5",
      "A3:A4 C4:C5",
      "C3:C5",
    ]),
  );
});
