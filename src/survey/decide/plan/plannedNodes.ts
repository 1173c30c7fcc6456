import { liveSpursOf } from "../../../domain/choice/liveSpurs";
import { fourthYearNodes } from "../../../domain/plan/youngVine";
import { nodePlan, type NodePlan } from "../../../domain/plan/nodePlan";
import { blockFigures } from "../../season/blockFigures";
import type { Season } from "../../season/season";
import type { DecidedVine } from "../decideSeason";
import { vineBudgets } from "./vineBudgets";

/**
 * The nodes to leave on each vine, spread over the spurs that stay: what its card says and what the crop is worked out
 * from. Undefined where there is no budget, or a staying cordon's spurs were not counted. A vine in its fourth year is cut
 * to the nodes that its spurs have by the source, one in its first three has no nodes to be planned.
 */
export function plannedNodes(season: Season): (vine: DecidedVine) => NodePlan | undefined {
  const budgetOf = vineBudgets(season);
  const limitsOf = spurLimits(season);
  return (vine) => {
    if (vine.plan.young) return youngNodes(vine);
    const { least, most, bearingBasal } = limitsOf(season.words.codeOf(vine.block));
    const spurs = vine.plan.keeps.length === 0 ? undefined : spursOn(vine);
    const budget = budgetOf(vine.block, vine.row, vine.vine).nodes;
    if (budget === undefined || spurs === undefined) return undefined;
    const plan = nodePlan(budget, spurs, least, most);
    const borneAtTheBase = Math.floor((spurs - plan.surplusSpurs) * bearingBasal);
    return { ...plan, short: Math.max(0, plan.short - borneAtTheBase) };
  };
}

function youngNodes(vine: DecidedVine): NodePlan | undefined {
  const nodesASpur = vine.plan.young?.rules.find(({ rule }) => rule === "nodesASpur")?.most;
  const spurs = vine.plan.keeps.length === 0 ? undefined : spursOfKeeps(vine);
  if (nodesASpur === undefined || spurs === undefined) return undefined;
  const all = spurs.reduce((sum, count) => sum + count, 0);
  return nodePlan(fourthYearNodes(spurs), all, nodesASpur, nodesASpur);
}

export interface SpurLimits {
  readonly least: number;
  readonly most: number;
  /** Bearing shoots from uncounted buds on each spur, in counted ones; 0 unless the block cuts to nodes of its own. */
  readonly bearingBasal: number;
}

/**
 * Fewest and most nodes that the plan leaves on a spur, by the number of the block's name: its own nodes a spur are the
 * most, and where its basal buds bear they make up for nodes that one more on a spur would have been; else those of Settings.
 */
export function spurLimits(season: Season): (block: number) => SpurLimits {
  const figuresOf = blockFigures(season);
  const { planLeastNodesASpur, planMostNodesASpur } = season.settings;
  return (block) => {
    const { nodesASpur, basalShoots, basalWorth } = figuresOf(block);
    const least = Math.round(planLeastNodesASpur);
    if (nodesASpur.from !== "block")
      return { least, most: Math.max(least, Math.round(planMostNodesASpur)), bearingBasal: 0 };
    const most = Math.round(nodesASpur.value);
    return { least: Math.min(least, most), most, bearingBasal: basalShoots.value * basalWorth.value };
  };
}

/** Live spurs on the cordons that stay; undefined as soon as one of them was not counted. */
export function spursOn(vine: DecidedVine): number | undefined {
  return spursOfKeeps(vine)?.reduce((sum, spurs) => sum + spurs, 0);
}

function spursOfKeeps({ toDecide, plan: { keeps } }: DecidedVine): number[] | undefined {
  const counted = keeps.flatMap(({ side, cordon }) => {
    const candidate = toDecide.candidates.find((one) => one.side === side && one.cordon === cordon)!;
    return liveSpursOf(candidate) ?? [];
  });
  return counted.length === keeps.length ? counted : undefined;
}
