import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import type { PaneOptions } from "../../../src/taskpane/mountPane";
import { startChromium } from "../chromium";
import { problemsOf } from "../problemsOf";
import { PANE_PAGE, PATIENCE } from "../shared";
import type { Sheets } from "./harness";
import { PanePage } from "./panePage";

export type Look = "light" | "dark" | "forced";

let browser: Browser | undefined;
const opened: PanePage[] = [];

/**
 * Opens a page with a pane of 320 px over a workbook in memory. A test file that imports this has one browser for all
 * its tests; after each test its pages are closed, and the test fails where one of them threw or logged an error.
 */
export async function openPane(
  sheets: Sheets,
  { look = "light", ...options }: PaneOptions & { look?: Look; height?: number; width?: number } = {},
): Promise<PanePage> {
  const context = await browser!.newContext({
    viewport: { width: options.width ?? 320, height: options.height ?? 640 },
    colorScheme: look === "dark" ? "dark" : "light",
    forcedColors: look === "forced" ? "active" : "none",
    reducedMotion: "reduce",
  });
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE);
  const pane = new PanePage(page, problemsOf(page));
  opened.push(pane);
  await page.addInitScript(() => {
    window.print = () => {
      window.dispatchEvent(new Event("beforeprint"));
      (window.top as Window).printed = document.body.innerText;
      window.dispatchEvent(new Event("afterprint"));
    };
  });
  await page.goto(pathToFileURL(PANE_PAGE).href);
  await page.evaluate(
    ([cells, rest]) =>
      window.harness.mount(JSON.parse(cells), { language: "en", today: 45350, page: "check", ...rest }),
    [JSON.stringify(sheets), options] as const,
  );
  return pane;
}

beforeAll(async () => {
  browser = await startChromium();
});

afterEach(async () => {
  const panes = opened.splice(0);
  const problems = panes.flatMap((pane) => pane.problems);
  for (const pane of panes) await pane.close();
  expect(problems).toEqual([]);
});

afterAll(() => browser?.close());
