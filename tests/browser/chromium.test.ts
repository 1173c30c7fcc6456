import type { Browser } from "playwright-core";
import { brokenRules } from "./brokenRules";
import { startChromium } from "./chromium";

describe("the browser of the tests", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await startChromium();
  });
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

  const frame = `<iframe title="card" srcdoc="<html lang='en'><title>Card</title><h1>Card</h1><img src='data:,'>"></iframe>`;
  test.each([
    ["a shadow root", "", ["button-name"]],
    ["a shadow root and a frame", frame, ["button-name", "image-alt"]],
  ])("finds what breaks a rule of accessibility in %s", async (_where, inner, broken) => {
    const context = await browser.newContext();
    const page = await context.newPage();
    await page.setContent(
      `<!doctype html><html lang="en"><title>Vines</title><main><h1>Vines</h1><div id="named">Vine</div>${inner}</main>`,
    );
    expect(await brokenRules(page, ["#named"])).toEqual([]);
    await page.evaluate(() => {
      const root = document.getElementById("named")!.attachShadow({ mode: "open" });
      root.innerHTML = "<button></button>";
    });
    const rules = async (parts?: string[]) =>
      (await brokenRules(page, parts)).map((rule) => rule.split(":")[0]);
    expect((await rules()).sort()).toEqual(broken);
    expect(await rules(["#named"])).toEqual(["button-name"]);
    await context.close();
  });
});
