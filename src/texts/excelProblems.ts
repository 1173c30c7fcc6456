import type { Text } from "./language";
import { TEXTS } from "./texts";

/** Sentences for what only a workbook that is open in Excel can run into; part of WORKBOOK_PROBLEMS. */
export const EXCEL_PROBLEMS: Readonly<Record<string, Text>> = TEXTS.excelProblems;
