import type { Sheets } from "./pane/harness";
import { openPane } from "./pane/openPane";
import type { PanePage } from "./pane/panePage";
import { resultsOf } from "./resultsOf";

const SEPTEMBER = 45550;
const COUNTED_IN_JUNE = 45468;

/** Two invented blocks of one cultivar; the summer's clusters are counted and weighed, nothing is picked yet. */
const SUMMER: Sheets = {
  Blocks: [
    [
      "Block",
      "Cultivar",
      "Vine places",
      "Row spacing (ft)",
      "Vine spacing (ft)",
      "Cluster weight (lb)",
      "Clusters a shoot",
    ],
    ["North Bench", "Marquette", 40, 9, 7, 0.2, 1.8],
    ["Creek Side", "Marquette", 40, 9, 7, 0.2, 1.8],
  ],
  Vines: [
    ["Block", "Row", "Vine", "Status", "Clusters", "Counted on"],
    ...[62, 48, 71, 55, 90, 66].map((clusters, at) => [
      "North Bench",
      1,
      at + 1,
      "bearing",
      clusters,
      COUNTED_IN_JUNE,
    ]),
  ],
  Harvest: [
    [
      "Block",
      "Year",
      "Picked (lb)",
      "Cluster weight (lb)",
      "Cluster weight at lag phase (lb)",
      "Clusters a shoot",
      "Budbreak",
    ],
    ["North Bench", 2024, null, null, 0.1, null, null],
  ],
};

const picked = (budbreak: number | null): Sheets => ({
  ...SUMMER,
  Harvest: [SUMMER["Harvest"][0], ["North Bench", 2024, 560, 0.26, 0.1, 1.4, budbreak]],
});

describe("what the harvests say, taken into the workbook", () => {
  let pane: PanePage;

  const work = async () => {
    await pane.goTo("outlook");
    await resultsOf(pane.page, "outlook");
  };
  const sheetNames = () => pane.page.evaluate(() => window.harness.workbook.sheetNames());
  const values = (sheet: string) =>
    pane.page.evaluate(async (name) => (await window.harness.workbook.readSheet(name)).values, sheet);
  const likely = async () =>
    Number((await pane.page.locator("#outlook-crop").innerText()).match(/^Likely ([\d.]+)/)![1]);
  const take = (figure: string) =>
    pane.page.locator(`fluent-button.take-figure[aria-label$="${figure}"]`).click();

  // The published 2 spreads by 0.1 between farms and by 0.15 between years: one year weighs 0.1² / (0.1² + 0.15²) in the
  // normal mean with a normal prior on the logarithm (Gelman et al. 2013, section 2.5).
  test("from counts to a changed setting after harvest, shown first, and back", async () => {
    pane = await openPane(SUMMER, { today: SEPTEMBER, height: 1500 });
    await work();
    const before = await likely();
    expect(await pane.page.locator("#farm-figures").count()).toBe(0);
    await pane.page.evaluate(() => {
      window.harness.workbook.type("Harvest", 2, 3, 560, "own");
      window.harness.workbook.type("Harvest", 2, 4, 0.26, "own");
    });
    await work();
    await pane.page.getByText("Lag phase multiplier: 2 in force").waitFor();
    await take("Lag phase multiplier");
    await pane.page.locator("#take-figure").waitFor();
    expect(await sheetNames()).not.toContain("Settings");
    await pane.page
      .locator("#crops-move", { hasText: "North Bench (Lag phase: clusters weighed): likely crop" })
      .waitFor();
    expect(await pane.page.locator("#crops-move").innerText()).not.toContain("Creek Side");
    await pane.page.getByText("No decision and no finding of this workbook would move").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.page.locator("#take-figure").scrollIntoViewIfNeeded();
    await pane.picture("outlook-take");
    await pane.page.locator("#take-figure").click();
    await pane.page.getByText("Write your name or initials").waitFor();
    expect(await sheetNames()).not.toContain("Settings");
    await pane.page.locator("#figure-by input").fill("JT");
    await pane.page.locator("#take-figure").click();
    await pane.page.getByText("written to Settings by JT, 2024-09-15").waitFor();
    const row = (await values("Settings")).find(([name]) => name === "Lag phase multiplier")!;
    const [, value, , source] = row;
    expect(value).toBeCloseTo(2 * (0.26 / 0.1 / 2) ** (0.1 ** 2 / (0.1 ** 2 + 0.15 ** 2)), 2);
    expect([source, ...row.slice(5, 7)]).toEqual(["own figure", "JT", SEPTEMBER]);
    expect((await likely()) / before).toBeCloseTo(Number(value) / 2, 2);
    expect(await pane.brokenRules()).toEqual([]);
    await pane.page.locator("#undo-figure").click();
    await pane.page.getByText("Lag phase multiplier is as it was").waitFor();
    expect((await values("Settings")).find(([name]) => name === "Lag phase multiplier")![1]).toBe(2);
    expect(await likely()).toBe(before);
  });

  test("a figure of a cultivar goes to each of its blocks, and back", async () => {
    pane = await openPane(picked(null), { today: SEPTEMBER, height: 1500 });
    await work();
    await take("Clusters a shoot (Marquette)");
    await pane.page.getByText("would be written to Blocks G2, G3").waitFor();
    await pane.page.locator("#figure-by input").fill("AB");
    await pane.page.locator("#take-figure").click();
    await pane.page.getByText("written to Blocks G2, G3 by AB").waitFor();
    const now = (await values("Blocks")).slice(1).map((row) => row[6]);
    expect(now[0]).toBeGreaterThan(1.4);
    expect(now[0]).toBeLessThan(1.8);
    expect(now[1]).toBe(now[0]);
    await pane.page.locator("#undo-figure").click();
    await pane.page.getByText("Clusters a shoot (Marquette) is as it was").waitFor();
    expect((await values("Blocks")).slice(1).map((row) => row[6])).toEqual([1.8, 1.8]);
  });

  test("says which head is missing, and writes nothing over a colleague's change", async () => {
    pane = await openPane(picked(0.7), { today: SEPTEMBER, height: 1500 });
    await work();
    await take("Budbreak (Marquette)");
    await pane.page.getByText("The sheet Blocks has no column “Budbreak”").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.page.locator("#leave-figure").click();
    await take("Cluster weight (Marquette)");
    await pane.page.locator("#figure-by input").fill("AB");
    await pane.page.evaluate(() => window.harness.workbook.type("Blocks", 3, 6, 0.22, "colleague"));
    await pane.page.getByText("so nothing was printed, written or accepted").waitFor();
    await pane.page.locator("#take-figure").waitFor({ state: "detached" });
    expect((await values("Blocks")).slice(1).map((row) => row[5])).toEqual([0.2, 0.22]);
  });
});
