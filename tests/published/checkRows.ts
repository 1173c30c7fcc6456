/** One published figure against ours. */
export interface CheckRow {
  readonly why: string;
  /** The original work; "derived" where the figure is worked out from printed ones. */
  readonly source: string;
  readonly ours: () => number;
  readonly published: number;
  /** Largest difference allowed: half a unit of the last printed digit unless `why` says otherwise. */
  readonly within: number;
}

/** One test a row: ours lies within the stated distance of the published figure. */
export function checkRows(title: string, rows: readonly CheckRow[]): void {
  describe(title, () => {
    test.each(rows)("$why [$source]", ({ ours, published, within }) => {
      const value = ours();
      const apart = Math.abs(value - published);
      expect({ value, published, within, agrees: apart <= within * (1 + 1e-9) }).toEqual({
        value,
        published,
        within,
        agrees: true,
      });
    });
  });
}

/** Half a unit of the last of so many decimals. */
export const half = (decimals: number) => 0.5 * 10 ** -decimals;
/** Where both figures are exact. */
export const EXACT = 1e-9;

export const KINDS = ["publication", "reference library", "by hand"] as const;

/** Where the expected value of a row comes from, by the source that the row names. */
export function kindOf({ source }: Pick<CheckRow, "source">): (typeof KINDS)[number] {
  if (/@stdlib|jstat|simple-statistics|lib-r-math/i.test(source)) return "reference library";
  return /derived|by hand|exact|recomputed/i.test(source) ? "by hand" : "publication";
}
