import type { Farm } from "../../../../sample-workbooks/make/farm";
import { inventedFarm } from "../../../../sample-workbooks/make/inventedFarm";
import { randomSource } from "../../../../sample-workbooks/make/randomSource";
import type { CellValue } from "../../../../src/survey/sheets/cell";
import { readSeason } from "../../../../src/survey/reading/readSeason";
import { SHEETS } from "../../../../src/survey/sheets/sheets";
import type { Season } from "../../../../src/survey/season/season";
import { areaOf } from "../../area";

const US_UNITS: Partial<Record<string, string>> = { length: " (ft)", shortLength: " (in)", mass: " (lb)" };

/** The invented farm's clean season, the same every time. */
export function inventedSeason(): Farm {
  return inventedFarm(randomSource(20260112));
}

/** A farm's rows as a workbook's survey, with settings where some are changed. */
export function seasonOfSheets(farm: Farm, settings: readonly (readonly CellValue[])[] = []): Season {
  const areas = (Object.keys(farm) as (keyof Farm)[]).map((id) => {
    const { columns, name } = SHEETS[id];
    return areaOf(name.en, [
      columns.map((column) => column.header.en + (US_UNITS[column.kind] ?? "")),
      ...farm[id].map((row) => columns.map((column) => row[column.id] ?? null)),
    ]);
  });
  return readSeason([...areas, areaOf("Settings", [["Setting", "Value"], ...settings])]);
}
