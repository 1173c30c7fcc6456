import { mustLieBetween } from "../refusal";
import { cropOutlook, type OutlookBlock, type StageFigures } from "./cropOutlook";
import type { Estimate, SampleSize } from "./estimate";
import type { Range } from "./productRange";

/** Minutes of one person for one more of what can be sampled. */
export type StepCosts = Readonly<Record<SampleSize["unit"], number>>;

/** One way to know the crop better, and what it would bring. */
export interface NextStep {
  readonly unit: SampleSize["unit"];
  /** How many more. */
  readonly more: number;
  readonly minutes: number;
  /** The block's crop with the range that would result, if the new figures are like the old. */
  readonly block: Range;
  readonly halfWidth: number;
  /** How much narrower the range gets, as a share of its width now. */
  readonly gain: number;
}

/**
 * What a given time would bring, spent on more vines, on more canes of cut buds, or on more weighed clusters: each with
 * the range that would result, best first. Sources that cannot be sampled before their time (the season's clusters a shoot,
 * the lag-phase multiplier) have no step; only a later stage narrows them.
 *
 * `figures`, `block`, `confidence`: as for cropOutlook. `costs`: minutes for one vine, cane, cluster, above 0.
 * `minutes`: time to spend, 1 to 10,000.
 *
 * @example
 * nextSteps({ stage: "clusters", clusters: vinesAtRandom([60, 75, 50, 81, 66, 70, 58, 62], 200), clusterWeight: clustersWeighedTogether(0.1, 0.4, 50) }, { planted: 200, bearing: exactly("missing", 1) }, 0.9, { vines: 3, canes: 4, clusters: 0.5 }, 60).map((step) => [step.unit, step.more]) // [["vines", 20], ["clusters", 120]]
 */
export function nextSteps(
  figures: StageFigures,
  block: OutlookBlock,
  confidence: number,
  costs: StepCosts,
  minutes: number,
): readonly NextStep[] {
  mustLieBetween("minutes", minutes, 1, 10000, "min");
  const now = cropOutlook(figures, block, confidence);
  return sampledUnits(figures)
    .flatMap((unit): NextStep[] => {
      const cost = mustLieBetween("minutes_each", costs[unit], Number.MIN_VALUE, 10000, "min");
      const more = Math.min(Math.floor(minutes / cost + 1e-9), left(figures, unit));
      if (more < 1) return [];
      const then = cropOutlook(withMore(figures, unit, more), block, confidence);
      return [
        {
          unit,
          more,
          minutes: more * cost,
          block: then.block,
          halfWidth: then.halfWidth,
          gain: now.halfWidth > 0 ? 1 - then.halfWidth / now.halfWidth : 0,
        },
      ];
    })
    .sort((one, other) => one.halfWidth - other.halfWidth);
}

const estimatesOf = (figures: StageFigures): [string, Estimate][] =>
  Object.entries(figures).filter((entry): entry is [string, Estimate] => typeof entry[1] === "object");

function sampledUnits(figures: StageFigures): SampleSize["unit"][] {
  return estimatesOf(figures).flatMap(([, { sample, standardError }]) =>
    sample && standardError > 0 ? [sample.unit] : [],
  );
}

const left = (figures: StageFigures, unit: SampleSize["unit"]) =>
  Math.max(
    ...estimatesOf(figures).map(([, { sample }]) => (sample?.unit === unit ? sample.of - sample.n : 0)),
  );

function withMore(figures: StageFigures, unit: SampleSize["unit"], more: number): StageFigures {
  const enlarged = estimatesOf(figures).map(([name, estimate]) => [name, enlarge(estimate, unit, more)]);
  return { ...figures, ...Object.fromEntries(enlarged) };
}

/** The estimate as it would be with more of the same: same value, same spread between single ones. */
function enlarge(estimate: Estimate, unit: SampleSize["unit"], more: number): Estimate {
  const { sample, standardError, degrees, shape } = estimate;
  if (sample?.unit !== unit || standardError === 0 || more === 0) return estimate;
  const n = sample.n + more;
  const growth = n / sample.n;
  const shrink = Math.sqrt((1 - n / sample.of) / (1 - sample.n / sample.of) / growth);
  const grown = { ...estimate, sample: { ...sample, n } };
  if (shape)
    return {
      ...grown,
      standardError: standardError * shrink,
      shape: { a: shape.a * growth, b: shape.b * growth },
    };
  return shrink > 0
    ? { ...grown, standardError: standardError * shrink, degrees: degrees * growth }
    : { ...grown, standardError: 0, degrees: Infinity, law: "exact" };
}
