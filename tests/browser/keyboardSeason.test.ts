import type { DeskPage } from "./deskPage";
import { openDesk } from "./openDesk";

/** Somebody who works by keyboard alone: what is pressed next depends on what has the keyboard, and nothing is clicked. */
class Hand {
  constructor(private readonly desk: DeskPage) {}

  async press(...keys: string[]): Promise<void> {
    for (const key of keys) await this.desk.page.keyboard.press(key);
  }

  type(text: string): Promise<void> {
    return this.desk.page.keyboard.type(text);
  }

  /** True where the keyboard is on, or inside, an element of that selector, through every shadow root. */
  isOn(selector: string): Promise<boolean> {
    return this.desk.page.evaluate((wanted) => {
      let element = document.activeElement;
      while (element) {
        if (element.closest(wanted)) return true;
        element = element.shadowRoot?.activeElement ?? null;
      }
      return false;
    }, selector);
  }

  /** Waits until the program has moved the keyboard there by itself. */
  async waitOn(selector: string): Promise<void> {
    for (const end = Date.now() + 20_000; Date.now() < end; await this.desk.page.waitForTimeout(50))
      if (await this.isOn(selector)) return;
    throw new Error(`The keyboard was never on ${selector}`);
  }

  /** Presses a key until the keyboard is there. */
  async reach(selector: string, key = "Tab", most = 250): Promise<void> {
    for (let step = 0; step < most; step++) {
      if (await this.isOn(selector)) return;
      await this.press(key);
    }
    throw new Error(`${key} never reached ${selector}`);
  }

  /** Chooses from a drop-down list of the pane by its arrow keys. */
  async choose(list: string, option: string): Promise<void> {
    await this.use(list);
    const active = () =>
      this.desk.pane.locator(list).evaluate((one) => {
        const { enabledOptions, activeIndex } = one as unknown as {
          enabledOptions: HTMLElement[];
          activeIndex: number;
        };
        return enabledOptions[activeIndex]?.textContent?.trim();
      });
    for (let step = 0; step < 10 && (await active()) !== option; step++) await this.press("ArrowDown");
    await this.press("Enter");
  }

  /** Goes to a button of the pane from wherever the keyboard is, and presses it. */
  async use(selector: string): Promise<void> {
    await this.desk.pane.locator(selector).first().waitFor();
    await this.press("F6");
    await this.reach("fluent-tab", "F6", 4);
    await this.reach(selector);
    await this.press("Enter");
  }
}

const group = (code: string) => `fluent-accordion-item[data-key^="${code}"]`;

/** The blocks of the sample with their vines: of North Bench and Creek Side one more than grow there, each by a planted number. */
const BLOCKS = [
  ["North Bench", 236],
  ["Creek Side", 201],
  ["Schoolhouse", 146],
] as const;

describe("the season with mistakes, by keyboard alone", () => {
  test("from opening the workbook to the accepted blocks", async () => {
    const desk = await openDesk("clean", { width: 1280, height: 720 });
    const { pane, page } = desk;
    const hand = new Hand(desk);
    const gone = (code: string) => pane.locator(group(code)).waitFor({ state: "detached" });
    await hand.reach("#workbook", "F6", 4);
    await hand.press("ArrowDown");
    await page.locator("#workbook option:checked", { hasText: /mistake/i }).waitFor({ state: "attached" });
    await desk.isReady();
    await hand.use("#next-step");
    await pane.locator("#check-result").waitFor();

    for (const code of ["unknownBlock", "numberAsText"]) {
      await hand.use(group(code));
      await hand.use(`${group(code)} .mend`);
      await hand.use("#check");
      await gone(code);
    }
    for (const [code, spurs] of [
      ["spursAbovePositions", "6"],
      ["missingValue", "5"],
    ]) {
      await hand.use(group(code));
      await hand.use(`${group(code)} .jump`);
      await hand.waitOn("#grid");
      await hand.type(spurs);
      await hand.press("Enter", "Escape", "Tab");
      await hand.waitOn("fluent-tab");
      await hand.use("#check");
      await gone(code);
    }

    await hand.reach("#pane", "F6", 4);
    await hand.reach("#tab-decide", "ArrowRight", 12);
    // The choice comes by itself only where it takes less than a second.
    const choice = pane.locator("#decide-result");
    await choice.waitFor({ timeout: 15_000 }).catch(() => hand.use("#decide"));
    await choice.waitFor({ timeout: 120_000 });
    for (const [block, vines] of BLOCKS) {
      await hand.choose("#decide-block", block);
      await hand.use("#accept-block");
      await hand.reach("#accept-yes");
      await hand.press("Enter");
      await pane.locator("#take-back-block", { hasText: block }).waitFor();
      const accepted = await pane.locator("#accept-progress").innerText();
      const [, decided] = new RegExp(`${block}: (\\d+) of ${vines} `).exec(
        await pane.locator("#decide-progress").innerText(),
      )!;
      expect(accepted).toContain(`${block}: ${decided} of ${vines} vines accepted`);
      expect(Number(decided)).toBeGreaterThan(0.8 * vines);
    }
    await hand.reach("#pane", "F6", 4);
    await hand.reach("#tab-season", "ArrowLeft", 12);
    await pane.locator("#season-picture").waitFor();
  });
});
