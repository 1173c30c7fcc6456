import { CORDON, found, rowsFound, sheetOf, upTo, VINE, type Cells } from "./found";

/** So many vines with 30 clusters and 40 shoots, but for the cells given by vine. */
const vines = (count: number, odd: Readonly<Record<number, Cells>>, usual: Cells = {}) => [
  sheetOf(
    "Vines",
    { ...VINE, Clusters: 30, Shoots: 40, ...usual },
    upTo(count).map((Vine) => ({ Vine, ...odd[Vine] })),
  ),
];
const BLANK: Cells = { Clusters: null, Shoots: null };

describe("a vine with nothing in any counted column", () => {
  const bare = (...args: Parameters<typeof vines>) => rowsFound("vineWithoutCount", vines(...args));

  // Ten filled cells for each such vine, of which two are taken at least: of one vine 20 others, of three vines 30.
  test("is asked about where ten others are filled for each", () => {
    expect(bare(21, { 5: BLANK })).toEqual([6]);
    expect(bare(20, { 5: BLANK })).toEqual([]);
    expect(bare(33, { 5: BLANK, 7: BLANK, 9: BLANK })).toEqual([6, 8, 10]);
    expect(bare(32, { 5: BLANK, 7: BLANK, 9: BLANK })).toEqual([]);
  });

  test("is told with the columns and with how many vines were counted", () => {
    expect(
      found("vineWithoutCount", vines(21, { 5: BLANK }), ({ column, facts }) => [column, facts]),
    ).toEqual([["", expect.objectContaining({ vine: 5, counts: ["Clusters", "Shoots"], values: 20 })]]);
  });

  test("has nothing in all of them: of three columns one filled is enough", () => {
    const usual = { "Prunings (lb)": 2 };
    expect(bare(30, { 5: { ...BLANK, "Prunings (lb)": null } }, usual)).toEqual([6]);
    expect(bare(30, { 5: BLANK }, usual)).toEqual([]);
  });

  test("is no cordon, of which measures may be left out", () => {
    const usual = { ...CORDON, "Diameter (in)": 0.9, "Longest gap": 1 };
    const rows = upTo(40).map((Vine) => ({
      Vine,
      ...(Vine === 5 && { "Diameter (in)": null, "Longest gap": null }),
    }));
    expect(rowsFound("vineWithoutCount", [sheetOf("Cordons", usual, rows)])).toEqual([]);
  });
});

describe("one blank in a column that is otherwise full", () => {
  const left = (...args: Parameters<typeof vines>) =>
    found("countLeftOut", vines(...args), ({ row, column, facts }) => [row, column, facts.values]);

  test("is asked about from fifty filled cells on", () => {
    expect(left(51, { 5: { Shoots: null } })).toEqual([[6, "Shoots", 50]]);
    expect(left(50, { 5: { Shoots: null } })).toEqual([]);
  });

  test("is the only one", () => {
    expect(left(70, { 5: { Shoots: null }, 9: { Shoots: null } })).toEqual([]);
  });

  test("is not that of a vine that is not in bearing", () => {
    expect(left(60, { 5: { Shoots: null, Status: "young" } })).toEqual([]);
  });

  test.each<[string, Cells, number[]]>([
    ["a living cordon is asked about", {}, [6]],
    ["a dead one is not", { Condition: "dead" }, []],
    ["one without live spurs is not", { "Live spurs": 0 }, []],
  ])("on the Cordons sheet %s", (_, odd, expected) => {
    const rows = upTo(60).map((Vine) => ({ Vine, ...(Vine === 5 && { "Longest gap": null, ...odd }) }));
    const usual = { ...CORDON, "Longest gap": 1, Condition: "sound" };
    expect(rowsFound("countLeftOut", [sheetOf("Cordons", usual, rows)])).toEqual(expected);
  });

  test("may stand in a column that is none of ours", () => {
    expect(left(51, { 5: { "Leaf layers": null } }, { "Leaf layers": 2 })).toEqual([[6, "Leaf layers", 50]]);
  });
});

// A vine has 24 cordons at most, as the setting says.
test("a vine that more rows name than it has cordons is told once, in the sheet in which its rows begin", () => {
  const rows = (vine: number, count: number) => upTo(count).map((at) => ({ Vine: vine, Cordon: `C${at}` }));
  const areas = (count: number) => [
    sheetOf("Cordons", CORDON, rows(1, 3)),
    sheetOf("Cordons 2", CORDON, [...rows(2, 2), ...rows(3, count)]),
  ];
  const told = (count: number) =>
    found("cordonsAboveMost", areas(count), ({ sheet, row, facts }) => [sheet, row, facts.rows, facts.most]);
  expect(told(25)).toEqual([["Cordons 2", 4, 25, 24]]);
  expect(told(24)).toEqual([]);
});
