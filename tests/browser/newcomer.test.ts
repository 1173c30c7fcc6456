import type { Locator } from "playwright-core";
import type { DeskPage } from "./deskPage";
import { SEASON_TEXTS } from "../../src/texts/seasonPage";
import { openDesk } from "./openDesk";

/**
 * What is counted on each vine: trunk, length in feet, positions, live spurs and longest gap of cordon A to the left, B to
 * the right and C to the left. A beats C by its spurs on every vine, so nothing but the planted slip needs an answer.
 */
const CORDONS = Array.from({ length: 10 }, (_, vine) => {
  const slip = vine === 3;
  return [
    ["1", "4", "8", slip ? "17" : vine % 2 === 0 ? "8" : "7", vine % 2 === 0 ? "0" : "1"],
    ["2", "3.5", "7", vine % 3 === 0 ? "7" : "6", vine % 3 === 0 ? "0" : "1"],
    ["2", "4", "8", "3", "3"],
  ];
}).flat();
const PRUNINGS = ["2.1", "2.4", "1.8", "2.6", "2.2", "1.9", "2.3", "2.5", "2", "2.1"];
/** Nodes cut and primaries alive of ten canes. */
const BUD_CUTS = [10, 9, 10, 8, 7, 10, 9, 9, 8, 10].map((alive) => ["10", String(alive)]);

const SHEETS = {
  en: { vines: "Vines", cuts: "Bud cuts" },
  es: { vines: "Plantas", cuts: "Cortes de yemas" },
};

/** Somebody who has never seen the page: what they type and press is counted, and where they are left alone. */
class Newcomer {
  typedCells = 0;
  presses = 0;
  readonly deadEnds: string[] = [];

  constructor(
    readonly desk: DeskPage,
    readonly language: "en" | "es",
  ) {}

  private get keyboard() {
    return this.desk.page.keyboard;
  }

  async press(what: Locator): Promise<void> {
    await what.click();
    this.presses++;
    await this.looksAround();
  }

  /** Types a cell or a field, and leaves it by a key. */
  async type(text: string, then: "Tab" | "Enter" = "Tab"): Promise<void> {
    this.typedCells++;
    await this.keyboard.type(this.language === "es" ? text.replace(".", ",") : text);
    await this.keyboard.press(then);
  }

  async clickCell(cell: string): Promise<void> {
    await this.desk.goTo(cell);
    this.presses++;
  }

  /**
   * Presses what results lead to. Where a slow machine only offers to work them out, that is pressed first; never the
   * next step of results that are older, which leads elsewhere.
   */
  async pressWhenWorkedOut(what: Locator): Promise<void> {
    const offered = this.desk.pane
      .locator('.page:not([hidden]) fluent-button[appearance="primary"]:not(#next-step):visible')
      .first();
    for (const end = Date.now() + 90_000; Date.now() < end && !(await what.isVisible());)
      await what.waitFor({ timeout: 10_000 }).catch(async () => {
        if (await offered.isVisible()) await this.press(offered);
      });
    await this.press(what);
  }

  async nextStep(work: "mend" | "accept" | "print"): Promise<void> {
    const text = SEASON_TEXTS.go[work][this.language];
    await this.pressWhenWorkedOut(this.desk.pane.locator("#next-step", { hasText: text }));
  }

  async page(id: string): Promise<void> {
    await this.desk.goToPage(id);
    this.presses++;
    await this.looksAround();
  }

  async key(...keys: string[]): Promise<void> {
    for (const key of keys) await this.keyboard.press(key);
  }

  async choose(list: string, value: string): Promise<void> {
    await this.press(this.desk.pane.locator(`#${list} button`));
    await this.press(this.desk.pane.locator(`#${list} fluent-option[value="${value}"]`));
  }

  /** A page on which no next step comes, and an action that was refused, are dead ends. */
  private async looksAround(): Promise<void> {
    const { page, pane } = this.desk;
    await page.waitForTimeout(400);
    const shownPage = pane.locator(".page:not([hidden])");
    await shownPage
      .locator('fluent-button[appearance="primary"]:not([disabled]):visible')
      .first()
      .waitFor()
      .catch(async () => this.deadEnds.push(`${await shownPage.getAttribute("id")} shows no next step`));
    const refused = page.locator(
      '.page:not(#page-check) fluent-message-bar[intent="error"], #pane [role="alert"], #notice.refused',
    );
    this.deadEnds.push(...(await refused.allInnerTexts()).map((words) => words.trim()).filter(Boolean));
  }
}

describe("a newcomer's season, from the empty page to the printed card", () => {
  test.each(["en", "es"] as const)("in %s", async (language) => {
    const desk = await openDesk("empty", {
      language,
      catchPrints: true,
      width: 1280,
      height: 720,
    });
    const newcomer = new Newcomer(desk, language);
    const { pane, page } = desk;
    await pane.locator("#counted-vine").waitFor();
    await newcomer.press(pane.locator("#way-begin"));
    await pane.locator("#lay-out-block").waitFor();
    await page.waitForTimeout(1500);
    await newcomer.press(pane.locator("#lay-out-block"));
    for (const text of ["Home", "2", "5"]) await newcomer.type(text);
    await newcomer.choose("lay-out-cordons", "3");
    await newcomer.choose("lay-out-training", "highWire");
    await newcomer.key("Tab");
    for (const text of ["9", "8"]) await newcomer.type(text);
    await newcomer.press(pane.locator("#lay-out-make"));
    await pane.locator("#season-next").waitFor();
    for (const cordon of CORDONS)
      for (const [at, text] of cordon.entries())
        await newcomer.type(text, at === cordon.length - 1 ? "Enter" : "Tab");
    await newcomer.press(page.locator("#grid").getByText(SHEETS[language].vines, { exact: true }));
    await newcomer.clickCell("F2");
    for (const text of PRUNINGS) await newcomer.type(text, "Enter");
    await newcomer.press(page.locator("#grid").getByText(SHEETS[language].cuts, { exact: true }));
    await newcomer.clickCell("A2");
    for (const [cut, alive] of BUD_CUTS) {
      await newcomer.type("Home");
      await newcomer.key("Tab", "Tab", "Tab");
      await newcomer.type(cut);
      await newcomer.type(alive, "Enter");
    }
    await newcomer.nextStep("mend");
    expect(await pane.locator("#typing").evaluate((button: HTMLInputElement) => button.checked)).toBe(true);
    await pane
      .locator("section[aria-labelledby=typed]")
      .getByText(/\b17\b/)
      .first()
      .waitFor();
    // The cell that cannot be right is selected once the findings are there.
    await desk.status.locator("span", { hasText: /^17$/ }).waitFor();
    await newcomer.type("7", "Enter");
    await newcomer.page("season");
    await newcomer.nextStep("accept");
    await newcomer.press(pane.locator("#accept-yes"));
    await newcomer.press(pane.locator("#accept-next"));
    await newcomer.nextStep("print");
    await newcomer.pressWhenWorkedOut(pane.locator("#print-cards"));
    const printed = await desk.printed();
    expect(printed).toContain("Home");
    process.stdout.write(
      `${language}: ${newcomer.typedCells} cells typed, ${newcomer.presses} presses, ${newcomer.deadEnds.length} dead ends\n`,
    );
    expect(newcomer.deadEnds).toEqual([]);
    expect(newcomer.typedCells).toBeLessThanOrEqual(260);
    expect(newcomer.presses).toBeLessThanOrEqual(20);
  });
});
