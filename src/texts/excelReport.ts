import { TEXTS } from "./texts";

/** The report about the Excel that the add-in runs in: the page, the sheet and a line for each thing that is tried. */
export const EXCEL_REPORT_TEXTS = TEXTS.excelReport;
