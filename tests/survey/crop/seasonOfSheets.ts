import { readSeason } from "../../../src/survey/reading/readSeason";
import type { Season } from "../../../src/survey/season/season";
import type { CellValue } from "../../../src/survey/sheets/cell";
import type { SheetId } from "../../../src/survey/sheets/column";
import { SHEETS } from "../../../src/survey/sheets/sheets";
import { areaOf } from "../area";

/** Heads and rows of a sheet, as a test writes them. */
export type Rows = readonly (readonly CellValue[])[];

/** Sheets by their ids, in the order in which the workbook has them. */
export type Sheets = Partial<Record<SheetId, Rows>>;

/** The Season of sheets that bear their English names. */
export function seasonOfSheets(sheets: Sheets): Season {
  return readSeason((Object.keys(sheets) as SheetId[]).map((id) => areaOf(SHEETS[id].name.en, sheets[id]!)));
}
