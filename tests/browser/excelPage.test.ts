import type { Browser, Page } from "playwright-core";
import { hostWith } from "../workbook/office/excelWorkbookOn";
import { startChromium } from "./chromium";
import { openExcelPage } from "./excelPage";

const COUNTS = {
  Cordons: [
    [
      "Block",
      "Row",
      "Vine",
      "Side",
      "Cordon",
      "Trunk",
      "Length (ft)",
      "Positions",
      "Live spurs",
      "Counted by",
    ],
    ["North Bench", 1, 1, "left", "A", 1, 3.5, 7, 6, "AB"],
    ["North Bench", 1, 1, "right", "B", 1, 3.5, 7, 9, "AB"],
  ],
};

const button = (page: Page, label: string) =>
  page.locator("fluent-button:visible, fluent-link:visible").filter({ hasText: label });

jest.setTimeout(60_000);

describe("the add-in's page", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await startChromium();
  }, 120_000);
  afterAll(() => browser.close());

  test("draws the pane under its own content security policy and binds every function", async () => {
    const { page, problems } = await openExcelPage(browser, hostWith(COUNTS));
    await button(page, "Check").first().waitFor();
    const functions = await page.evaluate(() => Object.keys(window.associated));
    expect(functions).toEqual(expect.arrayContaining(["NODEBUDGET", "GAPSBYROW", "VERSION"]));
    const value = await page.evaluate(() => window.associated.NODEBUDGET(3, "30+10"));
    expect(value).toEqual([[50]]);
    expect(problems).toEqual([]);
    await page.context().close();
  });

  test("checks the counts through the real proxies and goes to the cell", async () => {
    const host = hostWith(COUNTS);
    const before = JSON.stringify(host.book.snapshot());
    const { page, problems } = await openExcelPage(browser, host);
    await button(page, "Check").first().click();
    await page.locator("#check-result").waitFor();
    for (const kind of await page.locator("section fluent-accordion-item button#control").all())
      await kind.click();
    await button(page, "Cordons I3").first().click();
    for (let tries = 0; tries < 100 && !host.log.some(({ name }) => name === "Select"); tries++)
      await page.waitForTimeout(20);
    expect(host.log.map(({ name }) => name)).toContain("Select");
    expect(problems).toEqual([]);
    const sheet = JSON.parse(JSON.stringify(host.book.snapshot()))[0];
    expect(sheet.cells).toEqual(JSON.parse(before)[0].cells);
    await page.context().close();
  });

  test.each([
    ["en-US", "too old for Cordonbook: it lacks ExcelApi 1.12"],
    ["es-MX", "demasiado antiguo para Cordonbook: le falta ExcelApi 1.12"],
    ["fr-CA", "trop ancien pour Cordonbook : il lui manque ExcelApi 1.12"],
  ])("says in one sentence that an older Excel will not do (%s)", async (displayLanguage, sentence) => {
    const { page } = await openExcelPage(browser, hostWith({}), { displayLanguage, excelApi: 9 });
    await page.getByRole("alert").filter({ hasText: sentence }).waitFor();
    await page.context().close();
  });

  test.each([
    ["Word", "works inside Excel only"],
    ["none", "Microsoft's Office script could not be loaded"],
  ] as const)("says in one sentence what is wrong without Excel (%s)", async (host, sentence) => {
    const { page } = await openExcelPage(browser, hostWith({}), { host });
    await page.getByRole("alert").filter({ hasText: sentence }).waitFor();
    await page.context().close();
  });
});
