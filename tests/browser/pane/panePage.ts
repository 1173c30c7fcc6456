import { mkdir } from "node:fs/promises";
import path from "node:path";
import type { Locator, Page } from "playwright-core";
import { brokenRules } from "../brokenRules";

const root = path.resolve(__dirname, "../../..");

/** One open page with a pane in it. */
export class PanePage {
  constructor(
    readonly page: Page,
    readonly problems: readonly string[],
  ) {}

  /** A button or link by its words; Fluent gives the role inside the element, where a role query does not look. */
  button(words: string): Locator {
    return this.page.locator("fluent-button:visible, fluent-link:visible", { hasText: words });
  }

  /** Goes to a page, under More where its tab is not in sight. */
  async goTo(id: string): Promise<void> {
    const tab = this.page.locator(`#tab-${id}`);
    if ((await tab.count()) > 0) return tab.click();
    await this.page.locator("#tab-more").click();
    await this.page.locator(`#more-${id}`).click();
  }

  box(label: string): Locator {
    return this.page.locator(`fluent-checkbox[aria-label="${label}"]`);
  }

  /** Chooses from a drop-down list of the pane. */
  async choose(id: string, option: string): Promise<void> {
    const list = this.page.locator(`#${id}`);
    await list.locator("button").click();
    await list.locator("fluent-option", { hasText: option }).first().click();
  }

  /** What has the focus, innermost: its class, else its id, else its tag. */
  focused(): Promise<string> {
    return this.page.evaluate(() => {
      let element = document.activeElement;
      const path: Element[] = [];
      while (element) {
        path.push(element);
        element = element.shadowRoot?.activeElement ?? null;
      }
      const named = path.reverse().find((one) => one.tagName.includes("-")) ?? path[0];
      return named?.className || named?.id || named?.tagName.toLowerCase() || "";
    });
  }

  /** Presses Tab until the element of that id or class has the focus. */
  reach(name: string): Promise<void> {
    return this.tabUntil(name, async () => (await this.focused()) === name);
  }

  /** Presses Tab until the focus is on or inside an element of that selector. */
  reachInside(selector: string): Promise<void> {
    const held = this.page.locator(`${selector}:focus-within`);
    return this.tabUntil(selector, async () => (await held.count()) > 0);
  }

  private async tabUntil(name: string, reached: () => Promise<boolean>): Promise<void> {
    for (let step = 0; step < 60; step += 1) {
      await this.page.keyboard.press("Tab");
      if (await reached()) return;
    }
    throw new Error(`Tab never reached ${name}`);
  }

  /** Waits until the pane has drawn what was done last. */
  async settled(): Promise<void> {
    await this.page.evaluate(() => new Promise((done) => setTimeout(done, 50)));
  }

  /** Names and roles as assistive technology gets them from the browser, Fluent's inner roles included. */
  async accessibleTree(): Promise<{ role: string; name: string }[]> {
    const session = await this.page.context().newCDPSession(this.page);
    const { nodes } = await session.send("Accessibility.getFullAXTree");
    await session.detach();
    return nodes
      .filter((node) => !node.ignored)
      .map((node) => ({ role: String(node.role?.value ?? ""), name: String(node.name?.value ?? "") }));
  }

  /** Rules that axe-core finds broken, each with the first place. */
  brokenRules(): Promise<string[]> {
    return brokenRules(this.page);
  }

  /** A picture for a person to look at. */
  async picture(name: string): Promise<void> {
    const folder = path.join(root, ".cache/screenshots");
    await mkdir(folder, { recursive: true });
    await this.page.screenshot({ path: path.join(folder, `${name}.png`) });
  }

  close(): Promise<void> {
    return this.page.context().close();
  }
}
