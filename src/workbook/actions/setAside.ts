import type { Finding } from "../../survey/checks/finding";
import {
  findingIdentity,
  putAside,
  readSetAside,
  takeBack,
  writeSetAside,
  type SetAside,
} from "../../survey/checks/setAside";
import type { SurveyWorkbook } from "../surveyWorkbook";
import { shortHash } from "./shortHash";

/** Each entry has a fact of its own in the workbook, so that two people who set findings aside at once lose nothing. */
const PREFIX = "setAside.";

/** The findings that somebody let stand, as the workbook keeps them. */
export async function readAside(workbook: SurveyWorkbook): Promise<readonly SetAside[]> {
  return asideOfFlags(await workbook.readFlags(PREFIX));
}

/** The same from all the small facts of a workbook, by key. */
export function asideOfFlags(flags: ReadonlyMap<string, string>): readonly SetAside[] {
  return [...flags]
    .flatMap(([key, text]) => (key.startsWith(PREFIX) ? readSetAside(text) : []))
    .sort((a, b) => a.on.localeCompare(b.on));
}

/**
 * Keeps in the workbook that a finding may stand, beside what colleagues keep.
 *
 * @returns all entries, or undefined when reason or name is missing; nothing is written then
 */
export async function keepAside(
  workbook: SurveyWorkbook,
  finding: Finding,
  entry: Omit<SetAside, "identity">,
): Promise<readonly SetAside[] | undefined> {
  const kept = putAside([], finding, entry);
  if (kept === undefined) return undefined;
  await workbook.writeFlag(keyOf(finding), writeSetAside(kept));
  return readAside(workbook);
}

/** Takes a finding back into the list. */
export async function dropAside(workbook: SurveyWorkbook, finding: Finding): Promise<readonly SetAside[]> {
  await workbook.writeFlag(keyOf(finding), undefined);
  return takeBack(await readAside(workbook), finding);
}

function keyOf(finding: Finding): string {
  return PREFIX + shortHash(findingIdentity(finding));
}
