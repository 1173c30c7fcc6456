/** A bar chart of the live spurs on the sheet Cordons, below the table, as hucre writes it. */
export const spursChart = (values: string, categories: string) => ({
  type: "bar" as const,
  title: "Spurs",
  series: [{ name: "Live spurs", values: `Cordons!${values}`, categories: `Cordons!${categories}` }],
  anchor: { from: { row: 6, col: 0 }, to: { row: 20, col: 6 } },
});

/** A sheet with a pivot of the live spurs of each block over cells of the sheet Cordons, as hucre writes it. */
export const spursPivotSheet = (sourceRange: string) => ({
  name: "Summary",
  rows: [],
  pivotTables: [
    {
      name: "Pivot",
      sourceSheet: "Cordons",
      sourceRange,
      targetCell: "A1",
      rows: ["Block"],
      values: [{ field: "Live spurs", function: "sum" as const }],
    },
  ],
});
