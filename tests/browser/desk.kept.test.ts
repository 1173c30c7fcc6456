import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Finding } from "../../src/survey/checks/finding";
import { readSetAside } from "../../src/survey/checks/setAside";
import { keepAside } from "../../src/workbook/actions/setAside";
import { FileWorkbook } from "../../src/workbook/file/fileWorkbook";
import { run } from "../cli/testTerminal";
import { withExcelFlags } from "../workbook/file/withExcelFlags";
import { openDesk } from "./openDesk";

interface Checked {
  readonly findings: readonly (Finding & { cell: string })[];
  readonly setAside: readonly { readonly sheet: string; readonly cell: string; readonly reason: string }[];
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
});
