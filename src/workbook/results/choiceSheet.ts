import type { UnitSystem } from "../../domain/units";
import { SCORE_PARTS } from "../../domain/choice/choiceRules";
import { isKnown, type PartBounds } from "../../domain/choice/partBounds";
import { reasonSentence } from "../../survey/decide/choice/reasonSentence";
import type { DecidedVine } from "../../survey/decide/decideSeason";
import { PART_TEXTS } from "../../texts/cards";
import { SIDE_WORDS, VERDICT_WORDS } from "../../texts/choice";
import { say, type Language } from "../../texts/language";
import { RESULT_SHEET_TEXTS as TEXTS } from "../../texts/resultSheets";
import type { OwnSheet } from "../surveyWorkbook";

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
      text("sheet"),
      text("sheetRow"),
      ...SCORE_PARTS.map((part) => PART_TEXTS[part][language]),
    ],
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
      { width: 14 },
      { width: 10 },
      ...SCORE_PARTS.map(() => ({ width: 10, format: "0.00" })),
    ],
    rows: vines.flatMap(({ block, row, vine, decision, rows, toDecide }) =>
      decision.cordons.map((cordon, at) => [
        block,
        row,
        vine,
        SIDE_WORDS[cordon.side]?.[language] ?? cordon.side,
        cordon.cordon,
        toDecide.candidates[at].trunk ?? null,
        VERDICT_WORDS[cordon.verdict][language],
        cordon.score.score,
        reasonSentence(cordon, language, unitSystem),
        rows[at].table.sheet,
        rows[at].table.sheetRow(rows[at].index),
        ...SCORE_PARTS.map((part) => knownOrNothing(cordon.score.parts[part])),
      ]),
    ),
  };
}

/** A part that is known exactly; an empty cell for one that is not. */
function knownOrNothing(part: PartBounds): number | null {
  return isKnown(part) ? part.low : null;
}
