import { readLargeSeason } from "../survey/reading/readLargeSeason";
import type { Season } from "../survey/season/season";
import { CommandProblem, type OptionValues } from "./command";
import { openInputs, type Inputs } from "./readInputs";
import { limitsOf, unitsOf } from "./sharedOptions";
import type { Terminal } from "./terminal";

/** How fast the progress of reading nears its half, since nobody knows how many rows will come. */
const ROWS_OF_A_SMALL_FARM = 20_000;

/**
 * Reads a farm's files and the survey in them, each sheet by the own column heads that its workbook keeps. Refuses files
 * in which no sheet was recognised, because an empty result would be a lie.
 */
export async function readSeasonInputs(
  paths: readonly string[],
  options: OptionValues,
  terminal: Terminal,
): Promise<{ inputs: Inputs; season: Season }> {
  const inputs = await openInputs(paths, terminal, limitsOf(options));
  const reading = { unitSystem: unitsOf(options), mapping: inputs.mapping };
  const season = await readLargeSeason(inputs.sheets, reading, (rows) =>
    terminal.progress(0.5 * (rows / (rows + ROWS_OF_A_SMALL_FARM))),
  ).finally(() => inputs.close());
  if (season.allTables.length === 0)
    throw new CommandProblem("noTables", { files: inputs.files, sheets: season.otherSheets });
  return { inputs, season };
}

/**
 * Reads each file as a farm of its own, so that blocks of the same name in two files stay apart.
 *
 * @returns the Season of each file in which a sheet was recognised
 */
export async function readFarms(
  paths: readonly string[],
  options: OptionValues,
  terminal: Terminal,
): Promise<{ inputs: Inputs; farms: readonly Season[] }> {
  const inputs = await openInputs(paths, terminal, limitsOf(options));
  const files = new Map<string, Inputs["sheets"][number][]>();
  for (const sheet of inputs.sheets) {
    const { file } = inputs.origin.get(sheet.sheet)!;
    files.set(file, [...(files.get(file) ?? []), sheet]);
  }
  const reading = { unitSystem: unitsOf(options), mapping: inputs.mapping };
  const farms: Season[] = [];
  try {
    for (const sheets of files.values()) {
      const season = await readLargeSeason(sheets, reading);
      if (season.allTables.length > 0) farms.push(season);
      terminal.progress((0.5 * farms.length) / files.size);
    }
  } finally {
    await inputs.close();
  }
  return { inputs, farms };
}

/** Refuses files without a Cordons sheet where there is nothing else to work on. */
export function mustHaveCordons(season: Season | readonly Season[], inputs: Inputs): void {
  const tables = [season].flat().flatMap((farm) => farm.tables("cordons"));
  if (tables.every(({ rowCount }) => rowCount === 0))
    throw new CommandProblem("noCordons", { files: inputs.files });
}
