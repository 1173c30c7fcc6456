import { z } from "zod";
import { randomSource } from "../../sample-workbooks/make/randomSource";
import type { CellValue } from "../../src/survey/sheets/cell";
import { checkSeason } from "../../src/survey/checks/checkSeason";
import { readSeason } from "../../src/survey/reading/readSeason";
import type { SheetArea } from "../../src/survey/reading/sheetArea";
import { CELL, type Season, type SurveyTable } from "../../src/survey/season/season";
import { median, timed } from "./timed";
import { cordonHeads } from "../survey/cordonHeads";

const ROWS = 100_000;
const ROUNDS = 9;
/** Checks that judge a row by nothing but its own cells; the schema and the bare loop below hold the same rules. */
const SINGLE_ROW = [
  "missingValue",
  "cellKind",
  "limits",
  "spurCounts",
  "directions",
  "spursTooClose",
  "contradictions",
];

const HEADERS = [
  ...cordonHeads("m"),
  "Longest gap",
  "Spurs down",
  "Spurs level",
  "Spurs up",
  "Nodes a spur",
  "Diameter (m)",
  "Condition",
  "Note",
  "Counted by",
  "Date",
];

/**
 * 100,000 cordon rows under the same single-row rules three times in one process: our checks over the columns, zod's
 * safeParse row by row, and a bare loop over the columns that only counts. Then reading and every check.
 */
export function run(): void {
  const area = makeSheet();
  const readings: number[] = [];
  const everything: number[] = [];
  let season = readSeason([area]);
  for (let round = 0; round < 3; round++) {
    readings.push(timed(() => (season = readSeason([area]))));
    everything.push(timed(() => badRows(readSeason([area]))));
  }
  console.log(`${ROWS} rows x ${HEADERS.length} columns, ${ROUNDS} rounds, Node ${process.version}`);
  show("reading the sheet into columns", readings);
  show("reading and every check", everything);
  console.log(`peak memory so far (sheet, columns, findings): ${peak()} MB`);

  const rows = area.values.slice(1).map(rowObject);
  const schema = rowSchema();
  const table = season.tables("cordons")[0];
  const ours: number[] = [];
  const zod: number[] = [];
  const bare: number[] = [];
  const bad = { ours: 0, zod: 0, bare: 0 };
  for (let round = 0; round < ROUNDS + 2; round++) {
    const times = [
      timed(() => (bad.ours = badRows(season, SINGLE_ROW))),
      timed(
        () => (bad.zod = rows.reduce((count, row) => count + (schema.safeParse(row).success ? 0 : 1), 0)),
      ),
      timed(() => (bad.bare = bareLoop(table))),
    ];
    if (round < 2) continue;
    [ours, zod, bare].forEach((side, at) => side.push(times[at]));
  }
  console.log(`rows with a mistake: ours ${bad.ours}, zod ${bad.zod}, bare loop ${bad.bare}`);
  show("our checks, findings made", ours);
  show("zod safeParse a row", zod);
  show("bare loop over the columns", bare);
  console.log(`zod / ours:       ${(median(zod) / median(ours)).toFixed(1)} x  (goal: at least 10)`);
  console.log(`ours / bare loop: ${(median(ours) / median(bare)).toFixed(2)} x  (goal: at most 3)`);
  console.log(`peak memory with the row objects of zod: ${peak()} MB`);
}

function show(what: string, times: readonly number[]): void {
  const [least, most] = [Math.min(...times), Math.max(...times)];
  console.log(
    `${what.padEnd(34)} ${median(times).toFixed(1).padStart(8)} ms  (${least.toFixed(1)} to ${most.toFixed(1)})`,
  );
}

function peak(): number {
  return Math.round(process.resourceUsage().maxRSS / 1024);
}

/** Rows with a finding; every finding is made, as a page would show it. */
function badRows(season: Season, only?: readonly string[]): number {
  const bad = new Set<number>();
  for (const { finding } of checkSeason(season, { only, slice: 20_000 })) if (finding) bad.add(finding.row);
  return bad.size;
}

/** A sheet as crews write it, one row in two hundred with a mistake in a single cell. */
function makeSheet(): SheetArea {
  const { whole, chance, number } = randomSource(11);
  const values: CellValue[][] = [HEADERS];
  for (let i = 0; i < ROWS; i++) {
    const length = number(0.7, 1.1, 2);
    const positions = Math.round(length / 0.11);
    const live = Array.from({ length: positions }, () => chance(0.85));
    const spurs = live.filter(Boolean).length;
    const down = whole(0, spurs);
    const level = whole(0, spurs - down);
    const row: CellValue[] = [
      `Block ${1 + Math.floor(i / 10_000)}`,
      1 + Math.floor((i % 10_000) / 120),
      1 + Math.floor((i % 120) / 4),
      i % 2 === 0 ? "left" : "right",
      "ABCD"[i % 4],
      1 + (Math.floor(i / 2) % 2),
      length,
      positions,
      spurs,
      longestGap(live),
      down,
      level,
      spurs - down - level,
      2,
      number(0.015, 0.03, 3),
      chance(0.9) ? "sound" : "injured",
      null,
      chance(0.5) ? "AB" : "MK",
      46000 + Math.floor(i / 4000),
    ];
    if (i % 200 === 7) spoil(row, whole(0, 7));
    values.push(row);
  }
  return { sheet: "Cordons", firstRow: 1, firstColumn: 1, values, formulaAt: () => null };
}

function longestGap(live: readonly boolean[]): number {
  let longest = 0;
  let run = 0;
  for (const alive of live) longest = Math.max(longest, (run = alive ? 0 : run + 1));
  return longest;
}

function spoil(row: CellValue[], slip: number): void {
  if (slip === 0) row[8] = null;
  else if (slip === 1) row[7] = "8";
  else if (slip === 2) row[8] = Number(row[7]) + 1;
  else if (slip === 3) row[9] = Number(row[7]) + 1;
  else if (slip === 4) row[10] = Number(row[10]) + 1;
  else if (slip === 5) row[6] = 0.2;
  else if (slip === 6) row[3] = "uphill";
  else row[5] = 1.5;
}

const FIELDS = [
  "block",
  "row",
  "vine",
  "side",
  "cordon",
  "trunk",
  "length",
  "positions",
  "liveSpurs",
  "longestGap",
  "spursDown",
  "spursLevel",
  "spursUp",
  "nodesPerSpur",
  "diameter",
  "condition",
  "note",
  "countedBy",
  "countedOn",
];

function rowObject(cells: readonly CellValue[]): Record<string, CellValue> {
  return Object.fromEntries(FIELDS.map((field, at) => [field, cells[at]]));
}

/** Metres that two inches are: the least distance between spurs that our checks take when nobody changed it. */
const LEAST_DISTANCE = 0.0508;

function rowSchema() {
  const count = (least: number, most: number) => z.number().int().min(least).max(most);
  const word = z.union([z.string().min(1), z.number()]);
  return z
    .object({
      block: word,
      row: count(1, 2000),
      vine: count(1, 5000),
      side: z.enum(["left", "right", "north", "south", "east", "west"]),
      cordon: word,
      trunk: count(1, 8),
      length: z.number().min(0).max(6),
      positions: count(0, 60),
      liveSpurs: count(0, 60),
      longestGap: count(0, 60).nullable(),
      spursDown: count(0, 60).nullable(),
      spursLevel: count(0, 60).nullable(),
      spursUp: count(0, 60).nullable(),
      nodesPerSpur: z.number().min(0).max(15).nullable(),
      diameter: z.number().min(0).max(0.15).nullable(),
      condition: z.enum(["sound", "injured", "diseased", "dead"]).nullable(),
      note: z.string().nullable(),
      countedBy: word.nullable(),
      countedOn: z.number().min(29221).max(73051).nullable(),
    })
    .superRefine((row, context) => {
      const missing = row.positions - row.liveSpurs;
      const gap = row.longestGap;
      const add = (path: string, message: string) =>
        context.addIssue({ code: "custom", path: [path], message });
      if (missing < 0) add("liveSpurs", "more live spurs than positions");
      else if (gap !== null && gap > missing) add("longestGap", "longer than the empty positions");
      else if (gap !== null && gap * (row.liveSpurs + 1) < missing)
        add("longestGap", "shorter than it can be");
      const { spursDown, spursLevel, spursUp } = row;
      const known = (spursDown ?? 0) + (spursLevel ?? 0) + (spursUp ?? 0);
      const all = spursDown !== null && spursLevel !== null && spursUp !== null;
      if (known > row.liveSpurs || (all && known !== row.liveSpurs))
        add("liveSpurs", "directions do not add up");
      if ((row.positions - 1) * LEAST_DISTANCE > row.length) add("positions", "too close");
      if (row.condition === "dead" && row.liveSpurs > 0) add("condition", "dead with live spurs");
    });
}

const REQUIRED = ["block", "row", "vine", "side", "cordon", "trunk", "length", "positions", "liveSpurs"];

/** The same rules as plain loops: one over the states and numbers of each column, one over what belongs together. */
function bareLoop(table: SurveyTable): number {
  const bad = new Uint8Array(table.rowCount);
  for (const { column, states, numbers } of table.columns) {
    const required = REQUIRED.includes(column.id);
    for (let i = 0; i < bad.length; i++)
      if (states[i] > CELL.blank || (required && states[i] === CELL.blank)) bad[i] = 1;
    if (column.least === undefined || column.most === undefined) continue;
    const { least, most } = column;
    const whole = column.kind === "count";
    for (let i = 0; i < bad.length; i++) {
      const value = numbers[i];
      if (value < least || value > most || (whole && value % 1 !== 0 && value === value)) bad[i] = 1;
    }
  }
  const numbersOf = (id: string) => table.column(id)!.numbers;
  const [positions, spurs, gaps] = ["positions", "liveSpurs", "longestGap"].map(numbersOf);
  const [down, level, up] = ["spursDown", "spursLevel", "spursUp"].map(numbersOf);
  const lengths = numbersOf("length");
  const condition = table.column("condition")!;
  const dead = condition.column.choices!.findIndex((choice) => choice.id === "dead");
  let count = 0;
  for (let i = 0; i < bad.length; i++) {
    const missing = positions[i] - spurs[i];
    const sum = down[i] + level[i] + up[i];
    const known = (down[i] || 0) + (level[i] || 0) + (up[i] || 0);
    if (
      missing < 0 ||
      gaps[i] > missing ||
      gaps[i] * (spurs[i] + 1) < missing ||
      known > spurs[i] ||
      (sum === sum && spurs[i] === spurs[i] && sum !== spurs[i]) ||
      (positions[i] - 1) * LEAST_DISTANCE > lengths[i] ||
      (condition.codes[i] === dead && spurs[i] > 0)
    )
      bad[i] = 1;
    count += bad[i];
  }
  return count;
}
