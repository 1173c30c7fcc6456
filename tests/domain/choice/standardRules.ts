import type { VineToDecide } from "../../../src/domain/choice/candidateCordon";
import type { VineDecision } from "../../../src/domain/choice/vineDecision";
import { vinePlan, type VinePlan } from "../../../src/domain/plan/vinePlan";
import { choiceRules } from "../../../src/survey/decide/choice/choiceRules";
import { renewalRules } from "../../../src/survey/decide/renewal/renewalRules";
import { defaultSettings } from "../../../src/survey/settings/settings";

/** The figures of the Settings sheet before a farm changes any. */
export const RULES = choiceRules(defaultSettings());

const { triggers } = renewalRules(defaultSettings());

/** The plan of a decided vine by those figures. */
export function planned(vine: VineToDecide, decision: VineDecision): VinePlan {
  return vinePlan(vine, decision, triggers);
}
