/** How a share is shown in a shaded column: from this share on. */
export interface ShadeBand {
  readonly from: number;
  /** Fill and letters as RGB without a number sign: letters at 4.5:1 or more, each band 1.5:1 or more from the next. */
  readonly fill: string;
  readonly font: string;
  /** The worst band is bold too, and hatched where the host can hatch, so that it shows without colour. */
  readonly worst: boolean;
}

/** Bands of a shaded column of shares, the highest first; below the last there is no shade. The limits are ours. */
export const SHADE_BANDS: readonly ShadeBand[] = [
  { from: 0.5, fill: "7A3410", font: "FFFFFF", worst: true },
  { from: 0.3, fill: "D48A4A", font: "2B1200", worst: false },
  { from: 0.1, fill: "F2C38F", font: "2B1200", worst: false },
];

/** Band of a cell's value; undefined where it is no number or below every band. */
export function shadeBandOf(value: unknown): ShadeBand | undefined {
  return typeof value === "number" ? SHADE_BANDS.find(({ from }) => value >= from) : undefined;
}

/** Neighbouring columns that are shaded, as first and last column from 0. */
export function shadedRuns(
  columns: readonly { readonly shade?: boolean }[] = [],
): { first: number; last: number }[] {
  const runs: { first: number; last: number }[] = [];
  columns.forEach(({ shade }, column) => {
    if (!shade) return;
    const run = runs.at(-1);
    if (run?.last === column - 1) run.last = column;
    else runs.push({ first: column, last: column });
  });
  return runs;
}

/**
 * Condition of a band as a formula without "=", relative to the first cell of the shaded range. The conditions of two
 * bands are never true of one cell, so no order of theirs matters: Excel puts a format that is added before all others
 * (https://learn.microsoft.com/javascript/api/excel/excel.conditionalformatcollection#excel-excel-conditionalformatcollection-add-member(1)).
 *
 * @example
 * shadeCondition(SHADE_BANDS[1], "C4") // "AND(ISNUMBER(C4),C4>=0.3,C4<0.5)"
 */
export function shadeCondition(band: ShadeBand, firstCell: string): string {
  const above = SHADE_BANDS[SHADE_BANDS.indexOf(band) - 1];
  const below = above ? `,${firstCell}<${above.from}` : "";
  return `AND(ISNUMBER(${firstCell}),${firstCell}>=${band.from}${below})`;
}
