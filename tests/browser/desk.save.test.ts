import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { openWorkbookFile } from "../../src/workbook/file/openWorkbookFile";
import { hasValidator, openXmlFaults } from "../samples/openXmlFaults";
import { packageFaults } from "../samples/packageFaults";
import { openDesk } from "./openDesk";

const ORIGINAL = "sample-workbooks/larkmoor-mistakes.xlsx";

describe("saving a copy from the desk page", () => {
  const folder = mkdtempSync(path.join(tmpdir(), "cordonbook-copy-"));
  const copyPath = path.join(folder, "copy.xlsx");

  afterAll(() => rmSync(folder, { recursive: true }));

  test("what was typed, decided and written by the pane is in the file", async () => {
    const page = await openDesk("mistakes");
    await page.goToSheet("Blocks");
    await page.type("B2", "Frontenac");
    await page.type("U1", "typed beside the table");
    await page.type("U2", '=CORDON.NODEBUDGET(3,"30+10")');
    await page.type("U3", "=1+1=2");
    await page.type("U4", "2026-03-01");
    expect(await page.shows("U2", "50")).toBe("50");
    await page.check();
    await page.pane.locator("#write-findings").click();
    await page.page.locator("#grid").getByText("Findings", { exact: true }).waitFor();
    const [download] = await Promise.all([
      page.page.waitForEvent("download"),
      page.page.locator("#save-copy").click(),
    ]);
    expect(download.suggestedFilename()).toBe("larkmoor-mistakes (copy).xlsx");
    await download.saveAs(copyPath);
    await page.page.locator("#notice.done").waitFor();
    await page.picture("desk-saved-copy");

    const copy = await openWorkbookFile(copyPath);
    const blocks = await copy.readSheet("Blocks");
    const at = (row: number, column: number) =>
      [
        blocks.values[row - blocks.firstRow][column - blocks.firstColumn],
        blocks.formulaAt(row - blocks.firstRow, column - blocks.firstColumn),
      ] as const;
    expect(at(2, 2)).toEqual(["Frontenac", null]);
    expect(at(1, 21)).toEqual(["typed beside the table", null]);
    expect(at(2, 21)).toEqual([50, '=CORDON.NODEBUDGET(3,"30+10")']);
    expect(at(3, 21)).toEqual([true, "=1+1=2"]);
    // 1 March 2026 is day 46,082 of the 1900 system, shown by the number format of the cell's style.
    const parts = unzipSync(readFileSync(copyPath));
    const xml = (name: string) => strFromU8(parts[name]);
    const [, style, day] = /<c r="U4" s="(\d+)"[^>]*><v>([^<]*)<\/v>/.exec(xml("xl/worksheets/sheet2.xml"))!;
    const formats = xml("xl/styles.xml")
      .split("<cellXfs")[1]
      .match(/<xf [^>]*>/g)!;
    const [, format] = /numFmtId="(\d+)"/.exec(formats[Number(style)])!;
    expect(day).toBe("46082");
    expect(xml("xl/styles.xml")).toContain(`<numFmt numFmtId="${format}" formatCode="yyyy-mm-dd"`);
    const findings = await copy.readSheet("Findings");
    expect(findings.values.length).toBeGreaterThan(15);
    await copy.close();
  });

  test("sheets that nobody touched keep their bytes, and the file has no fault", async () => {
    const before = unzipSync(new Uint8Array(readFileSync(ORIGINAL)));
    const bytes = new Uint8Array(readFileSync(copyPath));
    const after = unzipSync(bytes);
    const changed = Object.keys(before).filter(
      (name) => Buffer.compare(Buffer.from(before[name]), Buffer.from(after[name] ?? [])) !== 0,
    );
    expect(changed.filter((name) => /^xl\/worksheets\/sheet\d+\.xml$/.test(name))).toHaveLength(1);
    expect(changed.filter((name) => /tables|theme|sharedStrings/.test(name))).toEqual([]);
    expect(packageFaults(bytes)).toEqual([]);
    expect(hasValidator ? await openXmlFaults(copyPath) : []).toEqual([]);
  });

  test("an untouched season is saved byte for byte, since every formula comes to what stands in the file", async () => {
    const page = await openDesk("clean");
    await page.goToSheet("Figures");
    await page.picture("desk-figures");
    const [download] = await Promise.all([
      page.page.waitForEvent("download"),
      page.page.locator("#save-copy").click(),
    ]);
    const untouched = path.join(folder, "untouched.xlsx");
    await download.saveAs(untouched);
    expect(
      Buffer.compare(readFileSync(untouched), readFileSync("sample-workbooks/larkmoor-clean.xlsx")),
    ).toBe(0);
  });

  test("what a copy will not hold is named in one sentence before, and a person can stop", async () => {
    const page = await openDesk("clean");
    await page.goTo("A1");
    await page.page.keyboard.press("Control+i");
    await page.page.locator("#save-copy").click();
    const asked = page.page.locator("#notice.asked");
    expect(await asked.locator("p").innerText()).toMatch(
      /^The copy will not hold: letters, colours and lines set here \([^)]+\)\.$/,
    );
    let downloads = 0;
    page.page.on("download", () => downloads++);
    await asked.getByText("Do not save").click();
    await asked.waitFor({ state: "detached" });
    expect(downloads).toBe(0);
    await page.page.locator("#save-copy").click();
    await Promise.all([page.page.waitForEvent("download"), asked.getByText("Save it all the same").click()]);
    await page.page.locator("#notice.done").waitFor();
  });

  test("a csv file is saved as a csv file, in its own way of writing", async () => {
    const page = await openDesk("clean");
    await page.openFile(
      "counts.csv",
      Buffer.from('Block;Row;Weight\r\n"North ""Bench""";01;3,50\r\nCreek;2;4\r\n'),
    );
    await page.type("C3", "4.25");
    await page.type("B4", "=1+2");
    await page.type("A4", "Home");
    expect(await page.shows("B4", "3")).toBe("3");
    await page.page.locator("#save-copy").click();
    const asked = page.page.locator("#notice.asked");
    await asked.getByText("The copy will not hold: formulas (B4; the copy holds what they show).").waitFor();
    const [download] = await Promise.all([
      page.page.waitForEvent("download"),
      asked.getByText("Save it all the same").click(),
    ]);
    expect(download.suggestedFilename()).toBe("counts (copy).csv");
    const saved = path.join(folder, "counts.csv");
    await download.saveAs(saved);
    expect(readFileSync(saved, "utf8")).toBe(
      'Block;Row;Weight\r\n"North ""Bench""";01;3,50\r\nCreek;2;4,25\r\nHome;3\r\n',
    );
  });

  test("of a csv file that two code pages read differently it is asked which is right", async () => {
    const page = await openDesk("clean");
    await page.openFile("juarez.csv", Buffer.from("Block,Row\nJu\u00a0rez,1\n", "latin1"));
    await page.page
      .locator("#notice")
      .getByText(
        "“Ju\u00a0rez” was read with a no-break space, as Windows writes it; in a file from DOS it would be “Juárez”",
      )
      .waitFor();
  });

  test("a file that cannot be read leaves the workbook as it is and is named", async () => {
    const page = await openDesk("clean");
    await page.type("H3", "typed");
    const [chooser] = await Promise.all([
      page.page.waitForEvent("filechooser"),
      page.page.locator("#top button").first().click(),
    ]);
    page.page.once("dialog", (dialog) => void dialog.accept());
    await chooser.setFiles({
      name: "broken.xlsx",
      mimeType: "application/octet-stream",
      buffer: Buffer.from("no workbook"),
    });
    await page.page.locator("#notice.refused").getByText("broken.xlsx").waitFor();
    expect(await page.shows("H3", "typed")).toBe("typed");
    await page.picture("desk-refused-file");
  });
});
