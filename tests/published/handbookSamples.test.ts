import { handbookSampleSizes, sampleForAShare } from "../../src/domain/outlook/handbookSampleSizes";
import { SOURCES } from "../../src/domain/sources";
import { checkRows, EXACT } from "./checkRows";

const TABLE: readonly (readonly [number, number])[] = [
  [10, 10],
  [15, 14],
  [20, 19],
  [25, 24],
  [30, 28],
  [35, 32],
  [40, 36],
  [45, 40],
  [50, 44],
  [55, 48],
  [60, 52],
  [65, 56],
  [70, 59],
  [75, 63],
  [80, 66],
  [85, 70],
  [90, 73],
  [95, 76],
  [100, 80],
  [220, 140],
  [230, 144],
  [240, 148],
  [500, 217],
  [1200, 291],
  [1300, 297],
  [1400, 302],
  [1500, 306],
  [9000, 368],
];

checkRows("the sample for a share of one half", [
  ...TABLE.map(([population, published]) => ({
    why: `${population} to ${published}`,
    source:
      "Krejcie and Morgan 1970, Educational and Psychological Measurement 30:607-610, table 1 (mirrors)",
    ours: () => sampleForAShare(population),
    published,
    within: EXACT,
  })),
  {
    why: '800 vines to 260, "5 % error"',
    source: "Washington State University, Yield Estimation, July 2006",
    ours: () => sampleForAShare(800),
    published: 260,
    within: EXACT,
  },
]);

/** Washington State University, July 2006; Iowa State University Extension, Wine Grower News 178 (2011) and 247 (2013). */
test("what the handbooks say to count in a block of 800 vines", () => {
  expect(handbookSampleSizes(800)).toEqual([
    { source: "wsu2006", vines: [260, 260], clusters: undefined, margin: 0.05 },
    { source: "iowa2011", vines: [10, 15], clusters: [100, 100], margin: 0.15 },
    { source: "iowa2013", vines: undefined, clusters: [100, 200], margin: undefined },
  ]);
});

test("what the handbooks say names its source", () => {
  for (const { source } of handbookSampleSizes(600)) expect(SOURCES).toHaveProperty(source);
});
