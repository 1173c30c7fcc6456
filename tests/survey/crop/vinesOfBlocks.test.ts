import { shootThinning, vinesOfBlocks, type VinesOfBlock } from "../../../src/survey/crop/vinesOfBlocks";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { areaOf } from "../area";
import { seasonOfSheets, type Rows, type Sheets } from "./seasonOfSheets";

const HEAD = ["Block", "Row", "Vine", "Status", "Clusters", "Shoots", "Prunings (kg)"];
const bearing = (vines: number, status = "bearing"): Rows =>
  Array.from({ length: vines }, (_, at) => ["A", 1, at + 1, status]);
const blockOf = (vines: number | null): Rows => [
  ["Block", "Vines", "Vine spacing (m)"],
  ["A", vines, 2],
];
function vinesOf(sheets: Sheets): VinesOfBlock {
  const season = seasonOfSheets(sheets);
  return vinesOfBlocks(season).get(season.words.codeOf("A"))!;
}
const BY_ROW: Rows = [
  ["Setting", "Value"],
  ["Vines were drawn", "by row"],
];

describe("vines planted and bearing", () => {
  test.each([
    [98, true, "exact"],
    [97, false, "beta"],
  ])("a register of %d of 100 vines is complete: %j", (listed, complete, law) => {
    const vines = vinesOf({
      blocks: blockOf(100),
      vines: [HEAD, ...bearing(listed - 1), ["A", 2, 1, "missing"]],
    });
    expect(vines).toMatchObject({ listed, planted: 100, complete, bearing: { law, source: "missing" } });
    expect(vines.bearing.value).toBeCloseTo((listed - 1) / listed, 12);
    expect(vines.bearingVines).toBe(99);
  });

  test("as many vines as are listed, where the Blocks sheet says fewer or nothing", () => {
    const listed = { vines: [HEAD, ...bearing(12)] };
    expect(vinesOf({ ...listed, blocks: blockOf(10) })).toMatchObject({ planted: 12, bearingVines: 12 });
    expect(vinesOf({ ...listed, blocks: blockOf(null) })).toMatchObject({ planted: 12, bearingVines: 12 });
  });

  test("without a register every vine bears, and nothing was counted", () => {
    expect(vinesOf({ blocks: blockOf(10) })).toMatchObject({
      listed: 0,
      tooYoung: false,
      planted: 10,
      complete: false,
      bearing: { value: 1, law: "exact", source: "missing" },
      bearingVines: 10,
      clusterCounts: [],
    });
    const { clusters, shoots, prunings } = vinesOf({ blocks: blockOf(10) });
    expect([clusters, shoots, prunings]).toEqual([undefined, undefined, undefined]);
  });

  test("a row without a block is of none, a vine without a status does not bear", () => {
    const rows: Rows = [HEAD, [null, 1, 3, "bearing", 5], ...bearing(2), ["A", 1, 4, null, 5]];
    expect(vinesOf({ blocks: blockOf(3), vines: rows })).toMatchObject({
      listed: 3,
      bearingVines: 2,
      clusterCounts: [],
    });
  });

  test("without a column of statuses every vine listed bears", () => {
    const rows: Rows = [
      ["Block", "Row", "Vine", "Clusters"],
      ["A", 1, 1, 30],
      ["A", 1, 2, 40],
    ];
    expect(vinesOf({ blocks: blockOf(2), vines: rows })).toMatchObject({
      bearingVines: 2,
      clusterCounts: [30, 40],
    });
  });

  test("a vine of its first year is listed and bears nothing; a block of such vines alone is too young", () => {
    const planted = (...years: readonly number[]) =>
      vinesOf({
        blocks: blockOf(null),
        vines: [
          ["Block", "Row", "Vine", "Status", "Clusters", "Year planted", "Date"],
          ...years.map((year, at) => ["A", 1, at + 1, "bearing", 7, year, 46037]),
        ],
      });
    expect(planted(2026, 2026)).toMatchObject({
      listed: 2,
      tooYoung: true,
      bearingVines: 0,
      clusterCounts: [],
    });
    expect(planted(2026, 2011, 2011)).toMatchObject({
      listed: 3,
      tooYoung: false,
      bearingVines: 2,
      clusterCounts: [7, 7],
    });
  });

  test("blocks stand in the order of the Blocks sheet, others after them", () => {
    const season = seasonOfSheets({
      vines: [HEAD, ["Z", 1, 1, "bearing"], ["A", 1, 1, "bearing"], ["Z", 1, 2, "bearing"]],
      blocks: blockOf(1),
    });
    expect(
      [...vinesOfBlocks(season)].map(([code, { listed }]) => [season.words.wordOf(code), listed]),
    ).toEqual([
      ["A", 1],
      ["Z", 2],
    ]);
  });
});

describe("counts on some vines", () => {
  test("a 0 that was counted counts, prunings of 0 were not weighed", () => {
    const rows: Rows = [
      HEAD,
      ["A", 1, 1, "bearing", 0, 0, 0],
      ["A", 1, 2, "bearing", 30, 20, 0.5],
      ["A", 1, 3, "bearing", null, null, 0.7],
    ];
    expect(vinesOf({ blocks: blockOf(3), vines: rows })).toMatchObject({
      clusters: { value: 15 },
      shoots: { value: 10 },
      clusterCounts: [0, 30],
      prunings: { mean: expect.closeTo(0.6, 12), weighed: 2 },
    });
  });

  test.each([
    [2, 2, false],
    [2, 3, true],
    [4, 100, true],
    [5, 100, false],
  ])("%d of %d vines counted are too few to show their spread: %j", (counted, all, few) => {
    const rows = bearing(all).map((row, at) => [...row, at < counted ? 30 + at : null]);
    const vines = vinesOf({ blocks: blockOf(all), vines: [HEAD, ...rows] });
    expect(vines.few()).toBe(few);
    expect(vines.clusters).toMatchObject({ sample: { n: counted, of: all } });
  });

  test("one vine is no mean", () => {
    expect(
      vinesOf({ blocks: blockOf(2), vines: [HEAD, ["A", 1, 1, "bearing", 30]] }).clusters,
    ).toBeUndefined();
  });
});

describe("vines drawn by row", () => {
  // Four bearing vines a row; one counted in rows 1 and 2 (10 each), three in row 3 (40 each). Rows 1 and 2 go together:
  // (8 x 10 + 4 x 40) / 12 = 20. At random (2 x 10 + 3 x 40) / 5 = 28.
  const rows = (column: string): Rows => [
    ["Block", "Row", "Vine", "Status", column],
    ...[1, 3, 2].flatMap((row) =>
      [1, 2, 3, 4].map((vine) => [
        "A",
        row,
        vine,
        "bearing",
        vine <= (row === 3 ? 3 : 1) ? (row === 3 ? 40 : 10) : null,
      ]),
    ),
  ];
  test.each(["clusters", "shoots"] as const)(
    "%s: rows are strata in their order, not in that of the sheet",
    (what) => {
      const sheets = { blocks: blockOf(12), vines: rows(what === "clusters" ? "Clusters" : "Shoots") };
      expect(vinesOf({ ...sheets, settings: BY_ROW })[what]!.value).toBeCloseTo(20, 12);
      expect(vinesOf(sheets)[what]!.value).toBeCloseTo(28, 12);
      expect(vinesOf({ ...sheets, blocks: blockOf(50), settings: BY_ROW })[what]!.value).toBeCloseTo(28, 12);
    },
  );

  test("more vines counted in a row than the register lists there are all counted", () => {
    const vines = vinesOf({ blocks: blockOf(5), vines: [HEAD, ...bearing(5)], settings: BY_ROW });
    const estimate = vines.estimate([1, 2, 3, 4, 5, 9], (row) => (row === 1 ? [1, 2, 3, 4, 5, 9] : []));
    expect(estimate).toMatchObject({ value: 4, law: "exact", sample: { n: 6, of: 6 } });
  });
});

describe("a list of counted vines beside the register", () => {
  const season = (list: Rows) =>
    readSeason([
      areaOf("Blocks", blockOf(4)),
      areaOf("Vines", [
        HEAD.slice(0, 4),
        ["A", 1, 1, "bearing"],
        ["A", 1, 2, "bearing"],
        ["A", 1, 3, "missing"],
        ["A", 1, 4, "young"],
      ]),
      areaOf("Weighed", list),
      areaOf("Settings", BY_ROW),
    ]);

  test("its counts are taken, its vines are not listed twice; what does not bear by the register is left out", () => {
    const read = season([
      ["Block", "Row", "Vine", "Clusters"],
      ["A", 1, 1, 30],
      ["A", 1, 2, 40],
      ["A", 1, 3, 0],
      ["A", 1, 4, 9],
    ]);
    expect(vinesOfBlocks(read).get(read.words.codeOf("A"))).toMatchObject({
      listed: 4,
      bearingVines: 2,
      clusterCounts: [30, 40],
      clusters: { value: 35, law: "exact", sample: { n: 2, of: 2 } },
    });
  });
});

describe("shoots to thin to", () => {
  const thinned = (spacing: number | null, ...shoots: readonly (number | null)[]) => {
    const season = seasonOfSheets({
      blocks: [
        ["Block", "Vines", "Vine spacing (m)"],
        ["A", 2, spacing],
        ["B", 2, 2],
      ],
      vines: [
        ["Block", "Row", "Vine", "Status", "Shoots"],
        ...shoots.map((count, at) => ["A", 1, at + 1, "bearing", count]),
      ],
    });
    return [...shootThinning(season)].map(([code, thinning]) => [season.words.wordOf(code), thinning.keep]);
  };

  // 6 a foot (Atucha and Wimmer 2015) are 19.685 a metre: 39.4 on 2 m, 5.9 on the least spacing of 0.3 m, 196.9 on the widest
  test.each([
    [2, 39],
    [0.3, 5],
    [10, 196],
  ])("vines %d m apart keep %d", (spacing, keep) => {
    expect(thinned(spacing, 200, 200)).toEqual([["A", keep]]);
  });

  test("nothing without shoots, without a spacing or with one that cannot be", () => {
    expect(thinned(2, null, null)).toEqual([]);
    expect(thinned(null, 40, 40)).toEqual([]);
    expect(thinned(0.2, 40, 40)).toEqual([]);
    expect(thinned(11, 40, 40)).toEqual([]);
  });
});
