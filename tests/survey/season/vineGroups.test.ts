import { rowsByVine } from "../../../src/survey/season/vineGroups";
import { placeOf } from "../../../src/survey/season/vinePlaces";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { seasonOfSheets } from "../crop/seasonOfSheets";

/** Vines in the order in which they are given, each with the indexes of its rows; "?" is a vine that nobody can read. */
function groups(...vines: readonly CellValue[]) {
  const season = seasonOfSheets({
    cordons: [
      ["Block", "Row", "Vine", "Cordon", "Positions", "Live spurs"],
      ...vines.map((vine, at): CellValue[] => ["North Bench", 1, vine, "ABCD"[at % 4], 8, 7 - (at % 3)]),
    ],
  });
  const [table] = season.tables("cordons");
  const context = { season, places: season.places, today: undefined };
  return [...rowsByVine(table, context)].map(([key, rows]) => [placeOf(key).vine, rows]);
}

const times = (count: number, vine: number) => Array<number>(count).fill(vine);

describe("rows of a sheet, vine by vine", () => {
  test.each<[string, CellValue[], [vine: number, rows: number[]][]]>([
    [
      "one below the other",
      [1, 1, 2, 3, 3],
      [
        [1, [0, 1]],
        [2, [2]],
        [3, [3, 4]],
      ],
    ],
    [
      "a vine that comes back stands where it came first",
      [1, 2, 1, 3, 1],
      [
        [1, [0, 2, 4]],
        [2, [1]],
        [3, [3]],
      ],
    ],
    [
      "two that come back",
      [2, 1, 2, 2, 1],
      [
        [2, [0, 2, 3]],
        [1, [1, 4]],
      ],
    ],
    [
      "rows without a place are of no vine, and together of none either",
      ["?", 1, "?", "?", 1, 2],
      [
        [1, [1, 4]],
        [2, [5]],
      ],
    ],
    [
      "the last rows",
      [1, 2, "?"],
      [
        [1, [0]],
        [2, [1]],
      ],
    ],
  ])("%s", (_, vines, expected) => expect(groups(...vines)).toEqual(expected));

  // A vine has 24 cordons at most (Settings): of more rows its number was filled down.
  test("a vine of 24 rows is one, of 25 it is left out, and so are 13 and 12 rows of it apart", () => {
    expect(groups(...times(24, 9), 1).map(([vine]) => vine)).toEqual([9, 1]);
    expect(groups(...times(25, 9), 1, 2, 2)).toEqual([
      [1, [25]],
      [2, [26, 27]],
    ]);
    expect(groups(...times(13, 9), 1, ...times(12, 9), 2)).toEqual([
      [1, [13]],
      [2, [26]],
    ]);
  });
});
