import type { SourceId } from "./sources";

/** One stretch of the share of dead primary buds for which a rule's source says what to leave. */
export interface InjuryStep {
  /** Where the stretch begins and ends, as shares; 0 and 1 where not given. */
  readonly from?: number;
  readonly to?: number;
  /** True where the end itself belongs to the next stretch. */
  readonly endsBefore?: true;
  /** Nodes to leave for one node of the uninjured vine's budget, or the code of the refusal where there is no number. */
  readonly leave: ((dead: number) => number) | string;
}

/** All that an injury rule decides. Where two of its stretches hold at once, the source stands in two rows. */
export interface InjuryRuleRow {
  /** What the rule is named after. */
  readonly source: SourceId;
  readonly steps: readonly InjuryStep[];
  /** Code of the refusal where two stretches hold. */
  readonly twice?: string;
}

const asUsual = () => 1;
const liveNodesAsPlanned = (dead: number) => 1 / (1 - dead);

/**
 * The rules that correct a node budget for dead primary buds, named after their source:
 * - "Cornell 2014" (Cornell Cooperative Extension, Northern New York Grape Update, 28 Feb 2014): below 20 % none; 20 to
 *   80 % as many more in per cent as are dead (35 % dead, 35 % more). Above 80 % not seen.
 * - "MSU 2002" (Zabadal, Michigan State University E-2774): to 15 % none; 20 to 50 % "compensate for the percentage
 *   dead", read here as live nodes up to the budget, nodes / (1 - dead), a reading of ours. Between 15 and 20 % the
 *   source says nothing; above 50 % it gives no number.
 * - "Purdue" (Purdue University, "Double pruning grapevines"): to 15 % none; 15 to 35 % 35 % more; "25-50 %" 50 % more.
 *   Exactly 15 % and 25 to 35 % stand in two rows; above 50 % minimal pruning.
 * - "Northern Grapes 2014" (Particka 2014): over 20 % leave more, without a number.
 * - "compensation": nodes / (1 - dead). Derived; no publication seen states it. With every bud dead there is none.
 */
export const INJURY_RULES = {
  "Cornell 2014": {
    source: "cornell2014",
    steps: [
      { to: 0.2, endsBefore: true, leave: asUsual },
      { from: 0.2, to: 0.8, leave: (dead) => 1 + dead },
      { from: 0.8, leave: "cornellAbove80" },
    ],
  },
  "MSU 2002": {
    source: "msu2002",
    steps: [
      { to: 0.15, leave: asUsual },
      { from: 0.15, to: 0.2, endsBefore: true, leave: "msuBetween15And20" },
      { from: 0.2, to: 0.5, leave: liveNodesAsPlanned },
      { from: 0.5, leave: "msuAbove50" },
    ],
  },
  Purdue: {
    source: "purdueDoublePruning",
    steps: [
      { to: 0.15, leave: asUsual },
      { from: 0.15, to: 0.35, leave: () => 1.35 },
      { from: 0.25, to: 0.5, leave: () => 1.5 },
      { from: 0.5, leave: "purdueAbove50" },
    ],
    twice: "purdueTwoRows",
  },
  "Northern Grapes 2014": {
    source: "northernGrapes2014",
    steps: [
      { to: 0.2, leave: asUsual },
      { from: 0.2, leave: "northernGrapesNoNumber" },
    ],
  },
  compensation: {
    source: "compensation",
    steps: [
      { to: 1, endsBefore: true, leave: liveNodesAsPlanned },
      { from: 1, leave: "allDead" },
    ],
  },
} as const satisfies Readonly<Record<string, InjuryRuleRow>>;

export type InjuryRule = keyof typeof INJURY_RULES;

/** Names of the injury rules, in the order of the table. */
export const INJURY_RULE_NAMES = Object.keys(INJURY_RULES) as readonly InjuryRule[];

/** The row of an injury rule. */
export const injuryRule = (rule: InjuryRule): InjuryRuleRow => INJURY_RULES[rule];

/**
 * The shares of dead buds at which a rule changes what it says.
 *
 * @example
 * edgesOfInjuryRule("Purdue") // [0.15, 0.25, 0.35, 0.5]
 */
export function edgesOfInjuryRule(rule: InjuryRule): readonly number[] {
  const ends = injuryRule(rule).steps.flatMap(({ from = 0, to = 1 }) => [from, to]);
  return [...new Set(ends)].filter((edge) => edge > 0 && edge < 1).sort((a, b) => a - b);
}
