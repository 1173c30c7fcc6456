import { readSeason } from "../../../src/survey/reading/readSeason";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";

type Rows = readonly (readonly CellValue[])[];

const cordons = (spurs: number): Rows =>
  [1, 2, 3].map((vine) => ["North Bench", 1, vine, "left", "A", 1, 3, 8, spurs]);
const seasonOf = (sheets: Readonly<Record<string, Rows>>) =>
  readSeason(Object.entries(sheets).map(([sheet, rows]) => areaOf(sheet, rows)));

describe("the tables of a season", () => {
  const season = seasonOf({
    "Cordons 2024": [CORDON_HEADS, ...cordons(8)],
    "Cordons 2026": [CORDON_HEADS, ...cordons(9)],
    "Cordons 2025": [CORDON_HEADS, ...cordons(7)],
    Vines: [
      ["Block", "Row", "Vine", "Status"],
      ["North Bench", 1, 1, "bearing"],
    ],
  });
  const names = (tables: readonly { readonly sheet: string }[]) => tables.map(({ sheet }) => sheet);

  test("stand by their sheet in this winter or in one before, the latest first", () => {
    expect(names(season.tables("cordons"))).toEqual(["Cordons 2026"]);
    expect(names(season.pastTables("cordons"))).toEqual(["Cordons 2025", "Cordons 2024"]);
    expect(names(season.tables("vines"))).toEqual(["Vines"]);
    expect([season.pastTables("vines"), season.tables("harvest")]).toEqual([[], []]);
    expect(names(season.allTables).sort()).toEqual(["Cordons 2024", "Cordons 2025", "Cordons 2026", "Vines"]);
  });

  test("are judged once: 9 live spurs on 8 positions cannot be used wherever the table is met", () => {
    const [table] = season.tables("cordons");
    expect([...table.column("liveSpurs")!.usable]).toEqual([NaN, NaN, NaN]);
    expect(season.allTables).toContain(table);
    const [past] = season.pastTables("cordons");
    expect([...past.column("liveSpurs")!.usable]).toEqual([7, 7, 7]);
    expect(season.allTables).toContain(past);
  });

  test("of one sheet's kind are kept in the order of the workbook", () => {
    const south = cordons(6).map(([, ...rest]) => ["South", ...rest]);
    const two = seasonOf({ South: [CORDON_HEADS, ...south], North: [CORDON_HEADS, ...cordons(7)] });
    expect(names(two.tables("cordons"))).toEqual(["South", "North"]);
    expect(two.used.account()).toMatchObject({ rows: 6, used: 6 });
  });
});

// Without a column of sides nobody knows which of a vine's two cordons share one, unless the farm trains one to a vine.
test.each([
  [1, 3],
  [1.4, 3],
  [1.5, 1],
  [2, 1],
])("of a sheet without sides, with %p cordons on a vine, %p of 3 rows are used", (cordonsOnAVine, used) => {
  const season = seasonOf({
    Cordons: [
      ["Block", "Row", "Vine", "Cordon", "Positions", "Live spurs"],
      ["North Bench", 1, 1, "A", 8, 7],
      ["North Bench", 1, 1, "B", 8, 6],
      ["North Bench", 1, 2, "A", 9, 7],
    ],
    Settings: [
      ["Setting", "Value"],
      ["Cordons on a vine", cordonsOnAVine],
    ],
  });
  expect(season.used.account()).toEqual({
    rows: 3,
    used,
    leftOut:
      used === 3
        ? []
        : [{ column: "side", reason: "noColumn", rows: 2, first: { sheet: "Cordons", sheetRow: 2 } }],
  });
  const key = season.places.keysOf(season.tables("cordons")[0])[0];
  // The vine's column, the third, stands for the one that is not there.
  expect(season.used.faultsOf(key)).toEqual(
    [2, 3].slice(used === 3 ? 2 : 0).map((sheetRow) => ({
      sheet: "Cordons",
      sheetRow,
      column: "side",
      sheetColumn: 3,
      reason: "noColumn",
    })),
  );
});
