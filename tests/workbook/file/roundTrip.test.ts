import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { writeXlsx as writeSheets } from "hucre";
import { FileWorkbook } from "../../../src/workbook/file/fileWorkbook";
import { zipDirectory } from "../../../src/workbook/file/zipDirectory";
import type { OwnSheet } from "../../../src/workbook/surveyWorkbook";
import { hasValidator, openXmlFaults } from "../../samples/openXmlFaults";
import { packageFaults } from "../../samples/packageFaults";
import { buildWorkbook, zipParts, workbookParts } from "./buildWorkbook";
import { spursChart, spursPivotSheet } from "./spursChart";

const folder = mkdtempSync(join(tmpdir(), "cordonbook-round-"));
afterAll(() => rmSync(folder, { recursive: true }));

async function schemaFaults(bytes: Uint8Array): Promise<unknown[]> {
  const path = join(folder, `${Math.random()}.xlsx`);
  writeFileSync(path, bytes);
  return hasValidator ? openXmlFaults(path) : [];
}

/** A workbook as an office keeps it: chart, pivot table, comment, picture, conditional format, custom XML, a pane. */
async function officeWorkbook(): Promise<Uint8Array> {
  const parts = unzipSync(
    await writeSheets({
      sheets: [
        {
          name: "Cordons",
          rows: [
            ["Block", "Row", "Live spurs"],
            ["North Bench", 1, 7],
            ["North Bench", 2, 9],
            ["Creek Side", 1, 4],
          ],
          cells: new Map([
            [
              "1,2",
              { comment: { author: "AB", text: "count again" }, value: 7, style: { font: { bold: true } } },
            ],
            ["4,2", { formula: "SUM(C2:C4)", formulaResult: 20 }],
          ]),
          conditionalRules: [
            {
              type: "cellIs",
              operator: "lessThan",
              formula: "5",
              priority: 1,
              range: "C2:C4",
              style: { font: { bold: true } },
            },
          ],
          dataValidations: [
            { type: "whole", operator: "between", formula1: "0", formula2: "60", range: "C2:C9" },
          ],
          charts: [spursChart("$C$2:$C$4", "$B$2:$B$4")],
        },
        spursPivotSheet("A1:C4"),
      ],
      namedRanges: [{ name: "Spurs", range: "Cordons!$C$2:$C$4" }],
    } as Parameters<typeof writeSheets>[0]),
  );
  const add = (part: string, before: string, text: string) => {
    parts[part] = strToU8(strFromU8(parts[part]).replace(before, text + before));
  };
  parts["customXml/item1.xml"] = strToU8('<farm xmlns="urn:farm:own"><name>Larkmoor Bend</name></farm>');
  parts["xl/webextensions/taskpanes.xml"] = strToU8(
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?><wetp:taskpanes xmlns:wetp="http://schemas.microsoft.com/office/webextensions/taskpanes/2010/11"/>',
  );
  const relation = (id: string, type: string, target: string) =>
    `<Relationship Id="${id}" Type="${type}" Target="${target}"/>`;
  add(
    "xl/_rels/workbook.xml.rels",
    "</Relationships>",
    relation(
      "rIdX",
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships/customXml",
      "../customXml/item1.xml",
    ),
  );
  add(
    "_rels/.rels",
    "</Relationships>",
    relation(
      "rIdP",
      "http://schemas.microsoft.com/office/2011/relationships/webextensiontaskpanes",
      "xl/webextensions/taskpanes.xml",
    ),
  );
  add(
    "[Content_Types].xml",
    "</Types>",
    '<Override PartName="/xl/webextensions/taskpanes.xml" ContentType="application/vnd.ms-office.webextensiontaskpanes+xml"/>',
  );
  return zipSync(parts, { mtime: "2026-01-05T10:00:00" });
}

const FINDINGS: OwnSheet = {
  sheet: "Findings",
  title: ["Findings", "made on 31 March 2026"],
  headers: ["Cell", "What", "Share"],
  rows: [
    ["C2", '=HYPERLINK("http://x")', 0.25],
    ["C3", 'a < b & "c" \u0007 _x0041_', null],
  ],
  columns: [{}, { width: 40, wrap: true }, { format: "0.0%" }],
};

/** Parts that a new sheet and marks on "Cordons" may touch. */
const MAY_CHANGE = ["[Content_Types].xml", "xl/workbook.xml", "xl/_rels/workbook.xml.rels", "xl/styles.xml"];

function changedParts(
  before: Uint8Array,
  after: Uint8Array,
): { changed: string[]; added: string[]; gone: string[] } {
  const [a, b] = [unzipSync(before), unzipSync(after)];
  return {
    changed: Object.keys(a).filter((part) => part in b && Buffer.compare(a[part], b[part]) !== 0),
    added: Object.keys(b).filter((part) => !(part in a)),
    gone: Object.keys(a).filter((part) => !(part in b)),
  };
}

/** What was put in between, where the text before only grew. */
function grownBy(before: string, after: string): boolean {
  let at = 0;
  for (const character of after) if (character === before[at]) at++;
  return at === before.length;
}

describe("a workbook of an office", () => {
  let office: Uint8Array;
  beforeAll(async () => {
    office = await officeWorkbook();
    expect(Object.keys(unzipSync(office)).join("\n")).toMatch(/charts\/[\s\S]*comments[\s\S]*pivot/i);
    expect(await schemaFaults(office)).toEqual([]);
  });

  test("gets a sheet of ours while every other part stays byte for byte", async () => {
    const workbook = await FileWorkbook.open("office.xlsx", office);
    await workbook.writeOwnSheet(FINDINGS);
    const after = workbook.bytes();
    const { changed, added, gone } = changedParts(office, after);
    expect(gone).toEqual([]);
    expect(changed.filter((part) => !MAY_CHANGE.includes(part))).toEqual([]);
    expect(added.every((part) => /cordonbook/.test(part))).toBe(true);
    const [a, b] = [unzipSync(office), unzipSync(after)];
    for (const part of changed.filter((name) => name !== "xl/styles.xml"))
      expect(grownBy(strFromU8(a[part]), strFromU8(b[part]))).toBe(true);
    expect(await schemaFaults(after)).toEqual([]);
    expect(packageFaults(after)).toEqual([]);
  }, 60000);

  test("keeps even the packed bytes and headers of parts that are not touched", async () => {
    const workbook = await FileWorkbook.open("office.xlsx", office);
    await workbook.writeOwnSheet(FINDINGS);
    const after = workbook.bytes();
    const local = (bytes: Uint8Array, name: string) => {
      const { entries, start } = zipDirectory("x", bytes);
      const sorted = [...entries].sort((x, y) => x.offset - y.offset);
      const index = sorted.findIndex((entry) => entry.name === name);
      return Buffer.from(bytes.subarray(sorted[index].offset, sorted[index + 1]?.offset ?? start));
    };
    for (const { name } of zipDirectory("x", office).entries)
      if (!MAY_CHANGE.includes(name)) expect(local(after, name).equals(local(office, name))).toBe(true);
  });

  test("gets marks and loses them again without a trace in the sheet", async () => {
    const workbook = await FileWorkbook.open("office.xlsx", office);
    await workbook.markCells([
      { sheet: "Cordons", row: 2, column: 3, severity: "wrong" },
      { sheet: "Cordons", row: 3, column: 3, severity: "wrong" },
      { sheet: "Cordons", row: 3, column: 3, severity: "ask" },
      { sheet: "Cordons", row: 4, column: 1, severity: "ask" },
    ]);
    const marked = workbook.bytes();
    expect(changedParts(office, marked)).toEqual({
      changed: expect.arrayContaining(["xl/worksheets/sheet1.xml", "xl/styles.xml"]),
      added: [],
      gone: [],
    });
    const sheet = strFromU8(unzipSync(marked)["xl/worksheets/sheet1.xml"]);
    expect(sheet).toContain('sqref="C2:C3"');
    expect(sheet).toContain('N("Cordonbook ask")=0');
    expect(await schemaFaults(marked)).toEqual([]);
    await workbook.markCells([]);
    expect(unzipSync(workbook.bytes())["xl/worksheets/sheet1.xml"]).toEqual(
      unzipSync(office)["xl/worksheets/sheet1.xml"],
    );
  }, 60000);

  test("is what it was again once our sheet is deleted, but for styles", async () => {
    const workbook = await FileWorkbook.open("office.xlsx", office);
    await workbook.writeOwnSheet(FINDINGS);
    await workbook.deleteOwnSheet("Findings");
    const { changed, added, gone } = changedParts(office, workbook.bytes());
    expect({ added, gone }).toEqual({ added: [], gone: [] });
    expect(changed).toEqual(["xl/styles.xml"]);
  });

  test("does not grow with every run", async () => {
    const workbook = await FileWorkbook.open("office.xlsx", office);
    const run = async () => {
      await workbook.writeOwnSheet(FINDINGS);
      await workbook.markCells([{ sheet: "Cordons", row: 2, column: 3, severity: "wrong" }]);
      return unzipSync(workbook.bytes());
    };
    const first = await run();
    const second = await run();
    expect(Object.keys(second).sort()).toEqual(Object.keys(first).sort());
    expect(strFromU8(second["xl/workbook.xml"])).toBe(strFromU8(first["xl/workbook.xml"]));
    expect(strFromU8(second["[Content_Types].xml"]).length).toBe(
      strFromU8(first["[Content_Types].xml"]).length,
    );
    expect(await schemaFaults(workbook.bytes())).toEqual([]);
    expect(packageFaults(workbook.bytes())).toEqual([]);
  }, 60000);

  test("gives back the text of our sheet as it was, and runs none of it", async () => {
    const workbook = await FileWorkbook.open("office.xlsx", office);
    await workbook.writeOwnSheet(FINDINGS);
    const area = await workbook.readSheet("Findings");
    expect(area.values.slice(3)).toEqual([
      ["Cell", "What", "Share"],
      ["C2", '=HYPERLINK("http://x")', 0.25],
      ["C3", 'a < b & "c" \u0007 _x0041_', null],
    ]);
    expect(area.formulaAt(4, 1)).toBeNull();
  });

  test("gets single cells; a list of cells to calculate that no longer fits goes", async () => {
    const chain = unzipSync(office);
    chain["xl/calcChain.xml"] = strToU8(
      '<calcChain xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><c r="C5" i="1"/></calcChain>',
    );
    chain["xl/_rels/workbook.xml.rels"] = strToU8(
      strFromU8(chain["xl/_rels/workbook.xml.rels"]).replace(
        "</Relationships>",
        '<Relationship Id="rIdC" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/calcChain" Target="calcChain.xml"/></Relationships>',
      ),
    );
    chain["[Content_Types].xml"] = strToU8(
      strFromU8(chain["[Content_Types].xml"]).replace(
        "</Types>",
        '<Override PartName="/xl/calcChain.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.calcChain+xml"/></Types>',
      ),
    );
    const workbook = await FileWorkbook.open("office.xlsx", zipSync(chain));
    await workbook.writeCells("Cordons", [
      { row: 2, column: 3, value: 8 },
      { row: 3, column: 4, value: "new" },
      { row: 5, column: 3, value: null },
      { row: 30, column: 1, formula: '=CORDON.NODEBUDGET(3,"30+10")' },
    ]);
    const after = unzipSync(workbook.bytes());
    expect(Object.keys(after)).not.toContain("xl/calcChain.xml");
    expect(packageFaults(workbook.bytes())).toEqual([]);
    const area = await workbook.readSheet("Cordons");
    expect(area.values[1][2]).toBe(8);
    expect(area.values[2][3]).toBe("new");
    expect(area.formulaAt(29, 0)).toBe('=CORDON.NODEBUDGET(3,"30+10")');
    expect(strFromU8(after["xl/worksheets/sheet1.xml"])).toMatch(/<c r="C2" s="\d+"[^>]*><v>8<\/v>/);
    expect(strFromU8(after["xl/worksheets/sheet1.xml"])).toContain("_xldudf_CORDON_NODEBUDGET");
    expect(await schemaFaults(workbook.bytes())).toEqual([]);
  }, 60000);
});

describe("the sample season", () => {
  test("gets findings and marks without a fault", async () => {
    const bytes = readFileSync(join(__dirname, "../../../sample-workbooks/larkmoor-mistakes.xlsx"));
    const workbook = await FileWorkbook.open("larkmoor-mistakes.xlsx", bytes);
    await workbook.writeOwnSheet(FINDINGS);
    await workbook.markCells([{ sheet: "Cordons", row: 12, column: 9, severity: "wrong" }]);
    await workbook.writeFlag("columns", '{"a":"<b>&\\"c\\""}');
    expect(await workbook.readFlag("columns")).toBe('{"a":"<b>&\\"c\\""}');
    expect(await schemaFaults(workbook.bytes())).toEqual([]);
    expect(packageFaults(workbook.bytes())).toEqual([]);
  }, 60000);
});

describe("workbooks that are not changed", () => {
  const unchanged = async (bytes: Uint8Array, code: string) => {
    const workbook = await FileWorkbook.open("farm.xlsx", bytes);
    await expect(workbook.writeOwnSheet(FINDINGS)).rejects.toMatchObject({ code });
    expect(workbook.bytes()).toBe(bytes);
  };

  test("because they carry a signature", () =>
    unchanged(buildWorkbook({ parts: { "_xmlsignatures/sig1.xml": "<a/>" } }), "signedFile"));

  test("because their structure is protected", () => {
    const parts = workbookParts();
    return unchanged(
      zipParts({
        ...parts,
        "xl/workbook.xml": String(parts["xl/workbook.xml"]).replace(
          "<sheets>",
          '<workbookProtection lockStructure="1"/><sheets>',
        ),
      }),
      "protectedWorkbook",
    );
  });

  test("because they have no cell styles that could be added to", () =>
    unchanged(buildWorkbook({ styles: "<fonts/>" }), "layoutUnknown"));

  test("because the sheet to be marked is protected", async () => {
    const parts = workbookParts({ sheets: { Cordons: '<row r="1"><c r="A1"><v>1</v></c></row>' } });
    const bytes = zipParts({
      ...parts,
      "xl/worksheets/sheet1.xml": String(parts["xl/worksheets/sheet1.xml"]).replace(
        "</sheetData>",
        '</sheetData><sheetProtection sheet="1"/>',
      ),
    });
    const workbook = await FileWorkbook.open("farm.xlsx", bytes);
    const mark = { sheet: "Cordons", row: 1, column: 1, severity: "ask" } as const;
    await expect(workbook.markCells([mark])).rejects.toMatchObject({ code: "protectedSheet" });
    await expect(workbook.writeCells("Cordons", [{ row: 1, column: 1, value: 2 }])).rejects.toMatchObject({
      code: "protectedSheet",
    });
    expect(workbook.bytes()).toBe(bytes);
  });
});

test("strict files and files with prefixes get sheets in their own namespace", async () => {
  for (const bytes of [
    buildWorkbook({ strict: true, sheets: { Cordons: '<row r="1"><c r="A1"><v>1</v></c></row>' } }),
    zipParts(
      Object.fromEntries(
        Object.entries(workbookParts({ sheets: { Cordons: "" } })).map(([name, xml]) => [
          name,
          name === "xl/workbook.xml" || name === "xl/styles.xml"
            ? String(xml)
                .replace(/<(\/?)(?=[a-zA-Z])/g, "<$1m:")
                .replace("xmlns=", "xmlns:m=")
            : xml,
        ]),
      ),
    ),
  ]) {
    const workbook = await FileWorkbook.open("farm.xlsx", bytes);
    await workbook.writeOwnSheet(FINDINGS);
    expect(await workbook.sheetNames()).toEqual(["Cordons", "Findings"]);
    expect((await workbook.readSheet("Findings")).values).toHaveLength(6);
    expect(await workbook.isOwnSheet("Findings")).toBe(true);
  }
});
