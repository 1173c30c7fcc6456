import { FUNCTIONS } from "../../src/functions/registry";
import { openWorkbookFile } from "../../src/workbook/file/openWorkbookFile";
import type { DeskPage } from "./deskPage";
import { desk, openDesk } from "./openDesk";
import { resultsOf } from "./resultsOf";

/** A figure as the sample season's Settings sheet has it. */
async function settingOf(name: string): Promise<number> {
  const workbook = await openWorkbookFile("sample-workbooks/larkmoor-clean.xlsx");
  const { values } = await workbook.readSheet("Settings");
  await workbook.close();
  return Number(values.find(([first]) => first === name)![1]);
}

describe("the pane's pages over the season on the desk page", () => {
  let page: DeskPage;

  beforeEach(async () => {
    page = await openDesk("clean");
  });

  test("gaps are counted, and their map and rows written into sheets", async () => {
    await page.goToPage("gaps");
    await resultsOf(page.pane, "gaps");
    expect(await page.brokenRules()).toEqual([]);
    for (const [button, sheet] of [
      ["#write-row-gaps", "Row gaps"],
      ["#write-gap-map", "Gap map"],
    ]) {
      await page.pane.locator(button).click();
      await page.page.locator("#grid").getByText(sheet, { exact: true }).waitFor();
    }
    await page.goToSheet("Gap map");
    expect(await page.shows("A7", "North Bench")).toBe("North Bench");
    expect(await page.read("C7")).toMatch(/^\d+%$/);
    await page.picture("desk-gap-map");
    await page.goToSheet("Row gaps");
    expect(await page.shows("B7", "1")).toBe("1");
    await page.picture("desk-row-gaps");
  });

  test("vines are decided, and a person's decision stands in the sheet", async () => {
    await page.goToPage("decide");
    const button = page.pane.locator("#decide");
    await page.pane.locator("#decide, #decide-result").first().waitFor();
    if ((await button.count()) > 0) await button.click().catch(() => undefined);
    await page.pane.locator("#decide-result").waitFor();
    await page.pane.locator(".outcome.stays").first().waitFor();
    expect(await page.brokenRules()).toEqual([]);
    await page.picture("desk-decide");
    const line = page.pane.locator("li", { has: page.page.locator(".outcome.stays") }).first();
    await line.locator(".jump").click();
    const row = Number(/Cordons [A-Z]+(\d+)/.exec(await line.innerText())![1]);
    await page.status.getByText(new RegExp(`Cordons![A-Z]+${row}`)).waitFor();
    const column = await page.columnOf("Fixed choice");
    expect(await page.read(`${column}${row}`)).toBe("");
    await line.locator(".outcome.stays").click();
    expect(await page.shows(`${column}${row}`, "stays")).toBe("stays");
    const other = row + 12;
    const [block, ownRow, number] = [
      await page.read(`A${other}`),
      await page.read(`B${other}`),
      await page.read(`C${other}`),
    ];
    await page.goTo(`E${other}`);
    await page.pane
      .locator("#vine-shown", {
        hasText: `${block} row ${ownRow} vine ${number}`,
      })
      .waitFor();
    await page.picture("desk-decided");
  });

  test("a figure is changed in the pane, stands on the Settings sheet and moves what depends on it", async () => {
    await page.goToSheet("Figures");
    const before = await page.shows("P2", /\d/);
    const daysBefore = await page.read("Q2");
    await page.goToPage("settings");
    await page.pane.locator("#setting-search input").fill("Crew");
    const figure = page.pane.locator("fluent-button[aria-label='Change: Crew']");
    for (const group of await page.pane.locator("fluent-accordion-item").all()) {
      if (await figure.isVisible()) break;
      await group.locator("button#control").click();
      await page.page.waitForTimeout(150);
    }
    await figure.click();
    await page.pane.locator("#setting-value input").fill("2");
    await page.pane.locator("#setting-by input").fill("MK");
    await page.pane.locator("#show-moved").click();
    await page.pane.locator("#keep-setting").click();
    await page.goToSheet("Settings");
    await page.goToSheet("Figures");
    const days = Number(before) / (2 * (await settingOf("Hours a day")));
    expect(Number(await page.shows("Q2", new RegExp(`^(?!${daysBefore}$)`)))).toBeCloseTo(days, 1);
    expect(await page.read("P2")).toBe(before);
    expect(await page.brokenRules()).toEqual([]);
    await page.picture("desk-settings");
  });

  test("help lists every function and puts one into the selected cell", async () => {
    await page.goToPage("functions");
    for (const { id } of FUNCTIONS)
      await page.pane.locator(`fluent-accordion-item .heading`, { hasText: new RegExp(`^${id}$`) }).waitFor();
    await page.goTo("H6");
    const help = page.pane.locator("fluent-accordion-item", { hasText: "VINEDENSITY" }).first();
    await help.locator("button#control").click();
    await help.locator("#formula-VINEDENSITY input").fill("=CORDON.VINEDENSITY(9,6)");
    await help.locator(".insert").click();
    expect(await page.shows("H6", /^806\.6/)).toMatch(/^806\.6/);
    expect(await page.brokenRules()).toEqual([]);
    await page.picture("desk-functions");
  });

  test("the outlook is worked out and written into a sheet", async () => {
    await page.goToPage("outlook");
    await resultsOf(page.pane, "outlook");
    expect(await page.pane.locator("#outlook-crop").innerText()).toMatch(/\d/);
    expect(await page.brokenRules()).toEqual([]);
    await page.pane.locator("#write-outlook").click();
    await page.pane.getByText("No chart could be drawn on it here").waitFor();
    await page.page.locator("#grid").getByText("Crop outlook", { exact: true }).waitFor();
    expect(await page.shows("A7", "North Bench")).toBe("North Bench");
    expect(await page.read("D7")).toMatch(/^\d/);
    await page.picture("desk-outlook");
  });
});

describe("caring for formulas from the pane on the desk page", () => {
  test("formulas that lost their function are found, put right and can be taken back", async () => {
    const page = await openDesk("clean");
    await page.type("H3", '=_xldudf_CORDON_NODEBUDGET(3,"30+10")');
    expect(await page.shows("H3", "#NAME?")).toBe("#NAME?");
    await page.goToPage("care");
    await page.pane.locator("#look-repairs").click();
    await page.pane.locator("#repair").click();
    expect(await page.shows("H3", "50")).toBe("50");
    expect(await page.brokenRules()).toEqual([]);
    await page.picture("desk-care");
    await page.pane.locator("#undo-repairs").click();
    expect(await page.shows("H3", "#NAME?")).toBe("#NAME?");
  });
});

describe("the self-test on the desk page", () => {
  test("finds that everything works and leaves the cell selected that was", async () => {
    const page = await openDesk("clean");
    await page.goToSheet("Vines");
    await page.goTo("C5");
    const before = await page.status.innerText();
    expect(before).toContain("Vines!C5");
    await page.goToPage("care");
    await page.pane.locator("#self-test").click();
    await page.pane.getByText("Taking the sheet away again").waitFor();
    await page.pane.locator("#self-test").waitFor();
    const lines = await page.pane.locator("#self-test-result li").allInnerTexts();
    expect(lines).toHaveLength(7);
    for (const line of lines) expect(line).toMatch(/^works/);
    expect(lines.join(" ")).not.toContain("who installed");
    expect(await page.status.innerText()).toBe(before);
    await page.picture("desk-self-test");
  });
});

describe("printing from the pane on the desk page", () => {
  test.each(["A4", "Letter"] as const)(
    "the list of findings goes to %s paper without anything cut off",
    async (format) => {
      const page = await openDesk("mistakes", { catchPrints: true });
      await page.check();
      await page.pane.locator("#print-findings").click();
      const paper = await page.printed();
      const { pdf, tooWide } = await desk().onPaper(paper, format);
      expect(pdf.subarray(0, 5).toString("latin1")).toBe("%PDF-");
      expect(tooWide).toEqual([]);
      expect(paper).toContain("Cordons");
    },
  );

  test.each(["A4", "Letter"] as const)("a card for every row goes to %s paper", async (format) => {
    const page = await openDesk("clean", { catchPrints: true });
    await page.goToPage("crew");
    await resultsOf(page.pane, "crew");
    expect(await page.brokenRules()).toEqual([]);
    await page.pane.locator("fluent-dropdown#cards-paper").click();
    await page.pane.locator(`#cards-paper fluent-option[value=${format}]`).click();
    await page.picture(`desk-crew-${format}`);
    await page.pane.locator("#print-cards").click();
    const paper = await page.printed();
    expect(paper).toMatch(new RegExp(`size:\\s*${format}`, "i"));
    const { pdf, tooWide } = await desk().onPaper(paper, format);
    expect(tooWide).toEqual([]);
    const pages = [...pdf.toString("latin1").matchAll(/\/Type\s*\/Page\b(?!s)/g)].length;
    expect(pages).toBeGreaterThanOrEqual(21);
  });
});
