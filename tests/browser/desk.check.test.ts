import { readFileSync } from "node:fs";
import { strFromU8, strToU8, unzipSync, zipSync, type Unzipped } from "fflate";
import { openWorkbookFile } from "../../src/workbook/file/openWorkbookFile";
import { buildWorkbook } from "../workbook/file/buildWorkbook";
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
  });

  test("the opening of a file is told of and stopped, and the workbook on the page stays", async () => {
    const page = await openDesk("mistakes");
    const before = await page.read("A1");
    const shown = page.page.locator("#under-way");
    await page.chooseFile("many.xlsx", manyCells(120_000));
    await shown.getByRole("status").getByText("Opening many.xlsx…").waitFor();
    await shown.getByText(/Sheet Sheet1, row \d+$/).waitFor();
    expect(await page.brokenRules()).toEqual([]);
    await page.page.locator("#print-sheet").focus();
    await page.page.keyboard.press("Tab");
    expect(await page.page.evaluate(() => document.activeElement?.textContent?.trim())).toBe("Stop");
    await page.page.keyboard.press("Enter");
    await page.page
      .locator("#notice")
      .getByText("Opening many.xlsx was stopped. The workbook on the page is unchanged.")
      .waitFor();
    expect(await page.page.evaluate(() => document.activeElement?.closest("#notice") !== null)).toBe(true);
    await shown.waitFor({ state: "detached" });
    expect(await page.page.locator("#grid.waiting").count()).toBe(0);
    expect(await page.page.locator("#workbook").inputValue()).toBe("mistakes");
    expect(await page.read("A1")).toBe(before);
  });

  test("a long calculation is told of and stopped, and goes on with the next change", async () => {
    const page = await openDesk("clean");
    const row = (_: unknown, at: number) =>
      `<row r="${at + 1}"><c r="A${at + 1}"><v>${at + 1}</v></c>` +
      (at < 4000 ? `<c r="B${at + 1}"><f>SUM(A:A)+A${at + 1}</f><v>-7</v></c>` : "") +
      "</row>";
    await page.openFile(
      "sums.xlsx",
      buildWorkbook({ sheets: { Sheet1: Array.from({ length: 30_000 }, row).join("") } }),
    );
    const shown = page.page.locator("#under-way");
    await shown.getByRole("status").getByText("Working out the formulas…").waitFor();
    await shown.getByText(/\d of 4000/).waitFor();
    await shown.getByText("Stop").press("Enter");
    await page.page.locator("#notice").getByText("Working out the formulas was stopped.").waitFor();
    await shown.waitFor({ state: "detached" });
    expect(await page.read("B3900")).toBe("-7");
    await page.type("D1", "=A2+A3");
    await shown.getByText(/\d of 4001/).waitFor();
    // The next calculation takes the word of its own stop away, and no other notice.
    await page.page.locator("#notice").waitFor({ state: "detached" });
    await shown.getByText("Stop").press("Enter");
    await page.page.locator("#save-copy").click();
    const saved = page.page.locator("#notice.done").getByText("look for it among your downloads");
    await saved.waitFor();
    await page.type("D2", "=A3+A4");
    await shown.getByText(/\d of 4002/).waitFor();
    expect(await saved.isVisible()).toBe(true);
  });

  test.each<[string, Uint8Array]>([
    ["cells far from one another", buildWorkbook({ sheets: { Sheet1: lastCells(130) } })],
    [
      "merged areas over one another",
      buildWorkbook({
        sheets: { Sheet1: lastCells(2) },
        merged: { Sheet1: Array.from({ length: 900 }, (_, at) => `A1:XFD${at + 200}`) },
      }),
    ],
  ])("a file with more cells than the page holds is refused in one sentence: %s", async (_why, bytes) => {
    const page = await openDesk("clean");
    await page.chooseFile("too-many.xlsx", bytes);
    await page.page
      .locator("#notice.refused")
      .getByText('"too-many.xlsx" spans more than 2000000 cells')
      .waitFor();
    expect(await page.page.locator("#workbook").inputValue()).toBe("clean");
  });

  test("counts that are formulas without saved values are read when they are worked out", async () => {
    const files = unzipSync(readFileSync("sample-workbooks/larkmoor-clean.xlsx"));
    const cordons = "xl/worksheets/sheet3.xml";
    const { I: heading } = firstRow(files, cordons);
    expect(heading).toBe("Live spurs");
    const counted = /(<c r="I\d+"[^>]*)><v>(\d+)<\/v>/g;
    const [before, page] = [strFromU8(files[cordons]), await openDesk("clean")];
    const formulas = before.replace(counted, "$1><f>$2+0</f>");
    expect(formulas.match(/<f>/g)!.length).toBeGreaterThan(2000);
    await page.openFile("sums.xlsx", zipSync({ ...files, [cordons]: strToU8(formulas) }));
    await page.check();
    expect(await page.findings()).toEqual([]);
  });

  test("areas far beyond the cells of a sheet are taken as far as the grid goes", async () => {
    const page = await openDesk("clean");
    const filled = `<row r="1"><c r="A1"><f t="array" ref="A1:XFD1048576">2+3</f><v>5</v></c></row>`;
    await page.openFile(
      "areas.xlsx",
      buildWorkbook({ sheets: { Sheet1: filled }, merged: { Sheet1: ["B3:XFD1048576"] } }),
    );
    expect(await page.shows("A1", /5/)).toMatch(/^5/);
  });
});

/** Rows of one number each, in the last column that a sheet has. */
function lastCells(rows: number): string {
  return Array.from(
    { length: rows },
    (_, at) => `<row r="${at + 1}"><c r="XFD${at + 1}"><v>1</v></c></row>`,
  ).join("");
}

/** A workbook of so many rows of ten numbers that are all different. */
function manyCells(rows: number): Uint8Array {
  const row = (_: unknown, index: number) =>
    `<row r="${index + 1}">${[..."ABCDEFGHIJ"].map((column, at) => `<c r="${column}${index + 1}"><v>${(index * 7919 + at * 104_729) % 1_000_003}</v></c>`).join("")}</row>`;
  return buildWorkbook({ sheets: { Sheet1: Array.from({ length: rows }, row).join("") } });
}

/** What the first row of a sheet says, by the letters of its columns. */
function firstRow(files: Unzipped, sheet: string): Readonly<Record<string, string>> {
  const texts = [...strFromU8(files["xl/sharedStrings.xml"]).matchAll(/<si><t[^>]*>([^<]*)/g)];
  const cells = strFromU8(files[sheet]).matchAll(/<c r="([A-Z]+)1"[^>]*><v>(\d+)/g);
  return Object.fromEntries([...cells].map(([, letters, at]) => [letters, texts[Number(at)][1]]));
}
