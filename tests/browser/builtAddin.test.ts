import { execFile } from "node:child_process";
import { readFileSync } from "node:fs";
import path from "node:path";
import { promisify } from "node:util";
import { gzipSync } from "node:zlib";
import type { Browser, Page } from "playwright-core";
import { metadataFile } from "../../src/functions/metadata";
import { FUNCTIONS } from "../../src/functions/registry";
import { emptySeasonFile } from "../../src/texts/emptySeasonFile";
import { LANGUAGES } from "../../src/texts/language";
import { hostWith } from "../workbook/office/excelWorkbookOn";
import { CORDON_HEADS } from "../survey/cordonHeads";
import { startChromium } from "./chromium";
import { openExcelPage } from "./excelPage";

const folder = path.resolve(".cache/addin");
const ROWS = [CORDON_HEADS, ["North Bench", 1, 1, "left", "A", 1, 3.5, 8, 6]];

/** Of gzip, as a server sends it. */
const BOUND = 110_000;
const SHOWN = 150_000;

const bytes = (files: readonly string[]) =>
  files.reduce((sum, file) => sum + gzipSync(readFileSync(path.join(folder, file))).length, 0);

const functionsBound = (page: Page) => page.evaluate(() => Object.keys(window.associated).length);
const heading = (page: Page) =>
  page.evaluate(() => document.querySelector("#pane")?.shadowRoot?.querySelector("h1")?.textContent);
const gapsByRow = (page: Page) =>
  page.evaluate(async (rows) => {
    try {
      return await window.associated.GAPSBYROW(rows, {});
    } catch (error) {
      return { code: (error as { code?: string }).code, sentence: (error as Error).message };
    }
  }, ROWS as unknown[][]);

describe("the add-in as it is built", () => {
  let browser: Browser;
  beforeAll(async () => {
    const webpack = ["node_modules/webpack/bin/webpack.js", "--mode", "production", "--output-path", folder];
    await promisify(execFile)(process.execPath, webpack);
    browser = await startChromium();
  }, 400_000);
  afterAll(() => browser.close());

  test.each([
    ["en-US", "Where the season stands"],
    ["es-MX", "Cómo va la temporada"],
    ["fr-CA", "Où en est la saison"],
  ])(
    "functions are bound, and the first page is shown, within their bytes (%s)",
    async (displayLanguage, title) => {
      const bound: string[] = [];
      const shown: string[] = [];
      const later: string[] = [];
      const asked = async (file: string, page: Page) => {
        if ((await functionsBound(page)) < FUNCTIONS.length) bound.push(file);
        ((await heading(page)) === undefined ? shown : later).push(file);
        return true;
      };
      const { page, problems } = await openExcelPage(browser, hostWith({ Cordons: ROWS }), {
        displayLanguage,
        build: { folder, asked },
      });
      await page.locator("#tab-check").waitFor();
      expect(await heading(page)).toBe(title);
      expect(await functionsBound(page)).toBe(FUNCTIONS.length);
      expect(bound).toHaveLength(2);
      expect(bytes(bound)).toBeLessThanOrEqual(BOUND);
      expect(shown).toEqual(expect.arrayContaining(bound));
      expect(bytes(shown)).toBeGreaterThan(bytes(bound));
      expect(bytes(shown)).toBeLessThanOrEqual(SHOWN);
      await page.locator("#season-picture").waitFor();
      expect(later.length).toBeGreaterThan(0);
      expect(problems).toEqual([]);
      await page.context().close();
    },
  );

  test("gives the filled season and every empty one beside its page", () => {
    const files = ["larkmoor-clean.xlsx"];
    for (const language of LANGUAGES)
      for (const units of ["US", "metric"] as const) files.push(emptySeasonFile(units, language));
    for (const file of files)
      expect(readFileSync(path.join(folder, "sample-workbooks", file))).toEqual(
        readFileSync(path.resolve("sample-workbooks", file)),
      );
  });

  test.each(LANGUAGES)("lists the functions for Excel as it is expected of the registry (%s)", (language) => {
    const read = (from: string) => JSON.parse(readFileSync(path.join(from, metadataFile(language)), "utf8"));
    expect(read(folder)).toEqual(read("tests/functions/expected"));
  });

  test("a function of whole tables is bound with the others, says what did not arrive, and answers when it is called again", async () => {
    let arrives = false;
    // The pane's own script never arrives: functions answer without it.
    const asked = async (_file: string, page: Page) =>
      arrives || (await functionsBound(page)) < FUNCTIONS.length;
    const { page } = await openExcelPage(browser, hostWith({}), { build: { folder, asked } });
    await page.getByRole("alert").filter({ hasText: "could not be fetched" }).waitFor();
    expect(await page.evaluate(() => window.associated.NODEBUDGET(3, "30+10", {}))).toEqual([[50]]);
    expect(await gapsByRow(page)).toEqual({
      code: "#N/A",
      sentence: "Part of Cordonbook could not be fetched. Check the network and try again.",
    });
    arrives = true;
    // Another script of the fetch that failed may not have failed yet.
    let answer: unknown;
    for (const end = Date.now() + 20_000; !Array.isArray(answer) && Date.now() < end;)
      answer = await gapsByRow(page);
    // 8 positions, 6 of them alive: 2 gaps, 2/8 of the positions.
    expect((answer as unknown[][])[1].slice(0, 8)).toEqual(["North Bench", 1, 1, 1, 8, 6, 2, 0.25]);
    await page.context().close();
  });
});
