import type { Browser, Page } from "playwright-core";
import { surveyWorkbookContract } from "../workbook/contract";
import { startChromium } from "./chromium";
import { scriptPage } from "./scriptFor";

interface ContractPage {
  readonly ruleNames: string[];
  runRule(name: string): Promise<string | undefined>;
}

describe("the desk page's workbook keeps the contract of every host", () => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await startChromium();
    page = await scriptPage(browser, "tests/browser/pages/deskContract.ts", "window.runRule");
  }, 120_000);
  afterAll(() => browser?.close());

  const names = surveyWorkbookContract(() => Promise.reject(new Error("only the names are wanted"))).map(
    ({ name }) => name,
  );
  test.each(names)("%s", async (name) => {
    const problem = await page.evaluate((rule) => (window as unknown as ContractPage).runRule(rule), name);
    expect(problem).toBeUndefined();
  });
});
