import { mkdir } from "node:fs/promises";
import path from "node:path";
import { AxeBuilder } from "@axe-core/playwright";
import { build } from "esbuild";
import type { Browser, Locator, Page } from "playwright-core";
import { startChromium } from "../chromium";
import type { PaneOptions } from "../../../src/taskpane/mountPane";
import type { MemoryCell } from "../../../src/workbook/memory/memoryWorkbook";

export type Sheets = Readonly<Record<string, readonly (readonly MemoryCell[])[]>>;
export type Look = "light" | "dark" | "forced";

const root = path.resolve(__dirname, "../../..");

/** A browser with the pane bundled once; each page that it opens has a pane of 320 px over a workbook in memory. */
export class PaneBrowser {
  private constructor(
    private readonly browser: Browser,
    private readonly script: string,
  ) {}

  static async start(): Promise<PaneBrowser> {
    const bundle = await build({
      entryPoints: [path.join(__dirname, "harness.ts")],
      bundle: true,
      write: false,
      format: "iife",
      target: "es2022",
      tsconfigRaw: { compilerOptions: { target: "ES2022" } },
    });
    return new PaneBrowser(await startChromium(), bundle.outputFiles[0].text);
  }

  /** Opens a page and mounts the pane; anything the page throws or logs as an error is kept in `page.problems`. */
  async open(
    sheets: Sheets,
    { look = "light", ...options }: PaneOptions & { look?: Look; height?: number; width?: number } = {},
  ): Promise<PanePage> {
    const context = await this.browser.newContext({
      viewport: { width: options.width ?? 320, height: options.height ?? 640 },
      colorScheme: look === "dark" ? "dark" : "light",
      forcedColors: look === "forced" ? "active" : "none",
      reducedMotion: "reduce",
    });
    const page = await context.newPage();
    page.setDefaultTimeout(8000);
    const problems: string[] = [];
    page.on("pageerror", (problem) => problems.push(String(problem)));
    page.on("console", (message) => {
      if (message.type() === "error") problems.push(message.text());
    });
    await page.addInitScript(() => {
      window.print = () => {
        (window.top as Window).printed = document.body.innerText;
        window.dispatchEvent(new Event("afterprint"));
      };
    });
    await page.goto("about:blank");
    await page.setContent(
      '<!doctype html><html lang="en"><head><title>Pane</title><style>html,body,main{margin:0;block-size:100%}</style></head>' +
        '<body><main><h1 style="position:absolute;clip-path:inset(50%)">Cordonbook</h1><div id="pane" style="block-size:100%"></div></main></body></html>',
    );
    await page.addScriptTag({ content: this.script });
    await page.evaluate(
      ([cells, rest]) => window.harness.mount(cells, { language: "en", today: 45350, walk: false, ...rest }),
      [sheets, options] as const,
    );
    return new PanePage(page, problems);
  }

  close(): Promise<void> {
    return this.browser.close();
  }
}

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

  /** Presses Tab until the element of that id has the focus. */
  async reach(id: string): Promise<void> {
    for (let step = 0; step < 60; step += 1) {
      await this.page.keyboard.press("Tab");
      if ((await this.focused()) === id) return;
    }
    throw new Error(`Tab never reached ${id}`);
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
  async brokenRules(): Promise<string[]> {
    const { violations } = await new AxeBuilder({ page: this.page }).analyze();
    return violations.map((rule) => `${rule.id}: ${rule.nodes[0].target.join(" ")} ${rule.nodes[0].html}`);
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
