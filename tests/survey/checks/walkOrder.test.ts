import { CORDON, found, sheetOf } from "./found";

/** What is asked of stops in the order of the sheet, each as vineyard row/vine: the stop, and those beside it. */
const stray = (...stops: readonly string[]) =>
  found(
    "outOfWalkOrder",
    [
      sheetOf(
        "Cordons",
        CORDON,
        stops.map((stop) => {
          const [Row, Vine] = stop.split("/").map(Number);
          return { Row, Vine };
        }),
      ),
    ],
    ({ facts }) => [`${facts.row}/${facts.vine}`, ...[facts.neighbours].flat()],
  );
const row = (number: number, ...vines: number[]) => vines.map((vine) => `${number}/${vine}`);

describe("a vine out of the order in which its row was walked", () => {
  test.each([
    ["forwards", [1, 2, 3, 4, 5], []],
    ["from the far end", [5, 4, 3, 2, 1], []],
    ["one too early", [1, 2, 7, 3, 4, 5], [["1/7", "1/2", "1/3"]]],
    ["the second stop", [1, 9, 2, 3, 4], [["1/9", "1/1", "1/2"]]],
    ["the first stop", [9, 1, 2, 3, 4], [["1/9", "1/1"]]],
    ["the last stop", [2, 3, 4, 5, 1], [["1/1", "1/5"]]],
    ["backwards", [6, 5, 9, 4, 3], [["1/9", "1/5", "1/4"]]],
  ])("%s: %j", (_, vines, expected) => {
    expect(stray(...row(1, ...vines))).toEqual(expected);
  });

  // Of ten stops two may be out of order, a fifth; of four stops one.
  test("is asked about as long as few are; a sheet sorted in another way is not judged", () => {
    expect(stray(...row(1, 1, 3, 2, 4))).toHaveLength(1);
    expect(stray(...row(1, 1, 2, 20, 3, 4, 21, 5, 6, 7, 8))).toEqual([
      ["1/20", "1/2", "1/3"],
      ["1/21", "1/4", "1/5"],
    ]);
    expect(stray(...row(1, 1, 2, 20, 3, 4, 21, 5, 6, 22, 7))).toEqual([]);
  });

  test("is one that comes again, too", () => {
    // 1, 2, 3, 4, 6 and on rise; the 5 and one of the two 3 do not fit.
    expect(stray(...row(1, 1, 2, 3, 5, 3, 4, 6, 7, 8, 9))).toHaveLength(2);
  });
});

describe("a stop of another vineyard row", () => {
  test("within a row's walk is asked about, and the walk goes on behind it", () => {
    expect(stray(...row(1, 1, 2, 3), "2/9", ...row(1, 4, 5, 6))).toEqual([["2/9", "1/3", "1/4"]]);
    expect(stray(...row(1, 1, 2, 3, 5, 6, 7, 8, 9), "2/9", ...row(1, 4, 10))).toEqual([
      ["2/9", "1/9", "1/4"],
      ["1/4", "2/9", "1/10"],
    ]);
  });

  test("begins the next row's walk, the first stop of which belongs to it", () => {
    expect(stray(...row(1, 1, 2, 3, 4), ...row(2, 1, 2, 9, 3, 4))).toEqual([["2/9", "2/2", "2/3"]]);
    expect(stray(...row(1, 1, 2, 3, 4), ...row(2, 9, 1, 2, 3, 4))).toEqual([["2/9", "1/4", "2/1"]]);
    expect(stray(...row(1, 1, 2, 3), "2/9", "1/4", ...row(2, 1, 2, 3, 4))).toEqual([["2/9", "1/3", "1/4"]]);
    expect(stray(...row(1, 1, 2, 3), ...row(2, 9, 1), "1/4", ...row(2, 2, 3))).toEqual([
      ["2/9", "1/3", "2/1"],
      ["1/4", "2/1", "2/2"],
    ]);
  });

  test("with a single stop of the row on either side tells nothing", () => {
    expect(stray(...row(1, 1, 2), "2/9", "1/3", ...row(3, 1, 2, 3))).toEqual([]);
    expect(stray(...row(3, 1, 2, 3), "1/1", "2/9", ...row(1, 2, 3))).toEqual([]);
  });
});
