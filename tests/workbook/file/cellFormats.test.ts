import { strFromU8, unzipSync } from "fflate";
import { FileWorkbook } from "../../../src/workbook/file/fileWorkbook";
import { packageFaults } from "../../samples/packageFaults";
import { buildWorkbook } from "./buildWorkbook";

test("every cell of a sheet of ours has the number format that its column asks for", async () => {
  const formats = ["0%", "0", "0.00", "0%", "0.0"];
  const workbook = await FileWorkbook.open("book.xlsx", buildWorkbook());
  for (const sheet of ["First", "Second"]) {
    await workbook.writeOwnSheet({
      sheet,
      headers: formats.map((_, c) => `Column ${c}`),
      columns: formats.map((format) => ({ format })),
      rows: [formats.map(() => 0.5)],
    });
    const parts = unzipSync(workbook.bytes());
    const styles = strFromU8(parts["xl/styles.xml"]);
    const cells = strFromU8(parts[`xl/worksheets/cordonbook${sheet === "First" ? 1 : 2}.xml`]);
    const looks = [...styles.split("<cellXfs")[1].matchAll(/<xf\b[^>]*>/g)].map(([look]) => look);
    const shown = ["A2", "B2", "C2", "D2", "E2"].map((address) => {
      const look = looks[Number(new RegExp(`r="${address}" s="(\\d+)"`).exec(cells)![1])];
      const id = /numFmtId="(\d+)"/.exec(look)![1];
      return new RegExp(`<numFmt numFmtId="${id}" formatCode="([^"]*)"`).exec(styles)?.[1];
    });
    expect(shown).toEqual(formats);
    expect(packageFaults(workbook.bytes())).toEqual([]);
  }
});
