import { plainHeader } from "../../survey/sheets/column";
import type { SurveyColumn } from "../../survey/season/season";
import { LANGUAGES, type Language } from "../../texts/language";

/** The word for a choice in the language of the column's header. */
export function choiceWord({ column, header }: SurveyColumn, id: string): string {
  const language: Language =
    LANGUAGES.find((one) => plainHeader(column.header[one]) === plainHeader(header)) ?? "en";
  return column.choices!.find((choice) => choice.id === id)!.word[language];
}
