import { strFromU8, unzipSync } from "fflate";
import { FileWorkbook } from "../../../src/workbook/file/fileWorkbook";
import type { OwnSheet } from "../../../src/workbook/surveyWorkbook";
import { buildWorkbook } from "./buildWorkbook";

/** The attributes of a sheet's rows, by row, as the file holds them, and the styles of its cells. */
async function written(content: OwnSheet) {
  const workbook = await FileWorkbook.open("farm.xlsx", buildWorkbook());
  await workbook.writeOwnSheet(content);
  const parts = unzipSync(workbook.bytes());
  const xml = strFromU8(parts["xl/worksheets/cordonbook1.xml"]);
  const rows = new Map(
    [...xml.matchAll(/<row r="(\d+)"([^>]*)>/g)].map(([, row, attributes]) => [
      Number(row),
      Object.fromEntries(
        [...attributes.matchAll(/(\w+)="([^"]*)"/g)].map(([, name, value]) => [name, value]),
      ),
    ]),
  );
  const styles = [
    ...strFromU8(parts["xl/styles.xml"])
      .split("<cellXfs")[1]
      .matchAll(/<xf[^>]*?(?:\/>|>.*?<\/xf>)/g),
  ];
  const styleOf = (cell: string) =>
    styles[Number(new RegExp(`<c r="${cell}" s="(\\d+)"`).exec(xml)?.[1] ?? 0)][0];
  return { rows, styleOf };
}

/** By hand: "Vines without / a cordon that / stays" at 14 letters a line. */
const HEADERS = ["Row", "Vines without a cordon that stays"];
const sheet = (rows: OwnSheet["rows"], more: Partial<OwnSheet> = {}): OwnSheet => ({
  sheet: "Gaps",
  title: ["A title that is far longer than the first column is wide stands beside it, not below"],
  headers: HEADERS,
  columns: [{ width: 6 }, { width: 14, wrap: true }],
  rows,
  ...more,
});

describe("rows of our own sheets in a file", () => {
  test("have the height of the lines that their texts need, of fifteen points each", async () => {
    const { rows } = await written(
      sheet([
        [1, "one line"],
        [2, "left cordon A of this vine"],
        [3, 123456789012345],
      ]),
    );
    expect(rows.get(1)).toEqual({});
    expect(rows.get(3)).toEqual({ ht: "45", customHeight: "1" });
    expect(rows.get(4)).toEqual({});
    expect(rows.get(5)).toEqual({ ht: "30" });
    expect(rows.get(6)).toEqual({});
  });

  test("keep the usual height where a long text does not wrap", async () => {
    const { rows } = await written(
      sheet([["a long text in a column that does not wrap", ""]], {
        headers: ["Row", "Vines"],
        columns: [{ width: 6 }, { width: 14 }],
      }),
    );
    expect([...rows.values()]).toEqual([{}, {}, {}]);
  });

  test("are never higher than a spreadsheet takes (409 points)", async () => {
    const { rows } = await written(sheet([[1, "word ".repeat(2000)]]));
    expect(Number(rows.get(4)!.ht)).toBeLessThanOrEqual(409);
    expect(Number(rows.get(4)!.ht)).toBeGreaterThan(390);
  });

  test("begin at the top in every column where one of them wraps", async () => {
    const wrapping = await written(sheet([[1, "left cordon A of this vine"]]));
    expect(wrapping.styleOf("A4")).toContain('vertical="top"');
    expect(wrapping.styleOf("A4")).not.toContain("wrapText");
    expect(wrapping.styleOf("B4")).toContain('wrapText="1"');
    const plain = await written(sheet([[1, "x"]], { columns: [{}, {}] }));
    expect(plain.styleOf("A4")).not.toContain("vertical");
  });
});
