import { mustBeWhole, mustLieBetween } from "./refusal";
import type { Metres } from "./units";

/** What a node budget asks of the wire, against what fits on it. */
export interface SpurFit {
  /** Whole spurs that the budget needs. */
  readonly spursWanted: number;
  /** Whole spurs for which the cordon has room. */
  readonly spursThatFit: number;
  /** Nodes of the budget that find no place; 0 when all do. */
  readonly nodesShort: number;
}

/**
 * Compares a node budget with the spurs for which the cordon has room: spurs wanted (rounded up), spurs that fit
 * (rounded down), nodes short. Used before deciding on longer spurs or on laying a cane.
 *
 * `nodes`: node budget of the vine. `nodesPerSpur`: count nodes left on a spur; two is common practice. `length`: metres
 * of one cordon. `spacing`: metres of cordon for each spur. `cordons`: how many cordons of that length the vine has;
 * each is filled on its own, so room for half a spur on either side is not room for one.
 *
 * Published spacings: one spur every 3 to 5 in (Klodd, University of Minnesota Extension 2022), 3 to 8 in (NC State
 * Extension), one hand's width (Westover 2016). At 5 to 6 in a 3 ft cordon holds 6 to 7 spurs.
 *
 * @example
 * spurFit(40, 2, metresFromFeet(3), metresFromInches(6), 2) // { spursWanted: 20, spursThatFit: 12, nodesShort: 16 }
 * spurFit(40, 2, metresFromFeet(3), metresFromInches(5), 2) // { spursWanted: 20, spursThatFit: 14, nodesShort: 12 }
 * spurFit(24, 2, metresFromFeet(6), metresFromInches(4)) // { spursWanted: 12, spursThatFit: 18, nodesShort: 0 }
 */
export function spurFit(
  nodes: number,
  nodesPerSpur: number,
  length: Metres,
  spacing: Metres,
  cordons = 1,
): SpurFit {
  mustLieBetween("nodes", nodes, 0, 1000);
  mustLieBetween("nodes_per_spur", nodesPerSpur, 0.5, 15);
  mustLieBetween("length", length, 0, 100, "m");
  mustLieBetween("spacing", spacing, 0.01, 2, "m");
  mustBeWhole("cordons", cordons, 1, 20);
  const spursThatFit = cordons * Math.floor(length / spacing + SLACK);
  return {
    spursWanted: Math.ceil(nodes / nodesPerSpur - SLACK),
    spursThatFit,
    nodesShort: Math.max(0, nodes - spursThatFit * nodesPerSpur),
  };
}

/** Part of a spur below which a remainder is the arithmetic of feet and metres, not wood. */
const SLACK = 1e-9;
