import { TEXTS } from "./texts";

/** What a shared workbook has in Excel, the PivotTable of gaps, and a colleague met on the way. */
export const UPKEEP_TEXTS = TEXTS.upkeep;
