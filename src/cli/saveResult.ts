import { basename, extname } from "node:path";
import { COMMAND_LINE, OPTION_TEXTS } from "../texts/commandLine";
import { say } from "../texts/language";
import { RESULT_SHEET_TEXTS } from "../texts/resultSheets";
import { emptyWorkbook } from "../workbook/file/emptyWorkbook";
import { FileWorkbook } from "../workbook/file/fileWorkbook";
import { isCsvName } from "../workbook/file/openWorkbook";
import { keepFormer, keepOrigin } from "../workbook/file/provenance";
import type { ReadLimits } from "../workbook/file/readLimits";
import { besideSource, readForChange, saveInPlace, saveNew, type FileState } from "../workbook/file/saveFile";
import { WorkbookProblem, type CellMark, type OwnSheet } from "../workbook/surveyWorkbook";
import { CommandProblem, type CommandOption, type OptionValues } from "./command";
import type { Inputs } from "./readInputs";
import { limitsOf } from "./sharedOptions";
import { accountLines } from "../survey/season/accountSentences";
import type { Season } from "../survey/season/season";
import { withAccount } from "../workbook/results/withAccount";
import { accountOf } from "./tellAccount";
import { saysSomething } from "../survey/reading/readingAccount";
import { writeAgain } from "../workbook/actions/writeAgain";
import { keepAnswers } from "../workbook/actions/keepAnswers";
import { answersOfOptions } from "./answersOfOptions";
import { notePrinted, type ChangedCards } from "../workbook/actions/printedCards";
import { mendCells } from "../workbook/actions/mendCells";
import type { CellMend } from "../survey/checks/mendOf";
import type { Terminal } from "./terminal";

/** Where a result is kept beside what is printed. */
export const SAVE_OPTIONS: Readonly<Record<string, CommandOption>> = {
  save: { type: "boolean", meaning: OPTION_TEXTS.save, not: ["out", "in-place"] },
  out: { type: "string", value: "FILE.xlsx", meaning: OPTION_TEXTS.out, not: ["in-place"] },
  "in-place": { type: "boolean", meaning: OPTION_TEXTS.inPlace },
};

/** What a command adds to a workbook. */
export interface Result {
  readonly sheets: readonly OwnSheet[];
  /** Undefined where the command marks nothing, so that marks already there stay. */
  readonly marks?: readonly CellMark[];
  /** Cells that are mended in a copy. */
  readonly mends?: readonly CellMend[];
  /** Cards that were printed, to be kept in the workbook. */
  readonly printed?: ChangedCards;
}

/** True where a result is to be kept. */
export function isSaved(options: OptionValues): boolean {
  return Boolean(options.save || options.out !== undefined || options["in-place"]);
}

/**
 * Keeps a result: in a copy of the workbook beside it, in the file named, or in the workbook itself after a backup. A
 * csv file, several files, and a workbook whose layout is not understood get a workbook with the results alone. A
 * workbook that was saved since it was read is left alone.
 */
export async function saveResult(
  inputs: Inputs,
  season: Season,
  made: Result,
  word: string,
  options: OptionValues,
  terminal: Terminal,
): Promise<void> {
  const account = accountLines(accountOf(season, inputs), terminal.language);
  const result = { ...made, sheets: made.sheets.map((sheet) => withAccount(sheet, account)) };
  const limits = limitsOf(options);
  const [source] = inputs.words;
  const asRead = inputs.stamps.get(source);
  if (options["in-place"]) mustBeOneWorkbook(inputs);
  if (asRead === undefined || !isOneWorkbook(inputs)) {
    if (result.mends) throw new CommandProblem("repairOne");
    return saveAlone(inputs.words, result, word, options, terminal, limits);
  }
  if (options.out !== undefined) mustEnd(String(options.out), extname(source).toLowerCase());
  const state = await readForChange(source, asRead);
  const now = new Date();
  try {
    const { workbook, lost } = await withResult(basename(source), state.bytes, result, limits, terminal);
    const answers = await answersOfOptions(options, inputs);
    if (saysSomething(answers)) lost.push(...(await keepAnswers(workbook, answers, terminal.language)).lost);
    const tellLost = () => lost.forEach((sentence) => terminal.tell(sentence));
    if (options["in-place"]) {
      await keepFormer(workbook, state.bytes, now);
      tellInPlace(source, state, await saveInPlace(state, workbook.bytes(), now), terminal);
      return tellLost();
    }
    await keepOrigin(workbook, source, state.bytes);
    const target = String(options.out ?? besideSource(source, word));
    await saveNew(target, workbook.bytes());
    terminal.tell(say(COMMAND_LINE.saved, terminal.language, { file: target }));
    return tellLost();
  } catch (problem) {
    if (!isLayoutProblem(problem) || result.mends || result.printed) throw problem;
    terminal.tell(say(COMMAND_LINE.savedAlone, terminal.language, { file: basename(source) }));
    return saveAlone(inputs.words, result, word, options, terminal, limits);
  }
}

/** Refuses to change files in place that are not one workbook. */
export function mustBeOneWorkbook(inputs: Inputs): void {
  if (!isOneWorkbook(inputs)) throw new CommandProblem("inPlaceOne");
}

function isOneWorkbook({ words, stamps }: Inputs): boolean {
  return words.length === 1 && stamps.has(words[0]) && !isCsvName(words[0]);
}

/** Says what was saved, and what of a link's other ends a person must know. */
function tellInPlace(
  source: string,
  { path, isLink, names }: FileState,
  backup: string,
  { tell, language }: Terminal,
): void {
  tell(say(COMMAND_LINE.savedInPlace, language, { file: source, backup: basename(backup) }));
  if (isLink) tell(say(COMMAND_LINE.savedThroughLink, language, { file: source, target: path }));
  if (names > 1) tell(say(COMMAND_LINE.savedOneName, language, { file: basename(path), others: names - 1 }));
}

/** Refuses a name for new content that does not end as what is written. */
export function mustEnd(file: string, ending: string): void {
  if (!file.toLowerCase().endsWith(ending)) throw new CommandProblem("outEnding", { file, ending });
}

async function withResult(
  file: string,
  bytes: Uint8Array,
  { sheets, marks, mends = [], printed }: Result,
  limits: ReadLimits,
  { language }: Terminal,
): Promise<{ workbook: FileWorkbook; lost: string[] }> {
  const workbook = await FileWorkbook.open(file, bytes, limits);
  await mendCells(workbook, mends);
  const lost: string[] = [];
  for (const content of sheets) lost.push(...(await writeAgain(workbook, content, language)).lost);
  if (marks) await workbook.markCells(marks);
  if (printed) await notePrinted(workbook, printed.cards, printed.voided);
  return { workbook, lost };
}

/** Writes a workbook that holds nothing but the results. */
async function saveAlone(
  paths: readonly string[],
  { sheets }: Result,
  word: string,
  options: OptionValues,
  terminal: Terminal,
  limits: ReadLimits,
): Promise<void> {
  const { language } = terminal;
  const source = paths[0] === "-" ? "counts.csv" : paths[0];
  const target = String(options.out ?? besideSource(source, word, ".xlsx"));
  mustEnd(target, ".xlsx");
  const about = RESULT_SHEET_TEXTS.about[language];
  const workbook = await FileWorkbook.open(basename(target), emptyWorkbook(about), limits);
  const lines = [
    RESULT_SHEET_TEXTS.aboutTitle[language],
    say(RESULT_SHEET_TEXTS.aboutSource, language, { files: paths.map((path) => basename(path)) }),
  ];
  await workbook.writeCells(
    about,
    lines.map((value, index) => ({ row: index + 1, column: 1, value })),
  );
  for (const sheet of sheets) await workbook.writeOwnSheet(sheet);
  await saveNew(target, workbook.bytes());
  terminal.tell(say(COMMAND_LINE.saved, language, { file: target }));
}

/** Problems of the workbook's own making, for which a new file is the way out. */
function isLayoutProblem(problem: unknown): boolean {
  return (
    problem instanceof WorkbookProblem &&
    [
      "layoutUnknown",
      "signedFile",
      "protectedWorkbook",
      "protectedSheet",
      "notOurs",
      "tooLargeToHold",
    ].includes(problem.code)
  );
}
