import { limitedNodes } from "../../../domain/limitedNodes";
import { nodesAfterInjury } from "../../../domain/nodesAfterInjury";
import { Refusal } from "../../../domain/refusal";
import { kilograms, metres } from "../../../domain/units";
import type { Season } from "../../season/season";
import type { VinePlaces } from "../../season/vinePlaces";
import { NO_PLACE, placeKey, placeOf } from "../../season/vinePlaces";
import { nodeRule, type BudgetBasis } from "../../sheets/nodeRules";
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
 * buds that this winter killed by the rule of the block, and held within the limits of the Settings sheet.
 *
 * @returns the budget of a vine by block, row and number
 */
export function vineBudgets(season: Season): (block: string, row: number, vine: number) => VineBudget {
  const places = season.places;
  const dead = deadShares(season);
  const weights = weighedVines(season, places);
  const { settings } = season;
  return (blockName, row, vine) => {
    const block = season.words.codeOf(blockName);
    const entry = places.blockRows().get(block);
    const written = (id: string) => {
      const cell = entry?.table.column(id)?.raw.at(entry.index);
      return typeof cell === "string" || typeof cell === "number" ? String(cell).trim() : "";
    };
    const text = written("nodeRule") || settings.nodeRule;
    const rule = nodeRule(text);
    const own = weights.byVine.get(placeKey(block, row, vine));
    const mean = weights.meanOf(block);
    const wood = {
      ownPrunings: own === undefined ? undefined : kilograms(own),
      blockPrunings: mean === undefined ? undefined : kilograms(mean),
      vineSpacing: metres(places.blockNumber(block, "vineSpacing")),
      nodesByLength: settings.nodesByLength,
      belowOnePound: settings.belowOnePound,
    };
    const basis = rule.basis(wood);
    try {
      const wanted = rule.nodes(text, wood);
      const share = dead.get(season.words.wordOf(block));
      const injured =
        share === undefined
          ? wanted
          : nodesAfterInjury(wanted, share, written("injuryRule") || settings.injuryRule);
      const { nodes } = limitedNodes(injured, settings.leastNodesAVine, settings.mostNodesAVine);
      return { nodes, basis };
    } catch (problem) {
      if (!(problem instanceof Refusal)) throw problem;
      return { basis, refusal: problem };
    }
  };
}

function weighedVines(season: Season, places: VinePlaces) {
  const byVine = new Map<number, number>();
  const byBlock = new Map<number, { sum: number; count: number }>();
  for (const table of season.tables("vines")) {
    const keys = places.keysOf(table);
    const prunings = table.column("prunings")?.usable;
    if (!prunings) continue;
    keys.forEach((key, index) => {
      if (key === NO_PLACE || !(prunings[index] >= 0) || byVine.has(key)) return;
      byVine.set(key, prunings[index]);
      const { block } = placeOf(key);
      const total = byBlock.get(block) ?? { sum: 0, count: 0 };
      byBlock.set(block, { sum: total.sum + prunings[index], count: total.count + 1 });
    });
  }
  return {
    byVine,
    meanOf: (block: number) => {
      const total = byBlock.get(block);
      return total && total.sum / total.count;
    },
  };
}
