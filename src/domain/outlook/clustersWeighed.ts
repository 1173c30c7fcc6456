import { mustBeWhole, mustLieBetween, Refusal } from "../refusal";
import type { Estimate } from "./estimate";

/**
 * Mean weight of a cluster from clusters that were weighed one by one, with Student's t.
 *
 * `weights`: kilograms, one a cluster, drawn from the whole block and from both sides of the row. 100 to 200 clusters are
 * advised at lag phase (Iowa State University Extension, Wine Grower News 247, 2013).
 *
 * Refuses (tooFewClusters) fewer than two.
 *
 * @example
 * clustersWeighed([0.08, 0.1, 0.12]).standardError // 0.011547
 */
export function clustersWeighed(weights: readonly number[]): Estimate {
  const n = weights.length;
  if (n < 2)
    throw new Refusal("notAvailable", "tooFewClusters", { argument: "cluster_weight", value: n, needed: 2 });
  let sum = 0;
  for (const weight of weights) sum += mustLieBetween("cluster_weight", weight, 0, 3, "kg");
  const mean = sum / n;
  const squares = weights.reduce((total, weight) => total + (weight - mean) ** 2, 0);
  return weighed(mean, Math.sqrt(squares / (n - 1)), n);
}

/**
 * The same from what a crew usually writes down: the mean weight and how many clusters were on the scale. The spread
 * between clusters is then a setting.
 *
 * `mean`: kilograms. `cv`: standard deviation between clusters over the mean, 0 to 2. `n`: clusters weighed, from 2.
 *
 * @example
 * clustersWeighedTogether(0.1, 0.4, 100).standardError // 0.004
 */
export function clustersWeighedTogether(mean: number, cv: number, n: number): Estimate {
  mustLieBetween("cluster_weight", mean, Number.MIN_VALUE, 3, "kg");
  mustLieBetween("cv", cv, 0, 2);
  mustBeWhole("clusters_weighed", n, 2, 1e6);
  return { ...weighed(mean, cv * mean, n), degrees: Infinity };
}

function weighed(mean: number, sd: number, n: number): Estimate {
  const sample = { unit: "clusters", n, of: Infinity } as const;
  return sd === 0
    ? { source: "clusterWeight", value: mean, standardError: 0, degrees: Infinity, law: "exact", sample }
    : {
        source: "clusterWeight",
        value: mean,
        standardError: sd / Math.sqrt(n),
        degrees: n - 1,
        law: "t",
        sample,
      };
}
