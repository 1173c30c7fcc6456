import { spawn } from "node:child_process";
import {
  chmodSync,
  chownSync,
  copyFileSync,
  linkSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { FileWorkbook } from "../../src/workbook/file/fileWorkbook";
import { readForChange, saveInPlace, stampOf } from "../../src/workbook/file/saveFile";
import { buildWorkbook } from "../workbook/file/buildWorkbook";
import { run } from "./testTerminal";
import { cellName } from "../../src/workbook/address";
import { withPersonsRemarks } from "../workbook/file/withPersonsRemarks";

jest.setTimeout(120_000);

const MISTAKES = readFileSync(join(__dirname, "../../sample-workbooks/larkmoor-mistakes.xlsx"));

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "cordonbook-folder-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));
const season = (name = "season.xlsx"): string => {
  const path = join(folder, name);
  writeFileSync(path, MISTAKES);
  return path;
};
const findingsOf = async (...words: string[]) => {
  const { out, told } = await run(["check", ...words, "--format", "json"]);
  const { findings, passedOver } = JSON.parse(out) as { findings: { sheet: string }[]; passedOver: string[] };
  return { count: findings.length, passedOver, told };
};

describe("a folder in which we saved", () => {
  test("counts its farm once: backups and copies are passed over by name, whatever they are called", async () => {
    const path = season();
    const once = (await findingsOf(path)).count;
    expect(once).toBeGreaterThan(10);
    await run(["check", path, "--in-place"]);
    await run(["choose", path, "--in-place"]);
    await run(["check", path, "--save"]);
    const backups = readdirSync(folder).filter((name) => name.includes("backup"));
    expect(backups).toHaveLength(2);
    renameSync(join(folder, backups[0]), join(folder, "a.xlsx"));
    const { count, passedOver, told } = await findingsOf(folder);
    expect(count).toBe(once);
    expect(passedOver.map((each) => each.slice(folder.length + 1)).sort()).toEqual(
      ["a.xlsx", backups[1], "season-findings.xlsx"].sort(),
    );
    expect(told).toContain("Cordonbook made them of season.xlsx");
    for (const name of ["a.xlsx", backups[1], "season-findings.xlsx"]) expect(told).toContain(name);
  });

  test("reads a copy whose original is gone", async () => {
    const path = season();
    const { count } = await findingsOf(path);
    await run(["check", path, "--save"]);
    rmSync(path);
    expect(await findingsOf(folder)).toMatchObject({ count, passedOver: [] });
  });

  test("asks about two files with the same rows that nothing tells apart, and counts both when told so", async () => {
    const path = season();
    copyFileSync(path, join(folder, "of a colleague.xlsx"));
    const asked = await run(["check", folder]);
    expect(asked.exitCode).toBe(2);
    expect(asked.told).toMatch(/of a colleague\.xlsx and season\.xlsx hold the same \d+ rows of cordons/);
    expect((await run(["check", folder, "--same-rows"])).exitCode).toBe(1);
  });

  test("asks about a copy in which somebody went on counting, and not about a file of other vines", async () => {
    const head = "Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs,Fixed choice\n";
    const rows = (firstVine: number, change: (vine: number) => string) =>
      Array.from({ length: 10 }, (_, at) => firstVine + at)
        .map((vine) => `North Bench,1,${vine},left,A,1,3,8,${change(vine)}\n`)
        .join("");
    const write = (name: string, ...lines: string[]) =>
      writeFileSync(join(folder, name), head + lines.join(""));
    write(
      "season.csv",
      rows(1, () => "6,"),
    );
    write(
      "a copy.csv",
      rows(6, (vine) => (vine > 7 ? "5," : "6,stays")),
    );
    const told = await run(["crop", folder]);
    expect(told.told).not.toContain("hold the same");
    write(
      "a copy.csv",
      rows(6, (vine) => (vine > 10 ? "5," : "6,stays")),
    );
    const { exitCode, told: asked } = await run(["crop", folder]);
    expect([exitCode, asked]).toEqual([
      2,
      expect.stringMatching(/a copy\.csv and season\.csv hold the same 5 rows of cordons/),
    ]);
  });
});

describe("a workbook that was saved by somebody else after it was read", () => {
  test.each([["--in-place"], ["--save"]])("is left alone with %s", async (way) => {
    const path = season();
    const read = jest.spyOn(FileWorkbook, "open");
    const { inputs, season: counts } = await import("../../src/cli/readSurveyInputs").then(
      ({ readSeasonInputs }) =>
        readSeasonInputs([path], {}, {
          language: "en",
          tell: () => undefined,
          progress: () => undefined,
        } as never),
    );
    const colleague = buildWorkbook({ sheets: { Cordons: '<row r="1"><c r="A1"><v>1</v></c></row>' } });
    writeFileSync(path, colleague);
    const { saveResult } = await import("../../src/cli/saveResult");
    await expect(
      saveResult(inputs, counts, { sheets: [] }, "findings", { [way.slice(2)]: true }, {
        language: "en",
        tell: () => undefined,
      } as never),
    ).rejects.toMatchObject({ code: "changedMeanwhile" });
    expect(readFileSync(path)).toEqual(Buffer.from(colleague));
    expect(readdirSync(folder)).toEqual(["season.xlsx"]);
    expect(read).not.toHaveBeenCalled();
    read.mockRestore();
  });

  test("is noticed where its length is the same", async () => {
    const path = season();
    const asRead = await stampOf(path);
    const other = Uint8Array.from(MISTAKES);
    writeFileSync(`${path}.new`, other);
    renameSync(`${path}.new`, path);
    await expect(readForChange(path, asRead)).rejects.toMatchObject({ code: "changedMeanwhile" });
  });
});

/** Runs the command line in a process of its own. */
function ownProcess(words: readonly string[]): Promise<{ code: number; told: string }> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, ["src/cli/start.mjs", ...words], {
      cwd: join(__dirname, "../.."),
      env: { ...process.env, LC_ALL: "en_US.UTF-8" },
      stdio: ["ignore", "ignore", "pipe"],
    });
    let told = "";
    child.stderr.on("data", (data: Buffer) => (told += String(data)));
    child.on("close", (code) => resolve({ code: code ?? -1, told }));
  });
}

test("of several processes at once every one either saves or says why not, and no saved content is lost", async () => {
  const path = season();
  await run(["formula", "=1"]);
  await ownProcess(["formula", "=1+1"]);
  const runs = await Promise.all(
    ["check", "choose", "gaps", "cards"].map((command) => ownProcess([command, path, "--in-place"])),
  );
  const saved = runs.filter(({ told }) => told.includes("Saved in"));
  const refused = runs.filter(({ code, told }) => code === 2 && /saved by|being saved|open in/.test(told));
  expect(saved.length).toBeGreaterThanOrEqual(1);
  expect([saved.length + refused.length, runs.map(({ told }) => told)]).toEqual([4, expect.anything()]);
  const names = readdirSync(folder);
  expect(names.filter((name) => name.includes("backup"))).toHaveLength(saved.length);
  expect(names.filter((name) => /saving|waiting/.test(name))).toEqual([]);
  const own = (await FileWorkbook.open("season.xlsx", readFileSync(path))).sheetNames();
  const before = (await FileWorkbook.open("season.xlsx", MISTAKES)).sheetNames();
  expect((await own).length).toBeGreaterThanOrEqual((await before).length + saved.length);
});

describe("what a file is beside its content", () => {
  test("stays: mode, whatever this process would give a new file", async () => {
    const path = season();
    chmodSync(path, 0o666);
    const mask = process.umask(0o077);
    try {
      expect((await run(["check", path, "--in-place"])).told).toContain("Saved in");
    } finally {
      process.umask(mask);
    }
    expect(statSync(path).mode & 0o777).toBe(0o666);
  });

  test("stays: owner and group, where this process may give a file away", async () => {
    const path = season();
    const [mine, group] = [process.getuid!(), process.getgid!()];
    const owner = mine === 0 ? 1234 : mine;
    chownSync(path, owner, mine === 0 ? 1235 : group);
    expect((await run(["check", path, "--in-place"])).told).toContain("Saved in");
    const { uid, gid } = statSync(path);
    expect([uid, gid]).toEqual([owner, mine === 0 ? 1235 : group]);
  });

  test("is refused where nobody may write it", async () => {
    const path = season();
    chmodSync(path, 0o444);
    const { exitCode, told } = await run(["check", path, "--in-place"]);
    expect([exitCode, told]).toEqual([2, expect.stringContaining('"season.xlsx" is read-only')]);
    expect(readFileSync(path)).toEqual(MISTAKES);
    expect(readdirSync(folder)).toEqual(["season.xlsx"]);
  });

  test("is told of where it is a link or has other names", async () => {
    const path = season();
    symlinkSync(path, join(folder, "link.xlsx"));
    linkSync(path, join(folder, "other name.xlsx"));
    const { told } = await run(["check", join(folder, "link.xlsx"), "--in-place"]);
    expect(told).toContain("is a link; what was changed is");
    expect(told).toContain(
      "season.xlsx had 1 more name on this disk (hard links); it keeps the old content.",
    );
    expect(readFileSync(join(folder, "other name.xlsx"))).toEqual(MISTAKES);
    writeFileSync(join(folder, "other name.xlsx"), "written through its other name");
    const backup = readdirSync(folder).find((name) => name.includes("backup"))!;
    expect(readFileSync(join(folder, backup))).toEqual(MISTAKES);
  });
});

test("a lock that a killed process left is no hindrance, that of a running one is", async () => {
  const path = season();
  const state = await readForChange(path);
  const lock = join(folder, ".season.xlsx.saving");
  writeFileSync(lock, "");
  await expect(saveInPlace(state, MISTAKES, new Date())).rejects.toMatchObject({ code: "savedElsewhere" });
  expect(readdirSync(folder).sort()).toEqual([".season.xlsx.saving", "season.xlsx"]);
  const { utimesSync } = await import("node:fs");
  utimesSync(lock, new Date(0), new Date(0));
  await saveInPlace(state, MISTAKES, new Date());
  expect(readdirSync(folder)).toHaveLength(2);
});

test.each([
  [["check", "season.xlsx", "--out", "findings.txt"], "--out must end in .xlsx, but is findings.txt"],
  [["check", "season.xlsx", "--out", "findings.xlsm"], "--out must end in .xlsx, but is findings.xlsm"],
  [["check", "season.xlsx", "--save", "--in-place"], "--save and --in-place say two different things"],
  [["check", "season.xlsx", "--save", "--out", "a.xlsx"], "--save and --out say two different things"],
  [
    ["check", "season.xlsx", "--out", "a.xlsx", "--in-place"],
    "--out and --in-place say two different things",
  ],
  [["cards", "season.xlsx", "--html", "a.html", "--save"], "--html and --save say two different things"],
  [["cards", "season.xlsx", "--html", "a.docx"], "must end in .html, but is a.docx"],
])("refuses %j", async ([command, , ...words], sentence) => {
  const path = season();
  const { exitCode, told } = await run([command, path, ...words]);
  expect([exitCode, told]).toEqual([2, expect.stringContaining(sentence)]);
  expect(readdirSync(folder)).toEqual(["season.xlsx"]);
});

describe("what a person wrote beside findings", () => {
  test.each([
    ["--in-place", "season.xlsx"],
    ["--save", "season-findings.xlsx"],
    ["--out", "mine.xlsx"],
  ])("is carried over with %s, and told where its finding is gone", async (way, file) => {
    const path = season();
    await run(["check", path, "--in-place"]);
    const first = await FileWorkbook.open("season.xlsx", new Uint8Array(readFileSync(path)));
    const { values, firstRow } = await first.readSheet("Findings");
    const heads = values.findIndex((row) => row.includes("Kind"));
    const [code, vine, width] = [
      values[heads].indexOf("Kind"),
      values[heads].indexOf("Vine"),
      values[heads].length,
    ];
    const rowOf = (index: number) => firstRow + heads + index;
    await first.writeCells("Findings", [
      { row: rowOf(0), column: width + 1, value: "Seen by" },
      { row: rowOf(1), column: width + 1, value: "Ana" },
      { row: rowOf(2), column: width + 1, value: "Ben" },
      // The second finding becomes one that this season does not have.
      { row: rowOf(2), column: code + 1, value: "noSuchCode" },
      { row: rowOf(2), column: vine + 1, value: 999 },
    ]);
    const [kept, gone] = [`H${rowOf(1)}`, `H${rowOf(2)}`];
    const remarks = { notes: { [kept]: "true", [gone]: "not true" }, yellow: [kept, gone] };
    writeFileSync(path, withPersonsRemarks(first.bytes(), "xl/worksheets/cordonbook1.xml", remarks));
    const out = join(folder, file);
    const { told } = await run(["check", path, way, ...(way === "--out" ? [out] : [])]);
    expect(told).toContain("Not on the sheet Findings any more");
    expect(told).toMatch(new RegExp(`: [A-Z]+\\d+ Seen by: Ben; ${gone} Cleo: not true\\.$`, "m"));
    expect(told).toContain(`Colours and formats of ${gone} are not on the sheet Findings any more`);
    const again = await FileWorkbook.open(file, new Uint8Array(readFileSync(out)));
    const now = (await again.readSheet("Findings")).values;
    const at = now.findIndex((row) => row.includes("Kind"));
    const column = now[at].indexOf("Seen by");
    expect(column).toBe(width);
    expect(now.slice(at + 1).filter((row) => row[column] !== null)).toEqual([[...values[heads + 1], "Ana"]]);
    const given = (await again.cellExtras("Findings")).filter(({ note, dress }) => note + dress !== "");
    expect(given.map(({ row, column: at, note }) => [cellName(row, at), note])).toEqual([
      ["A1", ""],
      [kept, "Cleo: true"],
    ]);
  });
});
