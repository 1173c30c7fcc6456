import { liveSpursOf } from "../../../domain/choice/liveSpurs";
import { nodePlan, type NodePlan } from "../../../domain/plan/nodePlan";
import type { Season } from "../../season/season";
import type { DecidedVine } from "../decideSeason";
import { vineBudgets } from "./vineBudgets";

/**
 * The nodes to leave on each vine, spread over the spurs that stay: what its card says and what the crop is worked out
 * from. Undefined where there is no budget, or a staying cordon's spurs were not counted.
 */
export function plannedNodes(season: Season): (vine: DecidedVine) => NodePlan | undefined {
  const budgetOf = vineBudgets(season);
  const least = Math.round(season.settings.planLeastNodesASpur);
  const most = Math.max(least, Math.round(season.settings.planMostNodesASpur));
  return (vine) => {
    const spurs = vine.plan.keeps.length === 0 ? undefined : spursOn(vine);
    const budget = budgetOf(vine.block, vine.row, vine.vine).nodes;
    return budget === undefined || spurs === undefined ? undefined : nodePlan(budget, spurs, least, most);
  };
}

/** Live spurs on the cordons that stay; undefined as soon as one of them was not counted. */
export function spursOn({ toDecide, plan: { keeps } }: DecidedVine): number | undefined {
  let sum = 0;
  for (const { side, cordon } of keeps) {
    const candidate = toDecide.candidates.find((one) => one.side === side && one.cordon === cordon)!;
    const spurs = liveSpursOf(candidate);
    if (spurs === undefined) return undefined;
    sum += spurs;
  }
  return sum;
}
