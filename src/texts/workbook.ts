import { EXCEL_PROBLEMS } from "./excelProblems";
import { FILE_PROBLEMS } from "./fileProblems";
import type { Text } from "./language";
import { TEXTS } from "./texts";

/** One sentence per code of WorkbookProblem: what could not be done, where, and what to do about it. */
export const WORKBOOK_PROBLEMS: Readonly<Record<string, Text>> = {
  ...TEXTS.workbook,
  ...FILE_PROBLEMS,
  ...EXCEL_PROBLEMS,
};
