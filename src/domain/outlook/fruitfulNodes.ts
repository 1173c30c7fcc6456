import { mustBeWhole, mustLieBetween, Refusal } from "../refusal";
import { betaEstimate, type Estimate } from "./estimate";

/** The nodes cut on one cane. */
export interface CaneCut {
  readonly nodes: number;
  /** Nodes with a live primary bud. */
  readonly primaries: number;
  /** Nodes whose primary is dead and whose secondary lives. */
  readonly secondariesOnly: number;
}

/**
 * What a node left is worth after the winter, in live primary nodes: 1 for a live primary bud, less for a dead primary
 * with a live secondary, nothing for a dead node. The primary carries 70 to 75 % of a node's crop (Wines & Vines, October
 * 2015, p. 76), so a secondary is worth about 0.275 / 0.725 = 0.38 of a primary; that ratio is derived, and cultivars
 * differ: Brianna's secondaries are very fruitful (Thull and Luby, University of Minnesota).
 *
 * `canes`: one entry a cane. Buds of one cane share its fate, so with three canes or more the doubt is taken from how canes
 * differ (ratio estimate, Cochran 1977, section 6.4), never below that of single buds drawn at random, with one degree of
 * freedom fewer than canes, on log(x / (1 - x)). It then holds the block's figure at least as often as it says, and more
 * often with fewer than six canes (npm run outlook:coverage). With one or two entries, or when every node is alike, it is that
 * of single buds: a beta distribution with half a live and half a dead bud added.
 * `secondaryWorth`: 0 to 1. `nodesAsOne`: nodes of a pooled count that tell as much as one drawn alone, 1 to 10: neighbours
 * share their fate, and where nobody wrote down which hung together the doubt of single buds is too small (Kish's design
 * effect, 1 + (nodes of a cane - 1) x their correlation).
 *
 * Refuses (noBudsCut) when no node was cut.
 *
 * @example
 * fruitfulNodes([{ nodes: 100, primaries: 65, secondariesOnly: 20 }], 0.38).value // 0.726
 * fruitfulNodes([{ nodes: 148, primaries: 133, secondariesOnly: 0 }], 0.38).standardError // 0.02493
 * fruitfulNodes([{ nodes: 100, primaries: 50, secondariesOnly: 0 }], 0.38, 1.7).standardError // 0.06455
 */
export function fruitfulNodes(canes: readonly CaneCut[], secondaryWorth: number, nodesAsOne = 1): Estimate {
  mustLieBetween("secondary_worth", secondaryWorth, 0, 1);
  mustLieBetween("nodes_as_one", nodesAsOne, 1, 10);
  let nodes = 0;
  let worth = 0;
  let squares = 0;
  for (const cane of canes) {
    nodes += mustBeWhole("cut", cane.nodes, 0, 1e6);
    mustBeWhole("primaries_alive", cane.primaries, 0, cane.nodes);
    mustBeWhole("secondaries_alive", cane.secondariesOnly, 0, cane.nodes - cane.primaries);
    worth += cane.primaries + secondaryWorth * cane.secondariesOnly;
    squares += cane.primaries + secondaryWorth * secondaryWorth * cane.secondariesOnly;
  }
  if (nodes === 0) throw new Refusal("notAvailable", "noBudsCut", { argument: "cut" });
  const value = worth / nodes;
  const cut = canes.filter((cane) => cane.nodes > 0);
  const sample = { unit: "canes", n: cut.length, of: Infinity } as const;

  const mean = (worth + 0.5) / (nodes + 1);
  const single = ((squares + 0.5) / (nodes + 1) - mean * mean) / (nodes + 2);
  if (cut.length >= FEWEST_CANES && value > 0 && value < 1)
    return {
      source: "buds",
      value,
      standardError: Math.sqrt(Math.max(single, varianceBetweenCanes(cut, secondaryWorth, value))),
      degrees: cut.length - 1,
      law: "logitT",
      sample,
    };
  const whole = Math.max(1, (mean * (1 - mean)) / (single * nodesAsOne) - 1);
  return { ...betaEstimate("buds", value, mean * whole, (1 - mean) * whole), sample };
}

const FEWEST_CANES = 3;

function varianceBetweenCanes(canes: readonly CaneCut[], secondaryWorth: number, ratio: number): number {
  const m = canes.length;
  const nodes = canes.reduce((sum, cane) => sum + cane.nodes, 0);
  const squares = canes.reduce(
    (sum, cane) => sum + (cane.primaries + secondaryWorth * cane.secondariesOnly - ratio * cane.nodes) ** 2,
    0,
  );
  return ((m / (m - 1)) * squares) / (nodes * nodes);
}
