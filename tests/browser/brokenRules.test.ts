import type { Browser, Page } from "playwright-core";
import { brokenRules } from "./brokenRules";
import { startChromium } from "./chromium";

const FAINT = ["#bbb", "#fff"] as const;
const CLEAR = ["#000", "#fff"] as const;

describe("contrast on a page whose colours take a second to change", () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await startChromium();
    page = await browser.newPage();
  });
  afterAll(() => browser.close());

  /** What is too faint by day and by night, of words in a page or in the own tree of an element there. */
  async function tooFaint(
    [ink, paper]: readonly [string, string],
    [darkInk, darkPaper]: readonly [string, string],
    inside: boolean,
  ): Promise<readonly [number, number]> {
    await page.emulateMedia({ colorScheme: "light" });
    await page.setContent(
      `<!doctype html><html lang="en"><title>Colours</title>
      <style>
        :root { --ink: ${ink}; --paper: ${paper}; }
        @media (prefers-color-scheme: dark) { :root { --ink: ${darkInk}; --paper: ${darkPaper}; } }
      </style>
      <main><div id="place"></div></main></html>`,
    );
    const words = `<p style="color: var(--ink); background: var(--paper); transition: color 1s, background 1s">Vine</p>`;
    await page.locator("#place").evaluate(
      (place, [html, own]) => {
        (own ? place.attachShadow({ mode: "open" }) : place).innerHTML = html;
      },
      [words, inside] as const,
    );
    const found = async () => (await brokenRules(page, [], ["color-contrast"])).length;
    const light = await found();
    await page.emulateMedia({ colorScheme: "dark" });
    return [light, await found()];
  }

  test.each([
    ["in the page", false],
    ["in an element's own tree", true],
  ])("is judged when the change has ended %s", async (_where, inside) => {
    expect(await tooFaint(FAINT, CLEAR, inside)).toEqual([1, 0]);
    expect(await tooFaint(CLEAR, FAINT, inside)).toEqual([0, 1]);
  });
});
