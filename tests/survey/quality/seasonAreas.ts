import { headerWithUnit } from "../../../sample-workbooks/make/surveySheet";
import type { CellValue } from "../../../src/survey/sheets/cell";
import type { SheetArea } from "../../../src/survey/reading/sheetArea";
import { SHEETS } from "../../../src/survey/sheets/sheets";
import { areaOf } from "../area";
import type { Season, SeasonSheet } from "./plausibleSeason";

/** All sheets of a season. */
function sheetsOf(season: Season): SeasonSheet[] {
  const { blocks, cordons, vines, budCuts, harvest, past } = season;
  return [blocks, cordons, vines, budCuts, harvest, ...(past ? [past.cordons, past.vines] : [])];
}

/** The season as the sheets of a workbook, headers in English with US units. */
export function seasonAreas(season: Season): SheetArea[] {
  return sheetsOf(season).map((sheet) => {
    const headers = sheet.columns.map((id) => {
      const column = SHEETS[sheet.shape].columns.find((own) => own.id === id);
      return column ? headerWithUnit(column) : id;
    });
    const cells = (row: Record<string, CellValue>) => sheet.columns.map((id) => row[id] ?? null);
    return areaOf(sheet.name, [headers, ...sheet.rows.map(cells), ...sheet.below.map(cells)]);
  });
}
