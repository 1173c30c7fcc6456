import { basename } from "node:path";
import { COMMAND_LINE, OPTION_TEXTS } from "../texts/commandLine";
import { say } from "../texts/language";
import { RESULT_SHEET_TEXTS } from "../texts/resultSheets";
import { emptyWorkbook } from "../workbook/file/emptyWorkbook";
import { FileWorkbook } from "../workbook/file/fileWorkbook";
import { isCsvName } from "../workbook/file/openWorkbook";
import type { ReadLimits } from "../workbook/file/readLimits";
import { besideSource, readForChange, saveInPlace, saveNew } from "../workbook/file/saveFile";
import { WorkbookProblem, type CellMark, type OwnSheet } from "../workbook/surveyWorkbook";
import { CommandProblem, type CommandOption, type OptionValues } from "./command";
import { limitsOf } from "./sharedOptions";
import type { Terminal } from "./terminal";

/** Where a result is kept beside what is printed. */
export const SAVE_OPTIONS: Readonly<Record<string, CommandOption>> = {
  save: { type: "boolean", meaning: OPTION_TEXTS.save },
  out: { type: "string", value: "FILE.xlsx", meaning: OPTION_TEXTS.out },
  "in-place": { type: "boolean", meaning: OPTION_TEXTS.inPlace },
};

/** What a command adds to a workbook. */
export interface Result {
  readonly sheets: readonly OwnSheet[];
  /** Undefined where the command marks nothing, so that marks already there stay. */
  readonly marks?: readonly CellMark[];
}

/** True where a result is to be kept. */
export function isSaved(options: OptionValues): boolean {
  return Boolean(options.save || options.out !== undefined || options["in-place"]);
}

/**
 * Keeps a result: in a copy of the workbook beside it, in the file named, or in the workbook itself after a backup. A
 * csv file, several files, and a workbook whose layout is not understood get a workbook with the results alone.
 */
export async function saveResult(
  paths: readonly string[],
  result: Result,
  word: string,
  options: OptionValues,
  terminal: Terminal,
): Promise<void> {
  const limits = limitsOf(options);
  const [source] = paths;
  const isWorkbook = paths.length === 1 && source !== "-" && !isCsvName(source);
  if (options["in-place"]) {
    if (!isWorkbook) throw new CommandProblem("inPlaceOne");
    const state = await readForChange(source);
    try {
      const bytes = await withResult(basename(source), state.bytes, result, limits);
      const backup = await saveInPlace(state, bytes, new Date());
      return terminal.tell(
        say(COMMAND_LINE.savedInPlace, terminal.language, { file: source, backup: basename(backup) }),
      );
    } catch (problem) {
      if (!isLayoutProblem(problem)) throw problem;
      terminal.tell(say(COMMAND_LINE.savedAlone, terminal.language, { file: basename(source) }));
      return saveAlone(paths, result, word, options, terminal, limits);
    }
  }
  if (!isWorkbook) return saveAlone(paths, result, word, options, terminal, limits);
  const { bytes } = await readForChange(source);
  const target = String(options.out ?? besideSource(source, word));
  const copy = await withResult(basename(source), bytes, result, limits).catch((problem: unknown) => {
    if (!isLayoutProblem(problem)) throw problem;
    terminal.tell(say(COMMAND_LINE.savedAlone, terminal.language, { file: basename(source) }));
    return undefined;
  });
  if (!copy) return saveAlone(paths, result, word, options, terminal, limits);
  await saveNew(target, copy);
  terminal.tell(say(COMMAND_LINE.saved, terminal.language, { file: target }));
}

async function withResult(
  file: string,
  bytes: Uint8Array,
  { sheets, marks }: Result,
  limits: ReadLimits,
): Promise<Uint8Array> {
  const workbook = await FileWorkbook.open(file, bytes, limits);
  for (const sheet of sheets) await workbook.writeOwnSheet(sheet);
  if (marks) await workbook.markCells(marks);
  return workbook.bytes();
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
