import type { Random } from "../random";
import { mustBeWhole } from "../refusal";

/** The bearing vines of one row, by their numbers. */
export interface RowOfVines {
  readonly row: number;
  readonly vines: readonly number[];
}

/** One vine to count. */
export interface PlannedVine {
  readonly row: number;
  readonly vine: number;
}

/**
 * Which vines to count: drawn at random, spread over the rows in proportion to their bearing vines, in the order of a walk
 * up one row and down the next. Every bearing vine has the same chance. Rows get their numbers by a systematic draw with a
 * random start, so that none is off by a whole vine; within a row the vines are a simple random sample. Treat the rows as
 * strata afterwards (vinesByRow).
 *
 * `rows`: in the order of the walk; missing vines are not in them. `vines`: how many to draw, at most as many as there are.
 * `random`: source of random numbers; the same seed makes the same plan again.
 *
 * @example
 * samplingPlan([{ row: 1, vines: [1, 2, 3, 4] }, { row: 2, vines: [1, 2, 4] }], 7, seededRandom(5)).map(({ row, vine }) => [row, vine]) // [[1, 1], [1, 2], [1, 3], [1, 4], [2, 4], [2, 2], [2, 1]]
 */
export function samplingPlan(
  rows: readonly RowOfVines[],
  vines: number,
  random: Random,
): readonly PlannedVine[] {
  const all = rows.reduce((sum, row) => sum + row.vines.length, 0);
  mustBeWhole("vines", vines, 1, all);
  const interval = all / vines;
  let next = random() * interval;
  let passed = 0;
  let walked = 0;
  return rows.flatMap(({ row, vines: bearing }) => {
    passed += bearing.length;
    let share = 0;
    while (next < passed && share < bearing.length) {
      share++;
      next += interval;
    }
    if (share === 0) return [];
    const drawn = drawWithout(bearing, share, random).sort((one, other) => one - other);
    if (walked++ % 2 === 1) drawn.reverse();
    return drawn.map((vine) => ({ row, vine }));
  });
}

function drawWithout(vines: readonly number[], n: number, random: Random): number[] {
  const pool = [...vines];
  for (let index = 0; index < n; index++) {
    const other = index + Math.floor(random() * (pool.length - index));
    [pool[index], pool[other]] = [pool[other], pool[index]];
  }
  return pool.slice(0, n);
}
