import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";
import { CORDON, found, rowsFound, sheetOf, upTo } from "./found";

/** Cordons, a vine each, of which the days are given. */
const dated = (days: readonly CellValue[], sheet = "Cordons", from = 1) =>
  sheetOf(
    sheet,
    CORDON,
    days.map((Date, at) => ({ Vine: from + at, Date })),
  );
const settings = (first: number, last: number) =>
  areaOf("Settings", [
    ["Setting", "Value", "Unit"],
    ["Season of counts: first month", first, "month"],
    ["Season of counts: last month", last, "month"],
  ]);
const times = (count: number, day: CellValue) => upTo(count).map(() => day);

describe("counts outside the dormant season", () => {
  test.each([
    ["from November to May", 11, 5, ["2025-10-31", "2026-06-01"]],
    [
      "from February to April",
      2,
      4,
      ["2025-10-31", "2025-11-01", "2026-01-31", "2026-05-31", "2026-06-01", "2026-05-01"],
    ],
    [
      "in March alone",
      3,
      3,
      [
        "2025-10-31",
        "2025-11-01",
        "2026-01-31",
        "2026-02-01",
        "2026-05-31",
        "2026-06-01",
        "2026-04-30",
        "2026-05-01",
      ],
    ],
  ])("are told of each day: %s", (_, first, last, expected) => {
    const days = [
      "2025-10-31",
      "2025-11-01",
      "2026-01-31",
      "2026-02-01",
      "2026-03-15",
      "2026-05-31",
      "2026-06-01",
      "2026-04-30",
      "2026-05-01",
    ];
    const told = found("dateOutOfSeason", [dated(days), settings(first, last)], ({ facts }) => facts);
    expect(told.map(({ value }) => value)).toEqual(expected);
    expect(told[0]).toMatchObject({ rows: 1, firstMonth: first, lastMonth: last });
  });

  test("are told once for a stretch of rows", () => {
    const days = [
      ...times(3, "2026-06-01"),
      "2026-01-12",
      null,
      "2026-06-01",
      "2026-06-01",
      ...times(9, "2026-01-12"),
    ];
    expect(found("dateOutOfSeason", [dated(days)], ({ row, facts }) => [row, facts.rows])).toEqual([
      [2, 3],
      [7, 2],
    ]);
  });

  const outside = (...areas: Parameters<typeof rowsFound>[1]) =>
    found("dateOutOfSeason", areas, ({ sheet, row, facts }) => [sheet, row, facts.value, facts.rows]);

  test("are one question where twenty of them are more than half of all", () => {
    const mixed = [...times(10, "2026-07-01"), null, ...times(11, "2026-07-03"), "2026-07-02"];
    expect(outside(dated(["2026-01-12", ...mixed]))).toEqual([["Cordons", 3, "2026-07-01 … 2026-07-03", 22]]);
    expect(outside(dated(times(20, "2026-07-01")))).toEqual([["Cordons", 2, "2026-07-01", 20]]);
    expect(outside(dated(times(19, "2026-07-01")))).toEqual([["Cordons", 2, "2026-07-01", 19]]);
    const half = [...times(20, "2026-07-01"), ...times(5, "2026-07-02")];
    expect(outside(dated([...half, ...times(25, "2026-01-12")]))).toEqual([
      ["Cordons", 2, "2026-07-01", 20],
      ["Cordons", 22, "2026-07-02", 5],
    ]);
    expect(outside(dated([...half, ...times(24, "2026-01-12")]))).toEqual([
      ["Cordons", 2, "2026-07-01 … 2026-07-02", 25],
    ]);
  });

  test("are one question for all sheets, at the first of them", () => {
    const sheets = [
      dated(times(4, "2026-01-12"), "Bench", 1),
      dated(["2026-01-12", ...times(12, "2026-07-02")], "Creek", 10),
      dated(times(12, "2026-07-01"), "Hill", 40),
    ];
    expect(outside(...sheets)).toEqual([["Creek", 3, "2026-07-01 … 2026-07-02", 24]]);
  });
});

describe("days of another winter", () => {
  const other = (days: readonly CellValue[]) =>
    found("dateOtherYear", [dated(days)], ({ row, facts }) => [row, facts.value, facts.rows, facts.season]);

  // The winter begins in October. 75 days before 10 December are 26 September, 76 days the 25th.
  test("are told, but not those of the walk on which the sheet was counted", () => {
    expect(other([...times(9, "2025-12-10"), "2025-09-26"])).toEqual([]);
    expect(other([...times(9, "2025-12-10"), "2025-09-25"])).toEqual([[11, "2025-09-25", 1, "2025/26"]]);
    expect(other([...times(9, "2025-12-10"), "2025-01-12", "2025-01-12"])).toEqual([
      [11, "2025-01-12", 2, "2025/26"],
    ]);
  });

  test("are told of each of two sheets by its own days", () => {
    const areas = [
      dated(times(9, "2025-12-10"), "Cordons"),
      dated([...times(9, "2026-03-10"), "2025-09-28"], "More", 20),
    ];
    expect(found("dateOtherYear", areas, ({ sheet, row }) => [sheet, row])).toEqual([["More", 11]]);
  });
});

// 46034 is 12 January 2026.
test("a day after that of the check is told, the day itself and its hours are not", () => {
  expect(rowsFound("dateInFuture", [dated([46034, 46034.7, 46035])], { today: 46034 })).toEqual([4]);
  expect(rowsFound("dateInFuture", [dated([46034, 46035])])).toEqual([]);
});

describe("a day that does not fit the walk through its vineyard row", () => {
  const strays = (days: readonly (CellValue | readonly [row: number, day: CellValue])[]) =>
    found(
      "dateOutOfWalkOrder",
      [
        sheetOf(
          "Cordons",
          CORDON,
          days.map((one, at) => ({
            Vine: at + 1,
            ...(Array.isArray(one)
              ? { Row: one[0] as number, Date: one[1] as CellValue }
              : { Date: one as CellValue }),
          })),
        ),
      ],
      ({ row, facts }) => [row, facts.value, facts.usual],
    );
  const [A, B, C] = ["2026-01-12", "2026-01-13", "2026-01-20"];

  test("is told with the middle one of the others", () => {
    expect(strays([A, A, C, A, B, B, B])).toEqual([[4, C, B]]);
    expect(strays([B, B, B, A, B, B, A])).toEqual([[5, A, B]]);
    expect(strays([A, A, B, B, C, C])).toEqual([]);
    expect(strays([C, C, B, B, A, A])).toEqual([]);
  });

  // Of ten rows two are a fifth; told once for two beside each other.
  test("is one of a fifth at most, and told once for rows beside each other", () => {
    expect(strays([A, A, C, C, A, A, A, A, B, B])).toEqual([[4, C, A]]);
    expect(strays([A, A, C, A, A, C, A, A, B, B])).toEqual([
      [4, C, A],
      [7, C, A],
    ]);
    expect(strays([A, A, C, A, A, C, A, A, C, A, B])).toEqual([]);
  });

  test("is judged row by row of the vineyard, blank days left out", () => {
    const first = times(6, C).map((day) => [1, day] as const);
    const second = [A, A, C, A, null, A, B].map((day) => [2, day] as const);
    expect(strays([...first, ...second])).toEqual([[10, C, A]]);
    expect(strays([...second, ...first])).toEqual([[4, C, A]]);
  });
});
