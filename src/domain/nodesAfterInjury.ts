import { mustLieBetween, Refusal } from "./refusal";

/** The rules that correct a node budget for dead primary buds, named after their source. */
export const INJURY_RULES = [
  "Cornell 2014",
  "MSU 2002",
  "Purdue",
  "Northern Grapes 2014",
  "compensation",
] as const;
export type InjuryRule = (typeof INJURY_RULES)[number];

/** Id in SOURCES of each rule. */
export const INJURY_RULE_SOURCES: Readonly<Record<InjuryRule, string>> = {
  "Cornell 2014": "cornell2014",
  "MSU 2002": "msu2002",
  Purdue: "purdueDoublePruning",
  "Northern Grapes 2014": "northernGrapes2014",
  compensation: "compensation",
};

/** One rule's answer: nodes to leave and how many of them live, or why it gives none. */
export interface InjuryAnswer {
  readonly rule: InjuryRule;
  readonly nodes: number | undefined;
  readonly liveNodes: number | undefined;
  readonly refusal: Refusal | undefined;
}

/**
 * Nodes to leave so that winter injury is made up for, by one named rule. The rules disagree; none is averaged with
 * another, and none answers outside what its source covers.
 *
 * `nodes`: the budget of an uninjured vine, 0 to 1000. `deadShare`: share of dead primary buds, 0 to 1. `rule`:
 * - "Cornell 2014" (Cornell Cooperative Extension, Northern New York Grape Update, 28 Feb 2014): below 20 % none; 20 to
 *   80 % as many more in per cent as are dead (35 % dead, 35 % more). Above 80 % not seen (cornellAbove80).
 * - "MSU 2002" (Zabadal, Michigan State University E-2774): to 15 % none; 20 to 50 % "compensate for the percentage
 *   dead", read here as live nodes up to the budget, nodes / (1 - dead), a reading of ours. Between 15 and 20 % the
 *   source says nothing (msuBetween15And20); above 50 % it gives no number (msuAbove50).
 * - "Purdue" (Purdue University, "Double pruning grapevines"): to 15 % none; 15 to 35 % 35 % more; "25-50 %" 50 % more.
 *   Exactly 15 % and 25 to 35 % stand in two rows (purdueTwoRows); above 50 % minimal pruning (purdueAbove50).
 * - "Northern Grapes 2014" (Particka 2014): over 20 % leave more, without a number (northernGrapesNoNumber).
 * - "compensation": nodes / (1 - dead). Derived; no publication seen states it. With every bud dead: allDead.
 *
 * @example
 * nodesAfterInjury(40, 0.35, "Cornell 2014") // 54
 * nodesAfterInjury(40, 0.2, "MSU 2002") // 50
 * nodesAfterInjury(40, 0.2, "Purdue") // 54
 * nodesAfterInjury(40, 0.35, "compensation") // 61.54
 * nodesAfterInjury(40, 0.17, "MSU 2002") // Refusal msuBetween15And20
 * nodesAfterInjury(40, 0.3, "Purdue") // Refusal purdueTwoRows
 */
export function nodesAfterInjury(nodes: number, deadShare: number, rule: string): number {
  mustLieBetween("nodes", nodes, 0, 1000);
  mustLieBetween("dead_share", deadShare, 0, 1);
  const name = INJURY_RULES.find((known) => known.toLowerCase() === rule.trim().toLowerCase());
  if (!name)
    throw new Refusal("invalid", "unknownInjuryRule", { argument: "rule", value: rule, known: INJURY_RULES });
  return RULES[name](nodes, withoutRoundingNoise(deadShare));
}

/**
 * Every rule's answer side by side, so that a person sees where the sources disagree and where one is silent.
 *
 * @example
 * nodesAfterEveryRule(40, 0.35).map((answer) => answer.nodes) // [54, 61.54, undefined, undefined, 61.54]
 * nodesAfterEveryRule(40, 0.35).map((answer) => answer.refusal?.code)[2] // "purdueTwoRows"
 * nodesAfterEveryRule(40, 0.35)[0].liveNodes // 35.1
 */
export function nodesAfterEveryRule(nodes: number, deadShare: number): readonly InjuryAnswer[] {
  mustLieBetween("nodes", nodes, 0, 1000);
  mustLieBetween("dead_share", deadShare, 0, 1);
  return INJURY_RULES.map((rule) => {
    try {
      const left = nodesAfterInjury(nodes, deadShare, rule);
      return { rule, nodes: left, liveNodes: left * (1 - deadShare), refusal: undefined };
    } catch (thrown) {
      if (!(thrown instanceof Refusal)) throw thrown;
      return { rule, nodes: undefined, liveNodes: undefined, refusal: thrown };
    }
  });
}

/** 1 - 0.85 must meet the edge at 0.15. */
const withoutRoundingNoise = (value: number) => Math.round(value * 1e12) / 1e12;
const percent = (value: number) => Math.round(value * 1e6) / 1e4;

const RULES: Readonly<Record<InjuryRule, (nodes: number, dead: number) => number>> = {
  "Cornell 2014": (nodes, dead) => {
    if (dead < 0.2) return nodes;
    if (dead <= 0.8) return nodes * (1 + dead);
    throw new Refusal("notAvailable", "cornellAbove80", { argument: "dead_share", percent: percent(dead) });
  },
  "MSU 2002": (nodes, dead) => {
    if (dead <= 0.15) return nodes;
    if (dead < 0.2)
      throw new Refusal("notAvailable", "msuBetween15And20", {
        argument: "dead_share",
        percent: percent(dead),
      });
    if (dead <= 0.5) return nodes / (1 - dead);
    throw new Refusal("notAvailable", "msuAbove50", { argument: "dead_share", percent: percent(dead) });
  },
  Purdue: (nodes, dead) => {
    const rows = [
      ...(dead <= 0.15 ? [nodes] : []),
      ...(dead >= 0.15 && dead <= 0.35 ? [nodes * 1.35] : []),
      ...(dead >= 0.25 && dead <= 0.5 ? [nodes * 1.5] : []),
    ];
    if (rows.length === 1) return rows[0];
    if (rows.length === 2)
      throw new Refusal("notAvailable", "purdueTwoRows", {
        argument: "dead_share",
        percent: percent(dead),
        first: rows[0],
        second: rows[1],
      });
    throw new Refusal("notAvailable", "purdueAbove50", { argument: "dead_share", percent: percent(dead) });
  },
  "Northern Grapes 2014": (nodes, dead) => {
    if (dead <= 0.2) return nodes;
    throw new Refusal("notAvailable", "northernGrapesNoNumber", {
      argument: "dead_share",
      percent: percent(dead),
    });
  },
  compensation: (nodes, dead) => {
    if (dead < 1) return nodes / (1 - dead);
    throw new Refusal("notAvailable", "allDead", { argument: "dead_share" });
  },
};
