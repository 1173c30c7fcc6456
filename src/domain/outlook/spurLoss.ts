import { mustBeWhole, mustLieBetween, Refusal } from "../refusal";
import { tQuantile } from "../statistics/tQuantile";
import type { Range } from "./productRange";

/** Live spurs of one row in one winter. */
export interface RowSeason {
  readonly row: number;
  readonly year: number;
  readonly positions: number;
  readonly liveSpurs: number;
}

/** How a block loses its spurs. */
export interface SpurLoss {
  /** Share of the live spurs lost in a year; negative where spurs were gained. */
  readonly lossAYear: Range;
  /** Live spurs over positions in the latest winter. */
  readonly liveShare: number;
  readonly latestYear: number;
  /** Rows and pairs of winters that the figure rests on. */
  readonly rows: number;
  readonly pairs: number;
}

/**
 * Share of its live spurs that a block loses in a year, with the range that rows alike would give: the ratio of live spurs
 * after to live spurs before, over all rows and pairs of winters, as a yearly rate; each row is one observation, whatever the
 * number of winters, and the range is Student's t with one degree fewer than rows (ratio estimate, Cochran 1977, section
 * 6.4).
 *
 * `seasons`: one entry a row and winter; rows seen in one winter only are left out. `confidence`: 0.5 to 0.9999.
 *
 * Refuses (tooFewRows) fewer than two rows with two winters, and (spursAbovePositions) more live spurs than positions.
 *
 * @example
 * spurLoss([{ row: 1, year: 2025, positions: 100, liveSpurs: 90 }, { row: 1, year: 2026, positions: 100, liveSpurs: 86 }, { row: 2, year: 2025, positions: 100, liveSpurs: 80 }, { row: 2, year: 2026, positions: 100, liveSpurs: 75 }], 0.9).lossAYear.likely // 0.0529
 */
export function spurLoss(seasons: readonly RowSeason[], confidence: number): SpurLoss {
  mustLieBetween("confidence", confidence, 0.5, 0.9999);
  const rows = [...byRow(seasons).values()].filter((row) => row.length > 1);
  const pairs = rows.map((row) =>
    row.slice(1).map((after, at) => ({
      before: row[at].liveSpurs,
      after: after.liveSpurs,
      years: mustBeWhole("year", after.year - row[at].year, 1, 200),
    })),
  );
  const before = pairs.flat().reduce((sum, pair) => sum + pair.before, 0);
  if (rows.length < 2 || before === 0)
    throw new Refusal("notAvailable", "tooFewRows", { argument: "seasons", value: rows.length, needed: 2 });
  const rate = yearlyRate(pairs.flat());
  const slope = pairs
    .flat()
    .reduce((sum, pair) => sum + pair.years * rate ** (pair.years - 1) * pair.before, 0);
  const squares = pairs.reduce((sum, row) => {
    const residual = row.reduce((total, pair) => total + pair.after - rate ** pair.years * pair.before, 0);
    return sum + residual * residual;
  }, 0);
  const m = rows.length;
  const error = Math.sqrt((m / (m - 1)) * squares) / slope;
  const reach = tQuantile((1 + confidence) / 2, m - 1) * error;
  const latestYear = Math.max(...seasons.map(({ year }) => year));
  const latest = seasons.filter(({ year }) => year === latestYear);
  const positions = latest.reduce((sum, row) => sum + row.positions, 0);
  return {
    lossAYear: { low: 1 - rate - reach, likely: 1 - rate, high: Math.min(1, 1 - rate + reach) },
    liveShare: positions > 0 ? latest.reduce((sum, row) => sum + row.liveSpurs, 0) / positions : 0,
    latestYear,
    rows: m,
    pairs: pairs.flat().length,
  };
}

/**
 * Years until the share of live spurs falls below a floor, at the yearly loss and at both ends of its range; 0 when it is
 * below already, Infinity when it never gets there. Earliest first. No published floor was seen; it is a setting.
 *
 * @example
 * yearsToFloor({ low: 0.02, likely: 0.05, high: 0.1 }, 0.9, 0.7) // { low: 2.385, likely: 4.9, high: 12.44 }
 */
export function yearsToFloor(lossAYear: Range, liveShare: number, floor: number): Range {
  mustLieBetween("live_share", liveShare, 0, 1);
  mustLieBetween("floor", floor, 0, 1);
  const years = (loss: number) => {
    if (liveShare <= floor) return 0;
    if (loss <= 0 || floor === 0) return Infinity;
    return loss >= 1 ? 1 : Math.log(floor / liveShare) / Math.log(1 - loss);
  };
  return { low: years(lossAYear.high), likely: years(lossAYear.likely), high: years(lossAYear.low) };
}

function byRow(seasons: readonly RowSeason[]): Map<number, RowSeason[]> {
  const rows = new Map<number, RowSeason[]>();
  for (const season of seasons) {
    mustBeWhole("positions", season.positions, 0, 1e6);
    mustBeWhole("live_spurs", season.liveSpurs, 0, 1e6);
    if (season.liveSpurs > season.positions)
      throw new Refusal("invalid", "rowSpursAbovePositions", {
        argument: "live_spurs",
        row: season.row,
        year: season.year,
        value: season.liveSpurs,
        most: season.positions,
      });
    rows.set(season.row, [...(rows.get(season.row) ?? []), season]);
  }
  for (const row of rows.values()) row.sort((one, other) => one.year - other.year);
  return rows;
}

/** The yearly rate r for which spurs after = sum of r^years x spurs before, by halving. */
function yearlyRate(pairs: readonly { before: number; after: number; years: number }[]): number {
  const after = pairs.reduce((sum, pair) => sum + pair.after, 0);
  const reached = (rate: number) => pairs.reduce((sum, pair) => sum + pair.before * rate ** pair.years, 0);
  let low = 0;
  let high = 1;
  while (reached(high) < after) high *= 2;
  for (let step = 0; step < 100; step++) {
    const middle = (low + high) / 2;
    if (reached(middle) < after) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
