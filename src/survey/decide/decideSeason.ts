import { chooseCordons } from "../../domain/choice/chooseCordons";
import type { VineDecision } from "../../domain/choice/vineDecision";
import { choiceRules } from "./choice/choiceRules";
import type { Season } from "../season/season";
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
export function* decideSeason(season: Season): Generator<DecidedVine, void, void> {
  const rules = choiceRules(season.settings);
  for (const vine of vinesToDecide(season)) yield { ...vine, decision: chooseCordons(vine.toDecide, rules) };
}
