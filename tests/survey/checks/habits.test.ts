import { CORDON, found, sheetOf, upTo, VINE, type Cells } from "./found";

/** A vineyard row that one person counted, with cordons all of one length; eight where nothing is said. */
type CountedRow = readonly [by: string, block: string, row: number, metres: number, cordons?: number];

/** How AB is named for lengths unlike the others': at which sheet row, by how many percent, over how many rows. */
function unlikeOthers(rows: readonly CountedRow[]) {
  const { "Length (ft)": _, ...rest } = CORDON;
  const cells = rows.flatMap(([by, Block, Row, metres, cordons = 8]) =>
    upTo(cordons).map((Vine) => ({ Block, Row, Vine, "Length (m)": metres, "Counted by": by })),
  );
  return found("counterUnlikeOthers", [sheetOf("Cordons", rest, cells)], ({ row, facts }) => ({ row, facts }))
    .filter(({ facts }) => facts.habit === "length" && facts.counter === "AB")
    .map(({ row, facts }) => [row, facts.percent, facts.vineyardRows]);
}

const of = (by: string, block: string, firstRow: number, ...metres: number[]): CountedRow[] =>
  metres.map((length, at) => [by, block, firstRow + at, length]);

describe("a counter whose cordons are longer than those of the others in the block", () => {
  const OTHERS: CountedRow[] = [...of("CD", "N", 1, 1, 1), ["CD", "N", 3, 1, 10]];

  // The three rows of CD do not differ, so that 2 cm count as their spread: 5 x 0.02 x sqrt(1/3 + 1/3) = 0.08 m, less than
  // the 15 % from which on a difference is told. 8 + 8 + 10 cordons stand above AB's first.
  test("is named from fifteen percent on", () => {
    expect(unlikeOthers([...OTHERS, ...of("AB", "N", 4, 1.16, 1.16, 1.16)])).toEqual([[28, 16, 3]]);
    expect(unlikeOthers([...OTHERS, ...of("AB", "N", 4, 1.14, 1.14, 1.14)])).toEqual([]);
  });

  // The others' rows deviate by 0.1, 0 and 0.1 m, a standard deviation of sqrt(0.02 / 2) = 0.1 m: 5 x 0.1 x sqrt(2/3) = 0.408.
  test("is named from five standard errors on where the others differ among themselves", () => {
    const others = of("CD", "N", 1, 0.9, 1, 1.1);
    expect(unlikeOthers([...others, ...of("AB", "N", 4, 1.42, 1.42, 1.42)])).toEqual([[26, 42, 3]]);
    expect(unlikeOthers([...others, ...of("AB", "N", 4, 1.4, 1.4, 1.4)])).toEqual([]);
  });

  test("needs three rows of eight cordons, and three rows of the others", () => {
    const own = of("AB", "N", 4, 2, 2, 2);
    expect(unlikeOthers([...OTHERS, ...own.slice(1)])).toEqual([]);
    expect(unlikeOthers([...OTHERS, ...own.slice(1), ["AB", "N", 9, 2, 7]])).toEqual([]);
    expect(unlikeOthers([...OTHERS.slice(1), ...own])).toEqual([]);
    expect(unlikeOthers([...OTHERS, ...own])).toEqual([[28, 100, 3]]);
  });

  test("is held against two rows of others in each block at least", () => {
    const oneEach = (others: number) =>
      ["N", "M", "O"].flatMap((block) => [
        ...of("CD", block, 1, ...upTo(others).map(() => 1)),
        ...of("AB", block, 5, 2),
      ]);
    expect(unlikeOthers(oneEach(1))).toEqual([]);
    // 16 cordons of CD stand above AB's first of block N.
    expect(unlikeOthers(oneEach(2))).toEqual([[18, 100, 3]]);
  });

  test("is not held against rows that nobody has signed", () => {
    const own = of("AB", "N", 4, 2, 2, 2);
    expect(unlikeOthers([...OTHERS.slice(1), ["", "N", 9, 1], ...own])).toEqual([]);
    expect(unlikeOthers([...OTHERS.slice(1), ["CD", "N", 9, 1], ...own])).toHaveLength(1);
  });

  // In block M, where AB never counted, rows of 0.5 and 1.5 m would hide the 16 % of block N.
  test("is not held against blocks that only others counted", () => {
    const elsewhere = [...of("EF", "M", 1, 0.5, 1.5), ...of("CD", "M", 3, 0.5, 1.5)];
    const own = of("AB", "N", 4, 1.16, 1.16, 1.16);
    expect(unlikeOthers([...OTHERS, ...own, ...elsewhere])).toEqual([[28, 16, 3]]);
  });
});

describe("a counter whose counts end in 0 or 5 more often than those of the others", () => {
  /** So many counts of a person, of which so many are 20 and the others 22. */
  const counts = (by: string, values: number, round: number) =>
    upTo(values).map((at) => ({
      "Counted by": by,
      Clusters: at <= round ? 20 : 22,
    }));
  const named = (...rows: ReturnType<typeof counts>) =>
    found(
      "digitPreference",
      [
        sheetOf(
          "Vines",
          VINE,
          rows.map((row, at) => ({ Vine: at + 1, ...row })),
        ),
      ],
      ({ row, facts }) => [row, facts.counter, facts.own, facts.others, facts.values],
    );

  // A fifth of the others' 100: 10 of AB's 50 are expected, with a variance of 50 x 0.2 x 0.8 x (1 + 50/100) = 12, and
  // 10 + 5 x sqrt(12) = 27.3.
  test("is named from five standard errors on", () => {
    expect(named(...counts("CD", 100, 20), ...counts("AB", 50, 28))).toEqual([[102, "AB", 56, 20, 50]]);
    expect(named(...counts("CD", 100, 20), ...counts("AB", 50, 27))).toEqual([]);
  });

  // None of the others' is expected: a quarter of 48 is 12.
  test("is named from a quarter more on", () => {
    expect(named(...counts("CD", 48, 0), ...counts("AB", 48, 12))).toEqual([[50, "AB", 25, 0, 48]]);
    expect(named(...counts("CD", 48, 0), ...counts("AB", 48, 11))).toEqual([]);
  });

  test("needs forty counts, and forty of the others in the block", () => {
    expect(named(...counts("CD", 40, 0), ...counts("AB", 40, 40))).toHaveLength(1);
    expect(named(...counts("CD", 40, 0), ...counts("AB", 39, 39))).toEqual([]);
    expect(named(...counts("CD", 39, 0), ...counts("AB", 40, 40))).toEqual([]);
  });
});

describe("counts that tell nothing of a habit", () => {
  const named = (others: readonly Cells[], areas = VINE) =>
    found(
      "digitPreference",
      [
        sheetOf(
          "Vines",
          areas,
          [...upTo(40).map((): Cells => ({ "Counted by": "AB", Clusters: 20 })), ...others].map(
            (row, at) => ({
              Vine: at + 1,
              ...row,
            }),
          ),
        ),
      ],
      ({ facts }) => facts.counter,
    );
  const cd = (count: number, more: Cells = {}) =>
    upTo(count).map((): Cells => ({ "Counted by": "CD", Clusters: 22, ...more }));

  test.each<[string, Cells]>([
    ["without initials", { "Counted by": null }],
    ["of 0", { Clusters: 0 }],
    ["that are words", { Clusters: "many" }],
    ["of another block", { Block: "Creek Side" }],
  ])("are those %s", (_, odd) => {
    expect(named([...cd(39), ...cd(5, odd)])).toEqual([]);
    expect(named([...cd(39), ...cd(1)])).toEqual(["AB"]);
  });

  // The last digit is the second decimal, also of those that were written with one: 0.9 is 0.90.
  test("are not the first decimals of measures that have two", () => {
    const diameters = (by: string, round: number) =>
      upTo(48).map((at): Cells => ({ "Counted by": by, "Diameter (in)": at <= round ? 0.9 : 0.92 }));
    const told = (round: number) =>
      found(
        "digitPreference",
        [
          sheetOf(
            "Cordons",
            CORDON,
            [...diameters("AB", round), ...diameters("CD", 0)].map((row, at) => ({ Vine: at + 1, ...row })),
          ),
        ],
        ({ column, facts }) => [column, facts.counter, facts.own],
      );
    expect(told(12)).toEqual([["Diameter (in)", "AB", 25]]);
    expect(told(11)).toEqual([]);
  });
});

describe("vines with the same numbers as the one before", () => {
  const { "Length (ft)": _, ...rest } = CORDON;

  /** Cordons of vines whose lengths are given in inches, each vine's in a list; every other number is the same. */
  const lengths = (...vines: readonly (readonly number[])[]) =>
    vines.flatMap((own, at) =>
      own.map((length, nth): Cells => ({
        Vine: at + 1,
        Cordon: "AB"[nth],
        Side: ["left", "right"][nth],
        "Length (in)": length,
      })),
    );
  const same = (count: number, ...own: number[]) => upTo(count).map(() => own);
  const different = (count: number) => upTo(count).map((at) => [30 + at]);
  const runs = (rows: readonly Cells[], usual: Cells = rest) =>
    found("copiedDown", [sheetOf("Cordons", usual, rows)], ({ row, facts }) => [
      row,
      facts.from,
      facts.vines,
      facts.last,
    ]);

  // Of ten rows each further vine carries the same numbers by a chance of a tenth: seven such are 10^-7, six 10^-6.
  test("are asked about when chance makes such a run less than once in a million", () => {
    expect(runs(lengths(...same(8, 24), ...different(2)))).toEqual([[3, 1, 8, 8]]);
    expect(runs(lengths(...same(7, 24), ...different(3)))).toEqual([]);
  });

  // Two rows a vine: 1/12 x 1/12 for each of three further vines are 3 in ten million, of two of them 5 in a hundred thousand.
  test("are compared row by row of the vine", () => {
    const more = [27, 29, 31, 33].map((length) => [length, length + 1]);
    expect(runs(lengths(...same(4, 24, 26), ...more.slice(2)))).toEqual([[4, 1, 4, 4]]);
    expect(runs(lengths(...same(3, 24, 26), ...more.slice(1)))).toEqual([]);
  });

  test("are alike where both are blank or say the same word, and not where the words differ", () => {
    const rows = lengths(...same(8, 24), ...different(2));
    const withGaps = (...gaps: (string | number | null)[]) =>
      rows.map((row, at) => ({
        ...row,
        "Longest gap": gaps[at % gaps.length],
      }));
    expect(runs(withGaps(null))).toEqual([[3, 1, 8, 8]]);
    expect(runs(withGaps("none seen"))).toEqual([[3, 1, 8, 8]]);
    for (const gaps of [
      ["none seen", "no gap seen"],
      [1, null],
      [null, 1],
      [null, "none seen"],
    ])
      expect(runs(withGaps(...gaps))).toEqual([]);
  });

  // 20^-5 is 3 in ten million; the same numbers on six rows more, if they counted, would make it (7/20)^5.
  test("are not held against rows that name no vine", () => {
    const rows = lengths(...same(6, 24), ...different(8), ...same(6, 24));
    expect(runs(rows.map((row, at) => (at < 14 ? row : { ...row, Vine: "?" })))).toEqual([[3, 1, 6, 6]]);
    expect(runs(rows.map((row, at) => (at < 14 ? row : { ...row, Vine: 20 + at * 2 })))).toEqual([]);
  });

  test("are no copies where they are laid out and not counted yet", () => {
    const { Block, Row, Side, Cordon } = CORDON;
    const counted = lengths(...different(10)).map((row) => ({
      ...rest,
      ...row,
    }));
    const laidOut = upTo(10).map((at) => ({ Vine: 20 + at }));
    expect(runs([...counted, ...laidOut], { Block, Row, Side, Cordon })).toEqual([]);
  });

  test("may be the last of the sheet, or only two with many cordons each", () => {
    expect(runs(lengths(...different(2), ...same(8, 24)))).toEqual([[5, 3, 8, 10]]);
    // Of six cordons a vine each stands on one of twelve rows elsewhere: (1/12)^6 is 3 in ten million; (1/10)^5 is 10^-5.
    const many = (count: number) => {
      const own = upTo(count).map((at) => 20 + at);
      return upTo(2).flatMap((Vine) =>
        own.map((length, at): Cells => ({ Vine, Cordon: "ABCDEF"[at], "Length (in)": length })),
      );
    };
    expect(runs(many(6))).toEqual([[8, 1, 2, 2]]);
    expect(runs(many(5))).toEqual([]);
  });

  test("have as many cordons as it, all of them alike", () => {
    const pairs = same(7, 24, 26);
    expect(runs(lengths([24], ...pairs))).toEqual([[5, 2, 7, 8]]);
    expect(runs(lengths(...upTo(8).map((at) => [24, 25 + at])))).toEqual([]);
  });

  test("go on behind a row that names no vine", () => {
    const rows = lengths(...same(8, 24), ...different(2));
    const odd = { Vine: "?", "Length (in)": 40 };
    expect(runs([...rows.slice(0, 4), odd, ...rows.slice(4)])).toEqual([[3, 1, 8, 8]]);
  });

  test("are not asked about where too few columns were counted", () => {
    const { Trunk: _, Positions: __, ...few } = rest;
    expect(runs(lengths(...same(8, 24), ...different(2)), few)).toEqual([]);
  });
});
