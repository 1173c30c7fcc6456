import { WorkbookProblem } from "../surveyWorkbook";

/** Refuses before anything is changed when the workbook's structure is protected. */
export async function mayAddSheets(context: Excel.RequestContext): Promise<void> {
  const { protection } = context.workbook;
  protection.load("protected");
  await context.sync();
  if (protection.protected) throw new WorkbookProblem("protectedWorkbook");
}
