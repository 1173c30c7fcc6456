import { basename } from "node:path";
import { leftOutSentence, noteSentence, questionSentence } from "../survey/reading/readingSentence";
import { accountLines, readSentence } from "../survey/season/accountSentences";
import type { Season } from "../survey/season/season";
import { leavesOpen, countTables, seasonAccount, type SeasonAccount } from "../survey/season/seasonAccount";
import type { Inputs } from "./readInputs";
import { printable, type ExitCode, type Terminal } from "./terminal";

/** Files that hold sheets in a format that is not read. */
const OTHER_SHEETS = /\.(xls|xlsb|xltx|ods|fods|numbers|gsheet|txt)$/i;

/** What was read and what was not, of files and of what stands in them. */
export function accountOf(seasons: Season | readonly Season[], inputs: Inputs): SeasonAccount {
  const passedOver = inputs.passedOver.map(({ file, reason }) => ({ file: basename(file), reason }));
  return seasonAccount(seasons, { read: inputs.files.length, passedOver });
}

/** The account as the last lines of a result; behind a csv, which holds nothing else, it is told beside it. */
export function tellAccount(
  seasons: Season | readonly Season[],
  inputs: Inputs,
  { language, print, tell }: Terminal,
  as: "printed" | "told" = "printed",
): void {
  for (const line of accountLines(accountOf(seasons, inputs), language))
    (as === "printed" ? print : tell)(printable(line));
}

/** The account as data, with the sentences of everything that was done, asked and left out. */
export function readingData(season: Season, inputs: Inputs, { language }: Terminal) {
  const account = accountOf(season, inputs);
  const tables = new Set(countTables(season));
  return {
    files: inputs.files,
    passedOver: inputs.passedOver,
    tables: season.allTables.map((table) => ({
      ...(inputs.origin.get(table.sheet) ?? { file: "", sheet: table.sheet }),
      kind: table.shape.id,
      headerRow: table.headerRow,
      columns: table.columns.map(({ header }) => header),
      rows: table.rowCount,
      isCounted: tables.has(table),
    })),
    read: account.read,
    notRead: account.notRead,
    open: account.open,
    rowsUsed: account.used,
    sentence: readSentence(account, language),
    notes: season.account.notes.map((note) => ({ ...note, sentence: noteSentence(note, language) })),
    questions: season.account.questions.map((question) => ({
      ...question,
      sentence: questionSentence(question, language),
    })),
    leftOut: season.account.leftOut.map((part) => ({ ...part, sentence: leftOutSentence(part, language) })),
  };
}

/** True where something that looks like counts was not read. */
export function readingLeavesOpen(seasons: Season | readonly Season[], { passedOver }: Inputs): boolean {
  return (
    [seasons].flat().some(leavesOpen) ||
    passedOver.some(({ file, reason }) => reason === "otherFormat" && OTHER_SHEETS.test(file))
  );
}

/** 1 where somebody has to look at something, in a result or in what was not read; else 0. */
export function exitOf(hasToLook: boolean, seasons: Season | readonly Season[], inputs: Inputs): ExitCode {
  return hasToLook || readingLeavesOpen(seasons, inputs) ? 1 : 0;
}
