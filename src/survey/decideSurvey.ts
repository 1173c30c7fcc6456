import { chooseCordons } from "../domain/choice/chooseCordons";
import type { VineDecision } from "../domain/choice/vineDecision";
import { choiceRules } from "./choice/choiceRules";
import type { Survey } from "./survey";
import { vinesToDecide, type SurveyVine } from "./vinesToDecide";

/** A vine of the survey with its answer. */
export interface DecidedVine extends SurveyVine {
  readonly decision: VineDecision;
}

/**
 * Decides every vine of the survey in walk order, one a step, so that a page can do it in slices.
 *
 * @param survey sheets as read; the figures in force are those of its Settings sheet
 */
export function* decideSurvey(survey: Survey): Generator<DecidedVine, void, void> {
  const rules = choiceRules(survey.settings);
  for (const vine of vinesToDecide(survey)) yield { ...vine, decision: chooseCordons(vine.toDecide, rules) };
}
