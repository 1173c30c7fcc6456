import { mustLieBetween } from "../refusal";
import { vinesToCount } from "../vinesToCount";
import { cropOutlook, type OutlookBlock, type StageFigures } from "./cropOutlook";
import { betaEstimate, type Estimate, type SampleSize } from "./estimate";
import type { Range } from "./productRange";

/** Minutes of one person for one more of what can be sampled. */
export type StepCosts = Readonly<Record<SampleSize["unit"], number>>;

/** What a step must keep to so that it is advised. */
export interface StepLimits {
  /** Time of one person to spend, 1 to 10,000. */
  readonly minutes: number;
  /** A step that narrows the range by a smaller share of its width is not worth that time; 0 to 1. */
  readonly leastGain: number;
  /** Margin of a count of vines as it is planned: no more vines are advised than that plan has; above 0. */
  readonly margin: number;
}

/** One way to know the crop better, and what it would bring. */
export interface NextStep {
  readonly unit: SampleSize["unit"];
  /** How many more. */
  readonly more: number;
  readonly minutes: number;
  /** The block's crop with the range that would result, if the new figures are like the old. */
  readonly block: Range;
  /** The same by area, where the vines a hectare are known. */
  readonly perHectare?: Range;
  readonly halfWidth: number;
  /** How much narrower the range gets, as a share of its width now. */
  readonly gain: number;
}

/**
 * What a given time would bring, spent on more vines, on more canes of cut buds, or on more weighed clusters: each with
 * the range that would result, best first. Sources that cannot be sampled before their time (the season's clusters a shoot,
 * the lag-phase multiplier) have no step; only a later stage narrows them. A step that narrows less than its time is worth
 * is left out, and so are vines beyond those that a count for the margin needs (vinesToCount).
 *
 * `figures`, `block`, `confidence`: as for cropOutlook. `costs`: minutes for one vine, cane, cluster, above 0.
 *
 * @example
 * nextSteps({ stage: "clusters", clusters: vinesAtRandom([60, 75, 50, 81, 66, 70, 58, 62], 200), clusterWeight: clustersWeighedTogether(0.1, 0.4, 50) }, { planted: 200, bearing: exactly("missing", 1) }, 0.9, { vines: 3, canes: 4, clusters: 0.5 }, { minutes: 60, leastGain: 0, margin: 0.05 }).map((step) => [step.unit, step.more]) // [["vines", 16], ["clusters", 120]]
 */
export function nextSteps(
  figures: StageFigures,
  block: OutlookBlock,
  confidence: number,
  costs: StepCosts,
  { minutes, leastGain, margin }: StepLimits,
): readonly NextStep[] {
  mustLieBetween("minutes", minutes, 1, 10000, "min");
  const now = cropOutlook(figures, block, confidence);
  return sampledUnits(figures)
    .flatMap((unit): NextStep[] => {
      const cost = mustLieBetween("minutes_each", costs[unit], Number.MIN_VALUE, 10000, "min");
      const more = Math.min(Math.floor(minutes / cost + 1e-9), left(figures, unit, margin, confidence));
      if (more < 1) return [];
      const then = cropOutlook(withMore(figures, unit, more), block, confidence);
      return [
        {
          unit,
          more,
          minutes: more * cost,
          block: then.block,
          ...(then.perHectare === undefined ? {} : { perHectare: then.perHectare }),
          halfWidth: then.halfWidth,
          gain: now.halfWidth > 0 ? 1 - then.halfWidth / now.halfWidth : 0,
        },
      ];
    })
    .filter(({ gain }) => gain >= leastGain)
    .sort((one, other) => one.halfWidth - other.halfWidth);
}

const estimatesOf = (figures: StageFigures): [string, Estimate][] =>
  Object.entries(figures).filter((entry): entry is [string, Estimate] => typeof entry[1] === "object");

/**
 * The units of a stage's figures of which more can be sampled.
 *
 * @example
 * sampledUnits({ stage: "clusters", clusters: vinesAtRandom([60, 75, 50, 81, 66], 200), clusterWeight: exactly("clusterWeight", 0.1) }) // ["vines"]
 */
export function sampledUnits(figures: StageFigures): SampleSize["unit"][] {
  return estimatesOf(figures).flatMap(([, { sample, standardError }]) =>
    sample && standardError > 0 ? [sample.unit] : [],
  );
}

function left(figures: StageFigures, unit: SampleSize["unit"], margin: number, confidence: number): number {
  const open = estimatesOf(figures).map(([, { sample, standardError, value }]) => {
    if (sample?.unit !== unit) return 0;
    const { n, of } = sample;
    if (unit !== "vines") return Infinity;
    const cv = (standardError / value) * Math.sqrt(n / (1 - n / of));
    return Math.min(of, vinesToCount(cv, margin, of, confidence).vines) - n;
  });
  return Math.max(...open);
}

function withMore(figures: StageFigures, unit: SampleSize["unit"], more: number): StageFigures {
  const enlarged = estimatesOf(figures).map(([name, estimate]) => [name, enlarge(estimate, unit, more)]);
  return { ...figures, ...Object.fromEntries(enlarged) };
}

/** The estimate as it would be with more of the same: same value, same spread between single ones. */
function enlarge(estimate: Estimate, unit: SampleSize["unit"], more: number): Estimate {
  const { sample, source, value, standardError, degrees, shape } = estimate;
  if (sample?.unit !== unit) return estimate;
  const n = sample.n + more;
  const growth = n / sample.n;
  if (shape) return betaEstimate(source, value, shape.a * growth, shape.b * growth);
  const shrink = Math.sqrt((1 - n / sample.of) / (1 - sample.n / sample.of) / growth);
  return { ...estimate, standardError: standardError * shrink, degrees: degrees * growth };
}
