import * as XLSX from "@e965/xlsx";
import ExcelJS from "exceljs";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { writeXlsx } from "hucre";
import type { Dice } from "./dice";
import { CORDON_HEADS } from "../survey/cordonHeads";

type Cell = string | number | boolean | null;
type Rows = Cell[][];

/** The sheets of an invented farm, with a mistake here and there. */
function farm(dice: Dice): { name: string; rows: Rows }[] {
  const blocks = ["North Bench", "Creek Side"].slice(0, dice.whole(1, 2));
  const cordons: Rows = [[...CORDON_HEADS, "Counted by"]];
  const vines: Rows = [["Block", "Row", "Vine", "Prunings (oz)"]];
  for (const block of blocks)
    for (let row = 1; row <= dice.whole(1, 3); row++)
      for (let vine = 1; vine <= dice.whole(1, 5); vine++) {
        vines.push([block, row, vine, dice.whole(10, 60)]);
        for (const side of ["left", "right"])
          cordons.push([
            block,
            row,
            vine,
            dice.chance(0.03) ? "up" : side,
            side === "left" ? "A" : "B",
            1,
            dice.chance(0.05) ? dice.one(["3,5", " 3.5 ", "3 ft", null]) : 3.5,
            8,
            dice.chance(0.08) ? dice.one(["7 ", "seven", 70, -4, null, "=1+1", "\u202e7"]) : dice.whole(0, 8),
            "AB",
          ]);
      }
  const sheets = [
    {
      name: "Blocks",
      rows: [
        ["Block", "Row spacing (ft)", "Vine spacing (ft)"],
        ...blocks.map((block): Cell[] => [block, 9, 6]),
      ],
    },
    { name: "Vines", rows: vines },
    { name: "Cordons", rows: cordons },
  ];
  if (dice.chance(0.3))
    sheets.splice(dice.whole(0, 3), 0, {
      name: dice.one(["Notes", "Crew's diary", "\u00c9t\u00e9 & <b>"]),
      rows: [
        ["dry", 1],
        [null, true],
      ],
    });
  return sheets;
}

const PIXEL =
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

/** The column of live spurs as a range. */
const spurs = (rows: Rows) => `I2:I${Math.max(2, rows.length)}`;

async function byExceljs(dice: Dice): Promise<Uint8Array> {
  const book = new ExcelJS.Workbook();
  if (dice.chance(0.3)) book.properties.date1904 = true;
  for (const { name, rows } of farm(dice)) {
    const sheet = book.addWorksheet(
      name,
      dice.chance(0.3) ? { views: [{ state: "frozen", ySplit: 1 }] } : {},
    );
    const asTable = dice.chance(0.3) && rows.length > 1 && /^[A-Z]\w+$/.test(name);
    if (asTable)
      sheet.addTable({
        name: `T_${name}`,
        ref: "A1",
        headerRow: true,
        columns: rows[0].map((head) => ({ name: String(head), filterButton: dice.chance(0.5) })),
        rows: rows.slice(1),
      });
    else sheet.addRows(rows);
    if (name !== "Cordons") continue;
    const rule = (options: object) =>
      sheet.addConditionalFormatting({
        ref: spurs(rows),
        rules: [options],
      } as unknown as ExcelJS.ConditionalFormattingOptions);
    const extras: (() => void)[] = [
      () =>
        rule({
          type: "dataBar",
          priority: dice.whole(1, 9),
          cfvo: [{ type: "min" }, { type: "max" }],
          gradient: dice.chance(0.5),
        }),
      () =>
        rule({
          type: "iconSet",
          priority: 2,
          iconSet: dice.one(["3Triangles", "3Arrows", "5Boxes"]),
          cfvo: [0, 20, 40, 60, 80].map((value) => ({ type: "percent", value })),
        }),
      () =>
        rule({
          type: "colorScale",
          priority: 3,
          cfvo: [{ type: "min" }, { type: "max" }],
          color: [{ argb: "FFFFFFFF" }, { argb: "FF336699" }],
        }),
      () => rule({ type: "expression", priority: 4, formulae: ["$I2<3"], style: { font: { bold: true } } }),
      () => (sheet.getCell("A2").note = "count again"),
      () => (sheet.getCell("J2").dataValidation = { type: "list", allowBlank: true, formulae: ['"AB,CD"'] }),
      () => sheet.addImage(book.addImage({ base64: PIXEL, extension: "png" }), "M2:N4"),
      () => (sheet.getCell("K2").value = { text: "map", hyperlink: "https://example.com/map" }),
      () => (sheet.getCell("K3").value = { formula: "SUM(I2:I3)", result: 9 }),
      () => (sheet.getCell("K4").value = { richText: [{ text: "a", font: { bold: true } }, { text: "b" }] }),
      () => (sheet.getCell("K5").value = new Date(Date.UTC(2026, 0, 12))),
      () => sheet.mergeCells("L1:M1"),
      () => (sheet.headerFooter.oddFooter = "&P"),
      () => (sheet.getColumn(9).numFmt = "0.00"),
      () => book.definedNames.add("Cordons!$I$2:$I$3", "Spurs"),
    ];
    for (const extra of dice.some(asTable ? extras.slice(0, 6) : extras, 0, 8)) extra();
  }
  return new Uint8Array(await book.xlsx.writeBuffer());
}

async function byHucre(dice: Dice): Promise<Uint8Array> {
  const sheets = farm(dice);
  const cordons = sheets.find(({ name }) => name === "Cordons")!;
  const range = spurs(cordons.rows);
  const absolute = `Cordons!${range.replace(/([A-Z])(\d+)/g, "$$$1$$$2")}`;
  const extras = {
    cells: new Map([["1,0", { comment: { author: "AB", text: "count again" } }]]),
    conditionalRules: [
      {
        type: "dataBar",
        priority: 1,
        range,
        dataBar: { cfvo: [{ type: "min" }, { type: "max" }], color: "FF638EC6" },
      },
      {
        type: "cellIs",
        operator: "lessThan",
        formula: "5",
        priority: 2,
        range,
        style: { font: { bold: true } },
      },
    ],
    dataValidations: [{ type: "whole", operator: "between", formula1: "0", formula2: "60", range }],
    sparklines: [{ location: "P2", dataRange: `Cordons!${range}`, type: "line" }],
    charts: [
      {
        type: dice.one(["bar", "line", "pie"]),
        title: "Spurs",
        series: [{ name: "Live spurs", values: absolute }],
        anchor: { from: { row: 6, col: 14 }, to: { row: 20, col: 20 } },
      },
    ],
    textBoxes: [
      { text: "Larkmoor Bend (invented)", anchor: { from: { row: 22, col: 14 }, to: { row: 25, col: 18 } } },
    ],
  };
  const chosen = Object.fromEntries(dice.some(Object.entries(extras), 0, 6));
  const summary = {
    name: "Summary",
    rows: [],
    pivotTables: [
      {
        name: "Pivot",
        sourceSheet: "Cordons",
        sourceRange: `A1:I${cordons.rows.length}`,
        targetCell: "A1",
        rows: ["Block"],
        values: [{ field: "Live spurs", function: "sum" }],
      },
    ],
  };
  return writeXlsx({
    sheets: [
      ...sheets.map((sheet) => (sheet === cordons ? { ...sheet, ...chosen } : sheet)),
      ...(dice.chance(0.4) ? [summary] : []),
    ],
    ...(dice.chance(0.5) ? { namedRanges: [{ name: "Spurs", range: absolute }] } : {}),
  } as unknown as Parameters<typeof writeXlsx>[0]);
}

async function bySheetjs(dice: Dice): Promise<Uint8Array> {
  const book = XLSX.utils.book_new();
  for (const { name, rows } of farm(dice)) {
    const sheet = XLSX.utils.aoa_to_sheet(rows);
    if (dice.chance(0.4)) sheet["!autofilter"] = { ref: sheet["!ref"]! };
    if (dice.chance(0.4)) sheet["!merges"] = [{ s: { r: 90, c: 0 }, e: { r: 90, c: 2 } }];
    if (dice.chance(0.4)) sheet.A1.c = Object.assign([{ a: "AB", t: "count again" }], { hidden: true });
    if (dice.chance(0.3)) sheet["!cols"] = [{ wch: 20 }, { hidden: true }];
    XLSX.utils.book_append_sheet(book, sheet, name.slice(0, 31));
  }
  if (dice.chance(0.5)) book.Custprops = { Farm: "Larkmoor Bend (invented)" };
  if (dice.chance(0.2)) book.Workbook = { WBProps: { date1904: true } };
  const bookSST = dice.chance(0.5);
  return new Uint8Array(
    XLSX.write(book, {
      type: "array",
      bookType: "xlsx",
      compression: dice.chance(0.7),
      bookSST,
    }) as ArrayBuffer,
  );
}

/** Somebody's own extension, which may stand at the end of a sheet, of the workbook and of the styles. */
const EXTENSION =
  '<extLst><ext uri="{0B1C2D3E-0000-4000-8000-00000000FA01}" xmlns:farm="urn:farm:own"><farm:extLst><farm:conditionalFormatting/></farm:extLst></ext></extLst>';

/** What another writer made, with parts and extensions of somebody's own put in by hand. */
async function byHand(dice: Dice): Promise<Uint8Array> {
  const parts = unzipSync(await dice.one([byExceljs, byHucre, bySheetjs])(dice));
  const put = (part: string, before: string, text: string) => {
    const xml = strFromU8(parts[part]);
    if (!xml.includes("<extLst")) parts[part] = strToU8(xml.replace(before, () => text + before));
  };
  for (const name of Object.keys(parts))
    if (/^xl\/worksheets\/[^/]+\.xml$/.test(name) && dice.chance(0.5)) put(name, "</worksheet>", EXTENSION);
  if (dice.chance(0.5)) put("xl/workbook.xml", "</workbook>", EXTENSION);
  if (dice.chance(0.5)) put("xl/styles.xml", "</styleSheet>", EXTENSION);
  for (let n = dice.whole(1, 3); n > 0; n--) {
    parts[`customXml/item${n}.xml`] = strToU8(
      '<farm xmlns="urn:farm:own"><name>Larkmoor Bend (invented)</name></farm>',
    );
    const relation = `<Relationship Id="rIdX${n}" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/customXml" Target="../customXml/item${n}.xml"/>`;
    put("xl/_rels/workbook.xml.rels", "</Relationships>", relation);
  }
  return zipSync(parts, { level: dice.one([0, 6, 9]), mtime: "2026-01-05T10:00:00" });
}

const WRITERS = { exceljs: byExceljs, hucre: byHucre, SheetJS: bySheetjs, "by hand": byHand };

/** A sound workbook of counts by one of several writers, with what that writer can put beside them. */
export async function soundWorkbook(dice: Dice): Promise<{ writer: string; bytes: Uint8Array }> {
  const [writer, make] = dice.one(Object.entries(WRITERS));
  return { writer, bytes: await make(dice) };
}
