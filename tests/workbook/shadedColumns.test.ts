import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { FileWorkbook } from "../../src/workbook/file/fileWorkbook";
import { SHADE_BANDS, shadeBandOf, shadeCondition, shadedRuns } from "../../src/workbook/shadeBands";
import type { OwnSheet } from "../../src/workbook/surveyWorkbook";
import { hasValidator, openXmlFaults } from "../samples/openXmlFaults";
import { packageFaults } from "../samples/packageFaults";
import { buildWorkbook } from "./file/buildWorkbook";
import { excelWorkbookOn, hostWith } from "./office/excelWorkbookOn";
import { shownFormat } from "./office/shownFormat";

const MAP: OwnSheet = {
  sheet: "Gap map",
  title: ["Invented vines"],
  headers: ["Block", "Row", "Vine 1", "Vine 2"],
  columns: [{}, {}, { format: "0%", shade: true }, { format: "0%", shade: true }],
  rows: [
    ["North Bench", 1, 0.05, 0.5],
    ["North Bench", 2, null, 0.31],
  ],
};

/** WCAG 2.2 relative luminance of an RGB colour. */
function luminance(rgb: string): number {
  const [r, g, b] = [0, 2, 4]
    .map((at) => parseInt(rgb.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

describe("shaded columns of shares", () => {
  test("letters stand out at 4.5:1 (WCAG 2.2, 1.4.3), every band is darker than the one below at 1.5:1, paper included", () => {
    const levels = [...SHADE_BANDS.map(({ fill }) => luminance(fill)), 1];
    for (const { fill, font } of SHADE_BANDS) {
      const [dark, light] = [luminance(fill), luminance(font)].sort((a, b) => a - b);
      expect((light + 0.05) / (dark + 0.05)).toBeGreaterThanOrEqual(4.5);
    }
    levels
      .slice(1)
      .forEach((above, at) => expect((above + 0.05) / (levels[at] + 0.05)).toBeGreaterThanOrEqual(1.5));
  });

  test("a band begins at its limit; blanks and text have none", () => {
    expect(shadeBandOf(0.5)?.worst).toBe(true);
    expect(shadeBandOf(0.4999)?.from).toBe(0.3);
    expect(shadeBandOf(0.09)).toBeUndefined();
    expect(shadeBandOf(null)).toBeUndefined();
    expect(shadeBandOf("0.9")).toBeUndefined();
  });

  test("neighbouring columns share their formats", () => {
    expect(shadedRuns([{}, { shade: true }, { shade: true }, {}, { shade: true }])).toEqual([
      { first: 1, last: 2 },
      { first: 4, last: 4 },
    ]);
  });

  test("in Excel they are conditional formats over the rows, and a second run does not pile them up", async () => {
    const host = hostWith({ Cordons: [["Block"]] });
    const workbook = excelWorkbookOn(host);
    for (const content of [MAP, MAP, { ...MAP, rows: MAP.rows.slice(0, 1) }]) {
      await workbook.writeOwnSheet(content);
      const formats = host.book.sheet("Gap map").conditionalFormats;
      expect(formats.map(({ formula }) => formula).sort()).toEqual(
        SHADE_BANDS.map((band) => `=${shadeCondition(band, "C4")}`).sort(),
      );
      for (const { areas, bold, formula } of formats) {
        expect(areas.map(({ row, column, rows, columns }) => [row, column, rows, columns])).toEqual([
          [3, 2, content.rows.length, 2],
        ]);
        expect(bold).toBe(formula === "=AND(ISNUMBER(C4),C4>=0.5)");
      }
    }
  });

  /**
   * Excel puts a format that is added before all others
   * (https://learn.microsoft.com/javascript/api/excel/excel.conditionalformatcollection#excel-excel-conditionalformatcollection-add-member(1)).
   */
  test.each([
    [0.05, undefined],
    [0.1, "#F2C38F"],
    [0.2, "#F2C38F"],
    [0.3, "#D48A4A"],
    [0.4999, "#D48A4A"],
    [0.5, "#7A3410"],
    [1, "#7A3410"],
  ])("Excel shows a share of %d in the fill %s", async (share, fill) => {
    const host = hostWith({ Cordons: [["Block"]] });
    await excelWorkbookOn(host).writeOwnSheet({ ...MAP, rows: [["North Bench", 1, share, null]] });
    const sheet = host.book.sheet("Gap map");
    expect(shownFormat(sheet, 3, 2).fill).toBe(fill);
    expect(shownFormat(sheet, 3, 3).fill).toBeUndefined();
  });

  test("in a file they are valid conditional formats, the worst band hatched", async () => {
    const folder = mkdtempSync(join(tmpdir(), "cordonbook-shade-"));
    try {
      const workbook = await FileWorkbook.open("book.xlsx", await buildWorkbook());
      await workbook.writeOwnSheet(MAP);
      await workbook.writeOwnSheet(MAP);
      const bytes = await workbook.bytes();
      const parts = unzipSync(bytes);
      const sheet = strFromU8(parts["xl/worksheets/cordonbook1.xml"]);
      expect(sheet.match(/<conditionalFormatting sqref="C4:D5">/g)).toHaveLength(1);
      expect(sheet).toContain("<formula>AND(ISNUMBER(C4),C4&gt;=0.5)</formula>");
      expect(strFromU8(parts["xl/styles.xml"])).toContain('patternType="lightUp"');
      const path = join(folder, "shaded.xlsx");
      writeFileSync(path, bytes);
      expect(packageFaults(bytes)).toEqual([]);
      if (hasValidator) expect(await openXmlFaults(path)).toEqual([]);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
