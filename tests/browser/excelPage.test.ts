import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { PROJECT_VERSION } from "../../src/functions/version";
import { FileWorkbook } from "../../src/workbook/file/fileWorkbook";
import { hostWith } from "../workbook/office/excelWorkbookOn";
import { startChromium } from "./chromium";
import { openExcelPage } from "./excelPage";
import { CORDON_HEADS } from "../survey/cordonHeads";

const COUNTS = {
  Cordons: [
    [...CORDON_HEADS, "Counted by"],
    ["North Bench", 1, 1, "left", "A", 1, 3.5, 7, 6, "AB"],
    ["North Bench", 1, 1, "right", "B", 1, 3.5, 7, 9, "AB"],
  ],
};

const button = (page: Page, label: string) =>
  page.locator("fluent-button:visible, fluent-link:visible").filter({ hasText: label });

describe("the add-in's page", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await startChromium();
  });
  afterAll(() => browser.close());

  const onPage = async (page: Page, tab: string) => {
    await page.locator("#tab-more").waitFor();
    if ((await page.locator(`#tab-${tab}`).count()) > 0) return page.locator(`#tab-${tab}`).click();
    await page.locator("#tab-more").click();
    await page.locator(`#more-${tab}`).click();
  };

  test("draws the pane under its own content security policy and binds every function", async () => {
    const { page, problems } = await openExcelPage(browser, hostWith(COUNTS));
    await page.locator("#tab-check").waitFor();
    const functions = await page.evaluate(() => Object.keys(window.associated));
    expect(functions).toEqual(expect.arrayContaining(["NODEBUDGET", "GAPSBYROW", "VERSION"]));
    const value = await page.evaluate(() => window.associated.NODEBUDGET(3, "30+10", {}));
    expect(value).toEqual([[50]]);
    expect(problems).toEqual([]);
    await page.context().close();
  });

  test("checks the counts through the real proxies and goes to the cell", async () => {
    const host = hostWith(COUNTS);
    const before = JSON.stringify(host.book.snapshot());
    const { page, problems } = await openExcelPage(browser, host);
    await onPage(page, "check");
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

  test("repairs formulas with a preview and takes the repair back exactly", async () => {
    const host = hostWith(COUNTS);
    host.book.calculate = (formula) => (formula.includes("_xldudf") ? "#NAME?" : 50);
    host.type("me", "Cordons", 5, 1, '=_xldudf_CORDON_NODEBUDGET(3,"30+10")');
    const before = JSON.stringify(host.book.snapshot());
    const { page, problems } = await openExcelPage(browser, host);
    await onPage(page, "care");
    await page.locator("#look-repairs").click();
    await page.getByText("1 cell can be repaired.").waitFor();
    expect(await page.locator("#repairs li").innerText()).toContain("Cordons A5");
    expect(JSON.stringify(host.book.snapshot())).toBe(before);
    await page.locator("#repair").click();
    await page.getByText("1 cell was repaired").waitFor();
    expect(host.book.sheet("Cordons").cell(4, 0).formula).toBe('=CORDON.NODEBUDGET(3,"30+10")');
    await page.locator("#undo-repairs").click();
    await page.getByText("1 cell is as it was").waitFor();
    expect(JSON.stringify(host.book.snapshot())).toBe(before);
    expect(problems).toEqual([]);
    await page.context().close();
  });

  test("makes the report about this Excel with what the person is asked to do, writes it and gives it as text", async () => {
    const host = hostWith(COUNTS);
    host.keepsCells = true;
    host.book.calculate = (formula) => (formula === "=NA()" ? "#N/A" : "#BUSY!");
    const { page, problems } = await openExcelPage(browser, host, { file: new Uint8Array([80, 75, 3, 4]) });
    host.book.onFormula = async (sheet, row, column) => {
      const give = (value: number | string) =>
        sheet.put(row, column, { ...sheet.cell(row, column), value, type: "Double" });
      if (column === 4) return give("#SPILL!");
      await page.evaluate(() => window.associated.NODEBUDGET([[3], [null], ["?"], [2]], "30+10", {}));
      give(50);
    };
    await onPage(page, "care");
    const before = JSON.stringify(host.book.snapshot());
    await page.locator("#make-report").click();
    for (const question of ["Press Ctrl+Z once", "And once more"]) {
      await page.locator("#report-question").getByText(question).waitFor();
      host.undo("me");
      await page.locator("#pressed").click();
    }
    await page.locator("#report-text").waitFor();
    await page.getByText("Excel report").first().waitFor();
    const text = await page.locator("#report-text").inputValue();
    const sheet = host.book.sheet("Excel report");
    const cells = (row: number) => [0, 1, 2, 3, 4].map((column) => String(sheet.cell(row, column).value));
    const table = text.split("\n").slice(3);
    expect(table).toHaveLength(23);
    table.forEach((line, index) => expect(line).toBe(cells(4 + index).join("\t")));
    expect(await page.locator("#report li").count()).toBe(22);
    expect(table.filter((line) => line.includes("16.0.19201.20002"))).toHaveLength(1);
    const blank = table.find((line) => line.startsWith("As what a blank cell"))!;
    expect(blank.split("\t").slice(1, 4)).toEqual(["0", "null", "different"]);
    host.book.deleteSheet(sheet);
    expect(JSON.stringify(host.book.snapshot())).toBe(before);
    expect(problems).toEqual([]);
    await page.context().close();
  });

  test("says in one sentence that Excel refused, and the workbook is as it was", async () => {
    const host = hostWith(COUNTS);
    const { page, problems } = await openExcelPage(browser, host);
    await onPage(page, "check");
    await page.locator("#check-result").waitFor();
    await host.quiet();
    const before = JSON.stringify(host.book.snapshot());
    for (const [label, fault] of [
      ["Mark cells", { name: "Formula", code: "GeneralException" }],
      ["Write Findings sheet", { name: "Values", code: "GeneralException" }],
      ["Write Findings sheet", { name: "Add", code: "AccessDenied" }],
    ] as const) {
      host.refuse(fault);
      await button(page, label).first().click();
      const sentence = page.getByText(/Excel refused|is protected/);
      await sentence.waitFor();
      await host.quiet();
      expect(JSON.stringify(host.book.snapshot())).toBe(before);
      await page.locator("fluent-message-bar fluent-button[slot=dismiss]").first().click();
      await sentence.waitFor({ state: "detached" });
    }
    expect(problems).toEqual([]);
    await page.context().close();
  });

  test("makes the PivotTable of gaps, then refreshes it, and logs both where that is switched on", async () => {
    const host = hostWith(COUNTS);
    const { page, problems } = await openExcelPage(browser, host);
    await page.evaluate(() => localStorage.setItem("cordonbook.name", "AB"));
    await onPage(page, "care");
    await page.locator("#ask-log").click();
    await page.locator("#log").click();
    for (let tries = 0; tries < 100 && host.book.settings.size === 0; tries++) await page.waitForTimeout(20);
    await onPage(page, "gaps");
    await page.locator("#pivot-of-gaps").click();
    await page.getByText("The PivotTable is on the sheet Gaps pivot.").waitFor();
    await page.locator("#pivot-of-gaps").click();
    await page.getByText("The PivotTable was refreshed").waitFor();
    expect(host.book.sheet("Gaps pivot").pivots[0].refreshed).toBe(1);
    const log = () => {
      const sheet = host.book.findSheet("Run log");
      return [3, 4].map((row) => [sheet?.cell(row, 1).value, sheet?.cell(row, 2).value]);
    };
    for (let tries = 0; tries < 100 && log()[1][0] !== "AB"; tries++) await page.waitForTimeout(20);
    expect(log()).toEqual([
      ["AB", "Pivot of gaps"],
      ["AB", "Pivot of gaps"],
    ]);
    expect(problems).toEqual([]);
    await page.context().close();
  });

  test("tells what this Excel can do, starts with the workbook only when asked, and opens a copy of values", async () => {
    const host = hostWith(COUNTS);
    host.book.calculate = () => PROJECT_VERSION;
    const file = new Uint8Array(readFileSync("sample-workbooks/larkmoor-clean.xlsx"));
    const { page, problems } = await openExcelPage(browser, host, { excelApi: 14, file });
    await onPage(page, "care");
    await host.quiet();
    const before = JSON.stringify(host.book.snapshot());
    await page.locator("#self-test").click();
    await page.getByText("Not in this Excel (ExcelApi 1.20); everything else works.").waitFor();
    await page.locator("#stop").waitFor({ state: "detached" });
    const lines = await page.locator("#self-test-result li").allInnerTexts();
    expect(lines).toHaveLength(16);
    expect(lines.filter((line) => !/^works\s/.test(line))).toEqual(
      ["1.18", "1.20"].map((set) => expect.stringMatching(new RegExp(`^lacking[^]*ExcelApi ${set}`))),
    );
    expect(lines).toContainEqual(expect.stringContaining(`got ${PROJECT_VERSION}: the functions calculate`));
    expect(lines).toContainEqual(expect.stringContaining("Pane and functions run together"));
    await host.quiet();
    expect(JSON.stringify(host.book.snapshot())).toBe(before);
    expect(await page.evaluate(() => window.startup)).toBe("None");
    await page.locator("#ask-opening").click();
    await page.locator("#at-opening").click();
    await page.waitForFunction(() => window.startup === "Load");
    await button(page, "Copy with values only").click();
    await page.getByText("The copy is open").waitFor();
    const copy = Buffer.from((await page.evaluate(() => window.copy)) ?? "", "base64");
    const opened = await FileWorkbook.open("copy.xlsx", new Uint8Array(copy));
    expect((await opened.sheetNames()).length).toBeGreaterThan(3);
    expect(problems).toEqual([]);
    await page.context().close();
  });

  test("an empty workbook leads to an empty or a filled season beside it, and says what did not arrive", async () => {
    const missing = ["sample-workbooks/larkmoor-clean.xlsx"];
    const { page } = await openExcelPage(browser, hostWith({ Sheet1: [] }), { missing });
    await page.locator("#begin-units button").click();
    await page.locator('#begin-units fluent-option[value="metric"]').click();
    await page.locator("#begin-language button").click();
    await page.locator('#begin-language fluent-option[value="fr"]').click();
    const opened = async (way: string) => {
      await page.locator(way).click();
      await page.waitForFunction(() => window.copy !== undefined);
      return page.evaluate(() => [window.copy, (window.copy = undefined)][0]!);
    };
    const supplied = (file: string) => readFileSync(`sample-workbooks/${file}`).toString("base64");
    expect(await opened("#way-begin")).toBe(supplied("empty-season-fr-metric.xlsx"));
    await page.locator("#way-sample").click();
    await page.getByText("Part of Cordonbook could not be fetched. Check the network").waitFor();
    missing.pop();
    expect(await opened("#way-sample")).toBe(supplied("larkmoor-clean.xlsx"));
    expect(await page.locator("#way-file").count()).toBe(0);
    await page.context().close();
  });

  test.each([
    ["en-US", "too old for Cordonbook: it lacks ExcelApi 1.14"],
    ["es-MX", "demasiado antiguo para Cordonbook: le falta ExcelApi 1.14"],
    ["fr-CA", "trop ancien pour Cordonbook : il lui manque ExcelApi 1.14"],
  ])("says in one sentence that an older Excel will not do (%s)", async (displayLanguage, sentence) => {
    const { page } = await openExcelPage(browser, hostWith({}), { displayLanguage, excelApi: 9 });
    await page.getByRole("alert").filter({ hasText: sentence }).waitFor();
    const bound = await page.evaluate(() => window.associated.NODEBUDGET(3, "30+10", {}));
    expect(bound).toEqual([[50]]);
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
