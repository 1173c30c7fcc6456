import type { SeasonGaps } from "../../../src/survey/season/gapsOfSeason";
import { gapMapSheet, rowGapsSheet } from "../../../src/workbook/results/gapSheets";
import { LANGUAGES } from "../../../src/texts/language";
import { layOutOwnSheet } from "../../../src/workbook/ownSheet";

const row = (part: Partial<SeasonGaps["rows"][number]>): SeasonGaps["rows"][number] => ({
  block: "North Bench",
  row: 1,
  vines: 2,
  cordons: 2,
  positions: 10,
  liveSpurs: 7,
  gaps: 3,
  share: 0.3,
  longestGap: undefined,
  vinesWithout: 0,
  firstCell: { sheet: "Cordons", row: 2 },
  byVine: [
    { vine: 1, positions: 4, gaps: 2 },
    { vine: 3, positions: 6, gaps: 1 },
  ],
  ...part,
});

const gaps: SeasonGaps = {
  rowsUsed: { rows: 4, used: 4, leftOut: [] },
  rows: [
    row({ since: { cordons: 2, shareBefore: 0.1, shareNow: 0.3 } }),
    row({ row: 2, share: undefined, byVine: [{ vine: 2, positions: 0, gaps: 0 }] }),
  ],
};

describe.each(LANGUAGES)("the gap sheets in %s", (language) => {
  test("are tables that every host takes", () => {
    for (const sheet of [rowGapsSheet(gaps, language, "day"), gapMapSheet(gaps, language, "day")]) {
      expect(layOutOwnSheet(sheet).values.length).toBeGreaterThan(2);
      expect(sheet.columns).toHaveLength(sheet.headers.length);
    }
  });
});

test("the list has a line a row of vines, blanks where nothing can be said", () => {
  const { rows } = rowGapsSheet(gaps, "en", "day");
  expect(rows[0]).toEqual(["North Bench", 1, 2, 2, 10, 7, 3, 0.3, null, 0, 2, 0.1, 0.3]);
  expect(rows[1].slice(7)).toEqual([null, null, 0, null, null, null]);
});

test("the map has a column for each vine of the longest row and blanks where no vine was counted", () => {
  const { headers, rows } = gapMapSheet(gaps, "en", "day");
  expect(headers).toEqual(["Block", "Row", "Vine 1", "Vine 2", "Vine 3"]);
  expect(rows).toEqual([
    ["North Bench", 1, 0.5, null, 1 / 6],
    ["North Bench", 2, null, null, null],
  ]);
});

test("the map of an estate of 200,000 vines is made", () => {
  const byVine = Array.from({ length: 200 }, (_, i) => ({ vine: i + 1, positions: 8, gaps: 2 }));
  const rows = Array.from({ length: 1000 }, (_, i) => row({ row: i + 1, byVine }));
  const map = gapMapSheet({ rowsUsed: { rows: 0, used: 0, leftOut: [] }, rows }, "en", "day");
  expect(map.headers).toHaveLength(202);
  expect(map.rows).toHaveLength(1000);
});
