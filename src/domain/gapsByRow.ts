import { mustBeWhole, Refusal } from "./refusal";

/** What of one cordon counts for the gaps. */
export interface CordonPositions {
  readonly block: string;
  readonly row: number;
  readonly vine: number;
  /** Places where a spur should stand. */
  readonly positions: number;
  readonly liveSpurs: number;
  /** Longest stretch without a live spur, in positions; undefined where it was not measured. */
  readonly longestGap?: number | undefined;
}

/** Gaps of one row of vines. */
export interface RowGaps {
  readonly block: string;
  readonly row: number;
  readonly vines: number;
  readonly cordons: number;
  readonly positions: number;
  readonly liveSpurs: number;
  /** Positions without a live spur. */
  readonly gaps: number;
  /** Gaps over positions; undefined when the row has no positions. */
  readonly share: number | undefined;
  /** Longest stretch on any cordon of the row; undefined when none was measured. */
  readonly longestGap: number | undefined;
}

/**
 * Adds up spur positions, live spurs and gaps for each block and row, in the order in which they first appear. Used to
 * see where a vineyard is losing spurs. Give the cordons that stay: candidates that will be cut would count twice.
 *
 * Facts of the trade: 3 to 8 in for each position (NC State Extension; Klodd 2022). No published share of gaps was seen
 * at which a cordon is to be replaced.
 *
 * Refuses counts that are not whole and not negative, and (spursAbovePositions) more live spurs than positions.
 *
 * @example
 * gapsByRow([{ block: "A", row: 1, vine: 1, positions: 8, liveSpurs: 6, longestGap: 2 }, { block: "A", row: 1, vine: 1, positions: 8, liveSpurs: 7, longestGap: 1 }]) // [{ block: "A", row: 1, vines: 1, cordons: 2, positions: 16, liveSpurs: 13, gaps: 3, share: 0.1875, longestGap: 2 }]
 */
export function gapsByRow(cordons: readonly CordonPositions[]): readonly RowGaps[] {
  const blocks = new Map<string, Map<number, Open>>();
  const rows: Open[] = [];
  for (const { block, row, vine, positions, liveSpurs, longestGap } of cordons) {
    mustBeWhole("positions", positions, 0, 1000);
    mustBeWhole("live_spurs", liveSpurs, 0, 1000);
    if (longestGap !== undefined) mustBeWhole("longest_gap", longestGap, 0, 1000);
    if (liveSpurs > positions)
      throw new Refusal("invalid", "spursAbovePositions", {
        argument: "live_spurs",
        block,
        row,
        vine,
        value: liveSpurs,
        most: positions,
      });
    let ofBlock = blocks.get(block);
    if (!ofBlock) blocks.set(block, (ofBlock = new Map()));
    let open = ofBlock.get(row);
    if (!open) {
      open = { block, row, vines: new Set(), cordons: 0, positions: 0, liveSpurs: 0, longestGap: undefined };
      ofBlock.set(row, open);
      rows.push(open);
    }
    open.vines.add(vine);
    open.cordons += 1;
    open.positions += positions;
    open.liveSpurs += liveSpurs;
    if (longestGap !== undefined) open.longestGap = Math.max(open.longestGap ?? 0, longestGap);
  }
  return rows.map(({ vines, ...row }) => {
    const gaps = row.positions - row.liveSpurs;
    return {
      ...row,
      vines: vines.size,
      gaps,
      share: row.positions === 0 ? undefined : gaps / row.positions,
    };
  });
}

interface Open {
  readonly block: string;
  readonly row: number;
  readonly vines: Set<number>;
  cordons: number;
  positions: number;
  liveSpurs: number;
  longestGap: number | undefined;
}
