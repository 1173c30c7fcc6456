import { mustLieBetween } from "../refusal";
import { exactly, type Estimate } from "./estimate";
import { fruitfulNodes, type CaneCut } from "./fruitfulNodes";

/** Shoots that come from no counted node, and what they bear. */
export interface BasalShoots {
  /** For each count node left. */
  readonly perNode: number;
  /** Clusters of one over those of a shoot from a primary bud, 0 to 1. */
  readonly worth: number;
}

/**
 * What a shoot counted after budbreak is worth in shoots from primary buds, from the same bud cuts as in winter: after a hard
 * winter many of the shoots come from secondary and basal buds and bear less. In Clayton, New York, in 2014 only 25 to 65 % of
 * the shoots carried clusters (Martinson, Cornell, Northern New York Grape Update, 7 Jul 2014).
 *
 * `canes`, `secondaryWorth`: as for fruitfulNodes; dead nodes grow no shoot and do not count here. `budbreak`: share of live
 * nodes that grew. `basal`: default none.
 *
 * Refuses (noBudsCut) when no node that lives was cut.
 *
 * @example
 * worthOfShoots([{ nodes: 100, primaries: 40, secondariesOnly: 30 }], 0.38, 0.9).value // 0.734
 * worthOfShoots([{ nodes: 100, primaries: 40, secondariesOnly: 30 }], 0.38, 1, { perNode: 0.3, worth: 0.5 }).value // 0.664
 * worthOfShoots([{ nodes: 100, primaries: 0, secondariesOnly: 0 }], 0.38, 0.9) // Refusal noBudsCut
 */
export function worthOfShoots(
  canes: readonly CaneCut[],
  secondaryWorth: number,
  budbreak: number,
  basal: BasalShoots = { perNode: 0, worth: 0 },
): Estimate {
  mustLieBetween("budbreak", budbreak, 0, 1);
  mustLieBetween("basal_shoots", basal.perNode, 0, 5);
  mustLieBetween("basal_worth", basal.worth, 0, 1);
  const live = canes.map(({ primaries, secondariesOnly }) => ({
    nodes: primaries + secondariesOnly,
    primaries,
    secondariesOnly,
  }));
  const alive = live.reduce((sum, { nodes }) => sum + nodes, 0);
  const counted = fruitfulNodes(live, secondaryWorth);
  const shootsANode = (alive / canes.reduce((sum, { nodes }) => sum + nodes, 0)) * budbreak;
  const all = shootsANode + basal.perNode;
  if (basal.perNode === 0) return counted;
  const value = (shootsANode * counted.value + basal.perNode * basal.worth) / all;
  const standardError = (counted.standardError * shootsANode) / all;
  if (value <= 0 || value >= 1) return exactly("buds", value);
  return {
    source: "buds",
    value,
    standardError,
    degrees: counted.degrees,
    law: "logitT",
    sample: counted.sample!,
  };
}
