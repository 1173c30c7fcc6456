import { readFileSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";
import type { Browser } from "playwright-core";
import { startChromium } from "../browser/chromium";

const ADDRESS = "https://addin.test/";
const RUNS = 15;
/** A line in the office: 10 Mbit a second, 40 ms until the first byte. */
const BYTES_A_MS = 1250;
const LATENCY_MS = 40;

/** What of office.js the page asks before it binds its functions; it notes when each was bound. */
const OFFICE = `
  window.bound = [];
  window.CustomFunctions = { associate: () => window.bound.push(performance.now()), Error, ErrorCode: {} };
  window.Office = {
    HostType: { Excel: "Excel" },
    onReady: async () => ({ host: "Excel" }),
    context: { displayLanguage: "en-US", requirements: { isSetSupported: () => true } },
  };`;

/**
 * Milliseconds from the page's start until every function is bound, for each build: the median over runs that take
 * turns, at once and over a line of 10 Mbit a second with scripts packed as a server packs them.
 *
 * BUILDS names the folders, such as BUILDS=dist,before/dist; dist alone where it is left out.
 */
export async function run(): Promise<void> {
  const builds = (process.env.BUILDS ?? "dist").split(",");
  const browser = await startChromium();
  for (const slow of [false, true]) {
    const times = builds.map((): number[] => []);
    for (let run = 0; run < RUNS; run++)
      for (const [index, build] of builds.entries())
        times[index].push(await timeToBind(browser, build, slow));
    const medians = times.map((each) => each.sort((a, b) => a - b)[(RUNS - 1) / 2]);
    for (const [index, build] of builds.entries())
      console.log(
        `${slow ? "10 Mbit/s" : "no line  "} ${build}: functions bound after ${medians[index].toFixed(0)} ms` +
          (index > 0 ? `, ${(medians[index] / medians[0]).toFixed(2)} times ${builds[0]}` : ""),
      );
  }
  await browser.close();
}

async function timeToBind(browser: Browser, build: string, slow: boolean): Promise<number> {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.route("**/*", async (route) => {
    const { hostname, pathname } = new URL(route.request().url());
    if (hostname === "appsforoffice.microsoft.com")
      return route.fulfill({ contentType: "text/javascript", body: OFFICE });
    const type = pathname.endsWith(".html") ? "text/html" : "text/javascript";
    const body = readFileSync(path.join(build, pathname));
    const wait = LATENCY_MS + gzipSync(body).length / BYTES_A_MS;
    if (slow) await new Promise((resolve) => setTimeout(resolve, wait));
    return route.fulfill({ contentType: type, body });
  });
  await page.goto(`${ADDRESS}taskpane.html`);
  const { functions } = JSON.parse(readFileSync(path.join(build, "functions.json"), "utf8")) as {
    functions: unknown[];
  };
  const bound = await page.waitForFunction(
    (count) => window.bound.length === count && window.bound.at(-1),
    functions.length,
  );
  const time = await bound.jsonValue();
  await context.close();
  return Number(time);
}

declare global {
  interface Window {
    bound: number[];
  }
}
