import type { Sheets } from "./pane/harness";
import { openPane } from "./pane/openPane";
import type { PanePage } from "./pane/panePage";
import { CORDON_HEADS } from "../survey/cordonHeads";

/** Invented counts: a block that a rule's edge runs through, and one below a pound. */
const SEASON: Sheets = {
  Blocks: [
    ["Block", "Cultivar", "Vine spacing (ft)", "Node rule", "Injury rule"],
    ["North Bench", "Concord", 8, "30+10", "Purdue"],
    ["Pond Field", "Concord", 8, "", ""],
  ],
  Vines: [
    ["Block", "Row", "Vine", "Prunings (lb)"],
    ["North Bench", 1, 1, 3],
    ["North Bench", 1, 2, 2],
    ["Pond Field", 4, 7, 0.8],
    ["Pond Field", 4, 8, 1.6],
  ],
  "Bud cuts": [
    ["Block", "Nodes cut", "Primaries alive"],
    ["North Bench", 60, 40],
    ["North Bench", 40, 30],
    ["Pond Field", 50, 20],
  ],
  Cordons: [
    [...CORDON_HEADS],
    ["North Bench", 1, 1, "left", "A", 1, 3.5, 9, 9],
    ["North Bench", 1, 1, "right", "B", 2, 3.5, 9, 8],
    ["North Bench", 1, 2, "left", "A", 1, 3.5, 9, 7],
    ["North Bench", 1, 2, "right", "B", 2, 3.5, 9, 6],
  ],
};

describe("the page for node budgets", () => {
  let pane: PanePage;

  async function show(): Promise<void> {
    await pane.goTo("nodes");
    await pane.page.locator("#work-nodes, #leave").first().waitFor();
    if ((await pane.page.locator("#leave").count()) === 0) await pane.page.locator("#work-nodes").click();
    await pane.page.locator("#leave").waitFor();
  }

  test.each(["light", "dark", "forced"] as const)("shows winter, rules and spurs in %s", async (look) => {
    pane = await openPane(SEASON, { look, height: 1500 });
    await show();
    const buds = await pane.page.locator("#dead-buds").innerText();
    expect(buds).toContain("30 of 100 primary buds dead: 30%, between 23% and 38%.");
    expect(buds).toContain("30 of 50 primary buds dead: 60%");
    expect(await pane.page.locator("#dead-buds-by-cultivar").innerText()).toContain("60 of 150");
    expect(await pane.page.locator("#leave").innerText()).toContain("in two rows");
    expect(await pane.page.locator("#straddle").innerText()).toContain(
      "60.8 nodes at its low end, 67.5 nodes",
    );
    const rules = await pane.page.locator("#node-rules").innerText();
    expect(rules).toMatch(/30\+10 \(in force\)\s+45\s+20\+10\s+35\s+20\+20\s+50\s+by length\s+40/);
    expect(rules).toContain("By the mean of 2 weighed vines, 2.5 lb.");
    expect(await pane.page.locator("#injury-rules").innerText()).toMatch(
      /Cornell 2014\s+58.5[^]*MSU 2002\s+64.3\s+45/,
    );
    const spurs = await pane.page.locator("#spurs-carry").innerText();
    expect(spurs).toContain(
      "15 spurs stay on a vine (mean of 2 vines): at 2 nodes each they hold 30, at 3 each 45.",
    );
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture(`nodes-${look}`);
  });

  // 1.2 lb: 30 + 0.2 x 10 = 32, by Cornell 60 % dead leave 60 % more: 51.2
  test("names the light vines and leads to them and to the figure of Settings", async () => {
    pane = await openPane(SEASON);
    await show();
    await pane.choose("nodes-block", "Pond Field");
    await pane.page.getByText("Leave 51 nodes on a vine by 30+10, corrected by Cornell 2014.").waitFor();
    await pane.page.locator("#light-vines").getByText("Row 4, vine 7: 0.8 lb").click();
    await pane.page.getByText("D4 on Vines is selected.").waitFor({ state: "attached" });
    await pane.button("Settings: Below one pound").click();
    await pane.page.locator("#page-settings").waitFor();
    await pane.page.locator('#tab-settings[aria-selected="true"]').waitFor();
  });

  test.each(["es", "fr"] as const)("speaks %s", async (language) => {
    pane = await openPane(SEASON, { language, height: 1500 });
    await show();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture(`nodes-${language}`);
  });
});
