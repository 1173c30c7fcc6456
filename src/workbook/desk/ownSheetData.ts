import type { ICellData, IObjectMatrixPrimitiveType, IStyleData } from "@univerjs/core";
import type { OwnSheetLayout } from "../ownSheet";
import type { OwnSheet } from "../surveyWorkbook";
import { cellDataOf } from "./cellData";

/** Cells by row and column from 0, as the engine takes them. */
export type Matrix = IObjectMatrixPrimitiveType<ICellData>;

/** Pixels of one character of a column's width. */
export const PIXELS_A_CHARACTER = 7.5;

const TITLE_STYLE = { bl: 1, fs: 12 } satisfies IStyleData;
const HEADER_STYLE = {
  bl: 1,
  bg: { rgb: "#eef1ec" },
  bd: { b: { s: 1, cl: { rgb: "#5d6b5a" } } },
  tb: 3,
  vt: 2,
} satisfies IStyleData;

/** The cells of a sheet of ours: title lines, headers and rows with their formats. */
export function ownSheetCells(layout: OwnSheetLayout, content: OwnSheet): Matrix {
  const matrix: Matrix = {};
  layout.values.forEach((row, r) => {
    const cells: Record<number, ICellData> = {};
    row.forEach((value, c) => {
      const style = styleOf(r + 1, c, layout, content);
      if (value !== null || style) cells[c] = { ...cellDataOf(value), ...(style ? { s: style } : {}) };
    });
    matrix[r] = cells;
  });
  return matrix;
}

function styleOf(row: number, column: number, { headerRow }: OwnSheetLayout, content: OwnSheet) {
  if (row === headerRow) return HEADER_STYLE;
  if (row < headerRow) return row === 1 && column === 0 ? TITLE_STYLE : undefined;
  const { format, wrap } = content.columns?.[column] ?? {};
  if (!format && !wrap) return undefined;
  return {
    ...(format ? { n: { pattern: format } } : {}),
    ...(wrap ? { tb: 3 as const, vt: 1 as const } : {}),
  };
}

/** Column widths in pixels, by column from 0. */
export function columnWidths(content: OwnSheet): Record<number, { w: number }> {
  const widths: Record<number, { w: number }> = {};
  content.columns?.forEach(({ width }, column) => {
    if (width) widths[column] = { w: Math.round(width * PIXELS_A_CHARACTER) + 8 };
  });
  return widths;
}

/** Keeps title and headers in sight. */
export function frozenHeader({ headerRow }: OwnSheetLayout) {
  return { xSplit: 0, ySplit: headerRow, startRow: headerRow, startColumn: -1 };
}
