import type { ICellData, IObjectMatrixPrimitiveType, IStyleData } from "@univerjs/core";
import type { OwnSheetLayout, OwnValue } from "../ownSheet";
import { shadeBandOf } from "../shadeBands";
import type { OwnSheet } from "../surveyWorkbook";
import { cellDataOf } from "./cellData";
import { wrappedHeight } from "./wrappedHeight";

/** Cells by row and column from 0, as the engine takes them. */
export type Matrix = IObjectMatrixPrimitiveType<ICellData>;

/** Key under which a sheet of ours and the flags are kept in the engine's own free fields. */
export const OWN = "cordonbook";

/** Under what a cell keeps the note or comment on it, which goes along with the cell. */
export const SAID = "said";

/** Pixels of one character of a column's width. */
export const PIXELS_A_CHARACTER = 7.5;

const TITLE_STYLE = { bl: 1, fs: 12 } satisfies IStyleData;
const HEADER_STYLE = {
  bl: 1,
  bg: { rgb: "#eceef0" },
  bd: { b: { s: 1, cl: { rgb: "#8b929a" } } },
  tb: 3,
  vt: 2,
} satisfies IStyleData;

/** The cells of a sheet of ours: title lines, headers and rows with their formats. */
export function ownSheetCells(layout: OwnSheetLayout, content: OwnSheet): Matrix {
  const matrix: Matrix = {};
  layout.values.forEach((row, r) => {
    const cells: Record<number, ICellData> = {};
    row.forEach((value, c) => {
      const style = styleOf(r + 1, c, layout, content, value);
      if (value !== null || style) cells[c] = { ...cellDataOf(value), ...(style ? { s: style } : {}) };
    });
    matrix[r] = cells;
  });
  return matrix;
}

function styleOf(
  row: number,
  column: number,
  { headerRow }: OwnSheetLayout,
  content: OwnSheet,
  value: OwnValue,
): IStyleData | undefined {
  if (row === headerRow) return HEADER_STYLE;
  if (row < headerRow) return row === 1 && column === 0 ? TITLE_STYLE : undefined;
  const { format, wrap, shade } = content.columns?.[column] ?? {};
  const band = shade ? shadeBandOf(value) : undefined;
  const anyWraps = content.columns?.some((each) => each.wrap) ?? false;
  if (!format && !anyWraps && !band) return undefined;
  return {
    ...(format ? { n: { pattern: format } } : {}),
    ...(anyWraps ? { vt: 1 } : {}),
    ...(wrap ? { tb: 3 } : {}),
    ...(band ? { bg: { rgb: `#${band.fill}` }, cl: { rgb: `#${band.font}` }, bl: band.worst ? 1 : 0 } : {}),
  };
}

/** How a cell looks, number format and wrapping apart, in one spelling. */
export function dressOf({ n: _format, vt: _vertical, tb: _wrap, ...style }: IStyleData): string {
  const set = Object.entries(style).filter(([, value]) => value !== null && value !== undefined);
  return set.length === 0 ? "" : JSON.stringify(set.sort(([one], [other]) => one.localeCompare(other)));
}

/** Column widths in pixels, by column from 0. */
export function columnWidths(content: OwnSheet): Record<number, { w: number }> {
  const widths: Record<number, { w: number }> = {};
  content.columns?.forEach(({ width }, column) => {
    if (width) widths[column] = { w: Math.round(width * PIXELS_A_CHARACTER) + 8 };
  });
  return widths;
}

/** Heights in pixels of rows whose texts wrap, by row from 0. */
export function rowHeights(layout: OwnSheetLayout, content: OwnSheet): Record<number, { h: number }> {
  const heights: Record<number, { h: number }> = {};
  layout.values.forEach((row, r) => {
    if (r + 1 < layout.headerRow) return;
    const wraps = (column: number) => r + 1 === layout.headerRow || content.columns?.[column]?.wrap === true;
    const height = wrappedHeight(
      row.flatMap((value, c) =>
        wraps(c)
          ? [{ text: value, width: content.columns?.[c]?.width, bold: r + 1 === layout.headerRow }]
          : [],
      ),
    );
    if (height !== undefined) heights[r] = { h: height };
  });
  return heights;
}

/** Keeps title and headers in sight. */
export function frozenHeader({ headerRow }: OwnSheetLayout) {
  return { xSplit: 0, ySplit: headerRow, startRow: headerRow, startColumn: -1 };
}
