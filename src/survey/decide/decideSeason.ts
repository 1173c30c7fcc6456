import { chooseCordons } from "../../domain/choice/chooseCordons";
import type { VineDecision } from "../../domain/choice/vineDecision";
import { vinePlan, type VinePlan } from "../../domain/plan/vinePlan";
import { choiceRules } from "./choice/choiceRules";
import type { Season } from "../season/season";
import { renewalRules } from "./renewal/renewalRules";
import { vinesToDecide, type SurveyVine } from "./vinesToDecide";

/** A vine of the survey with its answer. */
export interface DecidedVine extends SurveyVine {
  readonly decision: VineDecision;
  /** What is done on the vine, made once from its decision. */
  readonly plan: VinePlan;
}

/** A vine of the survey with its answer and its plan, by the figures of the Settings sheet. */
export function decidedVine(vine: SurveyVine, settings: Season["settings"]): DecidedVine {
  const decision = chooseCordons(vine.toDecide, choiceRules(settings));
  return { ...vine, decision, plan: vinePlan(vine.toDecide, decision, renewalRules(settings).triggers) };
}

/**
 * Decides every vine of the survey in walk order, one a step, so that a page can do it in slices.
 *
 * @param survey sheets as read; the figures in force are those of its Settings sheet
 */
export function* decideSeason(season: Season): Generator<DecidedVine, void, void> {
  const rules = choiceRules(season.settings);
  const { triggers } = renewalRules(season.settings);
  for (const vine of vinesToDecide(season)) {
    const decision = chooseCordons(vine.toDecide, rules);
    yield { ...vine, decision, plan: vinePlan(vine.toDecide, decision, triggers) };
  }
}
