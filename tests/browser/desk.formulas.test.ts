import { SHEETS } from "../../src/survey/sheets/sheets";
import type { DeskPage } from "./deskPage";
import { desk } from "./openDesk";

describe("CORDON functions typed into the desk page", () => {
  let page: DeskPage;

  beforeAll(async () => {
    page = await desk().open("clean", { catchPrints: true });
  });

  test("a node budget typed into an empty cell", async () => {
    await page.type("H3", '=CORDON.NODEBUDGET(3,"30+10")');
    expect(await page.shows("H3", "50")).toBe("50");
  });

  test("a blank stays a blank and an omitted argument stays omitted", async () => {
    await page.type("H4", '=CORDON.NODEBUDGET(J4,"30+10")');
    expect(await page.shows("H4", /^#VALUE!/)).toMatch(/^#VALUE! .*prunings/i);
    await page.type("H5", '=CORDON.NODEBUDGET(3,"30+10",,,45)');
    expect(await page.shows("H5", "45")).toBe("45");
  });

  test("an error carries its sentence, and the sentence goes with the error", async () => {
    await page.type("H6", '=CORDON.NODEBUDGET(3,"thirty")');
    expect(await page.shows("H6", /^#VALUE!/)).toMatch(/^#VALUE! .*30\+10.*"thirty"/);
    await page.type("H6", '=CORDON.NODEBUDGET(1.5,"20+20")');
    expect(await page.shows("H6", "30")).toBe("30");
  });

  test("a formula follows the cells it refers to", async () => {
    await page.type("J8", "3");
    await page.type("H8", '=CORDON.NODEBUDGET(J8,"30+10")');
    expect(await page.shows("H8", "50")).toBe("50");
    await page.type("J8", "4");
    expect(await page.shows("H8", "60")).toBe("60");
  });

  test("gaps by row spill below their cell", async () => {
    await page.type("L3", "=CORDON.GAPSBYROW(Cordons!A:T)");
    expect(await page.shows("L3", "Block")).toBe("Block");
    expect(await page.read("L4")).toBe("North Bench");
    expect(Number(await page.read("M4"))).toBe(1);
    await page.picture("desk-formulas");
  });

  test("the page Functions explains the selected cell, also one that a formula beside it fills", async () => {
    await page.goToPage("functions");
    const explained = page.pane.locator("#cell-explained");
    await page.goTo("M4");
    await explained.getByText("Here it gives Row: 1.").waitFor();
    await explained.getByText(/^Worked out from all \d+ rows of the Cordons sheets\.$/).waitFor();
    await explained.locator(".jump", { hasText: "L3" }).waitFor();
    await page.type("H17", '=CORDON.NODEBUDGET(Vines[Prunings (lb)],"30+10")');
    await page.goTo("H17");
    await explained.getByText(/^\d+ rows: \d+ filled, \d+ empty; the first is [\d.]+ lb$/).waitFor();
    await explained.getByText(/^The cell shows #SPILL!: .*Clear the cells/).waitFor();
    await page.picture("desk-cell-explained");
    await page.type("H17", "-");
    await page.type("J19", "4");
    await page.type("H19", '=CORDON.NODEBUDGET(J19,"thirty")');
    await page.goTo("H19");
    await explained.getByText(/^It gives #VALUE!: .*thirty/).waitFor();
    await explained.getByText("4 lb", { exact: true }).waitFor();
  });

  test("the page Functions puts the node budget beside a vine's own weight, by the rule of its block", async () => {
    await page.goToSheet("Vines");
    const weights = await page.columnOf("Prunings (lb)");
    let row = 2;
    while (!/^[\d.]+$/.test(await page.read(`${weights}${row}`))) row += 1;
    const weight = Number(await page.read(`${weights}${row}`));
    await page.goTo(`T${row}`);
    await page.pane.locator("#function-search input").fill("nodebudget");
    await page.pane.locator("fluent-accordion-item[data-key=NODEBUDGET] button#control").click();
    await page.pane.locator(`fluent-text-input#formula-NODEBUDGET`).waitFor();
    await page.page.waitForTimeout(400);
    await page.pane.locator("fluent-accordion-item[data-key=NODEBUDGET] .insert").click();
    await page.pane.getByText(`The formula stands in T${row} on Vines.`).waitFor();
    // North Bench leaves 20+20: 20 nodes for the first pound and 20 for each pound above it, a part of a pound its part.
    expect(await page.read(`A${row}`)).toBe("North Bench");
    expect(Number(await page.shows(`T${row}`, /^\d/))).toBeCloseTo(20 + 20 * (weight - 1), 6);
    await page.picture("desk-function-put-in");
    await page.goToSheet("About this season");
  });

  test("sorting a range leaves it as it is for every other formula", async () => {
    for (const [row, spurs, weight] of [
      [20, "7", "1"],
      [21, "5", "10"],
      [22, "9", "100"],
    ] as const) {
      await page.type(`Q${row}`, spurs);
      await page.type(`R${row}`, weight);
    }
    await page.type("S20", "=SORT(Q20:Q22)");
    await page.type("T20", "=SUMPRODUCT(Q20:Q22,R20:R22)");
    await page.type("T21", "=INDEX(Q20:Q22,1)");
    await page.type("Q21", "4");
    // 7 x 1 + 4 x 10 + 9 x 100 = 947; sorted it would be 4 x 1 + 7 x 10 + 9 x 100 = 974.
    expect(await page.shows("T20", "947")).toBe("947");
    expect([await page.read("S20"), await page.read("S21"), await page.read("T21")]).toEqual(["4", "7", "7"]);
  });

  test("several arguments still arrive apart after a table reference was typed by half", async () => {
    await page.type("H10", "=SUM(Vines[Vine])");
    expect(await page.shows("H10", /^\d+$/)).toMatch(/^\d+$/);
    await page.goTo("H11");
    await page.page.keyboard.type("=SUM(Vines[");
    await page.page.keyboard.press("Escape");
    await page.type("H12", '=CORDON.NODEBUDGET(2,"30+10")');
    expect(await page.shows("H12", "40")).toBe("40");
  });

  test("a column whose heading carries its unit in parentheses can be named", async () => {
    await page.type("H14", "=SUM(Cordons[Length (ft)])-SUM(Cordons!G2:G5000)");
    expect(Number(await page.shows("H14", /^-?[\d.]+(e-\d+)?$/i))).toBeCloseTo(0, 6);
    await page.type("H15", "=SUM(Cordons[Length (ft)],(1+2)*3)-SUM(Cordons[[#Data],[Length (ft)]])");
    expect(Number(await page.shows("H15", /^[\d.]+$/))).toBeCloseTo(9, 6);
  });

  const hasKeyboard = (selector: string) =>
    page.page.waitForFunction(
      (wanted) => document.activeElement?.closest(wanted) instanceof Element,
      selector,
    );

  test("a click on a sheet's tab gives the keyboard to the sheet", async () => {
    const inSheet = "#grid [data-u-comp=editor], #grid .univer-workbench-container-canvas";
    await page.goToSheet("Cordons");
    await hasKeyboard(inSheet);
    await page.goTo("D2");
    await page.goToSheet("Vines");
    await hasKeyboard(inSheet);
    await page.goToSheet("Cordons");
    await page.status.getByText("Cordons!D2").waitFor();
    await hasKeyboard(inSheet);
    await page.page.keyboard.type("lft");
    await page.page.keyboard.press("Enter");
    expect(await page.shows("D2", "lft")).toBe("lft");
  });

  test("the words that a cell takes stand in a list with its explanation, and a key chooses one", async () => {
    const { page: tab, status } = page;
    await page.goTo("D2");
    const list = status.locator("#accepted-words");
    await list.waitFor();
    expect(await list.locator("option").allInnerTexts()).toEqual([
      "",
      "left",
      "right",
      "north",
      "south",
      "east",
      "west",
    ]);
    expect(await status.locator("#accepted-help").innerText()).toBe(SHEETS.cordons.columns[3].help.en);
    expect(await list.inputValue()).toBe("");
    expect(await page.brokenRules()).toEqual([]);
    await tab.keyboard.press("Alt+ArrowDown");
    await hasKeyboard("#accepted-words");
    await list.selectOption("left");
    await hasKeyboard("#grid");
    expect(await page.shows("D2", "left")).toBe("left");
    await page.goTo("G2");
    await status.getByText("Cordons!G2").waitFor();
    expect(await list.count()).toBe(0);
  });

  test("F6 and Shift+F6 go round the page, Escape and Tab leave the grid", async () => {
    const { keyboard } = page.page;
    await page.goTo("G2");
    for (const [key, part] of [
      ["F6", "#pane"],
      ["F6", "#top"],
      ["F6", "#grid"],
      ["Shift+F6", "#top"],
      ["Shift+F6", "#pane"],
      ["Shift+F6", "#grid"],
    ]) {
      await keyboard.press(key);
      await hasKeyboard(part);
    }
    await keyboard.press("Escape");
    await keyboard.press("Tab");
    await hasKeyboard("#pane");
    await keyboard.press("Shift+F6");
    await hasKeyboard("#grid");
    await keyboard.press("Escape");
    await keyboard.press("Shift+Tab");
    await hasKeyboard("#top");
  });

  test("no button beyond the edge of the grid takes the keyboard", async () => {
    const beyond = await page.page.locator("#grid").evaluate((grid) => {
      const area = grid.getBoundingClientRect();
      return [...grid.querySelectorAll<HTMLElement>("button, a[href], input, [tabindex='0']")]
        .filter((element) => {
          const { left, right, width } = element.getBoundingClientRect();
          return (
            width > 0 &&
            element.checkVisibility({ visibilityProperty: true }) &&
            (left > area.right || right < area.left)
          );
        })
        .map((element) => element.outerHTML.slice(0, 80));
    });
    expect(beyond).toEqual([]);
  });

  test("the formula bar shows the cell that moved up when rows were deleted", async () => {
    const { page: tab } = page;
    await page.goToSheet("Bud cuts");
    const bar = tab.locator("#grid [data-u-comp=formula-bar] canvas");
    const shown = async () => (await bar.screenshot()).toString("base64");
    expect(await page.read("A2")).toBe("North Bench");
    await page.goTo("A2");
    const wanted = await shown();
    await page.goTo("A1");
    expect(await shown()).not.toBe(wanted);
    const grid = (await tab.locator("#grid").boundingBox())!;
    // Below the formula bar (28 px) and the letters of the columns (21 px) stands row 1, which is 43 px high.
    await tab.mouse.click(grid.x + 24, grid.y + 28 + 21 + 20, { button: "right" });
    await tab.getByText("Delete Selected Row").click();
    await page.status.getByText("North Bench").first().waitFor();
    const end = Date.now() + 20_000;
    while ((await shown()) !== wanted && Date.now() < end) await tab.waitForTimeout(100);
    expect(await shown()).toBe(wanted);
  });

  test("a sheet is printed as it is shown, with its head on every page", async () => {
    await page.goToSheet("Blocks");
    await page.page.locator("#print-sheet").click();
    const printed = await page.printed();
    const { cells, title } = await page.page.evaluate((html) => {
      const paper = new DOMParser().parseFromString(html, "text/html");
      return {
        title: paper.title,
        cells: [...paper.querySelectorAll("tr")].map((row) =>
          [...row.children].map((cell) => cell.textContent),
        ),
      };
    }, printed);
    expect(title).toBe("Blocks");
    expect(printed).toContain("table-header-group");
    for (const [row, address] of [
      [0, "A1"],
      [1, "A2"],
      [3, "A4"],
    ] as const)
      expect(cells[row][0]).toBe(await page.read(address));
    expect(cells[1][1]).toBe(await page.read("B2"));
    const { tooWide } = await desk().onPaper(printed, "Letter");
    expect(tooWide).toEqual([]);
  });

  test("nothing was complained of and nothing left the machine", () => {
    expect(page.problems).toEqual([]);
    expect(page.foreign).toEqual([]);
  });
});
