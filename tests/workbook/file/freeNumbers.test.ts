import { strFromU8, unzipSync } from "fflate";
import { FileWorkbook } from "../../../src/workbook/file/fileWorkbook";
import { oneByteEncoding } from "../../../src/workbook/file/oneByteEncoding";
import { bytesSource } from "../../../src/workbook/file/csvSource";
import { workbookParts, zipParts } from "./buildWorkbook";

const ROW = '<row r="1"><c r="A1"><v>1</v></c></row>';
const parts = () => workbookParts({ sheets: { Counts: ROW } });

async function written(changed: Record<string, string>): Promise<Record<string, string>> {
  const workbook = await FileWorkbook.open("farm.xlsx", zipParts({ ...parts(), ...changed }));
  await workbook.writeOwnSheet({
    sheet: "Findings",
    headers: ["A", "B"],
    rows: [["x", 0.5]],
    columns: [{ wrap: true }, { format: "0.0%" }],
  });
  await workbook.markCells([
    { sheet: "Counts", row: 1, column: 1, severity: "ask" },
    { sheet: "Counts", row: 1, column: 2, severity: "wrong" },
  ]);
  return Object.fromEntries(
    Object.entries(unzipSync(workbook.bytes())).map(([name, bytes]) => [name, strFromU8(bytes)]),
  );
}

/** A sheet has a number up to 65,534, a conditional format a priority that a signed number of 32 bits holds. */
describe("numbers at the end of their range", () => {
  test.each(["4294967295", "65534", "x", ""])("of a sheet (%s) leave a lower one to ours", async (id) => {
    const book = String(parts()["xl/workbook.xml"]).replace('sheetId="1"', `sheetId="${id}"`);
    const own = /name="Findings" sheetId="([^"]*)"/.exec(
      (await written({ "xl/workbook.xml": book }))["xl/workbook.xml"],
    );
    expect(own?.[1]).toBe("1");
  });

  test("of a conditional format leave lower ones to the marks", async () => {
    const name = "xl/worksheets/sheet1.xml";
    const format =
      '<conditionalFormatting sqref="A1"><cfRule type="expression" priority="2147483647"><formula>1</formula></cfRule></conditionalFormatting>';
    const sheet = String(parts()[name]).replace("</sheetData>", `</sheetData>${format}`);
    const { [name]: after } = await written({ [name]: sheet });
    expect([...after.matchAll(/priority="(\d+)"/g)].map(([, number]) => number).sort()).toEqual([
      "1",
      "2",
      "2147483647",
    ]);
  });

  test("of a number format leave one to ours that is not built in", async () => {
    const styles = String(parts()["xl/styles.xml"]).replace(
      /(<styleSheet[^>]*>)/,
      '$1<numFmts count="1"><numFmt numFmtId="4294967295" formatCode="0"/></numFmts>',
    );
    const { "xl/styles.xml": after } = await written({ "xl/styles.xml": styles });
    // 0 to 163 are built in, so the first free number is 164 (ECMA-376 part 1, 18.8.30).
    expect(after).toContain('<numFmt numFmtId="164" formatCode="0.0%"/>');
  });
});

test("looks name no first fill, border or style where the workbook lists none", async () => {
  const styles = String(parts()["xl/styles.xml"]).replace(/<cellStyleXfs.*<\/cellStyleXfs>/, "");
  const { "xl/styles.xml": after } = await written({ "xl/styles.xml": styles });
  expect(after).not.toContain("xfId=");
});

test("a word of a million letters does not hold up the choice of an encoding", async () => {
  const word = "x".repeat(1_000_000);
  const bytes = new Uint8Array(Buffer.from(`Block;Row\n${word};${word}\nVi\u00f1edo;1\n`, "latin1"));
  const start = performance.now();
  expect(await oneByteEncoding(bytesSource("a.csv", bytes))).toEqual({ encoding: "windows-1252" });
  expect(performance.now() - start).toBeLessThan(10_000);
});
