import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { unzipSync } from "fflate";
import Papa from "papaparse";
import { allFindings } from "../../src/survey/checks/checkSeason";
import { decideSeason } from "../../src/survey/decide/decideSeason";
import { gapsOfSeason } from "../../src/survey/season/gapsOfSeason";
import { blockOutlook } from "../../src/survey/crop/blockOutlook";
import { outlookInputs } from "../../src/survey/crop/outlookInputs";
import { THINNING_GROUPS } from "../../src/texts/outlook";
import { readSeason } from "../../src/survey/reading/readSeason";
import { serialOf } from "../../src/survey/reading/serialDate";
import { stayingCordons } from "../../src/survey/decide/stayingCordons";
import type { Season } from "../../src/survey/season/season";
import { seasonOf } from "../taskpane/heldSeasonOf";
import { FileWorkbook } from "../../src/workbook/file/fileWorkbook";
import { READ_LIMITS } from "../../src/workbook/file/readLimits";
import { openWorkbookFile } from "../../src/workbook/file/openWorkbookFile";
import { MemoryWorkbook, type MemoryCell } from "../workbook/memory/memoryWorkbook";
import { packageFaults } from "../samples/packageFaults";
import { foreignUnits, inMetric } from "../survey/unitWords";
import { writeXlsx } from "../../sample-workbooks/make/writeXlsx";
import { LANGUAGES } from "../../src/texts/language";
import type { CellValue } from "../../src/survey/sheets/cell";
import { shownFinding } from "./shownFinding";
import { run } from "./testTerminal";

const SAMPLES = join(__dirname, "../../sample-workbooks");
const CLEAN = join(SAMPLES, "larkmoor-clean.xlsx");
const MISTAKES = join(SAMPLES, "larkmoor-mistakes.xlsx");

jest.setTimeout(60000);

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "cordonbook-results-"));
});
afterEach(() => rmSync(folder, { recursive: true }));
const season = (name: string): string => {
  const path = join(folder, "season.xlsx");
  copyFileSync(join(SAMPLES, name), path);
  return path;
};

/** The survey as the pane reads it: through a workbook host, cell by cell, without the file reader's own areas. */
async function seasonOfPane(path: string): Promise<Season> {
  const book = await openWorkbookFile(path);
  const sheets: Record<string, MemoryCell[][]> = {};
  for (const sheet of book.sheetNames) {
    const area = await book.readSheet(sheet);
    sheets[sheet] = area.values.map((row, r) =>
      row.map((value, c) => {
        const formula = area.formulaAt(r, c);
        return formula === null ? value : { formula, value };
      }),
    );
  }
  await book.close();
  return seasonOf(new MemoryWorkbook(sheets));
}

describe("a metric workbook", () => {
  test.each(LANGUAGES)(
    "reads no feet, pounds or acres in what commands print and cards say in %s",
    async (language) => {
      const book = await openWorkbookFile(MISTAKES);
      const sheets: Record<string, CellValue[][]> = {};
      for (const sheet of book.sheetNames)
        sheets[sheet] = (await book.readSheet(sheet)).values.map((row) => [...row]);
      await book.close();
      const metric = Object.entries(inMetric(sheets));
      const write = async (name: string, isKept: (sheet: string, row: readonly unknown[]) => boolean) => {
        const rows = metric.map(([name, values]) => ({
          name,
          rows: values
            .filter((row, at) => at === 0 || isKept(name, row))
            .map((row) => row.map((cell) => (typeof cell === "object" ? null : cell))),
        }));
        writeFileSync(join(folder, name), await writeXlsx({ sheets: rows }));
        return join(folder, name);
      };
      const whole = await write("whole.xlsx", () => true);
      const twoRows = await write(
        "two-rows.xlsx",
        (sheet, [, row]) => !/Cordons|Vines/.test(sheet) || Number(row) <= 2,
      );
      const cards = join(folder, "cards.html");
      const found: string[] = [];
      for (const [name, path, ...options] of [
        ["check", whole],
        ["choose", twoRows],
        ["gaps", twoRows],
        ["crop", twoRows],
        ["crop", twoRows, "--format", "csv"],
        ["cards", twoRows],
        ["cards", twoRows, "--html", cards],
      ]) {
        const { out, told } = await run([name, path, ...options, "--language", language]);
        found.push(...foreignUnits(`${out}\n${told}`, "metric").map((line) => `${name}: ${line}`));
      }
      const printed = readFileSync(cards, "utf8")
        .replace(/<style[^]*?<\/style>/g, "")
        .replace(/<[^>]*>/g, "\n");
      found.push(...foreignUnits(printed, "metric").map((line) => `printed cards: ${line}`));
      expect(found).toEqual([]);
    },
  );
});

describe("results are the same to the bit as in the pane", () => {
  test("findings", async () => {
    const season = await seasonOfPane(MISTAKES);
    const expected = allFindings(season, { today: serialOf(2026, 3, 31) }).map(shownFinding);
    const { findings } = JSON.parse((await run(["check", MISTAKES, "--format", "json"])).out) as {
      findings: Record<string, unknown>[];
    };
    expect(findings.map(({ cell: _cell, file: _file, ...finding }) => finding)).toEqual(expected);
  });

  test("the choice of cordons", async () => {
    const expected = [...decideSeason(await seasonOfPane(CLEAN))].map(({ block, row, vine, decision }) => ({
      block,
      row,
      vine,
      worth: decision.worth,
      cordons: decision.cordons.map(({ cordon, verdict, score }) => ({
        cordon,
        verdict,
        score: score.score,
      })),
    }));
    const { vines } = JSON.parse((await run(["choose", CLEAN, "--format", "json"])).out) as {
      vines: {
        block: string;
        row: number;
        vine: number;
        worth: number;
        cordons: Record<string, unknown>[];
      }[];
    };
    expect(
      vines.map(({ block, row, vine, worth, cordons }) => ({
        block,
        row,
        vine,
        worth,
        cordons: cordons.map(({ cordon, verdict, score }) => ({ cordon, verdict, score })),
      })),
    ).toEqual(expected);
    expect(vines.length).toBeGreaterThan(500);
  });

  test.each(["all", "staying"])("gaps of %s cordons", async (of) => {
    const season = await seasonOfPane(CLEAN);
    const expected =
      of === "all" ? gapsOfSeason(season) : gapsOfSeason(season, stayingCordons(decideSeason(season)));
    const { out } = await run(["gaps", CLEAN, "--of", of, "--format", "json"]);
    const { reading, ...gaps } = JSON.parse(out) as { reading: { rowsUsed: unknown } };
    expect(gaps).toEqual(JSON.parse(JSON.stringify(expected)));
    expect(reading.rowsUsed).toEqual(expected.rowsUsed);
  });
});

describe("crop", () => {
  test("is the pane's to the bit, and fits into the workbook", async () => {
    const counted = await seasonOfPane(CLEAN);
    const expected = outlookInputs(counted, { decided: [...decideSeason(counted)] }).map((inputs) =>
      blockOutlook(
        inputs,
        counted.settings,
        THINNING_GROUPS.map(({ en }) => en),
      ),
    );
    const { exitCode, out } = await run(["crop", CLEAN, "--format", "json"]);
    expect(exitCode).toBe(0);
    expect((JSON.parse(out) as { blocks: unknown }).blocks).toEqual(JSON.parse(JSON.stringify(expected)));
    const path = season("larkmoor-clean.xlsx");
    await run(["crop", path, "--in-place"]);
    expect(packageFaults(readFileSync(path))).toEqual([]);
    const text = await run(["crop", path]);
    expect(text.out).toContain("North Bench");
    expect(text.out).not.toContain("No block was found");
  });

  test("says what is missing where no sheet lists a block or its vines, as the pane does", async () => {
    const path = join(folder, "cordons-alone.csv");
    const head = "Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs";
    writeFileSync(path, `${head}\nNorth Bench,1,1,left,A,1,3,8,7\n`);
    expect((await run(["crop", path])).out).toContain(
      "No block was found. Next step: list your blocks on a sheet",
    );
  });
});

describe("choose, gaps and cards", () => {
  test("choose says with its exit code whether somebody must look", async () => {
    const { exitCode, out } = await run(["choose", CLEAN]);
    expect(exitCode).toBe(out.includes("  ask  ") ? 1 : 0);
    expect(out).toMatch(/Keep \w on the (left|right)/);
  });

  test("gaps add up to the counts of the sheet", async () => {
    const { data } = Papa.parse<Record<string, string>>((await run(["gaps", CLEAN, "--format", "csv"])).out, {
      header: true,
    });
    const book = await openWorkbookFile(CLEAN);
    const cordons = readSeason([await book.readSheet("Cordons")]).tables("cordons")[0];
    await book.close();
    const sum = (values: Iterable<number>) => [...values].reduce((total, value) => total + value, 0);
    expect(sum(data.map((row) => Number(row.Positions)))).toBe(sum(cordons.column("positions")!.numbers));
    expect(sum(data.map((row) => Number(row["Live spurs"])))).toBe(sum(cordons.column("liveSpurs")!.numbers));
    expect(data).toHaveLength(21);
  });

  test("cards go row by row and name the cuts", async () => {
    const { out } = await run(["cards", CLEAN]);
    expect(out).toContain("Block Creek Side, Row 3");
    expect(out).toMatch(/ {2}Vine \d+: .*Cut \w on the/);
    expect(out).toMatch(
      /\nPruning: [\d.]+ hours left, .*\nIn this order: Schoolhouse, North Bench, Creek Side\./,
    );
  });

  test("cards end with the thinning of shoots where more were counted than the wire carries", async () => {
    const blocks = join(folder, "Blocks.csv");
    const vines = join(folder, "Vines.csv");
    const cordons = join(folder, "Cordons.csv");
    writeFileSync(blocks, "Block,Vine spacing (ft),Row spacing (ft),Vine places\nMill Lot,8,9,600\n");
    writeFileSync(vines, "Block,Row,Vine,Status,Shoots\nMill Lot,1,1,bearing,50\nMill Lot,1,2,bearing,60\n");
    writeFileSync(
      cordons,
      "Block,Row,Vine,Side,Cordon,Trunk,Positions,Live spurs\nMill Lot,1,1,left,A,1,8,7\nMill Lot,1,1,right,B,2,8,7\n",
    );
    const { out } = await run(["cards", cordons, vines, blocks]);
    // 6 shoots a foot on 8 ft leave 48 of 55: 600 vines x 2 min = 20 h, of a crew of 4 at 6 h 0.83 days
    expect(out).toContain(
      "After pruning, shoots are thinned from May 20, 2026 on: 20 hours, 0.8 days of the whole crew (Mill Lot 20 h).",
    );
    const { work } = JSON.parse((await run(["cards", cordons, vines, blocks, "--format", "json"])).out) as {
      work: { thinning: { hours: number } };
    };
    expect(work.thinning.hours).toBeCloseTo(20, 9);
  });

  test("cards become a page in which text from a cell stays text", async () => {
    const path = join(folder, "counts.csv");
    const header = "Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs,Note";
    writeFileSync(path, `${header}\n<img src=x onerror=alert(1)>,1,1,left,A,1,3,8,8,<script>1</script>\n`);
    const page = join(folder, "cards.html");
    expect((await run(["cards", path, "--html", page, "--paper", "A4"])).exitCode).toBe(0);
    const html = readFileSync(page, "utf8");
    expect(html).toContain("&lt;img");
    expect(html).not.toMatch(/<img|<script/);
    expect((await run(["cards", path, "--html", page])).told).toMatch(/already/);
  });

  test("cards printed and noted in the workbook are printed again only for the vine that changed", async () => {
    const path = season("larkmoor-clean.xlsx");
    const page = join(folder, "cards.html");
    const printing = await run(["cards", path, "--html", page, "--in-place"]);
    expect(printing.told).toContain("season.xlsx");
    expect(readFileSync(page, "utf8")).toMatch(/Still open in North Bench: .*vines decided but not accepted/);
    const none = join(folder, "none.html");
    const same = await run(["cards", path, "--html", none, "--changed"]);
    expect(same.told).toContain("Nothing changed since the last print: the cards in hand hold.");
    expect(readdirSync(folder)).not.toContain("none.html");

    const book = await FileWorkbook.open("season.xlsx", readFileSync(path), READ_LIMITS);
    const { values } = await book.readSheet("Vines");
    const status = values.findIndex((row) => row.includes("Status"));
    const at = values.findIndex((row) => row[0] === "North Bench" && row[1] === 2 && row[2] === 5);
    await book.writeCells("Vines", [
      { row: at + 1, column: values[status].indexOf("Status") + 1, value: "missing" },
    ]);
    writeFileSync(path, book.bytes());
    const changes = join(folder, "changes.html");
    const again = await run(["cards", path, "--html", changes, "--changed"]);
    expect(again.told).toContain("Void on the card of North Bench, row 2, printed before: 5.");
    const html = readFileSync(changes, "utf8");
    expect(html.match(/<td class="vine">\d+/g)).toEqual(['<td class="vine">5']);
    expect(html).toContain("only what changed");
    expect(html).toContain("Void on the card of North Bench, row 2, printed before: 5.");
    const told = JSON.parse((await run(["cards", path, "--changed", "--format", "json"])).out);
    expect(told.cards.map(({ row, vine }: { row: number; vine: number }) => [row, vine])).toEqual([[2, 5]]);
  });

  test("the crop is said of vines and a block without cordons", async () => {
    const [blocks, vines] = [join(folder, "blocks.csv"), join(folder, "clusters.csv")];
    writeFileSync(
      blocks,
      "Block,Rows,Vines,Row spacing (ft),Vine spacing (ft),Training system,Cluster weight (lb)\nNorth,1,3,9,6,high wire,0.2\n",
    );
    writeFileSync(
      vines,
      "Block,Row,Vine,Status,Clusters\nNorth,1,1,bearing,55\nNorth,1,2,bearing,62\nNorth,1,3,bearing,51\n",
    );
    const { exitCode, out, told } = await run(["crop", blocks, vines, "--format", "json"]);
    expect([exitCode, told]).toEqual([0, expect.not.stringMatching(/no cordons/)]);
    const { blocks: found } = JSON.parse(out) as { blocks: readonly { inputs: { block: string } }[] };
    expect(found.map(({ inputs }) => inputs.block)).toEqual(["North"]);
  });

  test("a farm without cordons is refused", async () => {
    const path = join(folder, "vines.csv");
    writeFileSync(path, "Block,Row,Vine,Status\nNorth,1,1,bearing\n");
    for (const command of ["choose", "gaps", "cards"])
      expect(await run([command, path])).toMatchObject({
        exitCode: 2,
        told: expect.stringMatching(/There are no cordons/),
      });
  });
});

describe("results are kept", () => {
  test("in a copy beside the file, which stays as it is", async () => {
    const path = season("larkmoor-mistakes.xlsx");
    const before = readFileSync(path);
    const { exitCode, told } = await run(["check", path, "--save"]);
    expect(exitCode).toBe(1);
    const copy = join(folder, "season-findings.xlsx");
    expect(told.split("\n")).toEqual([
      expect.stringMatching(/^Cordons: 1 .*day or the month first/),
      expect.stringContaining("--heads FILE.json"),
      `Saved as ${copy}`,
    ]);
    expect(readFileSync(path).equals(before)).toBe(true);
    const workbook = await FileWorkbook.open("season-findings.xlsx", readFileSync(copy));
    expect(await workbook.isOwnSheet("Findings")).toBe(true);
    expect(packageFaults(readFileSync(copy))).toEqual([]);
    expect(Buffer.from(unzipSync(readFileSync(copy))["xl/worksheets/sheet3.xml"]).toString()).toContain(
      "Cordonbook wrong",
    );
    expect(await run(["check", path, "--save"])).toMatchObject({
      exitCode: 2,
      told: expect.stringContaining("already"),
    });
  });

  test("in the workbook itself after a backup, and again", async () => {
    const path = season("larkmoor-mistakes.xlsx");
    const before = readFileSync(path);
    const first = await run(["check", path, "--in-place"]);
    expect(first.told).toMatch(/as it was before: season\.backup-\d+T\d+Z\.xlsx/);
    const [backup] = readdirSync(folder).filter((name) => name.includes("backup"));
    expect(readFileSync(join(folder, backup)).equals(before)).toBe(true);
    await run(["gaps", path, "--in-place"]);
    await run(["choose", path, "--in-place"]);
    await run(["cards", path, "--in-place"]);
    const workbook = await FileWorkbook.open("season.xlsx", readFileSync(path));
    expect(await workbook.sheetNames()).toEqual(
      expect.arrayContaining(["Cordons", "Findings", "Row gaps", "Gap map", "Cordon choice", "Crew cards"]),
    );
    expect(packageFaults(readFileSync(path))).toEqual([]);
    expect((await run(["check", path])).out).toBe(first.out);
  });

  test("in a workbook of their own for csv files", async () => {
    const path = join(folder, "counts.csv");
    writeFileSync(
      path,
      "Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs\n=HYPERLINK(1),1,1,left,A,1,3,8,9\n",
    );
    const { told } = await run(["check", path, "--out", join(folder, "result.xlsx")]);
    expect(told).toContain("Saved as");
    const workbook = await FileWorkbook.open("result.xlsx", readFileSync(join(folder, "result.xlsx")));
    expect(await workbook.sheetNames()).toEqual(["About", "Findings"]);
    const findings = await workbook.readSheet("Findings");
    expect(findings.values.flat()).toContain("=HYPERLINK(1)");
    findings.values.forEach((row, r) => row.forEach((_, c) => expect(findings.formulaAt(r, c)).toBeNull()));
    expect(packageFaults(readFileSync(join(folder, "result.xlsx")))).toEqual([]);
  });

  test("not at all where that is not safe", async () => {
    const path = season("larkmoor-clean.xlsx");
    writeFileSync(join(folder, "~$season.xlsx"), "");
    const before = readFileSync(path);
    expect(await run(["gaps", path, "--in-place"])).toMatchObject({
      exitCode: 2,
      told: expect.stringContaining("is open in another program"),
    });
    expect(readFileSync(path).equals(before)).toBe(true);
    expect(await run(["gaps", path, path, "--in-place"])).toMatchObject({ exitCode: 2 });
    expect(readdirSync(folder).sort()).toEqual(["season.xlsx", "~$season.xlsx"].sort());
  });
});

describe("new", () => {
  test.each(["US", "metric"])(
    "makes an empty %s workbook for a farm and never writes over one",
    async (units) => {
      const path = join(folder, "2027.xlsx");
      expect((await run(["new", path, "--farm", "=Our & own <farm>", "--units", units])).exitCode).toBe(0);
      const book = await openWorkbookFile(path);
      expect((await book.readSheet(book.sheetNames[0])).values[0][0]).toBe("=Our & own <farm>");
      expect((await book.readSheet("Cordons")).values[0]).toContain(
        units === "US" ? "Length (ft)" : "Length (m)",
      );
      await book.close();
      expect(packageFaults(readFileSync(path))).toEqual([]);
      const checked = await run(["check", path]);
      expect(checked.exitCode).toBe(2);
      expect(checked.told).toContain(`There are heads but no rows in ${path}: nothing was checked.`);
      expect((await run(["new", path])).told).toMatch(/already/);
      expect((await run(["new", join(folder, "2027.csv")])).told).toMatch(/must end in \.xlsx/);
    },
  );
});
