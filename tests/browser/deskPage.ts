import { spawn, type ChildProcess } from "node:child_process";
import { mkdirSync } from "node:fs";
import path from "node:path";
import type { Browser, BrowserContext, Locator, Page } from "playwright-core";
import { startChromium } from "./chromium";

jest.setTimeout(60_000);

const PICTURES = path.resolve(".cache/screenshots");

/** The desk page's own server, started as a person starts it, and a browser beside it. */
export class Desk {
  private constructor(
    readonly address: string,
    readonly browser: Browser,
    private readonly server: ChildProcess,
  ) {}

  static async start(): Promise<Desk> {
    const [browser, { server, address }] = await Promise.all([startChromium(), startServer()]);
    return new Desk(address, browser, server);
  }

  /** A fresh page with a sample workbook on it, or with the one that opens by itself. */
  async open(sample?: string, options: { language?: string; width?: number; height?: number } = {}) {
    const { language = "en", width = 1366, height = 768 } = options;
    const context = await this.browser.newContext({ viewport: { width, height }, locale: language });
    const page = await context.newPage();
    const desk = new DeskPage(page, context, this.address);
    await page.goto(this.address + (sample ? `?workbook=${sample}` : ""));
    await desk.isReady();
    return desk;
  }

  async stop(): Promise<void> {
    await this.browser.close();
    this.server.kill();
  }
}

/** The page as a person uses it: by typing, clicking and reading, never by calling into its code. */
export class DeskPage {
  /** What the page complained of in its console. */
  readonly problems: string[] = [];
  /** Addresses outside this machine that the page asked for. */
  readonly foreign: string[] = [];

  constructor(
    readonly page: Page,
    private readonly context: BrowserContext,
    address: string,
  ) {
    const { host } = new URL(address);
    page.on("pageerror", (problem) => this.problems.push(String(problem.stack ?? problem)));
    page.on("console", (message) => {
      if (message.type() === "error") this.problems.push(message.text());
    });
    context.on("request", (request) => {
      const url = new URL(request.url());
      if (/^https?:|^wss?:/.test(url.protocol) && url.host !== host) this.foreign.push(request.url());
    });
  }

  async isReady(): Promise<void> {
    await this.page.locator("#grid:not(.waiting) canvas").first().waitFor({ timeout: 60_000 });
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

  get status(): Locator {
    return this.page.locator("#status");
  }

  /** What the status line says of a cell of the sheet in front: what it shows, and the sentence of its error. */
  async read(cell: string): Promise<string> {
    await this.goTo(cell);
    const text = (await this.status.innerText()).replace(/\s+/g, " ").trim();
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

  async picture(name: string): Promise<void> {
    mkdirSync(PICTURES, { recursive: true });
    await this.page.screenshot({ path: path.join(PICTURES, `${name}.png`) });
  }

  async close(): Promise<void> {
    await this.context.close();
  }
}

function startServer(): Promise<{ server: ChildProcess; address: string }> {
  const server = spawn(
    process.execPath,
    ["--import", "tsx", "src/desk/server/main.ts", "--port", "0", "--no-open"],
    { env: { ...process.env, LC_ALL: "C", NODE_OPTIONS: "" }, stdio: ["ignore", "pipe", "pipe"] },
  );
  return new Promise((resolve, reject) => {
    let said = "";
    const listen = (chunk: Buffer) => {
      said += chunk;
      const address = /http:\/\/[\d.:]+\//.exec(said)?.[0];
      if (address) resolve({ server, address });
    };
    server.stdout.on("data", listen);
    server.stderr.on("data", listen);
    server.on("exit", (code) => reject(new Error(`the server stopped with ${code}: ${said}`)));
  });
}
