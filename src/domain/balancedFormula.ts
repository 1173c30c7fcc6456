import { Refusal } from "./refusal";

/** A balanced pruning formula: nodes for the first pound of prunings and for each pound above it. */
export interface BalancedFormula {
  /** Nodes left for the first pound (454 g) of one-year prunings. */
  readonly first: number;
  /** Nodes left for each further pound. */
  readonly additional: number;
}

/**
 * Reads a balanced pruning formula as the trade writes it: "30+10" is 30 nodes for the first pound of one-year
 * prunings and 10 for each further pound. Formulas by grape type: Smith, Ohio State University 2023 (after the
 * Midwest Grape Production Guide, Bulletin 919): American 30+10, French hybrids 20+10, new hybrids 20+20.
 *
 * Refuses (formulaNotBalanced) any text that is not two whole numbers joined by a plus sign, and numbers above 200.
 *
 * @example
 * balancedFormula("30+10") // { first: 30, additional: 10 }
 * balancedFormula(" 20 + 20 ") // { first: 20, additional: 20 }
 * balancedFormula("30-10") // Refusal formulaNotBalanced
 */
export function balancedFormula(text: string): BalancedFormula {
  const parts = /^\s*(\d{1,3})\s*\+\s*(\d{1,3})\s*$/.exec(text);
  const first = Number(parts?.[1]);
  const additional = Number(parts?.[2]);
  if (!(first >= 1 && first <= 200 && additional <= 200))
    throw new Refusal("invalid", "formulaNotBalanced", { argument: "formula", value: text });
  return { first, additional };
}
