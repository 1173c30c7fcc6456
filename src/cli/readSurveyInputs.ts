import { readSurvey } from "../survey/readSurvey";
import type { Survey } from "../survey/survey";
import { CommandProblem, type OptionValues } from "./command";
import { readInputs, type Inputs } from "./readInputs";
import { limitsOf, unitsOf } from "./sharedOptions";
import type { Terminal } from "./terminal";

/**
 * Reads a farm's files and the survey in them. Refuses files in which no sheet was recognised, because an empty result
 * would be a lie.
 */
export async function readSurveyInputs(
  paths: readonly string[],
  options: OptionValues,
  terminal: Terminal,
): Promise<{ inputs: Inputs; survey: Survey }> {
  const inputs = await readInputs(paths, terminal, limitsOf(options));
  const survey = readSurvey(inputs.areas, { unitSystem: unitsOf(options) });
  if (survey.allTables.length === 0)
    throw new CommandProblem("noTables", { files: inputs.files, sheets: survey.otherSheets });
  return { inputs, survey };
}

/** Refuses files without a Cordons sheet where there is nothing else to work on. */
export function mustHaveCordons(survey: Survey, inputs: Inputs): void {
  if (survey.tables("cordons").every(({ rowCount }) => rowCount === 0))
    throw new CommandProblem("noCordons", { files: inputs.files });
}
