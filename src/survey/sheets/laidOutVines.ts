/** A block whose vines are to be counted. */
export interface BlockToLayOut {
  /** Rows of vines, numbered from 1. */
  readonly rows: number;
  readonly vinesARow: number;
  /** Candidate cordons to count on each vine. */
  readonly cordonsAVine: number;
  /** True where every second row is walked from its far end. */
  readonly backAndForth: boolean;
}

/** A cordon that is to be counted. */
export interface LaidOutCordon {
  readonly row: number;
  readonly vine: number;
  /** Id of the side. */
  readonly side: "left" | "right";
  readonly cordon: string;
}

/**
 * The vines of a block in the order in which they are walked, and the cordons to count on each: the letters run from A,
 * left and right in turn.
 *
 * @example
 * laidOutVines({ rows: 1, vinesARow: 1, cordonsAVine: 3, backAndForth: true }).cordons.map(({ side, cordon }) => `${cordon} ${side}`).join() // "A left,B right,C left"
 * @example
 * laidOutVines({ rows: 2, vinesARow: 2, cordonsAVine: 2, backAndForth: true }).vines.map(({ row, vine }) => `${row}:${vine}`).join() // "1:1,1:2,2:2,2:1"
 */
export function laidOutVines({ rows, vinesARow, cordonsAVine, backAndForth }: BlockToLayOut): {
  readonly vines: readonly { readonly row: number; readonly vine: number }[];
  readonly cordons: readonly LaidOutCordon[];
} {
  const vines = Array.from({ length: rows * vinesARow }, (_, at) => {
    const row = Math.floor(at / vinesARow) + 1;
    const step = at % vinesARow;
    return { row, vine: backAndForth && row % 2 === 0 ? vinesARow - step : step + 1 };
  });
  const cordons = vines.flatMap((place) =>
    Array.from({ length: cordonsAVine }, (_, at) => ({
      ...place,
      side: at % 2 === 0 ? ("left" as const) : ("right" as const),
      cordon: String.fromCharCode(65 + at),
    })),
  );
  return { vines, cordons };
}
