import { cutSentence, sideSentence, vineNoteSentence } from "../../survey/choice/vineSentences";
import type { DecidedVine } from "../../survey/decideSurvey";
import { say, type Language } from "../../texts/language";
import { RESULT_SHEET_TEXTS as TEXTS } from "../../texts/resultSheets";
import type { OwnSheet } from "../surveyWorkbook";

/** What a crew does on one vine, in sentences. */
export interface VineCard {
  readonly block: string;
  readonly row: number;
  readonly vine: number;
  /** What stays on each side, or where a cane is laid from. */
  readonly stays: readonly string[];
  /** The cuts in the order of the work. */
  readonly cuts: readonly string[];
  /** What holds for the vine as a whole. */
  readonly notes: readonly string[];
}

/** The card of a vine that was decided. */
export function vineCard({ block, row, vine, decision }: DecidedVine, language: Language): VineCard {
  return {
    block,
    row,
    vine,
    stays: decision.sides.map((side) => sideSentence(side, language)),
    cuts: decision.cuts.map((cut) => cutSentence(cut, language)),
    notes: decision.notes.map((note) => vineNoteSentence(note, language)),
  };
}

/** The sheet with a line for each vine: what stays, what is cut and where, what to look out for. */
export function cardsSheet(vines: readonly DecidedVine[], language: Language, date: string): OwnSheet {
  const text = (name: keyof typeof TEXTS) => TEXTS[name][language];
  return {
    sheet: text("cards"),
    title: [text("cardsTitle"), say(TEXTS.made, language, { date })],
    headers: [text("block"), text("row"), text("vine"), text("stays"), text("cuts"), text("notes")],
    columns: [
      { width: 16 },
      { width: 7 },
      { width: 7 },
      { width: 34, wrap: true },
      { width: 60, wrap: true },
      { width: 40, wrap: true },
    ],
    rows: vines.map((decided) => {
      const { block, row, vine, stays, cuts, notes } = vineCard(decided, language);
      return [block, row, vine, stays.join(" "), cuts.join(" ") || null, notes.join(" ") || null];
    }),
  };
}
