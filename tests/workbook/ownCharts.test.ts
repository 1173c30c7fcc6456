import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { writeXlsx } from "hucre";
import { FileWorkbook } from "../../src/workbook/file/fileWorkbook";
import { MemoryWorkbook } from "./memory/memoryWorkbook";
import { CHART_LINE, CHART_PART_FILLS, layOutCharts, OWN_CHART_NAME } from "../../src/workbook/ownSheet";
import { WorkbookProblem, type OwnSheet } from "../../src/workbook/surveyWorkbook";
import { hasValidator, openXmlFaults } from "../samples/openXmlFaults";
import { packageFaults } from "../samples/packageFaults";
import { buildWorkbook } from "./file/buildWorkbook";
import type { ExcelHost } from "./office/excelHost";
import { excelWorkbookOn, hostWith } from "./office/excelWorkbookOn";
import type { HostChart } from "./office/hostBook";

jest.setTimeout(60_000);

const RANGES: OwnSheet = {
  sheet: "Crop outlook",
  title: ["Invented crops"],
  headers: ["Block", "Low (t)", "Likely (t)", "Bar", "Low to likely (t)", "Likely to high (t)"],
  columns: [{}, { format: "0.00" }],
  rows: [
    ["North Bench", 3, 4, "North Bench: winter", 1, 2],
    ["Creek <Side>", 5, 5, "Creek <Side>: harvest", 0, 0],
  ],
  charts: [
    {
      kind: "range",
      title: "Crop & its range",
      axis: "Crop (t)",
      labels: "Bar",
      parts: ["Low (t)", "Low to likely (t)", "Likely to high (t)"],
    },
  ],
};
const LONGER: OwnSheet = {
  ...RANGES,
  rows: [...RANGES.rows, ["Schoolhouse", 1, 2, "Schoolhouse: winter", 1, 1]],
};

/** WCAG 2.2 relative luminance of an RGB colour. */
function luminance(rgb: string): number {
  const [r, g, b] = [0, 2, 4]
    .map((at) => parseInt(rgb.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

const contrast = (one: string, other: string) => {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
};

test("the line around a bar stands out from paper and from the two lighter parts at 3:1 (WCAG 2.2, 1.4.11)", () => {
  expect(contrast(CHART_LINE, "FFFFFF")).toBeGreaterThanOrEqual(3);
  for (const fill of CHART_PART_FILLS.slice(1)) expect(contrast(CHART_LINE, fill)).toBeGreaterThanOrEqual(3);
  expect(contrast(CHART_PART_FILLS[0], CHART_PART_FILLS[1])).toBeGreaterThanOrEqual(3);
});

test("charts stand below the table, one below the other, and none over an empty table", () => {
  const [first, second] = layOutCharts({ ...RANGES, charts: [RANGES.charts![0], RANGES.charts![0]] });
  expect([first.firstRow, first.lastRow]).toEqual([4, 5]);
  expect(first.top).toBeGreaterThan(first.lastRow);
  expect(second.top).toBeGreaterThan(first.bottom);
  expect(layOutCharts({ ...RANGES, rows: [] })).toEqual([]);
});

test("in memory they are kept as data", async () => {
  const workbook = new MemoryWorkbook({});
  await workbook.writeOwnSheet(RANGES);
  expect(workbook.charts("Crop outlook")).toEqual(RANGES.charts);
});

describe("in Excel", () => {
  const mine = (): HostChart => ({
    id: "{mine}",
    name: "My crop chart",
    type: "Line",
    title: "Mine",
    axis: "",
    minimum: undefined,
    reversed: false,
    crossing: "Automatic",
    legend: "Right",
    from: undefined,
    to: undefined,
    series: [],
  });
  const ours = (host: ExcelHost) =>
    host.book.sheet("Crop outlook").charts.filter(({ name }) => name.startsWith(OWN_CHART_NAME));

  function mustFit(chart: HostChart, content: OwnSheet): void {
    const rows = content.rows.length;
    expect(chart).toMatchObject({
      name: `${OWN_CHART_NAME} 1`,
      type: "BarStacked",
      title: "Crop & its range",
      axis: "Crop (t)",
      minimum: 0,
      reversed: true,
    });
    expect(chart.series.map(({ name }) => name)).toEqual(content.charts![0].parts);
    expect(
      chart.series.map(({ values }) => [values.row, values.column, values.rows, values.columns]),
    ).toEqual([1, 4, 5].map((column) => [3, column, rows, 1]));
    for (const { categories } of chart.series)
      expect(categories).toMatchObject({ row: 3, column: 3, rows, columns: 1 });
    expect(new Set(chart.series.map(({ fill }) => fill)).size).toBe(3);
    expect(chart.from!.row).toBeGreaterThan(2 + rows);
  }

  test("a chart is drawn over the table, replaced by the next run, and a person's own stays", async () => {
    const host = hostWith({ Cordons: [["Block"]] });
    const workbook = excelWorkbookOn(host);
    expect(await workbook.writeOwnSheet(RANGES)).toEqual({ charts: 1 });
    mustFit(ours(host)[0], RANGES);
    const own = mine();
    host.book.sheet("Crop outlook").charts.push(own);
    for (const content of [LONGER, RANGES]) {
      expect(await workbook.writeOwnSheet(content)).toEqual({ charts: 1 });
      expect(ours(host)).toHaveLength(1);
      mustFit(ours(host)[0], content);
      expect(host.book.sheet("Crop outlook").charts).toHaveLength(2);
    }
    expect(await workbook.writeOwnSheet({ ...RANGES, rows: [] })).toEqual({ charts: 0 });
    expect(host.book.sheet("Crop outlook").charts).toEqual([own]);
    expect(own).toEqual(mine());
  });

  test("whichever step is refused: table and chart are both of the same run, or there is none of ours", async () => {
    const prepare = async () => {
      const host = hostWith({ Cordons: [["Block"]] });
      const workbook = excelWorkbookOn(host);
      await workbook.writeOwnSheet(RANGES);
      host.book.sheet("Crop outlook").charts.push(mine());
      await host.quiet();
      return { host, workbook };
    };
    const counted = await prepare();
    const first = counted.host.log.length;
    await counted.workbook.writeOwnSheet(LONGER);
    const steps = counted.host.log.length - first;
    counted.host.close();
    const seen = { asBefore: 0, withoutChart: 0, whole: 0 };
    // the last run of all is refused nothing
    for (let step = 0; step <= steps; step++) {
      const { host, workbook } = await prepare();
      const before = JSON.stringify(host.book.snapshot());
      if (step < steps) host.refuse({ after: step, code: "GeneralException" });
      const written = await workbook.writeOwnSheet(LONGER).catch((error: unknown) => {
        if (!(error instanceof WorkbookProblem)) throw error;
        return undefined;
      });
      const { charts, name } = host.book.sheet("Crop outlook");
      if (!written) {
        seen.asBefore++;
        expect(JSON.stringify(host.book.snapshot())).toBe(before);
      } else {
        seen[written.charts ? "whole" : "withoutChart"]++;
        expect((await workbook.readSheet(name)).values.slice(2)).toEqual([LONGER.headers, ...LONGER.rows]);
        expect(charts).toHaveLength(1 + written.charts);
        if (written.charts) mustFit(ours(host)[0], LONGER);
      }
      expect(charts.find(({ id }) => id === "{mine}")).toEqual(mine());
      host.close();
    }
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(0);
  });

  test("a new sheet keeps its table when Excel refuses the chart", async () => {
    const host = hostWith({ Cordons: [["Block"]] });
    host.refuse({ name: "SetXAxisValues", code: "InvalidArgument" });
    const workbook = excelWorkbookOn(host);
    expect(await workbook.writeOwnSheet(RANGES)).toEqual({ charts: 0 });
    expect(host.book.sheet("Crop outlook").charts).toEqual([]);
    expect((await workbook.readSheet("Crop outlook")).values).toHaveLength(5);
  });
});

describe("in a file", () => {
  const folder = mkdtempSync(join(tmpdir(), "cordonbook-charts-"));
  afterAll(() => rmSync(folder, { recursive: true }));

  const partsOf = (bytes: Uint8Array) =>
    Object.fromEntries(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));
  const drawn = (bytes: Uint8Array) =>
    Object.keys(unzipSync(bytes)).filter((name) => /^xl\/(charts|drawings)\//.test(name));

  async function mustBeSound(bytes: Uint8Array): Promise<void> {
    const path = join(folder, `${Math.random()}.xlsx`);
    writeFileSync(path, bytes);
    expect(packageFaults(bytes)).toEqual([]);
    if (hasValidator) expect(await openXmlFaults(path)).toEqual([]);
  }

  test("a chart is a valid part over the table, rewritten by the next run and gone with its sheet", async () => {
    const start = buildWorkbook({ sheets: { Cordons: "" } });
    const workbook = await FileWorkbook.open("book.xlsx", start);
    for (const content of [RANGES, LONGER, RANGES]) {
      expect(await workbook.writeOwnSheet(content)).toEqual({ charts: 1 });
      const bytes = workbook.bytes();
      const charts = drawn(bytes).filter((name) => /^xl\/charts\/[^/]+\.xml$/.test(name));
      expect(charts).toHaveLength(1);
      const xml = partsOf(bytes)[charts[0]];
      const last = 3 + content.rows.length;
      expect([...xml.matchAll(/<c:f>([^<]*)<\/c:f>/g)].map(([, place]) => place)).toEqual(
        ["B", "E", "F"].flatMap((column) => [
          `'Crop outlook'!$${column}$3`,
          `'Crop outlook'!$D$4:$D$${last}`,
          `'Crop outlook'!$${column}$4:$${column}$${last}`,
        ]),
      );
      expect(xml).toContain("<a:t>Crop &amp; its range</a:t>");
      await mustBeSound(bytes);
    }
    await workbook.writeOwnSheet({ ...RANGES, rows: [] });
    expect(drawn(workbook.bytes())).toEqual([]);
    await mustBeSound(workbook.bytes());
    await workbook.writeOwnSheet(RANGES);
    await workbook.deleteOwnSheet("Crop outlook");
    expect(drawn(workbook.bytes())).toEqual([]);
    await mustBeSound(workbook.bytes());
    const [before, after] = [unzipSync(start), unzipSync(workbook.bytes())];
    for (const part of ["xl/worksheets/sheet1.xml", "xl/sharedStrings.xml"])
      expect(Buffer.from(after[part])).toEqual(Buffer.from(before[part]));
  });

  test("in a strict file the drawing is strict too", async () => {
    const workbook = await FileWorkbook.open("book.xlsx", buildWorkbook({ strict: true }));
    await workbook.writeOwnSheet(RANGES);
    const parts = partsOf(workbook.bytes());
    for (const name of drawn(workbook.bytes()))
      expect(parts[name].replace(/schemas\.openxmlformats\.org\/package/g, "")).not.toContain(
        "schemas.openxmlformats.org",
      );
  });

  test("a sheet's name with an apostrophe stands quoted in the references", async () => {
    const workbook = await FileWorkbook.open("book.xlsx", buildWorkbook());
    await workbook.writeOwnSheet({ ...RANGES, sheet: "Farm's outlook" });
    expect(partsOf(workbook.bytes())["xl/charts/cordonbook1.xml"]).toContain("'Farm''s outlook'!$B$3");
    await mustBeSound(workbook.bytes());
  });

  test("a person's chart on our sheet keeps every byte, before and after ours and when ours goes", async () => {
    const parts = unzipSync(
      await writeXlsx({
        sheets: [
          {
            name: "Crop outlook",
            rows: [
              ["Block", "Low"],
              ["North Bench", 3],
            ],
            charts: [
              {
                type: "bar",
                title: "Mine",
                series: [
                  { name: "Low", values: "'Crop outlook'!$B$2:$B$2", categories: "'Crop outlook'!$A$2:$A$2" },
                ],
                anchor: { from: { row: 30, col: 0 }, to: { row: 40, col: 6 } },
              },
            ],
          },
          { name: "Cordons", rows: [["Block"]] },
        ],
      }),
    );
    const book = strFromU8(parts["xl/workbook.xml"]);
    expect(book).not.toContain("definedNames");
    parts["xl/workbook.xml"] = strToU8(
      book.replace(
        "</sheets>",
        '</sheets><definedNames><definedName name="_Cordonbook_own" localSheetId="0" hidden="1">TRUE</definedName></definedNames>',
      ),
    );
    const start = zipSync(parts);
    const before = partsOf(start);
    const [theirs] = drawn(start).filter((name) => /^xl\/charts\/[^/]+\.xml$/.test(name));
    const [drawing] = drawn(start).filter((name) => /^xl\/drawings\/[^/]+\.xml$/.test(name));
    const anchor = /<(?:\w+:)?(two|one)CellAnchor\b.*<\/(?:\w+:)?\1CellAnchor>/s.exec(before[drawing])![0];
    const workbook = await FileWorkbook.open("book.xlsx", start);
    for (const content of [RANGES, LONGER, { ...RANGES, rows: [] }]) {
      const { charts } = await workbook.writeOwnSheet(content);
      const now = partsOf(workbook.bytes());
      expect(now[theirs]).toBe(before[theirs]);
      expect(now[drawing]).toContain(anchor);
      expect(now[drawing].match(new RegExp(OWN_CHART_NAME, "g")) ?? []).toHaveLength(charts);
      expect(drawn(workbook.bytes()).filter((name) => /charts\/cordonbook/.test(name))).toHaveLength(charts);
      await mustBeSound(workbook.bytes());
    }
  });
});
