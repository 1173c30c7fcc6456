import { PaneBrowser, type Look } from "./pane/panePage";

describe("the pane", () => {
  let browser: PaneBrowser;
  beforeAll(async () => {
    browser = await PaneBrowser.start();
  }, 120_000);
  afterAll(() => browser?.close());

  test.each<Look>(["light", "dark", "forced"])("breaks no rule of axe-core in %s", async (look) => {
    const page = await browser.open({}, { look });
    expect(await page.brokenRules()).toEqual([]);
    await page.picture(`pane-${look}`);
    expect(page.problems).toEqual([]);
    await page.close();
  });
});
