import { found, sheetOf, type Cells } from "./found";

/** A harvest of pounds a vine on so many vines. */
const of = (Block: string, Year: number, aVine: number, vines = 100): Cells => ({
  Block,
  Year,
  "Picked (lb)": aVine * vines,
  "Vines picked": vines,
});
const years = (block: string, ...crops: number[]) => crops.map((aVine, at) => of(block, 2020 + at, aVine));

/** The sheet rows asked about, with how many times the usual crop they are and the harvests that it is held against. */
const unusual = (...rows: readonly Cells[]) =>
  found(
    "harvestUnusual",
    [
      sheetOf("Harvest", {}, rows),
      sheetOf("Blocks", { Rows: 4, "Vine spacing (ft)": 6 }, [
        { Block: "N", "Vine places": 100 },
        { Block: "O", "Vine places": 100 },
      ]),
    ],
    ({ row, facts }) => [row, facts.times, facts.values],
  );

describe("a harvest far above the others, vine by vine", () => {
  test("is asked about above four times the block's middle crop", () => {
    expect(unusual(...years("N", 10, 8, 12), of("N", 2024, 41, 50))).toEqual([[5, 4, 3]]);
    expect(unusual(...years("N", 10, 8, 12), of("N", 2024, 40, 50))).toEqual([]);
  });

  // The middle of block O's five crops of 30 and N's three of 10 is 30; one and a half times that is 45.
  test("is still no more than one and a half times what the farm's vines bear", () => {
    const others = [...years("N", 10, 10, 10), ...years("O", 30, 30, 30, 30, 30)];
    expect(unusual(...others, of("N", 2024, 46))).toEqual([[10, 5, 3]]);
    expect(unusual(...others, of("N", 2024, 45))).toEqual([]);
  });

  test("is, as a block's only one, held against five times the farm's, of which there must be three", () => {
    expect(unusual(...years("O", 10, 10, 10), of("N", 2024, 51))).toEqual([[5, 5, 3]]);
    expect(unusual(...years("O", 10, 10, 10), of("N", 2024, 50))).toEqual([]);
    expect(unusual(...years("O", 10, 10), of("N", 2024, 51))).toEqual([]);
  });

  test("is not held against a year in which nothing was picked", () => {
    expect(unusual(...years("O", 10, 10, 0), of("N", 2024, 51))).toEqual([]);
  });

  test("is of the block's vine places where the vines picked were not written", () => {
    for (const picked of [null, 0])
      expect(unusual(...years("N", 10, 10, 10), { ...of("N", 2024, 41), "Vines picked": picked })).toEqual([
        [5, 4, 3],
      ]);
    // Of another block nobody knows how many vines it has.
    expect(unusual(...years("N", 10, 10, 10), { ...of("P", 2024, 90), "Vines picked": null })).toEqual([]);
  });
});
