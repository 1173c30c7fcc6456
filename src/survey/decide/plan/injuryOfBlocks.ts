import { budInjury } from "../../../domain/budInjury";
import { edgesOfInjuryRule, INJURY_RULE_NAMES, type InjuryRule } from "../../../domain/injuryRules";
import { nodesAfterInjury } from "../../../domain/nodesAfterInjury";
import type { ShareInterval } from "../../../domain/proportionInterval";
import { Refusal } from "../../../domain/refusal";
import type { Season } from "../../season/season";
import { nodeRule } from "../../sheets/nodeRules";
import { wordKey } from "../../sheets/words";
import { budsCut, type BudsCut } from "./deadShares";
import { blockRules, weighedVines, woodOf } from "./vineBudgets";

/** Dead primary buds of a sample, with the range that holds their share at the confidence of Settings. */
export interface Injury extends BudsCut, ShareInterval {}

/** A number of nodes, or why there is none. */
export interface NodesOrRefusal {
  readonly nodes?: number;
  readonly refusal?: Refusal;
}

/** Nodes that a rule leaves where the range of dead buds lies on both sides of one of its edges. */
export interface Straddle {
  /** Shares of dead buds at which the rule changes what it says. */
  readonly edges: readonly number[];
  readonly low: NodesOrRefusal;
  readonly high: NodesOrRefusal;
}

/** What the winter did to a block that has bud cuts, and the two budgets where that lies on both sides of a rule's edge. */
export interface InjuredBlock {
  readonly injury: Injury;
  readonly injuryRule: string;
  readonly straddle?: Straddle;
}

/** The blocks that have bud cuts, by the number of their name. */
export function injuryOfBlocks(season: Season): ReadonlyMap<number, InjuredBlock> {
  const buds = budsCut(season);
  if (buds.size === 0) return new Map();
  const weights = weighedVines(season);
  const rulesOf = blockRules(season);
  return new Map(
    [...buds].map(([block, sample]) => {
      const code = season.words.codeOf(block);
      const { nodes: text, injury: injuryRule } = rulesOf(code);
      const before = answer(() => nodeRule(text).nodes(text, woodOf(season, code, weights)));
      const injury = injuryOf(season, sample);
      const budget = before.nodes;
      return [
        code,
        {
          injury,
          injuryRule,
          ...(budget !== undefined &&
            straddled(injuryRule, injury, (share) =>
              answer(() => nodesAfterInjury(budget, share, injuryRule)),
            )),
        },
      ];
    }),
  );
}

/** Dead buds of a sample with their range by the confidence and interval of Settings. */
export function injuryOf({ settings }: Season, { dead, cut }: BudsCut): Injury {
  return { dead, cut, ...budInjury(dead, cut, settings.confidenceOfRanges, settings.intervalForDeadBuds) };
}

/** What a rule leaves, or its refusal. */
export function answer(work: () => number): NodesOrRefusal {
  try {
    return { nodes: work() };
  } catch (problem) {
    if (!(problem instanceof Refusal)) throw problem;
    return { refusal: problem };
  }
}

/** The two budgets, where an edge of the rule lies within the range of dead buds. */
export function straddled(
  name: string,
  { low, high }: ShareInterval,
  correct: (share: number) => NodesOrRefusal,
): { straddle: Straddle } | undefined {
  const rule = INJURY_RULE_NAMES.find((known) => wordKey(known) === wordKey(name));
  const edges = rule ? edgesBetween(rule, low, high) : [];
  return edges.length === 0 ? undefined : { straddle: { edges, low: correct(low), high: correct(high) } };
}

const edgesBetween = (rule: InjuryRule, low: number, high: number) =>
  edgesOfInjuryRule(rule).filter((edge) => low <= edge && edge <= high);
