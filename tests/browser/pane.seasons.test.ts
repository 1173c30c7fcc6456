import tQuantile from "@stdlib/stats-base-dists-t-quantile";
import type { Sheets } from "./pane/harness";
import { openPane } from "./pane/openPane";
import type { PanePage } from "./pane/panePage";
import { resultsOf } from "./resultsOf";

const FIRST_WINTER = 44957;
const SECOND_WINTER = 45322;
const POSITIONS = 10;

/** Live spurs of both cordons of each vine in three rows of two vines, in two winters; an invented block. */
const BEFORE = [
  [10, 9, 10, 8],
  [9, 9, 8, 8],
  [10, 10, 9, 7],
];
const AFTER = [
  [9, 9, 9, 8],
  [9, 8, 8, 7],
  [9, 9, 9, 6],
];
const sum = (counts: readonly number[]) => counts.reduce((total, count) => total + count, 0);

function winter(spurs: readonly (readonly number[])[], day: number, trunks: number): Sheets {
  return {
    Blocks: [
      ["Block", "Vine places", "Row spacing (ft)", "Vine spacing (ft)", "Cluster weight (lb)"],
      ["Creek Side", 6, 9, 7, 0.2],
      ["Schoolhouse", 1, 9, 7, 0.2],
    ],
    Vines: [
      ["Block", "Row", "Vine", "Status", "Live trunks", "Date"],
      ...spurs.flatMap((_, row) =>
        [1, 2].map((vine) => ["Creek Side", row + 1, vine, "bearing", trunks, day]),
      ),
    ],
    Cordons: [
      ["Block", "Row", "Vine", "Side", "Cordon", "Length (ft)", "Positions", "Live spurs", "Date"],
      ...spurs.flatMap((counts, row) =>
        counts.map((live, at) => [
          "Creek Side",
          row + 1,
          at < 2 ? 1 : 2,
          at % 2 === 0 ? "left" : "right",
          at % 2 === 0 ? "A" : "B",
          3.4,
          POSITIONS,
          live,
          day,
        ]),
      ),
      ["Schoolhouse", 1, 1, "left", "A", 3.4, POSITIONS, 6, day],
    ],
  };
}

describe("winter against winter", () => {
  let pane: PanePage;

  const work = async () => {
    await pane.goTo("outlook");
    await resultsOf(pane.page, "outlook");
    await pane.page.locator("#season-years").waitFor();
  };
  const type = (sheet: string, cells: readonly (readonly [number, number, number])[]) =>
    pane.page.evaluate(
      ([name, all]) => {
        for (const [row, column, value] of all) window.harness.workbook.type(name, row, column, value);
      },
      [sheet, cells] as const,
    );
  const years = () =>
    pane.page
      .locator("#season-years tbody tr")
      .evaluateAll((all) =>
        all.map((row) => [...row.children].map((cell) => Number(cell.textContent!.trim()))),
      );
  const kept = async () =>
    pane.page.evaluate(async () => (await window.harness.workbook.readSheet("Winters")).values);

  test("keeps no winter 0 where nothing is dated, and says what is lacking", async () => {
    const { Blocks, Vines, Cordons } = winter(BEFORE, FIRST_WINTER, 2);
    const undated = (rows: Sheets[string]) => rows.map((row) => row.slice(0, -1));
    pane = await openPane({ Blocks, Vines: undated(Vines), Cordons: undated(Cordons) });
    await work();
    expect(await pane.page.locator("#undated").innerText()).toMatch(/^Nothing says which winter was counted/);
    expect(await pane.page.locator("#keep-season").count()).toBe(0);
  });

  test("keeps each winter, then says the loss a year by the reference and which blocks lie below the floor", async () => {
    pane = await openPane(winter(BEFORE, FIRST_WINTER, 2), { height: 1900 });
    await work();
    await pane.page.getByText("rows have counts of two winters, too few").waitFor();
    await pane.button("Keep winter 2023 on the Winters sheet").click();
    await pane.page.getByText("Winter 2023 stands on the sheet").waitFor();
    const first = await kept();

    await type(
      "Cordons",
      AFTER.flat().flatMap((live, at) => [[at + 2, 8, live] as const, [at + 2, 9, SECOND_WINTER] as const]),
    );
    await type("Cordons", [[14, 9, SECOND_WINTER]]);
    await type(
      "Vines",
      [2, 3, 4, 5, 6, 7].map((row) => [row, 6, SECOND_WINTER] as const),
    );
    await type("Vines", [[2, 5, 1]]);
    await work();
    const all = 12 * POSITIONS;
    const live = [BEFORE, AFTER].map((spurs) => sum(spurs.flat()));
    expect(await years()).toEqual([
      [2023, live[0], expect.closeTo((100 * live[0]) / all, 1), all - live[0], 12],
      [2024, live[1], expect.closeTo((100 * live[1]) / all, 1), all - live[1], 11],
    ]);

    const rate = live[1] / live[0];
    const squares = sum(BEFORE.map((row, at) => (sum(AFTER[at]) - rate * sum(row)) ** 2));
    const reach = (tQuantile(0.95, 2) * Math.sqrt(1.5 * squares)) / live[0];
    const [, likely, low, high] = (await pane.page.locator("#season-loss").innerText()).match(
      /loses (-?[\d.]+) % of its live spurs a year \((-?[\d.]+) to (-?[\d.]+) % in 90 of 100/,
    )!;
    expect(Number(likely)).toBeCloseTo(100 * (1 - rate), 1);
    expect(Number(low)).toBeCloseTo(100 * (1 - rate - reach), 1);
    expect(Number(high)).toBeCloseTo(100 * (1 - rate + reach), 1);
    await pane.page.getByText("by 3 rows and 3 pairs of winters").waitFor();
    await pane.page.getByText("falls below the floor of 70 % in").waitFor();
    expect(await pane.page.locator("#below-floor").innerText()).toBe(
      "Below the floor of 70 % live spurs: Schoolhouse (60 %, winter 2024). Bring up new cordons there.",
    );
    expect(await pane.brokenRules()).toEqual([]);
    await pane.page.locator("#below-floor").scrollIntoViewIfNeeded();
    await pane.picture("seasons");

    await pane.button("Keep winter 2024 on the Winters sheet").click();
    await pane.page.getByText("Winter 2024 stands on the sheet").waitFor();
    const both = await kept();
    expect(both).toHaveLength(first.length + 4);
    for (const row of first.filter(([, , year]) => year === 2023)) expect(both).toContainEqual(row);
    expect(await pane.page.locator("#keep-season").count()).toBe(0);
    await pane.choose("season-row", "2");
    await pane.settled();
    expect((await years()).map(([year, spurs]) => [year, spurs])).toEqual([
      [2023, sum(BEFORE[1])],
      [2024, sum(AFTER[1])],
    ]);
  });

  test("leaves a sheet alone that it would spoil", async () => {
    pane = await openPane({ ...winter(BEFORE, FIRST_WINTER, 2), Winters: [["Wine list"], ["Rosé"]] });
    await work();
    await pane.page.locator("#keep-season").click();
    await pane.page.getByText("The sheet Winters has no table of winters").waitFor();
    expect(await kept()).toEqual([["Wine list"], ["Rosé"]]);
    expect(await pane.brokenRules()).toEqual([]);
  });

  test("writes nothing where a line of an earlier winter cannot be read", async () => {
    pane = await openPane(winter(BEFORE, FIRST_WINTER, 2));
    await work();
    await pane.page.locator("#keep-season").click();
    await pane.page.getByText("Winter 2023 stands on the sheet").waitFor();
    const below = (await kept()).length;
    await type("Winters", [[below + 3, 3, 2022]]);
    const before = await kept();
    await type("Cordons", [[2, 8, 9]]);
    await work();
    await pane.page.locator("#keep-season").click();
    await pane.page.getByText("1 row of the sheet Winters is not complete").waitFor();
    expect(await kept()).toEqual(before);
  });
});
