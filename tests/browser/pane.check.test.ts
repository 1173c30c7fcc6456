import { PaneBrowser, type Sheets } from "./pane/panePage";

const COUNTS: Sheets = {
  Cordons: [
    ["Block", "Row", "Vine", "Side", "Trunk", "Length (ft)", "Positions", "Live spurs"],
    ["North Bench", 1, 1, "left", 1, 3.5, 7, 6],
    ["North Bench", 1, 1, "right", 1, 3.5, 7, 7],
  ],
  Remarks: [["Snow on the third day"]],
};

describe("the page that checks the counts", () => {
  let browser: PaneBrowser;
  beforeAll(async () => {
    browser = await PaneBrowser.start();
  }, 120_000);
  afterAll(() => browser?.close());

  test("finds the survey tables by their headers and lets a person choose", async () => {
    const pane = await browser.open(COUNTS);
    await pane.button("Choose sheets").click();
    const box = pane.box("Cordons: Cordons, 2 rows");
    await box.waitFor();
    expect(await pane.page.locator("fluent-checkbox").count()).toBe(1);
    expect(await pane.brokenRules()).toEqual([]);
    expect(await pane.accessibleTree()).toContainEqual({
      role: "checkbox",
      name: "Cordons: Cordons, 2 rows",
    });
    await box.click();
    expect(await box.evaluate((element: HTMLInputElement) => element.checked)).toBe(false);
    await pane.picture("check-sheets");
    expect(pane.problems).toEqual([]);
    await pane.close();
  });

  test("says the next step where no table is", async () => {
    const pane = await browser.open({ Remarks: [["Snow on the third day"]] });
    await pane.button("Choose sheets").click();
    await pane.page.getByText("No survey table was found").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.close();
  });
});
