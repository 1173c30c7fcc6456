import { CORDON, found, rowsFound, sheetOf, VINE, type Cells } from "./found";

const THIS = "2026-02-10";
const LAST = "2025-02-10";

/** Cordons of this winter and of the one before; rows that name no vine get the next number. */
const cordons = (now: readonly Cells[], before: readonly Cells[], usual: Cells = CORDON) => [
  sheetOf(
    "Cordons 2025",
    { ...usual, Date: LAST },
    before.map((row, at) => ({ Vine: at + 1, ...row })),
  ),
  sheetOf(
    "Cordons",
    { ...usual, Date: THIS },
    now.map((row, at) => ({ Vine: at + 1, ...row })),
  ),
];
/** The same as many rows as these, as they were before. */
const asBefore = (rows: readonly Cells[]) => rows.map(() => ({}));

describe("positions that a cordon did not have a winter before", () => {
  const appeared = (rows: readonly Cells[]) => rowsFound("positionsAppeared", cordons(rows, asBefore(rows)));

  // Two more are counted in or out at an end, as the setting says.
  test("are asked about from three more on", () => {
    expect(appeared([{ Positions: 10 }, { Positions: 11 }])).toEqual([3]);
  });

  // From 3 to 3.6 ft are a fifth more: 8 x 0.2 = 1.6, so that two further positions are no wonder.
  test("may be more on a cordon that has grown longer", () => {
    expect(
      appeared([
        { "Length (ft)": 3.6, Positions: 12 },
        { "Length (ft)": 3.6, Positions: 13 },
      ]),
    ).toEqual([3]);
  });

  test("are no more on one that was cut back, or whose length nobody measured", () => {
    for (const length of [2, null])
      expect(
        appeared([
          { "Length (ft)": length, Positions: 10 },
          { "Length (ft)": length, Positions: 11 },
        ]),
      ).toEqual([3]);
  });

  test("are told with the row of last winter's sheet, of a cordon in two rows of it the first", () => {
    const areas = cordons([{ Positions: 12 }], [{ Positions: 9 }, { Vine: 1, Positions: 12 }]);
    expect(found("positionsAppeared", areas, ({ row, facts }) => ({ ...facts, row }))).toEqual([
      expect.objectContaining({
        row: 2,
        before: 9,
        now: 12,
        season: 2025,
        otherSheet: "Cordons 2025",
        otherRow: 2,
      }),
    ]);
  });

  test("are none where a row names no vine in either winter", () => {
    expect(rowsFound("positionsAppeared", cordons([{ Vine: "?", Positions: 12 }], [{ Vine: "?" }]))).toEqual(
      [],
    );
  });
});

describe("a cordon that hangs on another trunk than a winter before", () => {
  const changed = (now: Cells, before: Cells) =>
    found("trunkChangedPlace", cordons([now], [before]), ({ facts }) => [facts.before, facts.now]);

  test.each([
    ["from the first to the second", 1, 2, [[1, 2]]],
    ["from the second to the first", 2, 1, [[2, 1]]],
    ["the same", 2, 2, []],
    ["not written now", 2, null, []],
    ["not written before", null, 2, []],
    ["a 0, which is no trunk, now", 2, 0, []],
    ["a 0 before", 0, 2, []],
  ])("%s: %p and %p", (_, before, now, expected) => {
    expect(changed({ Trunk: now }, { Trunk: before })).toEqual(expected);
  });

  test("is not asked about its positions, which are those of another cordon", () => {
    const areas = cordons([{ Trunk: 2, Positions: 14 }], [{}]);
    expect(rowsFound("trunkChangedPlace", areas)).toEqual([2]);
    expect(rowsFound("positionsAppeared", areas)).toEqual([]);
  });
});

test("a vine that was missing and bears is asked about, one that was none of the two or was replanted is not", () => {
  const sheet = (name: string, day: string, statuses: readonly Cells[]) =>
    sheetOf(
      name,
      { ...VINE, Date: day },
      statuses.map((row, at) => ({ Vine: at + 1, ...row })),
    );
  const areas = [
    sheet("Vines 2025", LAST, [
      {},
      { Status: "missing" },
      { Status: "missing" },
      { Vine: "?", Status: "missing" },
    ]),
    sheet("Vines", THIS, [{}, {}, { Status: "replanted" }, {}, { Vine: "?" }]),
  ];
  expect(
    found("vineCameBack", areas, ({ row, facts }) => [row, facts.vine, facts.otherSheet, facts.otherRow]),
  ).toEqual([[3, 2, "Vines 2025", 3]]);
});
