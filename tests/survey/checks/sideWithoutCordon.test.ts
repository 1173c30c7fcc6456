import { CORDON, found, sheetOf, upTo, type Cells } from "./found";

/** Both cordons of so many vines, of which those named have both on the left. */
const vines = (count: number, ...oneSided: number[]) =>
  upTo(count).flatMap((Vine): Cells[] => [
    { Vine, Side: "left", Cordon: "A" },
    { Vine, Side: oneSided.includes(Vine) ? "left" : "right", Cordon: "B" },
  ]);
const asked = (rows: readonly Cells[]) =>
  found("sideWithoutCordon", [sheetOf("Cordons", CORDON, rows)], ({ row, facts }) => [
    row,
    facts.vine,
    facts.rows,
    facts.choice,
  ]);

describe("a vine with cordons on one side only", () => {
  // Nine of ten with both sides are nine tenths; the vine's second row is that of the sheet's row 1 + 2 x vine.
  test("is asked about where nine tenths of ten vines or more have both", () => {
    expect(asked(vines(10, 4))).toEqual([[9, 4, 2, "left"]]);
    expect(asked(vines(9, 4))).toEqual([]);
    expect(asked(vines(20, 4, 7)).map(([, vine]) => vine)).toEqual([4, 7]);
    expect(asked(vines(20, 4, 7, 9))).toEqual([]);
    expect(asked(vines(19, 4, 7))).toEqual([]);
  });

  test("may be the first or the last of the sheet", () => {
    expect(asked(vines(20, 1, 20)).map(([row]) => row)).toEqual([3, 41]);
  });

  test.each<[string, Cells]>([
    ["that names another block with its numbers", { Block: "Creek Side" }],
    ["that names no vine", { Vine: "?" }],
  ])("may go on in a row before or behind it %s", (_, odd) => {
    const rows = vines(12, 5);
    const own = { Vine: 5, Side: "right", Cordon: "C", ...odd };
    expect(asked([...rows.slice(0, 10), own, ...rows.slice(10)])).toEqual([]);
    expect(asked([...rows.slice(0, 8), own, ...rows.slice(8)])).toEqual([]);
    expect(asked([...rows.slice(0, 6), own, ...rows.slice(6)]).map(([, vine]) => vine)).toEqual([5]);
  });
});
