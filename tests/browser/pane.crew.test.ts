import { SHEETS } from "../../src/survey/sheets/sheets";
import type { CellValue } from "../../src/survey/sheets/cell";
import { inventedSeason } from "../survey/decide/cards/season";
import type { Sheets } from "./pane/harness";
import { openDecide } from "./pane/openDecide";
import { openPane } from "./pane/openPane";
import type { PanePage } from "./pane/panePage";
import { resultsOf } from "./resultsOf";

const US_UNITS: Partial<Record<string, string>> = { length: " (ft)", shortLength: " (in)", mass: " (lb)" };

/** The invented season as the sheets of a workbook. */
function seasonSheets(): Sheets {
  const farm = inventedSeason();
  return Object.fromEntries(
    (["blocks", "cordons", "vines", "budCuts"] as const).map((id): [string, CellValue[][]] => {
      const { columns, name } = SHEETS[id];
      return [
        name.en,
        [
          columns.map((column) => column.header.en + (US_UNITS[column.kind] ?? "")),
          ...farm[id].map((row) => columns.map((column) => row[column.id] ?? null)),
        ],
      ];
    }),
  );
}

describe("the page that sends the crew out", () => {
  const sheets = seasonSheets();
  let pane: PanePage;

  const open = async (options: Parameters<typeof openPane>[1] = {}) => {
    pane = await openPane(sheets, { height: 900, ...options });
    await pane.goTo("crew");
    await resultsOf(pane.page, "crew");
    expect(await pane.page.locator("#make-cards").count()).toBe(0);
  };

  test("makes a card a row, prints the chosen ones and writes the sheet", async () => {
    await open();
    const missing = inventedSeason().vines.filter(({ status }) => status === "missing").length;
    const said = await pane.page.locator("#cards-result").innerText();
    expect(said).toContain(`21 cards for ${600 - missing} vines`);
    expect(said).toContain(`${missing} more vines of the register are named on them`);
    await pane.picture("crew-cards");
    await pane.choose("cards-block", "Creek Side");
    await pane.choose("cards-row", "3");
    await pane.choose("cards-language", "Español");
    await pane.settled();
    await pane.page.locator("#print-cards").click();
    await pane.page.waitForFunction(() => window.printed !== undefined);
    const printed = await pane.page.evaluate(() => window.printed!);
    expect(printed).toContain("Creek Side, hilera 3");
    expect(printed).not.toContain("North Bench");
    await pane.page.locator("#write-cards").click();
    await pane.page.getByText("The sheet Crew cards was written: 600 rows").waitFor();
    const rows = await pane.page.evaluate(
      async () => (await window.harness.workbook.readSheet("Crew cards")).values.length,
    );
    expect(rows).toBeGreaterThan(600);
    await pane.goTo("gaps");
    expect(await pane.page.getByText("The sheet Crew cards was written").count()).toBe(0);
  });

  test("says at its head what is open, as Season and Decide count it, and prints only what changed", async () => {
    await open();
    const banner = await pane.page.locator("#cards-open").innerText();
    const counted = (text: string, what: RegExp) => Number(what.exec(text)?.[1] ?? 0);
    await pane.goTo("season");
    const todo = await pane.page.locator(".card.next, #season-open").allInnerTexts();
    const onSeason = todo.join(" ");
    const asks = counted(onSeason, /Answer for (\d+) vines/);
    expect(asks).toBeGreaterThan(0);
    expect(counted(banner, /(\d+) vines to answer for/)).toBe(asks);
    expect(counted(banner, /(\d+) vines decided but not accepted/)).toBe(
      counted(onSeason, /Accept what is decided for (\d+) vines/),
    );
    expect(counted(banner, /(\d+) cells? that cannot be right/)).toBe(
      counted(onSeason, /Mend (\d+) cells? that cannot be right/),
    );
    await openDecide(pane);
    const decided = await pane.page.locator("#decide-result").innerText();
    expect(counted(decided, /(\d+) to ask about/)).toBe(asks);

    await pane.goTo("crew");
    const printed = async () => {
      await pane.page.evaluate(() => (window.printed = undefined));
      await pane.page.locator("#print-cards").click();
      await pane.page.waitForFunction(() => window.printed !== undefined);
      return pane.page.evaluate(() => window.printed!);
    };
    await printed();
    await pane.choose("cards-which", "Only what changed since the last print");
    await pane.page.locator("#cards-same").waitFor();
    expect(await pane.page.locator("#print-cards").count()).toBe(0);
    // one vine of row 1 is gone
    await pane.page.evaluate(async () => {
      const { values } = await window.harness.workbook.readSheet("Vines");
      const at = values.findIndex((row) => row[1] === 1 && row[2] === 2);
      const status = values[0].indexOf("Status");
      await window.harness.workbook.writeCells("Vines", [
        { row: at + 1, column: status + 1, value: "missing" },
      ]);
    });
    const voided = pane.page.locator("#cards-void li");
    await voided.or(pane.page.locator("#work-anew")).first().waitFor();
    if ((await voided.count()) === 0) await pane.page.locator("#work-anew").click();
    await voided.waitFor();
    expect(await pane.page.locator("#cards-void li").allInnerTexts()).toEqual([
      expect.stringMatching(/^Void on the card of .*, row 1, printed before: 2\.$/),
    ]);
    const page = await printed();
    expect(page.match(/^\d+(?=\t)/gm)).toEqual(["2"]);
    await pane.page.locator("#cards-same").waitFor();
  });

  test("shows the order of work as a table and a picture, the trunks to renew and the winters ahead", async () => {
    // 46057 is Wednesday 4 February 2026; the first day of Settings, 1 February, is over
    await open({ today: 46057, height: 1500 });
    const order = await pane.page.locator("#work-table tbody th").allInnerTexts();
    // the bud cuts of the invented farm: 12 %, 24 % and 41 % of the primaries dead
    expect(order.map((head) => head.split("\n")[0])).toEqual(["Schoolhouse", "North Bench", "Creek Side"]);
    const week = pane.page.locator("#work-calendar tbody tr").first().locator("td");
    const days = await week.evaluateAll((cells) =>
      cells.map((cell) => ({
        free: cell.classList.contains("free"),
        key: cell.querySelector("b")?.textContent ?? "",
        today: cell.getAttribute("aria-current"),
      })),
    );
    expect(days.map(({ free }) => free)).toEqual([false, false, false, false, false, true, true]);
    expect(days.map(({ today }) => today)).toEqual([null, null, "date", null, null, null, null]);
    // nothing before today, and the first block in its turn today
    expect(days.map(({ key }) => key).slice(0, 2)).toEqual(["", ""]);
    expect(days[2].key).toMatch(/^1/);
    const lines = await pane.page
      .locator("#work-days tbody tr")
      .evaluateAll((all) => all.map((line) => [...line.children].map((cell) => cell.textContent!.trim())));
    expect(lines[0][0]).toBe("Wed, Feb 4");
    expect(lines[0][1]).toMatch(/^Schoolhouse, rows 1 to \d+$/);
    // four people for six hours each, both from Settings
    const hours = (some: string[][]) => some.reduce((sum, line) => sum + Number(line.at(-1)), 0);
    expect(hours(lines.filter(([day]) => day === "Wed, Feb 4"))).toBeCloseTo(24, 0);
    const passes = await pane.page.locator("#work-table tbody td:nth-child(3)").allInnerTexts();
    expect(hours(lines)).toBeCloseTo(
      passes.reduce((sum, pass) => sum + Number(pass), 0),
      0,
    );
    await pane.page.locator("#work-order").scrollIntoViewIfNeeded();
    await pane.picture("crew-work");
    expect(await pane.page.locator("#renewal-list li").count()).toBe(20);
    expect(await pane.page.locator("#forecast tbody tr").count()).toBe(6);
    await pane.page.locator("#forecast").scrollIntoViewIfNeeded();
    await pane.picture("crew-renewal");
  });

  test.each(["light", "dark", "forced"] as const)("keeps the rules of accessibility in %s", async (look) => {
    await open({ look });
    expect(await pane.brokenRules()).toEqual([]);
  });

  test("draws a vine to scale and tells it in words", async () => {
    pane = await openPane(sheets, { height: 900 });
    await openDecide(pane);
    const picture = pane.page.locator("figure.vine-picture svg");
    await picture.waitFor();
    expect(await picture.getAttribute("aria-label")).toMatch(
      /Drawing of the vine.*left A: .* in, \d+ live spurs/,
    );
    expect(await picture.locator("line.spur").count()).toBeGreaterThan(5);
    await picture.scrollIntoViewIfNeeded();
    await pane.picture("vine-picture");
    expect(await pane.brokenRules()).toEqual([]);
  });
});
