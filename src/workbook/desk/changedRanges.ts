import type { ICommandInfo, ICellData, IRange } from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/preset-sheets-core";
import type { Matrix } from "./ownSheetData";

/** Cells whose contents a command changed; rows and columns count from 0, ends are included. */
export interface ChangedRange {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly range: Pick<IRange, "startRow" | "startColumn" | "endRow" | "endColumn">;
  /** Cells beside the range moved too. */
  readonly shifts?: true;
}

interface Params {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly range: IRange;
  readonly cellValue?: Matrix;
  readonly from: { readonly subUnitId: string; readonly value: Matrix };
  readonly to: { readonly subUnitId: string; readonly value: Matrix };
}

/** What a command of the engine changed in cells; nothing for one that only changed how they look. */
export function changedRanges(command: Readonly<ICommandInfo>): ChangedRange[] {
  const params = command.params as Params;
  switch (command.id) {
    case SetRangeValuesMutation.id:
      return filled(params.unitId, params.subUnitId, params.cellValue ?? {}, changesContent);
    case "sheet.mutation.move-range":
      return [params.from, params.to].flatMap(({ subUnitId, value }) =>
        filled(params.unitId, subUnitId, value, () => true),
      );
    case "sheet.mutation.insert-row":
    case "sheet.mutation.remove-rows":
    case "sheet.mutation.insert-col":
    case "sheet.mutation.remove-col":
    case "sheet.mutation.reorder-range":
      return [{ unitId: params.unitId, subUnitId: params.subUnitId, range: params.range, shifts: true }];
    default:
      return [];
  }
}

function changesContent(cell: ICellData | null | undefined): boolean {
  return !cell || "v" in cell || "f" in cell || "si" in cell || "p" in cell;
}

function filled(
  unitId: string,
  subUnitId: string,
  cells: Matrix,
  counts: (cell: ICellData | null | undefined) => boolean,
): ChangedRange[] {
  const range = { startRow: Infinity, startColumn: Infinity, endRow: -1, endColumn: -1 };
  for (const [rowKey, row] of Object.entries(cells))
    for (const [columnKey, cell] of Object.entries((row ?? {}) as Record<string, ICellData | null>)) {
      if (!counts(cell)) continue;
      const [r, c] = [Number(rowKey), Number(columnKey)];
      range.startRow = Math.min(range.startRow, r);
      range.endRow = Math.max(range.endRow, r);
      range.startColumn = Math.min(range.startColumn, c);
      range.endColumn = Math.max(range.endColumn, c);
    }
  return range.endRow < 0 ? [] : [{ unitId, subUnitId, range }];
}
