import { balancedFormula } from "../../../domain/balancedFormula";
import { limitedNodes } from "../../../domain/limitedNodes";
import { nodeBudget } from "../../../domain/nodeBudget";
import { nodesAfterInjury } from "../../../domain/nodesAfterInjury";
import { nodesByLength } from "../../../domain/nodesByLength";
import { Refusal } from "../../../domain/refusal";
import { kilograms, metres } from "../../../domain/units";
import type { Season } from "../../season/season";
import type { VinePlaces } from "../../season/vinePlaces";
import { NO_PLACE, placeKey, placeOf } from "../../season/vinePlaces";
import { wordKey } from "../../sheets/words";
import { deadShares } from "./deadShares";

/** Nodes to leave on a vine, or why no number can be given. */
export interface VineBudget {
  /** After injury and within the limits of the Settings sheet; undefined when there is no number. */
  readonly nodes?: number;
  /** ownPrunings: this vine was weighed. blockMean: the mean of the weighed vines of its block. */
  readonly basis: "ownPrunings" | "blockMean" | "length" | "fixed";
  /** Why there is no number: code and facts of a refusal. */
  readonly refusal?: Refusal;
}

/** The words under which the Blocks and Settings sheets name the rule by length. */
const BY_LENGTH = ["by length", "por longitud", "por largo", "par longueur"];

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
    const rule = written("nodeRule") || settings.nodeRule;
    const own = weights.byVine.get(placeKey(block, row, vine));
    const basis = basisOf(rule, own);
    try {
      const wanted = wantedNodes(
        rule,
        basis,
        own ?? weights.meanOf(block),
        places.blockNumber(block, "vineSpacing"),
        season,
      );
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

function basisOf(rule: string, own: number | undefined): VineBudget["basis"] {
  if (/^\d+$/.test(rule)) return "fixed";
  if (BY_LENGTH.includes(wordKey(rule))) return "length";
  return own === undefined ? "blockMean" : "ownPrunings";
}

function wantedNodes(
  rule: string,
  basis: VineBudget["basis"],
  prunings: number | undefined,
  vineSpacing: number,
  season: Season,
): number {
  if (basis === "fixed") return Number(rule);
  if (basis === "length") {
    if (!(vineSpacing > 0)) throw new Refusal("notAvailable", "noVineSpacing");
    const density = season.settings.nodesByLength;
    return nodesByLength(metres(vineSpacing), density);
  }
  const formula = balancedFormula(rule);
  if (prunings === undefined) throw new Refusal("notAvailable", "noVineWeighed");
  return nodeBudget(kilograms(prunings), formula, season.settings.belowOnePound);
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
