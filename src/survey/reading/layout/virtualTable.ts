import { type CellValue, isBlank } from "../../sheets/cell";
import type { Column } from "../../sheets/column";
import type { Unit } from "../../sheets/unit";
import type { FoundTable } from "../findTable";
import { columnNamed, headWords } from "../headWords";
import { hasMovedCells, lastFilled } from "../movedCells";
import type { LaidTable } from "../rowsByWinter";
import type { SheetArea } from "../sheetArea";
import type { Segment } from "./bestShape";
import type { AddedColumn } from "./addedColumn";
import type { Section } from "./heads";

export function plainPlace(
  section: Section,
  segment: Segment,
  columns: ReadonlyMap<Column, number>,
  units: ReadonlyMap<Column, Unit>,
): FoundTable {
  return {
    shape: segment.shape,
    headerIndex: section.index,
    columns,
    repeated: repeatedOf(section, segment, columns),
    units,
  };
}

function repeatedOf(
  { texts }: Section,
  { shape, from, to }: Segment,
  columns: ReadonlyMap<Column, number>,
): number[] {
  const repeated: number[] = [];
  for (let at = from; at < to; at++) {
    const text = texts[at];
    if (text === undefined) continue;
    const head = headWords(text);
    if (head.qualifier !== undefined || head.year !== undefined) continue;
    const column = columnNamed(shape, head.words);
    if (column && columns.has(column) && columns.get(column) !== at && ![...columns.values()].includes(at))
      repeated.push(at);
  }
  return repeated;
}

/** Lines of a sheet as a table of their own, whose cells remember where they stand. */
export function virtualTable(
  base: {
    area: SheetArea;
    section: Section;
    segment: Segment;
    lines: readonly number[];
    filled: ReadonlyMap<number, ReadonlyMap<number, CellValue>> | undefined;
    units: ReadonlyMap<Column, Unit>;
  },
  columns: ReadonlyMap<Column, number>,
  extras: readonly AddedColumn[],
): LaidTable {
  const { area, section, segment, lines, filled, units } = base;
  const width = segment.to - segment.from;
  const headers: CellValue[] = Array.from(
    { length: width },
    (_, at) => section.texts[segment.from + at] ?? null,
  );
  const placed = new Map([...columns].map(([column, at]) => [column, at - segment.from] as const));
  const ownUnits = new Map(units);
  extras.forEach(({ column, header, unit }, i) => {
    headers.push(header);
    placed.set(column, width + i);
    if (unit) ownUnits.set(column, unit);
  });
  const values: (readonly CellValue[])[] = [headers];
  for (const index of lines) {
    const cells = area.values[index].slice(segment.from, segment.to);
    while (cells.length < width) cells.push(null);
    if (filled)
      for (const [at, byLine] of filled) {
        const value = byLine.get(index);
        if (value !== undefined) cells[at - segment.from] = value;
      }
    const own = cells.filter((cell) => !isBlank(cell));
    const isEmpty = own.length === 0 || (own.length === 1 && typeof own[0] === "string");
    for (const { valueOf } of extras) cells.push(isEmpty ? null : valueOf(index));
    values.push(cells);
  }
  const at = (row: number) => (row === 0 ? section.index : lines[row - 1]);
  const heads = lastFilled(section.texts);
  return {
    area: {
      sheet: area.sheet,
      firstRow: area.firstRow,
      firstColumn: area.firstColumn,
      values,
      formulaAt: (row, column) => (column < width ? area.formulaAt(at(row), column + segment.from) : null),
      isText: area.isText,
      marks: area.marks,
    },
    place: {
      hasMoved: (row) => hasMovedCells(area.values[at(row)], heads),
      shape: segment.shape,
      headerIndex: 0,
      columns: placed,
      repeated: repeatedOf(section, segment, columns).map((position) => position - segment.from),
      units: ownUnits,
      sheetRowOf: (row) => area.firstRow + at(row),
      sheetColumnOf: (position) =>
        position < width ? area.firstColumn + segment.from + position : extras[position - width].sheetColumn,
    },
  };
}
