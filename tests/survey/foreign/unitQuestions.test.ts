import { allFindings } from "../../../src/survey/checks/checkSeason";
import { findingGroups } from "../../../src/survey/checks/findingGroups";
import { answersTable } from "../../../src/survey/reading/keptAnswers";
import { questionSentence } from "../../../src/survey/reading/readingSentence";
import { readLargeSeason } from "../../../src/survey/reading/readLargeSeason";
import { readRow, readSeason } from "../../../src/survey/reading/readSeason";
import type { SheetArea } from "../../../src/survey/reading/sheetArea";
import type { Season } from "../../../src/survey/season/season";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";
import { againstTruth, firstAnswers, rowsRead, TRUTH, type CountedRow } from "./foreignSheets";

type Cells = CellValue[];

/** Metres in a unit, exact by definition. */
const METRES: Readonly<Record<string, number>> = { ft: 0.3048, in: 0.0254, m: 1, cm: 0.01, mm: 0.001 };
/** Vines are shared out: RP, JM and AK walk each row one behind the other. */
const COUNTERS = ["RP", "JM", "AK"];
const counterOf = ({ vine }: CountedRow) => COUNTERS[Number(vine) % 3];
/** Millimetres halfway along a cordon: 18 to 34, no two neighbours alike. */
const thick = (i: number) => 18 + ((i * 7) % 17);
const COUNTED = TRUTH.map((row, i): CountedRow => ({
  ...row,
  counted_by: counterOf(row),
  diameter: thick(i) / 1000,
}));
const HEADS = ["Block", "Row", "Vine", "Side", "Cordon", "Trunk", "Length", "Positions", "Live spurs"];
const LENGTH = HEADS.indexOf("Length");

/** The rows under heads of one unit, lengths of each counter in his own. */
function counts(head: string, unitOf: (counter: string, row: CountedRow) => string): Cells[] {
  return [
    [...HEADS.map((name) => (name === "Length" ? `Length (${head})` : name)), "Initials"],
    ...COUNTED.map((row): Cells => {
      const unit = unitOf(counterOf(row), row);
      return [
        ...HEADS.slice(0, 6).map((name) => row[name === "Row" ? "vine_row" : name.toLowerCase()]),
        Number(row.length) / METRES[unit],
        row.positions,
        row.live_spurs,
        counterOf(row),
      ] as Cells;
    }),
  ];
}

const TRUTH_OF_LENGTHS = COUNTED.map(({ diameter: _, longest_gap: __, condition: ___, ...row }) => row);
/** Rows of a counter, by hand: every third vine. */
const rowsOf = (counter: string) => COUNTED.filter((row) => row.counted_by === counter).length;

function mostOfACause(season: Season): number {
  const causes = new Map<string, number>();
  for (const { code } of findingGroups(allFindings(season), season))
    causes.set(code, (causes.get(code) ?? 0) + 1);
  return Math.max(0, ...causes.values());
}

describe("one counter who wrote in another unit than the head's", () => {
  test.each([
    ["ft", "in"],
    ["ft", "cm"],
    ["m", "cm"],
    ["m", "ft"],
    ["in", "cm"],
    ["cm", "in"],
    ["ft", "m"],
  ])("is one question for %s written as %s, and exact after the answer", (head, own) => {
    const areas = [
      areaOf(
        "Counts",
        counts(head, (counter) => (counter === "JM" ? own : head)),
      ),
    ];
    const season = readSeason(areas);
    expect(season.account.questions.map(({ code, facts }) => [code, facts])).toEqual([
      [
        "counterUnit",
        {
          sheets: ["Counts"],
          counter: "JM",
          head: `Length (${head})`,
          column: "length",
          unit: head,
          likely: own,
          rows: rowsOf("JM"),
        },
      ],
    ]);
    const { wrong, missing } = againstTruth(rowsRead(season), TRUTH_OF_LENGTHS, 1e-9);
    expect(wrong).toEqual([]);
    // Nothing but the lengths of that counter is open till it is answered.
    expect(missing).toHaveLength(rowsOf("JM"));
    expect(missing.filter((cell) => !cell.endsWith(" length"))).toEqual([]);
    const slips = (of: Season) =>
      allFindings(of).filter(({ code }) => /outsideLimits|unitSlip|unlikeItsBlock|notANumber/.test(code));
    expect(slips(season)).toEqual([]);
    const answers = firstAnswers(season);
    const after = readSeason(areas, { answers });
    expect(after.account.questions).toEqual([]);
    expect(againstTruth(rowsRead(after), TRUTH_OF_LENGTHS, 1e-9)).toEqual({ wrong: [], missing: [] });
    expect(allFindings(after).filter(({ code }) => code === "outsideLimits" || code === "unitSlip")).toEqual(
      [],
    );
    const kept = answersTable(answers, "es");
    const fromSheet = readSeason([...areas, areaOf(kept.sheet, [kept.title, kept.headers, ...kept.rows])]);
    expect(againstTruth(rowsRead(fromSheet), TRUTH_OF_LENGTHS, 1e-9)).toEqual({ wrong: [], missing: [] });
    expect(fromSheet.account.questions).toEqual([]);
  });

  test("is said by name, with the likely unit first and the head's second", () => {
    const season = readSeason([
      areaOf(
        "Counts",
        counts("ft", (counter) => (counter === "JM" ? "in" : "ft")),
      ),
    ]);
    const [question] = season.account.questions;
    expect(questionSentence(question, "en")).toBe(
      `Counts: JM seems to have written ${rowsOf("JM")} values under Length (ft) in in and not in ft; they were not read. In which unit are they?`,
    );
    expect(question.proposals.map(({ units }) => units![0])).toEqual(
      ["in", "ft", "m", "cm", "mm"].map((unit) => ({
        sheet: "Counts",
        column: "length",
        unit,
        counter: "JM",
      })),
    );
  });

  test("is one question for a sheet a row of vines, also where two of three counters did it", () => {
    const all = counts("ft", (counter) => (counter === "JM" ? "in" : counter === "AK" ? "cm" : "ft"));
    const names = [...new Set(all.slice(1).map(([block, row]) => `${String(block)} row ${String(row)}`))];
    const areas = names.map((name) =>
      areaOf(name, [
        all[0],
        ...all.slice(1).filter(([block, row]) => `${String(block)} row ${String(row)}` === name),
      ]),
    );
    const season = readSeason(areas);
    expect(season.account.questions.map(({ facts }) => [facts.counter, facts.likely, facts.sheets])).toEqual([
      ["JM", "in", names],
      ["AK", "cm", names],
    ]);
    expect(againstTruth(rowsRead(season), TRUTH_OF_LENGTHS, 1e-9).wrong).toEqual([]);
    const after = readSeason(areas, { answers: firstAnswers(season) });
    expect(againstTruth(rowsRead(after), TRUTH_OF_LENGTHS, 1e-9)).toEqual({ wrong: [], missing: [] });
    expect(after.account.questions).toEqual([]);
  });

  test("is not asked again where the head's own unit was the answer, and the values stand as written", () => {
    const areas = [
      areaOf(
        "Counts",
        counts("ft", (counter) => (counter === "JM" ? "in" : "ft")),
      ),
    ];
    const units = [{ sheet: "Counts", column: "length", unit: "ft", counter: "jm" }];
    const season = readSeason(areas, { answers: { units } });
    expect(season.account.questions).toEqual([]);
    const [table] = season.tables("cordons");
    const first = COUNTED.findIndex((row) => row.counted_by === "JM");
    // Inches taken as feet are twelve times as long.
    expect(table.column("length")!.numbers[first]).toBeCloseTo(Number(COUNTED[first].length) * 12, 9);
  });

  test("is no question where nobody did, where a habit changed on the way, and where a block's vines are young", () => {
    const asked = (unitOf: Parameters<typeof counts>[1], head = "ft") =>
      readSeason([areaOf("Counts", counts(head, unitOf))]).account.questions;
    expect(asked(() => "ft")).toEqual([]);
    expect(asked((counter, { vine }) => (counter === "JM" && Number(vine) > 20 ? "in" : "ft"))).toEqual([]);
    // RP alone counts Pond Field, whose vines are half as long as they were on a third of the positions.
    const young = COUNTED.map((row): Cells => {
      const isYoung = row.block === "Pond Field";
      return [
        ...HEADS.slice(0, 6).map((name) => row[name === "Row" ? "vine_row" : name.toLowerCase()]),
        (Number(row.length) / METRES.ft) * (isYoung ? 0.3 : 1),
        row.positions,
        row.live_spurs,
        isYoung ? "RP" : ["JM", "AK"][Number(row.vine) % 2],
      ] as Cells;
    });
    expect(readSeason([areaOf("Counts", [counts("ft", () => "ft")[0], ...young])]).account.questions).toEqual(
      [],
    );
  });

  test("is the same question in a sheet that is read in pieces, and a row that is typed is judged in his unit", async () => {
    const area = areaOf(
      "Counts",
      counts("m", (counter) => (counter === "JM" ? "cm" : "m")),
    );
    const rows = area.values.map((values, i) => ({ number: i + 1, values, formulas: undefined }));
    const sheets = [
      {
        sheet: "Counts",
        async *rows() {
          yield await Promise.resolve(rows);
        },
      },
    ];
    const season = await readLargeSeason(sheets, { wholeRows: 10, pieceRows: 64 });
    expect(season.account.questions.map(({ facts }) => [facts.counter, facts.likely, facts.rows])).toEqual([
      ["JM", "cm", rowsOf("JM")],
    ]);
    expect(againstTruth(rowsRead(season), TRUTH_OF_LENGTHS, 1e-9).wrong).toEqual([]);
    const answers = firstAnswers(season);
    const after = await readLargeSeason(sheets, { wholeRows: 10, pieceRows: 64, answers });
    expect(againstTruth(rowsRead(after), TRUTH_OF_LENGTHS, 1e-9)).toEqual({ wrong: [], missing: [] });
    expect(after.account.questions).toEqual([]);
    const values = [...area.values[1]];
    values[LENGTH] = 91;
    values[values.length - 1] = "JM";
    const typed = readRow(after, after.tables("cordons")[0], { row: 2, firstColumn: 1, values })!;
    expect(typed.column("length")!.usable[0]).toBeCloseTo(0.91, 9);
  });
});

describe("diameters under a head without a unit, or under one that cannot be theirs", () => {
  const sheet = (head: string, unit: string, length: "ft" | "m"): SheetArea[] => [
    areaOf("Counts", [
      [...HEADS.map((name) => (name === "Length" ? `Length (${length})` : name)), head],
      ...COUNTED.slice(0, 64).map((row, i): Cells => [
        ...(HEADS.slice(0, 6).map((name) => row[name === "Row" ? "vine_row" : name.toLowerCase()]) as Cells),
        Number(row.length) / METRES[length],
        row.positions as number,
        row.live_spurs as number,
        thick(i) / 1000 / METRES[unit],
      ]),
    ]),
  ];
  const truth = COUNTED.slice(0, 64).map(({ counted_by: _, longest_gap: __, condition: ___, ...row }) => row);

  test.each([
    ["Diameter", "mm", "ft"],
    ["Diameter", "cm", "ft"],
    ["Thickness", "cm", "m"],
    ["Grosor", "in", "m"],
    ["Diameter (in)", "mm", "ft"],
    ["Diameter (mm)", "in", "m"],
    ["Diameter (mm)", "cm", "m"],
  ] as const)("%s in %s beside lengths in %s is one question", (head, unit, length) => {
    const areas = sheet(head, unit, length);
    const season = readSeason(areas);
    expect(season.account.questions.map(({ code, facts }) => [code, facts.head, facts.column])).toEqual([
      ["unit", head, "diameter"],
    ]);
    expect(againstTruth(rowsRead(season), truth, 1e-9).wrong).toEqual([]);
    expect(mostOfACause(season)).toBeLessThanOrEqual(3);
    expect(allFindings(season).filter(({ code }) => code === "outsideLimits")).toEqual([]);
    const offered = season.account.questions[0].proposals.map(({ units }) => units![0].unit);
    expect(offered.slice(0, 2)).toContain(unit);
    const answers = { units: [{ sheet: "Counts", column: "diameter", unit }] };
    const after = readSeason(areas, { answers });
    expect(after.account.questions).toEqual([]);
    expect(againstTruth(rowsRead(after), truth, 1e-9)).toEqual({ wrong: [], missing: [] });
  });

  test.each([
    ["Diameter", "in", "ft"],
    ["Diameter", "mm", "m"],
    ["Diameter (cm)", "cm", "ft"],
  ] as const)("%s in %s beside lengths in %s is read without a word", (head, unit, length) => {
    const season = readSeason(sheet(head, unit, length));
    expect(season.account.questions).toEqual([]);
    expect(againstTruth(rowsRead(season), truth, 1e-9)).toEqual({ wrong: [], missing: [] });
  });

  test("the first proposal is the true unit where only one fits what cordons are", () => {
    const [mm] = readSeason(sheet("Diameter", "mm", "ft")).account.questions;
    expect(mm.proposals[0].units![0].unit).toBe("mm");
    const [cm] = readSeason(sheet("Diameter", "cm", "ft")).account.questions;
    expect(cm.proposals[0].units![0].unit).toBe("cm");
  });
});
