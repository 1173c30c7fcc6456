import { TEXTS } from "./texts";

/** What the add-in's page says when it cannot start in Excel. */
export const EXCEL_PAGE = TEXTS.excelPage;
