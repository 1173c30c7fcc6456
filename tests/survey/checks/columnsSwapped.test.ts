import { allFindings } from "../../../src/survey/checks/checkSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { areaOf } from "../area";

/**
 * A sound cordon: 9 - 6 = 3 positions without a spur, at most 2 of them together; 4 + 1 + 1 = 6 spurs; eight distances
 * of 2 in are 16 in of 36.
 */
const SOUND = {
  "Length (ft)": 3,
  Positions: 9,
  "Live spurs": 6,
  "Longest gap": 2,
  "Spurs down": 4,
  "Spurs level": 1,
  "Spurs up": 1,
  "Diameter (in)": 0.9,
};
type Head = keyof typeof SOUND;
const HEADS = Object.keys(SOUND) as Head[];

/** Six cordons of one row, of which those from `first` on have two columns exchanged, `stretch` of them. */
function swappedColumns(one: Head, other: Head, first: number, stretch: number) {
  const rows = [1, 2, 3, 4, 5, 6].map((vine) => {
    const swapped = vine >= first && vine < first + stretch;
    const cell = (head: Head) => SOUND[!swapped ? head : head === one ? other : head === other ? one : head];
    return ["North Bench", 1, vine, "left", "A", 1, ...HEADS.map(cell)];
  });
  const season = readSeason([
    areaOf("Cordons", [["Block", "Row", "Vine", "Side", "Cordon", "Trunk", ...HEADS], ...rows]),
  ]);
  return allFindings(season).flatMap(({ code, row, column, facts }) =>
    code === "columnsSwapped"
      ? [
          {
            row,
            column,
            other: facts.other,
            rows: facts.rows,
            lastRow: facts.lastRow,
          },
        ]
      : [],
  );
}

describe("two columns that changed places over a stretch of rows", () => {
  // Of each pair only the pair itself makes the six figures agree again.
  test.each<[Head, Head, string]>([
    ["Positions", "Live spurs", "Live spurs"],
    ["Live spurs", "Longest gap", "Longest gap"],
    ["Positions", "Longest gap", "Longest gap"],
    ["Live spurs", "Spurs down", "Spurs down"],
    ["Live spurs", "Spurs up", "Spurs up"],
    ["Live spurs", "Spurs level", "Spurs level"],
    ["Longest gap", "Spurs down", "Spurs down"],
    ["Length (ft)", "Positions", "Positions"],
    ["Length (ft)", "Diameter (in)", "Diameter"],
  ])("%s and %s are named, over vines 2 to 5 in sheet rows 3 to 6", (one, other, named) => {
    expect(swappedColumns(one, other, 2, 4)).toEqual([
      { row: 3, column: one, other: named, rows: 4, lastRow: 6 },
    ]);
  });

  test("three rows are enough, two are single slips", () => {
    expect(swappedColumns("Positions", "Live spurs", 1, 3)).toEqual([
      { row: 2, column: "Positions", other: "Live spurs", rows: 3, lastRow: 4 },
    ]);
    expect(swappedColumns("Positions", "Live spurs", 1, 2)).toEqual([]);
  });

  test("sound rows are left alone", () => {
    expect(swappedColumns("Positions", "Live spurs", 1, 0)).toEqual([]);
  });
});
