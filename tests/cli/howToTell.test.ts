import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { writeXlsx } from "hucre";
import Papa from "papaparse";
import type { CellValue } from "../../src/survey/sheets/cell";
import { run } from "./testTerminal";

jest.setTimeout(60000);

const folder = mkdtempSync(join(tmpdir(), "cordonbook-tell-"));
afterAll(() => rmSync(folder, { recursive: true }));

type Line = (string | number)[];

/** Two rows of ten vines with a left and a right cordon, in the order of our columns. */
const COUNTS: Line[] = [1, 2].flatMap((row) =>
  Array.from({ length: 10 }, (_, at) => at + 1).flatMap((vine) =>
    ["L", "R"].map((side, at): Line => [
      "North Bench",
      row,
      vine,
      side,
      "AB"[at],
      at + 1,
      3.2,
      9 - (vine % 2),
      7 + ((vine + at) % 2),
    ]),
  ),
);
const IDS = ["block", "vine_row", "vine", "side", "cordon", "trunk", "length", "positions", "live_spurs"];
/** 3.2 ft are 3.2 x 0.3048 m. */
const TRUTH = COUNTS.map((line) =>
  Object.fromEntries(
    line.map((cell, at) => [
      IDS[at],
      IDS[at] === "side"
        ? cell === "L"
          ? "left"
          : "right"
        : IDS[at] === "length"
          ? "0.97536"
          : String(cell),
    ]),
  ),
);

const book = async (name: string, rows: readonly (readonly CellValue[])[]): Promise<string> => {
  const path = join(folder, `${name}.xlsx`);
  writeFileSync(path, await writeXlsx({ sheets: [{ name: "Tally", rows: rows as unknown as Line[] }] }));
  return path;
};
const csvOf = (path: string, text: string) => {
  writeFileSync(path, text);
  return path;
};
const read = async (...words: string[]) =>
  Papa.parse<Record<string, string>>((await run(["rows", ...words])).out.trim(), { header: true }).data.map(
    (row) =>
      Object.fromEntries(
        IDS.map((id) => [id, id === "length" ? String(Number(Number(row[id]).toFixed(9))) : row[id]]),
      ),
  );
/** The answers that a message tells, word by word. */
const answersIn = (told: string) => JSON.parse(/(\{"(?:heads|constants)":.*?\]\})/.exec(told)![1]);

const ALIEN = ["Ax", "Bx", "Cx", "Dx", "Ex", "Fx", "Gx (ft)", "Hx", "Ix"];
const OWN = ["Fd", "Ln", "Pl", "Arm", "Nm", "Stem", "Span (ft)", "Knots", "Stubs"];
const moved = (line: readonly CellValue[]) => [2, 1, 0, 3, 4, 5, 8, 7, 6].map((at) => line[at]);

test.each([
  ["heads of a farm's own", [OWN, ...COUNTS]],
  ["heads that say nothing", [ALIEN, ...COUNTS]],
  ["heads that say nothing, in another order", [moved(ALIEN), ...COUNTS.map(moved)]],
])("%s: what the command line tells is copied, and every row is read", async (name, rows) => {
  for (const language of ["en", "es", "fr"]) {
    const path = await book(name, rows);
    const { exitCode, told } = await run(["check", path, "--language", language]);
    expect(exitCode).toBe(2);
    const answers = csvOf(join(folder, "answers.json"), JSON.stringify(answersIn(told)));
    expect((await run(["check", path, "--heads", answers])).exitCode).toBe(0);
    expect(await read(path, "--heads", answers)).toEqual(TRUTH);
  }
});

test("the answer that was copied is kept in the workbook, where the next command finds it", async () => {
  const path = await book("kept", [ALIEN, ...COUNTS]);
  const answers = csvOf(
    join(folder, "kept.json"),
    JSON.stringify(answersIn((await run(["check", path])).told)),
  );
  const saved = join(folder, "kept-copy.xlsx");
  expect((await run(["check", path, "--heads", answers, "--out", saved])).exitCode).toBe(0);
  expect(await read(saved)).toEqual(TRUTH);
});

test("a sheet without a block takes the one that is told, by the file or by its name", async () => {
  const path = await book("noblock", [
    ["Row", "Vine", "Side", "Cordon", "Trunk", "Length (ft)", "Positions", "Live spurs"],
    ...COUNTS.map((line) => line.slice(1)),
  ]);
  const { exitCode, told } = await run(["check", path]);
  expect(exitCode).toBe(1);
  const answers = csvOf(join(folder, "block.json"), JSON.stringify(answersIn(told)));
  expect(await read(path, "--heads", answers)).toEqual(TRUTH.map((row) => ({ ...row, block: "Tally" })));
  expect(await read(path, "--block", "North Bench")).toEqual(TRUTH);
});

test("counts without any line of heads: with the heads that are told every row is read", async () => {
  const { exitCode, told } = await run(["check", await book("bare", COUNTS)]);
  expect(exitCode).toBe(2);
  expect(told).toContain("Tally: 40 rows look like counts");
  const heads = /above the counts: (.*)\.$/.exec(told.trim())![1].split(", ");
  expect(await read(await book("headed", [heads, ...COUNTS]))).toEqual(TRUTH);
});

test("a sheet that does not look like counts: its own heads are named, with every column that they may mean", async () => {
  const path = await book("sides", [
    ["P1", "P2", "P3", "P4", "P5"],
    ...COUNTS.map(([block, row, vine, , cordon]) => [block, row, vine, 9, cordon]),
  ]);
  const { exitCode, told } = await run(["check", path]);
  expect(exitCode).toBe(2);
  const { heads } = answersIn(told);
  expect(Object.keys(heads[0].columns)).toEqual(["P1", "P2", "P3", "P4", "P5"]);
  expect(told).toContain("block, row, vine, side, cordon, trunk, length, positions, liveSpurs.");
});

test("where two counts cannot be told apart nothing is proposed", async () => {
  // Eight positions and eight live spurs on every cordon: either column could be either.
  const path = await book("alike", [ALIEN, ...COUNTS.map((line) => [...line.slice(0, 7), 8, 8])]);
  const { told } = await run(["check", path]);
  expect(told).not.toContain("To tell it");
  expect(told).toContain("Tally: 40 rows look like counts");
});
