import type { Sheets } from "./pane/harness";
import { openPane } from "./pane/openPane";
import type { PanePage } from "./pane/panePage";

const BROKEN: Sheets = {
  Plan: [
    ["prunings", "nodes"],
    [3, { formula: '=[2]!_xldudf_CORDON_NODEBUDGET(A2,"30+10")', value: { error: "#NAME?" } }],
    [2, { formula: "=CORDON.CLUSTERS(A3,2)", value: { error: "#NAME?" } }],
    [2, { formula: "=CORDON.CLUSTERS(A4,2)", value: 4 }],
    [2, { formula: "=A4*2", value: 4 }],
  ],
};

describe("the page for the care of the workbook", () => {
  let pane: PanePage;

  const formulas = () =>
    pane.page.evaluate(async () => {
      const area = await window.harness.workbook.readSheet("Plan");
      return [1, 2, 3, 4].map((row) => area.formulaAt(row, 1));
    });

  test.each(["light", "dark", "forced"] as const)(
    "shows repairs before they are made in %s",
    async (look) => {
      pane = await openPane(BROKEN, { look, height: 1100 });
      await pane.goTo("care");
      const before = await formulas();
      await pane.page.locator("#look-repairs").click();
      await pane.page.locator("#repair").waitFor();
      expect(await pane.page.locator("#repairs li").count()).toBe(2);
      expect(await formulas()).toEqual(before);
      expect(await pane.brokenRules()).toEqual([]);
      await pane.picture(`care-${look}`);
    },
  );

  test("repairs, and takes the repair back exactly", async () => {
    pane = await openPane(BROKEN);
    await pane.goTo("care");
    const before = await formulas();
    await pane.page.locator("#look-repairs").click();
    await pane.page.locator("#repair").click();
    await pane.page.getByText("2 cells were repaired; 0 were left alone").waitFor();
    expect(await formulas()).toEqual([
      '=CORDON.NODEBUDGET(A2,"30+10")',
      "=CORDON.CLUSTERS(A3,2)",
      ...before.slice(2),
    ]);
    await pane.page.locator("#undo-repairs").click();
    await pane.page.getByText("2 cells are as they were").waitFor();
    expect(await formulas()).toEqual(before);
  });

  test("tests itself and leaves no trace", async () => {
    pane = await openPane({ Plan: [["x"]] });
    await pane.goTo("care");
    await pane.page.locator("#self-test").click();
    await pane.page.getByText("Taking the sheet away again").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("care-self-test");
    expect(await pane.page.evaluate(() => window.harness.workbook.sheetNames())).toEqual(["Plan"]);
  });

  test("writes runs down only where somebody has switched it on", async () => {
    pane = await openPane({ Cordons: [["Block", "Row", "Vine", "Side", "Cordon", "Live spurs"]] });
    const names = () => pane.page.evaluate(() => window.harness.workbook.sheetNames());
    const check = async () => {
      await pane.goTo("check");
      await pane.page.locator("#check").click();
      await pane.page.locator("#check-result").waitFor();
      await pane.settled();
    };
    await check();
    expect(await names()).toEqual(["Cordons"]);
    await pane.goTo("care");
    await pane.page.locator("#ask-log").click();
    await pane.page.locator("#log").click();
    await pane.settled();
    await check();
    expect(await names()).toEqual(["Cordons", "Run log"]);
  });
});
