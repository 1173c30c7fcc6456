import { LAST_COLUMN, LAST_ROW, type CellArea } from "../address";

/** Rows of a sheet that were inserted before a row, or deleted from it on; rows count from 1. */
export interface RowStep {
  readonly kind: "inserted" | "deleted";
  readonly first: number;
  readonly count: number;
}

/**
 * Where the cells of an area are after rows were inserted and deleted one after the other, as spreadsheets have it: rows
 * inserted within belong to it, deleted ones do not. Undefined where none of them is left.
 *
 * @example
 * movedArea({ firstRow: 2, firstColumn: 1, lastRow: 4, lastColumn: 1 }, [{ kind: "inserted", first: 3, count: 2 }]) // { "firstRow": 2, "firstColumn": 1, "lastRow": 6, "lastColumn": 1 }
 */
export function movedArea(area: CellArea, steps: readonly RowStep[]): CellArea | undefined {
  let { firstRow, lastRow } = area;
  if (firstRow === 1 && lastRow === LAST_ROW) return area;
  for (const { kind, first, count } of steps)
    if (kind === "inserted") {
      if (firstRow >= first) firstRow += count;
      if (lastRow >= first) lastRow += count;
    } else {
      const behind = first + count;
      if (firstRow >= first && lastRow < behind) return undefined;
      if (firstRow >= first) firstRow = Math.max(first, firstRow - count);
      if (lastRow >= first) lastRow = lastRow >= behind ? lastRow - count : first - 1;
    }
  return firstRow > LAST_ROW ? undefined : { ...area, firstRow, lastRow: Math.min(lastRow, LAST_ROW) };
}

/** Where a row is afterwards; undefined for one that was deleted. */
export function movedRow(row: number, steps: readonly RowStep[]): number | undefined {
  return movedArea({ firstRow: row, firstColumn: 1, lastRow: row, lastColumn: 1 }, steps)?.firstRow;
}

/** The rows that were not there before, as they stand after all steps; of the columns all. */
export function insertedAreas(steps: readonly RowStep[]): CellArea[] {
  let areas: CellArea[] = [];
  for (const step of steps) {
    areas = areas.flatMap((area) => movedArea(area, [step]) ?? []);
    if (step.kind === "inserted")
      areas.push({
        firstRow: step.first,
        lastRow: step.first + step.count - 1,
        firstColumn: 1,
        lastColumn: LAST_COLUMN,
      });
  }
  return areas;
}

const TOKEN = new RegExp(
  [
    String.raw`"(?:[^"]|"")*"`,
    String.raw`((?:'(?:[^']|'')*'|(?:\[\d+\])?[\p{L}_][\p{L}\p{N}_.]*)!)?` +
      String.raw`(\$?[A-Za-z]{1,3}\$?[1-9]\d*(?::\$?[A-Za-z]{1,3}\$?[1-9]\d*)?|\$?[1-9]\d*:\$?[1-9]\d*)` +
      String.raw`(?![\p{L}\p{N}_.(!])`,
    String.raw`'(?:[^']|'')*'!?`,
    String.raw`\[(?:[^[\]']|'.|\[(?:[^[\]']|'.)*\])*\]`,
    String.raw`[\p{L}\p{N}_.\\]+`,
  ].join("|"),
  "gu",
);

/**
 * A formula after rows of a sheet were inserted and deleted. References into that sheet follow their cells, those to
 * cells that are gone become #REF!; what stands in quotes or names a table stays.
 *
 * @param isOn true for formulas that stand on the sheet themselves, whose references need not name it
 * @example
 * movedFormula("SUM(A2:A4)+Vines!B9", { sheet: "Vines", isOn: false, steps: [{ kind: "inserted", first: 3, count: 1 }] }) // "SUM(A2:A4)+Vines!B10"
 */
export function movedFormula(
  formula: string,
  {
    sheet,
    isOn,
    steps,
  }: { readonly sheet: string; readonly isOn: boolean; readonly steps: readonly RowStep[] },
): string {
  return formula.replace(TOKEN, (whole, qualifier: string | undefined, place: string | undefined) => {
    if (place === undefined) return whole;
    const named = qualifier
      ?.slice(0, -1)
      .replace(/^'(.*)'$/s, (_quoted, inner: string) => inner.replaceAll("''", "'"));
    if (named === undefined ? !isOn : named.toLowerCase() !== sheet.toLowerCase()) return whole;
    return (qualifier ?? "") + (movedPlace(place, steps) ?? "#REF!");
  });
}

/** "B2", "$B$2:C9" or "2:9" afterwards, its $ signs kept; undefined where nothing of it is left. */
export function movedPlace(place: string, steps: readonly RowStep[]): string | undefined {
  const corners = place.split(":").map((corner) => /^(\$?[A-Za-z]*)(\$?)(\d+)$/.exec(corner));
  if (corners.some((corner) => corner === null)) return place;
  const rows = corners.map((corner) => Number(corner![3]));
  const area = {
    firstRow: Math.min(...rows),
    lastRow: Math.max(...rows),
    firstColumn: 1,
    lastColumn: 1,
  };
  const moved = movedArea(area, steps);
  if (!moved) return undefined;
  return corners
    .map(
      (corner, at) =>
        `${corner![1]}${corner![2]}${rows[at] === area.firstRow ? moved.firstRow : moved.lastRow}`,
    )
    .join(":");
}
