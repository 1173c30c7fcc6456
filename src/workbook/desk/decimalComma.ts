import { CellValueType, type ICellData, type Injector, type Nullable } from "@univerjs/core";
import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/preset-sheets-core";

/**
 * What is typed into a cell as "3,5" becomes the number 3.5 where decimals are written with a comma; the engine by itself
 * reads only decimal points and would keep a text, or take "1,250" for 1250. It stands before the engine's own reading.
 */
export function readDecimalCommas(injector: Injector, decimalSign: () => string): void {
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: 1000,
    handler: (cell, _, next) => next(decimalSign() === "," ? withDecimalComma(cell) : cell),
  });
}

/**
 * A typed cell with its decimal comma read; any other cell as it is.
 *
 * @example
 * withDecimalComma({ v: "-3,5" }) // { v: -3.5, t: 2 }
 * @example
 * withDecimalComma({ v: "3, 5" }) // { v: "3, 5" }
 */
export function withDecimalComma<Cell extends Nullable<ICellData>>(cell: Cell): Cell {
  const typed = cell?.v;
  if (typeof typed !== "string" || !/^[+-]?\d*,\d+$/.test(typed)) return cell;
  return { ...cell, v: Number(typed.replace(",", ".")), t: CellValueType.NUMBER };
}
