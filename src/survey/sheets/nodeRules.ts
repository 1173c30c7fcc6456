import { balancedFormula } from "../../domain/balancedFormula";
import { nodeBudget, type BelowOnePound } from "../../domain/nodeBudget";
import { nodesByLength } from "../../domain/nodesByLength";
import { Refusal } from "../../domain/refusal";
import type { Kilograms, Metres, PerMetre } from "../../domain/units";
import { wordKey } from "./words";

/** What is known of the vine whose nodes are budgeted, and the figures of Settings that the rules use. */
export interface VineToBudget {
  /** Prunings of the vine itself, where it was weighed. */
  readonly ownPrunings?: Kilograms;
  /** Mean of the weighed vines of its block. */
  readonly blockPrunings?: Kilograms;
  /** NaN where the block names none. */
  readonly vineSpacing: Metres;
  readonly nodesByLength: PerMetre;
  readonly belowOnePound: BelowOnePound;
}

/** ownPrunings: this vine was weighed. blockMean: the mean of the weighed vines of its block. */
export type BudgetBasis = "ownPrunings" | "blockMean" | "length" | "fixed";

/** All that a way of budgeting nodes decides. */
interface NodeRuleRow {
  /** As a person writes it. */
  readonly written: string;
  /** Rules of this kind that a publication gives, for holding a block's own against. */
  readonly published: readonly string[];
  /** True where every spelling is the same rule; formulas and numbers differ. */
  readonly isOneRule: boolean;
  readonly understands: (text: string) => boolean;
  readonly basis: (vine: VineToBudget) => BudgetBasis;
  /** Nodes of an uninjured vine; refuses where the vine lacks what the rule needs. */
  readonly nodes: (text: string, vine: VineToBudget) => number;
}

const BY_LENGTH = ["by length", "por longitud", "por largo", "par longueur"];

const BALANCED: NodeRuleRow = {
  written: "30+10",
  published: ["30+10", "20+10", "20+20"],
  isOneRule: false,
  understands: (text) => {
    try {
      return balancedFormula(text).first > 0;
    } catch {
      return false;
    }
  },
  basis: ({ ownPrunings }) => (ownPrunings === undefined ? "blockMean" : "ownPrunings"),
  nodes: (text, { ownPrunings, blockPrunings, belowOnePound }) => {
    const formula = balancedFormula(text);
    const prunings = ownPrunings ?? blockPrunings;
    if (prunings === undefined) throw new Refusal("notAvailable", "noVineWeighed");
    return nodeBudget(prunings, formula, belowOnePound);
  },
};

/**
 * How a block's nodes are budgeted: by the vine's prunings, by its length of wire, or a fixed number. The published
 * formulas are those of Smith, Ohio State University 2023, for American grapes, French hybrids and new hybrids.
 */
export const NODE_RULES: readonly NodeRuleRow[] = [
  BALANCED,
  {
    written: BY_LENGTH[0],
    published: [BY_LENGTH[0]],
    isOneRule: true,
    understands: (text) => BY_LENGTH.includes(wordKey(text)),
    basis: () => "length",
    nodes: (_, { vineSpacing, nodesByLength: density }) => {
      if (!(vineSpacing > 0)) throw new Refusal("notAvailable", "noVineSpacing");
      return nodesByLength(vineSpacing, density);
    },
  },
  {
    written: "40",
    published: [],
    isOneRule: false,
    understands: (text) => /^\d{1,3}$/.test(text.trim()),
    basis: () => "fixed",
    nodes: (text) => Number(text),
  },
];

/** Forms of a text of which a cell or setting takes one. */
export interface TextForms {
  /** One example of each, as a person writes it. */
  readonly written: readonly string[];
  readonly understands: (text: string) => boolean;
}

/**
 * What a node rule may read like.
 *
 * @example
 * NODE_RULE_FORMS.understands("by length") // true
 * NODE_RULE_FORMS.understands("30-10") // false
 */
export const NODE_RULE_FORMS: TextForms = {
  written: NODE_RULES.map((rule) => rule.written),
  understands: (text) => NODE_RULES.some((rule) => rule.understands(text)),
};

/**
 * True for a rule by the weight of prunings, such as 30+10.
 *
 * @example
 * isBalancedRule("by length") // false
 */
export const isBalancedRule = (text: string) => BALANCED.understands(text);

/** The row of the table that a text reads as; a text that reads as none is refused as a formula. */
export const nodeRule = (text: string): NodeRuleRow =>
  NODE_RULES.find((rule) => rule.understands(text)) ?? BALANCED;
