import { functionLookup } from "@univerjs/preset-sheets-core";

interface Cells {
  getArrayValue(): unknown[];
}

interface SortState {
  _getResult(cells: Cells, ...rest: unknown[]): unknown;
  isCured?: true;
}

/**
 * Cures a fault of the engine's SORT (0.25.1): it sorts the cells of its range where they are held for every formula, so
 * that whatever else reads the range finds its rows in another order than they stand in. It gets its own list of rows.
 */
export function cureSort(): void {
  const listed = functionLookup as readonly (readonly unknown[])[];
  const [Sort] = listed.find(([, name]) => name === "SORT")!;
  const sort = (Sort as { readonly prototype: SortState }).prototype;
  if (sort.isCured) return;
  const { _getResult } = sort;
  sort._getResult = function (this: SortState, cells, ...rest) {
    const rows = cells.getArrayValue().slice();
    const own = Object.create(cells, { getArrayValue: { value: () => rows } }) as Cells;
    return _getResult.call(this, own, ...rest);
  };
  sort.isCured = true;
}
