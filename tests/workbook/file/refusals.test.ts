import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { FILE_PROBLEMS } from "../../../src/texts/fileProblems";
import { LANGUAGES, say } from "../../../src/texts/language";
import { openWorkbookBytes, type OpenWorkbook } from "../../../src/workbook/file/openWorkbook";
import { openWorkbookFile } from "../../../src/workbook/file/openWorkbookFile";
import { READ_LIMITS, type ReadLimits } from "../../../src/workbook/file/readLimits";
import { WorkbookProblem } from "../../../src/workbook/surveyWorkbook";
import { buildWorkbook } from "./buildWorkbook";
import { HOSTILE_FILES, type HostileFile } from "./hostileFiles";

jest.setTimeout(120_000);

const folder = mkdtempSync(join(tmpdir(), "cordonbook-refusals-"));
afterAll(() => rmSync(folder, { recursive: true }));

const made = new Map<string, Uint8Array>();
/** The bytes of a file, made once for both places. */
function bytesOf({ why, bytes }: HostileFile): Uint8Array {
  const known = made.get(why) ?? bytes();
  made.set(why, known);
  return known;
}

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
  test.each(HOSTILE_FILES)("with $why is refused", async (file) => {
    const { code, limits } = file;
    const reading = open(bytesOf(file), { ...READ_LIMITS, ...limits }).then(readAll);
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
    buildWorkbook({
      sheets: { Sheet1: '<row r="1"><c r="A1" t="inlineStr"><is><t>__proto__</t></is></c></row>' },
    }),
  );
  expect((await book.readSheet("Sheet1")).values).toEqual([["__proto__"]]);
  expect(({} as Record<string, unknown>).polluted).toBeUndefined();
});
