import { allFindings } from "../../../src/survey/checks/checkSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { areaOf } from "../area";
import { found, sheetOf, type Cells } from "./found";

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
const PLACE: Cells = { Block: "North Bench", Row: 1, Vine: 1, Side: "left", Cordon: "A", Trunk: 1 };
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

/** A row by its letter: swapped, one that fits either way because all its positions bear, sound, or with half a spur. */
const ROWS: Readonly<Record<string, Partial<typeof SOUND>>> = {
  s: { Positions: 6, "Live spurs": 9 },
  f: { Positions: 6, "Longest gap": 0 },
  o: {},
  h: { Positions: 6, "Longest gap": 0, "Spurs down": 3.5, "Spurs level": 1.5 },
  u: { Positions: 6, "Longest gap": 0, "Spurs level": 1.5, "Spurs up": 0.5 },
  v: { Positions: 6, "Longest gap": 0, "Spurs down": 4.5, "Spurs up": 0.5 },
  // Without the parts: 5 and 7 agree exchanged, as do 7 and the 3 spurs down; a gap of 2 lies in the 2 empty positions of
  // either.
  p: { Positions: 5, "Live spurs": 7, "Longest gap": 2, "Spurs down": 4 },
  b: { Positions: 5, "Live spurs": 7, "Longest gap": 1, "Spurs down": 4 },
  d: { Positions: 5, "Live spurs": 7, "Longest gap": 1, "Spurs down": 4, "Length (ft)": 0.9 },
};

/** The stretches found in rows given by their letters: the columns, the first vine and the number of rows. */
function stretches(letters: string, without: readonly Head[] = []) {
  const rows = [...letters].map((letter, at): Cells => {
    const figures = Object.entries({ ...SOUND, ...ROWS[letter] });
    return {
      Vine: at + 1,
      ...Object.fromEntries(figures.filter(([head]) => !without.includes(head as Head))),
    };
  });
  return found("columnsSwapped", [sheetOf("Cordons", PLACE, rows)], ({ column, facts }) => [
    `${column}, ${facts.other}`,
    facts.vine,
    facts.rows,
  ]);
}

describe("a stretch of swapped columns", () => {
  const [BOTH, DOWN] = ["Positions, Live spurs", "Live spurs, Spurs down"];
  const PARTS: readonly Head[] = ["Spurs level", "Spurs up"];

  test.each([
    ["goes on over rows that fit either way", "sffss", [[BOTH, 1, 5]]],
    ["goes on over ten of them", `os${"f".repeat(10)}ss`, [[BOTH, 2, 13]]],
    ["ends at eleven of them", `os${"f".repeat(11)}ss`, []],
    ["ends at a row that is sound as it stands", "ssoss", []],
    ["ends at a sound row behind its first", "soss", []],
    ["ends at a row with half a spur", "sshss", []],
    ["ends at a row with half a spur", "ssuss", []],
    ["ends at a row with half a spur", "ssvss", []],
  ])("%s: %s", (_, letters, expected) => {
    expect(stretches(letters)).toEqual(expected);
  });

  // p fits with positions exchanged alone, d (in 0.9 ft seven positions have no room) with spurs down alone, b with both.
  test.each([
    ["the longer of two is told", "ppbbb", [[BOTH, 1, 5]]],
    ["the longer of two is told", "ddbbb", [[DOWN, 1, 5]]],
    ["one row in common is enough", "ppppbdd", [[BOTH, 1, 5]]],
    ["one row in common is enough", "ddbpppp", [[BOTH, 3, 5]]],
    [
      "without a row in common both are",
      "pppddd",
      [
        [BOTH, 1, 3],
        [DOWN, 4, 3],
      ],
    ],
  ])("of two that overlap %s: %s", (_, letters, expected) => {
    expect(stretches(letters, PARTS)).toEqual(expected);
  });
});

/** Three rows with these figures beside the place; what is found in them. */
const inRows = (figures: Cells) =>
  found(
    "columnsSwapped",
    [
      sheetOf(
        "Cordons",
        PLACE,
        [1, 2, 3].map((Vine) => ({ Vine, ...figures })),
      ),
    ],
    (one) => [one.column, one.facts.other],
  );

describe("figures that contradict each other as they stand, and agree exchanged", () => {
  const LENGTH = { "Length (ft)": 3 };
  test.each<[string, Cells, string[][]]>([
    [
      "more spurs than positions",
      { ...LENGTH, Positions: 6, "Live spurs": 9 },
      [["Positions", "Live spurs"]],
    ],
    [
      // 9 - 2 = 7 positions are empty, and 2 spurs part them into three stretches, of which one has more than 1.
      "a gap shorter than an even share",
      { ...LENGTH, Positions: 9, "Live spurs": 2, "Longest gap": 1, "Spurs down": 7 },
      [["Live spurs", "Spurs down"]],
    ],
    [
      // 5 - 1 = 4 are 2 on either side of the one spur.
      "none: a gap of just an even share",
      { ...LENGTH, Positions: 5, "Live spurs": 1, "Longest gap": 2, "Spurs down": 3 },
      [],
    ],
    [
      // 3 by their direction are fewer than 7; exchanged, 10 - 3 = 7 are empty and together.
      "fewer spurs by direction",
      {
        ...LENGTH,
        Positions: 10,
        "Live spurs": 7,
        "Longest gap": 3,
        "Spurs down": 3,
        "Spurs level": 0,
        "Spurs up": 0,
      },
      [["Live spurs", "Longest gap"]],
    ],
    [
      "half a position",
      { "Length (ft)": 8, Positions: 4.5, "Live spurs": 4 },
      [["Length (ft)", "Positions"]],
    ],
    [
      // 20 ft are 6.1 m, more than any cordon has.
      "a cordon of 20 ft",
      { "Length (ft)": 20, Positions: 12, "Live spurs": 6, "Longest gap": 2 },
      [["Length (ft)", "Positions"]],
    ],
    [
      // 9 ft are 2.7 m; half a metre for each of 3 positions and one more are 2 m.
      "three positions on 9 ft",
      { "Length (ft)": 9, Positions: 3, "Live spurs": 2 },
      [["Length (ft)", "Positions"]],
    ],
    ["a cordon 6 in thick", { ...LENGTH, Positions: 9, "Diameter (in)": 6 }, [["Length (ft)", "Diameter"]]],
    [
      "a cordon half as thick as long",
      { "Length (ft)": 0.5, Positions: 3, "Diameter (in)": 3 },
      [["Length (ft)", "Diameter"]],
    ],
  ])("%s", (_, figures, expected) => {
    expect(inRows(figures)).toEqual(expected);
  });
});
