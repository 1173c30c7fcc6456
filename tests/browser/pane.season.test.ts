import { openPane, type Look } from "./pane/openPane";
import { sampleSeason } from "./pane/sampleSeason";
import type { Sheets } from "./pane/harness";

let clean: Sheets;
let mistakes: Sheets;

beforeAll(async () => {
  clean = await sampleSeason("larkmoor-clean");
  mistakes = await sampleSeason("larkmoor-mistakes");
});

/** Rows of a sheet as records by heading. */
function records(sheet: Sheets[string]): Record<string, unknown>[] {
  const [heads, ...rows] = sheet;
  return rows.map((row) => Object.fromEntries(heads.map((head, at) => [String(head), row[at]])));
}

/** Vines to count and vines with a day of pruning, block by block: bearing ones, and those with a cordon to count. */
function toCount(sheets: Sheets) {
  const nameOf = (row: Record<string, unknown>) => [row["Block"], row["Row"], row["Vine"]].join("|");
  const withCordon = new Set(records(sheets["Cordons"]).map(nameOf));
  const blocks = new Map<string, { vines: number; pruned: number }>();
  for (const row of records(sheets["Vines"])) {
    if (row["Status"] !== "bearing" && !withCordon.has(nameOf(row))) continue;
    const count = blocks.get(String(row["Block"])) ?? { vines: 0, pruned: 0 };
    count.vines++;
    if (typeof row["Pruned on"] === "number") count.pruned++;
    blocks.set(String(row["Block"]), count);
  }
  return blocks;
}

/** 1 April 2026, after the days of the sample's counts: 126 years of 365 days, 31 leap days, 90 days, and 2 from 1899-12-30. */
const AFTER_COUNTING = 126 * 365 + 31 + 90 + 2;

describe("the page on which the pane opens", () => {
  test.each<Look>(["light", "dark", "forced"])(
    "shows where the sample season stands, in %s",
    async (look) => {
      const pane = await openPane(clean, { look, page: "season", today: AFTER_COUNTING });
      await pane.page.locator("#season-picture").waitFor();
      expect(await pane.brokenRules()).toEqual([]);
      await pane.picture(`season-${look}`);
      for (const [block, { vines, pruned }] of toCount(clean)) {
        const body = pane.page.locator("#season-picture tbody", { hasText: block });
        const said = await body
          .locator("td[title]")
          .evaluateAll((cells) => cells.map((cell) => cell.getAttribute("title")));
        expect(said[0]).toMatch(new RegExp(` of ${vines}$`));
        expect(said[4]).toBe(`${pruned} of ${vines}`);
      }
      expect(await pane.page.locator("#season-next").count()).toBe(1);
    },
  );

  test("leads to the first cell that cannot be right, and every page that uses its rows says so", async () => {
    const pane = await openPane(mistakes, { page: "season", today: AFTER_COUNTING });
    await pane.page.locator("#season-picture").waitFor();
    await pane.picture("season-mistakes");
    const { checked } = await pane.page.evaluate(async () => {
      const selected = () => window.harness.workbook.selectedCell();
      return { checked: await selected() };
    });
    expect(checked).toBeUndefined();
    const said = await pane.page.locator("#season-next strong").innerText();
    const wrong = Number(/Mend (\d+) cells/.exec(said)![1]);
    await pane.button("Go to the first cell").click();
    await pane.page.locator("#check-result").waitFor();
    expect(await pane.page.locator("#check-result").innerText()).toContain(`${wrong} wrong`);
    const cell = await pane.page.evaluate(() => window.harness.workbook.selectedCell());
    expect(cell).toBeDefined();
    for (const id of ["decide", "gaps", "crew", "outlook"]) {
      await pane.goTo(id);
      await pane.page.locator("#wrong-here").waitFor();
    }
    expect(await pane.page.locator("#wrong-here summary").innerText()).toMatch(
      /\d+ cells that cannot be right stand in rows used here/,
    );
  });
});
