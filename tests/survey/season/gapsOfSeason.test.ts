import { decideSeason } from "../../../src/survey/decide/decideSeason";
import { gapsOfSeason } from "../../../src/survey/season/gapsOfSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { stayingCordons } from "../../../src/survey/decide/stayingCordons";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { CORDON_HEADS } from "../cordonHeads";

const HEAD = [...CORDON_HEADS];

function season(sheets: Readonly<Record<string, readonly (readonly CellValue[])[]>>) {
  return readSeason(
    Object.entries(sheets).map(([sheet, rows]) => ({
      sheet,
      firstRow: 1,
      firstColumn: 1,
      values: rows,
      formulaAt: () => null,
    })),
  );
}

const cordon = (
  vine: number,
  side: string,
  letter: string,
  positions: CellValue,
  spurs: CellValue,
  row = 1,
) => ["North Bench", row, vine, side, letter, 1, 3.5, positions, spurs];

test("gaps are positions without a live spur, by row of vines and by vine", () => {
  const gaps = gapsOfSeason(
    season({
      Cordons: [
        HEAD,
        cordon(1, "left", "A", 8, 6),
        cordon(1, "right", "B", 8, 7),
        cordon(2, "left", "A", 8, 8),
        cordon(1, "left", "A", 5, 0, 2),
      ],
    }),
  );
  expect(
    gaps.rows.map(({ block, row, positions, gaps: missing, share }) => [
      block,
      row,
      positions,
      missing,
      share,
    ]),
  ).toEqual([
    ["North Bench", 1, 24, 3, 3 / 24],
    ["North Bench", 2, 5, 5, 1],
  ]);
  expect(gaps.rows[0].byVine).toEqual([
    { vine: 1, positions: 16, gaps: 3 },
    { vine: 2, positions: 8, gaps: 0 },
  ]);
  expect(gaps.rows[1].firstCell).toEqual({ sheet: "Cordons", row: 5 });
});

test.each([
  { why: "blank spurs", positions: 8, spurs: null },
  { why: "more spurs than positions", positions: 8, spurs: 9 },
  { why: "a fraction", positions: 7.5, spurs: 6 },
  { why: "text", positions: "many", spurs: 6 },
])("a cordon with $why is left out of the sums and counted as left out", ({ positions, spurs }) => {
  const gaps = gapsOfSeason(
    season({ Cordons: [HEAD, cordon(1, "left", "A", 8, 6), cordon(2, "left", "A", positions, spurs)] }),
  );
  expect(gaps.rowsUsed).toMatchObject({ rows: 2, used: 1 });
  expect(gaps).toMatchObject({ rows: [{ cordons: 1, positions: 8, gaps: 2 }] });
});

test("last winter is compared over the cordons counted in both", () => {
  const gaps = gapsOfSeason(
    season({
      "Cordons 2026": [HEAD, cordon(1, "left", "A", 8, 4), cordon(2, "left", "A", 8, 8)],
      "Cordons 2025": [HEAD, cordon(1, "left", "A", 8, 6), cordon(9, "left", "A", 8, 0)],
    }),
  );
  expect(gaps.seasonBefore).toBe(2025);
  expect(gaps.rows).toHaveLength(1);
  expect(gaps.rows[0].since).toEqual({ cordons: 1, shareBefore: 0.25, shareNow: 0.5 });
});

test("without a sheet of last winter nothing is compared", () => {
  const gaps = gapsOfSeason(season({ Cordons: [HEAD, cordon(1, "left", "A", 8, 4)] }));
  expect(gaps.seasonBefore).toBeUndefined();
  expect(gaps.rows[0].since).toBeUndefined();
});

test("of two candidates on one side only the one that stays counts", () => {
  const read = season({
    Cordons: [
      HEAD,
      cordon(1, "left", "A", 7, 7),
      cordon(1, "left", "B", 7, 1),
      cordon(1, "right", "C", 7, 6),
    ],
  });
  const decided = [...decideSeason(read)];
  expect(decided[0].decision.cordons.find(({ cordon: letter }) => letter === "B")!.verdict).toBe("goes");
  const gaps = gapsOfSeason(read, stayingCordons(decided));
  expect(gaps.rows[0]).toMatchObject({ cordons: 2, positions: 14, gaps: 1 });
});

test("a vine of which nothing stays is in no sum but named", () => {
  const read = season({
    Cordons: [HEAD, cordon(1, "left", "A", 7, 7), cordon(2, "left", "A", 7, 0)],
  });
  const gaps = gapsOfSeason(read, (_table, index) => index === 0);
  expect(gaps.rows[0]).toMatchObject({ vines: 1, positions: 7, gaps: 0, vinesWithout: 1 });
  expect(gaps.rows[0].byVine).toEqual([
    { vine: 1, positions: 7, gaps: 0 },
    { vine: 2, positions: 0, gaps: 0 },
  ]);
});
