import { HEADS } from "./heads";
import { TEXTS } from "./texts";

/** The sheet of gaps by cordon, and the PivotTable over it. Names of values differ from those of columns, as Excel asks. */
export const GAP_PIVOT = { ...HEADS, ...TEXTS.gapPivot };
