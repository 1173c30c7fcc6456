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
 * @param values finite numbers; the list is sorted
 */
export function middleAndSpread(values: Float64Array): MiddleAndSpread {
  const sorted = values.sort();
  const median = middleOf(sorted);
  const mad = medianDeviation(sorted, median);
  const spread =
    mad > 0 ? mad * DEVIATIONS_TO_SIGMA : meanDeviation(sorted, median) * MEAN_DEVIATION_TO_SIGMA;
  return { median, spread, count: values.length };
}

/** Median of the distances from the median, met from there outwards. */
function medianDeviation(sorted: Float64Array, median: number): number {
  const half = sorted.length >> 1;
  let below = half - 1;
  let above = half;
  let last = NaN;
  let before = NaN;
  for (let met = 0; met <= half && met < sorted.length; met++) {
    const under = below < 0 ? Infinity : Math.abs(sorted[below] - median);
    const over = above < sorted.length ? Math.abs(sorted[above] - median) : Infinity;
    before = last;
    if (under < over) {
      last = under;
      below--;
    } else {
      last = over;
      above++;
    }
  }
  return sorted.length % 2 === 1 ? last : (before + last) / 2;
}

function meanDeviation(values: Float64Array, median: number): number {
  const deviations = values.map((value) => Math.abs(value - median)).sort();
  return deviations.reduce((sum, value) => sum + value, 0) / Math.max(1, deviations.length);
}

function middleOf(sorted: Float64Array): number {
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}
