import type { Farm } from "../../sample-workbooks/make/farm";
import { inventedFarm } from "../../sample-workbooks/make/inventedFarm";
import { OWN_COUNTS, plantMistakes } from "../../sample-workbooks/make/plantedMistakes";
import { randomSource } from "../../sample-workbooks/make/randomSource";
import { allFindings } from "../../src/survey/checks/checkSeason";
import type { SheetId } from "../../src/survey/sheets/column";
import { readSeason } from "../../src/survey/reading/readSeason";
import { SHEETS } from "../../src/survey/sheets/sheets";
import { areaOf } from "./area";

const US_UNITS: Partial<Record<string, string>> = { length: " (ft)", shortLength: " (in)", mass: " (lb)" };

/** The farm's sheets as areas, with units in the headers. */
function areasOf(farm: Farm) {
  return (Object.keys(farm) as SheetId[]).map((id: SheetId) => {
    const { columns, name } = SHEETS[id];
    const headers = columns.map((column) => column.header.en + (US_UNITS[column.kind] ?? ""));
    const own = OWN_COUNTS.filter((header) => farm[id].some((row) => header in row));
    const keys = [...columns.map((column) => column.id), ...own];
    return areaOf(name.en, [
      [...headers, ...own],
      ...farm[id].map((row) => keys.map((key) => row[key] ?? null)),
    ]);
  });
}

const TODAY = 46190;

describe("the invented farm", () => {
  test("a clean season has no wrong cell", () => {
    const season = readSeason(areasOf(inventedFarm(randomSource(20260112))));
    expect(season.allTables.map((table) => table.shape.id).sort()).toEqual([
      "blocks",
      "budCuts",
      "cordons",
      "harvest",
      "settings",
      "vines",
    ]);
    expect(allFindings(season, { today: TODAY })).toEqual([]);
  });

  const farm = inventedFarm(randomSource(20260112));
  const planted = plantMistakes(farm);
  const found = allFindings(readSeason(areasOf(farm)), { today: TODAY });

  test.each(planted)("$code in $sheet, row $sheetRow: $what", ({ code, sheet, sheetRow, column }) => {
    const header = SHEETS[sheet].columns.find((own) => own.id === column)?.header.en ?? column;
    expect(found).toContainEqual(
      expect.objectContaining({
        code,
        sheet: SHEETS[sheet].name.en,
        row: sheetRow,
        column: header === "" ? "" : expect.stringContaining(header),
      }),
    );
  });
});
