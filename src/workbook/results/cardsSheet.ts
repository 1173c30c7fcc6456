import type { UnitSystem } from "../../domain/units";
import {
  cardLegend,
  cardLine,
  shortageSentences,
  sideWord,
  type SideWords,
} from "../../survey/decide/cards/cardWords";
import type { CrewCard } from "../../survey/decide/cards/crewCards";
import { cutSentence, sideSentences, vineNoteSentence } from "../../survey/decide/choice/vineSentences";
import type { WorkPlan } from "../../survey/decide/plan/workPlan";
import { workSentences } from "../../survey/decide/plan/workSentences";
import { renewalSentences } from "../../survey/decide/renewal/renewalSentence";
import type { DecidedVine } from "../../survey/decide/decideSeason";
import { CARD_TEXTS } from "../../texts/cards";
import { say, type Language } from "../../texts/language";
import { RESULT_SHEET_TEXTS as TEXTS } from "../../texts/resultSheets";
import type { OwnSheet } from "../surveyWorkbook";
import { placeName } from "../../texts/placeName";

/** What a crew does on one vine, in sentences. */
export interface VineCard {
  readonly block: string;
  readonly row: number | string;
  readonly vine: number | string;
  /** What stays on each side, or where a cane is laid from. */
  readonly stays: readonly string[];
  /** The cuts in the order of the work. */
  readonly cuts: readonly string[];
  /** What the cordons that stay need, and what holds for the vine as a whole. */
  readonly notes: readonly string[];
}

/** The plan of a vine that was decided, in sentences. */
export function vineCard(
  { block, row, vine, decision, plan }: DecidedVine,
  language: Language,
  unitSystem: UnitSystem,
): VineCard {
  return {
    block,
    row: placeName(row),
    vine: placeName(vine),
    stays: sideSentences(plan, language),
    cuts: plan.cuts.map((cut) => cutSentence(cut, language)),
    notes: [
      ...renewalSentences(plan, language, unitSystem),
      ...decision.notes.map((note) => vineNoteSentence(note, language)),
    ],
  };
}

/** The sheet with a line for each vine in walk order: what stays, what is cut, canes, nodes, and room to write. */
export function cardsSheet(
  cards: readonly CrewCard[],
  options: {
    readonly language: Language;
    readonly date: string;
    readonly unitSystem: UnitSystem;
    readonly work?: WorkPlan;
  },
): OwnSheet {
  const { language, unitSystem } = options;
  const text = (name: keyof typeof TEXTS) => TEXTS[name][language];
  const word = (name: keyof typeof CARD_TEXTS) => CARD_TEXTS[name][language];
  const lines = (parts: readonly SideWords[]) =>
    parts
      .map(
        ({ side, words, ask }) =>
          `${sideWord(side, language)}: ${words}${ask && !words.includes("?") ? " ?" : ""}`,
      )
      .join("\n");
  return {
    sheet: text("cards"),
    title: [
      text("cardsTitle"),
      say(TEXTS.made, language, { date: options.date }),
      word("cutRule"),
      ...cardLegend(
        cards.flatMap(({ vines }) => vines),
        language,
      ),
      word("cautions"),
      ...shortageSentences(cards, language).values(),
      ...(options.work ? workSentences(options.work, language) : []),
    ],
    headers: [
      text("block"),
      text("row"),
      text("vine"),
      text("stays"),
      text("cuts"),
      word("lay"),
      word("nodes"),
      text("notes"),
      word("done"),
      word("found"),
    ],
    about: { thing: [text("block"), text("row"), text("vine")], entries: [word("done"), word("found")] },
    columns: [
      { width: 16 },
      { width: 7 },
      { width: 7 },
      { width: 22, wrap: true },
      { width: 18, wrap: true },
      { width: 24, wrap: true },
      { width: 16 },
      { width: 34, wrap: true },
      { width: 7 },
      { width: 30 },
    ],
    rows: cards.flatMap(({ block, row, vines }) =>
      vines.map((vine) => {
        const line = cardLine(vine, language, unitSystem);
        return [
          block,
          placeName(row),
          placeName(vine.vine),
          lines(line.keep) || null,
          lines(line.cut) || null,
          lines(line.lay) || null,
          line.nodes.join(" + ") || null,
          line.notes.join("; ") || null,
          null,
          null,
        ];
      }),
    ),
  };
}
