import type { CellMark } from "./surveyWorkbook";

const RANK = { note: 0, ask: 1, wrong: 2 } as const;

/** One mark a cell: where several are wanted, the worst. */
export function worstMarks(marks: readonly CellMark[]): CellMark[] {
  const worst = new Map<string, CellMark>();
  for (const mark of marks) {
    const place = `${mark.row} ${mark.column} ${mark.sheet.toLowerCase()}`;
    const other = worst.get(place);
    if (!other || RANK[mark.severity] > RANK[other.severity]) worst.set(place, mark);
  }
  return [...worst.values()];
}
