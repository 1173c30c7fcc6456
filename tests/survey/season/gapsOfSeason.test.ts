import { decideSeason } from "../../../src/survey/decide/decideSeason";
import { gapsOfSeason, vinesAcross } from "../../../src/survey/season/gapsOfSeason";
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

describe("cordons of one row of vines", () => {
  test("are added up wherever in the sheets they stand, and the row stands where it came first", () => {
    const south = [HEAD, cordon(3, "left", "A", 6, 4), cordon(1, "left", "A", 5, 5, 9)];
    const north = [
      HEAD,
      cordon(1, "left", "A", 8, 6, 2),
      cordon(1, "left", "A", 8, 7),
      cordon(1, "right", "B", 9, 3, 2),
    ];
    const { rows } = gapsOfSeason(season({ South: south, North: north }));
    // Row 1: 8 - 7 and 6 - 4 of 14; row 2: 8 - 6 and 9 - 3 of 17.
    expect(
      rows.map(({ row, firstCell, cordons, vines, positions, gaps }) => [
        row,
        firstCell,
        cordons,
        vines,
        positions,
        gaps,
      ]),
    ).toEqual([
      [1, { sheet: "South", row: 2 }, 2, 2, 14, 3],
      [9, { sheet: "South", row: 3 }, 1, 1, 5, 0],
      [2, { sheet: "North", row: 2 }, 2, 1, 17, 8],
    ]);
    expect(rows[0].byVine).toEqual([
      { vine: 1, positions: 8, gaps: 1 },
      { vine: 3, positions: 6, gaps: 2 },
    ]);
  });

  test("of two blocks are two rows, named as the block was written first", () => {
    const other = ["Creek", ...cordon(1, "left", "A", 8, 5).slice(1)];
    const { rows } = gapsOfSeason(season({ Cordons: [HEAD, cordon(1, "left", "A", 8, 6), other] }));
    expect(rows.map(({ block, row, gaps }) => [block, row, gaps])).toEqual([
      ["North Bench", 1, 2],
      ["Creek", 1, 3],
    ]);
  });

  test("tell the longest stretch that was measured on any of them; one of 0 is measured, a blank is not", () => {
    const head = [...HEAD, "Longest gap"];
    const longest = (...gaps: readonly CellValue[]) =>
      gapsOfSeason(
        season({
          Cordons: [
            head,
            ...gaps.map((gap, at) => [...cordon(at + 1, "left", "A", 8, 6 + Number(gap === 0) * 2), gap]),
          ],
        }),
      ).rows[0].longestGap;
    expect(longest(1, 2, null)).toBe(2);
    expect(longest(0, null, null)).toBe(0);
    expect(longest(null, null)).toBeUndefined();
  });

  test("without positions on any of them have no share", () => {
    const { rows } = gapsOfSeason(season({ Cordons: [HEAD, cordon(1, "left", "A", 0, 0)] }));
    expect(rows).toMatchObject([
      { vines: 1, cordons: 1, positions: 0, gaps: 0, share: undefined, vinesWithout: 0 },
    ]);
  });

  test("are named with nothing where none of the row counts", () => {
    const { rows } = gapsOfSeason(
      season({ Cordons: [HEAD, cordon(1, "left", "A", 8, 6), cordon(2, "left", "A", 8, 6)] }),
      () => false,
    );
    expect(rows).toEqual([
      {
        block: "North Bench",
        row: 1,
        vines: 0,
        cordons: 0,
        positions: 0,
        liveSpurs: 0,
        gaps: 0,
        share: undefined,
        longestGap: undefined,
        firstCell: { sheet: "Cordons", row: 2 },
        byVine: [
          { vine: 1, positions: 0, gaps: 0 },
          { vine: 2, positions: 0, gaps: 0 },
        ],
        vinesWithout: 2,
      },
    ]);
  });

  test.each(["Positions", "Live spurs"])("cannot be added up in a sheet without %s", (head) => {
    const at = HEAD.indexOf(head);
    const without = [HEAD, cordon(1, "left", "A", 8, 6)].map((row) =>
      row.filter((_cell, column) => column !== at),
    );
    expect(gapsOfSeason(season({ Cordons: without })).rows).toEqual([]);
  });
});

describe("last winter", () => {
  const since = (sheets: Parameters<typeof season>[0], counts?: Parameters<typeof gapsOfSeason>[1]) => {
    const { rows, seasonBefore } = gapsOfSeason(season(sheets), counts);
    return [seasonBefore, ...rows.map((row) => row.since)];
  };
  const now = [
    HEAD,
    cordon(1, "left", "A", 8, 4),
    cordon(1, "right", "B", 8, 8),
    cordon(2, "left", "A", 8, 6),
  ];

  test("is the one before this, of several sheets in it all, and of a cordon counted twice the first", () => {
    const sheets = {
      "Cordons 2026": now,
      "Cordons 2024": [HEAD, cordon(2, "left", "A", 8, 0), cordon(1, "left", "A", 8, 0)],
      "North 2025": [HEAD, cordon(1, "left", "A", 10, 9), cordon(1, "left", "A", 10, 1)],
      "South 2025": [HEAD, cordon(1, "left", "A", 10, 2), cordon(1, "right", "B", 10, 6)],
    };
    // Of A and B, 4 of 16 are empty now; 1 of A's 10 and 4 of B's were.
    expect(since(sheets)).toEqual([2025, { cordons: 2, shareBefore: 0.25, shareNow: 0.25 }]);
    // Of B alone none is now, and 4 of 10 were.
    expect(since(sheets, (_table, index) => index === 1)).toEqual([
      2025,
      { cordons: 1, shareBefore: 0.4, shareNow: 0 },
    ]);
    expect(since(sheets, () => false)).toEqual([2025, undefined]);
  });

  test("is not compared with a cordon of another letter, a count that cannot be true or one without positions", () => {
    const then = (...row: readonly CellValue[]) => ({
      "Cordons 2026": now,
      "Cordons 2025": [HEAD, row, cordon(7, "left", "A", 8, 8)],
    });
    expect(since(then(...cordon(1, "left", "C", 8, 6)))).toEqual([2025, undefined]);
    expect(since(then(...cordon(1, "left", "A", 8, 9)))).toEqual([2025, undefined]);
    expect(since(then(...cordon(1, "left", "A", 0, 0)))).toEqual([2025, undefined]);
    const bare = {
      ...then(...cordon(1, "left", "A", 8, 6)),
      "Cordons 2026": [HEAD, cordon(1, "left", "A", 0, 0)],
    };
    expect(since(bare)).toEqual([2025, undefined]);
    expect(since(then(...cordon(1, "left", "A", 8, 8)))).toEqual([
      2025,
      { cordons: 1, shareBefore: 0, shareNow: 0.5 },
    ]);
  });
});

// The 20 numbers between two vines may be gone; of 21 the one beyond them is a slip or another count.
const upTo = (last: number) => Array.from({ length: last }, (_, at) => at + 1);
test.each<[string, number[], number[]]>([
  ["none", [], []],
  ["every number up to the last", [3], [1, 2, 3]],
  ["20 missing before the first", [21], upTo(21)],
  ["21 missing before the first", [22], [22]],
  ["20 missing between", [1, 22], upTo(22)],
  ["21 missing between", [1, 23], [1, 23]],
  ["one beside the first", [1.5], [1, 1.5]],
  ["one between two", [1, 1.5, 2], [1, 1.5, 2]],
  ["a number missing behind one between", [1.5, 3], [1, 1.5, 2, 3]],
  ["in any order", [3, 1, 2, 3], [1, 2, 3]],
  ["the tenth behind the second", [10, 2], upTo(10)],
])("vines across a map: %s", (_, vines, across) => {
  expect(
    vinesAcross([
      { byVine: vines.slice(1).map((vine) => ({ vine })) },
      { byVine: vines.slice(0, 1).map((vine) => ({ vine })) },
    ]),
  ).toEqual(across);
});
