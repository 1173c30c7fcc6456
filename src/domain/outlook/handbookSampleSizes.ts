import { mustBeWhole } from "../refusal";

/** What one published source says to count. */
export interface HandbookSample {
  /** Id in SOURCES. */
  readonly source: string;
  readonly vines: readonly [least: number, most: number] | undefined;
  readonly clusters: readonly [least: number, most: number] | undefined;
  /** Margin that the source promises for it; undefined where it promises none. */
  readonly margin: number | undefined;
}

/**
 * Sample for a share of one half within five points at 95 % (Krejcie and Morgan 1970, Educational and Psychological
 * Measurement 30:607-610): X2 N p q / (e2 (N - 1) + X2 p q) with X2 = 3.841, rounded to the nearest whole number as their
 * table is. A handbook prints its 260 of 800 vines as the sample "for 5 % error" (Washington State University 2006); it
 * knows nothing of how vines differ and is the wrong formula for a mean. For comparison only; use vinesToCount.
 *
 * @example
 * sampleForAShare(800) // 260
 */
export function sampleForAShare(population: number): number {
  mustBeWhole("vines", population, 1, 1e7);
  return Math.round((3.841 * population * 0.25) / (0.0025 * (population - 1) + 3.841 * 0.25));
}

/**
 * What the handbooks say to count in a block of the given size, to show beside the calculated number of vines.
 *
 * @example
 * handbookSampleSizes(800)[0] // { source: "wsu2006", vines: [260, 260], clusters: undefined, margin: 0.05 }
 */
export function handbookSampleSizes(vines: number): readonly HandbookSample[] {
  const share = sampleForAShare(vines);
  return [
    { source: "wsu2006", vines: [share, share], clusters: undefined, margin: 0.05 },
    { source: "iowa2011", vines: [10, 15], clusters: [100, 100], margin: 0.15 },
    { source: "iowa2013", vines: undefined, clusters: [100, 200], margin: undefined },
  ];
}
