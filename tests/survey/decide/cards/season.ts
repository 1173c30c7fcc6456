import type { Farm } from "../../../../sample-workbooks/make/farm";
import { inventedFarm } from "../../../../sample-workbooks/make/inventedFarm";
import { randomSource } from "../../../../sample-workbooks/make/randomSource";
import { headerWithUnit } from "../../../../sample-workbooks/make/surveySheet";
import type { SheetArea } from "../../../../src/survey/reading/sheetArea";
import type { CellValue } from "../../../../src/survey/sheets/cell";
import { readSeason } from "../../../../src/survey/reading/readSeason";
import { SHEETS } from "../../../../src/survey/sheets/sheets";
import type { Season } from "../../../../src/survey/season/season";
import { areaOf } from "../../area";

/** The invented farm's clean season, the same every time. */
export function inventedSeason(): Farm {
  return inventedFarm(randomSource(20260112));
}

/** The farm's sheets as areas, with units in the headers and with own columns to the right of each sheet's. */
export function areasOfFarm(farm: Farm, ownColumns: readonly string[] = []): SheetArea[] {
  return (Object.keys(farm) as (keyof Farm)[]).map((id) => {
    const { columns, name } = SHEETS[id];
    const own = ownColumns.filter((header) => farm[id].some((row) => header in row));
    const keys = [...columns.map((column) => column.id), ...own];
    return areaOf(name.en, [
      [...columns.map((column) => headerWithUnit(column)), ...own],
      ...farm[id].map((row) => keys.map((key) => row[key] ?? null)),
    ]);
  });
}

/** A farm's rows as a workbook's survey, with settings where some are changed. */
export function seasonOfFarm(farm: Farm, settings: readonly (readonly CellValue[])[] = []): Season {
  return readSeason([...areasOfFarm(farm), areaOf("Settings", [["Setting", "Value"], ...settings])]);
}
