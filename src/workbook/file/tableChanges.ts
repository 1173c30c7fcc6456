import { isCellError } from "../../survey/sheets/cell";
import { areasOfAddress, cellName, type CellArea } from "../address";
import { withCells, type FileCellWrite } from "./cellSplices";
import { spliced, withAttribute, xmlSpans, type Splice } from "./xmlSpans";

/** A table of a file that reaches further down than before; columns and rows count from 1. */
export interface GrownTable {
  readonly firstColumn: number;
  readonly lastColumn: number;
  /** Its last row before, and now. */
  readonly lastRow: number;
  readonly newLastRow: number;
}

/** The part of a table at another place, or further down: its area and that of its filter. */
export function placedTableXml(xml: string, area: CellArea): string {
  const { root, spans } = xmlSpans(xml, (path) => path.length === 1 && path[0] === "autoFilter");
  const totals = Number(root.attributes.totalsRowCount ?? 0);
  const ref = (lastRow: number) =>
    `${cellName(area.firstRow, area.firstColumn)}:${cellName(lastRow, area.lastColumn)}`;
  return spliced(xml, [
    withAttribute(xml, root, "ref", ref(area.lastRow)),
    ...spans.map((span) => withAttribute(xml, span, "ref", ref(area.lastRow - totals))),
  ]);
}

/** A table whose heads are written: its part with the new names, and the cells with heads as a table has them. */
export interface RenamedHeads {
  readonly xml: string;
  readonly cells: readonly FileCellWrite[];
}

/**
 * Heads of a table are text, never blank and never twice the same, and its part names them too (ECMA-376 part 1,
 * 18.5.1.3): a file in which they differ is repaired by Excel.
 */
export function renamedHeads(xml: string, cells: readonly FileCellWrite[]): RenamedHeads {
  const { root, spans } = xmlSpans(xml, (path) => path[path.length - 1] === "tableColumn");
  const [area] = areasOfAddress(root.attributes.ref ?? "");
  const heads = cells.filter(
    ({ row, column }) =>
      area && row === area.firstRow && column >= area.firstColumn && column <= area.lastColumn,
  );
  if (root.attributes.headerRowCount === "0" || heads.length === 0) return { xml, cells };
  const written = new Map(heads.map((cell) => [cell.column - area.firstColumn, textOf(cell)]));
  const names = spans.map(({ attributes }, index) => written.get(index) ?? attributes.name ?? "");
  const taken = new Set<string>();
  const free = names.map((name) => {
    let own = name;
    for (let n = 1; own === "" || taken.has(own.toLowerCase()); n++)
      own = name === "" ? `Column${n}` : `${name}${n + 1}`;
    taken.add(own.toLowerCase());
    return own;
  });
  return {
    xml: spliced(
      xml,
      spans.flatMap((span, index) =>
        span.attributes.name === free[index] ? [] : [withAttribute(xml, span, "name", free[index])],
      ),
    ),
    cells: cells.map((cell) =>
      heads.includes(cell)
        ? { row: cell.row, column: cell.column, value: free[cell.column - area.firstColumn] }
        : cell,
    ),
  };
}

function textOf(cell: FileCellWrite): string {
  const value = "formula" in cell ? cell.shown : cell.value;
  return isCellError(value) ? value.error : String(value ?? "").trim();
}

/**
 * The sheet of a grown table, with what went for its last row going for the new rows too: cell styles, data validations
 * and conditional formats (ECMA-376 part 1, 18.3.1.33 and 18.3.1.18; [MS-XLSX] 2.3.1 for those of extLst).
 */
export function grownSheetXml(xml: string, grown: GrownTable): string {
  const { spans } = xmlSpans(xml, (path) => {
    const name = path[path.length - 1];
    return name === "dataValidation" || name === "conditionalFormatting" || name === "sqref";
  });
  const splices = spans.flatMap((span): Splice[] => {
    if (span.name === "sqref") {
      const text = xml.slice(span.openEnd, span.closeStart);
      return [{ start: span.openEnd, end: span.closeStart, text: grownAreas(text, grown) }];
    }
    const { sqref } = span.attributes;
    const areas = sqref === undefined ? undefined : grownAreas(sqref, grown);
    return areas === undefined || areas === sqref ? [] : [withAttribute(xml, span, "sqref", areas)];
  });
  const text = spliced(xml, splices);
  return withCells(text, styledLike(text, grown));
}

/** Blank cells for the new rows that look like those of the last one. */
function styledLike(
  xml: string,
  { firstColumn, lastColumn, lastRow, newLastRow }: GrownTable,
): FileCellWrite[] {
  const { spans } = xmlSpans(xml, (path) => path.length === 3 && path[2] === "c");
  const styles = new Map<number, number>();
  const there = new Set<string>();
  for (const { attributes } of spans) {
    const [place] = areasOfAddress(attributes.r ?? "");
    if (!place || place.firstRow < lastRow || place.firstRow > newLastRow) continue;
    if (place.firstRow === lastRow) styles.set(place.firstColumn, Number(attributes.s ?? 0));
    else there.add(attributes.r);
  }
  const cells: FileCellWrite[] = [];
  for (let row = lastRow + 1; row <= newLastRow; row++)
    for (let column = firstColumn; column <= lastColumn; column++) {
      const style = styles.get(column) ?? 0;
      if (style > 0 && !there.has(cellName(row, column))) cells.push({ row, column, value: null, style });
    }
  return cells;
}

/** Areas that end with the table's last row, in its columns, reaching down to the new one. */
function grownAreas(sqref: string, { firstColumn, lastColumn, lastRow, newLastRow }: GrownTable): string {
  return sqref
    .split(/\s+/)
    .filter((area) => area !== "")
    .map((ref) => {
      const [area] = areasOfAddress(ref);
      const isOfTable =
        area?.lastRow === lastRow && area.firstColumn >= firstColumn && area.lastColumn <= lastColumn;
      return isOfTable
        ? `${cellName(area.firstRow, area.firstColumn)}:${cellName(newLastRow, area.lastColumn)}`
        : ref;
    })
    .join(" ");
}
