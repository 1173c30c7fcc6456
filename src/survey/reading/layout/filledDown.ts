import { type CellValue, isBlank } from "../../sheets/cell";
import type { Column } from "../../sheets/column";
import type { OpenAccount } from "../readingAccount";
import type { SheetArea } from "../sheetArea";
import { isTotalWord } from "../totalWords";
import type { WideGroup } from "./wideGroups";
import { KEYS } from "./layoutOptions";

/** Least share of lines without a key from which it is taken as written once a group; below it a cell was forgotten. */
const ONCE_A_GROUP = 0.3;

/** Columns that only the row of a cordon or a vine fills, unlike a line of totals. */
const OF_ONE_ROW = new Set(["side", "cordon", "status"]);

/** Keys written once a group, filled down to the next; undefined where none are. */
export function filledDown(
  area: SheetArea,
  lines: readonly number[],
  columns: ReadonlyMap<Column, number>,
  groups: readonly WideGroup[],
  account: OpenAccount,
): ReadonlyMap<number, ReadonlyMap<number, CellValue>> | undefined {
  const own = [
    ...[...columns].filter(([{ id }]) => OF_ONE_ROW.has(id)).map(([, at]) => at),
    ...groups.flatMap(({ positions }) => [...positions.keys()]),
  ];
  const rows = lines.filter((index) => own.some((at) => !isBlank(area.values[index][at])));
  const filled = new Map<number, Map<number, CellValue>>();
  const names: string[] = [];
  for (const id of KEYS) {
    const found = [...columns].find(([column]) => column.id === id);
    if (!found) continue;
    const [column, at] = found;
    const blanks = rows.filter((index) => isBlank(area.values[index][at])).length;
    if (blanks === 0 || blanks === rows.length || blanks < rows.length * ONCE_A_GROUP) continue;
    let last: CellValue = null;
    const values = new Map<number, CellValue>();
    for (const index of rows) {
      const cell = area.values[index][at] ?? null;
      if (!isBlank(cell)) last = cell;
      else if (
        last !== null &&
        !area.values[index].some((other) => typeof other === "string" && isTotalWord(other))
      )
        values.set(index, last);
    }
    filled.set(at, values);
    names.push(column.id);
  }
  if (filled.size === 0) return undefined;
  account.notes.push({ code: "filledDown", sheet: area.sheet, facts: { columns: names } });
  return filled;
}
