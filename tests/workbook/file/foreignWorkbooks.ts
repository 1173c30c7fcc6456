import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import * as XLSX from "@e965/xlsx";
import ExcelJS from "exceljs";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { writeXlsx } from "hucre";
import { openWorkbookBytes } from "../../../src/workbook/file/openWorkbook";

/** A workbook of counts as one writer makes it, with what that writer can put beside the counts. */
export interface ForeignWorkbook {
  readonly writer: string;
  /** ".xlsx", or ".xlsm" for one with macros. */
  readonly ending: string;
  readonly make: () => Promise<Uint8Array>;
}

const SAMPLES = "sample-workbooks";
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const X14 = "http://schemas.microsoft.com/office/spreadsheetml/2009/9/main";
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const MICROSOFT = "http://schemas.microsoft.com/office";

type Rows = (string | number | boolean | null)[][];
interface Counts {
  readonly name: string;
  readonly rows: Rows;
}

/**
 * Counts of the invented farm from their header row on, read once: sheets that every command can work on. One number is
 * a text, which `check --repair` mends.
 */
let read: Promise<Counts[]> | undefined;
const counts = (): Promise<Counts[]> => (read ??= readCounts());

async function readCounts(): Promise<Counts[]> {
  const bytes = readFileSync(join(SAMPLES, "larkmoor-mistakes.xlsx"));
  const book = await openWorkbookBytes("larkmoor-mistakes.xlsx", bytes);
  return Promise.all(
    ["Blocks", "Vines", "Cordons"].map(async (name) => {
      const { values } = await book.readSheet(name);
      const header = values.findIndex((row) => row.includes("Block"));
      const rows = values
        .slice(header, header + 60)
        .map((row) => row.map((value) => (typeof value === "object" ? null : value)));
      const spurs = rows[0].indexOf("Live spurs");
      const counted = rows.find((row) => typeof row[spurs] === "number");
      if (name === "Cordons") counted![spurs] = String(counted![spurs]);
      return { name, rows };
    }),
  );
}

/** The column of the numbers over which bars and formulas stand, as letters, and its last row. */
const SPURS = (rows: Rows): string => XLSX.utils.encode_col(rows[0].indexOf("Live spurs"));

async function byExceljs(): Promise<Uint8Array> {
  const book = new ExcelJS.Workbook();
  for (const { name, rows } of await counts()) {
    const sheet = book.addWorksheet(name);
    sheet.addRows(rows);
    if (name !== "Cordons") continue;
    const ref = `${SPURS(rows)}2:${SPURS(rows)}${rows.length}`;
    const bar = { type: "dataBar", priority: 1, cfvo: [{ type: "min" }, { type: "max" }], gradient: false };
    const icons = {
      type: "iconSet",
      priority: 2,
      iconSet: "3Triangles",
      cfvo: [0, 33, 67].map((value) => ({ type: "percent", value })),
    };
    const scale = {
      type: "colorScale",
      priority: 3,
      cfvo: [{ type: "min" }, { type: "max" }],
      color: [{ argb: "FFFFFFFF" }, { argb: "FF336699" }],
    };
    for (const rule of [bar, icons, scale])
      sheet.addConditionalFormatting({
        ref,
        rules: [rule],
      } as unknown as ExcelJS.ConditionalFormattingOptions);
    sheet.getCell("A3").note = "count this one again";
    sheet.getCell("A4").dataValidation = {
      type: "list",
      allowBlank: true,
      formulae: ['"North Bench,Creek Side"'],
    };
    const image = book.addImage({ base64: PIXEL, extension: "png" });
    sheet.addImage(image, "M2:N4");
    sheet.getCell("A5").value = { text: "map", hyperlink: "https://example.com/map" };
    sheet.headerFooter.oddFooter = "&P";
  }
  return new Uint8Array(await book.xlsx.writeBuffer());
}

const PIXEL =
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

const hucre = new Map<boolean, Promise<Uint8Array>>();
/** Made once, since others start from it. */
function byHucre(macros = false): Promise<Uint8Array> {
  const made = hucre.get(macros) ?? makeByHucre(macros);
  hucre.set(macros, made);
  return made;
}

async function makeByHucre(macros: boolean): Promise<Uint8Array> {
  const sheets = (await counts()).map(({ name, rows }) => ({ name, rows }));
  const cordons = sheets.find(({ name }) => name === "Cordons")!;
  const column = SPURS(cordons.rows);
  const last = cordons.rows.length;
  const ref = `${column}2:${column}${last}`;
  const more = {
    ...cordons,
    cells: new Map([["1,0", { comment: { author: "AB", text: "count again" } }]]),
    conditionalRules: [
      {
        type: "dataBar",
        priority: 1,
        range: ref,
        dataBar: { cfvo: [{ type: "min" }, { type: "max" }], color: "FF638EC6" },
      },
      {
        type: "cellIs",
        operator: "lessThan",
        formula: "5",
        priority: 2,
        range: ref,
        style: { font: { bold: true } },
      },
    ],
    dataValidations: [{ type: "whole", operator: "between", formula1: "0", formula2: "60", range: ref }],
    sparklines: [
      {
        location: "P2",
        dataRange: `Cordons!${ref.replace(/(\D+)(\d+):(\D+)(\d+)/, "$1$2:$3$4")}`,
        type: "line",
      },
    ],
    charts: [
      {
        type: "bar",
        title: "Spurs",
        series: [
          {
            name: "Live spurs",
            values: `Cordons!$${column}$2:$${column}$${last}`,
            categories: `Cordons!$B$2:$B$${last}`,
          },
        ],
        anchor: { from: { row: 6, col: 14 }, to: { row: 20, col: 20 } },
      },
    ],
    textBoxes: [
      { text: "Larkmoor Bend (invented)", anchor: { from: { row: 22, col: 14 }, to: { row: 25, col: 18 } } },
    ],
  };
  const summary = {
    name: "Summary",
    rows: [],
    pivotTables: [
      {
        name: "Pivot",
        sourceSheet: "Blocks",
        sourceRange: "A1:A3",
        targetCell: "A1",
        rows: ["Block"],
        values: [{ field: "Block", function: "count" }],
      },
    ],
  };
  return writeXlsx({
    sheets: [...sheets.map((sheet) => (sheet === cordons ? more : sheet)), summary],
    namedRanges: [{ name: "Spurs", range: `Cordons!$${column}$2:$${column}$${last}` }],
    ...(macros ? { vbaProject: Uint8Array.from({ length: 4096 }, (_, i) => (i * 37) & 255) } : {}),
  } as unknown as Parameters<typeof writeXlsx>[0]);
}

async function bySheetjs(): Promise<Uint8Array> {
  const book = XLSX.utils.book_new();
  for (const { name, rows } of await counts()) {
    const sheet = XLSX.utils.aoa_to_sheet(rows);
    sheet["!autofilter"] = { ref: sheet["!ref"]! };
    sheet["!merges"] = [{ s: { r: 70, c: 0 }, e: { r: 70, c: 2 } }];
    sheet.A2.c = Object.assign([{ a: "AB", t: "count again" }], { hidden: true });
    XLSX.utils.book_append_sheet(book, sheet, name);
  }
  book.Custprops = { Farm: "Larkmoor Bend (invented)" };
  return new Uint8Array(
    XLSX.write(book, { type: "array", bookType: "xlsx", compression: true }) as ArrayBuffer,
  );
}

/** What stands where LibreOffice is installed; it is no part of the project. */
export const hasLibreOffice = existsSync("/usr/bin/soffice");

/** What another writer made, as LibreOffice writes it after it has read it. */
async function byLibreOffice(): Promise<Uint8Array> {
  const folder = mkdtempSync(join(tmpdir(), "cordonbook-office-"));
  try {
    writeFileSync(join(folder, "farm.xlsx"), await byExceljs());
    execFileSync(
      "/usr/bin/soffice",
      [
        `-env:UserInstallation=file://${folder}/profile`,
        "--headless",
        "--convert-to",
        "xlsx:Calc MS Excel 2007 XML",
        "--outdir",
        join(folder, "out"),
        join(folder, "farm.xlsx"),
      ],
      { stdio: "ignore", timeout: 120_000 },
    );
    return new Uint8Array(readFileSync(join(folder, "out", "farm.xlsx")));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** An extension of somebody's own, which stands wherever the schema has a place for one. */
const EXTENSION =
  '<extLst><ext uri="{0B1C2D3E-0000-4000-8000-00000000FA01}" xmlns:farm="urn:farm:own"><farm:extLst><farm:conditionalFormatting/></farm:extLst></ext></extLst>';
const BAR_ID = "{DA7ABA51-AAAA-BBBB-0001-000000000001}";

/** A workbook with extensions at every level of the sheet, extended data bars, a slicer and parts of somebody's own. */
async function byHand(): Promise<Uint8Array> {
  const parts = unzipSync(await byHucre());
  const change = (part: string, from: string | RegExp, to: string) => {
    const before = strFromU8(parts[part]);
    const after = before.replace(from, to);
    if (after === before) throw new Error(`${part} has no ${String(from)}`);
    parts[part] = strToU8(after);
  };
  const cordons = "xl/worksheets/sheet3.xml";
  const ref = "F2:F50";
  change(
    cordons,
    "<worksheet ",
    `<worksheet xmlns:x14="${X14}" xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main" `,
  );
  change(
    cordons,
    "<conditionalFormatting",
    `<conditionalFormatting sqref="${ref}"><cfRule type="dataBar" priority="7"><dataBar><cfvo type="min"/><cfvo type="max"/><color rgb="FF638EC6"/></dataBar>` +
      `<extLst><ext xmlns:x14="${X14}" uri="{B025F937-C7B1-47D3-B67F-A62EFF666E3E}"><x14:id>${BAR_ID}</x14:id></ext></extLst></cfRule>${EXTENSION}</conditionalFormatting><conditionalFormatting`,
  );
  const bar =
    `<ext xmlns:x14="${X14}" uri="{78C0D931-6437-407d-A8EE-F0AAD7539E65}"><x14:conditionalFormattings><x14:conditionalFormatting xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main">` +
    `<x14:cfRule type="dataBar" id="${BAR_ID}"><x14:dataBar minLength="0" maxLength="100"><x14:cfvo type="autoMin"/><x14:cfvo type="autoMax"/><x14:negativeFillColor rgb="FFFF0000"/><x14:axisColor rgb="FF000000"/></x14:dataBar></x14:cfRule>` +
    `<xm:sqref>${ref}</xm:sqref></x14:conditionalFormatting></x14:conditionalFormattings></ext>`;
  if (strFromU8(parts[cordons]).includes("<extLst><ext xmlns:x14"))
    change(cordons, /<\/extLst>(?=<\/worksheet>)/, `${bar}</extLst>`);
  else change(cordons, "</worksheet>", `<extLst>${bar}</extLst></worksheet>`);
  const blocks = "xl/worksheets/sheet1.xml";
  change(
    blocks,
    "</worksheet>",
    `<extLst><ext xmlns:x14="${X14}" uri="{A8765BA9-456A-4dab-B4F3-ACF838C121DE}"><x14:slicerList><x14:slicer xmlns:r="${RELATIONS}" r:id="rIdS"/></x14:slicerList></ext></extLst></worksheet>`,
  );
  const relation = (id: string, type: string, target: string) =>
    `<Relationship Id="${id}" Type="${type}" Target="${target}"/>`;
  const rels = (inner: string) =>
    strToU8(
      `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${inner}</Relationships>`,
    );
  parts["xl/worksheets/_rels/sheet1.xml.rels"] = rels(
    relation("rIdS", `${MICROSOFT}/2007/relationships/slicer`, "../slicers/slicer1.xml"),
  );
  parts["xl/slicers/slicer1.xml"] = strToU8(
    `<slicers xmlns="${X14}"><slicer name="Block" cache="Slicer_Block" caption="Block" rowHeight="241300"/></slicers>`,
  );
  parts["xl/slicerCaches/slicerCache1.xml"] = strToU8(
    `<slicerCacheDefinition xmlns="${X14}" name="Slicer_Block" sourceName="Block"><pivotTables><pivotTable tabId="4" name="Pivot"/></pivotTables><data><tabular pivotCacheId="1"><items count="1"><i x="0" s="1"/></items></tabular></data></slicerCacheDefinition>`,
  );
  parts["customXml/item1.xml"] = strToU8(
    '<farm xmlns="urn:farm:own"><name>Larkmoor Bend (invented)</name></farm>',
  );
  change(
    "xl/_rels/workbook.xml.rels",
    "</Relationships>",
    relation("rIdX", `${RELATIONS}/customXml`, "../customXml/item1.xml") +
      relation("rIdSC", `${MICROSOFT}/2007/relationships/slicerCache`, "slicerCaches/slicerCache1.xml") +
      "</Relationships>",
  );
  change(
    "xl/workbook.xml",
    "</workbook>",
    `<extLst><ext xmlns:x14="${X14}" uri="{BBE1A952-AA13-448e-AADC-164F8A28A991}"><x14:slicerCaches><x14:slicerCache xmlns:r="${RELATIONS}" r:id="rIdSC"/></x14:slicerCaches></ext></extLst></workbook>`,
  );
  change(
    "[Content_Types].xml",
    "</Types>",
    '<Override PartName="/xl/slicers/slicer1.xml" ContentType="application/vnd.ms-excel.slicer+xml"/><Override PartName="/xl/slicerCaches/slicerCache1.xml" ContentType="application/vnd.ms-excel.slicerCache+xml"/></Types>',
  );
  return zipSync(parts, { mtime: "2026-01-05T10:00:00" });
}

/** The same parts with a prefix on every element of the workbook's own namespace in the sheets, as some servers write. */
async function withPrefixes(): Promise<Uint8Array> {
  const parts = unzipSync(await byHand());
  for (const [name, bytes] of Object.entries(parts)) {
    if (!/^xl\/worksheets\/sheet\d+\.xml$/.test(name)) continue;
    parts[name] = strToU8(
      strFromU8(bytes)
        .replace(/<(\/?)(?=[a-zA-Z]\w*[\s/>])/g, "<$1m:")
        .replace(`xmlns="${MAIN}"`, `xmlns:m="${MAIN}"`),
    );
  }
  return zipSync(parts, { mtime: "2026-01-05T10:00:00" });
}

/** One workbook of each writer. */
export const FOREIGN_WORKBOOKS: readonly ForeignWorkbook[] = [
  { writer: "exceljs, with data bars, icons, a note, a picture", ending: ".xlsx", make: byExceljs },
  { writer: "hucre, with a chart, a pivot table, sparklines, a text box", ending: ".xlsx", make: byHucre },
  { writer: "hucre, with macros", ending: ".xlsm", make: () => byHucre(true) },
  { writer: "SheetJS, with a filter, comments, properties", ending: ".xlsx", make: bySheetjs },
  { writer: "by hand, with extensions at every level and a slicer", ending: ".xlsx", make: byHand },
  { writer: "by hand, with prefixes", ending: ".xlsx", make: withPrefixes },
  ...(hasLibreOffice ? [{ writer: "LibreOffice", ending: ".xlsx", make: byLibreOffice }] : []),
];
