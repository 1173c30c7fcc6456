import { TEXTS } from "./texts";

/** How many rows of the Cordons sheets a result is worked out from, and why not the others. */
export const USED_ROWS = TEXTS.usedRows.usedRows;

/** Why a cell keeps its row from being used; follows the name of the column. */
export const FAULT_WORDS = TEXTS.usedRows.faultWords;
