import type { UnitSystem } from "../../domain/units";
import { SCORE_PARTS } from "../../domain/choice/choiceRules";
import type { CordonDecision } from "../../domain/choice/vineDecision";
import { isKnown, type PartBounds } from "../../domain/choice/partBounds";
import type { VinePlan } from "../../domain/plan/vinePlan";
import { reasonSentence } from "../../survey/decide/choice/reasonSentence";
import { cutSentence, keepSentence } from "../../survey/decide/choice/vineSentences";
import type { DecidedVine } from "../../survey/decide/decideSeason";
import { PART_TEXTS } from "../../texts/cards";
import { SIDE_WORDS, VERDICT_WORDS } from "../../texts/choice";
import { say, type Language } from "../../texts/language";
import { RESULT_SHEET_TEXTS as TEXTS } from "../../texts/resultSheets";
import type { OwnSheet } from "../surveyWorkbook";
import { placeName } from "../../texts/placeName";

/** The sheet with the decision on every candidate cordon: stays, goes or ask, its score with its parts, and the reason. */
export function choiceSheet(
  vines: readonly DecidedVine[],
  language: Language,
  unitSystem: UnitSystem,
  date: string,
): OwnSheet {
  const text = (name: keyof typeof TEXTS) => TEXTS[name][language];
  return {
    sheet: text("choice"),
    title: [text("choiceTitle"), say(TEXTS.made, language, { date })],
    headers: [
      text("block"),
      text("row"),
      text("vine"),
      text("side"),
      text("cordon"),
      text("trunk"),
      text("decision"),
      text("score"),
      text("reason"),
      text("work"),
      text("sheet"),
      text("sheetRow"),
      ...SCORE_PARTS.map((part) => PART_TEXTS[part][language]),
    ],
    about: { thing: [text("block"), text("row"), text("vine"), text("side"), text("cordon")] },
    columns: [
      { width: 16 },
      { width: 7 },
      { width: 7 },
      { width: 9 },
      { width: 9 },
      { width: 8 },
      { width: 11 },
      { width: 8, format: "0.00" },
      { width: 70, wrap: true },
      { width: 40, wrap: true },
      { width: 14 },
      { width: 10 },
      ...SCORE_PARTS.map(() => ({ width: 10, format: "0.00" })),
    ],
    rows: vines.flatMap(({ block, row, vine, decision, plan, rows, toDecide }) =>
      decision.cordons.map((cordon, at) => [
        block,
        placeName(row),
        placeName(vine),
        SIDE_WORDS[cordon.side]?.[language] ?? cordon.side,
        cordon.cordon,
        toDecide.candidates[at].trunk ?? null,
        VERDICT_WORDS[cordon.verdict][language],
        cordon.score.score,
        reasonSentence(cordon, language, unitSystem),
        workOn(plan, cordon, language),
        rows[at].table.sheet,
        rows[at].table.sheetRow(rows[at].index),
        ...SCORE_PARTS.map((part) => knownOrNothing(cordon.score.parts[part])),
      ]),
    ),
  };
}

/** What is done with one cordon by the plan of its vine; an empty cell for one that waits for a person. */
function workOn(plan: VinePlan, { side, cordon }: CordonDecision, language: Language): string | null {
  const here = (one: { readonly side: string; readonly cordon: string }) =>
    one.side === side && one.cordon === cordon;
  const cut = plan.cuts.find(here);
  if (cut) return cutSentence(cut, language);
  const keep = plan.keeps.find(here);
  return keep ? keepSentence(keep, language) : null;
}

/** A part that is known exactly; an empty cell for one that is not. */
function knownOrNothing(part: PartBounds): number | null {
  return isKnown(part) ? part.low : null;
}
