import type { CarriedCell, CellPlace } from "../surveyWorkbook";

/** Cells beside and below each other that take their looks from cells of the same shape, or all from one. */
export interface LookArea {
  readonly from: CellPlace;
  readonly to: CellPlace;
  readonly rows: number;
  readonly columns: number;
  /** Whether every cell takes its look from the first. */
  readonly isOne: boolean;
}

type CarriedTo = Pick<CarriedCell, "to">;

/** The cells whose looks are carried, in as few areas as come of going along rows first and down then. */
export function looksAsAreas(cells: readonly CarriedCell[] = []): LookArea[] {
  const given = cells.filter(({ look }) => look);
  const timesUsed = new Map<string, number>();
  for (const { from } of given) timesUsed.set(keyOf(from), (timesUsed.get(keyOf(from)) ?? 0) + 1);
  const isOne = ({ from }: CarriedCell) => timesUsed.get(keyOf(from))! > 1;
  const along: LookArea[] = [];
  for (const cell of given.sort(alongRows)) {
    const last = along[along.length - 1];
    const { from, to } = cell;
    if (
      last &&
      !last.isOne &&
      !isOne(cell) &&
      isAt(to, last.to, 0, last.columns) &&
      isAt(from, last.from, 0, last.columns)
    )
      along[along.length - 1] = { ...last, columns: last.columns + 1 };
    else along.push({ from, to, rows: 1, columns: 1, isOne: isOne(cell) });
  }
  const areas: LookArea[] = [];
  for (const run of along.sort(downColumns)) {
    const last = areas[areas.length - 1];
    const continues =
      last?.columns === run.columns &&
      last.isOne === run.isOne &&
      isAt(run.to, last.to, last.rows, 0) &&
      isAt(run.from, last.from, run.isOne ? 0 : last.rows, 0);
    if (continues) areas[areas.length - 1] = { ...last, rows: last.rows + 1 };
    else areas.push(run);
  }
  return areas;
}

/**
 * Puts the looks of cells on others; nothing is sent yet.
 *
 * @param source where the looks are, that many columns further to the right than they stood
 */
export function carryLooks(
  areas: readonly LookArea[],
  source: Excel.Worksheet,
  further: number,
  target: Excel.Worksheet,
): void {
  for (const { from, to, rows, columns, isOne } of areas) {
    const [high, wide] = isOne ? [1, 1] : [rows, columns];
    target
      .getRangeByIndexes(to.row - 1, to.column - 1, rows, columns)
      .copyFrom(source.getRangeByIndexes(from.row - 1, from.column - 1 + further, high, wide), "Formats");
  }
}

function alongRows({ to: one }: CarriedTo, { to: other }: CarriedTo): number {
  return one.row - other.row || one.column - other.column;
}

function downColumns({ to: one }: CarriedTo, { to: other }: CarriedTo): number {
  return one.column - other.column || one.row - other.row;
}

function isAt(place: CellPlace, start: CellPlace, down: number, right: number): boolean {
  return place.row === start.row + down && place.column === start.column + right;
}

function keyOf({ row, column }: CellPlace): string {
  return `${row} ${column}`;
}
