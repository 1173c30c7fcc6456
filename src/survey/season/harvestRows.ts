import { NO_WORD } from "../sheets/words";
import type { Season } from "./season";

/** A row of the Harvest sheet. */
export interface HarvestRow {
  /** Number of the block's name. */
  readonly block: number;
  readonly year: number;
  /** Usable number in a column; NaN where none stands. */
  readonly at: (column: string) => number;
}

/** The rows of the Harvest sheets that tell a block and a year, in their order. */
export function harvestRows(season: Season): readonly HarvestRow[] {
  return season.tables("harvest").flatMap((table) => {
    const blocks = table.column("block")?.codes;
    const years = table.column("year")?.usable;
    return Array.from({ length: table.rowCount }, (_, index) => ({
      block: blocks?.[index] ?? NO_WORD,
      year: years?.[index] ?? NaN,
      at: (column: string) => table.column(column)?.usable[index] ?? NaN,
    })).filter(({ block, year }) => block >= 0 && year > 0);
  });
}
