import type { Sheets } from "./pane/harness";
import { openDecide } from "./pane/openDecide";
import { openPane } from "./pane/openPane";
import type { PanePage } from "./pane/panePage";
import { resultsOf } from "./resultsOf";

const HEAD =
  "Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs,Longest gap,Condition,Fixed choice".split(
    ",",
  );
const CONDITION = 11;
const FIXED = 12;

/** Invented counts: two equal cordons on the left of vine 1, and a plain vine. */
const COUNTS: Sheets = {
  Cordons: [
    HEAD,
    ["North Bench", 1, 1, "left", "A", 1, 3.5, 7, 6, 1, "sound", null],
    ["North Bench", 1, 1, "left", "D", 1, 3.5, 7, 6, 1, "sound", null],
    ["North Bench", 1, 1, "right", "C", 2, 3.5, 7, 7, 0, "sound", null],
    ["North Bench", 1, 2, "left", "A", 1, 3.5, 7, 9, 0, "sound", null],
  ],
};

describe("results and the workbook that has changed since", () => {
  let pane: PanePage;

  const show = async (page: "crew" | "gaps") => {
    await pane.goTo(page);
    await resultsOf(pane.page, page);
  };
  const type = (row: number, column: number, value: string | number) =>
    pane.page.evaluate(([r, c, cell]) => window.harness.workbook.type("Cordons", r, c, cell), [
      row,
      column,
      value,
    ] as const);
  /** Types cordon A of vine 1 dead: no live spur, one gap over all its positions. */
  const typeDead = async () => {
    await type(2, 9, 0);
    await type(2, 10, 7);
    await type(2, CONDITION, "dead");
  };
  const fixed = () =>
    pane.page.evaluate(
      async (column) =>
        (await window.harness.workbook.readSheet("Cordons")).values.slice(1).map((row) => row[column - 1]),
      FIXED,
    );
  /** Has the pane believe that its work takes long. */
  const slow = () => pane.page.evaluate(() => window.harness.slow());

  test("a cordon typed dead after the decision goes by itself, and is no longer offered", async () => {
    pane = await openPane(COUNTS, { height: 1000 });
    await openDecide(pane);
    await pane.page.locator(".outcome", { hasText: "A stays" }).waitFor();
    await typeDead();
    await pane.page.locator(".outcome", { hasText: "Lay a cane of A" }).waitFor({ state: "detached" });
    // vine 2 with 9 live spurs on 7 positions is asked about from the beginning
    expect(await pane.page.locator("#decide-result").innerText()).toContain("1 to ask about");
    expect(await pane.page.locator("#older").count()).toBe(0);
    expect(await fixed()).toEqual([null, null, null, null]);
  });

  test("where deciding takes long, the older answer says so, is not written, and offers its button", async () => {
    pane = await openPane(COUNTS, { height: 1000 });
    await openDecide(pane);
    await slow();
    await typeDead();
    await pane.page.getByText("nothing of it is printed, written or accepted").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("older-320");
    await pane.page.locator(".outcome", { hasText: "A stays" }).click();
    await pane.page
      .getByText(/were changed since they were read \(Cordons [IJK]2\); nothing was written/)
      .waitFor();
    await pane.page.locator("#write-choice").click();
    await pane.page.getByText("so nothing was printed, written or accepted").waitFor();
    expect(await fixed()).toEqual([null, null, null, null]);
    expect(await pane.page.evaluate(() => window.harness.workbook.sheetNames())).toEqual(["Cordons"]);
    await pane.page.locator("#work-anew").click();
    await pane.page.locator("#older").waitFor({ state: "detached" });
    // vine 2 with 9 live spurs on 7 positions is asked about from the beginning
    expect(await pane.page.locator("#decide-result").innerText()).toContain("1 to ask about");
  });

  test("a card printed after D stays no longer asks", async () => {
    pane = await openPane(COUNTS, { height: 1000 });
    await show("crew");
    await pane.page.locator("#print-cards").click();
    await pane.page.waitForFunction(() => window.printed !== undefined);
    const before = await pane.page.evaluate(() => window.printed!);
    await openDecide(pane);
    await pane.page.locator(".outcome", { hasText: "D stays" }).click();
    await pane.page.getByText("D stays: written").waitFor();
    await pane.goTo("crew");
    await pane.page.locator("#older").waitFor({ state: "detached" });
    await pane.page.evaluate(() => (window.printed = undefined));
    await pane.page.locator("#print-cards").click();
    await pane.page.waitForFunction(() => window.printed !== undefined);
    const after = await pane.page.evaluate(() => window.printed!);
    expect(before).toContain("A / D\u00a0?");
    expect(after).toContain("D · T1");
    expect(after).not.toContain("?");
  });

  test("marks follow rows inserted above, and are refused while they would not", async () => {
    pane = await openPane(COUNTS, { height: 1000 });
    await pane.page.locator("#check").click();
    await pane.page.locator("#check-result").waitFor();
    const marks = () =>
      pane.page.evaluate(() =>
        window.harness.workbook.marks.filter(({ column }) => column === 9).map(({ row }) => row),
      );
    await pane.page.locator("#mark-cells").click();
    await pane.page.getByText("marked").first().waitFor();
    expect(await marks()).toEqual([5]);
    await pane.page.evaluate(() => window.harness.workbook.moveRows("Cordons", 1, { insert: 2 }));
    await pane.settled();
    await pane.page.locator("#older").waitFor({ state: "detached" });
    await pane.page.locator("#mark-cells").click();
    await pane.settled();
    expect(await marks()).toEqual([7]);
    await slow();
    await pane.page.evaluate(() => window.harness.workbook.moveRows("Cordons", 1, { insert: 1 }));
    await pane.page.locator("#work-anew").waitFor();
    await pane.page.locator("#mark-cells").click();
    await pane.page.getByText("so nothing was printed, written or accepted").waitFor();
    expect(await marks()).toEqual([7]);
  });

  test("the next step is that of the workbook as it is, not of an older picture", async () => {
    pane = await openPane(COUNTS);
    await pane.goTo("season");
    await pane.page.locator("#next-step").waitFor();
    await slow();
    // Row 5 had 9 live spurs on 7 positions; now row 3 has 12.
    await type(5, 9, 6);
    await type(3, 9, 12);
    await pane.page.locator("#work-anew").waitFor();
    await pane.page.locator("#next-step").click();
    await pane.page.locator(".page:not([hidden]) #check").waitFor();
    const selected = () => pane.page.evaluate(() => window.harness.workbook.selectedCell());
    for (const end = Date.now() + 30_000; Date.now() < end && !(await selected());)
      await pane.page.waitForTimeout(50);
    expect(await selected()).toEqual({ sheet: "Cordons", row: 3, column: 9 });
  });

  test("gaps follow an edit, its undo, a deleted row and a renamed sheet", async () => {
    pane = await openPane(COUNTS);
    await type(5, 9, 5);
    await show("gaps");
    const sum = (words: string) => pane.page.locator("#gaps-result", { hasText: words }).waitFor();
    // on the cordons that stay: A or D 1 of 7, C 0 of 7, vine 2 A 2 of 7
    await sum("3 of 21");
    await type(5, 9, 4);
    await sum("4 of 21");
    await type(5, 9, 5);
    await sum("3 of 21");
    await pane.page.evaluate(() => window.harness.workbook.moveRows("Cordons", 5, { remove: 1 }));
    await sum("1 of 14");
    await pane.page.evaluate(() => window.harness.workbook.renameSheet("Cordons", "Cordons 2026"));
    await pane.settled();
    await pane.page.locator(".jump").first().click();
    await pane.settled();
    const cell = await pane.page.evaluate(() => window.harness.workbook.selectedCell());
    expect(cell?.sheet).toBe("Cordons 2026");
  });
});
