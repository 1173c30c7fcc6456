/** Median and median absolute deviation, with a mean deviation for columns of few distinct values. */
export interface MiddleAndSpread {
  readonly median: number;
  /** Comparable with a standard deviation for normal values; zero only when all values are equal. */
  readonly spread: number;
  readonly count: number;
}

/** Makes the median absolute deviation comparable with a standard deviation: 1 / the 0.75 quantile of the normal. */
const DEVIATIONS_TO_SIGMA = 1.482602218505602;
/** The same for the mean absolute deviation: the square root of pi / 2. */
const MEAN_DEVIATION_TO_SIGMA = 1.2533141373155001;

/**
 * Middle and usual spread of values, hardly moved by single wild ones. Where more than half of the values are equal
 * the median deviation is zero and says nothing; then the mean deviation about the median is taken
 * (B. Iglewicz and D. C. Hoaglin 1993, How to Detect and Handle Outliers; from memory, unverified).
 *
 * @param values finite numbers; the list is used up
 */
export function middleAndSpread(values: Float64Array): MiddleAndSpread {
  const median = middleOf(values.sort());
  for (let i = 0; i < values.length; i++) values[i] = Math.abs(values[i] - median);
  const deviations = values.sort();
  const mad = middleOf(deviations);
  const spread =
    mad > 0
      ? mad * DEVIATIONS_TO_SIGMA
      : (deviations.reduce((sum, value) => sum + value, 0) / Math.max(1, deviations.length)) *
        MEAN_DEVIATION_TO_SIGMA;
  return { median, spread, count: values.length };
}

function middleOf(sorted: Float64Array): number {
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}
