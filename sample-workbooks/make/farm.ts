import type { CellValue } from "../../src/survey/sheets/cell";
import type { SheetId } from "../../src/survey/sheets/column";

/** One row of a sheet: a cell value per column id of src/survey/sheets/sheets.ts. */
export type FarmRow = Record<string, CellValue>;

/** The rows of every sheet. */
export type Farm = Record<SheetId, FarmRow[]>;
