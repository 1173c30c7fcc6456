import { InterceptorEffectEnum, type ICellDataForSheetInterceptor, type Injector } from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/preset-sheets-core";
import type { CellMark } from "../surveyWorkbook";

/** Each severity has a corner of its own besides its colour. */
const SIGNS = {
  wrong: { markers: { tl: { size: 9, color: "#a4262c" } }, interceptorStyle: { bg: { rgb: "#fbe3e4" } } },
  ask: { markers: { bl: { size: 9, color: "#8a5a00" } }, interceptorStyle: { bg: { rgb: "#fdf0d5" } } },
  note: { markers: { br: { size: 7, color: "#2b5797" } }, interceptorStyle: { bg: { rgb: "#e8f0fa" } } },
} as const satisfies Record<CellMark["severity"], Partial<ICellDataForSheetInterceptor>>;

const STRENGTH: Readonly<Record<CellMark["severity"], number>> = { note: 1, ask: 2, wrong: 3 };

/**
 * The marks of the add-in: drawn over the grid, never stored in a cell, so that a person's own fill and notes stay as
 * they are. Where a cell has several, the strongest shows.
 */
export class CellMarks {
  private bySheet = new Map<string, Map<string, CellMark["severity"]>>();

  constructor(
    injector: Injector,
    private readonly unit: string,
  ) {
    injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
      priority: 100,
      effect: InterceptorEffectEnum.Style,
      handler: (cell, { unitId, subUnitId, row, col }, next) => {
        const severity = unitId === this.unit ? this.bySheet.get(subUnitId)?.get(`${row} ${col}`) : undefined;
        if (!severity) return next(cell);
        const { markers, interceptorStyle } = SIGNS[severity];
        const own = cell ?? {};
        return next({
          ...own,
          markers: { ...own.markers, ...markers },
          interceptorStyle: { ...own.interceptorStyle, ...interceptorStyle },
        });
      },
    });
  }

  /** Replaces all marks; rows and columns count from 1. */
  replace(marks: readonly { sheetId: string; mark: CellMark }[]): void {
    this.bySheet = new Map();
    for (const { sheetId, mark } of marks) {
      const cells = this.bySheet.get(sheetId) ?? new Map<string, CellMark["severity"]>();
      const place = `${mark.row - 1} ${mark.column - 1}`;
      const there = cells.get(place);
      if (!there || STRENGTH[mark.severity] > STRENGTH[there]) cells.set(place, mark.severity);
      this.bySheet.set(sheetId, cells);
    }
  }
}
