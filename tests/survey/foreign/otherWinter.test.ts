import { allFindings } from "../../../src/survey/checks/checkSeason";
import { questionSentence } from "../../../src/survey/reading/readingSentence";
import { readLargeSeason } from "../../../src/survey/reading/readLargeSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { serialOf } from "../../../src/survey/reading/serialDate";
import { readSentence } from "../../../src/survey/season/accountSentences";
import { seasonAccount } from "../../../src/survey/season/seasonAccount";
import { LANGUAGES } from "../../../src/texts/language";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";
import { cordonHeads } from "../cordonHeads";
import { againstTruth, firstAnswers, rowsRead, TRUTH, type CountedRow } from "./foreignSheets";

const HEADS = [...cordonHeads("m"), "Date"];
const truth = TRUTH.map(({ condition: _, counted_by: __, longest_gap: ___, ...row }): CountedRow => row);
const cell = (row: CountedRow, head: string) =>
  (head === "Row"
    ? row.vine_row
    : head === "Length (m)"
      ? row.length
      : row[head.toLowerCase().replace(" ", "_")]) ?? null;
const dayOf = ({ counted_on }: CountedRow, years: number) => {
  const [year, month, day] = String(counted_on).split("-").map(Number);
  return serialOf(year + years, month, day)!;
};
/** What was counted in January and February 2026, with every date some years off. */
const counts = (sheet: string, years: number, rows: readonly CountedRow[] = TRUTH) =>
  areaOf(sheet, [
    HEADS,
    ...rows.map((row) => HEADS.map((head) => (head === "Date" ? dayOf(row, years) : cell(row, head)))),
  ]);
const vines = areaOf("Vines", [
  ["Block", "Row", "Vine", "Status", "Prunings (kg)", "Date"],
  ...["East Slope", "Pond Field"].map((block) => [block, 1, 1, "bearing", 0.6, serialOf(2026, 1, 20)!]),
]);

describe("counts that are all dated a year off", () => {
  test.each([
    ["the name of their sheet", [counts("Counts 2026", -1)], undefined, "name"],
    ["the two years in the name of their sheet", [counts("Counts 2025-26", -1)], undefined, "name"],
    ["counts of vines beside them", [counts("Cordons", -1), vines], undefined, "sheets"],
    ["the day on which they are read", [counts("Cordons", 1)], serialOf(2026, 2, 20), "today"],
  ] as const)(
    "are one question where %s says otherwise, and the true days after it",
    (_, areas, today, by) => {
      const season = readSeason(areas, { today });
      const [question, ...others] = season.account.questions;
      expect(others).toEqual([]);
      const dated = by === "today" ? 2027 : 2025;
      expect([question.code, question.facts]).toEqual([
        "otherWinter",
        { sheets: [areas[0].sheet], rows: 451, winter: dated, likely: 2026, by },
      ]);
      expect(question.proposals).toEqual(
        [2026, dated].map((winter) => ({ winters: [{ sheet: areas[0].sheet, winter }] })),
      );
      for (const language of LANGUAGES)
        expect(questionSentence(question, language)).not.toMatch(/\{|undefined/);
      const after = readSeason(areas, { today, answers: firstAnswers(season) });
      expect(after.account.questions).toEqual([]);
      expect(againstTruth(rowsRead(after), truth)).toEqual({ wrong: [], missing: [] });
      const kept = readSeason(areas, { today, answers: question.proposals[1] });
      expect(kept.account.questions).toEqual([]);
      expect(rowsRead(kept)[0].counted_on).toBe(`${dated}-01-12`);
    },
  );

  test("are one question for all their sheets", () => {
    const rows = ["East Slope", "Pond Field"].map((block) => TRUTH.filter((row) => row.block === block));
    const areas = rows.map((own) => counts(`${String(own[0].block)} 2026`, -1, own));
    const season = readSeason(areas);
    expect(season.account.questions.map(({ code, facts }) => [code, facts.sheets, facts.rows])).toEqual([
      ["otherWinter", ["East Slope 2026", "Pond Field 2026"], 451],
    ]);
    expect(questionSentence(season.account.questions[0], "en")).toBe(
      "East Slope 2026, Pond Field 2026: 451 rows are dated in the winter 2025, but the name of the sheet says the winter 2026. Which is it?",
    );
    const after = readSeason(areas, { answers: firstAnswers(season) });
    expect(againstTruth(rowsRead(after), truth)).toEqual({ wrong: [], missing: [] });
  });

  test("are no question but said where nothing says otherwise", () => {
    for (const [sheet, years, winter] of [
      ["Cordons", -1, 2025],
      ["Cordons", 0, 2026],
      // Counted in the winter that began in 2025, planted in 2016, kept in the sheet of the winter before the date.
      ["Counts 2025", 0, 2026],
      ["Pond Field 2016", 0, 2026],
    ] as const) {
      const season = readSeason([counts(sheet, years)], { today: serialOf(2026, 3, 1) });
      expect([sheet, season.account.questions]).toEqual([sheet, []]);
      expect(readSentence(seasonAccount(season), "en")).toBe(
        `Read: 1 file, 1 sheet, 1 table, 10 columns, 451 rows. Taken as counts of the winter ${winter}.`,
      );
      expect(seasonAccount(season).read.winters).toEqual([winter]);
    }
  });

  test("are the same question in a sheet that is read in pieces", async () => {
    const area = counts("Counts 2026", -1);
    const rows = area.values.map((values, i) => ({ number: i + 1, values, formulas: undefined }));
    const sheets = [
      {
        sheet: area.sheet,
        async *rows() {
          yield await Promise.resolve(rows);
        },
      },
    ];
    const season = await readLargeSeason(sheets, { wholeRows: 10, pieceRows: 100 });
    expect(season.account.questions.map(({ code, facts }) => [code, facts.rows])).toEqual([
      ["otherWinter", 451],
    ]);
    const after = await readLargeSeason(sheets, {
      wholeRows: 10,
      pieceRows: 100,
      answers: firstAnswers(season),
    });
    expect(againstTruth(rowsRead(after), truth)).toEqual({ wrong: [], missing: [] });
  });
});

describe("blocks that were counted in September and October, on both sides of the season's first day", () => {
  const days: Readonly<Record<string, number>> = {
    "East Slope": serialOf(2025, 9, 22)!,
    "Pond Field": serialOf(2025, 10, 6)!,
  };
  const dated = TRUTH.map((row) =>
    HEADS.map((head) => (head === "Date" ? days[String(row.block)] : cell(row, head))),
  );
  test.each([
    ["in one sheet", [areaOf("Counts", [HEADS, ...dated])]],
    [
      "in a sheet each",
      Object.keys(days).map((block) => areaOf(block, [HEADS, ...dated.filter(([own]) => own === block)])),
    ],
  ])("%s are one winter and ask once about their dates", (_, areas) => {
    const season = readSeason(areas);
    expect(season.account.questions).toEqual([]);
    expect(season.used.account()).toMatchObject({ rows: 451, used: 451 });
    expect(readSentence(seasonAccount(season), "en")).toContain(
      "451 rows. Taken as counts of the winter 2026.",
    );
    const found = allFindings(season, { today: serialOf(2026, 2, 20) }).filter(({ code }) =>
      code.startsWith("date"),
    );
    expect(found.map(({ code, row, facts }) => [code, row, facts.value, facts.rows])).toEqual([
      ["dateOutOfSeason", 2, "2025-09-22 … 2025-10-06", 451],
    ]);
  });
});

describe("counts of two winters in one table, with a column of years", () => {
  const COUNTED = HEADS.slice(0, -1);
  const line = (row: CountedRow) => COUNTED.map((head) => cell(row, head));
  /** What last winter's rows say: a spur less than was counted this winter, so that a mixed reading shows. */
  const before = TRUTH.map((row): CountedRow => ({
    ...row,
    live_spurs: Math.max(0, Number(row["live_spurs"]) - 1),
  }));
  const both = (head: string, last: CellValue, now: CellValue, rows: readonly CountedRow[] = before) =>
    areaOf("All counts", [
      [head, ...COUNTED],
      ...rows.map((row) => [last, ...line(row)]),
      ...TRUTH.map((row) => [now, ...line(row)]),
    ]);

  test.each<[string, CellValue, CellValue]>([
    ["Year", 2025, 2026],
    ["Season:", "2024/25", "2025/26"],
    ["Campaña", "2025", "2026"],
    ["Hiver", 2025, 2026],
  ])("are read of the last winter alone, and the others named: %s", (head, last, now) => {
    const season = readSeason([both(head, last, now)]);
    expect(againstTruth(rowsRead(season), truth)).toEqual({ wrong: [], missing: [] });
    expect(season.account.leftOut).toEqual([
      {
        what: "rows",
        reason: "pastWinter",
        sheet: "All counts",
        facts: { rows: TRUTH.length, winter: 2025 },
      },
    ]);
    expect(season.account.questions).toEqual([]);
    expect(allFindings(season).filter(({ code }) => code === "sameCordonTwice")).toEqual([]);
  });

  test("lines between one another, as vines were walked, and cells keep their places", () => {
    const mixed = areaOf("All counts", [
      [...COUNTED, "Winter"],
      ...TRUTH.flatMap((row, at) => [
        [...line(before[at]), 2025],
        [...line(row), 2026],
      ]),
    ]);
    const season = readSeason([mixed]);
    expect(againstTruth(rowsRead(season), truth)).toEqual({ wrong: [], missing: [] });
    const [table] = season.tables("cordons");
    expect([table.sheetRow(0), table.sheetRow(1)]).toEqual([3, 5]);
  });

  test("years of planting, which differ by block and in which no vine stands twice, part nothing", () => {
    const planted = areaOf("Cordons", [
      ["Year", ...COUNTED],
      ...TRUTH.map((row) => [row["block"] === TRUTH[0]["block"] ? 2009 : 2016, ...line(row)]),
    ]);
    const register = areaOf("Vines", [
      ["Block", "Row", "Vine", "Status", "Year"],
      ["East Slope", 1, 1, "bearing", 2009],
      ["East Slope", 1, 2, "replanted", 2021],
    ]);
    const season = readSeason([planted, register]);
    expect(againstTruth(rowsRead(season), truth)).toEqual({ wrong: [], missing: [] });
    expect(season.tables("vines").map(({ rowCount }) => rowCount)).toEqual([2]);
    expect(season.account.leftOut.map(({ what, facts }) => [what, facts["head"]])).toEqual([
      ["column", "Year"],
      ["column", "Year"],
    ]);
  });

  test("dates tell them apart where the same cordons stand in the table again", () => {
    const dated = (rows: readonly CountedRow[], years: number) =>
      rows.map((row) => HEADS.map((head) => (head === "Date" ? dayOf(row, years) : cell(row, head))));
    const season = readSeason([areaOf("All counts", [HEADS, ...dated(before, -1), ...dated(TRUTH, 0)])]);
    expect(againstTruth(rowsRead(season), truth)).toEqual({ wrong: [], missing: [] });
    expect(season.account.leftOut.map(({ reason, facts }) => [reason, facts["winter"]])).toEqual([
      ["pastWinter", 2025],
    ]);
    // A January that was typed a year early is no count of its own: its cordons stand once.
    const slipped = readSeason([
      areaOf("All counts", [HEADS, ...dated(TRUTH.slice(0, 9), -1), ...dated(TRUTH.slice(9), 0)]),
    ]);
    expect(rowsRead(slipped)).toHaveLength(TRUTH.length);
  });

  test("a column of one year changes nothing", () => {
    const season = readSeason([both("Year", 2026, 2026, [])]);
    expect(againstTruth(rowsRead(season), truth)).toEqual({ wrong: [], missing: [] });
    expect(season.account.leftOut.map(({ what, facts }) => [what, facts["head"]])).toEqual([
      ["column", "Year"],
    ]);
  });
});
