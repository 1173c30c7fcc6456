import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { FILE_PROBLEMS } from "../../../src/texts/fileProblems";
import { LANGUAGES, say } from "../../../src/texts/language";
import { openWorkbookBytes, type OpenWorkbook } from "../../../src/workbook/file/openWorkbook";
import { openWorkbookFile } from "../../../src/workbook/file/openWorkbookFile";
import { READ_LIMITS, type ReadLimits } from "../../../src/workbook/file/readLimits";
import { WorkbookProblem } from "../../../src/workbook/surveyWorkbook";
import { buildWorkbook, changeEntry, workbookParts, zipParts } from "./buildWorkbook";

const folder = mkdtempSync(join(tmpdir(), "cordonbook-refusals-"));
afterAll(() => rmSync(folder, { recursive: true }));

const SHEET = "xl/worksheets/sheet1.xml";
const row = (inner: string) => buildWorkbook({ sheets: { Sheet1: inner } });
const withSheet = (xml: string) => buildWorkbook({ parts: { [SHEET]: xml } });

const HOSTILE: readonly {
  readonly why: string;
  readonly code: string;
  readonly bytes: () => Uint8Array;
  readonly limits?: Partial<ReadLimits>;
}[] = [
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
];

async function readAll(book: OpenWorkbook): Promise<void> {
  try {
    for (const sheet of book.sheetNames) await book.readSheet(sheet);
  } finally {
    await book.close();
  }
}

describe.each([
  ["in memory", (bytes: Uint8Array, limits: ReadLimits) => openWorkbookBytes("farm.xlsx", bytes, limits)],
  [
    "on disk",
    (bytes: Uint8Array, limits: ReadLimits) => {
      const path = join(folder, "farm.xlsx");
      writeFileSync(path, bytes);
      return openWorkbookFile(path, limits);
    },
  ],
])("a file %s", (_where, open) => {
  test.each(HOSTILE)("with $why is refused", async ({ code, bytes, limits }) => {
    const reading = open(bytes(), { ...READ_LIMITS, ...limits }).then(readAll);
    const problem = await reading.then(
      () => undefined,
      (error: unknown) => error,
    );
    expect(problem).toBeInstanceOf(WorkbookProblem);
    expect(problem).toMatchObject({ code });
    const { facts } = problem as WorkbookProblem;
    expect(facts.file).toBe("farm.xlsx");
    for (const language of LANGUAGES)
      expect(say(FILE_PROBLEMS[code], language, facts)).not.toMatch(/\{\w+\}/);
  });
});

test("a file that is not there and a folder are refused", async () => {
  await expect(openWorkbookFile(join(folder, "none.xlsx"))).rejects.toMatchObject({ code: "noFile" });
  await expect(openWorkbookFile(folder)).rejects.toMatchObject({ code: "unreadableFile" });
});

test("a header called __proto__ stays a header", async () => {
  const book = await openWorkbookBytes(
    "farm.xlsx",
    row('<row r="1"><c r="A1" t="inlineStr"><is><t>__proto__</t></is></c></row>'),
  );
  expect((await book.readSheet("Sheet1")).values).toEqual([["__proto__"]]);
  expect(({} as Record<string, unknown>).polluted).toBeUndefined();
});
