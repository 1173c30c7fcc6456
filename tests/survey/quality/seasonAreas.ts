import { headerWithUnit } from "../../../sample-workbooks/make/surveySheet";
import type { CellValue } from "../../../src/survey/sheets/cell";
import type { SheetArea } from "../../../src/survey/reading/sheetArea";
import type { SheetId } from "../../../src/survey/sheets/column";
import { SHEETS } from "../../../src/survey/sheets/sheets";
import { areaOf } from "../area";
import type { Season, SeasonSheet } from "../../../sample-workbooks/make/season";

const ORDER = Object.keys(SHEETS) as SheetId[];

/** All sheets of a season, last winter's at the end. */
function sheetsOf({ past, ...sheets }: Season): SeasonSheet[] {
  return [...ORDER.map((id) => sheets[id]), ...(past ? [past.cordons, past.vines] : [])];
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
