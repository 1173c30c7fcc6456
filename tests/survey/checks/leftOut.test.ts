import { areaOf } from "../area";
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

describe("vines of the register that the Cordons sheet passes over", () => {
  type Place = readonly [block: string, row: number, vine: number];
  const vinesOf = (block: string, row: number, ...of: number[]): Place[] =>
    of.map((vine) => [block, row, vine]);
  const cells = (places: readonly Place[], more: Cells = {}) =>
    places.map(([Block, Row, Vine]): Cells => ({ Block, Row, Vine, ...more }));
  const { Block: _b, Row: _r, Vine: _v, Side, Cordon, ...figures } = CORDON;

  /** What is said of a register whose vines were counted as far as named, and laid out for counting beyond that. */
  const passedOver = (
    register: readonly Cells[],
    counted: readonly Place[],
    laidOut: readonly Place[] = [],
  ) => {
    const areas = [
      sheetOf("Vines", VINE, register),
      sheetOf("Cordons", { Side, Cordon }, [...cells(counted, figures), ...cells(laidOut)]),
    ];
    const told = (code: string) =>
      found(code, areas, ({ row, column, facts }) => [
        `sheet row ${row}`,
        column,
        facts.vines,
        ...(facts.counted === undefined ? [] : [facts.counted]),
      ]);
    return { vines: told("vineNeverCounted"), rows: told("rowNeverCounted") };
  };
  const NOTHING = { vines: [], rows: [] };
  const row = (block: string, number: number) => vinesOf(block, number, 1, 2, 3, 4);
  const rows = (block: string, ...numbers: number[]) => numbers.flatMap((number) => row(block, number));

  test("are asked about one by one where half of their row was counted", () => {
    expect(passedOver(cells(row("N", 1)), vinesOf("N", 1, 1, 3))).toEqual({
      vines: [
        ["sheet row 3", "Vine", 4, 2],
        ["sheet row 5", "Vine", 4, 2],
      ],
      rows: [],
    });
    expect(passedOver(cells(row("N", 1)), vinesOf("N", 1, 1))).toEqual(NOTHING);
  });

  test("are bearing and have a number", () => {
    const [first, second, ...rest] = cells(vinesOf("N", 1, 1, 2, 3, 4, 5, 6));
    const register = [{ ...first, Status: "young" }, { ...second, Vine: "?" }, ...rest];
    expect(passedOver(register, vinesOf("N", 1, 3, 4, 5, 6))).toEqual(NOTHING);
  });

  test("are not counted yet where their rows are laid out and blank", () => {
    expect(passedOver(cells(row("N", 1)), vinesOf("N", 1, 1, 2, 3), vinesOf("N", 1, 4)).vines).toEqual([
      ["sheet row 5", "Vine", 4, 3],
    ]);
  });

  test("are told as a whole row, at its first vine, between rows that were counted", () => {
    expect(passedOver(cells(rows("N", 1, 2, 3, 4, 5)), rows("N", 1, 3, 5))).toEqual({
      vines: [],
      rows: [
        ["sheet row 6", "Row", 4],
        ["sheet row 14", "Row", 4],
      ],
    });
  });

  test("are still to come in rows before the first counted and behind the last, where the crew is at work", () => {
    expect(passedOver(cells(rows("N", 1, 2, 3, 4)), rows("N", 2, 3))).toEqual(NOTHING);
  });

  // The crew has gone on to block M; of N two rows of four are half, of O one of three is less.
  test("are asked about in a block that the crew has left with half of its rows counted", () => {
    const register = cells([...rows("N", 1, 2, 3, 4), ...rows("O", 1, 2, 3), ...rows("M", 1, 2)]);
    const counted = [...rows("N", 1, 2), ...rows("O", 1), ...rows("M", 1)];
    expect(passedOver(register, counted)).toEqual({
      vines: [],
      rows: [
        ["sheet row 10", "Row", 4],
        ["sheet row 14", "Row", 4],
      ],
    });
    // A block that is only laid out has not been begun: the crew is still in O.
    const { rows: told } = passedOver(register, [...rows("N", 1, 2), ...rows("O", 1, 2)], rows("M", 1, 2));
    expect(told).toEqual([
      ["sheet row 10", "Row", 4],
      ["sheet row 14", "Row", 4],
    ]);
  });
});

describe("a column that a sheet lacks", () => {
  const { Trunk: _t, "Length (ft)": _l, ...few } = CORDON;
  const rows = upTo(3).map((Vine) => ({ Vine }));
  const lacking = (...areas: Parameters<typeof found>[1]) =>
    found("missingColumn", areas, ({ sheet, row, facts }) => [sheet, row, facts.columnId]);

  test("is not told while its unit is asked: 36 without a unit are no feet of cordon", () => {
    expect(
      lacking(
        sheetOf(
          "Cordons",
          { ...few, Length: 36 },
          upTo(12).map((Vine) => ({ Vine })),
        ),
        sheetOf(
          "More",
          few,
          upTo(3).map((at) => ({ Vine: at + 20 })),
        ),
      ),
    ).toEqual([
      ["Cordons", 1, "trunk"],
      ["More", 1, "trunk"],
      ["More", 1, "length"],
    ]);
  });

  test("is not told while somebody is asked which block it is", () => {
    const { Block: _, ...rest } = CORDON;
    expect(lacking(sheetOf("Cordons", rest, rows))).toEqual([]);
  });

  test("is told once for a sheet with two lists, and of the second what only that one lacks", () => {
    const lists = (first: readonly string[], second: readonly string[]) => {
      const list = (heads: readonly string[], from: number) => [
        [...heads],
        ...rows.map(({ Vine }) => heads.map((head) => (head === "Vine" ? from + Vine : CORDON[head]))),
      ];
      return areaOf("Cordons", [...list(first, 0), [], [], ...list(second, 10)]);
    };
    const heads = Object.keys(CORDON);
    const but = (...out: string[]) => heads.filter((head) => !out.includes(head));
    expect(lacking(lists(but("Trunk"), but("Trunk", "Positions")))).toEqual([
      ["Cordons", 1, "trunk"],
      ["Cordons", 7, "positions"],
    ]);
    expect(lacking(lists(heads, but("Trunk")))).toEqual([["Cordons", 7, "trunk"]]);
    const twice = (area: ReturnType<typeof areaOf>) =>
      found("columnTwice", [area], ({ row, facts }) => [row, facts.wanted]);
    const repeated = [...heads, "Positions"];
    expect(twice(lists(repeated, [...but("Trunk"), "Positions"]))).toEqual([[1, "Positions"]]);
    expect(twice(lists(repeated, [...but("Trunk"), "Positions", "Live spurs"]))).toEqual([
      [1, "Positions"],
      [7, "Live spurs"],
    ]);
  });

  test("is not the status in a list of weights, which is no register", () => {
    const { Status: _, ...place } = VINE;
    const weights = { ...place, "Prunings (lb)": 2 };
    expect(lacking(sheetOf("Weights", weights, rows))).toEqual([]);
    expect(lacking(sheetOf("Vines", weights, rows))).toEqual([["Vines", 1, "status"]]);
  });

  test("is a blank cell in each row where the column stands; a row laid out for counting lacks nothing", () => {
    const { Block, Row, Side, Cordon, Vine: _v, ...figures } = CORDON;
    const sheet = sheetOf("Cordons", { Block, Row, Side, Cordon }, [
      { ...figures, Vine: 1 },
      { ...figures, Vine: 2, Positions: null },
      { Vine: 3 },
    ]);
    expect(found("missingValue", [sheet], ({ row, column }) => [row, column])).toEqual([[3, "Positions"]]);
  });
});
