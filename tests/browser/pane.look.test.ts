import { openPane, type Look } from "./pane/openPane";

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
