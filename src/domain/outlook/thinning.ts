import { mustBeWhole, mustLieBetween } from "../refusal";

/** Vines that carry about the same: a row, a stretch of good soil, a third of the counted vines. */
export interface ThinningGroup {
  readonly name: string;
  /** Bearing vines. */
  readonly vines: number;
  /** Mean clusters on a vine. */
  readonly clusters: number;
}

/** What to do on the vines of one group. */
export interface GroupThinning extends ThinningGroup {
  /** Clusters to take off each vine. */
  readonly remove: number;
  /** Clusters left on each. */
  readonly left: number;
  readonly hours: number;
}

/** Thinning of a block. */
export interface Thinning {
  /** Most clusters that any vine keeps; Infinity when nothing has to go. */
  readonly keep: number;
  readonly groups: readonly GroupThinning[];
  readonly hours: number;
  /** Clusters left in the block. */
  readonly left: number;
}

/**
 * Clusters to take off the vines of each group so that the block comes to its target: every vine keeps at most the same
 * whole number of clusters, the largest for which the block stays at or under the clusters allowed. Vines that carry fewer
 * are left alone, so that heavy vines may keep what light ones lack.
 *
 * `groups`: all bearing vines of the block. `clustersAllowed`: target crop of the block over the weight of a cluster.
 * `minutesPerVine`: minutes one person needs for a vine that is thinned.
 *
 * @example
 * thinning([{ name: "light", vines: 50, clusters: 40 }, { name: "heavy", vines: 50, clusters: 80 }], 5000, 3).keep // 60
 * thinning([{ name: "light", vines: 50, clusters: 40 }, { name: "heavy", vines: 50, clusters: 80 }], 5000, 3).groups.map((group) => [group.remove, group.hours]) // [[0, 0], [20, 2.5]]
 */
export function thinning(
  groups: readonly ThinningGroup[],
  clustersAllowed: number,
  minutesPerVine: number,
): Thinning {
  mustLieBetween("clusters_allowed", clustersAllowed, 0, 1e10);
  mustLieBetween("minutes", minutesPerVine, 0, 240, "min");
  let most = 0;
  for (const group of groups) {
    mustBeWhole("vines", group.vines, 0, 1e7);
    most = Math.max(most, mustLieBetween("clusters", group.clusters, 0, 30000));
  }
  const kept = (keep: number) => groups.reduce((sum, group) => sum + group.vines * left(group, keep), 0);
  let keep = Infinity;
  if (kept(Infinity) > clustersAllowed * (1 + 1e-12)) {
    let low = 0;
    let high = Math.ceil(most);
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2);
      if (kept(middle) <= clustersAllowed * (1 + 1e-12)) low = middle;
      else high = middle;
    }
    keep = low;
  }
  const done = groups.map((group): GroupThinning => {
    const remove = group.clusters - left(group, keep);
    return {
      ...group,
      remove,
      left: left(group, keep),
      hours: remove > 0 ? (group.vines * minutesPerVine) / 60 : 0,
    };
  });
  return {
    keep,
    groups: done,
    hours: done.reduce((sum, group) => sum + group.hours, 0),
    left: kept(keep),
  };
}

/** Whole clusters are taken off, but no more than hang: a mean of 70.4 with 52 allowed loses 19, with none allowed 70.4. */
const left = ({ clusters }: ThinningGroup, keep: number) =>
  clusters <= keep ? clusters : Math.max(0, clusters - Math.ceil(clusters - keep - 1e-9));

/**
 * Parts counted vines into groups of equal size from the lightest to the heaviest, each standing for its share of the
 * block's bearing vines.
 *
 * `counts`: clusters of each counted vine, at least one for each group. `vines`: bearing vines of the block. `names`: a name
 * for each group.
 *
 * @example
 * thinningGroups([30, 70, 50, 40, 60, 80], 120, ["light", "heavy"]) // [{ name: "light", vines: 60, clusters: 40 }, { name: "heavy", vines: 60, clusters: 70 }]
 */
export function thinningGroups(
  counts: readonly number[],
  vines: number,
  names: readonly string[],
): readonly ThinningGroup[] {
  mustBeWhole("vines", vines, counts.length, 1e7);
  const sorted = [...counts].sort((one, other) => one - other);
  const cut = (part: number, of: number) => Math.round((part * of) / names.length);
  return names.map((name, at) => {
    const part = sorted.slice(cut(at, sorted.length), cut(at + 1, sorted.length));
    const clusters =
      part.reduce((sum, count) => sum + mustLieBetween("clusters", count, 0, 30000), 0) / part.length;
    return { name, vines: cut(at + 1, vines) - cut(at, vines), clusters };
  });
}
