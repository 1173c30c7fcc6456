import { readSeason } from "../../../src/survey/reading/readSeason";
import { isYieldList } from "../../../src/survey/season/yieldList";
import { placeKey } from "../../../src/survey/season/vinePlaces";
import { winterOfSeason } from "../../../src/survey/season/winterOfSeason";
import { bearsNothingYet, youngVines } from "../../../src/survey/season/youngVines";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";
import { seasonOfSheets, type Rows, type Sheets } from "../crop/seasonOfSheets";

/** 15 January 2026, as a spreadsheet counts days. */
const JANUARY_2026 = 46037;

describe("the winter of a season", () => {
  const cordons = (day: CellValue): Rows => [
    [...CORDON_HEADS, "Date"],
    ["A", 1, 1, "left", "A", 1, 3, 9, 8, day],
  ];
  const vines = (day: CellValue): Rows => [
    ["Block", "Row", "Vine", "Status", "Date"],
    ["A", 1, 1, "bearing", day],
  ];
  const budCuts = (day: CellValue): Rows => [
    ["Block", "Nodes cut", "Primaries alive", "Date"],
    ["A", 8, 6, day],
  ];
  const harvest = (...rows: Rows): Rows => [["Block", "Year", "Picked (kg)"], ...rows];

  test.each<[string, Sheets, number]>([
    ["is that of a count of cordons", { cordons: cordons(JANUARY_2026) }, 2026],
    ["or of vines", { vines: vines(JANUARY_2026) }, 2026],
    ["or of buds", { budCuts: budCuts(JANUARY_2026) }, 2026],
    ["ends in the year after a count in December", { cordons: cordons(JANUARY_2026 - 30) }, 2026],
    [
      "is that of the latest count, before any harvest",
      {
        vines: vines(JANUARY_2026),
        budCuts: budCuts(JANUARY_2026 - 10),
        harvest: harvest(["A", 2030, 9]),
      },
      2026,
    ],
    ["follows the last crop picked", { harvest: harvest(["A", 2024, 9], ["A", 2023, 9]) }, 2025],
    ["follows a crop that was lost", { harvest: harvest(["A", 2024, 0]) }, 2025],
    [
      "is the year begun, where nothing is picked of it",
      { harvest: harvest(["A", 2024, 9], ["A", 2026, null]) },
      2026,
    ],
    [
      "is the year begun, where nothing was picked at all",
      { harvest: harvest(["A", 2026, null], ["A", 2025, null]) },
      2026,
    ],
    [
      "follows the last crop though an earlier year stands open",
      { harvest: harvest(["A", 2022, null], ["A", 2025, 9]) },
      2026,
    ],
    ["is not known from rows without a year", { harvest: harvest(["A", null, 9]) }, 0],
    ["is not known from nothing", {}, 0],
  ])("%s", (_, sheets, winter) => expect(winterOfSeason(seasonOfSheets(sheets))).toBe(winter));
});

describe("the year of growth of a vine", () => {
  const seasonOf = (
    vine: readonly [status: string, planted: CellValue],
    block: CellValue = null,
    day: CellValue = JANUARY_2026,
    settings: Rows = [],
  ) =>
    seasonOfSheets({
      blocks: [
        ["Block", "Year planted", "Vines"],
        ["A", block, 9],
      ],
      vines: [
        ["Block", "Row", "Vine", "Status", "Year planted", "Date"],
        ["A", 1, 1, ...vine, day],
      ],
      settings: [["Setting", "Value"], ...settings],
    });
  const keyOf = (season: ReturnType<typeof seasonOf>, vine = 1) =>
    placeKey(season.words.codeOf("A"), 1, vine);

  test.each<[string, readonly [string, CellValue], CellValue, number | undefined]>([
    ["by its own year planted", ["bearing", 2025], 2011, 2],
    ["an old vine in a young block", ["bearing", 2011], 2025, undefined],
    ["by its block's where none is written", ["bearing", null], 2024, 3],
    ["a vine planted later than its block has no year of it", ["young", null], 2024, undefined],
    ["nor has a replanted one", ["replanted", null], 2024, undefined],
    ["unless its own is written down", ["replanted", 2026], 2011, 1],
    ["a missing vine has none", ["missing", 2025], 2024, undefined],
    ["none of a block of which nobody knows", ["bearing", null], null, undefined],
  ])("%s", (_, vine, block, year) => {
    const season = seasonOf(vine, block);
    expect(youngVines(season)(keyOf(season))).toBe(year);
  });

  test("a vine that no register lists has its block's", () => {
    const season = seasonOf(["bearing", 2011], 2025);
    expect(youngVines(season)(keyOf(season, 2))).toBe(2);
  });

  test("none while no date tells which winter it is", () => {
    const season = seasonOf(["bearing", 2025], 2025, null);
    expect(youngVines(season)(keyOf(season))).toBeUndefined();
  });

  // No clusters in the second year by Settings; a farm that leaves some has the vine bear.
  test.each([
    [2026, 0, true],
    [2025, 0, true],
    [2024, 0, false],
    [2011, 0, false],
    [2026, 4, true],
    [2025, 4, false],
  ])(
    "planted in %d with %d clusters left in year 2 it bears nothing yet: %j",
    (planted, clusters, nothing) => {
      const season = seasonOf(["bearing", planted], null, JANUARY_2026, [
        ["Clusters a vine in year 2", clusters],
      ]);
      expect(bearsNothingYet(season)(keyOf(season))).toBe(nothing);
    },
  );
});

test.each([
  ["Weighed", ["Block", "Row", "Vine", "Clusters"], true],
  ["Weighed", ["Block", "Row", "Vine", "Status", "Clusters"], false],
  ["Vines", ["Block", "Row", "Vine", "Clusters"], false],
])("a sheet %s of %j is a list of what was measured beside the register: %j", (name, heads, isList) => {
  const row = heads.map((head) => ({ Block: "A", Status: "bearing" })[head] ?? 1);
  const [table] = readSeason([areaOf(name, [heads, row])]).tables("vines");
  expect(isYieldList(table)).toBe(isList);
});
