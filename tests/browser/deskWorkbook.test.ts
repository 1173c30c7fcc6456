import { readdirSync, readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import type { SheetMarks } from "../../src/survey/reading/sheetArea";
import { surveyWorkbookContract } from "../workbook/contract";
import { MARKS, markedWorkbook } from "../workbook/file/markedWorkbook";
import { startChromium } from "./chromium";
import { scriptPage } from "./scriptFor";

interface ContractPage {
  readonly ruleNames: string[];
  runRule(name: string): Promise<string | undefined>;
  earlyAndThere(file: string, bytes: number[]): Promise<unknown[]>;
  marksOf(bytes: number[]): Promise<{ marks?: SheetMarks; isHidden?: boolean; hidden: string[] }>;
}

describe("the desk page's workbook keeps the contract of every host", () => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await startChromium();
    page = await scriptPage(browser, "tests/browser/pages/deskContract.ts", "window.runRule");
  });
  afterAll(() => browser?.close());

  const names = surveyWorkbookContract(() => Promise.reject(new Error("only the names are wanted"))).map(
    ({ name }) => name,
  );
  test.each(names)("%s", async (name) => {
    const problem = await page.evaluate((rule) => (window as unknown as ContractPage).runRule(rule), name);
    expect(problem).toBeUndefined();
  });

  test("an opened file keeps what is struck out, said and hidden", async () => {
    const { marks, ...spare } = await page.evaluate(
      (bytes) => (window as unknown as ContractPage).marksOf(bytes),
      [...markedWorkbook()],
    );
    expect(marks!.marked).toHaveLength(MARKS.marked.length);
    expect(marks!.marked).toEqual(
      expect.arrayContaining(MARKS.marked.map((mark) => expect.objectContaining(mark))),
    );
    expect(spare).toEqual({ isHidden: true, hidden: ["Spare"] });
    expect(marks).toMatchObject({ hiddenRows: MARKS.hiddenRows, hiddenColumns: MARKS.hiddenColumns });
  });

  const files: [string, () => Uint8Array][] = [
    ...["sample-workbooks", "tests/survey/foreign/sheets"].flatMap((folder) =>
      readdirSync(folder)
        .filter((name) => name.endsWith(".xlsx"))
        .map((name): [string, () => Uint8Array] => [name, () => readFileSync(`${folder}/${name}`)]),
    ),
    ["marked.xlsx", markedWorkbook],
    ["counts.csv", () => new TextEncoder().encode("Block;Row;Vine;Live spurs\nAsh;1;1;6\n\nAsh;1;2;7;odd\n")],
  ];
  test.each(files)("%s is read before the grid stands as it stands in it", async (name, bytes) => {
    const [early, there, then] = await page.evaluate(
      ([file, all]) => (window as unknown as ContractPage).earlyAndThere(file, all),
      [name, [...bytes()]] as [string, number[]],
    );
    expect(early).toEqual(there);
    expect(then).toEqual(there);
  });
});
