import type { Finding } from "../../survey/finding";
import { putAside, readSetAside, takeBack, writeSetAside, type SetAside } from "../../survey/setAside";
import type { SurveyWorkbook } from "../../workbook/surveyWorkbook";

/** Where the workbook keeps the findings that somebody let stand. */
const FLAG = "setAside";

/** The findings that somebody let stand, as the workbook keeps them. */
export async function readAside(workbook: SurveyWorkbook): Promise<readonly SetAside[]> {
  return readSetAside(await workbook.readFlag(FLAG));
}

/**
 * Keeps in the workbook that a finding may stand, beside what a colleague may have kept meanwhile.
 *
 * @returns all entries, or undefined when reason or name is missing; nothing is written then
 */
export async function keepAside(
  workbook: SurveyWorkbook,
  finding: Finding,
  entry: Omit<SetAside, "identity">,
): Promise<readonly SetAside[] | undefined> {
  const entries = putAside(await readAside(workbook), finding, entry);
  if (entries !== undefined) await workbook.writeFlag(FLAG, writeSetAside(entries));
  return entries;
}

/** Takes a finding back into the list. */
export async function dropAside(workbook: SurveyWorkbook, finding: Finding): Promise<readonly SetAside[]> {
  const entries = takeBack(await readAside(workbook), finding);
  await workbook.writeFlag(FLAG, entries.length === 0 ? undefined : writeSetAside(entries));
  return entries;
}
