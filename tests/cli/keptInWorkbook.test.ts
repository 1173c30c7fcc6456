import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import Papa from "papaparse";
import type { CellValue } from "../../src/survey/sheets/cell";
import { allFindings } from "../../src/survey/checks/checkSeason";
import { serialOf } from "../../src/survey/reading/serialDate";
import { sortFindings } from "../../src/survey/checks/setAside";
import { seasonOf } from "../taskpane/heldSeasonOf";
import { keepHeads } from "../../src/workbook/actions/keepAnswers";
import type { ReadingAnswers } from "../../src/survey/reading/readingAccount";
import { keepAside, readAside } from "../../src/workbook/actions/setAside";
import { emptyWorkbook } from "../../src/workbook/file/emptyWorkbook";
import { FileWorkbook } from "../../src/workbook/file/fileWorkbook";
import type { SurveyWorkbook } from "../../src/workbook/surveyWorkbook";
import { withExcelFlags } from "../workbook/file/withExcelFlags";
import { shownFinding } from "./shownFinding";
import { run } from "./testTerminal";
import { CORDON_HEADS } from "../survey/cordonHeads";

jest.setTimeout(60000);

const MISTAKES = readFileSync(join(__dirname, "../../sample-workbooks/larkmoor-mistakes.xlsx"));
const TODAY = serialOf(2026, 3, 31)!;

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "cordonbook-kept-"));
});
afterEach(() => rmSync(folder, { recursive: true }));
const file = (name: string, bytes: Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  return path;
};

/** What the pane shows of a workbook: open findings, and those set aside with their entries. */
async function inPane(workbook: SurveyWorkbook) {
  const season = await seasonOf(workbook);
  return sortFindings(allFindings(season, { today: TODAY }), await readAside(workbook));
}

interface Listed {
  readonly file: string;
  readonly sheet: string;
  readonly row: number;
  readonly code: string;
  readonly cell: string;
}
interface Checked {
  readonly counts: Record<string, number>;
  readonly findings: readonly Listed[];
  readonly setAside: readonly (Listed & { reason: string; by: string; on: string })[];
}
const asJson = async (...words: string[]) => {
  const { exitCode, out } = await run(["check", ...words, "--format", "json"]);
  return { exitCode, ...(JSON.parse(out) as Checked) };
};
const withoutPlace = ({ cell: _cell, file: _file, ...rest }: Listed) => rest;

/** The season with mistakes in which a person renamed a head, said what it means, and set four findings aside. */
async function seasonOfAPerson(): Promise<FileWorkbook> {
  const workbook = await FileWorkbook.open("season.xlsx", MISTAKES);
  const { values, firstRow } = await workbook.readSheet("Cordons");
  const headerIndex = values.findIndex((row) => row.includes("Live spurs"));
  const column = values[headerIndex].indexOf("Live spurs") + 1;
  await workbook.writeCells("Cordons", [{ row: firstRow + headerIndex, column, value: "Stubs that live" }]);
  await keepHeads(
    workbook,
    "Cordons",
    { heads: [{ sheet: "Cordons", shape: "cordons", columns: { "Stubs that live": "liveSpurs" } }] },
    "en",
  );
  const { open } = await inPane(workbook);
  for (const [index, finding] of open.filter((_, i) => i % 5 === 0).entries())
    await keepAside(workbook, finding, { reason: `seen on the vine ${index}`, by: "MK", on: "2026-03-02" });
  return workbook;
}

describe("what a person set aside and mapped in the pane", () => {
  test.each(["our own part", "the part of Excel"])(
    "counts the same on the command line, from %s",
    async (where) => {
      const workbook = await seasonOfAPerson();
      const pane = await inPane(workbook);
      expect(pane.aside.length).toBeGreaterThan(3);
      expect(pane.open.some(({ column }) => column === "Stubs that live")).toBe(true);
      let bytes = workbook.bytes();
      if (where === "the part of Excel") {
        const flags = await workbook.readFlags("");
        for (const key of flags.keys()) await workbook.writeFlag(key, undefined);
        expect([...(await workbook.readFlags(""))]).toEqual([]);
        bytes = withExcelFlags(workbook.bytes(), flags);
      }
      const { exitCode, counts, findings, setAside } = await asJson(file("season.xlsx", bytes));
      expect(exitCode).toBe(1);
      expect(findings.map(withoutPlace)).toEqual(pane.open.map(shownFinding));
      expect(setAside.map(withoutPlace)).toEqual(
        pane.aside.map(({ finding, entry: { reason, by, on } }) => ({
          ...shownFinding(finding),
          reason,
          by,
          on,
        })),
      );
      expect(counts.wrong + counts.ask + counts.note).toBe(pane.open.length);
    },
  );

  test("is read by the commands beside check too", async () => {
    const path = file("season.xlsx", (await seasonOfAPerson()).bytes());
    const plain = file("plain.xlsx", MISTAKES);
    for (const command of ["gaps", "choose", "crop", "cards"]) {
      const [mapped, usual] = [await run([command, path]), await run([command, plain])];
      expect(mapped).toEqual(usual);
    }
    const rowsOf = async (name: string) =>
      Papa.parse<Record<string, string>>((await run(["rows", name])).out, { header: true }).data.map(
        ({ file: _file, ...row }) => row,
      );
    expect(await rowsOf(path)).toEqual(await rowsOf(plain));
  });
});

const HEAD = [...CORDON_HEADS];
const OWN_HEAD = ["Field", "Line", "Plant", "Arm", "Name", "Stem", "Span (ft)", "Knots", "Stubs"];
const OWN_HEADS: ReadingAnswers = {
  heads: [
    {
      sheet: "Tally",
      shape: "cordons",
      columns: {
        Field: "block",
        Line: "row",
        Plant: "vine",
        Arm: "side",
        Name: "cordon",
        Stem: "trunk",
        "Span (ft)": "length",
        Knots: "positions",
        Stubs: "liveSpurs",
      },
    },
  ],
};

/** A workbook with one sheet of counts in which each cordon listed has more live spurs than positions. */
async function counts(sheet: string, head: readonly string[], block: string, vines: readonly number[]) {
  const workbook = await FileWorkbook.open("counts.xlsx", emptyWorkbook(sheet));
  const rows: CellValue[][] = [
    [...head],
    ...vines.map((vine): CellValue[] => [block, 1, vine, "left", "A", 1, 3.5, 7, 9]),
  ];
  await workbook.writeCells(
    sheet,
    rows.flatMap((row, r) =>
      row.map((value, c) => ({ row: r + 1, column: c + 1, value: value as string | number })),
    ),
  );
  return workbook;
}

async function setVineAside(workbook: FileWorkbook, vine: number) {
  const { open } = await inPane(workbook);
  const finding = open.find(({ code, facts }) => code === "spursAbovePositions" && facts.vine === vine)!;
  await keepAside(workbook, finding, { reason: "two spurs a place", by: "JT", on: "2026-02-01" });
}

describe("several files as one farm", () => {
  test("hold their findings against their own entries, and read by their own heads", async () => {
    const north = await counts("Tally", OWN_HEAD, "North Bench", [1, 2, 3]);
    await keepHeads(north, "Tally", OWN_HEADS, "en");
    await setVineAside(north, 2);
    const creek = await counts("Tally", OWN_HEAD, "Creek Side", [1, 2, 3]);
    await keepHeads(creek, "Tally", OWN_HEADS, "en");
    await setVineAside(creek, 3);
    const paths = [file("north.xlsx", north.bytes()), file("creek.xlsx", creek.bytes())];
    const { findings, setAside } = await asJson(...paths);
    const places = (listed: readonly Listed[]) =>
      listed.map((finding) => `${finding.file} ${finding.sheet} ${finding.row} ${finding.code}`);
    expect(places(setAside)).toEqual([
      "north.xlsx Tally 3 spursAbovePositions",
      "creek.xlsx Tally 4 spursAbovePositions",
    ]);
    expect(places(findings).filter((place) => place.endsWith("spursAbovePositions"))).toEqual([
      "north.xlsx Tally 2 spursAbovePositions",
      "north.xlsx Tally 4 spursAbovePositions",
      "creek.xlsx Tally 2 spursAbovePositions",
      "creek.xlsx Tally 3 spursAbovePositions",
    ]);
  });

  test("of one name in two folders stay apart", async () => {
    const paths = ["north", "creek"].map((name) => join(folder, name));
    for (const path of paths) mkdirSync(path);
    const north = await counts("Cordons", HEAD, "North Bench", [1, 2]);
    await setVineAside(north, 1);
    const files = [
      file("north/season.xlsx", north.bytes()),
      file("creek/season.xlsx", (await counts("Cordons", HEAD, "Creek Side", [1, 2])).bytes()),
    ];
    const { findings, setAside } = await asJson(...paths);
    const above = (listed: readonly Listed[]) =>
      listed.filter(({ code }) => code === "spursAbovePositions").map(({ file: name, row }) => [name, row]);
    expect(above(setAside)).toEqual([[files[0], 2]]);
    expect(above(findings)).toEqual([
      [files[0], 3],
      [files[1], 2],
      [files[1], 3],
    ]);
  });
});

describe("findings set aside", () => {
  const oneAside = async () => {
    const workbook = await counts("Cordons", HEAD, "North Bench", [1, 2]);
    await setVineAside(workbook, 1);
    return workbook;
  };

  test("are counted in one sentence and listed with their reason only where that is wanted", async () => {
    const path = file("one.xlsx", (await oneAside()).bytes());
    const { exitCode, out } = await run(["check", path]);
    expect(exitCode).toBe(1);
    expect(out).not.toContain("vine 1,");
    expect(out).toContain(
      "\nSet aside in the workbook, so not counted: 1. The option --also-set-aside lists them.",
    );
    const all = (await run(["check", path, "--also-set-aside"])).out;
    expect(all.indexOf("vine 1,")).toBeGreaterThan(all.indexOf("Set aside, with reason, name and day"));
    expect(all).toMatch(/vine 1,[^\n]*\n +two spurs a place \(JT, 2026-02-01\)\n/);
    for (const language of ["es", "fr"])
      expect((await run(["check", path, "--language", language, "--also-set-aside"])).out).not.toMatch(
        /\{\w+\}/,
      );
  });

  test("stand in a csv with reason, name and day where they are wanted", async () => {
    const path = file("one.xlsx", (await oneAside()).bytes());
    const lines = async (...more: string[]) =>
      Papa.parse<Record<string, string>>((await run(["check", path, "--format", "csv", ...more])).out, {
        header: true,
      }).data;
    const open = await lines();
    expect(open.every((line) => !("set_aside" in line) && line.row !== "2")).toBe(true);
    const [last, ...before] = (await lines("--also-set-aside")).reverse();
    expect(last).toMatchObject({ row: "2", set_aside: "two spurs a place", by: "JT", on: "2026-02-01" });
    expect(before).toHaveLength(open.length);
    expect(before.every(({ set_aside, by, on }) => `${set_aside}${by}${on}` === "")).toBe(true);
  });

  test("give exit code 0 where nothing else is found, and are open again once the cell changes", async () => {
    const workbook = await counts("Cordons", HEAD, "North Bench", [1]);
    for (const finding of (await inPane(workbook)).open)
      await keepAside(workbook, finding, { reason: "true", by: "JT", on: "2026-02-01" });
    const path = file("aside.xlsx", workbook.bytes());
    const { exitCode, out } = await run(["check", path]);
    expect(exitCode).toBe(0);
    expect(out).toMatch(/^0 wrong, 0 to ask about, 0 notes in 1 row of/);
    await workbook.writeCells("Cordons", [{ row: 2, column: 9, value: 10 }]);
    expect((await asJson(file("changed.xlsx", workbook.bytes()))).exitCode).toBe(1);
  });

  test("come last in the Findings sheet with their reason, and their cells carry no mark", async () => {
    const path = file("one.xlsx", (await oneAside()).bytes());
    await run(["check", path, "--in-place"]);
    const saved = new Uint8Array(readFileSync(path));
    const workbook = await FileWorkbook.open("one.xlsx", saved);
    const { values } = await workbook.readSheet("Findings");
    const last = values[values.length - 1];
    expect(last).toContain("two spurs a place (JT, 2026-02-01)");
    expect(last).toContain("spursAbovePositions");
    expect(values.filter((row) => row.includes("two spurs a place (JT, 2026-02-01)"))).toHaveLength(1);
    const sheet = strFromU8(unzipSync(saved)["xl/worksheets/sheet1.xml"]);
    const marked = [...sheet.matchAll(/sqref="([^"]*)"/g)].flatMap(([, cells]) => cells.split(" "));
    expect(marked).toContain("I3");
    expect(marked).not.toContain("I2");
  });
});
