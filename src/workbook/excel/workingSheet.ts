import { mayAddSheets } from "./mayAddSheets";

/** Sheet-scoped name of a working sheet; its value is the time at which the run began. */
export const WORKING_SHEET_NAME = "_Cordonbook_working";
/** A working sheet this old belongs to a run that never ended. */
const STALE_AFTER_MS = 30 * 60_000;

/** A hidden sheet for what is not finished yet; such sheets of runs that never ended are taken away. */
export async function addWorkingSheet(context: Excel.RequestContext): Promise<Excel.Worksheet> {
  const { worksheets } = context.workbook;
  worksheets.load("items/id,items/name");
  await mayAddSheets(context);
  const marks = worksheets.items.map((worksheet) => {
    const mark = worksheet.names.getItemOrNullObject(WORKING_SHEET_NAME);
    mark.load("formula");
    return { worksheet, mark };
  });
  await context.sync();
  const now = Date.now();
  for (const { worksheet, mark } of marks)
    if (!mark.isNullObject && now - Number(String(mark.formula).slice(1)) > STALE_AFTER_MS)
      worksheet.delete();

  const name = `Cordonbook ${crypto.randomUUID().slice(0, 8)}`;
  try {
    const working = worksheets.add(name);
    working.visibility = "Hidden";
    const mark = working.names.add(WORKING_SHEET_NAME, `=${now}`);
    mark.visible = false;
    working.load("id,name");
    await context.sync();
    return working;
  } catch (error) {
    const halfMade = worksheets.getItemOrNullObject(name);
    halfMade.load("name");
    await context.sync();
    if (!halfMade.isNullObject) await removeWorkingSheet(context, halfMade);
    throw error;
  }
}

/** Takes a working sheet away, at the second try if need be; when Excel refuses again, the next run does it. */
export async function removeWorkingSheet(
  context: Excel.RequestContext,
  working: Excel.Worksheet,
): Promise<void> {
  const remove = () => {
    working.delete();
    return context.sync();
  };
  const leaveToNext = () => {
    working.names.getItem(WORKING_SHEET_NAME).formula = "=0";
    return context.sync();
  };
  await remove()
    .catch(remove)
    .catch(leaveToNext)
    .catch(() => undefined);
}
