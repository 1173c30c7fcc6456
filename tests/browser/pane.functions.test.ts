import { openPane } from "./pane/openPane";
import type { PanePage } from "./pane/panePage";

describe("the page that explains the functions", () => {
  let pane: PanePage;

  test("is searched, opened and puts a formula into the selected cell, by keyboard alone", async () => {
    pane = await openPane({ Plan: [["prunings"], [3]] }, { height: 900 });
    await pane.page.evaluate(() => window.harness.workbook.selectCell("Plan", 2, 2));
    await pane.page.locator("#tab-more").focus();
    await pane.page.keyboard.press("Enter");
    await pane.reach("more-functions");
    await pane.page.keyboard.press("Enter");
    await pane.page.locator("#function-search").waitFor();
    await pane.picture("functions");
    await pane.reach("function-search");
    await pane.page.keyboard.type("balanced prunings");
    await pane.page.getByText(/1 of \d+ functions/).waitFor();
    await pane.page.keyboard.press("Tab");
    await pane.page.keyboard.press("Enter");
    await pane.page.locator(".insert").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("functions-open");
    await pane.page.keyboard.press("Tab");
    await pane.page.keyboard.press("Tab");
    expect(await pane.focused()).toBe("insert");
    await pane.page.keyboard.press("Enter");
    await pane.page.getByText("The formula stands in B2 on Plan").waitFor();
    expect(
      await pane.page.evaluate(async () => (await window.harness.workbook.readSheet("Plan")).formulaAt(1, 1)),
    ).toContain("=CORDON.NODEBUDGET(");
  });

  test("explains the selected cell, follows the selection, and what is typed into it", async () => {
    pane = await openPane(
      {
        Plan: [
          ["prunings", "nodes"],
          [3, { formula: '=CORDON.NODEBUDGET(A2,"30+10")', value: 50 }],
          ["many", { formula: '=CORDON.NODEBUDGET(A3,"30+10")*2', value: { error: "#VALUE!" } }],
        ],
      },
      { page: "functions", height: 900 },
    );
    const explained = pane.page.locator("#cell-explained");
    const select = (row: number, column: number) =>
      pane.page.evaluate(([r, c]) => window.harness.workbook.selectCell("Plan", r, c), [
        row,
        column,
      ] as const);
    await select(2, 2);
    await explained.getByText("It gives nodes: 50.").waitFor();
    await explained.getByText("3 lb").waitFor();
    await pane.picture("functions-cell");
    await select(3, 2);
    await explained.getByText(/It gives #VALUE!: prunings is the text “many”/).waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.page.evaluate(() =>
      window.harness.workbook.writeCells("Plan", [{ row: 3, column: 1, value: 1 }]),
    );
    // 30 nodes for 1 lb.
    await explained.getByText("It gives nodes: 30.").waitFor();
    await select(1, 1);
    await explained.getByText("No formula fills it.").waitFor();
  });

  test.each(["light", "dark", "forced"] as const)("breaks no rule of axe-core in %s", async (look) => {
    pane = await openPane({}, { look, language: "es" });
    await pane.goTo("functions");
    await pane.page.locator("fluent-accordion-item button#control").first().click();
    await pane.page.locator(".insert").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture(`functions-${look}`);
  });
});
