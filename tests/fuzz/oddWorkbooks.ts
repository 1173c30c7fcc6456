import { strToU8 } from "fflate";
import { zipDirectory } from "../../src/workbook/file/zipDirectory";
import { cellName } from "../../src/workbook/address";
import { xmlText } from "../../src/workbook/file/xmlSpans";
import { changeEntry, workbookParts, zipParts } from "../workbook/file/buildWorkbook";
import { zip64 } from "../workbook/file/zip64";
import type { Dice } from "./dice";
import { CORDON_HEADS } from "../survey/cordonHeads";

type Parts = Record<string, string | Uint8Array>;

/** A workbook that is being made odd. */
interface Draft {
  readonly parts: Parts;
  pack: (parts: Parts) => Uint8Array;
  /** What is done to the packed bytes, in order. */
  readonly after: ((bytes: Uint8Array) => Uint8Array)[];
}

const TYPES = "[Content_Types].xml";
const ROOT_RELATIONS = "_rels/.rels";
const BOOK = "xl/workbook.xml";
const RELATIONS = "xl/_rels/workbook.xml.rels";
const STYLES = "xl/styles.xml";
const STRINGS = "xl/sharedStrings.xml";
const COUNTS = "xl/worksheets/sheet1.xml";
const BESIDE = "xl/worksheets/sheet2.xml";
const X14 = "http://schemas.microsoft.com/office/spreadsheetml/2009/9/main";
const RELATION_TYPES = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

const HEADS = [...CORDON_HEADS];
/** Characters that a terminal, a spreadsheet or an XML reader would obey. */
const ACTING = [
  "\u001b[31m",
  "\u0007",
  "\u009b2J",
  "\u009d0;t",
  "\u202e",
  "\u2066",
  "\u200f",
  "\ufeff",
  "\u0000",
];
const TEXTS = [
  ...ACTING.map((sign) => `North${sign}Bench`),
  "=1+1",
  "\uff1dcmd|' /C calc'!A0",
  "+1",
  "@SUM(1)",
  "a;=1+1",
  "<b>&\"'",
  "_x000D_",
  "_x001B_[2J",
  "]]>",
  "__proto__",
  "constructor",
  "x".repeat(40_000),
  "\u{1f347}".repeat(20),
  "0x10",
  "1,5",
  "-0",
  "1.250",
  "31/12/2025",
  "7 spurs",
  "#N/A",
  "",
  "   ",
];

const attribute = (text: string) => xmlText(text).replace(/"/g, "&quot;");

function changed(
  draft: Draft,
  part: string,
  from: string | RegExp,
  to: string | ((whole: string) => string),
): void {
  const before = draft.parts[part];
  if (typeof before !== "string") return;
  draft.parts[part] = typeof to === "string" ? before.replace(from, () => to) : before.replace(from, to);
}

const relation = (id: string, kind: string, target: string) =>
  `<Relationship Id="${id}" Type="${RELATION_TYPES}/${kind}" Target="${target}"/>`;
const relations = (inner: string) =>
  `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${inner}</Relationships>`;
const override = (part: string, type: string) => `<Override PartName="/${part}" ContentType="${type}"/>`;

function addRelation(draft: Draft, text: string): void {
  changed(draft, RELATIONS, "</Relationships>", `${text}</Relationships>`);
}

/** Puts something into the sheet of counts behind its rows. */
function behindRows(draft: Draft, text: string): void {
  changed(draft, COUNTS, "</sheetData>", `</sheetData>${text}`);
}

/** A row of cells, each a text, a number or what stands in place of a whole cell. */
function rowXml(row: number, cells: readonly (string | number)[]): string {
  const inner = cells.map((value, column) => {
    const r = cellName(row, column + 1);
    return typeof value === "number"
      ? `<c r="${r}"><v>${value}</v></c>`
      : value.startsWith("<c")
        ? value
        : `<c r="${r}" t="inlineStr"><is><t xml:space="preserve">${xmlText(value)}</t></is></c>`;
  });
  return `<row r="${row}">${inner.join("")}</row>`;
}

function counts(dice: Dice): string {
  const rows = Array.from({ length: dice.whole(1, 12) }, (_, i) => [
    dice.chance(0.1) ? dice.one(TEXTS) : "North Bench",
    1 + Math.floor(i / 6),
    1 + Math.floor((i % 6) / 2),
    i % 2 === 0 ? "left" : dice.chance(0.1) ? dice.one(TEXTS) : "right",
    i % 2 === 0 ? "A" : "B",
    1,
    dice.chance(0.1) ? dice.one(TEXTS) : 2.5 + dice.whole(0, 4) / 2,
    dice.whole(5, 9),
    dice.chance(0.1) ? dice.one(TEXTS) : dice.whole(0, 9),
  ]);
  return [HEADS, ...rows].map((row, i) => rowXml(i + 1, row)).join("");
}

const TAGS = [
  "workbook",
  "sheets",
  "sheet",
  "row",
  "c",
  "v",
  "Relationship",
  "Override",
  "Default",
  "xf",
  "fonts",
];

/** Cuts or twists the text of a part so that it is no longer what a writer would make. */
function twisted(text: string, dice: Dice): string | Uint8Array {
  const tag = dice.one(TAGS);
  const bytes = strToU8(text);
  return dice.one<() => string | Uint8Array>([
    () => text.slice(0, dice.whole(0, text.length)),
    () => "",
    () => "no XML at all",
    () => text.replaceAll(`<${tag} `, `<x:${tag} `),
    () => text.replaceAll(`<${tag}`, `<odd_${tag}`).replaceAll(`</${tag}`, `</odd_${tag}`),
    () => text.replace(/ xmlns="[^"]*"/, ' xmlns="urn:farm:other"'),
    () => text.replace(/ xmlns="[^"]*"/, ""),
    () => text.replace(/ (\w+)="([^"]*)"/, " $1='$2'"),
    () => text.replace(/ \w+="[^"]*"/g, (found) => (dice.chance(0.2) ? "" : found)),
    () =>
      text.replace(/="(\d+)"/g, (found) =>
        dice.chance(0.2) ? `="${dice.one(["-1", "x", "1E9", "99999999999", ""])}"` : found,
      ),
    () => text.replace(/<\/?\w+[^>]*>/g, (found) => (dice.chance(0.05) ? "" : found)),
    () => text.replace(/<(\w+)[^>]*\/>/g, (found) => (dice.chance(0.3) ? found + found : found)),
    () =>
      text.replace(/>/g, (found) =>
        dice.chance(0.1) ? `>${dice.one(["<!-- > -->", "<?x y?>", "\n", "<![CDATA[ ]]>"])}` : found,
      ),
    () => `\ufeff${text}`,
    () => Uint8Array.from([0xff, 0xfe, ...Buffer.from(text, "utf16le")]),
    () => text.replace(/encoding="UTF-8"/, 'encoding="ISO-8859-1"'),
    () => text.replace(/^(<\?xml[^>]*>)?/, '$1<!DOCTYPE x [<!ENTITY e "e">]>'),
    () => bytes.map((byte) => (dice.chance(0.01) ? dice.whole(0, 255) : byte)),
    () => text.replace(/<(\w+)/, `<$1 a="1" a="2"`),
  ])();
}

const twist =
  (part: string) =>
  (draft: Draft, dice: Dice): void => {
    draft.parts[part] = twisted(String(draft.parts[part] ?? ""), dice);
  };

/** One kind of oddity each; a file has several. */
const INGREDIENTS: Readonly<Record<string, (draft: Draft, dice: Dice) => void>> = {
  "64-bit records": (draft) => {
    draft.pack = (parts) => zip64(parts);
  },
  "backslashes in names": (draft) => {
    draft.pack = (parts) => zip64(parts, "\\");
  },
  "parts that share their bytes": (draft, dice) => {
    draft.after.push((bytes) => {
      const { entries } = zipDirectory("farm.xlsx", bytes);
      const [one, other] = [dice.one(entries), dice.one(entries)];
      const shared = bytes.slice();
      new DataView(shared.buffer).setUint32(other.recordStart + 42, one.offset + dice.whole(0, 1), true);
      return shared;
    });
  },
  "records that lie": (draft, dice) => {
    draft.after.push((bytes) => {
      const { name } = dice.one(zipDirectory("farm.xlsx", bytes).entries);
      const change = dice.one([
        { unpackedBytes: dice.size(4e9) },
        { method: dice.one([0, 1, 9, 12, 99]) },
        { flags: dice.one([1, 8, 0x800, 0x2000]) },
        { crc: dice.whole(0, 2 ** 32 - 1) },
        { name: "../".repeat(9).slice(0, strToU8(name).length).padEnd(strToU8(name).length, "x") },
      ]);
      return changeEntry(bytes, name, change);
    });
  },
  "bytes that were hit": (draft, dice) => {
    draft.after.push((bytes) => {
      const hit = bytes.slice();
      for (let n = dice.size(30); n > 0; n--) hit[dice.whole(0, hit.length - 1)] = dice.whole(0, 255);
      return hit;
    });
  },
  "an end that is missing or more": (draft, dice) => {
    draft.after.push((bytes) =>
      dice.chance(0.5)
        ? bytes.subarray(0, dice.whole(0, bytes.length))
        : new Uint8Array([...bytes, ...new Uint8Array(dice.size(1000))]),
    );
  },
  "bytes before the start": (draft, dice) => {
    draft.after.push((bytes) => new Uint8Array([...new Uint8Array(dice.size(400)), ...bytes]));
  },
  "many sheets on one part": (draft, dice) => {
    const entries = Array.from(
      { length: dice.size(3000) },
      (_, i) => `<sheet name="s${i}" sheetId="${i + 9}" r:id="rId1"/>`,
    );
    changed(draft, BOOK, "</sheets>", `${entries.join("")}</sheets>`);
  },
  "many sheets": (draft, dice) => {
    const count = dice.size(120);
    for (let i = 0; i < count; i++) {
      draft.parts[`xl/worksheets/more${i}.xml`] = draft.parts[BESIDE];
      addRelation(
        draft,
        relation(`rIdM${i}`, dice.chance(0.1) ? "chartsheet" : "worksheet", `worksheets/more${i}.xml`),
      );
    }
    const state = dice.one(["", ' state="hidden"', ' state="veryHidden"', ' state="odd"']);
    const entries = Array.from(
      { length: count },
      (_, i) => `<sheet name="more ${i}" sheetId="${i + 9}"${state} r:id="rIdM${i}"/>`,
    );
    changed(draft, BOOK, "</sheets>", `${entries.join("")}</sheets>`);
  },
  "odd sheet names": (draft, dice) => {
    const name = dice.one([
      ...ACTING.filter((sign) => sign !== "\u0000" && sign !== "\u001b[31m" && sign !== "\u0007"),
      "Findings",
      "findings",
      "Choice",
      "'Counts'",
      "",
      " ",
      "x".repeat(200),
      "a/b*[c]:?",
      'O\'Brien & "sons" <1>',
      "__proto__",
      "History",
    ]);
    changed(draft, BOOK, /name="Counts"/, `name="${attribute(name)}"`);
  },
  "sheets of one name": (draft, dice) => {
    changed(draft, BOOK, /name="Beside"/, `name="${dice.one(["Counts", "COUNTS", "counts"])}"`);
  },
  "relation ids that differ in case": (draft) => {
    changed(draft, BOOK, 'r:id="rId2"', 'r:id="RID1"');
    changed(draft, RELATIONS, 'Id="rId2"', 'Id="RID1"');
  },
  "relations that are none": (draft, dice) => {
    const odd = dice.one([
      '<Relationship Id="rIdA" Target="a.xml"/>',
      '<Relationship Id="rIdA" Type="http://x/y" Target="http://[bad"/>',
      '<Relationship Id="rIdA" Type="http://x/y" Target="%E0%A4%A"/>',
      '<Relationship Type="http://x/styles" Target="/"/>',
      '<Relationship Id="rId1" Type="http://x/worksheet" Target="worksheets/sheet2.xml"/>',
      '<Relationship Id="rIdA" Type="http://x/customXml" Target="../../../../etc/passwd"/>',
      '<Relationship Id="rIdA" Type="http://x/customXml" Target="gone.xml" TargetMode="External"/>',
      '<Relationship Id="rIdA" Type="http://x/customXml" Target=""/>',
      '<Relationship Id="rIdCordonbook1" Type="http://x/theme" Target="theme/theme1.xml"/>',
      "<Relationship/>",
      "<other><Relationship/></other>",
      relation("rIdA", "calcChain", "calcChain.xml"),
      relation("rIdA", "sharedStrings", "sharedStrings.xml"),
      relation("rIdA", "styles", "worksheets/sheet1.xml"),
    ]);
    addRelation(draft, odd);
  },
  "targets written in other ways": (draft, dice) => {
    const target = dice.one([
      "/xl/worksheets/sheet1.xml",
      "./worksheets/sheet1.xml",
      "../xl/worksheets/sheet1.xml",
      "WORKSHEETS/Sheet1.xml",
      "worksheets\\sheet1.xml",
      "worksheets/sheet1.xml#a",
      "worksheets/%73heet1.xml",
      "xl/worksheets/sheet1.xml",
    ]);
    changed(draft, RELATIONS, 'Target="worksheets/sheet1.xml"', `Target="${target}"`);
  },
  "a twisted list of content types": twist(TYPES),
  "a twisted workbook part": twist(BOOK),
  "twisted relations": twist(RELATIONS),
  "twisted relations of the package": twist(ROOT_RELATIONS),
  "twisted styles": twist(STYLES),
  "a twisted sheet of counts": twist(COUNTS),
  "a twisted sheet beside": twist(BESIDE),
  "twisted shared texts": twist(STRINGS),
  "a part that is missing": (draft, dice) => {
    delete draft.parts[dice.one(Object.keys(draft.parts))];
  },
  "content types that a writer forgot or wrote twice": (draft, dice) => {
    const all = [...String(draft.parts[TYPES]).matchAll(/<(?:Override|Default)[^>]*>/g)].map(
      ([found]) => found,
    );
    const one = dice.one(all);
    changed(
      draft,
      TYPES,
      one,
      dice.one(["", one + one, one.toUpperCase(), one.replace("/>", ' x="1"/>'), `<other>${one}</other>`]),
    );
  },
  "formats without end": (draft, dice) => {
    changed(draft, STYLES, /<cellXfs[^>]*>/, (found) => found + "<xf/>".repeat(dice.size(150_000)));
    if (dice.chance(0.5)) changed(draft, BOOK, "<workbookPr ", '<workbookPr date1904="1" ');
  },
  "styles of little": (draft, dice) => {
    const list = dice.one(["fonts", "fills", "borders", "cellStyleXfs", "cellXfs"]);
    changed(
      draft,
      STYLES,
      new RegExp(`<${list}[^>]*>.*</${list}>`),
      dice.one(["", `<${list}/>`, `<${list} count="0"></${list}>`]),
    );
    if (dice.chance(0.5))
      changed(
        draft,
        STYLES,
        "</styleSheet>",
        dice.one([
          "<dxfs/>",
          '<dxfs count="9"></dxfs>',
          '<numFmts count="1"><numFmt numFmtId="4294967295" formatCode="0"/></numFmts>',
          "<extLst/>",
          "<colors/><dxfs/>",
        ]) + "</styleSheet>",
      );
  },
  "shared texts without end": (draft, dice) => {
    changed(
      draft,
      STRINGS,
      "</sst>",
      `${dice.one(["<si/>", "<si><t/></si>", "<si><t>a</t></si>"]).repeat(dice.size(300_000))}</sst>`,
    );
    changed(draft, COUNTS, /<c r="A2".*?<\/c>/, '<c r="A2" t="s"><v>0</v></c>');
  },
  "odd shared texts": (draft, dice) => {
    const si = dice.one([
      "<si><r><t>North</t></r><r><rPr><b/></rPr><t> Bench</t></r></si>",
      '<si><t>North Bench</t><rPh sb="0" eb="1"><t>NB</t></rPh><phoneticPr fontId="1"/></si>',
      "<si><t>North</t><t>Bench</t></si>",
      '<si><x:t xmlns:x="urn:farm:other">no</x:t><t>North Bench</t></si>',
      `<si><t>${xmlText(dice.one(TEXTS))}</t></si>`,
      "<si><extLst><ext><t>no</t></ext></extLst></si>",
      "<r><t>none</t></r><si/>",
    ]);
    changed(draft, STRINGS, /(<sst[^>]*>)/, (found) => found + si);
    changed(
      draft,
      COUNTS,
      /<c r="A2".*?<\/c>/,
      `<c r="A2" t="s"><v>${dice.one(["0", "1", "-1", "7", "", "0x0", "0.5", " 0 "])}</v></c>`,
    );
  },
  "defined names without end": (draft, dice) => {
    const count = dice.size(110_000);
    changed(
      draft,
      BOOK,
      "</sheets>",
      `</sheets><definedNames>${Array.from({ length: count }, (_, i) => `<definedName name="n${i}">1</definedName>`).join("")}</definedNames>`,
    );
  },
  "odd defined names": (draft, dice) => {
    const name = dice.one([
      '<definedName name="_Cordonbook_own" localSheetId="0" hidden="1">TRUE</definedName>',
      '<definedName name="_Cordonbook_own" localSheetId="99" hidden="1">TRUE</definedName>',
      '<definedName name="_Cordonbook_own">TRUE</definedName>',
      '<definedName name="_Cordonbook_own" localSheetId="x">TRUE</definedName>',
      '<definedName name="Cordonbook_Findings">Counts!$A$1</definedName>',
      `<definedName name="${attribute(dice.one(TEXTS))}">${"1+".repeat(dice.size(60_000))}1</definedName>`,
      "<definedName/>",
      "<other/>",
    ]);
    changed(
      draft,
      BOOK,
      "</sheets>",
      `</sheets>${dice.one([`<definedNames>${name}</definedNames>`, "<definedNames/>", `<definedNames>${name}${name}</definedNames>`])}`,
    );
  },
  "a shared formula": (draft, dice) => {
    const length = dice.size(8000);
    const count = dice.size(5000);
    const formula = "B1+".repeat(Math.ceil(length / 3)) + "1";
    const last = dice.one(["A1", `T${20 + count}`, "T20:T99999999", "", "x"]);
    const rows = Array.from(
      { length: count },
      (_, i) =>
        `<row r="${i + 21}"><c r="T${i + 21}"><f t="shared" si="${dice.chance(0.02) ? 9 : 0}"/><v>1</v></c></row>`,
    );
    changed(
      draft,
      COUNTS,
      "</sheetData>",
      `<row r="20"><c r="T20"><f t="shared" si="0" ref="T20:${last}">${formula}</f><v>1</v></c></row>${rows.join("")}</sheetData>`,
    );
  },
  "odd cells": (draft, dice) => {
    const cell = dice.one([
      '<c r="G2"><v>0x10</v></c>',
      '<c r="G2"><v>-0</v></c>',
      '<c r="G2"><v>1E999</v></c>',
      '<c r="G2"><v>1,5</v></c>',
      '<c r="G2"><v> 3 </v></c>',
      '<c r="G2"><v></v></c>',
      '<c r="G2" t="e"><v>#WHAT!</v></c>',
      '<c r="G2" t="d"><v>2026-01-12T00:00:00</v></c>',
      '<c r="G2" t="d"><v>never</v></c>',
      '<c r="G2" t="zzz"><v>3</v></c>',
      '<c r="G2" t="b"><v>yes</v></c>',
      '<c r="G2" s="99999"><v>3</v></c>',
      '<c r="G2" s="x"><v>3</v></c>',
      '<c r="G2"><x:v xmlns:x="urn:farm:other">9</x:v><v>3</v></c>',
      '<c r="G2"><v>3</v><v>4</v></c>',
      '<c r="G2"><v>3</v><extLst><ext><v>9</v></ext></extLst></c>',
      '<c r="G2" cm="1"><f t="array" ref="G2:G4">ROW()</f><v>3</v></c>',
      '<c r="G2"><f t="dataTable" ref="G2" dt2D="1"/><v>3</v></c>',
      '<c r="G2"><f>1<!-- --></f><v>3</v></c>',
      "<c><v>3</v></c>",
      '<c r="g2"><v>3</v></c>',
      '<c r="$G$2"><v>3</v></c>',
      '<c r="G02"><v>3</v></c>',
      '<c r="XFD2"><v>3</v></c>',
      '<c r="G2" t="inlineStr"><is/></c>',
      '<c r="G2" t="str"/>',
      '<mc:AlternateContent xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006"><mc:Choice Requires="x"><c r="G2"><v>3</v></c></mc:Choice><mc:Fallback><c r="G2"><v>4</v></c></mc:Fallback></mc:AlternateContent>',
    ]);
    changed(draft, COUNTS, /<c r="G2".*?<\/c>/, cell);
  },
  "odd rows": (draft, dice) => {
    changed(
      draft,
      COUNTS,
      '<row r="2">',
      dice.one([
        "<row>",
        '<row r="2" r2="3">',
        '<row r="3">',
        '<row r="1048576">',
        '<row r="0">',
        '<row r=" 2 ">',
        '<row r="2" hidden="1" spans="x">',
        '<x:row xmlns:x="urn:farm:other"/><row r="2">',
      ]),
    );
  },
  "cells far apart": (draft, dice) => {
    const row = dice.size(1_048_576);
    changed(
      draft,
      COUNTS,
      "</sheetData>",
      `<row r="${row + 13}"><c r="${cellName(row + 13, dice.size(16_384))}"><v>1</v></c></row></sheetData>`,
    );
  },
  "rows that are empty, many": (draft, dice) => {
    changed(
      draft,
      COUNTS,
      "</sheetData>",
      `${Array.from({ length: dice.size(40_000) }, (_, i) => `<row r="${i + 30}"/>`).join("")}</sheetData>`,
    );
  },
  "a sheet of nothing": (draft, dice) => {
    changed(
      draft,
      BESIDE,
      /<sheetData>.*<\/sheetData>/,
      dice.one([
        "<sheetData/>",
        "",
        "<sheetData></sheetData><sheetData></sheetData>",
        "<sheetData><row/></sheetData>",
      ]),
    );
  },
  "data bars with extensions": (draft, dice) => {
    const id = "{DA7ABA51-AAAA-BBBB-0001-000000000001}";
    const bar = `<dataBar><cfvo type="min"/><cfvo type="max"/><color rgb="FF638EC6"/></dataBar>`;
    const priority = dice.one(["1", "2147483647", "x", "-1", ""]);
    const own = `<extLst><ext xmlns:x14="${X14}" uri="{B025F937-C7B1-47D3-B67F-A62EFF666E3E}"><x14:id>${id}</x14:id></ext></extLst>`;
    const formats = `<conditionalFormatting sqref="I2:I12"><cfRule type="dataBar" priority="${priority}">${bar}${own}</cfRule></conditionalFormatting>`;
    const extended =
      `<extLst><ext xmlns:x14="${X14}" uri="{78C0D931-6437-407d-A8EE-F0AAD7539E65}"><x14:conditionalFormattings><x14:conditionalFormatting xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main">` +
      `<x14:cfRule type="dataBar" id="${id}"><x14:dataBar minLength="0" maxLength="100"><x14:cfvo type="autoMin"/><x14:cfvo type="autoMax"/></x14:dataBar></x14:cfRule><xm:sqref>I2:I12</xm:sqref></x14:conditionalFormatting></x14:conditionalFormattings></ext></extLst>`;
    behindRows(
      draft,
      formats +
        dice.one([
          "",
          "<hyperlinks/>",
          '<pageMargins left="1" right="1" top="1" bottom="1" header="1" footer="1"/>',
        ]) +
        extended,
    );
  },
  "marks of ours that are none": (draft, dice) => {
    const severity = dice.one(["wrong", "ask", "odd"]);
    behindRows(
      draft,
      `<conditionalFormatting sqref="A1"><cfRule type="expression" dxfId="${dice.one(["0", "99"])}" priority="1"><formula>N("Cordonbook ${severity}")=0</formula></cfRule>${dice.chance(0.5) ? '<cfRule type="expression" priority="2"><formula>1</formula></cfRule>' : ""}</conditionalFormatting>`,
    );
  },
  "things behind the rows": (draft, dice) => {
    const things = [
      '<sheetProtection sheet="1"/>',
      '<autoFilter ref="A1:I9"/>',
      '<mergeCells count="1"><mergeCell ref="K1:M2"/></mergeCells>',
      '<mergeCells><mergeCell ref="A1:XFD1048576"/></mergeCells>',
      '<mergeCells><mergeCell ref="x"/><mergeCell/></mergeCells>',
      '<dataValidations count="1"><dataValidation type="whole" sqref="I2:I9"><formula1>0</formula1></dataValidation></dataValidations>',
      '<hyperlinks><hyperlink ref="A1" location="x"/></hyperlinks>',
      '<pageSetup orientation="landscape"/>',
      "<legacyDrawing/>",
      "<tableParts/>",
      '<conditionalFormatting sqref="A1"/>',
      '<oddElement><sheetData><row r="1"/></sheetData></oddElement>',
      "<extLst><ext><conditionalFormatting/></ext></extLst>",
    ];
    behindRows(draft, dice.some(things, 1, 3).join(""));
  },
  "a protected workbook": (draft, dice) => {
    changed(
      draft,
      BOOK,
      "<sheets>",
      `<workbookProtection lockStructure="${dice.one(["1", "true", "0", "x"])}"/><sheets>`,
    );
  },
  "a signature": (draft) => {
    draft.parts["_xmlsignatures/sig1.xml"] = "<Signature/>";
  },
  "days from 1904": (draft, dice) => {
    changed(draft, BOOK, "<workbookPr ", `<workbookPr date1904="${dice.one(["1", "true", "x", "0"])}" `);
  },
  "facts of ours that are odd": (draft, dice) => {
    const key = dice.one([
      "former.x",
      "copyOf",
      "heads",
      "setAside",
      "answers",
      "a".repeat(5000),
      "__proto__",
    ]);
    const value = dice.one(["", "null", "[]", "{}", "[1,2]", '["farm.xlsx"]', '{"a":', "9".repeat(50_000)]);
    const flags = `<flag key="${key}">${xmlText(value)}</flag>`;
    draft.parts["customXml/cordonbook1.xml"] = dice.one([
      `<flags xmlns="urn:cordonbook:flags">${flags.repeat(dice.size(3000))}</flags>`,
      `<flags xmlns="urn:cordonbook:flags">${flags}`,
      '<flags xmlns="urn:cordonbook:flags"/>',
      `<f:flags xmlns:f="urn:cordonbook:flags"><f:flag key="${key}"/></f:flags>`,
    ]);
    addRelation(draft, relation("rIdF", "customXml", "../customXml/cordonbook1.xml"));
  },
  "parts of somebody's own": (draft, dice) => {
    for (let n = dice.whole(1, 4); n > 0; n--)
      draft.parts[
        dice.one([
          `customXml/item${n}.xml`,
          `xl/media/image${n}.png`,
          `farm own ${n}/\u00e9.dat`,
          `xl/worksheets/cordonbook${n}.xml`,
          `xl/tables/cordonbook${n}.xml`,
          `xl/vba${n}.bin`,
        ])
      ] = Uint8Array.from({ length: dice.size(5000) }, () => dice.whole(0, 255));
  },
  "a list of cells to calculate": (draft, dice) => {
    draft.parts["xl/calcChain.xml"] = dice.one(['<calcChain><c r="A1" i="1"/></calcChain>', "odd", ""]);
    addRelation(
      draft,
      relation("rIdC", "calcChain", dice.one(["calcChain.xml", "/xl/calcChain.xml", "gone.xml"])),
    );
    if (dice.chance(0.7))
      changed(
        draft,
        TYPES,
        "</Types>",
        `${override("xl/calcChain.xml", "application/vnd.openxmlformats-officedocument.spreadsheetml.calcChain+xml")}</Types>`,
      );
  },
  "a table over the counts": (draft, dice) => {
    const last = 1 + [...String(draft.parts[COUNTS]).matchAll(/<row /g)].length;
    const id = dice.one(["1", "4294967295", "0", "x", ""]);
    const name = dice.one(["Counts", "Cordonbook_Findings", "A1", "", "x y"]);
    draft.parts["xl/tables/table1.xml"] =
      `<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="${id}" name="${name}" displayName="${name}" ref="${dice.one([`A1:I${last}`, "A1", "x", ""])}"><tableColumns count="9">${HEADS.map((head, i) => `<tableColumn id="${i + 1}" name="${head}"/>`).join("")}</tableColumns></table>`;
    draft.parts["xl/worksheets/_rels/sheet1.xml.rels"] = relations(
      relation("rId1", "table", dice.one(["../tables/table1.xml", "/xl/tables/table1.xml", "gone.xml"])),
    );
    behindRows(draft, '<tableParts count="1"><tablePart r:id="rId1"/></tableParts>');
    changed(
      draft,
      TYPES,
      "</Types>",
      `${override("xl/tables/table1.xml", "application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml")}</Types>`,
    );
  },
  "sheet numbers at the end of their range": (draft, dice) => {
    changed(draft, BOOK, 'sheetId="2"', `sheetId="${dice.one(["4294967295", "65534", "x", "", "1", "-3"])}"`);
  },
  "another prefix": (draft) => {
    const part = COUNTS;
    changed(draft, part, /<(\/?)(?=[a-zA-Z]\w*[\s/>])/g, (found) => `${found}m:`);
    changed(draft, part, ' xmlns="', ' xmlns:m="');
  },
  "rows of another namespace": (draft) => {
    changed(
      draft,
      COUNTS,
      "<sheetData>",
      '<x:sheetData xmlns:x="urn:farm:other"><row r="1"><c r="A1"><v>9</v></c></row></x:sheetData><sheetData>',
    );
  },
  "elements nested deep": (draft, dice) => {
    const depth = dice.size(5000);
    changed(
      draft,
      dice.one([COUNTS, BOOK, STYLES, STRINGS, TYPES, RELATIONS]),
      /<\/\w+>$/,
      (found) => "<a>".repeat(depth) + "</a>".repeat(depth) + found,
    );
  },
};

/** The names of all oddities, for whoever counts them. */
export const ODDITIES = Object.keys(INGREDIENTS);

/** A workbook of counts with one to four oddities. */
export function oddWorkbook(dice: Dice): { bytes: Uint8Array; oddities: string[] } {
  const parts = workbookParts({
    sheets: { Counts: counts(dice), Beside: rowXml(1, ["Weather", "dry"]) },
    strings: "<si><t>North Bench</t></si>",
    strict: dice.chance(0.1),
  });
  const draft: Draft = { parts, pack: zipParts, after: [] };
  const oddities = dice.some(ODDITIES, 1, 4);
  for (const oddity of oddities) INGREDIENTS[oddity](draft, dice);
  let bytes = draft.pack(draft.parts);
  try {
    for (const change of draft.after) bytes = change(bytes);
  } catch {
    return { bytes, oddities: [...oddities, "the last could not be done to the bytes"] };
  }
  return { bytes, oddities };
}
