import type { ChoiceRules } from "../../domain/choice/choiceRules";
import { chooseCordons } from "../../domain/choice/chooseCordons";
import type { VineDecision } from "../../domain/choice/vineDecision";
import { vinePlan, type VinePlan } from "../../domain/plan/vinePlan";
import { choiceRules } from "./choice/choiceRules";
import type { Season } from "../season/season";
import { renewalRules, type RenewalRules } from "./renewal/renewalRules";
import { hasTrunkToRenew } from "./renewal/trunksToRenew";
import { vinesToDecide, type SurveyVine } from "./vinesToDecide";

/** A vine of the survey with its answer. */
export interface DecidedVine extends SurveyVine {
  readonly decision: VineDecision;
  /** What is done on the vine, made once from its decision. */
  readonly plan: VinePlan;
  /** It has a trunk to bring up, to replace or to take out. */
  readonly renewsTrunk: boolean;
}

/** A vine of the survey with its answer and its plan, by the figures of the Settings sheet. */
export function decidedVine(vine: SurveyVine, settings: Season["settings"]): DecidedVine {
  return answered(vine, choiceRules(settings), renewalRules(settings));
}

function answered(vine: SurveyVine, rules: ChoiceRules, renewal: RenewalRules): DecidedVine {
  const decision = chooseCordons(vine.toDecide, rules);
  return {
    ...vine,
    decision,
    plan: vinePlan(vine.toDecide, decision, renewal.triggers),
    renewsTrunk: hasTrunkToRenew(vine.toDecide, renewal),
  };
}

/** What was decided of an earlier reading of the same sheets. */
export interface DecidedBefore {
  readonly settings: Season["settings"];
  readonly vines: readonly DecidedVine[];
}

/**
 * Decides every vine of the survey in walk order, one a step, so that a page can do it in slices.
 *
 * @param season sheets as read; the figures in force are those of its Settings sheet
 * @param before decided under the same settings and counts, a vine's answer is the same and is not worked out again
 */
export function* decideSeason(season: Season, before?: DecidedBefore): Generator<DecidedVine, void, void> {
  const rules = choiceRules(season.settings);
  const renewal = renewalRules(season.settings);
  const known = before && isSame(before.settings, season.settings) ? before.vines : [];
  for (const [at, vine] of vinesToDecide(season).entries()) {
    if (known[at] && isSame(known[at].toDecide, vine.toDecide)) {
      const { decision, plan, renewsTrunk } = known[at];
      yield { ...vine, decision, plan, renewsTrunk };
      continue;
    }
    yield answered(vine, rules, renewal);
  }
}

/** True for two plain values that hold the same. */
function isSame(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== "object" || typeof other !== "object" || one === null || other === null) return false;
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) =>
      isSame((one as Record<string, unknown>)[key], (other as Record<string, unknown>)[key]),
    )
  );
}
