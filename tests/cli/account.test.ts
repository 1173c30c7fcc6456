import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import * as XLSX from "@e965/xlsx";
import { COMMANDS } from "../../src/cli/commands";
import { openWorkbookFile } from "../../src/workbook/file/openWorkbookFile";
import { HIDDEN, READ_LINE, UNREAD_PARTS, USED_LINE } from "../survey/season/unreadParts";
import { run } from "./testTerminal";

jest.setTimeout(60000);

/** A workbook of these sheets, one of them hidden. */
function workbook(sheets: Readonly<Record<string, readonly (readonly unknown[])[]>>): Uint8Array {
  const book = XLSX.utils.book_new();
  for (const [name, cells] of Object.entries(sheets))
    XLSX.utils.book_append_sheet(book, XLSX.utils.aoa_to_sheet(cells.map((row) => [...row])), name);
  book.Workbook = { Sheets: Object.keys(sheets).map((name) => ({ name, Hidden: name === HIDDEN ? 1 : 0 })) };
  return new Uint8Array(XLSX.write(book, { type: "array", bookType: "xlsx" }) as ArrayBuffer);
}

let folder: string;
let file: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "cordonbook-account-"));
  file = join(folder, "season.xlsx");
  writeFileSync(file, workbook(UNREAD_PARTS));
});
afterEach(() => rmSync(folder, { recursive: true }));

/** Every command that reads files. */
const READING = [...COMMANDS].flatMap(([word, { takes }]) => (takes.startsWith("FILE...") ? [word] : []));
const WITH_FORMATS = READING.filter((word) => "format" in COMMANDS.get(word)!.options);
const SAVING = READING.filter((word) => "save" in COMMANDS.get(word)!.options);

test("are the commands that this file is about", () => {
  expect(READING).toEqual(["check", "choose", "gaps", "crop", "cards", "rows"]);
  expect(WITH_FORMATS).toEqual(["check", "choose", "gaps", "crop", "cards"]);
  expect(SAVING).toEqual(WITH_FORMATS);
});

describe.each(READING)("%s", (word) => {
  test("says in its last lines what was read, and what was not with the reason", async () => {
    const { out, told, exitCode } = await run([word, file]);
    const lines = (word === "rows" ? told : out).trimEnd().split("\n");
    expect(lines.slice(-2)).toEqual([READ_LINE, USED_LINE]);
    expect(exitCode).toBe(1);
    expect(out).not.toContain("Nothing found");
  });
});

describe.each(WITH_FORMATS)("%s", (word) => {
  test("carries the same numbers as data", async () => {
    const { out, exitCode } = await run([word, file, "--format", "json"]);
    const { reading } = JSON.parse(out) as { reading: Record<string, unknown> };
    expect(exitCode).toBe(1);
    expect(reading).toMatchObject({
      read: { files: 1, sheets: 1, tables: 1, columns: 9, rows: 16 },
      open: 2,
      rowsUsed: { rows: 16, used: 14 },
      sentence: READ_LINE,
      notRead: [
        { reason: "hidden", names: ["Spare"], rows: 0 },
        { reason: "otherHeads", names: ["Pond"], rows: 12 },
        { reason: "notCounts", names: ["Tanks"], rows: 2 },
        { reason: "pastWinter", names: ["Cordons 2025"], rows: 8 },
        { reason: "totalLines", names: ["Cordons 2026"], rows: 1 },
      ],
    });
    expect(reading.tables).toEqual([
      expect.objectContaining({ file: "season.xlsx", sheet: "Cordons 2026", rows: 16, isCounted: true }),
      expect.objectContaining({ file: "season.xlsx", sheet: "Cordons 2025", rows: 8, isCounted: false }),
    ]);
  });

  test("tells it beside a csv", async () => {
    const { out, told } = await run([word, file, "--format", "csv"]);
    expect(told.split("\n").slice(-2)).toEqual([READ_LINE, USED_LINE]);
    expect(out).not.toContain("Not read:");
  });

  test("writes it above the table of every sheet that it makes", async () => {
    const out = join(folder, "out.xlsx");
    await run([word, file, "--out", out]);
    const book = await openWorkbookFile(out);
    const made = book.sheetNames.filter((name) => !(name in UNREAD_PARTS));
    expect(made.length).toBeGreaterThan(0);
    for (const name of made) {
      const { values } = await book.readSheet(name);
      const first = values.map(([cell]) => cell);
      expect([name, first.indexOf(READ_LINE) + 1]).toEqual([name, first.indexOf(USED_LINE)]);
      expect(first).toContain(READ_LINE);
    }
    await book.close();
  });
});

test("printed cards carry it at the foot of the last page", async () => {
  const page = join(folder, "cards.html");
  await run(["cards", file, "--html", page]);
  const html = readFileSync(page, "utf8");
  expect(html.split(READ_LINE)).toHaveLength(2);
  expect(html.split("<footer>").at(-1)).toContain(`<p>${READ_LINE}</p><p>${USED_LINE}</p>`);
});

test("a repaired copy carries it above its list of changes", async () => {
  const { "Cordons 2026": rows } = UNREAD_PARTS;
  const odd = rows.map((row, at) => (at === 1 ? [...row.slice(0, 8), String(row[8])] : row));
  writeFileSync(file, workbook({ "Cordons 2026": odd }));
  const out = join(folder, "mended.xlsx");
  await run(["check", file, "--repair", "--out", out]);
  const book = await openWorkbookFile(out);
  for (const name of book.sheetNames.filter((sheet) => sheet !== "Cordons 2026")) {
    const { values } = await book.readSheet(name);
    const first = values.map(([cell]) => String(cell));
    expect([name, first.filter((line) => line.startsWith("Read: 1 file, 1 sheet")).length]).toEqual([
      name,
      1,
    ]);
  }
  expect(book.sheetNames.length).toBeGreaterThan(2);
  await book.close();
});

describe("exit code 0 and “Nothing found”", () => {
  const clean = { "Cordons 2026": UNREAD_PARTS["Cordons 2026"].slice(0, 13) };
  const withPart = (name: string) => ({ ...clean, [name]: UNREAD_PARTS[name] });

  test.each(READING)("are given by %s where all counts were read", async (word) => {
    writeFileSync(file, workbook({ ...clean, Tanks: UNREAD_PARTS.Tanks }));
    const { exitCode, out } = await run([word, file]);
    expect(exitCode).toBe(0);
    if (word === "check") expect(out).toContain("Nothing found in 12 rows of 1 table.");
  });

  test.each(READING.flatMap((word) => [HIDDEN, "Pond"].map((part) => [word, part] as const)))(
    "are not given by %s beside %s",
    async (word, part) => {
      writeFileSync(file, workbook(withPart(part)));
      const { exitCode, out } = await run([word, file]);
      expect(exitCode).toBe(1);
      expect(out).not.toContain("Nothing found");
    },
  );

  test("are given once the sheet is named", async () => {
    writeFileSync(file, workbook(withPart("Pond")));
    expect((await run(["check", file, "--sheet", "Cordons 2026"])).exitCode).toBe(0);
    writeFileSync(file, workbook({ Spare: clean["Cordons 2026"], Tanks: UNREAD_PARTS.Tanks }));
    expect((await run(["check", file])).exitCode).toBe(2);
    expect((await run(["check", file, "--sheet", "Spare"])).exitCode).toBe(0);
  });

  test("a folder names the files of other formats, which may hold counts", async () => {
    writeFileSync(file, workbook(clean));
    writeFileSync(join(folder, "map.pdf"), "");
    const before = await run(["check", folder]);
    expect(before.exitCode).toBe(0);
    expect(before.told).toContain("Passed over, because they are of another format: map.pdf");
    writeFileSync(join(folder, "counts.ods"), "");
    const { exitCode, told, out } = await run(["check", folder, "--format", "json"]);
    expect(exitCode).toBe(1);
    expect(told).toContain("Passed over, because they are of another format: counts.ods, map.pdf");
    expect((JSON.parse(out) as { reading: { notRead: unknown } }).reading.notRead).toContainEqual({
      reason: "otherFormat",
      names: ["counts.ods", "map.pdf"],
      rows: 0,
    });
  });
});
