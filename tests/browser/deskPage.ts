import { mkdirSync } from "node:fs";
import path from "node:path";
import type { Browser, BrowserContext, Locator, Page } from "playwright-core";
import { brokenRules } from "./brokenRules";
import { startChromium } from "./chromium";
import { problemsOf } from "./problemsOf";
import { DESK_ADDRESS, PATIENCE } from "./shared";

const PICTURES = path.resolve(".cache/screenshots");

/** The desk page's own server, which was started as a person starts it, and a browser beside it. */
export class Desk {
  private constructor(
    readonly address: string,
    readonly browser: Browser,
  ) {}

  static async start(): Promise<Desk> {
    return new Desk(process.env[DESK_ADDRESS]!, await startChromium());
  }

  /** A fresh page with a sample workbook on it, or with the one that opens by itself. */
  async open(sample?: string, options: DeskOptions = {}) {
    const { language = "en", width = 1366, height = 768, look = "light" } = options;
    const context = await this.browser.newContext({
      viewport: { width, height },
      locale: language,
      colorScheme: look,
      permissions: ["clipboard-read", "clipboard-write"],
    });
    const page = await context.newPage();
    if (options.catchPrints) await page.addInitScript(catchPrints);
    const desk = new DeskPage(page, context, this.address);
    await page.goto(this.address + (sample ? `?workbook=${sample}` : ""));
    await desk.isReady();
    return desk;
  }

  /** A printed page as a PDF, and the cells whose text is wider than they are. */
  async onPaper(html: string, format: "A4" | "Letter"): Promise<{ pdf: Buffer; tooWide: string[] }> {
    const page = await this.browser.newPage();
    await page.setViewportSize({ width: WIDTH_BETWEEN_MARGINS[format], height: 1000 });
    await page.emulateMedia({ media: "print" });
    await page.setContent(html);
    const tooWide = await page.$$eval("td, th", (cells) =>
      cells.filter((cell) => cell.scrollWidth > cell.clientWidth + 1).map((cell) => cell.textContent ?? ""),
    );
    const pdf = await page.pdf({ format, preferCSSPageSize: true });
    await page.close();
    return { pdf, tooWide };
  }

  stop(): Promise<void> {
    return this.browser.close();
  }
}

/** Pixels between margins of 14 mm at 96 to the inch. */
const WIDTH_BETWEEN_MARGINS = { A4: 688, Letter: 710 };

export interface DeskOptions {
  readonly language?: string;
  readonly width?: number;
  readonly height?: number;
  readonly look?: "light" | "dark";
  /** Keeps what is printed in place of sending it to a printer. */
  readonly catchPrints?: boolean;
}

/** Runs in every frame before its own scripts. */
function catchPrints(): void {
  window.print = () => {
    window.dispatchEvent(new Event("beforeprint"));
    Object.assign(window.top as Window, { printed: document.documentElement.outerHTML });
  };
}

/** The page as a person uses it: by typing, clicking and reading, never by calling into its code. */
export class DeskPage {
  /** What the page complained of in its console. */
  readonly problems: readonly string[];
  /** Addresses outside this machine that the page asked for. */
  readonly foreign: string[] = [];

  constructor(
    readonly page: Page,
    private readonly context: BrowserContext,
    address: string,
  ) {
    const { host } = new URL(address);
    this.problems = problemsOf(page);
    context.setDefaultTimeout(PATIENCE);
    context.on("request", (request) => {
      const url = new URL(request.url());
      if (/^https?:|^wss?:/.test(url.protocol) && url.host !== host) this.foreign.push(request.url());
    });
  }

  async isReady(): Promise<void> {
    await this.page.locator("#grid:not(.waiting) canvas").first().waitFor();
    await this.page.locator("#pane > *").first().waitFor();
    await this.page.waitForTimeout(300);
  }

  /** Selects a cell of the sheet in front by its address. */
  async goTo(cell: string): Promise<void> {
    const box = this.page.locator("#grid input").first();
    await box.click();
    await box.fill(cell);
    await box.press("Enter");
    await this.page.waitForTimeout(150);
  }

  async goToSheet(name: string): Promise<void> {
    await this.page.locator("#grid").getByText(name, { exact: true }).click();
    await this.page.waitForTimeout(300);
  }

  async type(cell: string, text: string): Promise<void> {
    await this.goTo(cell);
    await this.page.keyboard.type(text);
    await this.page.keyboard.press("Enter");
  }

  /** Pastes a text that was copied elsewhere. */
  async paste(cell: string, text: string): Promise<void> {
    await this.goTo(cell);
    await this.page.evaluate((copied) => {
      const clipboardData = new DataTransfer();
      clipboardData.setData("text/plain", copied);
      document.activeElement!.dispatchEvent(
        new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }),
      );
    }, text);
  }

  get status(): Locator {
    return this.page.locator("#status");
  }

  /** What the status line says of a cell of the sheet in front: what it shows, and the sentence of its error. */
  async read(cell: string): Promise<string> {
    await this.goTo(cell);
    const text = (await this.status.locator("p").innerText()).replace(/\s+/g, " ").trim();
    return text.slice(text.indexOf(`!${cell}`) + cell.length + 1).trim();
  }

  /** Waits until a cell shows what is expected, because the engine calculates a moment after typing. */
  async shows(cell: string, expected: string | RegExp): Promise<string> {
    let seen = "";
    for (let tries = 0; tries < 40; tries++) {
      seen = await this.read(cell);
      if (typeof expected === "string" ? seen === expected : expected.test(seen)) break;
      await this.page.waitForTimeout(150);
    }
    return seen;
  }

  get pane(): Locator {
    return this.page.locator("#pane");
  }

  /** What was printed last, as the page that went to the printer. */
  async printed(): Promise<string> {
    for (let tries = 0; tries < 40; tries++) {
      const html = await this.page.evaluate(() => (window as unknown as { printed?: string }).printed);
      if (html !== undefined) return html;
      await this.page.waitForTimeout(100);
    }
    throw new Error("nothing was printed");
  }

  /** Goes to a page of the pane. */
  async goToPage(id: string): Promise<void> {
    const tab = this.pane.locator(`fluent-tab#tab-${id}`);
    if ((await tab.count()) > 0) await tab.click();
    else {
      await this.pane.locator("#tab-more").click();
      await this.pane.locator(`#more-${id}`).click();
    }
    await this.pane.locator(`#page-${id}:not([hidden])`).waitFor();
  }

  /** Letters of the column with this heading in row 1 of the sheet in front. */
  async columnOf(heading: string): Promise<string> {
    for (let index = 0; index < 26; index++) {
      const letter = String.fromCharCode(65 + index);
      if ((await this.read(`${letter}1`)) === heading) return letter;
    }
    throw new Error(`no column ${heading}`);
  }

  /** Presses Check and waits for the result. */
  async check(): Promise<void> {
    await this.goToPage("check");
    const result = this.pane.locator("#check-result");
    // It comes by itself only where reading and checking take less than a second.
    await result.waitFor({ timeout: 15_000 }).catch(() => undefined);
    await this.pane.locator("fluent-button#check").click();
    await this.page.waitForTimeout(200);
    await result.waitFor({ timeout: 120_000 });
    await this.page.waitForTimeout(200);
  }

  /** What the pane lists after a check, every group of it unfolded. */
  async findings(): Promise<{ code: string; place: string }[]> {
    const groups = this.pane.locator("section fluent-accordion-item");
    for (let index = 0; index < (await groups.count()); index++) {
      const group = groups.nth(index);
      if ((await group.locator(".jump").count()) === 0) await group.locator("button#control").click();
      await group.locator(".jump").first().waitFor();
    }
    return groups.evaluateAll((items) =>
      items.flatMap((item) =>
        [...item.querySelectorAll(".jump")].map((jump) => ({
          code: (item as HTMLElement).dataset.key?.split("|")[0] ?? "",
          place: jump.textContent?.trim() ?? "",
        })),
      ),
    );
  }

  /** Chooses a file of one's own through the button above the grid, and waits for nothing. */
  async chooseFile(name: string, bytes: Uint8Array): Promise<void> {
    const [chooser] = await Promise.all([
      this.page.waitForEvent("filechooser"),
      this.page.locator("#top button").first().click(),
    ]);
    await chooser.setFiles({ name, mimeType: "application/octet-stream", buffer: Buffer.from(bytes) });
  }

  /** Opens a file of one's own through the button above the grid. */
  async openFile(name: string, bytes: Uint8Array): Promise<void> {
    await this.chooseFile(name, bytes);
    await this.page.locator("#workbook option:checked").getByText(name).waitFor({ state: "attached" });
    await this.isReady();
  }

  /** How long something took, the longest time in which the page drew no frame, and how many it drew. */
  async measure(action: () => Promise<unknown>) {
    await this.page.evaluate(() => {
      const watch = { last: performance.now(), longest: 0, frames: 0, going: true };
      Object.assign(window, { stallWatch: watch });
      const frame = () => {
        const now = performance.now();
        watch.longest = Math.max(watch.longest, now - watch.last);
        watch.last = now;
        watch.frames++;
        if (watch.going) requestAnimationFrame(frame);
      };
      requestAnimationFrame(frame);
    });
    const start = Date.now();
    await action();
    const seconds = ((Date.now() - start) / 1000).toFixed(1);
    const { longest, frames } = await this.page.evaluate(() => {
      const watch = (window as unknown as { stallWatch: { longest: number; frames: number; going: boolean } })
        .stallWatch;
      watch.going = false;
      return watch;
    });
    return { seconds, longestStall: Math.round(longest), frames };
  }

  /** Rules of accessibility that the pane, and what stands above and below the grid, break. */
  brokenRules(): Promise<string[]> {
    return brokenRules(this.page, ["#top", "#pane", "#status"]);
  }

  async picture(name: string): Promise<void> {
    mkdirSync(PICTURES, { recursive: true });
    await this.page.screenshot({ path: path.join(PICTURES, `${name}.png`) });
  }

  async close(): Promise<void> {
    await this.context.close();
  }
}
