import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { unzipSync } from "fflate";
import * as XLSX from "@e965/xlsx";
import type { Finding } from "../../src/survey/checks/finding";
import { readSetAside } from "../../src/survey/checks/setAside";
import { keepAside } from "../../src/workbook/actions/setAside";
import { FileWorkbook } from "../../src/workbook/file/fileWorkbook";
import { run } from "../cli/testTerminal";
import { withExcelFlags } from "../workbook/file/withExcelFlags";
import { openDesk } from "./openDesk";
import { resultsOf } from "./resultsOf";

interface Checked {
  readonly findings: readonly (Finding & { cell: string })[];
  readonly setAside: readonly {
    readonly sheet: string;
    readonly cell: string;
    readonly reason: string;
  }[];
}

describe("what a workbook keeps, on the desk page", () => {
  const folder = mkdtempSync(path.join(tmpdir(), "cordonbook-kept-"));

  afterAll(() => rmSync(folder, { recursive: true }));

  const checked = async (bytes: Uint8Array) =>
    JSON.parse((await run(["check", "-", "--format", "json"], bytes)).out) as Checked;

  test("findings set aside, by us or in Excel, stay so, and one that is taken back is open in the copy", async () => {
    const season = await FileWorkbook.open(
      "season.xlsx",
      readFileSync("sample-workbooks/larkmoor-mistakes.xlsx"),
    );
    const { findings } = await checked(season.bytes());
    const inCells = findings.filter(({ cell }) => /^[A-Z]+\d+$/.test(cell));
    const [ofExcel, ours] = inCells.map(({ cell, ...finding }, index) => ({
      cell,
      finding: { ...finding, columnNumber: 1 },
      entry: { reason: `reason ${index}`, by: "MK", on: "2026-03-02" },
    }));
    await keepAside(season, ofExcel.finding, ofExcel.entry);
    const flags = await season.readFlags("setAside.");
    for (const key of flags.keys()) await season.writeFlag(key, undefined);
    const both = await FileWorkbook.open("season.xlsx", withExcelFlags(season.bytes(), flags));
    await keepAside(both, ours.finding, ours.entry);
    expect((await checked(both.bytes())).setAside.map(({ reason }) => reason)).toEqual([
      "reason 0",
      "reason 1",
    ]);

    const page = await openDesk("clean");
    await page.openFile("season.xlsx", both.bytes());
    await page.check();
    expect(await page.pane.locator("#check-result").innerText()).toContain("2 are set aside");
    const places = [ofExcel, ours].map(({ finding, cell }) => `${finding.sheet} ${cell}`);
    const open = (await page.findings()).map(({ place }) => place);
    expect(open.filter((place) => places.includes(place))).toEqual([]);
    const group = page.pane.locator('[data-key="aside"]');
    await group.locator("button#control").click();
    await group.locator(".jump").first().waitFor();
    const asides = await group.locator(".jump").allInnerTexts();
    expect(asides.map((place) => place.trim()).sort()).toEqual([...places].sort());
    const item = group.locator("li", { hasText: "reason 0" });
    await item.locator("fluent-button", { hasText: "Take back" }).click();
    await page.pane.locator("#check-result", { hasText: "1 are set aside" }).waitFor();
    const [download] = await Promise.all([
      page.page.waitForEvent("download"),
      page.page.locator("#save-copy").click(),
    ]);
    const copyPath = path.join(folder, "copy.xlsx");
    await download.saveAs(copyPath);

    const copy = await FileWorkbook.open("copy.xlsx", readFileSync(copyPath));
    const kept = [...(await copy.readFlags("setAside."))].flatMap(([, text]) => readSetAside(text));
    expect(kept.map(({ reason }) => reason)).toEqual(["reason 1"]);
    expect((await checked(copy.bytes())).setAside.map(({ reason }) => reason)).toEqual(["reason 1"]);
  });

  test("what was typed is there again after a reload, told so, and can be discarded", async () => {
    const page = await openDesk("mistakes");
    const { page: tab, pane } = page;
    const saved = async (name: string) => {
      const [download] = await Promise.all([tab.waitForEvent("download"), tab.locator("#save-copy").click()]);
      await download.saveAs(path.join(folder, name));
      await tab.locator("#notice.done").waitFor();
      await tab.locator("#notice button").click();
      return unzipSync(new Uint8Array(readFileSync(path.join(folder, name))));
    };
    const original = await page.read("A1");
    await page.check();
    await pane.locator("#write-findings").click();
    await tab.locator("#grid").getByText("Findings", { exact: true }).waitFor();
    await page.goToSheet("About this season");
    await page.type("H3", "typed");
    await page.type("H4", "=2+3");
    expect(await page.shows("H4", "5")).toBe("5");
    await page.goToSheet("Bud cuts");
    await page.goTo("A3");
    await tab.keyboard.press("Delete");
    const before = await saved("before.xlsx");
    await tab.reload();
    await page.isReady();
    const told = tab.locator("#notice.asked");
    expect(await told.locator("p").innerText()).toMatch(
      /^Larkmoor Bend \(invented\): season with mistakes is as you left it on this machine, \w+ \d+, \d{4}, .*\.$/,
    );
    expect(await page.brokenRules()).toEqual([]);
    await page.picture("desk-restored");
    const beside = await tab.context().newPage();
    await beside.goto(tab.url());
    await beside.locator("#grid:not(.waiting) canvas").first().waitFor();
    await beside.locator("#pane > *").first().waitFor();
    expect(await beside.locator("#notice").count()).toBe(0);
    await beside.close();
    await told.getByText("Go on with it").click();
    const after = await saved("after.xlsx");
    expect(Object.keys(after).sort()).toEqual(Object.keys(before).sort());
    for (const [part, bytes] of Object.entries(before))
      expect([part, Buffer.from(after[part]).toString("latin1")]).toEqual([
        part,
        Buffer.from(bytes).toString("latin1"),
      ]);
    await page.goToSheet("About this season");
    expect(await page.shows("H3", "typed")).toBe("typed");
    expect(await page.read("H4")).toBe("5");
    await page.type("H5", "more");
    expect(await page.shows("H5", "more")).toBe("more");

    await tab.reload();
    await page.isReady();
    await told.getByText("Discard what was typed").click();
    await told.waitFor({ state: "detached" });
    await page.isReady();
    expect(await page.shows("H3", "")).toBe("");
    expect(await page.read("A1")).toBe(original);
    await tab.reload();
    await page.isReady();
    expect(await tab.locator("#notice").count()).toBe(0);
  });

  test("heads of one's own and the unit of a length without one are told once, for pane and command line", async () => {
    const rows = [1, 2, 3, 4, 5].flatMap((vine) => [
      ["North Bench", 1, vine, "left", "A", 1, vine === 1 ? 75 : 90, vine === 1 ? 5 : 6, 5],
      ["North Bench", 1, vine, "right", "B", 2, 90, 6, 5],
    ]);
    const told = { block: "Where", length: "Span", liveSpurs: "Alive" };
    const book = XLSX.utils.book_new();
    const sheet = (name: string, lines: unknown[][]) =>
      XLSX.utils.book_append_sheet(book, XLSX.utils.aoa_to_sheet(lines), name);
    sheet("Blocks", [
      ["Block", "Training", "Row spacing (ft)", "Vine spacing (ft)"],
      ["North Bench", "high wire", 9, 8],
    ]);
    sheet("Tally", [
      ["Where", "Row", "Vine", "Side", "Cordon", "Trunk", "Span", "Positions", "Alive"],
      ...rows,
    ]);
    const page = await openDesk("clean", { catchPrints: true });
    await page.openFile("tally.xlsx", XLSX.write(book, { type: "buffer", bookType: "xlsx" }) as Buffer);
    const { pane } = page;
    const choose = async (list: string, value: string) => {
      await pane.locator(`#${list} button`).click();
      await pane.locator(`#${list} fluent-option[value="${value}"]`).click();
    };
    await page.check();
    await pane.locator("fluent-button", { hasText: "Choose sheets" }).first().click();
    await pane.locator("#own-heads").click();
    await pane.locator("#heads-title").waitFor();
    await choose("heads-sheet", "Tally");
    for (const [column, head] of Object.entries(told)) await choose(`heads-cordons-${column}`, head);
    // 90 cm over 6 places are 15 cm a spur; 90 ft, in, m or mm are no cordon with such places: cm stands first.
    await pane.getByText("Likely cm: the middle value 90").waitFor();
    expect(await pane.locator("#heads-unit-length fluent-option").allInnerTexts()).toEqual([
      ...["cm", "ft", "in", "m", "mm"],
    ]);
    expect(await page.brokenRules()).toEqual([]);
    await page.picture("desk-heads");
    await pane.locator("#keep-heads").click();
    await pane.getByText("Tally is now read with your own heads").waitFor();
    await page.check();
    expect(await pane.locator("#check-result").innerText()).toContain("Nothing to object to in 11 rows");
    await page.goToPage("gaps");
    await resultsOf(pane, "gaps");
    // 59 places with 50 live spurs: 9 of 59 are empty, 15 %.
    await pane.locator("#gaps-result", { hasText: "9 of 59" }).waitFor();
    await page.goToPage("crew");
    await resultsOf(pane, "crew");
    await pane.locator("#print-cards").click();
    // 8 ft less 10 cm between neighbours leave 116.92 cm a side: 41.92 cm (16.5 in) beyond 75 cm, 26.92 cm (10.6 in) beyond 90 cm.
    const paper = await page.printed();
    expect(paper).toContain("extend A 16.5 in");
    expect(paper).toContain("extend B 10.6 in");
    const [download] = await Promise.all([
      page.page.waitForEvent("download"),
      page.page.locator("#save-copy").click(),
    ]);
    const saved = path.join(folder, "tally.xlsx");
    await download.saveAs(saved);
    const { out, told: said } = await run(["rows", saved]);
    // One block under 4 heads and 10 cordons under 9, with no question left.
    expect(said).toBe(
      "Read: 1 file, 2 sheets, 2 tables, 13 columns, 11 rows.\nWorked out from all 10 rows of the Cordons sheets.",
    );
    const lengths = out.split("\n").map((line) => line.split(",")[9]);
    expect(lengths.slice(0, 4)).toEqual(["length", "0.75", "0.9", "0.9"]);
    const cards = await run(["cards", saved]);
    expect(cards.out).toContain("Extend A by 16.5 in");
  });
});
