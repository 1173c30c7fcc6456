import type { Sheets } from "./pane/harness";
import { openPane } from "./pane/openPane";
import type { PanePage } from "./pane/panePage";
import { CORDON_HEADS } from "../survey/cordonHeads";
import { resultsOf } from "./resultsOf";

const HEAD = [...CORDON_HEADS, "Counted by"];

/** Invented counts with three mistakes: more spurs than positions, a blank, a negative count. */
const COUNTS: Sheets = {
  Cordons: [
    HEAD,
    ["North Bench", 1, 1, "left", "A", 1, 3.5, 7, 6, "AB"],
    ["North Bench", 1, 1, "right", "B", 1, 3.5, 7, 9, "AB"],
    ["North Bench", 1, 2, "left", "A", 1, 3.5, 7, null, "MK"],
    ["North Bench", 2, 1, "left", "A", 1, 3.5, 7, -2, "MK"],
  ],
  Remarks: [["Snow on the third day"]],
};

const MENDED: Sheets = {
  Cordons: COUNTS.Cordons.map((row) => row.map((cell) => (cell === 9 || cell === -2 ? 6 : cell))),
};

describe("the page that checks the counts", () => {
  let pane: PanePage;

  const selected = () => pane.page.evaluate(() => window.harness.workbook.selectedCell());
  const check = async () => {
    await pane.button("Check").first().click();
    await pane.page.locator("#check-result").waitFor();
  };
  const spurs = () => pane.page.locator("#few-findings .finding", { hasText: "More live spurs" });
  const open = (heading: string) =>
    pane.page
      .locator("fluent-accordion-item:visible", { hasText: heading })
      .locator("button#control")
      .click();

  test("lists what is wrong with the counts and goes to the cell by click", async () => {
    pane = await openPane(COUNTS, { height: 900 });
    await check();
    expect(await pane.page.locator("#check-result").innerText()).toMatch(/in 4 rows/);
    await pane.picture("check-result");
    const verdictFirst = await pane.page.evaluate(() => {
      const root = document.querySelector("#pane")!.shadowRoot!;
      const [verdict, button] = ["#check-result", "#check"].map((id) => root.querySelector(id)!);
      return Boolean(verdict.compareDocumentPosition(button) & Node.DOCUMENT_POSITION_FOLLOWING);
    });
    expect(verdictFirst).toBe(true);
    const list = (await pane.page.locator("#few-findings .finding").allInnerTexts()).join("\n");
    expect(list).toContain("Cordons I3");
    expect(list).toContain("Cordons I4");
    expect(list).toContain("Cordons I5");
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("check-findings");
    await pane.button("Cordons I4").click();
    expect(await selected()).toEqual({ sheet: "Cordons", row: 4, column: 9 });
  });

  test("goes from finding to finding and to the cell by keyboard alone", async () => {
    pane = await openPane(COUNTS);
    const { keyboard } = pane.page;
    await pane.reach("check");
    await keyboard.press("Enter");
    await pane.page.locator("#check-result").waitFor();
    await pane.page.locator("#few-findings .jump").first().waitFor();
    await pane.reach("jump");
    await keyboard.press("Enter");
    await pane.settled();
    expect(await selected()).toMatchObject({ sheet: "Cordons", column: 9 });
  });

  test("filters by words, severity, sheet and counter", async () => {
    pane = await openPane(COUNTS, { height: 900 });
    await check();
    await open("Filter");
    await pane.page.locator("#filter-words input").fill("blank north");
    await pane.page.getByText(/1 of \d+ findings pass the filter/).waitFor();
    await pane.page.locator("#filter-words input").fill("");
    await pane.choose("filter-counter", "AB");
    await pane.page.getByText(/1 of \d+ findings pass the filter/).waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("check-filter");
  });

  test("compares with the run before", async () => {
    pane = await openPane(COUNTS);
    await check();
    await pane.page.evaluate(() => {
      window.harness.workbook.type("Cordons", 3, 9, 6);
      window.harness.workbook.type("Cordons", 5, 9, 6);
    });
    await pane.button("Check again").click();
    await pane.page.locator("#since").waitFor();
    expect(await pane.page.locator("#since").innerText()).toMatch(/2 gone, 0 new/);
    await open("Gone since the check before");
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("check-again");
  });

  test("writes the findings into a sheet of its own, and again over it", async () => {
    pane = await openPane(COUNTS);
    await check();
    for (let run = 0; run < 2; run += 1) {
      await pane.button("Write Findings sheet").click();
      await pane.page.getByText("The sheet Findings was written").waitFor();
    }
    const area = await pane.page.evaluate(
      async () => (await window.harness.workbook.readSheet("Findings")).values,
    );
    const cells = area.map((row) => row[2]);
    expect(cells).toEqual(expect.arrayContaining(["Cell", "I3", "I4", "I5"]));
    expect(await pane.page.evaluate(() => window.harness.workbook.sheetNames())).toEqual([
      "Cordons",
      "Remarks",
      "Findings",
    ]);
  });

  test("marks the cells and takes the marks off", async () => {
    pane = await openPane(COUNTS);
    await check();
    await pane.button("Mark cells").click();
    await pane.page.getByText("cells are marked").waitFor();
    const marks = () => pane.page.evaluate(() => window.harness.workbook.marks);
    expect(await marks()).toEqual(
      expect.arrayContaining([{ sheet: "Cordons", row: 3, column: 9, severity: "wrong" }]),
    );
    await pane.button("Take marks off").click();
    await pane.page.getByText("All marks are off").waitFor();
    expect(await marks()).toEqual([]);
  });

  test("sets a finding aside with reason and name, which survives the next check, and takes it back", async () => {
    pane = await openPane(COUNTS);
    await check();
    await spurs().locator(".aside").click();
    await pane.page.locator("#aside-reason input").fill("Grafted: spurs share a position");
    await pane.page.locator("#aside-keep").click();
    await pane.page.getByText("Reason and name are both needed").waitFor();
    await pane.page.locator("#aside-by input").fill("JT");
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("check-aside-dialog");
    await pane.page.locator("#aside-keep").click();
    await pane.page.getByText("Set aside; it stays so").waitFor();
    expect(await spurs().count()).toBe(0);
    await pane.button("Check again").click();
    await pane.page.locator("#since").waitFor();
    await open("Findings set aside");
    await pane.page.getByText("Grafted: spurs share a position (JT, 2024-02-28)").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.button("Take back").click();
    await spurs().waitFor();
  });

  test("leaves the dialog by Escape with nothing written", async () => {
    pane = await openPane(COUNTS);
    await check();
    await spurs().locator(".aside").click();
    await pane.page.locator("#aside-reason input").waitFor();
    await pane.page.keyboard.press("Escape");
    await pane.page.waitForFunction(
      () => document.querySelector("#pane")!.shadowRoot!.querySelector("#aside-dialog") === null,
    );
    expect(
      await pane.page.evaluate(async () => [
        ...(await window.harness.workbook.readFlags("setAside.")).keys(),
      ]),
    ).toEqual([]);
  });

  test("says in one sentence why the workbook refused, and changes nothing", async () => {
    pane = await openPane(COUNTS);
    await check();
    await pane.page.evaluate(() => window.harness.workbook.protect("Cordons"));
    await pane.button("Mark cells").click();
    await pane.page.getByText('The sheet "Cordons" is protected').waitFor();
    expect(await pane.page.evaluate(() => window.harness.workbook.marks)).toEqual([]);
    expect(await pane.brokenRules()).toEqual([]);
  });

  test("prints a list with a box to tick", async () => {
    pane = await openPane(COUNTS);
    await check();
    await pane.button("Print list").click();
    await pane.page.waitForFunction(() => window.printed !== undefined);
    const paper = await pane.page.evaluate(() => window.printed);
    expect(paper).toContain(await pane.page.locator(".account p").innerText());
    expect(paper).toContain("Findings in the counts");
    expect(paper).toContain("Cordons I3");
  });

  test("counts the findings per row and per counter", async () => {
    pane = await openPane(COUNTS, { height: 1200 });
    await check();
    await open("Findings per row");
    await open("Findings per counter");
    await pane.settled();
    const tables = await pane.page.locator("table:visible").allInnerTexts();
    expect(tables[0]).toMatch(/North Bench, 1\s/);
    expect(tables[1]).toMatch(/MK/);
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("check-counts");
  });

  test("finds the survey tables by their headers and leaves a sheet out that a person does not want", async () => {
    pane = await openPane(COUNTS);
    await pane.button("Choose sheets").click();
    const box = pane.box("Cordons: Cordons, 4 rows");
    await box.waitFor();
    expect(await pane.page.locator("fluent-checkbox").count()).toBe(1);
    expect(await pane.brokenRules()).toEqual([]);
    expect(await pane.accessibleTree()).toContainEqual({
      role: "checkbox",
      name: "Cordons: Cordons, 4 rows",
    });
    await pane.picture("check-sheets");
    await box.click();
    await check();
    expect(await pane.page.locator("#check-result").innerText()).toContain("in 0 rows");
    expect(await pane.page.locator("#check-result").getAttribute("intent")).not.toBe("success");
  });

  test("does not praise a workbook in which nothing is counted yet", async () => {
    pane = await openPane({
      Cordons: [HEAD],
      Settings: [
        ["Setting", "Value"],
        ["Close call", 0.02],
        ["Days a week", 5],
      ],
    });
    await check();
    const verdict = pane.page.locator("#check-result");
    expect(await verdict.innerText()).toContain("No counts are written yet");
    expect(await verdict.getAttribute("intent")).toBe("info");
  });

  test("says the next step where no table is", async () => {
    pane = await openPane({ Remarks: [["Snow on the third day"]] });
    await pane.button("Check counts").click();
    await pane.page.getByText("No survey table was found").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("check-empty");
  });

  test("reads a sheet under a person's own heads once they are told what these mean", async () => {
    pane = await openPane({
      Tally: [
        ["Where", "Line", "Plant no.", "Arm side", "Name", "Stem", "Places", "Alive"],
        ["North Bench", 1, 1, "left", "A", 1, 7, 9],
      ],
    });
    await pane.button("Check counts").click();
    await pane.button("Use my own column heads").click();
    await pane.page.locator("#heads-title").waitFor();
    const heads = { block: "Where", row: "Line", vine: "Plant no.", side: "Arm side", trunk: "Stem" };
    for (const [column, head] of Object.entries({ ...heads, positions: "Places", liveSpurs: "Alive" }))
      if ((await pane.page.locator(`#heads-cordons-${column}`).count()) > 0)
        await pane.choose(`heads-cordons-${column}`, head);
    await pane.choose("heads-cordons-cordon", "Name");
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("check-heads");
    await pane.button("Keep").click();
    await pane.page.getByText("Tally is now read with your own heads").waitFor();
    await check();
    expect(await pane.page.locator("#check-result").innerText()).toMatch(/in 1 row of|in 1 row\./);
    const answers = await pane.page.evaluate(
      async () => (await window.harness.workbook.readSheet("Answers")).values,
    );
    expect(answers).toContainEqual(["Tally", "head in Cordons", "Plant no.", "Vine"]);
  });

  test("mends all cells of one cause at a press and takes that back; a formula stays", async () => {
    const rows = Array.from({ length: 10 }, (_, i) => [
      ...["North Bench", 1, i + 1, "left", "A", 1, 3.5, 7],
      i < 8 ? "5 + 1" : 6,
      "AB",
    ]);
    const vines = ["1.250", "900", 1100, 1400].map((cell, i) => ["North Bench", 1, i + 1, "bearing", cell]);
    const Vines = [["Block", "Row", "Vine", "Status", "Prunings (g)"], ...vines];
    pane = await openPane({ Cordons: [HEAD, ...rows], Vines }, { height: 900 });
    await check();
    await open("Not a number: sums (8)");
    await pane.page.getByText("Likely: “5 + 1” becomes 6").first().waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("check-mend");
    await pane.page.locator(".mend-all").click();
    await pane.page.getByText("Cells changed: 8.").waitFor();
    const spursOf = (first: number, last: number) =>
      pane.page.evaluate(
        async ([from, to]) =>
          (await window.harness.workbook.readSheet("Cordons")).values.slice(from, to).map((row) => row[8]),
        [first, last],
      );
    expect(await spursOf(1, 10)).toEqual([6, 6, 6, 6, 6, 6, 6, 6, 6]);
    await pane.page.locator("#take-mends-back").click();
    await pane.page.getByText("Cells brought back: 8.").waitFor();
    expect(await spursOf(1, 3)).toEqual(["5 + 1", "5 + 1"]);
    await open("Number typed as text");
    await pane.page.getByText("“1.250” becomes 1250 (or 1.25)").first().waitFor();
    await pane.button("Change to 1.25").click();
    await pane.page.getByText("Cells changed: 1.").waitFor();
    const prunings = await pane.page.evaluate(async () =>
      (await window.harness.workbook.readSheet("Vines")).values.map((row) => row[4]),
    );
    expect(prunings.slice(1)).toEqual([1.25, "900", 1100, 1400]);
  });

  test("where checking takes long, findings from before a mend say that they are older and offer the button", async () => {
    const sums = Array.from({ length: 10 }, (_, i) => [
      ...["North Bench", 1, i + 1, "left", "A", 1, 3.5, 7],
      i < 8 ? "5 + 1" : 6,
      "AB",
    ]);
    pane = await openPane({ Cordons: [HEAD, ...sums] }, { height: 900 });
    await check();
    await pane.page.evaluate(() => window.harness.slow());
    await open("Not a number: sums (8)");
    await pane.page.locator(".mend-all").click();
    await pane.page.getByText("Cells changed: 8.").waitFor();
    await pane.page.locator("#older").waitFor();
    await pane.page.locator("#work-anew").click();
    await pane.page.locator("#older").waitFor({ state: "detached" });
    await pane.page
      .locator("#check-result", { hasText: "0 wrong" })
      .or(pane.page.getByText("Nothing to object to"))
      .first()
      .waitFor();
    expect(await pane.page.getByText("Not a number: sums").count()).toBe(0);
  });

  test("an unknown layout is opened, one answer given, and the cards are right", async () => {
    pane = await openPane(
      {
        Pond: [
          ["Blk", "Rw", "Vn", "Sd", "Cane", "Tr", "Len (ft)", "Pos", "Live", "Gap", "Cond"],
          ["Pond Field", 1, 1, "left", "A", 1, 3, 8, 7, 1, "good"],
          ["Pond Field", 1, 1, "left", "B", 1, 3, 8, 2, 4, "frost damage"],
          ["Pond Field", 1, 1, "right", "C", 2, 3, 8, 6, 1, "good"],
        ],
      },
      { height: 900 },
    );
    await pane.button("Check counts").click();
    await pane.page.locator("#questions").getByText("3 rows stand under heads that are not known").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("check-question");
    await pane.page.locator(".answer").getByText("Yes").click();
    await pane.page.getByText("Your answer is kept on the sheet Answers").waitFor();
    await pane.page.locator("#questions").waitFor({ state: "detached" });
    await pane.button("Check").first().click();
    await pane.page.locator("#check-result").waitFor();
    const printedCard = async () => {
      await pane.goTo("crew");
      await resultsOf(pane.page, "crew");
      await pane.page.locator("#print-cards").click();
      await pane.page.waitForFunction(() => window.printed !== undefined);
      return (await pane.page.evaluate(() => window.printed!)).replace(/\s+/g, " ");
    };
    const card = await printedCard();
    // Of the left side's cordons A has 7 of 8 places alive and B 2 of 8: A stays, B is cut; C is alone on the right.
    expect(card).toContain("Pond Field, row 1");
    expect(card).toMatch(/Found different 1 A · T1 B C · T2 /);
    pane = await openPane(
      {
        Cordons: [
          [...CORDON_HEADS, "Longest gap", "Condition"],
          ["Pond Field", 1, 1, "left", "A", 1, 3, 8, 7, 1, "sound"],
          ["Pond Field", 1, 1, "left", "B", 1, 3, 8, 2, 4, "injured"],
          ["Pond Field", 1, 1, "right", "C", 2, 3, 8, 6, 1, "sound"],
        ],
      },
      { height: 900 },
    );
    expect(await printedCard()).toBe(card);
  });

  test("asks for the unit of one counter by name, and is answered for him alone", async () => {
    const rows = Array.from({ length: 40 }, (_, i) => {
      const [counter, unit] = i % 2 === 0 ? ["JM", 12] : ["RP", 1];
      return ["Pond Field", 1, 1 + i, "left", "A", 1, (3 + (i % 5) / 10) * Number(unit), 8, 6, counter];
    });
    pane = await openPane({ Cordons: [[...CORDON_HEADS, "Counted by"], ...rows] }, { height: 900 });
    await pane.button("Check counts").click();
    await pane.page.locator("#questions").getByText("JM seems to have written 20 values").waitFor();
    expect(await pane.page.locator(".answer").allInnerTexts()).toEqual(["in", "ft", "m", "cm", "mm"]);
    await pane.page.locator(".answer").first().click();
    await pane.page.getByText("Your answer is kept on the sheet Answers").waitFor();
    await pane.page.locator("#questions").waitFor({ state: "detached" });
    const kept = await pane.page.evaluate(
      async () => (await window.harness.workbook.readSheet("Answers")).values,
    );
    expect(kept.at(-1)).toEqual(["Cordons", "unit of one counter", "Length: JM", "in"]);
  });

  test("judges rows while they are typed, once it is switched on, and tells a colleague's from one's own", async () => {
    pane = await openPane(COUNTS);
    await pane.page.locator("#typing").click();
    await pane.page.getByText("Rows changed just now").waitFor();
    await pane.page.evaluate(() => window.harness.workbook.type("Cordons", 2, 9, 12, "colleague"));
    const typed = pane.page.locator("section").getByText("Cordons I2");
    await typed.waitFor();
    expect(await pane.page.getByText("by a colleague").count()).toBe(1);
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture("check-typing");
    await typed.click();
    expect(await selected()).toEqual({ sheet: "Cordons", row: 2, column: 9 });
    await pane.page.evaluate(() => window.harness.workbook.type("Cordons", 2, 9, 6));
    await pane.page.getByText("Nothing to object to so far").waitFor();
    await pane.page.locator("#typing").click();
    await pane.page.getByText("Rows changed just now").waitFor({ state: "detached" });
  });

  test("stays alive over 20,000 rows and stops when told to", async () => {
    const rows = Array.from({ length: 20_000 }, (_, i) => [
      "North Bench",
      1 + Math.floor(i / 200),
      1 + Math.floor((i % 200) / 2),
      i % 2 ? "right" : "left",
      i % 2 ? "B" : "A",
      1,
      3.5,
      7,
      i % 10 === 0 ? 9 : 6,
      "AB",
    ]);
    pane = await openPane({ Cordons: [HEAD, ...rows] });
    await pane.page.evaluate(() => {
      window.steps = new Set();
      const look = () => {
        const bar = document.getElementById("pane")!.shadowRoot!.querySelector("fluent-progress-bar");
        if (bar) window.steps.add(String(bar.getAttribute("value")));
        requestAnimationFrame(look);
      };
      requestAnimationFrame(look);
    });
    await check();
    expect(await pane.page.evaluate(() => window.steps.size)).toBeGreaterThan(2);
    expect(await pane.page.locator("#check-result").innerText()).toMatch(/in 20000 rows/);
    await pane.page.locator("section fluent-accordion-item button#control").first().click();
    expect(await pane.page.locator(".finding").count()).toBe(25);
    await pane.button("Show 25 more").click();
    await pane.page.waitForFunction(
      () => document.querySelector("#pane")!.shadowRoot!.querySelectorAll(".finding").length === 50,
    );
    await pane.page.evaluate(async () => {
      const root = document.getElementById("pane")!.shadowRoot!;
      window.harness.workbook.type("Cordons", 3, 9, 5);
      root.getElementById("check")!.click();
      while (root.getElementById("stop") === null) await new Promise(requestAnimationFrame);
      root.getElementById("stop")!.click();
    });
    await pane.page.getByText("Stopped; nothing was changed").waitFor();
  });

  test.each(["es", "fr"] as const)("speaks %s", async (language) => {
    pane = await openPane(MENDED, { language });
    await pane.page.locator("#check").click();
    await pane.page.locator("#check-result").waitFor();
    expect(await pane.brokenRules()).toEqual([]);
    await pane.picture(`check-${language}`);
  });
});
