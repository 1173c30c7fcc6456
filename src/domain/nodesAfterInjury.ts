import { INJURY_RULE_NAMES, injuryRule, type InjuryRule, type InjuryStep } from "./injuryRules";
import { mustLieBetween, Refusal } from "./refusal";

/** One rule's answer: nodes to leave and how many of them live, or why it gives none. */
export interface InjuryAnswer {
  readonly rule: InjuryRule;
  readonly nodes: number | undefined;
  readonly liveNodes: number | undefined;
  readonly refusal: Refusal | undefined;
}

/**
 * Nodes to leave so that winter injury is made up for, by one named rule of INJURY_RULES. The rules disagree; none is
 * averaged with another, and none answers outside what its source covers.
 *
 * `nodes`: the budget of an uninjured vine, 0 to 1000. `deadShare`: share of dead primary buds, 0 to 1. Refuses
 * (unknownInjuryRule) a rule that is not in the table, and with the code of its step a share that the source leaves out.
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
  const name = INJURY_RULE_NAMES.find((known) => known.toLowerCase() === rule.trim().toLowerCase());
  if (!name)
    throw new Refusal("invalid", "unknownInjuryRule", {
      argument: "rule",
      value: rule,
      known: INJURY_RULE_NAMES,
    });
  const dead = withoutRoundingNoise(deadShare);
  const { steps, twice } = injuryRule(name);
  const facts = { argument: "dead_share", percent: Math.round(dead * 1e6) / 1e4 };
  const said = steps.filter((step) => holds(step, dead));
  const numbers = said.flatMap(({ leave }) => (typeof leave === "string" ? [] : [nodes * leave(dead)]));
  if (numbers.length > 1)
    throw new Refusal("notAvailable", twice!, { ...facts, first: numbers[0], second: numbers[1] });
  if (numbers.length === 1) return numbers[0];
  throw new Refusal("notAvailable", String(said[0].leave), facts);
}

/** A stretch without a number yields its ends to one with a number. */
const holds = ({ from = 0, to = 1, endsBefore }: InjuryStep, dead: number) =>
  dead >= from && (endsBefore ? dead < to : dead <= to);

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
  return INJURY_RULE_NAMES.map((rule) => {
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
