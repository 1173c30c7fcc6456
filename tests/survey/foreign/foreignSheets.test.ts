import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { openWorkbookBytes } from "../../../src/workbook/file/openWorkbook";
import { allFindings } from "../../../src/survey/checks/checkSeason";
import { findingGroups } from "../../../src/survey/checks/findingGroups";
import { serialOf } from "../../../src/survey/reading/serialDate";
import {
  againstTruth,
  firstAnswers,
  FOREIGN,
  readForeign,
  rowsRead,
  TRUTH,
  type CountedRow,
} from "./foreignSheets";

/** What a sheet's form made of the counts, beside what was counted in truth.csv. */
interface Foreign {
  /** "exact" without a question; "ask" after one answer; "named" where only a recount or a spreadsheet tells. */
  readonly wanted: "exact" | "ask" | "named";
  /** The true rows as this sheet has them. */
  readonly truth?: (row: CountedRow, index: number) => CountedRow;
  /** Half of what the sheet's lengths are rounded to, in metres. */
  readonly roughly?: number;
  /** What has to be said: codes of notes, questions or parts left out. */
  readonly says?: readonly string[];
  /** Kinds of cells that are findings each for itself. */
  readonly kinds?: number;
}

const HALF_INCH = 0.0254 / 2 + 0.0001;
const HALF_CENTIMETRE = 0.005 + 0.0001;

const SHEETS: Readonly<Record<string, Foreign>> = {
  "wide-one-line-a-vine": {
    wanted: "exact",
    truth: ({ cordon: _, ...row }) => row,
    says: ["turned"],
  },
  "heads-over-two-lines": { wanted: "exact" },
  "sheet-a-row-keys-above": { wanted: "exact", says: ["keysAbove"] },
  "keys-merged": { wanted: "exact", says: ["mergedFilled"] },
  "keys-once-a-group": { wanted: "exact", says: ["filledDown"] },
  "totals-with-a-vine-number": { wanted: "exact", says: ["totalLines"] },
  "tally-marks": { wanted: "exact", says: ["strokes"] },
  "dates-day-or-month": {
    wanted: "exact",
    // Counted on 12 to 15 January, written as 2 to 5 February.
    truth: (row) => ({
      ...row,
      counted_on: String(row.counted_on).replace(
        /2026-01-(\d\d)/,
        (_, day: string) => `2026-02-0${Number(day) - 10}`,
      ),
    }),
    says: ["datesSettled"],
  },
  "dates-in-words": { wanted: "exact" },
  "formulas-never-calculated": { wanted: "named", says: ["notCalculated"] },
  "spanish-farm-words": { wanted: "exact", roughly: HALF_CENTIMETRE },
  "heads-with-noise": { wanted: "exact" },
  "block-names-vary": { wanted: "exact" },
  "two-tables-side-by-side": { wanted: "exact", says: ["sideBySide"] },
  "second-header-other-column": { wanted: "exact", says: ["secondHeads"] },
  "one-sheet-last-years-date": { wanted: "ask", says: ["winter", "pastWinter"] },
  "counted-september-october": {
    wanted: "exact",
    // East Slope was counted on 22 September, Pond Field on 6 October.
    truth: (row) => ({ ...row, counted_on: row.block === "East Slope" ? "2025-09-22" : "2025-10-06" }),
    says: ["oneWinter"],
  },
  "planting-year-in-sheet-name": { wanted: "exact", says: ["plantingYear"] },
  "spurs-dead": { wanted: "exact", says: ["liveDerived"] },
  "live-spurs-of-two-years": { wanted: "exact", says: ["yearTaken", "qualifier"] },
  "length-ins": { wanted: "exact", roughly: HALF_INCH },
  "length-no-unit-inches": { wanted: "ask", roughly: HALF_INCH, says: ["unit"] },
  // Every 40th row stands at a replant behind its vine.
  "vine-twelve-and-a-half": {
    wanted: "exact",
    truth: (row, i) => (i % 40 === 0 ? { ...row, vine: Number(row.vine) + 0.5 } : row),
  },
  "all-text-media-luna": {
    wanted: "exact",
    truth: (row) => ({ ...row, block: row.block === "East Slope" ? "Media Luna" : row.block! }),
    says: ["textNumbers"],
  },
  "side-lh-rh": { wanted: "exact" },
  "other-sheets-beside": { wanted: "exact", says: ["notCounts"] },
  "half-under-unknown-heads": { wanted: "ask", says: ["heads", "otherHeads"] },
  "caption-lines": { wanted: "exact", says: ["captions"] },
  "auto-dates": { wanted: "named", says: ["oddCounts"], kinds: 4 },
};
/** They hold no plain counts of cordons and have tests of their own below. */
const APART = ["odd-counts", "prunings-kgs"];

const TODAY = serialOf(2026, 2, 20);

test("every workbook of the folder is a case", () => {
  const files = readdirSync(FOREIGN).filter((name) => name.endsWith(".xlsx"));
  expect(files.map((name) => name.replace(".xlsx", "")).sort()).toEqual(
    [...Object.keys(SHEETS), ...APART].sort(),
  );
  expect(files).toHaveLength(31);
  // At least 26 of the 31 exact without or after one answer.
  expect(Object.values(SHEETS).filter(({ wanted }) => wanted !== "named").length).toBeGreaterThanOrEqual(26);
});

test.each(Object.keys(SHEETS))(
  "%s: no count but the true one, nothing missing without a word",
  async (name) => {
    const { wanted, truth = (row: CountedRow) => row, roughly, says = [], kinds = 1 } = SHEETS[name];
    const counted = TRUTH.map(truth);
    const season = await readForeign(`${name}.xlsx`);
    const { notes, questions, leftOut } = season.account;
    const before = againstTruth(rowsRead(season), counted, roughly);
    expect(before.wrong).toEqual([]);
    const said = [
      ...[...notes, ...questions].map(({ code }) => code),
      ...leftOut.map(({ reason }) => reason),
    ];
    expect(said).toEqual(expect.arrayContaining([...says]));
    if (wanted === "exact") {
      expect(before.missing).toEqual([]);
      expect(questions).toEqual([]);
    } else expect(questions.length + leftOut.length).toBeGreaterThan(0);
    if (questions.length > 0) {
      const after = await readForeign(`${name}.xlsx`, firstAnswers(season));
      const exact = againstTruth(rowsRead(after), counted, roughly);
      expect(exact.wrong).toEqual([]);
      expect(after.account.questions).toEqual([]);
      if (wanted === "ask") expect([questions.length, exact.missing]).toEqual([1, []]);
    }
    const groups = findingGroups(allFindings(season, { today: TODAY }), season);
    const causes = new Map<string, number>();
    for (const { code } of groups) causes.set(code, (causes.get(code) ?? 0) + 1);
    expect(Math.max(0, ...causes.values())).toBeLessThanOrEqual(Math.max(3, kinds));
  },
);

/** What a careful clerk reads in an odd cell: metres of a length, a count; nothing where only the crew knows. */
const ODD_CELLS: Readonly<Record<string, number>> = {
  "40 in": 40 * 0.0254,
  "3'6\"": 3.5 * 0.3048,
  "3'": 3 * 0.3048,
  "3 1/2": 3.5 * 0.3048,
  "3ft": 3 * 0.3048,
  '36"': 36 * 0.0254,
  "1.2m": 1.2,
  "10.": 10,
  "=8": 8,
  " 8 ": 8,
  "8\u00a0": 8,
  "８": 8,
  "8 spurs": 8,
};

test("odd-counts: certain cells are read as they say and named, every other one is asked or found", async () => {
  const season = await readForeign("odd-counts.xlsx");
  const [table] = season.tables("cordons");
  const found = new Set(allFindings(season, { today: TODAY }).map(({ row, column }) => `${row} ${column}`));
  let unasked = 0;
  for (const [id, name] of [
    ["length", "length"],
    ["liveSpurs", "live_spurs"],
  ]) {
    const column = table.column(id)!;
    for (let i = 0; i < table.rowCount; i++) {
      const raw = column.raw.at(i)!;
      if (typeof raw === "number") {
        expect(Math.abs(column.numbers[i] - Number(TRUTH[i][name]))).toBeLessThan(0.0001);
        continue;
      }
      const isLength = id === "length" && raw !== "3,2";
      const clerk = isLength || id === "liveSpurs" ? ODD_CELLS[String(raw)] : undefined;
      if (clerk !== undefined && !(id === "liveSpurs" && /['"]/.test(String(raw)))) {
        expect([raw, column.numbers[i]]).toEqual([raw, expect.closeTo(clerk, 9)]);
        unasked++;
      } else {
        expect([raw, column.usable[i]]).toEqual([raw, NaN]);
        expect(found).toContain(`${table.sheetRow(i)} ${column.header}`);
      }
    }
  }
  // 39 lengths with a unit or a fraction of their own, and 2 each of 10. =8 " 8 " 8 with a no-break space, wide 8, 8 spurs.
  expect(unasked).toBe(39 + 12);
  const { notes, questions } = season.account;
  expect(notes.map(({ code, facts }) => [code, facts.cells])).toEqual([
    ["ownUnits", 39],
    ["worded", 12],
  ]);
  // 33 cells of other kinds: 3 each of nine kinds, 2 of a length in place of a count, 2 of O and 2 of l0; a question for a kind.
  expect(questions.map(({ facts }) => [facts.kind, facts.cells])).toEqual([
    ["sum", 3],
    ["star", 3],
    ["range", 3],
    ["part", 3],
    ["about", 3],
    ["remark", 3],
    ["doubt", 3],
    ["fraction", 3],
    ["spaced", 3],
    ["measure", 2],
    ["letter", 4],
  ]);
});

test("prunings-kgs: prunings are kilograms, and the register is read whole", async () => {
  const season = await readForeign("prunings-kgs.xlsx");
  const [table] = season.tables("vines");
  const book = await openWorkbookBytes("prunings-kgs.xlsx", readFileSync(join(FOREIGN, "prunings-kgs.xlsx")));
  const { values } = await book.readSheet(book.sheetNames[0]);
  expect(table.rowCount).toBe(values.length - 1);
  const prunings = table.column("prunings")!;
  for (let i = 0; i < table.rowCount; i++)
    expect(prunings.usable[i]).toBe(typeof values[i + 1][5] === "number" ? values[i + 1][5] : NaN);
  // 39 vines were weighed.
  expect([...prunings.usable].filter((mass) => !Number.isNaN(mass))).toHaveLength(39);
  expect(season.account.questions).toEqual([]);
});
