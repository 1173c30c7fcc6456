import { createWriteStream } from "node:fs";
import { once } from "node:events";
import { finished, pipeline } from "node:stream/promises";
import { Zip, ZipDeflate } from "fflate";
import { randomSource } from "../../sample-workbooks/make/randomSource";
import { serialDay } from "../../sample-workbooks/make/inventedFarm";
import { cellName } from "../../src/workbook/address";
import { csvLine } from "../../src/workbook/csvText";
import { workbookParts } from "../workbook/file/buildWorkbook";
import { CORDON_HEADS } from "../survey/cordonHeads";

export const HEADERS = [
  ...CORDON_HEADS,
  "Longest gap",
  "Spurs down",
  "Spurs level",
  "Spurs up",
  "Condition",
  "Counted by",
  "Date",
];
const ROWS_A_BLOCK = 120;
const VINES_A_ROW = 200;
const CORDONS_A_VINE = 4;
const COUNTERS = ["AB", "MK", "JT", "RS"];
const BATCH = 2000;

type Cell = string | number;

/** Cordon rows of an invented estate of any size, in walking order. */
export function* largeSeason(cordons: number): Generator<Cell[]> {
  const random = randomSource(cordons);
  const firstDay = serialDay(2026, 1, 5);
  for (let i = 0; i < cordons; i++) {
    const vine = Math.floor(i / CORDONS_A_VINE);
    const row = Math.floor(vine / VINES_A_ROW);
    const block = Math.floor(row / ROWS_A_BLOCK);
    const positions = random.whole(7, 9);
    const empty = random.chance(0.3) ? random.whole(1, 2) : 0;
    const live = positions - empty;
    const down = Math.min(live, random.whole(3, 6));
    const level = random.whole(0, live - down);
    yield [
      `Block ${block + 1}`,
      (row % ROWS_A_BLOCK) + 1,
      (vine % VINES_A_ROW) + 1,
      i % CORDONS_A_VINE < 2 ? "left" : "right",
      "ABCD"[i % CORDONS_A_VINE],
      (i % 2) + 1,
      random.number(2.6, 3.1, 1),
      positions,
      live,
      empty,
      down,
      level,
      live - down - level,
      "sound",
      COUNTERS[row % COUNTERS.length],
      firstDay + (Math.floor(row / 40) % 40),
    ];
  }
}

/** Writes such a season as csv without ever holding it. */
export async function writeLargeCsv(path: string, cordons: number): Promise<void> {
  function* lines() {
    yield `${csvLine(HEADERS)}\n`;
    for (const cells of largeSeason(cordons)) yield `${csvLine(cells)}\n`;
  }
  await pipeline(lines, createWriteStream(path));
}

/** Writes such a season as a workbook without ever holding it, with inline numbers and shared texts. */
export async function writeLargeWorkbook(path: string, cordons: number): Promise<void> {
  const out = createWriteStream(path);
  const zip = new Zip((error, chunk) => {
    if (error) throw error;
    out.write(chunk);
  });
  const texts = new Map<string, number>();
  const textOf = (text: string) => {
    let index = texts.get(text);
    if (index === undefined) texts.set(text, (index = texts.size));
    return index;
  };
  const encoder = new TextEncoder();
  const add = (name: string, content: string) => {
    const part = new ZipDeflate(name, { level: 1 });
    part.mtime = "2026-01-01T00:00:00";
    zip.add(part);
    part.push(encoder.encode(content), true);
  };
  const parts = workbookParts({ sheets: { Cordons: "" } });
  const { ["xl/worksheets/sheet1.xml"]: shell, ["xl/sharedStrings.xml"]: _none, ...rest } = parts;
  const [head, foot] = String(shell)
    .replace(/<dimension[^>]*>/, `<dimension ref="A1:${cellName(cordons + 1, HEADERS.length)}"/>`)
    .split("<sheetData></sheetData>");
  const sheet = new ZipDeflate("xl/worksheets/sheet1.xml", { level: 1 });
  sheet.mtime = "2026-01-01T00:00:00";
  zip.add(sheet);
  const rowXml = (number: number, cells: readonly Cell[]) =>
    `<row r="${number}">${cells
      .map((cell, c) =>
        typeof cell === "string"
          ? `<c r="${cellName(number, c + 1)}" t="s"><v>${textOf(cell)}</v></c>`
          : `<c r="${cellName(number, c + 1)}"><v>${cell}</v></c>`,
      )
      .join("")}</row>`;
  let batch = `${head}<sheetData>${rowXml(1, HEADERS)}`;
  let number = 1;
  for (const cells of largeSeason(cordons)) {
    batch += rowXml(++number, cells);
    if (number % BATCH === 0) {
      sheet.push(encoder.encode(batch));
      batch = "";
      if (out.writableNeedDrain) await once(out, "drain");
    }
  }
  sheet.push(encoder.encode(`${batch}</sheetData>${foot}`), true);
  for (const [name, content] of Object.entries(rest)) add(name, String(content));
  const items = [...texts.keys()].map((text) => `<si><t>${text}</t></si>`).join("");
  add(
    "xl/sharedStrings.xml",
    `<sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">${items}</sst>`,
  );
  zip.end();
  out.end();
  await finished(out);
}
