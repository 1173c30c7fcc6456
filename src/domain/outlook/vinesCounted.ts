import { mustBeWhole, mustLieBetween, Refusal } from "../refusal";
import type { Estimate } from "./estimate";

/** Counts of the vines drawn from one stratum, usually a row. */
export interface Stratum {
  /** Bearing vines of the stratum. */
  readonly vines: number;
  readonly counts: readonly number[];
}

/**
 * Mean of a block from vines drawn at random out of the whole block, with the finite block taken into account
 * (Cochran 1977, Sampling Techniques, section 2.6).
 *
 * `counts`: one number a bearing vine, not negative; missing vines are no counts. `vines`: bearing vines of the block.
 *
 * Refuses (tooFewVines) fewer than two counts.
 *
 * @example
 * vinesAtRandom([40, 50, 60], 100).standardError // 5.6862
 * vinesAtRandom([40, 50, 60], 3).law // "exact"
 */
export function vinesAtRandom(counts: readonly number[], vines = Infinity): Estimate {
  const n = counts.length;
  if (n < 2) throw new Refusal("notAvailable", "tooFewVines", { argument: "counts", value: n, needed: 2 });
  if (vines !== Infinity) mustBeWhole("vines", vines, n, 1e7);
  const { mean, variance } = meanAndVariance(counts);
  return ofVines(mean, Math.sqrt((variance * (1 - n / vines)) / n), n - 1, n, vines);
}

/**
 * Mean of a block from vines drawn row by row, each row a stratum (Cochran 1977, sections 5.3 to 5.4): what differs
 * between rows no longer counts as doubt. Rows with fewer than two counts are put together with the rows beside them
 * (collapsed strata, section 5A.12), which errs on the wide side. Degrees of freedom after Satterthwaite 1946,
 * Biometrics Bulletin 2:110-114, with each squared variance divided by its degrees plus two and two taken off the result:
 * the plain form squares an estimate, which with two vines a row makes the degrees far too few.
 *
 * `strata`: in the order of the rows; every bearing vine of the block belongs to one.
 *
 * Refuses (tooFewVines) fewer than two counts in all.
 *
 * @example
 * vinesByRow([{ vines: 50, counts: [40, 42] }, { vines: 50, counts: [60, 62] }]).value // 51
 * vinesByRow([{ vines: 50, counts: [40, 42] }, { vines: 50, counts: [60, 62] }]).standardError // 0.69282
 */
export function vinesByRow(strata: readonly Stratum[]): Estimate {
  const n = strata.reduce((sum, { counts }) => sum + counts.length, 0);
  if (n < 2) throw new Refusal("notAvailable", "tooFewVines", { argument: "counts", value: n, needed: 2 });
  for (const { vines, counts } of strata) mustBeWhole("vines", vines, counts.length, 1e7);
  const groups = collapsed(strata);
  const vines = groups.reduce((sum, group) => sum + group.vines, 0);
  let mean = 0;
  let variance = 0;
  let squares = 0;
  for (const group of groups) {
    const share = group.vines / vines;
    const drawn = group.counts.length;
    const own = meanAndVariance(group.counts);
    const part = (share * share * own.variance * (1 - drawn / group.vines)) / drawn;
    mean += share * own.mean;
    variance += part;
    squares += (part * part) / (drawn + 1);
  }
  const most = Math.max(1, n - groups.length);
  const degrees = Math.min(most, Math.max(1, (variance * variance) / squares - 2));
  return ofVines(mean, Math.sqrt(variance), degrees, n, vines);
}

/** With fewer counts the spread between vines is borrowed. */
export const SMALLEST_PILOT = 5;

/**
 * Mean of a block from vines too few to show how far they differ (fewer than SMALLEST_PILOT): the spread between vines is
 * taken as known, so that two vines counted alike are not taken for a block of vines alike.
 *
 * `cv`: standard deviation between vines over the mean, 0 to 3. `vines`: bearing vines of the block.
 *
 * Refuses (tooFewVines) fewer than two counts.
 *
 * @example
 * fewVines([40, 40], 100, 0.43).standardError // 12.04
 * fewVines([40, 50], 2, 0.43).law // "exact"
 */
export function fewVines(counts: readonly number[], vines: number, cv: number): Estimate {
  mustLieBetween("cv", cv, 0, 3);
  const { value } = vinesAtRandom(counts, vines);
  const n = counts.length;
  return ofVines(value, cv * value * Math.sqrt((1 - n / vines) / n), Infinity, n, vines);
}

/** Puts rows with fewer than two counts together with the next, the last ones with the one before. */
function collapsed(strata: readonly Stratum[]): readonly Stratum[] {
  const groups: Stratum[] = [];
  let open: Stratum = { vines: 0, counts: [] };
  for (const { vines, counts } of strata) {
    open = { vines: open.vines + vines, counts: [...open.counts, ...counts] };
    if (open.counts.length < (open.vines === 1 ? 1 : 2)) continue;
    groups.push(open);
    open = { vines: 0, counts: [] };
  }
  if (open.vines === 0) return groups;
  const last = groups.pop()!;
  return [...groups, { vines: last.vines + open.vines, counts: [...last.counts, ...open.counts] }];
}

function meanAndVariance(counts: readonly number[]): { mean: number; variance: number } {
  const n = counts.length;
  let sum = 0;
  for (const count of counts) sum += mustLieBetween("counts", count, 0, 1e6);
  const mean = sum / n;
  let squares = 0;
  for (const count of counts) squares += (count - mean) ** 2;
  return { mean, variance: n > 1 ? squares / (n - 1) : 0 };
}

function ofVines(value: number, standardError: number, degrees: number, n: number, of: number): Estimate {
  const sample = { unit: "vines", n, of } as const;
  return standardError === 0
    ? { source: "vines", value, standardError, degrees: Infinity, law: "exact", sample }
    : { source: "vines", value, standardError, degrees, law: "t", sample };
}
