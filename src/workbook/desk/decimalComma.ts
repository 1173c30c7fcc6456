import { CellValueType, type Injector } from "@univerjs/core";
import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/preset-sheets-core";
import { numberWithComma } from "./numberWithComma";

/**
 * What is typed into a cell as "3,5" becomes the number 3.5 where decimals are written with a comma; the engine by itself
 * reads only decimal points and would keep a text, or take "1,250" for 1250. It stands before the engine's own reading.
 */
export function readDecimalCommas(injector: Injector, decimalSign: () => string): void {
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: 1000,
    handler: (cell, _, next) => {
      const number =
        typeof cell?.v === "string" && decimalSign() === "," ? numberWithComma(cell.v) : undefined;
      return next(number === undefined ? cell : { ...cell, v: number, t: CellValueType.NUMBER });
    },
  });
}
