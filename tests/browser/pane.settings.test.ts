import type { Sheets } from "./pane/harness";
import { openPane } from "./pane/openPane";
import type { PanePage } from "./pane/panePage";
import { CORDON_HEADS } from "../survey/cordonHeads";

const CORDONS: Sheets = {
  Cordons: [
    [...CORDON_HEADS, "Longest gap"],
    ["North Bench", 1, 1, "left", "A", 1, 3.5, 7, 6, 1],
    ["North Bench", 1, 1, "left", "B", 2, 3.5, 7, 2, 4],
    ["North Bench", 1, 1, "right", "C", 1, 3.5, 7, 7, 0],
  ],
};

const WITH_TABLE: Sheets = {
  ...CORDONS,
  Settings: [
    ["Setting", "Value", "Unit", "Source", "Meaning", "Changed by", "Changed on"],
    ["Weight of live spurs", 0.4, "share", "own figure", null, "RS", 45000],
  ],
};

describe("the page for the figures that change results", () => {
  let pane: PanePage;

  const openFigure = async (name: string) => {
    await pane.goTo("settings");
    await pane.button("Read the settings").click();
    await pane.page.locator("#setting-search input").fill(name);
    await pane.page.locator('fluent-accordion-item[data-key="choice"] button#control').click();
    await pane.page.locator(`fluent-button[aria-label="Change: ${name}"]`).click();
    await pane.page.locator("#setting-value").waitFor();
  };
  const values = (sheet: string) =>
    pane.page.evaluate(async (name) => (await window.harness.workbook.readSheet(name)).values, sheet);

  test("shows what a change moves before it is kept, then writes value, source, name and day", async () => {
    pane = await openPane(WITH_TABLE, { height: 900 });
    await openFigure("Weight of live spurs");
    await pane.page.getByText("Changed by RS, 2023-03-15").waitFor();
    await pane.page.locator("#setting-value input").fill("0.35");
    await pane.page.locator("#setting-by input").fill("JT");
    await pane.button("Show what moves").click();
    await pane.page.locator("#keep-setting").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("settings-moved");
    expect((await values("Settings"))[1][1]).toBe(0.4);
    await pane.page.locator("#keep-setting").click();
    await pane.page.getByText("Kept: Weight of live spurs is 0.35").waitFor();
    expect((await values("Settings"))[1].slice(1, 7)).toEqual([
      0.35,
      "share",
      "own figure",
      null,
      "JT",
      45350,
    ]);
  });

  test("goes back to the source's value, shown first", async () => {
    pane = await openPane(WITH_TABLE);
    await openFigure("Weight of live spurs");
    await pane.page.locator("#setting-by input").fill("JT");
    await pane.button("Back to the source's value").click();
    await pane.page.locator("#keep-setting").click();
    await pane.page.getByText("Kept: Weight of live spurs is 0.2").waitFor();
    expect((await values("Settings"))[1].slice(1, 4)).toEqual([0.2, "share", "ours"]);
  });

  test("refuses a figure outside its limits in one sentence, and a change without a name", async () => {
    pane = await openPane(WITH_TABLE);
    await openFigure("Weight of live spurs");
    await pane.page.locator("#setting-value input").fill("7");
    await pane.button("Show what moves").click();
    await pane.page.getByText("Weight of live spurs must lie within").waitFor();
    await pane.page.locator("#setting-value input").fill("0.2");
    await pane.button("Show what moves").click();
    await pane.page.locator("#keep-setting").click();
    await pane.page.getByText("Write your name or initials").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    expect((await values("Settings"))[1][1]).toBe(0.4);
  });

  test("writes nothing over a colleague's change", async () => {
    pane = await openPane(WITH_TABLE);
    await openFigure("Weight of live spurs");
    await pane.page.locator("#setting-value input").fill("0.2");
    await pane.page.locator("#setting-by input").fill("JT");
    await pane.button("Show what moves").click();
    await pane.page.locator("#keep-setting").waitFor();
    await pane.page.evaluate(() => window.harness.workbook.type("Settings", 2, 2, 0.5, "colleague"));
    await pane.page.locator("#keep-setting").waitFor({ state: "detached" });
    await pane.page.locator("#show-moved").waitFor();
    expect((await values("Settings"))[1][1]).toBe(0.5);
  });

  test("makes the table where the workbook has none, and reads it from then on", async () => {
    pane = await openPane(CORDONS);
    await openFigure("Weight of live spurs");
    await pane.page.getByText("This workbook has no Settings table").waitFor();
    await pane.page.locator("#setting-value input").fill("0.2");
    await pane.page.locator("#setting-by input").fill("JT");
    await pane.button("Show what moves").click();
    await pane.page.locator("#keep-setting").click();
    await pane.page.getByText("Kept: Weight of live spurs is 0.2").waitFor();
    expect(await values("Settings")).toContainEqual(
      expect.arrayContaining(["Weight of live spurs", 0.2, "JT"]),
    );
    expect(await pane.page.getByText("This workbook has no Settings table").count()).toBe(0);
  });

  const compareWith = (name: string, text: string) =>
    pane.page.locator("#other-workbook").setInputFiles({
      name,
      mimeType: "text/csv",
      buffer: Buffer.from(text),
    });

  test("copies figures of another workbook, shown first, and takes them back exactly", async () => {
    pane = await openPane(WITH_TABLE, { height: 900 });
    await pane.goTo("settings");
    await pane.button("Read the settings").click();
    await compareWith(
      "farm-office.csv",
      "Setting,Value,Unit,Changed by\nWeight of live spurs,0.25,share,RS\nSpur spacing,12.7,cm,\n",
    );
    await pane.page.getByText("2 figures differ from farm-office.csv").waitFor();
    await pane.page.getByText("Spur spacing: here 4 in, there 5 in").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("settings-other-workbook");
    await pane.button("Show what moves").click();
    await pane.button("Copy 2 figures").click();
    await pane.page.getByText("Write your name or initials").waitFor();
    await pane.page.locator("#copy-by input").fill("JT");
    const before = await values("Settings");
    await pane.button("Copy 2 figures").click();
    await pane.page.getByText("2 figures were copied from farm-office.csv").waitFor();
    const after = await values("Settings");
    expect(after[1].slice(0, 2)).toEqual(["Weight of live spurs", 0.25]);
    expect(after[1][5]).toBe("JT");
    expect(after[2].slice(0, 3)).toEqual(["Spur spacing", 5, "in"]);
    await pane.page.locator("#undo-travel").click();
    await pane.page.getByText("The Settings table is as it was").waitFor();
    expect((await values("Settings")).slice(0, 2)).toEqual(before);
  });

  test("copies only what is ticked, and says when there is nothing to copy", async () => {
    pane = await openPane(WITH_TABLE, { height: 900 });
    await pane.goTo("settings");
    await pane.button("Read the settings").click();
    await compareWith("same.csv", "Setting,Value\nWeight of live spurs,0.4\n");
    await pane.page.getByText("Every figure of same.csv is the same as here").waitFor();
    await compareWith("other.csv", "Block,Row,Vine\nA,1,1\n");
    await pane.page.getByText("There is no Settings table in other.csv").waitFor();
    await compareWith("two.csv", "Setting,Value\nWeight of live spurs,0.25\nSpur spacing,5\n");
    await pane.page.locator("#difference-0").click();
    await pane.page.locator("#copy-by input").fill("JT");
    await pane.button("Show what moves").click();
    await pane.button("Copy 1 figure").click();
    await pane.page.getByText("1 figure was copied from two.csv").waitFor();
    const after = await values("Settings");
    expect(after).toHaveLength(2);
    expect(after[1].slice(0, 2)).toEqual(["Weight of live spurs", 0.25]);
    expect(after[1][5]).toBe("JT");
  });

  test("brings an older table up to date without changing a value", async () => {
    pane = await openPane(
      {
        ...CORDONS,
        Settings: [
          ["Setting", "Value"],
          ["Weight of live spurs", 0.4],
          ["Colour of ribbons", "red"],
        ],
      },
      { height: 900 },
    );
    await pane.goTo("settings");
    await pane.button("Read the settings").click();
    await pane.page.getByText("has an older shape").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("settings-older");
    await pane.page.locator("#upgrade-settings").click();
    await pane.page.getByText("The Settings table is up to date").waitFor();
    const after = await values("Settings");
    expect(after[0].slice(0, 7)).toEqual([
      "Setting",
      "Value",
      "Unit",
      "Source",
      "Meaning",
      "Changed by",
      "Changed on",
    ]);
    expect(after[1].slice(0, 3)).toEqual(["Weight of live spurs", 0.4, "share"]);
    expect(after[2].slice(0, 2)).toEqual(["Colour of ribbons", "red"]);
    expect(after.length).toBeGreaterThan(50);
    expect(await pane.page.locator("#older-settings").count()).toBe(0);
  });

  test.each(["light", "dark", "forced"] as const)("breaks no rule of axe-core in %s", async (look) => {
    pane = await openPane(WITH_TABLE, { look, language: "fr" });
    await pane.goTo("settings");
    await pane.page.locator("#read-settings").click();
    await pane.page.locator('fluent-accordion-item[data-key="choice"] button#control').click();
    await pane.page.locator(".change").first().waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture(`settings-${look}`);
  });
});
