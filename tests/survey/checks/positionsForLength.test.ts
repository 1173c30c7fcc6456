import { CORDON, found, rowsFound, sheetOf, upTo, type Cells } from "./found";

const { "Length (ft)": _, ...rest } = CORDON;

/** Cordons of 8 positions on 80 cm, 10 cm apart, and behind them other ones. */
const sheet = (usual: number, ...others: readonly Cells[]) => [
  sheetOf(
    "Cordons",
    { ...rest, "Length (cm)": 80, "Live spurs": 0 },
    [...upTo(usual).map((): Cells => ({})), ...others].map((row, at) => ({ Vine: at + 1, ...row })),
  ),
];
const unlike = (...args: Parameters<typeof sheet>) => rowsFound("positionsUnlikeLength", sheet(...args));

describe("positions unlike what the block's cordons carry on that length", () => {
  // 80 cm carry 8, give or take 0.12 x 8 + 0.75 / 2 = 1.335; four times that are 5.34.
  test("are asked about beyond four usual spreads", () => {
    expect(unlike(12, { Positions: 14 })).toEqual([14]);
    expect(unlike(12, { Positions: 13 })).toEqual([]);
    expect(unlike(12, { Positions: 0 })).toEqual([14]);
    expect(found("positionsUnlikeLength", sheet(12, { Positions: 14 }), ({ facts }) => facts)).toEqual([
      expect.objectContaining({ value: 14, length: 80, unit: "cm", expected: 8, values: 13 }),
    ]);
  });

  // 40 cm carry 4, give or take 0.855 and four times that; but two more or less than the block's 8 are usual.
  test("are left alone where their number is usual in the block: the length is odd", () => {
    expect(unlike(12, { "Length (cm)": 40, Positions: 10 })).toEqual([]);
    expect(unlike(12, { "Length (cm)": 40, Positions: 11 })).toEqual([14]);
  });

  test("are told as beyond the column's limit alone where they are more than any cordon has", () => {
    expect(unlike(12, { Positions: 60 })).toEqual([14]);
    expect(unlike(12, { Positions: 61 })).toEqual([]);
  });

  test("need both figures", () => {
    expect(unlike(12, { Positions: null }, { "Length (cm)": null, Positions: 30 })).toEqual([]);
    expect(unlike(12, { "Length (cm)": 0, Positions: 14 })).toEqual([]);
  });

  test("are held against twelve cordons at least, of which blank, empty and young ones are none", () => {
    expect(unlike(11, { Positions: 14 })).toEqual([13]);
    expect(unlike(10, { Positions: 14 })).toEqual([]);
    for (const none of [{ Positions: 0 }, { Positions: null }, { "Length (cm)": 0 }] as Cells[])
      expect(unlike(10, none, { Positions: 14 })).toEqual([]);
    const register = sheetOf("Vines", { Block: "North Bench", Row: 1, Status: "bearing" }, [
      { Vine: 1, Status: "young" },
      ...upTo(14).map((Vine) => ({ Vine: Vine + 1 })),
    ]);
    expect(rowsFound("positionsUnlikeLength", [...sheet(11, { Positions: 14 }), register])).toEqual([]);
  });
});

describe("a length that fits its positions with two digits exchanged", () => {
  const swapped = (length: number | string, usual = 82, positions = 8) => {
    const areas = sheetOf(
      "Cordons",
      { ...rest, Positions: positions, "Length (cm)": usual },
      upTo(13).map((Vine) => ({ Vine, ...(Vine === 13 && { "Length (cm)": length }) })),
    );
    return found("digitsSwapped", [areas], ({ row, column, facts }) => [
      row,
      column,
      facts.value,
      facts.meant,
    ]);
  };

  test.each([
    [28, [[14, "Length (cm)", 28, 82]]],
    // 73 cm are a ninth less than 82, which cordons of one block differ by.
    [37, [[14, "Length (cm)", 37, 73]]],
    // 53 cm are a third less.
    [35, []],
    // 75 cm need no exchange.
    [75, []],
    // A text is asked about as a text.
    ["28", []],
  ])("of 8 positions on 82 cm: %p", (length, expected) => {
    expect(swapped(length)).toEqual(expected);
  });

  test("is not one with its point elsewhere", () => {
    expect(swapped(13.9, 139, 14)).toEqual([]);
  });
});
