import { isBlank, isCellError, type CellValue } from "../survey/sheets/cell";
import type { SheetArea } from "../survey/reading/sheetArea";

const WITH_FORMULAS = new WeakMap<SheetArea, boolean>();

/**
 * An area with some of its rows as they are now; undefined where they no longer fit into it, so that the sheet must be
 * read whole.
 *
 * @param now what is filled of these rows
 * @param rows first sheet row and how many
 */
export function patchArea(
  area: SheetArea,
  now: SheetArea,
  rows: { readonly first: number; readonly count: number },
): SheetArea | undefined {
  const width = area.values[0]?.length ?? 0;
  const from = rows.first - area.firstRow;
  const left = now.firstColumn - area.firstColumn;
  const filled = now.values.length > 0;
  if (width === 0 || from <= 0 || from > area.values.length) return undefined;
  if (filled && (left < 0 || left + now.values[0].length > width)) return undefined;
  const values = [...area.values];
  for (let row = 0; row < rows.count; row += 1) {
    const cells = now.values[rows.first + row - now.firstRow];
    if (cells === undefined && from + row >= values.length) break;
    values[from + row] = Array.from({ length: width }, (_, column) => cells?.[column - left] ?? null);
  }
  while (values.length > 1 && values[values.length - 1].every(isBlank)) values.pop();
  const patched: SheetArea = {
    ...area,
    values,
    formulaAt: (r, c) =>
      r < from || r >= from + rows.count
        ? area.formulaAt(r, c)
        : filled
          ? now.formulaAt(r + area.firstRow - now.firstRow, c - left)
          : null,
  };
  WITH_FORMULAS.set(patched, areaHasFormulas(area) || areaHasFormulas(now));
  return patched;
}

/** True where a cell of the area holds a formula: any edit of the workbook may change its value. */
export function areaHasFormulas(area: SheetArea): boolean {
  let known = WITH_FORMULAS.get(area);
  if (known === undefined) {
    known = area.values.some((row, r) => row.some((_, c) => area.formulaAt(r, c) !== null));
    WITH_FORMULAS.set(area, known);
  }
  return known;
}

/** True when two areas stand in the same place and hold the same values and formulas. */
export function sameArea(one: SheetArea, other: SheetArea): boolean {
  if (one === other) return true;
  const same =
    one.sheet === other.sheet &&
    one.isHidden === other.isHidden &&
    one.firstRow === other.firstRow &&
    one.firstColumn === other.firstColumn &&
    one.values.length === other.values.length;
  if (!same) return false;
  const formulas = areaHasFormulas(one) || areaHasFormulas(other);
  return one.values.every((row, r) => {
    const others = other.values[r];
    return (
      row === others ||
      (row.length === others.length &&
        row.every(
          (cell, c) =>
            sameCell(cell, others[c]) && (!formulas || one.formulaAt(r, c) === other.formulaAt(r, c)),
        ))
    );
  });
}

function sameCell(one: CellValue, other: CellValue): boolean {
  return isCellError(one) && isCellError(other) ? one.error === other.error : one === other;
}
