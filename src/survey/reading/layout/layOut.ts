import { type CellValue, isBlank } from "../../sheets/cell";
import type { Column } from "../../sheets/column";
import type { Unit } from "../../sheets/unit";
import { findTable, type FoundTable } from "../findTable";
import { headWords } from "../headWords";
import type { OpenAccount } from "../readingAccount";
import { type LaidTable, rowsByWinter } from "../rowsByWinter";
import type { MergedArea, SheetArea } from "../sheetArea";
import { bestHeads, sections } from "./heads";
import { laidTables } from "./laidTables";
import type { LayoutOptions } from "./layoutOptions";
import { unknownTable } from "./unknownTable";

/**
 * Finds the tables of a sheet however it is laid out: heads over several lines, tables beside or below each other, keys
 * in merged cells, captions, lines above or the sheet's name, candidates side by side in a line. What was done, asked or
 * left out goes into the account.
 */
export function layOut(area: SheetArea, options: LayoutOptions, account: OpenAccount): LaidTable[] {
  const { answers } = options;
  if (answers.leaveOut?.includes(area.sheet)) {
    account.leftOut.push({ what: "sheet", reason: "byAnswer", sheet: area.sheet, facts: {} });
    return [];
  }
  if (area.values.length === 0) return [];
  if (notCalculated(area, account)) return [];
  const plain = findTable(area, options.told);
  if (plain?.shape.id === "settings") return [{ area, place: plain }];
  if (options.told) return plain ? [{ area, place: { ...plain, units: unitsOfHeads(area, plain) } }] : [];
  const filled = withMerged(area, account);
  const heads = bestHeads(filled, options);
  if (!heads) return unknownTable(filled, account);
  if (heads.segments.length > 1 && !heads.wide)
    account.notes.push({ code: "sideBySide", sheet: area.sheet, facts: { tables: heads.segments.length } });
  return sections(filled, heads, options).flatMap((section, index) => {
    if (index > 0)
      account.notes.push({
        code: "secondHeads",
        sheet: area.sheet,
        facts: { row: area.firstRow + section.index },
      });
    return section.segments.flatMap((segment) =>
      laidTables(filled, section, segment, options, account).flatMap((laid) => rowsByWinter(laid, account)),
    );
  });
}

/** Units in the heads of a range that a formula gives, which is read as it stands. */
function unitsOfHeads(
  { values }: SheetArea,
  { columns, headerIndex }: FoundTable,
): ReadonlyMap<Column, Unit> {
  return new Map(
    [...columns].flatMap(([column, at]) => {
      const { unit } = headWords(String(values[headerIndex][at] ?? ""));
      return unit ? [[column, unit] as const] : [];
    }),
  );
}

/** True where the sheet's cells are formulas without stored values, which a spreadsheet has to calculate first. */
function notCalculated(area: SheetArea, account: OpenAccount): boolean {
  let formulas = 0;
  let rows = 0;
  let values = 0;
  for (let row = 0; row < area.values.length; row++) {
    let inRow = 0;
    for (let column = 0; column < area.values[row].length; column++) {
      if (!isBlank(area.values[row][column])) values++;
      else if (area.formulaAt(row, column) !== null) inRow++;
    }
    formulas += inRow;
    if (inRow > 0) rows++;
  }
  if (rows === 0) return false;
  account.leftOut.push({
    what: rows > area.values.length / 2 ? "sheet" : "rows",
    reason: "notCalculated",
    sheet: area.sheet,
    facts: { rows, cells: formulas },
  });
  return formulas > values;
}

/** Cells of merged areas all with the value of their first; the sheet itself where it has none. */
function withMerged(area: SheetArea, account: OpenAccount): SheetArea {
  const merged = (area.merged ?? []).filter(
    ({ row, column }) => row < area.values.length && !isBlank(area.values[row]?.[column]),
  );
  if (merged.length === 0) return area;
  const values = area.values.map((row) => [...row]);
  for (const { row, column, rows, columns } of merged) fillArea(values, { row, column, rows, columns });
  const down = merged.filter(({ rows }) => rows > 1).length;
  if (down > 0) account.notes.push({ code: "mergedFilled", sheet: area.sheet, facts: { areas: down } });
  return { ...area, values };
}

function fillArea(values: CellValue[][], { row, column, rows, columns }: MergedArea): void {
  const value = values[row][column];
  for (let r = row; r < Math.min(values.length, row + rows); r++)
    for (let c = column; c < Math.min(column + columns, values[r].length); c++)
      if (isBlank(values[r][c])) values[r][c] = value;
}
