import { allFindings, type CheckOptions } from "../../../src/survey/checks/checkSeason";
import { mendOf } from "../../../src/survey/checks/mendOf";
import { readSeason } from "../../../src/survey/reading/readSeason";
import type { SheetArea } from "../../../src/survey/reading/sheetArea";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { CORDON, sheetOf, upTo, VINE, type Cells } from "./found";

/** What would mend the findings of a kind: the sheet row and what the cell would hold. */
function mends(code: string, area: SheetArea, options?: CheckOptions) {
  const season = readSeason([area]);
  return allFindings(season, options)
    .filter((finding) => finding.code === code)
    .flatMap((finding) => mendOf(finding, season))
    .map(({ row, to, isCertain }) => (isCertain ? [row, to, "certain"] : [row, to]));
}
const cordon = (row: Cells) => sheetOf("Cordons", CORDON, [{ Vine: 9 }, row]);

describe("what would mend a number", () => {
  test("written as text is that number, for certain", () => {
    expect(mends("numberAsText", cordon({ "Live spurs": "7" }))).toEqual([[3, 7, "certain"]]);
  });

  test("that a count became is what was counted; of a length or of no count nobody can say", () => {
    expect(mends("notANumber", cordon({ Positions: "6 + 2" }))).toEqual([[3, 8]]);
    expect(mends("notANumber", cordon({ Positions: "many" }))).toEqual([]);
    expect(mends("notANumber", cordon({ "Length (ft)": "2 + 1" }))).toEqual([]);
  });

  test("of which two digits changed places is the one that fits", () => {
    const { "Length (ft)": _, ...rest } = CORDON;
    const rows = upTo(13).map((Vine) => ({ Vine, "Length (cm)": Vine === 13 ? 28 : 82 }));
    expect(mends("digitsSwapped", sheetOf("Cordons", rest, rows))).toEqual([[14, 82]]);
  });

  test("counted on a missing vine as 0 is a blank", () => {
    expect(mends("missingAsZero", sheetOf("Vines", VINE, [{ Status: "missing", Clusters: 0 }]))).toEqual([
      [2, null],
    ]);
  });
});

describe("a measure in another unit", () => {
  // 19 oz are 19 / 16 = 1.1875 lb.
  test("is written in the column's with three digits", () => {
    const rows = [0.3, 0.8, 1.2, 19, 1.9, 0.7, 1.1, 1.4, 0.9, 2.2].map((weight, at) => ({
      Vine: at + 1,
      "Prunings (lb)": weight,
    }));
    expect(mends("unitSlip", sheetOf("Vines", VINE, rows))).toEqual([[5, 1.19]]);
  });

  // 91 cm are 91 / 2.54 = 35.8 in.
  test("is mended over its stretch of rows, but for blank ones", () => {
    const { "Length (ft)": _, ...rest } = CORDON;
    const lengths = [...upTo(20).map(() => 36), 91, 91, null, 91, 91, 91, 36];
    const rows = lengths.map((length, at) => ({ Vine: at + 1, "Length (in)": length }));
    expect(mends("unitSlip", sheetOf("Cordons", rest, rows))).toEqual(
      [22, 23, 25, 26, 27].map((row) => [row, 35.8]),
    );
  });
});

describe("three digits behind a point", () => {
  const read = (text: string, others: readonly CellValue[]) => {
    const season = readSeason([
      sheetOf(
        "Cordons",
        CORDON,
        [text, ...others].map((height, at) => ({ Vine: at + 1, "Spur height (mm)": height })),
      ),
    ]);
    return allFindings(season)
      .filter(({ code }) => code === "numberAsText")
      .flatMap((finding) => mendOf(finding, season))
      .map(({ to, other }) => [to, other]);
  };

  // 1000 mm are 40 times 25 mm, 1 mm is a 25th of it; of 40 mm it is the other way round. A height of 0 tells nothing.
  test.each<[string, CellValue[], unknown]>([
    ["1.000", [25, 25, 25], [1, 1000]],
    ["1.000", [0, 0, 0, 25, 25], [1, 1000]],
    ["1.000", [25, 25, 900], [1, 1000]],
    ["1.000", [900, 25, 25], [1, 1000]],
    ["1.000", [40, 40, 40], [1000, 1]],
    ["1.000", [], [1000, 1]],
  ])("%s mm among %j are the nearer of thousands and parts first", (text, others, expected) => {
    expect(read(text, others)).toEqual([expected]);
  });

  test("lie within the column's limits, the limits themselves with them", () => {
    expect(read("1.001", [900, 900])).toEqual([[1.001, undefined]]);
    expect(read("-1.250", [25])).toEqual([]);
  });
});

describe("what would mend a date", () => {
  const dated = (days: readonly CellValue[]) =>
    sheetOf(
      "Cordons",
      CORDON,
      days.map((Date, at) => ({ Vine: at + 1, Date })),
    );
  const JANUARY = upTo(9).map((day) => `2026-01-0${day}`);

  test.each<[string, CellValue, unknown[]]>([
    ["a day of the new year", "12 Feb", ["2026-02-12"]],
    ["a day of the old year", "12 Nov", ["2025-11-12"]],
    ["a day that can be two", "2/12", []],
    ["no day", "soon", []],
    ["a number", 7, []],
  ])("without its year is that of the sheet's winter: %s, %p", (_, cell, expected) => {
    expect(mends("notADate", dated([...JANUARY, cell]))).toEqual(expected.map((to) => [11, to]));
  });

  test("without its year stays where the sheet has no other day", () => {
    expect(mends("notADate", dated(["12 Feb", "13 Feb"]))).toEqual([]);
  });

  // 46034 is 12 January 2026 (126 x 365 + 32 + 12).
  test.each<[string, CellValue, unknown[]]>([
    ["a year early", "2025-01-12", ["2026-01-12"]],
    ["a year early, as a number", 46034 - 365, [46034]],
    ["a year late", "2027-01-12", ["2026-01-12"]],
    ["two years early", "2024-01-12", []],
  ])("of another year is the same day in the sheet's winter: %s, %p", (_, cell, expected) => {
    expect(mends("dateOtherYear", dated([...JANUARY, cell]))).toEqual(expected.map((to) => [11, to]));
  });

  test("of another year is none where the sheet's winter has no such day", () => {
    const days = upTo(9).map((day) => `2025-01-0${day}`);
    expect(mends("dateOtherYear", dated([...days, "2024-02-28"]))).toEqual([[11, "2025-02-28"]]);
    expect(mends("dateOtherYear", dated([...days, "2024-02-29"]))).toEqual([]);
  });

  // 46054 is 1 February 2026, twenty days after 46034.
  test.each<[string, unknown[]]>([
    ["2027-01-12", ["2026-01-12"]],
    ["2027-02-01", ["2026-02-01"]],
    ["2027-02-02", []],
  ])(
    "in the future is a year earlier, unless that is in the future too: %s on 1 February",
    (day, expected) => {
      expect(mends("dateInFuture", dated([...JANUARY, day]), { today: 46054 })).toEqual(
        expected.map((to) => [11, to]),
      );
    },
  );
});
