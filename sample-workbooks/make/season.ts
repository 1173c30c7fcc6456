import { SHEETS } from "../../src/survey/sheets/sheets";
import type { SheetId } from "../../src/survey/sheets/column";
import type { Farm, FarmRow } from "./farm";

/** One sheet of a season. */
export interface SeasonSheet {
  readonly name: string;
  readonly shape: SheetId;
  /** Column ids, and heads of the farm's own, in the order of the sheet; one may stand twice where somebody made that mistake. */
  columns: string[];
  rows: FarmRow[];
  /** Rows below the table, such as a typed total. */
  below: FarmRow[];
}

/** The sheets of one winter as they stand in a workbook. */
export interface Season extends Readonly<Record<SheetId, SeasonSheet>> {
  /** Last winter's cordons and vines; some farms have kept them. */
  readonly past?: { readonly cordons: SeasonSheet; readonly vines: SeasonSheet };
  /** Serial of the day on which the sheets are checked. */
  readonly today: number;
}

/** A sheet of that shape with all its columns. */
export function sheetOf(shape: SheetId, rows: FarmRow[], name: string = SHEETS[shape].name.en): SeasonSheet {
  return { name, shape, columns: SHEETS[shape].columns.map(({ id }) => id), rows, below: [] };
}

/** The farm's rows as the sheets of a workbook that is checked on that day. */
export function seasonOf(farm: Farm, today: number): Season {
  const sheets = Object.entries(farm).map(([id, rows]) => [id, sheetOf(id as SheetId, rows)]);
  return { ...(Object.fromEntries(sheets) as Record<SheetId, SeasonSheet>), today };
}
