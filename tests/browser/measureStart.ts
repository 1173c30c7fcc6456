import { chromium } from "playwright-core";
import { BROWSER_ADDRESS, PATIENCE } from "./shared";

/** How soon the page stands, in milliseconds from the start of its navigation, and what it fetched. */
export interface Start {
  readonly visit: string;
  readonly ready: number;
  readonly season: number;
  readonly megabytes: number;
}

/** Opens the page without Excel as a first visit and again, while no test takes a core beside it. */
export async function measureStart(address: string): Promise<Start[]> {
  const browser = await chromium.connect(process.env[BROWSER_ADDRESS]!);
  const context = await browser.newContext({ viewport: { width: 1366, height: 768 }, locale: "en" });
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE);
  const starts: Start[] = [];
  for (const visit of ["first visit", "reload"]) {
    await (visit === "reload" ? page.reload() : page.goto(address));
    await page.locator("#season-picture").waitFor();
    await page.waitForFunction(() => performance.getEntriesByName("cordonbook-ready").length > 0);
    await page.waitForTimeout(1000);
    const seen = await page.evaluate(() => ({
      bytes: performance
        .getEntriesByType("resource")
        .reduce((sum, entry) => sum + (entry as PerformanceResourceTiming).encodedBodySize, 0),
      ready: performance.getEntriesByName("cordonbook-ready")[0].startTime,
      season: performance.getEntriesByName("cordonbook-season")[0].startTime,
    }));
    starts.push({ visit, ready: seen.ready, season: seen.season, megabytes: seen.bytes / 1e6 });
  }
  await browser.close();
  return starts;
}
