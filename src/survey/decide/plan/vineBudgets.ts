import { limitedNodes } from "../../../domain/limitedNodes";
import { nodesAfterInjury } from "../../../domain/nodesAfterInjury";
import { Refusal } from "../../../domain/refusal";
import { kilograms, metres } from "../../../domain/units";
import { blockFigures } from "../../season/blockFigures";
import type { Season } from "../../season/season";
import { youngVines } from "../../season/youngVines";
import type { RegisterEntry } from "../../season/vinePlaces";
import { NO_PLACE, placeKey, placeOf } from "../../season/vinePlaces";
import { nodeRule, type BudgetBasis, type VineToBudget } from "../../sheets/nodeRules";
import { deadShares } from "./deadShares";

/** Nodes to leave on a vine, or why no number can be given. */
export interface VineBudget {
  /** After injury and within the limits of the Settings sheet; undefined when there is no number. */
  readonly nodes?: number;
  readonly basis: BudgetBasis;
  /** Why there is no number: code and facts of a refusal. */
  readonly refusal?: Refusal;
}

/**
 * The node budget of each vine by the rule of its block: a balanced formula on the vine's own prunings or, where it was
 * not weighed, on the mean of its block; a number of nodes a foot of vine spacing; or a fixed number. Corrected for the
 * buds that this winter killed by the rule of the block, and held within the limits of the Settings sheet. A vine in one
 * of its first four years is not given nodes by such a rule.
 *
 * @returns the budget of a vine by block, row and number
 */
export function vineBudgets(season: Season): (block: string, row: number, vine: number) => VineBudget {
  const dead = deadShares(season);
  const weights = weighedVines(season);
  const rulesOf = blockRules(season);
  const yearOf = youngVines(season);
  const { settings } = season;
  return (blockName, row, vine) => {
    const block = season.words.codeOf(blockName);
    const year = yearOf(placeKey(block, row, vine));
    const { nodes: text, injury, mostNodes } = rulesOf(block);
    const rule = nodeRule(text);
    const wood = woodOf(season, block, weights, weights.byVine.get(placeKey(block, row, vine))?.prunings);
    const basis = rule.basis(wood);
    try {
      if (year !== undefined) throw new Refusal("notAvailable", "youngVine", { year });
      const wanted = rule.nodes(text, wood);
      const share = dead.get(season.words.wordOf(block));
      const injured = share === undefined ? wanted : nodesAfterInjury(wanted, share, injury);
      const { nodes } = limitedNodes(injured, settings.leastNodesAVine, mostNodes);
      return { nodes, basis };
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      return { basis, refusal: problem };
    }
  };
}

/** The rules in force in a block, by the number of its name, and the most nodes that a vine is left. */
export function blockRules(
  season: Season,
): (block: number) => { nodes: string; injury: string; mostNodes: number } {
  const figuresOf = blockFigures(season);
  return (block) => {
    const entry = season.places.blockRows().get(block);
    const injury = entry?.table.column("injuryRule")?.raw.at(entry.index);
    const { nodeRule, mostNodes } = figuresOf(block);
    return {
      nodes: nodeRule.value,
      injury: (typeof injury === "string" && injury.trim()) || season.settings.injuryRule,
      mostNodes: mostNodes.value,
    };
  };
}

/** What a node rule may ask of a vine of the block, `own` being the kilograms of its own prunings. */
export function woodOf(season: Season, block: number, weights: WeighedVines, own?: number): VineToBudget {
  const mean = weights.meanOf(block);
  return {
    ownPrunings: own === undefined ? undefined : kilograms(own),
    blockPrunings: mean === undefined ? undefined : kilograms(mean),
    vineSpacing: metres(season.places.blockNumber(block, "vineSpacing")),
    nodesByLength: season.settings.nodesByLength,
    belowOnePound: season.settings.belowOnePound,
  };
}

/** A vine whose prunings were weighed, in kilograms, with the row of the Vines sheet that says so. */
export interface WeighedVine extends RegisterEntry {
  readonly prunings: number;
}

/** Vines by key of their place, and the mean of each block's. */
export interface WeighedVines {
  readonly byVine: ReadonlyMap<number, WeighedVine>;
  meanOf(block: number): number | undefined;
}

/** The vines whose prunings were weighed; the first row of a vine counts. */
export function weighedVines(season: Season): WeighedVines {
  const byVine = new Map<number, WeighedVine>();
  const byBlock = new Map<number, { sum: number; count: number }>();
  for (const table of season.tables("vines")) {
    const keys = season.places.keysOf(table);
    const prunings = table.column("prunings")?.usable;
    if (!prunings) continue;
    keys.forEach((key, index) => {
      if (key === NO_PLACE || !(prunings[index] >= 0) || byVine.has(key)) return;
      byVine.set(key, { prunings: prunings[index], table, index });
      const { block } = placeOf(key);
      const total = byBlock.get(block) ?? { sum: 0, count: 0 };
      byBlock.set(block, { sum: total.sum + prunings[index], count: total.count + 1 });
    });
  }
  return {
    byVine,
    meanOf: (block) => {
      const total = byBlock.get(block);
      return total && total.sum / total.count;
    },
  };
}
