import { say, type Language } from "../../texts/language";
import { TEXTS } from "../../texts/texts";
import { SHEETS } from "../sheets/sheets";
import type { LeftOut, ReadingFacts, ReadingNote, ReadingQuestion } from "./readingAccount";

/** What was done on the way, as a sentence. */
export function noteSentence({ code, sheet, facts }: ReadingNote, language: Language): string {
  return say(TEXTS.reading.notes[code], language, { sheet, ...written(facts, language) });
}

/** What has to be answered, as a sentence. */
export function questionSentence({ code, sheet, facts }: ReadingQuestion, language: Language): string {
  return say(TEXTS.reading.questions[code], language, { sheet, ...written(facts, language) });
}

/** What was not read and why, as a sentence. */
export function leftOutSentence({ reason, sheet, facts }: LeftOut, language: Language): string {
  return say(TEXTS.reading.leftOut[reason], language, { sheet, ...written(facts, language) });
}

/** Facts with our columns and kinds in the words of the language. */
function written(facts: ReadingFacts, language: Language): ReadingFacts {
  const inWords: Record<string, ReadingFacts[string]> = { ...facts };
  if (typeof facts.column === "string") inWords.column = columnWord(facts.column, language);
  if (Array.isArray(facts.columns))
    inWords.columns = (facts.columns as readonly string[]).map((id) => columnWord(id, language));
  if (facts.order === "dayFirst" || facts.order === "monthFirst")
    inWords.order = TEXTS.reading.answers[facts.order][language];
  if (facts.by === "name" || facts.by === "sheets" || facts.by === "today")
    inWords.by = TEXTS.reading.evidence[facts.by][language];
  const kinds: Readonly<Record<string, (typeof TEXTS.reading.kinds)["sum"]>> = TEXTS.reading.kinds;
  if (typeof facts.kind === "string") inWords.kind = kinds[facts.kind][language];
  return inWords;
}

function columnWord(id: string, language: Language): string {
  for (const { columns } of Object.values(SHEETS))
    for (const column of columns) if (column.id === id) return column.header[language];
  return id;
}
