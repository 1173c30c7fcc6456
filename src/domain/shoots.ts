import { mustLieBetween } from "./refusal";

/** Shoots of a vine, by where they come from. */
export interface Shoots {
  /** From counted nodes. */
  readonly count: number;
  /** From basal and other nodes that are not counted. */
  readonly basal: number;
  readonly total: number;
}

/**
 * Shoots to expect from the spurs left on a vine: count shoots from the nodes of the spurs, and basal (non-count)
 * shoots from the compressed buds at their base.
 *
 * `spurs`: live spurs left. `nodesPerSpur`: count nodes on each. `budbreak`: share of count nodes that grow a shoot,
 * 0 to 1. `basalShoots`: non-count shoots on each spur, 0 to 5, default none. Common practice: a two-node spur gives two
 * shoots; the basal bud is not counted (Oregon State University Extension, "How to spur prune grapevines").
 *
 * A share of shoots over nodes on the whole vine can hide blind nodes: 50-node vines of Sauvignon blanc had 7.6 blind
 * nodes and still as many shoots as nodes, from non-count buds (OENO One, article 5530). Keep the two apart.
 *
 * @example
 * shoots(24, 2, 0.75) // { count: 36, basal: 0, total: 36 }
 * shoots(12, 2, 0.9, 0.5) // { count: 21.6, basal: 6, total: 27.6 }
 */
export function shoots(spurs: number, nodesPerSpur: number, budbreak: number, basalShoots = 0): Shoots {
  mustLieBetween("spurs", spurs, 0, 500);
  mustLieBetween("nodes_per_spur", nodesPerSpur, 0, 15);
  mustLieBetween("budbreak", budbreak, 0, 1);
  mustLieBetween("basal_shoots", basalShoots, 0, 5);
  const count = spurs * nodesPerSpur * budbreak;
  const basal = spurs * basalShoots;
  return { count, basal, total: count + basal };
}
