import { excelProblem } from "./excelProblem";

/** Excel.run, or a stand-in that hands a request context to a batch in the same way. */
export type ExcelRun = <T>(batch: (context: Excel.RequestContext) => Promise<T>) => Promise<T>;

/** Runs a batch; an error of Excel's comes out as a WorkbookProblem about `sheet`. */
export async function inExcel<T>(
  run: ExcelRun,
  sheet: string,
  batch: (context: Excel.RequestContext) => Promise<T>,
): Promise<T> {
  try {
    return await run(batch);
  } catch (error) {
    throw excelProblem(error, sheet);
  }
}
