import { openWorkbookFile } from "../../src/workbook/file/openWorkbookFile";
import { largeSeason } from "./largeSeason";
import { openDesk } from "./openDesk";

interface Planted {
  readonly place: string;
  readonly code: string;
}

/** The mistakes that the workbook itself lists on its first sheet; the page leads to the first cell of a whole row. */
async function plantedMistakes(file: string): Promise<Planted[]> {
  const workbook = await openWorkbookFile(file);
  const { values } = await workbook.readSheet(workbook.sheetNames[0]);
  await workbook.close();
  const head = values.findIndex(([first]) => first === "Sheet");
  return values
    .slice(head + 1)
    .filter(([sheet]) => typeof sheet === "string")
    .map(([sheet, cell, , , code]) => ({
      place: `${String(sheet)} ${String(cell).replace(/^row /, "A")}`,
      code: String(code),
    }));
}

describe("checking a season on the desk page", () => {
  test("every planted mistake is found, and one is followed to its cell", async () => {
    const planted = await plantedMistakes("sample-workbooks/larkmoor-mistakes.xlsx");
    expect(planted.length).toBeGreaterThan(15);
    const page = await openDesk("mistakes");
    await page.check();
    const found = await page.findings();
    expect(
      planted.filter(({ place, code }) => !found.some((f) => f.place === place && f.code === code)),
    ).toEqual([]);
    await page.picture("desk-mistakes-found");

    const followed = planted.find(({ place }) => /^Cordons [A-Z]+\d{3,}$/.test(place))!;
    await page.pane.locator(".jump").getByText(followed.place, { exact: true }).first().click();
    await page.status.getByText(followed.place.replace(" ", "!")).waitFor();
    await page.pane.locator("#mark-cells").click();
    await page.page.waitForTimeout(500);
    await page.picture("desk-followed-to-its-cell");
    expect(await page.brokenRules()).toEqual([]);
  });

  test("nothing is found in the clean season", async () => {
    const page = await openDesk("clean");
    await page.check();
    expect(await page.findings()).toEqual([]);
    expect(await page.pane.locator("#check-result").getAttribute("intent")).toBe("success");
    await page.picture("desk-clean");
  });

  test("the findings are written to a sheet of their own", async () => {
    const page = await openDesk("mistakes");
    await page.check();
    await page.pane.locator("#write-findings").click();
    await page.page.locator("#grid").getByText("Findings", { exact: true }).waitFor();
    await page.goToSheet("Findings");
    expect(await page.shows("A1", /\w/)).toMatch(/\w/);
    await page.picture("desk-findings-sheet");
  });

  test("twenty thousand rows are checked while the page stays alive", async () => {
    const { bytes, rows } = await largeSeason(20_000);
    expect(rows).toBeGreaterThanOrEqual(20_000);
    const page = await openDesk("clean");
    const opening = await page.measure(() => page.openFile("large-season.xlsx", bytes));
    const checking = await page.measure(() => page.check());
    expect(await page.pane.locator("#check-result").innerText()).toMatch(/\d/);
    process.stdout.write(
      `${rows} cordon rows: opened in ${opening.seconds} s (longest stall ${opening.longestStall} ms), ` +
        `checked in ${checking.seconds} s (longest stall ${checking.longestStall} ms, ${checking.frames} frames drawn)\n`,
    );
    expect(checking.frames).toBeGreaterThan(10);
    await page.picture("desk-large-season");
  }, 180_000);
});
