import type { Sheets } from "./pane/harness";
import { openPane } from "./pane/openPane";
import type { PanePage } from "./pane/panePage";
import { CORDON_HEADS } from "../survey/cordonHeads";
import { resultsOf } from "./resultsOf";

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
    await resultsOf(pane.page, "gaps");
    await pane.page.locator("#gaps-result", { hasText: "On the cordons that stay: " }).waitFor();
    expect(await pane.page.locator("#count-gaps").count()).toBe(0);
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

  /** Contrast of two colours as the browser says them (WCAG 2.2). */
  const contrast = (one: string, other: string) => {
    const luminance = (colour: string) => {
      const [r, g, b] = colour
        .match(/[\d.]+/g)!
        .slice(0, 3)
        .map((part) => Number(part) / 255)
        .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b);
    return (light + 0.05) / (dark + 0.05);
  };

  test.each(["light", "dark"] as const)("shades can be told from their neighbours in %s", async (look) => {
    pane = await openPane(SEASONS, { look });
    await count();
    await pane.choose("gaps-of", "every candidate");
    await pane.page.locator("#gaps-result", { hasText: "On every candidate: " }).waitFor();
    const colours = await pane.page.evaluate(() => {
      const root = document.querySelector("#pane")!.shadowRoot!;
      const of = (element: Element) => getComputedStyle(element);
      return {
        ground: of(document.querySelector("#pane")!).backgroundColor,
        cells: ["some", "bad", "worst"].map((name) => {
          const { backgroundColor, color } = of(root.querySelector(`.map .${name}`)!);
          return { fill: backgroundColor, letters: color };
        }),
      };
    });
    const fills = [colours.ground, ...colours.cells.map(({ fill }) => fill)];
    for (const { fill, letters } of colours.cells)
      expect(contrast(fill, letters)).toBeGreaterThanOrEqual(4.5);
    fills.slice(1).forEach((fill, at) => expect(contrast(fill, fills[at])).toBeGreaterThanOrEqual(1.5));
  });

  test("a cell of the map leads to its vine by click and by keyboard, and from there to Decide", async () => {
    pane = await openPane(SEASONS, { height: 1500 });
    await count();
    const selected = () => pane.page.evaluate(() => window.harness.workbook.selectedCell());
    // North Bench, row 2, vine 3: 24 rows of row 1, then 4 of vines 1 and 2, below the head
    await pane.page.locator('.map td[data-cell="2 3"]').click();
    await pane.page.locator("#chosen-vine", { hasText: "North Bench row 2 vine 3" }).waitFor();
    expect(await selected()).toEqual({ sheet: "Cordons 2026", row: 30, column: 1 });
    await pane.page.keyboard.press("ArrowDown");
    await pane.page.keyboard.press("ArrowRight");
    await pane.page.keyboard.press("Enter");
    await pane.page.locator("#chosen-vine", { hasText: "North Bench row 3 vine 4" }).waitFor();
    expect(await selected()).toEqual({ sheet: "Cordons 2026", row: 56, column: 1 });
    expect(await pane.page.locator('.map td[tabindex="0"]').count()).toBe(1);
    // vine 4 of each row: 7 - 1 - 1 = 5 live spurs of 7 positions on each of two cordons
    expect(await pane.page.locator("#chosen-vine").innerText()).toContain("4 of 14");
    const drawn = pane.page.locator('#wire-row .on-wire[data-vine="4"]');
    expect(await drawn.locator(".chosen").count()).toBe(1);
    expect(await drawn.locator(".spur").count()).toBe(10);
    expect(await drawn.locator(".bare").count()).toBe(4);
    await pane.picture("gaps-wire");
    await pane.page.locator("#vine-decide").click();
    await pane.page.locator("#vine-shown", { hasText: "North Bench row 3 vine 4" }).waitFor();
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
    await count();
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
