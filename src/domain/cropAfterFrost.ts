import { mustLieBetween, mustBeWhole, Refusal } from "./refusal";

/**
 * Share of a full crop that is left after a spring frost, from a count of nodes by what still lives on each. A node whose
 * primary shoot lives bears 1, one with only its secondary bears `secondaryWorth`, one with only its tertiary and one
 * without a living shoot bear 0 (Howell, Michigan State, Estimating grapevine potential productivity after spring frost
 * or winter bud damage: 0.35 for Concord and Niagara). Used when frosted and shootless nodes are counted after budbreak.
 *
 * `primaries`, `secondaries`, `tertiaries`, `shootless`: whole numbers of nodes, each node counted once, by the best that
 * lives on it. `secondaryWorth`: 0 to 1; the source has a figure for Concord and Niagara alone, Norton's is about 0
 * (University of Missouri, Vinews 2023 No. 1).
 *
 * Refuses (noBudsCut) when no node was counted: a share of nothing says nothing.
 *
 * @example
 * cropAfterFrost(60, 30, 5, 5, 0.35) // 0.705
 * cropAfterFrost(0, 1, 2, 17, 0) // 0
 * cropAfterFrost(0, 0, 0, 0, 0.35) // Refusal noBudsCut
 */
export function cropAfterFrost(
  primaries: number,
  secondaries: number,
  tertiaries: number,
  shootless: number,
  secondaryWorth: number,
): number {
  mustBeWhole("primaries", primaries, 0, 1e6);
  mustBeWhole("secondaries", secondaries, 0, 1e6);
  mustBeWhole("tertiaries", tertiaries, 0, 1e6);
  mustBeWhole("shootless", shootless, 0, 1e6);
  mustLieBetween("secondary_worth", secondaryWorth, 0, 1);
  const nodes = primaries + secondaries + tertiaries + shootless;
  if (nodes === 0) throw new Refusal("notAvailable", "noBudsCut", { argument: "primaries" });
  return (primaries + secondaryWorth * secondaries) / nodes;
}
