import type { Sheets } from "./pane/harness";
import { openDecide } from "./pane/openDecide";
import { openPane } from "./pane/openPane";
import type { PanePage } from "./pane/panePage";
import { CORDON_HEADS } from "../survey/cordonHeads";

const HEAD = [...CORDON_HEADS, "Longest gap", "Condition", "Fixed choice"];

/** Invented counts: two equal cordons on one side, a side with nothing worth keeping, and plain vines. */
const COUNTS: Sheets = {
  Cordons: [
    HEAD,
    ["North Bench", 1, 1, "left", "A", 1, 3.5, 7, 6, 1, "sound", null],
    ["North Bench", 1, 1, "left", "B", 1, 3.5, 7, 6, 1, "sound", null],
    ["North Bench", 1, 1, "right", "C", 2, 3.5, 7, 7, 0, "sound", null],
    ["North Bench", 1, 2, "left", "A", 1, 3.5, 7, 7, 0, "sound", null],
    ["North Bench", 1, 2, "right", "B", 2, 3.5, 7, 0, 7, "dead", null],
    ["Creek Side", 4, 1, "left", "A", 1, 3.5, 7, 7, 0, "sound", null],
    ["Creek Side", 4, 1, "right", "B", 2, 3.5, 7, 6, 1, "sound", null],
  ],
};

describe("the page on which cordons are decided", () => {
  let pane: PanePage;

  const decide = () => openDecide(pane);
  const outcome = (words: string) => pane.page.locator("fluent-button.outcome", { hasText: words });
  const vine = () => pane.page.locator("#vine-shown").innerText();
  const fixed = () =>
    pane.page.evaluate(async () =>
      (await window.harness.workbook.readSheet("Cordons")).values.slice(1).map((row) => row[11] ?? null),
    );

  test.each(["light", "dark", "forced"] as const)(
    "shows what stays, why, and what is cut in %s",
    async (look) => {
      pane = await openPane(COUNTS, { look, height: 1400 });
      await decide();
      expect(await vine()).toBe("North Bench row 1 vine 1");
      // one close call, told once though two cordons are in it
      const said = await pane.page.locator(".vine p").allInnerTexts();
      expect(said.filter((words) => words.startsWith("Look at the vine: "))).toHaveLength(1);
      expect(new Set(said).size).toBe(said.length);
      expect(await pane.brokenRules()).toEqual([]);
      await pane.picture(`decide-${look}`);
      await pane.page.locator("#find-vine input").fill("north 1 2");
      expect(await vine()).toBe("North Bench row 1 vine 2");
      await pane.page.locator("ol.cuts").getByText("Cut B on the right").waitFor();
    },
  );

  test("a row says of each vine whether it is decided, to ask about or to count, once", async () => {
    const keys = ["North Bench", 1];
    pane = await openPane({
      Cordons: [
        ...COUNTS["Cordons"].slice(0, 6),
        [...keys, 3, "left", "A", null, null, null, null, null, null, null],
        [...keys, 3, "right", "B", null, null, null, null, null, null, null],
        [...keys, 4, "left", "A", 1, 3.5, 7, 8, 0, "sound", null],
        [...keys, 4, "right", "B", 2, 3.5, 7, 7, 0, "sound", null],
      ],
    });
    await decide();
    // vine 1 has two equal cordons on the left, 2 one answer a side, 3 no count at all, 4 more spurs than places
    expect(await pane.page.locator(".row-picture figcaption").innerText()).toMatch(
      /^Row 1 of North Bench, vine by vine: 1 decided, 1 to ask about, 2 to count\. /,
    );
  });

  test.each(["A", "WW", "left 10"])(
    "draws a cordon named %s, that is asked about, with its whole name",
    async (name) => {
      const counts = COUNTS["Cordons"]
        .slice(0, 4)
        .map((row) => row.map((cell) => (cell === "A" ? name : cell)));
      pane = await openPane({ Cordons: counts });
      await decide();
      const [names, cut] = await pane.page.locator(".vine-picture svg").evaluate((drawing) => {
        const { left, right } = drawing.getBoundingClientRect();
        const texts = [...drawing.querySelectorAll(".cordon text")];
        const isCut = (box: DOMRect) => box.left < left || box.right > right;
        const words = (some: readonly Element[]) => some.map(({ textContent }) => textContent);
        return [words(texts), words(texts.filter((text) => isCut(text.getBoundingClientRect())))];
      });
      expect(names).toContain(`${name}?`);
      expect(cut).toEqual([]);
    },
  );

  test("walks from vine to vine, finds one, and follows the selected row", async () => {
    pane = await openPane(COUNTS, { height: 1000 });
    await decide();
    await pane.choose("decide-shown", "every vine");
    expect(await pane.page.locator("#vine-position").innerText()).toBe("1 of 3");
    await pane.page.locator("#next-vine").click();
    await pane.page.locator("#next-vine").click();
    expect(await vine()).toBe("Creek Side row 4 vine 1");
    await pane.page.locator("#previous-vine").click();
    expect(await vine()).toBe("North Bench row 1 vine 2");
    await pane.page.evaluate(() => window.harness.workbook.selectCell("Cordons", 8, 9));
    await pane.page.locator("#vine-shown", { hasText: "Creek Side row 4 vine 1" }).waitFor();
    await pane.page.locator("#find-vine input").fill("lake 3");
    await pane.page.locator("#vine-not-found").waitFor();
    expect(await vine()).toBe("Creek Side row 4 vine 1");
  });

  test("takes a person's decision by keyboard, keeps it in view, and takes it back", async () => {
    pane = await openPane(COUNTS);
    await decide();
    await outcome("B stays").focus();
    await pane.page.keyboard.press("Enter");
    await pane.page.getByText("B stays: written into the sheet").waitFor();
    expect((await fixed()).slice(0, 3)).toEqual(["goes", "stays", null]);
    expect(await vine()).toBe("North Bench row 1 vine 1");
    expect(await pane.page.locator("#decide-result").innerText()).toContain("0 to ask about");
    await pane.page.locator("#take-back", { hasText: "Take back: B stays" }).click();
    await pane.page.getByText("Taken back").waitFor();
    expect((await fixed()).slice(0, 3)).toEqual([null, null, null]);
  });

  test("every other outcome has its button: a cane of a cordon, none, count again", async () => {
    pane = await openPane(COUNTS, { height: 1000 });
    await decide();
    await outcome("Lay a cane of B").click();
    await pane.page.locator(".kept").getByText("A cane of B near the head, for the left side.").waitFor();
    expect((await fixed()).slice(0, 3)).toEqual(["goes", "lay a cane", null]);
    await outcome("None stays on the left").click();
    await pane.page.getByText("None stays on the left: written").waitFor();
    expect((await fixed()).slice(0, 3)).toEqual(["goes", "goes", null]);
    await outcome("Count this vine again").click();
    await pane.page.getByText("Count this vine again: written").waitFor();
    expect((await fixed()).slice(0, 3)).toEqual(["goes", "goes", "count again"]);
    await pane.page.locator(".vine .jump", { hasText: "Cordons L4" }).first().waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("decide-recount");
  });

  test("writes the Cordon choice sheet, and again over it", async () => {
    pane = await openPane(COUNTS);
    await decide();
    for (let run = 0; run < 2; run += 1) {
      await pane.button("Write Cordon choice sheet").click();
      await pane.page.getByText("The sheet Cordon choice was written: 7 rows").waitFor();
    }
  });

  test("goes to a cordon's cell", async () => {
    pane = await openPane(COUNTS);
    await decide();
    await pane.button("Cordons E3").click();
    await pane.settled();
    expect(await pane.page.evaluate(() => window.harness.workbook.selectedCell())).toEqual({
      sheet: "Cordons",
      row: 3,
      column: 5,
    });
  });

  test("accepts the settled vines of a block after a yes, without a name, and takes them back", async () => {
    pane = await openPane(COUNTS, { height: 1000 });
    const before = await fixed();
    await decide();
    await pane.page.getByText("Choose a block to accept").waitFor();
    await pane.choose("decide-block", "North Bench");
    const progress = pane.page.locator("#accept-progress");
    expect(await progress.innerText()).toBe(
      "North Bench: 0 of 2 vines accepted in the sheet, 1 decided and not yet accepted, 1 with a question left.",
    );
    await pane.page.locator("#accept-block").click();
    await pane.page.locator("#accept-yes").waitFor();
    expect(await pane.page.locator("#accept-would").innerText()).toContain(
      "Would write in the column Fixed choice: cells 2, vines 1.",
    );
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("decide-accept-ask");
    await pane.page.locator("#accept-by input").fill("");
    await pane.page.locator("#accept-yes").click();
    await pane.page.getByText("North Bench accepted: vines 1, cells written 2").waitFor();
    expect(await fixed()).toEqual([null, null, null, "stays", "goes", null, null]);
    expect(await progress.innerText()).toContain("1 of 2 vines accepted");
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("decide-accepted");
    await pane.page.locator("#take-back-block").click();
    await pane.page.getByText("Taken back: 2 cells of North Bench").waitFor();
    expect(await fixed()).toEqual(before);
    expect(await pane.page.locator("#take-back-block").count()).toBe(0);
  });

  test("twenty thousand rows filled down onto one vine are one sentence with the cell to look at", async () => {
    const filled = Array.from({ length: 20_000 }, (_, at) => [
      ...["Creek Side", 9, 1, at % 2 === 0 ? "left" : "right", "A", 1, 3.5, 7, 6, 1, "sound", null],
    ]);
    pane = await openPane({ Cordons: [...COUNTS.Cordons, ...filled] });
    await decide();
    await pane.page.locator("#find-vine input").fill("creek 9 1");
    const shown = pane.page.locator(".vine[data-key]", {
      hasText: "Recount this vine before anything is cut on it: Cordons C9.",
    });
    await shown.getByText("Cordons C9", { exact: true }).waitFor();
    expect(await shown.locator("li, svg").count()).toBe(0);
    await pane.page.locator("#find-vine input").fill("north 1 2");
    await pane.page.locator("ol.cuts").getByText("Cut B on the right").waitFor();
    expect(await pane.page.locator(".vine[data-key] svg").count()).toBe(1);
  });

  test("says the next step where no cordon was counted", async () => {
    pane = await openPane({ Remarks: [["Snow"]] });
    await pane.goTo("decide");
    const button = pane.page.locator("#decide");
    if ((await button.count()) > 0) await button.click();
    await pane.page.getByText("Next step: count them on the Cordons sheet").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
  });
});
