import type { CellValue } from "../../sheets/cell";
import type { Column } from "../../sheets/column";
import type { Unit } from "../../sheets/unit";

/** A column of ours that no column of the sheet is as it stands: told by a caption or a name, derived, or in two parts. */
export interface AddedColumn {
  readonly column: Column;
  readonly header: string;
  readonly sheetColumn: number;
  /** Sheet column of the second part, where it is written in two. */
  readonly second?: number;
  /** Its value in a line of the area. */
  readonly valueOf: (index: number) => CellValue;
  readonly unit?: Unit;
}

/** A column that says the same in every row. */
export function everyRow(column: Column, value: CellValue, header = ""): AddedColumn {
  return { column, header, sheetColumn: 0, valueOf: () => value };
}
