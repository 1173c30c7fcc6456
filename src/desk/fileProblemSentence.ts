import { FILE_PROBLEMS } from "../texts/fileProblems";
import { say, type Language } from "../texts/language";
import { WORKBOOK_PROBLEMS } from "../texts/workbook";
import { WorkbookProblem } from "../workbook/surveyWorkbook";

/** One sentence for a file that was refused; undefined for a failure that nobody foresaw. */
export function fileProblemSentence(problem: unknown, language: Language): string | undefined {
  if (!(problem instanceof WorkbookProblem)) return undefined;
  const text = FILE_PROBLEMS[problem.code] ?? WORKBOOK_PROBLEMS[problem.code];
  return text && say(text, language, problem.facts);
}
