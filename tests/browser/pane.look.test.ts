import { PAGE_NAMES } from "../../src/texts/pane";
import { HIDDEN, READ_LINE, UNREAD_PARTS, USED_LINE } from "../survey/season/unreadParts";
import { foreignUnits, inMetric } from "../survey/unitWords";
import { brokenRules } from "./brokenRules";
import { misfits } from "./misfits";
import { openPane } from "./pane/openPane";
import type { PanePage } from "./pane/panePage";
import { sampleSeason } from "./pane/sampleSeason";
import { isResultPage, resultsOf } from "./resultsOf";

const SAMPLES = { clean: "larkmoor-clean", mistakes: "larkmoor-mistakes" } as const;

const PAGES = Object.keys(PAGE_NAMES);
const LANGUAGES = ["en", "es", "fr"] as const;
/** Rules whose outcome depends on colours and on room; all others look at the same elements in every look. */
const OF_LOOKS = ["color-contrast", "link-in-text-block", "scrollable-region-focusable", "target-size"];
/** 1 April 2026, after the days of the sample's counts. */
const AFTER_COUNTING = 46113;
/** 1280 x 720 at 200 %, less the page's own lines above and below. */
const AT_200_PERCENT = { width: 320, height: 270 };

describe.each(["empty", "clean", "mistakes"] as const)("every page over %s sheets", (of) => {
  test("fits narrow and wide, in each language, and breaks no rule of axe-core in any look", async () => {
    const sheets = of === "empty" ? {} : await sampleSeason(SAMPLES[of]);
    const pane = await openPane(sheets, { page: "season", today: AFTER_COUNTING });
    await pane.page.locator("#season-picture, #counted-vine").waitFor();
    const broken: string[] = [];
    const look = async (id: string) => {
      const all = async (name: string, rules: readonly string[] = []) =>
        broken.push(...(await brokenRules(pane.page, [], rules)).map((rule) => `${id} ${name}: ${rule}`));
      await all("light");
      await pane.page.emulateMedia({ colorScheme: "dark" });
      await all("dark", OF_LOOKS);
      await pane.page.emulateMedia({ colorScheme: "light", forcedColors: "active" });
      await all("forced", OF_LOOKS);
      await pane.page.emulateMedia({ forcedColors: "none" });
      await pane.page.setViewportSize(AT_200_PERCENT);
      await all("200 %", OF_LOOKS);
      await pane.page.setViewportSize({ width: 320, height: 640 });
    };
    for (const language of LANGUAGES) {
      await pane.page.evaluate((chosen) => window.harness.pane.setLanguage(chosen), language);
      await pane.page.locator(`.pane[lang=${language}]`).waitFor();
      for (const id of PAGES) {
        await pane.goTo(id);
        await pane.page.locator(`#page-${id}:not([hidden])`).waitFor();
        if (language === "en" && of !== "empty" && isResultPage(id)) await resultsOf(pane.page, id);
        await pane.page.locator("fluent-progress-bar").waitFor({ state: "detached" });
        const text = await pane.page.locator(`#page-${id}`).innerText();
        broken.push(...foreignUnits(text, "US").map((line) => `${id} ${language}: ${line}`));
        for (const width of [1280, 320]) {
          await pane.page.setViewportSize({ width, height: 640 });
          await pane.settled();
          const found = await misfits(pane.page);
          broken.push(...found.map((misfit) => `${id} ${language} ${width} px: ${misfit}`));
        }
        if (language !== "en") {
          if (["season", "check", "decide"].includes(id))
            broken.push(...(await brokenRules(pane.page)).map((rule) => `${id} ${language}: ${rule}`));
          continue;
        }
        await look(id);
        await pane.picture(`${of}-${id}`);
      }
    }
    expect(broken).toEqual([]);
  });
});

test("a metric workbook reads no feet, pounds or acres on any page in any language", async () => {
  const pane = await openPane(inMetric(await sampleSeason("larkmoor-mistakes")), {
    page: "season",
    today: AFTER_COUNTING,
  });
  await pane.page.locator("#season-picture").waitFor();
  const found: string[] = [];
  for (const language of LANGUAGES) {
    await pane.page.evaluate((chosen) => window.harness.pane.setLanguage(chosen), language);
    await pane.page.locator(`.pane[lang=${language}]`).waitFor();
    for (const id of PAGES) {
      await pane.goTo(id);
      await pane.page.locator(`#page-${id}:not([hidden])`).waitFor();
      if (language === "en" && isResultPage(id)) await resultsOf(pane.page, id);
      // the folds of Functions hold examples as they are published
      if (language === "en" && id !== "functions") await unfold(pane, id);
      await pane.page.locator("fluent-progress-bar").waitFor({ state: "detached" });
      const text = await pane.page.locator(`#page-${id}`).innerText();
      found.push(...foreignUnits(text, "metric").map((line) => `${id} ${language}: ${line}`));
    }
  }
  expect(found).toEqual([]);
});

/** Opens everything that a page has folded. */
async function unfold(pane: PanePage, id: string): Promise<void> {
  const folds = pane.page.locator(`#page-${id} fluent-accordion-item:not([expanded]) button#control:visible`);
  for (let left = await folds.count(); left > 0; left--) await folds.nth(left - 1).click();
  await pane.page.locator(`#page-${id}`).evaluate((page) => {
    for (const fold of page.querySelectorAll("details")) fold.open = true;
  });
}

describe("the pane", () => {
  test("shows a newcomer around, step by step, by keyboard", async () => {
    const pane = await openPane({});
    await pane.page.locator("#walk-again").click();
    await pane.page.getByText("Step 1 of 7").waitFor();
    await pane.reach("walk-next");
    for (let step = 2; step <= 7; step += 1) {
      await pane.page.keyboard.press("Enter");
      await pane.page.getByText(`Step ${step} of 7`).waitFor();
    }
    expect(await pane.page.locator("#tab-functions").getAttribute("aria-selected")).toBe("true");
    expect(await pane.brokenRules()).toEqual([]);
    await pane.page.keyboard.press("Enter");
    await pane.page.locator("#walk-step").waitFor({ state: "detached" });
    expect(await pane.page.locator("#tab-season").getAttribute("aria-selected")).toBe("true");
  });
});

test("every page, printed page and written sheet says what was read and what was not", async () => {
  const pane = await openPane(UNREAD_PARTS, { height: 900 });
  await pane.page.evaluate((hidden) => (window.harness.workbook.hidden = [hidden]), HIDDEN);
  await pane.goTo("gaps");
  await resultsOf(pane.page, "gaps");
  const line = pane.page.locator(".account p");
  for (const id of Object.keys(PAGE_NAMES)) {
    await pane.goTo(id);
    await pane.page.locator(`#page-${id} .account`).waitFor();
    expect([id, await line.innerText()]).toEqual([id, READ_LINE]);
  }
  await pane.page.locator(".account summary").click();
  const details = await pane.page.locator("#reading").innerText();
  for (const part of [USED_LINE, "Spare was not read: it is hidden.", "Pond", "Tanks", "Cordons 2025"])
    expect(details).toContain(part);
  expect(await pane.brokenRules()).toEqual([]);

  await pane.goTo("gaps");
  await pane.button("Write Row gaps sheet").click();
  await pane.page.getByText("The sheet Row gaps was written").waitFor();
  const written = await pane.page.evaluate(() => window.harness.workbook.readSheet("Row gaps"));
  expect(written.values.map(([first]) => first)).toEqual(expect.arrayContaining([READ_LINE, USED_LINE]));
});
