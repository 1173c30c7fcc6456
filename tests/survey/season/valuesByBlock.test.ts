import { vinesAcross } from "../../../src/survey/season/gapsOfSeason";
import { middleAndSpread } from "../../../src/survey/season/middleAndSpread";
import { valuesByBlock } from "../../../src/survey/season/valuesByBlock";
import { seasonOfSheets } from "../crop/seasonOfSheets";

test("values block by block, also of a block that comes again, without those that nobody wrote", () => {
  const [table] = seasonOfSheets({
    vines: [
      ["Block", "Row", "Vine", "Status", "Clusters"],
      [null, 9, 9, "bearing", 99],
      ["A", 1, 1, "bearing", 10],
      ["A", 1, 2, "bearing", null],
      ["B", 1, 1, "bearing", 30],
      ["C", 1, 1, "bearing", null],
      ["A", 1, 3, "bearing", 20],
      ["A", 1, 4, "bearing", 0],
    ],
  }).tables("vines");
  const clusters = table.column("clusters")!.usable;
  // The list is the same for every block, so each is copied when it comes.
  const copied: number[][] = [];
  for (const [, values] of valuesByBlock(table, (index) => clusters[index])) copied.push([...values]);
  expect(copied).toEqual([[10, 20, 0], [30]]);
});

test.each([
  ["in the order of the row, with those that nobody counted", [3, 1], [1, 2, 3]],
  ["one that stands between two others", [1, 1.5, 3], [1, 1.5, 2, 3]],
  ["20 that are empty are shown", [1, 22], Array.from({ length: 22 }, (_, at) => at + 1)],
  ["21 are not", [1, 23], [1, 23]],
  ["none", [], []],
])("vines across a map: %s", (_, vines, expected) => {
  const half = Math.ceil(vines.length / 2);
  const rows = [vines.slice(0, half), vines.slice(half)].map((some) => ({
    byVine: some.map((vine) => ({ vine })),
  }));
  expect(vinesAcross(rows)).toEqual(expected);
});

// Iglewicz and Hoaglin 1993: the median deviation over 0.6745, the upper quartile of the normal distribution; by hand.
test.each([
  [[1, 2, 3, 4, 100], 3, 1 / 0.6744897501960817],
  [[4, 1, 2, 3], 2.5, 1 / 0.6744897501960817],
  [[10, 20], 15, 5 / 0.6744897501960817],
  [[7], 7, 0],
  [[5, 5, 5], 5, 0],
  [[5, 5, 5, 9], 5, Math.sqrt(Math.PI / 2)],
])("middle and spread of %j", (values, median, spread) => {
  const found = middleAndSpread(Float64Array.from(values));
  expect(found).toEqual({ median, spread: expect.closeTo(spread, 12), count: values.length });
});
