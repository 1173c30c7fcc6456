import tQuantile from "@stdlib/stats-base-dists-t-quantile";
import type { Sheets } from "./pane/harness";
import { openPane } from "./pane/openPane";
import type { PanePage } from "./pane/panePage";
import { resultsOf } from "./resultsOf";

const ROWS = 6;
const VINES_A_ROW = 30;
const MISSING = new Set([4, 17, 23]);
const BEARING = ROWS * (VINES_A_ROW - MISSING.size);

/** An invented block: three vines of each row are missing, nothing is counted. */
const REGISTER: Sheets = {
  Blocks: [
    ["Block", "Vine places", "Row spacing (ft)", "Vine spacing (ft)", "Cluster weight (lb)"],
    ["Schoolhouse", ROWS * VINES_A_ROW, 9, 7, 0.2],
    ["Creek Side", 40, 9, 7, 0.2],
  ],
  Vines: [
    ["Block", "Row", "Vine", "Status", "Clusters"],
    ...Array.from({ length: ROWS * VINES_A_ROW }, (_, at) => {
      const vine = (at % VINES_A_ROW) + 1;
      const status = MISSING.has(vine) ? "missing" : "bearing";
      return ["Schoolhouse", Math.floor(at / VINES_A_ROW) + 1, vine, status, null];
    }),
  ],
};

/** Least number of vines for the margin: Student's t in the finite block, by the reference quantile. */
function leastVines(cv: number, margin: number, all: number, confidence: number): number {
  for (let n = 2; n < all; n += 1)
    if (tQuantile((1 + confidence) / 2, n - 1) * cv * Math.sqrt((1 - n / all) / n) <= margin) return n;
  return all;
}

describe("a plan for counting on the pane", () => {
  let pane: PanePage;

  const plan = async () => {
    await pane.goTo("outlook");
    await resultsOf(pane.page, "outlook");
    await pane.page.locator("#plan-count").click();
  };
  const planned = async () => {
    const [, vines, all, margin, confidence] = (await pane.page.locator("#count-vines").innerText()).match(
      /^Count (\d+) of (\d+) bearing vines: the mean then lies within ([\d.]+) % in (\d+) of 100/,
    )!;
    return { vines: Number(vines), all: Number(all), margin: Number(margin), confidence: Number(confidence) };
  };
  const walk = async () =>
    (await pane.page.locator("#count-walk li").allInnerTexts()).map((line) => {
      const [, row, vines] = line.match(/^Row (\d+): (.+)$/)!;
      return { row: Number(row), vines: vines.split(", ").map(Number) };
    });

  test("says how many by the reference, which ones in walk order, and prints them", async () => {
    pane = await openPane(REGISTER, { height: 1500 });
    await plan();
    await pane.page.locator("#count-margin input").fill("15");
    await pane.page.getByText("within 15 %").waitFor();
    const { vines, all, confidence } = await planned();
    expect(all).toBe(BEARING);
    expect(vines).toBe(leastVines(0.43, 0.15, BEARING, confidence / 100));
    const rows = await walk();
    expect(rows.map(({ row }) => row)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(rows.flatMap((row) => row.vines)).toHaveLength(vines);
    for (const { vines: own } of rows) {
      expect(own.filter((vine) => MISSING.has(vine))).toEqual([]);
      expect(Math.abs(own.length - vines / ROWS)).toBeLessThan(1);
    }
    rows.forEach(({ vines: own }, at) =>
      expect(own).toEqual([...own].sort((one, other) => (at % 2 === 0 ? one - other : other - one))),
    );
    await pane.page.getByText("with 10 % missing the crop comes out 10 % too low").waitFor();
    await pane.page.locator("#count-handbooks", { hasText: "Iowa State 2011" }).waitFor();
    expect(await pane.page.locator("#count-handbooks li").count()).toBe(3);
    expect(await pane.brokenRules()).toEqual([]);
    await pane.page.locator("#print-walk").scrollIntoViewIfNeeded();
    await pane.picture("count-plan");
    await pane.page.locator("#print-walk").click();
    await pane.settled();
    const printed = await pane.page.evaluate(() => window.printed);
    expect(printed).toContain("Vines to count: Schoolhouse");
    const lines = printed!.split("\n").filter((line) => /^\d+\t\d+\b/.test(line));
    expect(lines.map((line) => line.split("\t").slice(0, 2).map(Number))).toEqual(
      rows.flatMap(({ row, vines: own }) => own.map((vine) => [row, vine])),
    );
  });

  test("where the pane may not print, it says so and the same list goes into a sheet", async () => {
    pane = await openPane(REGISTER, { height: 1500 });
    await plan();
    const rows = await walk();
    await pane.page.evaluate(() => {
      const made = document.createElement.bind(document);
      document.createElement = ((name: string) => {
        const element = made(name);
        if (element instanceof HTMLIFrameElement)
          Object.defineProperty(element, "contentWindow", {
            get(this: HTMLIFrameElement) {
              const view = window.frames[window.frames.length - 1];
              view.print = () => undefined;
              return view;
            },
          });
        return element;
      }) as typeof document.createElement;
    });
    await pane.page.locator("#print-walk").click();
    await pane.page.getByText("Nothing was printed: here the pane may not print").waitFor();
    expect(await pane.page.locator("iframe").count()).toBe(0);
    expect(await pane.page.title()).toBe("Pane");
    await pane.page.locator("#write-walk").click();
    await pane.page.getByText("Vines to count").first().waitFor();
    await pane.settled();
    const written = await pane.page.evaluate(async () =>
      (await window.harness.workbook.readSheet("Vines to count")).values.slice(7),
    );
    expect(written.map(([row, vine]) => [row, vine])).toEqual(
      rows.flatMap(({ row, vines: own }) => own.map((vine) => [row, vine])),
    );
  });

  test("a tighter margin asks for more vines, another draw for others, and a bad margin for a number", async () => {
    pane = await openPane(REGISTER, { height: 1500 });
    await plan();
    await pane.page.locator("#count-margin input").fill("25");
    await pane.page.getByText("within 25 %").waitFor();
    const { vines } = await planned();
    const first = await walk();
    await pane.page.locator("#draw-again").click();
    await pane.page.getByText("draw 2 gives this list again").waitFor();
    expect(await walk()).not.toEqual(first);
    await pane.page.locator("#count-margin input").fill("10");
    await pane.page.getByText("within 10 %").waitFor();
    expect((await planned()).vines).toBeGreaterThan(vines);
    await pane.page.locator("#count-margin input").fill("a few");
    await pane.page.getByText("must be a number from 1 to 50 %").waitFor();
    expect(await pane.page.locator("#count-vines").count()).toBe(0);
    expect(await pane.brokenRules()).toEqual([]);
  });

  test("a block without listed vines gets the next step", async () => {
    pane = await openPane({ ...REGISTER, Vines: [REGISTER["Vines"][0]] });
    await plan();
    await pane.page.getByText("lists no bearing vine of Schoolhouse").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
  });
});
