import { say, type Language } from "../../texts/language";
import { TEXTS } from "../../texts/texts";
import { leftOutSentence, noteSentence, questionSentence } from "../reading/readingSentence";
import type { Season } from "./season";
import { COLUMN_REASONS, type NotRead, type SeasonAccount } from "./seasonAccount";
import { usedSentence } from "./usedSentence";

/** Names that the short sentence shows of a kind, columns all; of more their number. */
const NAMED = 3;

/**
 * What was read, what was not and why, and which rows are used: the block that every page, sheet and command shows, a
 * line a sentence.
 */
export function accountLines(account: SeasonAccount, language: Language): string[] {
  return [readSentence(account, language), usedSentence(account.used, language)];
}

/**
 * What was read and what was not, in short.
 *
 * @example
 * readSentence({ read: { files: 1, sheets: 2, tables: 2, columns: 21, rows: 46 }, notRead: [{ reason: "hidden", names: ["Spare"], rows: 0 }, { reason: "totalLines", names: ["Cordons"], rows: 1 }], open: 1, used: { rows: 6, used: 6, leftOut: [] } }, "en") // "Read: 1 file, 2 sheets, 2 tables, 21 columns, 46 rows. Not read: Spare (hidden); 1 line of totals. 1 question is open."
 */
export function readSentence({ read, notRead, open }: SeasonAccount, language: Language): string {
  const { account } = TEXTS.reading;
  const { winters = [] } = read;
  const parts = notRead.map((part) => partWords(part, language)).join("; ");
  return [
    say(account.read, language, { ...read, winters: [] }),
    ...(winters.length === 0
      ? []
      : [say(account.winters, language, { winters: winters.map(String), count: winters.length })]),
    ...(parts === "" ? [] : [say(account.notRead, language, { parts })]),
    ...(open === 0 ? [] : [say(account.open, language, { questions: open })]),
  ].join(" ");
}

function partWords({ reason, names, rows }: NotRead, language: Language): string {
  const { account } = TEXTS.reading;
  const most = COLUMN_REASONS.has(reason) ? names.length : NAMED;
  const shown = names.slice(0, most).join(", ");
  const more = names.length - most;
  return say(account.parts[reason], language, {
    names: more > 0 ? say(account.more, language, { names: shown, more }) : shown,
    count: names.length,
    lines: rows,
  });
}

/** Every sentence of the account in full: what was left out, what was done on the way, what is open. */
export function accountDetails({ account }: Season, language: Language): string[] {
  const sentences = [
    ...account.leftOut.map((part) => leftOutSentence(part, language)),
    ...account.notes.map((note) => noteSentence(note, language)),
    ...account.questions.map((question) => questionSentence(question, language)),
  ];
  return [...new Set(sentences)];
}
