import { mustBeWhole, mustLieBetween, Refusal } from "../refusal";

/** So many spurs are cut to so many nodes. */
export interface SpursAtNodes {
  readonly spurs: number;
  readonly nodes: number;
}

/** How a vine's node budget is spread over the spurs that stay. */
export interface NodePlan {
  /** Longer spurs first; together all the spurs that are left. */
  readonly spurs: readonly SpursAtNodes[];
  /** Nodes that the plan leaves. */
  readonly nodes: number;
  /** Nodes of the budget for which the spurs have no room, even at their longest. */
  readonly short: number;
  /** Spurs to cut off because even at their shortest they would leave more nodes than the budget. */
  readonly surplusSpurs: number;
}

/**
 * Spreads a node budget over the spurs that stay: every spur the same as far as that goes, the rest one node more. Where
 * even the longest spurs do not hold the budget, the nodes that it is short are named; where the shortest hold more,
 * spurs are cut off.
 *
 * Klodd (University of Minnesota Extension, 2022): 2 to 3 buds a spur; where the spacing is not met, change buds per
 * spur or spurs per cordon.
 *
 * @param budget nodes to leave on the vine, after injury; rounded to whole nodes
 * @param spurs live spurs on the cordons that stay
 * @param least fewest nodes a spur is cut to
 * @param most most nodes a spur is left with
 * @throws Refusal "outside", "notWhole", "leastAboveMost"
 * @example
 * nodePlan(40, 16, 1, 3) // {"spurs": [{"spurs": 8, "nodes": 3}, {"spurs": 8, "nodes": 2}], "nodes": 40, "short": 0, "surplusSpurs": 0}
 * nodePlan(40, 12, 1, 2).short // 16
 */
export function nodePlan(budget: number, spurs: number, least: number, most: number): NodePlan {
  mustLieBetween("nodes", budget, 0, 1000);
  mustBeWhole("spurs", spurs, 0, 1000);
  mustBeWhole("least", least, 1, 15);
  mustBeWhole("most", most, 1, 15);
  if (least > most) throw new Refusal("invalid", "leastAboveMost", { argument: "least", least, most });
  const wanted = Math.round(budget);
  const kept = Math.min(spurs, Math.floor(wanted / least));
  const nodes = Math.min(wanted, kept * most);
  const short = kept === 0 ? 0 : Math.floor(nodes / kept);
  const longer = nodes - short * kept;
  const plan = [
    { spurs: longer, nodes: short + 1 },
    { spurs: kept - longer, nodes: short },
  ];
  return {
    spurs: plan.filter((part) => part.spurs > 0),
    nodes,
    short: wanted - nodes,
    surplusSpurs: spurs - kept,
  };
}
