import { columnNumber } from "../survey/sheets/cellName";

export { cellName, columnLetters } from "../survey/sheets/cellName";

/** A rectangle of cells, rows and columns counted from 1, both ends included. */
export interface CellArea {
  readonly firstRow: number;
  readonly firstColumn: number;
  readonly lastRow: number;
  readonly lastColumn: number;
}

/** True for a cell within the rectangle, its edges included. */
export function holdsCell(
  { firstRow, lastRow, firstColumn, lastColumn }: CellArea,
  row: number,
  column: number,
): boolean {
  return row >= firstRow && row <= lastRow && column >= firstColumn && column <= lastColumn;
}

/** True for two rectangles of the same cells. */
export function isSameArea(one: CellArea, other: CellArea): boolean {
  const edges = ["firstRow", "firstColumn", "lastRow", "lastColumn"] as const;
  return edges.every((edge) => one[edge] === other[edge]);
}

export const LAST_ROW = 1_048_576;
export const LAST_COLUMN = 16_384;

/**
 * The rectangles of an address as Excel writes it: "Sheet!A1:B2", "A1,C3", whole rows "3:5", whole columns "B:B".
 * Parts that are no address are left out.
 *
 * @example
 * areasOfAddress("Vines!$B$2:C4") // [{ "firstRow": 2, "firstColumn": 2, "lastRow": 4, "lastColumn": 3 }]
 */
export function areasOfAddress(address: string): CellArea[] {
  return address.split(",").flatMap((part) => {
    const plain = part
      .slice(part.lastIndexOf("!") + 1)
      .replace(/\$/g, "")
      .trim();
    const match = /^([A-Za-z]*)(\d*)(?::([A-Za-z]*)(\d*))?$/.exec(plain);
    if (!match || plain === "") return [];
    const [, left, top, right = left, bottom = top] = match;
    return [
      {
        firstRow: top ? Number(top) : 1,
        firstColumn: left ? columnNumber(left) : 1,
        lastRow: bottom ? Number(bottom) : LAST_ROW,
        lastColumn: right ? columnNumber(right) : LAST_COLUMN,
      },
    ];
  });
}
