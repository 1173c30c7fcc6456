import { allFindings } from "../../../src/survey/checks/checkSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { leftOutSentence } from "../../../src/survey/reading/readingSentence";
import { leavesOpen } from "../../../src/survey/season/seasonAccount";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";

const HEADS = [...CORDON_HEADS, "Date"];
/** Serial of 29 September 2025: 12 January 2026 is 46034, 105 days later (2 of September, 31, 30, 31 and 11 of January). */
const END_OF_SEPTEMBER = 45929;

/** An invented block of two rows with four vines, two cordons each; `day` dates a row of vines. */
const counted = (day: (row: number) => CellValue): CellValue[][] =>
  [1, 2].flatMap((row) =>
    [1, 2, 3, 4].flatMap((vine) =>
      ["left", "right"].map((side, at): CellValue[] => [
        "North Bench",
        row,
        vine,
        side,
        "AB"[at],
        at + 1,
        3,
        8,
        5 + ((row + vine + at) % 3),
        day(row),
      ]),
    ),
  );
const blank = counted(() => null).map((row) => row.map((cell, at) => (at < 5 ? cell : null)));

test("counts on both sides of the winters' border in one sheet are one winter, and no day is taken for another year's", () => {
  const season = readSeason([
    areaOf("Cordons", [HEADS, ...counted((row) => END_OF_SEPTEMBER + 2 * (row - 1))]),
  ]);
  expect(season.used.account()).toMatchObject({ rows: 16, used: 16 });
  const codes = allFindings(season).map(({ code }) => code);
  expect(codes).not.toContain("dateOtherYear");
  expect(codes).toContain("dateOutOfSeason");
});

test("a day of the year before among them is still asked about", () => {
  const rows = counted(() => END_OF_SEPTEMBER);
  rows[3][9] = END_OF_SEPTEMBER - 365;
  const season = readSeason([areaOf("Cordons", [HEADS, ...rows])]);
  expect(allFindings(season).map(({ code }) => code)).toContain("dateOtherYear");
});

test("sheets that are laid out and blank are still to be counted: no finding, and not clean", () => {
  const season = readSeason([areaOf("Cordons", [HEADS, ...blank])]);
  expect(allFindings(season)).toEqual([]);
  expect(leavesOpen(season)).toBe(true);
  expect(season.used.account()).toMatchObject({ used: 0, leftOut: [{ reason: "toCount", rows: 16 }] });
});

test("a blank form beside the counts of its vines is named and changes none of them", () => {
  const season = readSeason([
    areaOf("Form", [HEADS, ...blank]),
    areaOf("Cordons", [HEADS, ...counted(() => END_OF_SEPTEMBER + 105)]),
  ]);
  expect(season.tables("cordons").map(({ sheet }) => sheet)).toEqual(["Cordons"]);
  expect(season.used.account()).toMatchObject({ rows: 16, used: 16 });
  expect(season.account.leftOut.map((part) => leftOutSentence(part, "en"))).toEqual([
    "Form: 16 rows are laid out and blank; their vines are counted in other sheets.",
  ]);
  expect(allFindings(season)).toEqual([]);
  expect(leavesOpen(season)).toBe(false);
});
