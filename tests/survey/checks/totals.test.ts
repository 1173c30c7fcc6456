import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";
import { CORDON, found, rowsFound, sheetOf, upTo, VINE, type Cells } from "./found";

const HEADS = [
  "Block",
  "Row",
  "Vine",
  "Status",
  "Prunings (lb)",
  "Clusters",
  "Counted by",
  "Date",
  "Year planted",
];
const vine = (Vine: number, prunings: CellValue, clusters: CellValue): CellValue[] => [
  "North Bench",
  1,
  Vine,
  "bearing",
  prunings,
  clusters,
  "AB",
  "2026-06-10",
  2010,
];
const total = (...cells: CellValue[]): CellValue[] => ["Total", null, null, null, ...cells];

/** Totals that differ: the sheet row, the column, the total and the sum that it is held against. */
const differ = (rows: readonly CellValue[][], formulas?: Readonly<Record<string, string>>) =>
  found("totalDiffers", [areaOf("Vines", [HEADS, ...rows], { formulas })], ({ row, column, facts }) => [
    row,
    column,
    facts.total,
    facts.sum,
    facts.difference,
    facts.made,
  ]);

describe("a total below its rows", () => {
  const rows = [vine(1, 1.25, 10), vine(2, 1.26, 12), vine(3, 2, 14)];

  // 10 + 12 + 14 = 36, in the middle 12, three rows.
  test.each([
    [36, []],
    [12, []],
    [3, []],
    [37, [[5, "Clusters", 37, 36, 1, "typed"]]],
    [108, [[5, "Clusters", 108, 36, 72, "typed"]]],
  ])("%p clusters may be their sum, their mean or how many they are", (clusters, expected) => {
    expect(differ([...rows, total(null, clusters)])).toEqual(expected);
  });

  // 1.25 + 1.26 + 2 = 4.51
  test.each([
    [4.51, []],
    [4.5, []],
    [4.6, [[5, "Prunings (lb)", 4.6, 4.51, 0.09, "typed"]]],
    [4.52, [[5, "Prunings (lb)", 4.52, 4.51, 0.01, "typed"]]],
    [5, [[5, "Prunings (lb)", 5, 4.51, 0.49, "typed"]]],
  ])("%p lb may be rounded at its last decimal, but not to a whole number", (pounds, expected) => {
    expect(differ([...rows, total(pounds)])).toEqual(expected);
  });

  test("is that of a formula where one stands in the cell", () => {
    expect(differ([...rows, total(null, 37)], { "5:6": "=SUM(F2:F4)+1" })).toEqual([
      [5, "Clusters", 37, 36, 1, "formula"],
    ]);
  });

  // 37 clusters are told, so that the row is read as a total.
  test.each([
    ["statuses", 3],
    ["counters", 6],
    ["days", 7],
    ["years", 8],
  ])("is no sum of %s", (_, at) => {
    const odd = [...total(null, 37), null, null, null];
    odd[at] = at === 7 ? 46200 : 77;
    expect(differ([...rows, odd]).map(([, column]) => column)).toEqual(["Clusters"]);
  });

  test("passes over cells that hold words", () => {
    expect(differ([vine(1, 1, "many"), ...rows.slice(1), total(null, 26)])).toEqual([]);
  });
});

describe("totals of parts of a sheet", () => {
  // 10 + 12 = 22 and 14 + 16 = 30 since then, 52 in all.
  const parts = (first: number, second: number) => [
    vine(1, 1, 10),
    vine(2, 1, 12),
    total(null, first),
    vine(3, 1, 14),
    vine(4, 1, 16),
    total(null, second),
  ];

  test.each([
    ["those since the last total", 30, []],
    ["all", 52, []],
    ["the mean of those since", 15, []],
    ["the mean of all", 13, []],
    ["nearer to those since", 40, [[7, "Clusters", 40, 30, 10, "typed"]]],
    ["as near to either", 41, [[7, "Clusters", 41, 30, 11, "typed"]]],
    ["nearer to all", 42, [[7, "Clusters", 42, 52, -10, "typed"]]],
  ])("are held against %s: %p", (_, second, expected) => {
    expect(differ(parts(22, second))).toEqual(expected);
  });

  test("each are held against their own rows", () => {
    expect(differ(parts(23, 30))).toEqual([[4, "Clusters", 23, 22, 1, "typed"]]);
  });
});

describe("vine places of a block", () => {
  const blocks = (places: CellValue, formulas?: Readonly<Record<string, string>>) =>
    found(
      "placesDiffer",
      [
        sheetOf(
          "Blocks",
          { Block: "North Bench", Rows: 1, "Vine spacing (ft)": 6 },
          [{ "Vine places": places }],
          {
            formulas,
          },
        ),
        sheetOf(
          "Vines",
          VINE,
          upTo(5).map((Vine) => ({ Vine })),
        ),
      ],
      ({ row, facts }) => [row, facts.total, facts.sum, facts.difference, facts.made],
    );

  test.each([
    [5, []],
    [6, [[2, 6, 5, 1, "typed"]]],
    [4, [[2, 4, 5, -1, "typed"]]],
    [0, []],
    [null, []],
  ])("%p are held against the five vines of the register", (places, expected) => {
    expect(blocks(places)).toEqual(expected);
  });

  test("may come from a formula", () => {
    expect(blocks(6, { "2:4": "=3+3" })).toEqual([[2, 6, 5, 1, "formula"]]);
  });
});

describe("a total beside its parts in columns that are none of ours", () => {
  /** Rows in which "All" is the sum of the columns beside it, but for the named ones, where it is one more. */
  const sums = (
    parts: readonly string[],
    { rows = 20, odd = [5], cells = () => ({}), order = [...parts, "All"], usual = CORDON as Cells } = {} as {
      rows?: number;
      odd?: readonly number[];
      cells?: (vine: number) => Cells;
      order?: readonly string[];
      usual?: Cells;
    },
  ) => {
    const table = upTo(rows).map((Vine) => {
      const own: Cells = {
        ...Object.fromEntries(parts.map((part, at) => [part, ((Vine * (at + 3)) % 7) + 1])),
        ...cells(Vine),
      };
      const All = parts.reduce((sum, part) => sum + Number(own[part]), odd.includes(Vine) ? 1 : 0);
      return { Vine, ...Object.fromEntries(order.map((head) => [head, head === "All" ? All : own[head]])) };
    });
    return found("totalUnlikeParts", [sheetOf("Cordons", usual, table)], ({ row, column, facts }) => [
      row,
      column,
      facts.parts,
      facts.difference,
      facts.values,
    ]);
  };
  const [TWO, THREE] = [
    ["Strong", "Weak"],
    ["Strong", "Weak", "Blind"],
  ];

  test("is learnt from twenty rows, in all but a twentieth of which it holds", () => {
    expect(sums(TWO)).toEqual([[6, "All", TWO, 1, 19]]);
    expect(sums(TWO, { rows: 19 })).toEqual([]);
    expect(sums(TWO, { odd: [5, 6] })).toEqual([]);
    expect(sums(TWO, { rows: 40, odd: [5, 6] }).map(([row]) => row)).toEqual([6, 7]);
    expect(sums(TWO, { odd: [] })).toEqual([]);
  });

  test("has parts that add something in five rows at least", () => {
    const weak = (filled: number) => ({ cells: (vine: number) => ({ Weak: vine > 20 - filled ? 2 : 0 }) });
    expect(sums(TWO, weak(5))).toHaveLength(1);
    expect(sums(TWO, weak(4))).toEqual([]);
  });

  test("has two parts anywhere, or more that stand beside each other", () => {
    expect(
      sums(TWO, { order: ["Strong", "Other", "All", "Weak"], cells: (vine) => ({ Other: vine }) }),
    ).toEqual([[6, "All", TWO, 1, 19]]);
    expect(sums(THREE)).toEqual([[6, "All", THREE, 1, 19]]);
    expect(sums(THREE, { order: ["Strong", "All", "Weak", "Blind"] })).toEqual([[6, "All", THREE, 1, 19]]);
    const apart = {
      order: ["Strong", "Weak", "Other", "Blind", "All"],
      cells: (vine: number) => ({ Other: vine }),
    };
    expect(sums(THREE, apart)).toEqual([]);
  });

  test("has eight parts at most", () => {
    const names = (count: number) => upTo(count).map((at) => `Cane ${"ABCDEFGHI"[at - 1]}`);
    expect(sums(names(8))).toEqual([[6, "All", names(8), 1, 19]]);
    expect(sums(names(9))).toEqual([]);
  });

  // In six of 140 rows the third part adds something: without it the sum departs in seven, which is a twentieth.
  test("has the parts that leave fewest rows", () => {
    const cells = (vine: number) => ({ Blind: vine > 134 ? 2 : 0 });
    expect(sums(THREE, { rows: 140, cells })).toEqual([[6, "All", THREE, 1, 139]]);
  });

  test("may have a part or be a column of ours, in the unit that it is written in", () => {
    expect(
      sums(["Strong", "Longest gap", "Weak"], {
        order: ["Other", "Strong", "Longest gap", "Weak", "All"],
        cells: (vine) => ({ Other: vine }),
      }),
    ).toEqual([[6, "All", ["Strong", "Longest gap", "Weak"], 1, 19]]);
    const pounds = upTo(20).map((Vine) => ({
      Vine,
      "Upper wire": 1 + (Vine % 3) / 4,
      "Lower wire": 0.5 + (Vine % 4) / 4,
      "Prunings (lb)": 1.5 + (Vine % 3) / 4 + (Vine % 4) / 4 + (Vine === 5 ? 1 : 0),
    }));
    expect(rowsFound("totalUnlikeParts", [sheetOf("Vines", VINE, pounds)])).toEqual([6]);
  });

  test("is no sum of our own columns alone, which have checks of their own", () => {
    const rows = upTo(20).map((Vine) => ({
      Vine,
      "Live spurs": Vine === 5 ? 7 : 6,
      "Spurs down": 4 + (Vine % 2),
      "Spurs up": 2 - (Vine % 2),
      Tag: 100 + Vine,
    }));
    expect(rowsFound("totalUnlikeParts", [sheetOf("Cordons", CORDON, rows)])).toEqual([]);
  });
});
