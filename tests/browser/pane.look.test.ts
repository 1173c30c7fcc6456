import { PAGE_NAMES } from "../../src/texts/pane";
import { HIDDEN, READ_LINE, UNREAD_PARTS, USED_LINE } from "../survey/season/unreadParts";
import { openPane, type Look } from "./pane/openPane";
import { resultsOf } from "./resultsOf";

jest.setTimeout(30_000);

describe("the pane", () => {
  test.each<Look>(["light", "dark", "forced"])("breaks no rule of axe-core in %s", async (look) => {
    const page = await openPane({}, { look });
    expect(await page.brokenRules()).toEqual([]);
    await page.picture(`pane-${look}`);
  });

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

  test.each(["en", "es", "fr"] as const)(
    "leaves the corner for the host's own button free in %s",
    async (language) => {
      const pane = await openPane({}, { language });
      const overlapping = await pane.page.evaluate(() => {
        const root = document.getElementById("pane")!.shadowRoot!;
        return [...root.querySelectorAll<HTMLElement>("fluent-tab")]
          .filter((tab) => {
            const { right, top } = tab.getBoundingClientRect();
            return right > 320 - 34 && top < 32;
          })
          .map((tab) => tab.innerText);
      });
      expect(overlapping).toEqual([]);
      const lines = await pane.page.evaluate(() => {
        const root = document.getElementById("pane")!.shadowRoot!;
        return new Set([...root.querySelectorAll("fluent-tab")].map((tab) => tab.getBoundingClientRect().top))
          .size;
      });
      expect(lines).toBeLessThanOrEqual(2);
      await pane.picture("pane-tabs");
    },
  );
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
