import type { ReadingOptions } from "../survey/reading/readSeason";
import { readLargeSeason } from "../survey/reading/readLargeSeason";
import { leftOutSentence, noteSentence, questionSentence } from "../survey/reading/readingSentence";
import type { Season, SurveyTable } from "../survey/season/season";
import { NO_PLACE, type VinePlaces } from "../survey/season/vinePlaces";
import type { ReadingAnswers } from "../survey/reading/readingAccount";
import type { SheetId } from "../survey/sheets/column";
import { SHEETS } from "../survey/sheets/sheets";
import { isCellError, type CellValue } from "../survey/sheets/cell";
import { COMMAND_LINE } from "../texts/commandLine";
import { say } from "../texts/language";
import { answersOfOptions } from "./answersOfOptions";
import { CommandProblem, type OptionValues } from "./command";
import { openInputs, type Inputs } from "./readInputs";
import { limitsOf, todayOf, unitsOf } from "./sharedOptions";
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
  const season = await readWith(options, inputs, terminal, (reading) =>
    readLargeSeason(asked(inputs.sheets, options), reading, (rows) =>
      terminal.progress(0.5 * (rows / (rows + ROWS_OF_A_SMALL_FARM))),
    ),
  );
  tellReading(season, inputs, terminal);
  if (season.allTables.length === 0) throw unrecognised(season, inputs);
  if (!options["same-rows"]) mustNotHaveCopies(season, inputs);
  return { inputs, season };
}

/** Columns of the Cordons sheet in their order. */
const ORDER = SHEETS.cordons.columns.slice(0, 9).map(({ id }) => id);

/** Says that nothing was recognised, and how to tell it: in the words of the first sheet with a line of heads. */
function unrecognised({ account, otherSheets }: Season, { files, origin }: Inputs): CommandProblem {
  const of = [...account.questions, ...account.leftOut].find(({ facts }) => Array.isArray(facts.heads));
  const facts = { files, sheets: otherSheets };
  if (!of) return new CommandProblem("noHeadsAtAll", facts);
  const [proposed] = account.questions.flatMap(({ code, proposals }) => (code === "heads" ? proposals : []));
  const heads = (of.facts.heads as readonly string[]).slice(0, ORDER.length);
  const columns = Object.fromEntries(heads.map((head, at) => [head, ORDER[at]]));
  const answers = inOwnNames(proposed, origin) ?? {
    heads: [{ sheet: origin.get(of.sheet)?.sheet ?? of.sheet, shape: "cordons", columns }],
  };
  return new CommandProblem("noTables", { ...facts, answers: JSON.stringify(answers), columns: ORDER });
}

/** Answers with the names that sheets have in their own files, as options take them. */
function inOwnNames(
  answers: ReadingAnswers | undefined,
  origin: Inputs["origin"],
): ReadingAnswers | undefined {
  const named = <Answer extends { readonly sheet: string }>(list: readonly Answer[] | undefined) =>
    list?.map((answer) => ({ ...answer, sheet: origin.get(answer.sheet)?.sheet ?? answer.sheet }));
  return (
    answers && {
      ...answers,
      ...(answers.heads && { heads: named(answers.heads) }),
      ...(answers.constants && { constants: named(answers.constants) }),
      ...(answers.units && { units: named(answers.units) }),
      ...(answers.winters && { winters: named(answers.winters) }),
    }
  );
}

/** Sheets that a person named are read, hidden or not. */
function asked(sheets: Inputs["sheets"], { sheet }: OptionValues): Inputs["sheets"] {
  return sheet === undefined ? sheets : sheets.map((one) => ({ ...one, isHidden: false }));
}

/** Reads with what the options tell about the sheets; the files are closed behind it. */
async function readWith<Read>(
  options: OptionValues,
  inputs: Inputs,
  terminal: Terminal,
  read: (reading: ReadingOptions) => Promise<Read>,
): Promise<Read> {
  try {
    const answers = await answersOfOptions(options, inputs);
    return await read({ unitSystem: unitsOf(options), answers, today: todayOf(options, terminal.today) });
  } finally {
    await inputs.close();
  }
}

/** Reasons that a question or the account at the end tells. */
const TOLD_ELSEWHERE: ReadonlySet<string> = new Set(["otherColumn", "otherHeads", "asked"]);

/** Says what was done on the way, what has to be answered, and which sheets or columns stand in no result. */
function tellReading({ account }: Season, { origin }: Inputs, { language, tell }: Terminal): void {
  for (const note of account.notes) tell(printable(noteSentence(note, language)));
  for (const part of account.leftOut)
    if (!TOLD_ELSEWHERE.has(part.reason)) tell(printable(leftOutSentence(part, language)));
  for (const question of account.questions) {
    tell(printable(questionSentence(question, language)));
    const answers = inOwnNames(question.proposals[0], origin);
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
  await readWith(options, inputs, terminal, async (reading) => {
    for (const sheets of files.values()) {
      const season = await readLargeSeason(asked(sheets, options), reading);
      tellReading(season, inputs, terminal);
      if (season.allTables.length > 0) farms.push(season);
      terminal.progress((0.5 * farms.length) / files.size);
    }
  });
  return { inputs, farms };
}

/** Fewer rows than these are the same in two files by chance. */
const ROWS_OF_A_COPY = 3;
/** Share of the smaller table's rows that are alike in a copy in which somebody went on working. */
const SHARE_OF_A_COPY = 0.5;
/** Columns in which a row of such a copy is alike; what a person decides or notes on a copy differs. */
const COUNTED = ["side", "cordon", "trunk", "length", "positions", "liveSpurs"];

/** Asks about two files that hold the same rows of cordons, which would count a farm twice. */
function mustNotHaveCopies({ allTables, places }: Season, { origin }: Inputs): void {
  const tables = allTables.filter(
    ({ shape, rowCount }) => shape.id === "cordons" && rowCount >= ROWS_OF_A_COPY,
  );
  const fileOf = ({ sheet }: SurveyTable) => origin.get(sheet)!.file;
  const refuse = (one: SurveyTable, other: SurveyTable, rows: number) => {
    throw new CommandProblem("sameRows", { file: fileOf(one), other: fileOf(other), rows });
  };
  for (const [index, table] of tables.entries())
    for (const other of tables.slice(index + 1))
      if (fileOf(table) !== fileOf(other) && holdSameRows(table, other)) refuse(table, other, table.rowCount);
  for (const [one, others] of rowsAlike(tables, places, fileOf))
    for (const [other, rows] of others)
      if (rows >= Math.max(ROWS_OF_A_COPY, SHARE_OF_A_COPY * Math.min(one.rowCount, other.rowCount)))
        refuse(one, other, rows);
}

/** For every two tables of different files and one winter, how many rows of the same vines are counted alike. */
function rowsAlike(
  tables: readonly SurveyTable[],
  places: VinePlaces,
  fileOf: (table: SurveyTable) => string,
): Map<SurveyTable, Map<SurveyTable, number>> {
  const files = new Map<number, string>();
  const inSeveral = new Set<number>();
  for (const table of tables)
    for (const vine of places.keysOf(table)) {
      const file = fileOf(table);
      if (vine !== NO_PLACE && (files.get(vine) ?? file) !== file) inSeveral.add(vine);
      else files.set(vine, file);
    }
  const alike = new Map<SurveyTable, Map<SurveyTable, number>>();
  const holders = new Map<string, Set<SurveyTable>>();
  for (const table of inSeveral.size === 0 ? [] : tables) {
    const columns = COUNTED.map((id) => table.column(id)?.raw);
    places.keysOf(table).forEach((vine, row) => {
      if (!inSeveral.has(vine)) return;
      const counted = JSON.stringify([vine, table.winter, ...columns.map((raw) => raw?.at(row) ?? null)]);
      const known = holders.get(counted) ?? new Set();
      holders.set(counted, known);
      if (known.has(table)) return;
      for (const other of known) {
        if (fileOf(other) === fileOf(table)) continue;
        const counts = alike.get(other) ?? new Map<SurveyTable, number>();
        alike.set(other, counts.set(table, (counts.get(table) ?? 0) + 1));
      }
      known.add(table);
    });
  }
  return alike;
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
