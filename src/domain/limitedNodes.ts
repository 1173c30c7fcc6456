import { mustLieBetween, Refusal } from "./refusal";

/** A node budget after the limits, and which limit decided it. */
export interface LimitedNodes {
  readonly nodes: number;
  readonly limited: "least" | "most" | undefined;
}

/**
 * Holds a node budget within a least and a most number of nodes a vine, for young or weak vines and for strong ones.
 * Leave a limit out where none applies. No published limit was seen: limits often quoted (nothing below about a pound
 * of prunings, 50 to 60 nodes at most, Concord 90 and more) are from memory, unverified, and stand in Settings.
 *
 * Refuses (leastAboveMost) limits that contradict each other.
 *
 * @example
 * limitedNodes(72, 20, 60) // { nodes: 60, limited: "most" }
 * limitedNodes(12, 20, 60) // { nodes: 20, limited: "least" }
 * limitedNodes(45.5) // { nodes: 45.5, limited: undefined }
 */
export function limitedNodes(nodes: number, least = 0, most = Infinity): LimitedNodes {
  mustLieBetween("nodes", nodes, 0, Infinity);
  mustLieBetween("least", least, 0, Infinity);
  mustLieBetween("most", most, 0, Infinity);
  if (least > most) throw new Refusal("invalid", "leastAboveMost", { argument: "least", least, most });
  if (nodes < least) return { nodes: least, limited: "least" };
  if (nodes > most) return { nodes: most, limited: "most" };
  return { nodes, limited: undefined };
}
