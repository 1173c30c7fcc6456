import type { Browser } from "playwright-core";
import { startChromium } from "./chromium";

describe("the browser of the tests", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await startChromium();
  }, 120_000);
  afterAll(() => browser?.close());

  test("lays out a page and has letters to write it with", async () => {
    const page = await browser.newPage({ viewport: { width: 640, height: 480 } });
    await page.setContent('<body style="margin:0"><p style="width:25%">vine</p>');
    const size = await page.$eval("p", (element) => [element.offsetWidth, element.offsetHeight] as const);
    expect(size[0]).toBe(160);
    expect(size[1]).toBeGreaterThan(10);
    await page.close();
  });

  test("makes a PDF of a page", async () => {
    const page = await browser.newPage();
    await page.setContent("<p>row 7</p>");
    const pdf = await page.pdf({ format: "A4" });
    expect(pdf.subarray(0, 5).toString("latin1")).toBe("%PDF-");
    await page.close();
  });
});
