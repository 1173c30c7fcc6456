import type { Sheets } from "./pane/harness";
import { openPane } from "./pane/openPane";
import type { PanePage } from "./pane/panePage";
import { CORDON_HEADS } from "../survey/cordonHeads";

jest.setTimeout(30_000);

const HEAD = [...CORDON_HEADS];

/** Invented counts: 12 vines a row, more gaps towards the end of the row and this winter. */
function counts(block: string, rows: number, worse: number) {
  const lines = [];
  for (let row = 1; row <= rows; row += 1)
    for (let vine = 1; vine <= 12; vine += 1)
      for (const [side, cordon] of [
        ["left", "A"],
        ["right", "B"],
      ])
        lines.push([
          block,
          row,
          vine,
          side,
          cordon,
          1,
          3.5,
          7,
          Math.max(0, 7 - Math.floor(vine / 3) - worse),
        ]);
  return lines;
}

const SEASONS: Sheets = {
  "Cordons 2026": [HEAD, ...counts("North Bench", 3, 1), ...counts("Creek Side", 2, 0)],
  "Cordons 2025": [HEAD, ...counts("North Bench", 3, 0)],
};

describe("the page that shows where spurs are missing", () => {
  let pane: PanePage;

  const count = async () => {
    await pane.goTo("gaps");
    await pane.button("Count gaps").click();
    await pane.page.locator("#gaps-result", { hasText: "On the cordons that stay: " }).waitFor();
  };

  test.each(["light", "dark", "forced"] as const)("shows rows, change and map in %s", async (look) => {
    pane = await openPane(SEASONS, { look, height: 1100 });
    await count();
    const table = await pane.page.locator("#row-gaps").innerText();
    expect(table).toContain("North Bench, 3");
    expect(table).toContain("+14%");
    expect(table).toContain("not counted");
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture(`gaps-${look}`);
  });

  test("goes to a row's first cell by keyboard", async () => {
    pane = await openPane(SEASONS);
    await count();
    await pane.reach("jump");
    await pane.page.keyboard.press("Enter");
    await pane.settled();
    expect(await pane.page.evaluate(() => window.harness.workbook.selectedCell())).toEqual({
      sheet: "Cordons 2026",
      row: 2,
      column: 1,
    });
  });

  test("writes both sheets, and again over them", async () => {
    pane = await openPane(SEASONS);
    await count();
    for (let run = 0; run < 2; run += 1) {
      await pane.button("Write Row gaps sheet").click();
      await pane.page.getByText("The sheet Row gaps was written: 5 rows").waitFor();
      await pane.button("Write Gap map sheet").click();
      await pane.page.getByText("The sheet Gap map was written: 5 rows").waitFor();
    }
    expect(await pane.page.evaluate(() => window.harness.workbook.sheetNames())).toEqual([
      "Cordons 2026",
      "Cordons 2025",
      "Row gaps",
      "Gap map",
    ]);
  });

  test("writes a plain table where the host has no PivotTables, and says so", async () => {
    pane = await openPane(SEASONS);
    await pane.goTo("gaps");
    await pane.page.locator("#pivot-of-gaps").click();
    await pane.page.getByText("There are no PivotTables here").waitFor();
    expect(await pane.page.evaluate(() => window.harness.workbook.sheetNames())).toContain("Gaps pivot");
  });

  test("says the next step where nothing was counted", async () => {
    pane = await openPane({ Cordons: [HEAD, ["North Bench", 1, 1, "left", "A", 1, 3.5, null, null]] });
    await pane.goTo("gaps");
    await pane.button("Count gaps").click();
    await pane.page.getByText("Next step: count these two columns").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
  });
});
