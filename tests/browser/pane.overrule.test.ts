import type { Sheets } from "./pane/harness";
import { openDecide } from "./pane/openDecide";
import { openPane } from "./pane/openPane";
import type { PanePage } from "./pane/panePage";
import { CORDON_HEADS } from "../survey/cordonHeads";

const HEAD = [...CORDON_HEADS, "Longest gap", "Condition", "Fixed choice", "Note"];

/** Invented counts: A is clearly better than B on one vine, another vine is a close call. */
const COUNTS: Sheets = {
  Cordons: [
    HEAD,
    ["North Bench", 1, 1, "left", "A", 1, 3.5, 10, 9, 1, "sound", null, null],
    ["North Bench", 1, 1, "left", "B", 1, 3.5, 10, 6, 2, "sound", null, "old graft"],
    ["North Bench", 1, 1, "right", "C", 2, 3.5, 10, 9, 1, "sound", null, null],
    ["North Bench", 1, 2, "left", "A", 1, 3.5, 10, 9, 1, "sound", null, null],
    ["North Bench", 1, 2, "left", "B", 1, 3.5, 10, 9, 1, "sound", null, null],
    ["North Bench", 1, 2, "right", "C", 2, 3.5, 10, 9, 1, "sound", null, null],
  ],
};

describe("overruling an answer", () => {
  let pane: PanePage;
  beforeEach(async () => {
    pane = await openPane(COUNTS, { height: 1200 });
    await openDecide(pane);
    await pane.choose("decide-shown", "every vine");
    await outcome("B stays").waitFor();
  });

  const outcome = (words: string) => pane.page.locator("fluent-button.outcome", { hasText: words });
  const cells = () =>
    pane.page.evaluate(async () =>
      (await window.harness.workbook.readSheet("Cordons")).values
        .slice(1, 4)
        .map((row) => [row[11], row[12]]),
    );

  test("needs a reason, writes it beside the cordon, and can be taken back exactly", async () => {
    const before = await cells();
    await outcome("B stays").click();
    await pane.page.getByText("Write down why first").waitFor();
    expect(await cells()).toEqual(before);
    await pane.page.locator("#reason input").fill("A is split inside");
    await outcome("B stays").click();
    await pane.page.getByText("B stays: written into the sheet").waitFor();
    expect(await cells()).toEqual([
      ["goes", null],
      ["stays", "old graft; A is split inside"],
      [null, null],
    ]);
    await pane.page.getByText("Keep B on the left: a person has decided it.").waitFor();
    await pane.picture("decide-overruled");
    await pane.page.locator("#take-back").click();
    await pane.page.getByText("Taken back").waitFor();
    expect(await cells()).toEqual(before);
    expect(await pane.page.locator("#take-back").count()).toBe(0);
  });

  test("shows how far a block is decided, what would turn a vine and how much hangs on counting", async () => {
    expect(await pane.page.locator("#decide-progress").innerText()).toBe("North Bench: 1 of 2 vines decided");
    await pane.page.locator(".what-turns").first().click();
    const turns = await pane.page.locator(".turns").innerText();
    // 42 in carry 10.5 spurs: B with 9 of them and one gap ties with A, with 10 and none it is ahead
    expect(turns).toContain("left B: 10 live spurs instead of 6");
    await pane.page.locator("#counting-risk").click();
    expect(await pane.page.locator("#risk-found").innerText()).toMatch(
      /on \d+(\.\d)?% of the vines.*2 vines/s,
    );
    await pane.picture("decide-what-if");
    expect(await pane.brokenRules()).toEqual([]);
  });
});
