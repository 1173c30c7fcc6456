import {
  CellValueType,
  InterceptorEffectEnum,
  type ICellData,
  type Injector,
  type Nullable,
} from "@univerjs/core";
import {
  AFTER_CELL_EDIT,
  BEFORE_CELL_EDIT,
  INTERCEPTOR_POINT,
  ISheetClipboardService,
  SheetInterceptorService,
} from "@univerjs/preset-sheets-core";
import { formulaWithPoints } from "./formulaWithPoints";
import { withComma, withPoint } from "./withPoint";

/**
 * Numbers and formulas are typed and pasted with decimal commas where `hasCommas`; the engine by itself reads only
 * points, and would keep "3,5" as a text or take "1,250" for 1250. It stands before the engine's own reading.
 */
export function readDecimalCommas(injector: Injector, hasCommas: () => boolean): void {
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: 1000,
    handler: (cell, _, next) => next(cell && hasCommas() ? typed(cell) : cell),
  });
  const clipboard = injector.get(ISheetClipboardService) as unknown as Clipboard;
  const { _pasteHTML, _pastePlainText } = clipboard;
  clipboard._pasteHTML = (html, how) =>
    _pasteHTML.call(clipboard, hasCommas() ? html.replace(NUMBER_OF_HTML, ">$1.$2<") : html, how);
  clipboard._pastePlainText = (text, how) =>
    _pastePlainText.call(clipboard, (hasCommas() && withPoint(text)) || text, how);
}

/** Where everything that is pasted from elsewhere passes; a selection with tabs or lines comes as HTML. */
interface Clipboard {
  _pasteHTML(html: string, how: string): Promise<boolean>;
  _pastePlainText(text: string, how: string): Promise<boolean>;
}

const NUMBER_OF_HTML = />(\s*[+-]?\d*),(\d+\s?%?\s*)</g;

function typed(cell: ICellData): ICellData {
  if (typeof cell.f === "string") return { ...cell, f: formulaWithPoints(cell.f) };
  const isText = cell.t === CellValueType.STRING || cell.t === CellValueType.FORCE_STRING;
  return isText || typeof cell.v !== "string" ? cell : { ...cell, v: withPoint(cell.v) ?? cell.v };
}

/**
 * Numbers without a format of their own are shown, and opened for editing, with a decimal comma where `hasCommas`; it
 * stands after the engine's formats, which know the language.
 */
export function showDecimalCommas(injector: Injector, hasCommas: () => boolean): void {
  const interceptors = injector.get(SheetInterceptorService);
  const shown = (cell: Nullable<ICellData>) =>
    hasCommas() && cell?.t === CellValueType.NUMBER && typeof cell.v === "number"
      ? { ...cell, v: withComma(cell.v) }
      : cell;
  interceptors.intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority: 1,
    effect: InterceptorEffectEnum.Value,
    handler: (cell, _, next) => next(shown(cell)),
  });
  interceptors.writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
    priority: 0,
    handler: (cell, _, next) => next(percentShown(shown(cell))),
  });

  function percentShown(cell: Nullable<ICellData>): Nullable<ICellData> {
    const isPercent = hasCommas() && typeof cell?.v === "string" && /^-?\d+\.\d+%$/.test(cell.v);
    return isPercent ? { ...cell, v: String(cell.v).replace(".", ",") } : cell;
  }
}
