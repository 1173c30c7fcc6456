import type { ReadLimits } from "../../../src/workbook/file/readLimits";
import { zipDirectory } from "../../../src/workbook/file/zipDirectory";
import { buildWorkbook, changeEntry, workbookParts, zipParts } from "./buildWorkbook";

const SHEET = "xl/worksheets/sheet1.xml";
const row = (inner: string) => buildWorkbook({ sheets: { Sheet1: inner } });
const withSheet = (xml: string) => buildWorkbook({ parts: { [SHEET]: xml } });

/** A file that is not to be read, and the code of the problem that says why. */
export interface HostileFile {
  readonly why: string;
  readonly code: string;
  readonly bytes: () => Uint8Array;
  /** Limits that it breaks, where the usual ones would take too large a file. */
  readonly limits?: Partial<ReadLimits>;
}

/** Files that nobody vouches for, made when they are wanted. */
export const HOSTILE_FILES: readonly HostileFile[] = [
  { why: "an empty file", code: "emptyFile", bytes: () => new Uint8Array() },
  { why: "a file of another kind", code: "notAWorkbook", bytes: () => Buffer.from("%PDF-1.7 and so on") },
  {
    why: "an old or locked workbook",
    code: "oldOrLockedFile",
    bytes: () => Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]),
  },
  { why: "the start of a zip only", code: "damagedFile", bytes: () => buildWorkbook().subarray(0, 300) },
  { why: "a file cut short", code: "damagedFile", bytes: () => buildWorkbook().subarray(0, -30) },
  {
    why: "a zip that is no workbook",
    code: "notAWorkbook",
    bytes: () => zipParts({ "notes.txt": "nothing here" }),
  },
  {
    why: "a text document",
    code: "notAWorkbook",
    bytes: () => buildWorkbook({ parts: { "xl/workbook.xml": "<document/>" } }),
  },
  {
    why: "a binary workbook",
    code: "binaryWorkbook",
    bytes: () => {
      const parts = workbookParts();
      return zipParts({
        ...parts,
        "xl/workbook.bin": "x",
        "_rels/.rels": String(parts["_rels/.rels"]).replace("workbook.xml", "workbook.bin"),
      });
    },
  },
  {
    why: "more parts than a workbook has",
    code: "tooManyParts",
    bytes: () =>
      zipParts({
        ...workbookParts(),
        ...Object.fromEntries(Array.from({ length: 30 }, (_, i) => [`junk/${i}`, ""])),
      }),
    limits: { parts: 20 },
  },
  {
    why: "two parts of one name",
    code: "samePartTwice",
    bytes: () =>
      changeEntry(
        zipParts({ ...workbookParts(), "xl/worksheets/sheetX.xml": "<a/>" }),
        "xl/worksheets/sheetX.xml",
        {
          name: "xl/worksheets/SHEET1.xml",
        },
      ),
  },
  {
    why: "a part name that leads out of the file",
    code: "badPartName",
    bytes: () =>
      changeEntry(zipParts({ ...workbookParts(), "xx/yyyyyy": "" }), "xx/yyyyyy", { name: "../yyyyyy" }),
  },
  {
    why: "an encrypted part",
    code: "lockedFile",
    bytes: () => changeEntry(buildWorkbook(), SHEET, { flags: 1 }),
  },
  {
    why: "an unusual packing",
    code: "unknownPacking",
    bytes: () => changeEntry(buildWorkbook(), SHEET, { method: 12 }),
  },
  {
    why: "a part far larger than the file, as its directory admits",
    code: "expandsTooFar",
    bytes: () => withSheet(`<worksheet><sheetData>${" ".repeat(60_000_000)}</sheetData></worksheet>`),
  },
  {
    why: "a part larger than its directory says",
    code: "sizeLies",
    bytes: () =>
      changeEntry(
        withSheet(`<worksheet><sheetData>${" ".repeat(20_000_000)}</sheetData></worksheet>`),
        SHEET,
        {
          unpackedBytes: 1000,
        },
      ),
  },
  {
    why: "a part smaller than its directory says",
    code: "sizeLies",
    bytes: () => changeEntry(buildWorkbook(), SHEET, { unpackedBytes: 100_000 }),
  },
  {
    why: "a part whose checksum does not fit",
    code: "damagedPart",
    bytes: () => changeEntry(row('<row r="1"><c r="A1"><v>1</v></c></row>'), SHEET, { crc: 12345 }),
  },
  {
    why: "a document type",
    code: "documentType",
    bytes: () => withSheet('<!DOCTYPE a [<!ENTITY b "bb">]><worksheet>&b;</worksheet>'),
  },
  {
    why: "a document type that reads another file",
    code: "documentType",
    bytes: () =>
      buildWorkbook({
        parts: {
          "xl/sharedStrings.xml":
            '<!DOCTYPE a [<!ENTITY b SYSTEM "file:///etc/hostname">]><sst><si><t>&b;</t></si></sst>',
        },
        sheets: { Sheet1: '<row r="1"><c r="A1" t="s"><v>0</v></c></row>' },
      }),
  },
  { why: "XML that ends early", code: "badXml", bytes: () => withSheet("<worksheet><sheetData>") },
  { why: "an unknown entity", code: "badXml", bytes: () => withSheet("<worksheet>&nbsp;</worksheet>") },
  {
    why: "bytes that are no UTF-8",
    code: "badXml",
    bytes: () => buildWorkbook({ parts: { [SHEET]: Uint8Array.from([0x3c, 0x61, 0x3e, 0xff, 0xfe, 0x3c]) } }),
  },
  {
    why: "elements nested without end",
    code: "tooDeep",
    bytes: () => withSheet("<worksheet><sheetData>" + "<a>".repeat(200_000)),
  },
  {
    why: "a row past the last one",
    code: "rowPastLimit",
    bytes: () => row('<row r="1048577"><c r="A1048577"><v>1</v></c></row>'),
  },
  { why: "a row number that is none", code: "rowPastLimit", bytes: () => row('<row r="-1"/>') },
  {
    why: "a row twice",
    code: "rowTwice",
    bytes: () => row('<row r="2"><c r="A2"><v>1</v></c></row><row r="2"><c r="A2"><v>2</v></c></row>'),
  },
  {
    why: "rows out of order",
    code: "rowTwice",
    bytes: () => row('<row r="9"><c r="A9"><v>1</v></c></row><row r="2"><c r="A2"><v>2</v></c></row>'),
  },
  {
    why: "a column past the last one",
    code: "columnPastLimit",
    bytes: () => row('<row r="1"><c r="XFE1"><v>1</v></c></row>'),
  },
  {
    why: "a cell twice",
    code: "cellTwice",
    bytes: () => row('<row r="1"><c r="A1"><v>1</v></c><c r="A1"><v>2</v></c></row>'),
  },
  {
    why: "a cell of another row",
    code: "badCell",
    bytes: () => row('<row r="1"><c r="A2"><v>1</v></c></row>'),
  },
  {
    why: "a cell address that is none",
    code: "badCell",
    bytes: () => row('<row r="1"><c r="A-1"><v>1</v></c></row>'),
  },
  {
    why: "a shared text that is not there",
    code: "badCell",
    bytes: () => row('<row r="1"><c r="A1" t="s"><v>77</v></c></row>'),
  },
  {
    why: "a shared text with a name from JavaScript",
    code: "badCell",
    bytes: () => row('<row r="1"><c r="A1" t="s"><v>__proto__</v></c></row>'),
  },
  {
    why: "a number that is none",
    code: "badNumber",
    bytes: () => row('<row r="1"><c r="A1"><v>1,5</v></c></row>'),
  },
  {
    why: "a number without end",
    code: "badNumber",
    bytes: () => row('<row r="1"><c r="A1"><v>1E999</v></c></row>'),
  },
  {
    why: "a text without end",
    code: "tooMuchText",
    bytes: () => row(`<row r="1"><c r="A1" t="inlineStr"><is><t>${"a".repeat(200_000)}</t></is></c></row>`),
  },
  {
    why: "a text of thirty million characters",
    code: "tooMuchText",
    bytes: () => row(`<row r="1"><c r="A1" t="inlineStr"><is><t>${"a".repeat(30_000_000)}`),
  },
  {
    why: "an attribute of thirty million characters",
    code: "tooMuchText",
    bytes: () => row(`<row r="1"><c r="A1" t="${"a".repeat(30_000_000)}`),
  },
  {
    why: "a shared text of many small runs",
    code: "tooMuchText",
    bytes: () =>
      buildWorkbook({
        parts: {
          "xl/sharedStrings.xml": `<sst><si>${"<r><t>abcdefghij</t></r>".repeat(200_000)}</si></sst>`,
        },
        sheets: { Sheet1: '<row r="1"><c r="A1" t="s"><v>0</v></c></row>' },
      }),
  },
  {
    why: "a formula without end",
    code: "tooMuchText",
    bytes: () => row(`<row r="1"><c r="A1"><f>${"1+".repeat(100_000)}1</f><v>1</v></c></row>`),
  },
  {
    why: "two cells at opposite corners of the sheet",
    code: "tooManyCells",
    bytes: () =>
      row('<row r="1"><c r="A1"><v>1</v></c></row><row r="1048576"><c r="XFD1048576"><v>1</v></c></row>'),
  },
  {
    why: "a relation to a part that is not there",
    code: "missingPart",
    bytes: () => buildWorkbook({ parts: { [SHEET]: undefined } }),
  },
  {
    why: "two sheets of one name",
    code: "sameSheetTwice",
    bytes: () => buildWorkbook({ sheets: { Vines: "", VINES: "" } }),
  },
  {
    why: "millions of empty shared texts",
    code: "tooManyOf",
    bytes: () =>
      buildWorkbook({
        parts: { "xl/sharedStrings.xml": repeated(`<sst xmlns="${MAIN}">`, "<si/>", 3_100_000, "</sst>") },
        sheets: { Sheet1: '<row r="1"><c r="A1" t="s"><v>0</v></c></row>' },
      }),
  },
  {
    why: "thousands of sheets that are one part",
    code: "sheetsOnOnePart",
    bytes: () => {
      const parts = workbookParts();
      const entries = Array.from(
        { length: 5000 },
        (_, i) => `<sheet name="s${i}" sheetId="${i + 1}" r:id="rId1"/>`,
      );
      return zipParts({
        ...parts,
        "xl/workbook.xml": String(parts["xl/workbook.xml"]).replace(/<sheet .*?\/>/, entries.join("")),
      });
    },
  },
  {
    why: "a long formula that thirty thousand cells share",
    code: "tooMuchText",
    bytes: () =>
      row(
        `<row r="1"><c r="A1"><f t="shared" si="0" ref="A1:A30000">${"B1+".repeat(2700)}1</f><v>1</v></c></row>` +
          Array.from(
            { length: 29_999 },
            (_, i) => `<row r="${i + 2}"><c r="A${i + 2}"><f t="shared" si="0"/><v>1</v></c></row>`,
          ).join(""),
      ),
  },
  {
    why: "hundreds of thousands of defined names",
    code: "tooManyOf",
    bytes: () =>
      buildWorkbook({
        names: Array.from({ length: 110_000 }, (_, i) => `<definedName name="n${i}">1</definedName>`).join(
          "",
        ),
      }),
  },
  {
    why: "formats of cells without end, where days count from 1904",
    code: "tooManyOf",
    bytes: () =>
      buildWorkbook({
        workbookPr: 'date1904="1"',
        parts: {
          "xl/styles.xml": repeated(
            `<styleSheet xmlns="${MAIN}"><cellXfs>`,
            "<xf/>",
            200_000,
            "</cellXfs></styleSheet>",
          ),
        },
        sheets: { Sheet1: '<row r="1"><c r="A1"><v>1</v></c></row>' },
      }),
  },
  {
    why: "parts that share their bytes",
    code: "damagedFile",
    bytes: () => {
      const bytes = zipParts({
        ...workbookParts(),
        "xl/a.xml": "<a/>".repeat(1000),
        "xl/b.xml": "<a/>".repeat(1000),
      });
      const { entries } = zipDirectory("farm.xlsx", bytes);
      const [one, other] = ["xl/a.xml", "xl/b.xml"].map((name) =>
        entries.find((entry) => entry.name === name)!,
      );
      const shared = bytes.slice();
      new DataView(shared.buffer).setUint32(other.recordStart + 42, one.offset, true);
      return shared;
    },
  },
];

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

/** A part in which one element stands so many times. */
function repeated(start: string, element: string, times: number, end: string): Uint8Array {
  return Buffer.concat([Buffer.from(start), Buffer.alloc(element.length * times, element), Buffer.from(end)]);
}
