import type { ReadingOptions } from "../survey/reading/readSeason";
import { readLargeSeason } from "../survey/reading/readLargeSeason";
import { leftOutSentence, noteSentence, questionSentence } from "../survey/reading/readingSentence";
import type { Season, SurveyTable } from "../survey/season/season";
import type { SheetId } from "../survey/sheets/column";
import { isCellError, type CellValue } from "../survey/sheets/cell";
import { COMMAND_LINE } from "../texts/commandLine";
import { say } from "../texts/language";
import { answersOfOptions } from "./answersOfOptions";
import { CommandProblem, type OptionValues } from "./command";
import { openInputs, type Inputs } from "./readInputs";
import { limitsOf, unitsOf } from "./sharedOptions";
import { printable, type Terminal } from "./terminal";

/** How fast the progress of reading nears its half, since nobody knows how many rows will come. */
const ROWS_OF_A_SMALL_FARM = 20_000;

/**
 * Reads a farm's files and the survey in them. Refuses files in which no sheet was recognised, because an empty result
 * would be a lie.
 */
export async function readSeasonInputs(
  paths: readonly string[],
  options: OptionValues,
  terminal: Terminal,
): Promise<{ inputs: Inputs; season: Season }> {
  const inputs = await openInputs(paths, terminal, limitsOf(options));
  const season = await readWith(options, inputs, (reading) =>
    readLargeSeason(asked(inputs.sheets, options), reading, (rows) =>
      terminal.progress(0.5 * (rows / (rows + ROWS_OF_A_SMALL_FARM))),
    ),
  );
  tellReading(season, terminal);
  if (season.allTables.length === 0)
    throw new CommandProblem("noTables", {
      files: inputs.files,
      sheets: season.otherSheets,
      first: inputs.origin.get(season.otherSheets[0])?.sheet ?? "Sheet1",
    });
  if (!options["same-rows"]) mustNotHaveCopies(season, inputs);
  return { inputs, season };
}

/** Sheets that a person named are read, hidden or not. */
function asked(sheets: Inputs["sheets"], { sheet }: OptionValues): Inputs["sheets"] {
  return sheet === undefined ? sheets : sheets.map((one) => ({ ...one, isHidden: false }));
}

/** Reads with what the options tell about the sheets; the files are closed behind it. */
async function readWith<Read>(
  options: OptionValues,
  inputs: Inputs,
  read: (reading: ReadingOptions) => Promise<Read>,
): Promise<Read> {
  try {
    const answers = await answersOfOptions(options, inputs);
    return await read({ unitSystem: unitsOf(options), answers });
  } finally {
    await inputs.close();
  }
}

/** Says what was done on the way, what has to be answered, and which sheets or columns stand in no result. */
function tellReading({ account }: Season, { language, tell }: Terminal): void {
  for (const note of account.notes) tell(printable(noteSentence(note, language)));
  for (const part of account.leftOut)
    if (part.reason !== "otherColumn" && part.reason !== "otherHeads")
      tell(printable(leftOutSentence(part, language)));
  for (const question of account.questions) {
    tell(printable(questionSentence(question, language)));
    const [answers] = question.proposals;
    if (answers)
      tell(printable(`  ${say(COMMAND_LINE.tellHeads, language, { answers: JSON.stringify(answers) })}`));
    else if (question.facts.column === "block") tell(`  ${say(COMMAND_LINE.tellBlock, language)}`);
  }
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
  const farms: Season[] = [];
  await readWith(options, inputs, async (reading) => {
    for (const sheets of files.values()) {
      const season = await readLargeSeason(asked(sheets, options), reading);
      tellReading(season, terminal);
      if (season.allTables.length > 0) farms.push(season);
      terminal.progress((0.5 * farms.length) / files.size);
    }
  });
  return { inputs, farms };
}

/** Fewer rows than these are the same in two files by chance. */
const ROWS_OF_A_COPY = 3;

/** Asks about two files that hold the same rows of cordons, which would count a farm twice. */
function mustNotHaveCopies(season: Season, { origin }: Inputs): void {
  const tables = season.allTables.filter(
    ({ shape, rowCount }) => shape.id === "cordons" && rowCount >= ROWS_OF_A_COPY,
  );
  for (const [index, table] of tables.entries())
    for (const other of tables.slice(index + 1)) {
      const [one, two] = [origin.get(table.sheet)?.file, origin.get(other.sheet)?.file];
      if (one !== two && holdSameRows(table, other))
        throw new CommandProblem("sameRows", { file: one!, other: two!, rows: table.rowCount });
    }
}

function holdSameRows(one: SurveyTable, other: SurveyTable): boolean {
  if (one.rowCount !== other.rowCount || one.columns.length !== other.columns.length) return false;
  for (let row = 0; row < one.rowCount; row++)
    for (const { column, raw } of one.columns)
      if (!isSameCell(raw.at(row), other.column(column.id)?.raw.at(row))) return false;
  return true;
}

function isSameCell(one: CellValue | undefined, other: CellValue | undefined): boolean {
  return one === other || (isCellError(one ?? null) && isCellError(other ?? null));
}

/** Refuses files in which none of the sheets that there is something to work on holds a row. */
export function mustHaveRows(
  season: Season | readonly Season[],
  inputs: Inputs,
  sheets: readonly SheetId[] = ["cordons"],
): void {
  const tables = [season].flat().flatMap((farm) => sheets.flatMap((id) => farm.tables(id)));
  if (tables.every(({ rowCount }) => rowCount === 0))
    throw new CommandProblem("noCordons", { files: inputs.files });
}
