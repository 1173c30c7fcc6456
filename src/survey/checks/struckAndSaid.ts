import { textNumber } from "../reading/textNumber";
import { isBlank } from "../sheets/cell";
import { CELL, type SurveyTable } from "../season/season";
import { DATA_SHEETS, type Check, type FindingKind, type Report } from "./check";

const struckOut: FindingKind = { code: "struckOut", severity: "note", action: "askCounter" };
const otherNumberInComment: FindingKind = {
  code: "otherNumberInComment",
  severity: "note",
  action: "askCounter",
};

/** Characters of a comment that are shown. */
const SHOWN = 80;

/**
 * What people do to a cell instead of changing it: strike it out, or say another number in a comment on it. The row is
 * read as it stands; a row of which more than half is struck out is named as one.
 */
export const STRUCK_AND_SAID: Check = {
  id: "struckAndSaid",
  kinds: [struckOut, otherNumberInComment],
  sheets: DATA_SHEETS,
  scope: "row",
  prepare(table) {
    if (!table.marks || table.marks.marked.length === 0) return undefined;
    const struck = new Map<number, Set<number>>();
    const said = new Map<number, Map<number, string>>();
    for (const { row, column, struck: isStruck = false, note } of table.marks.marked) {
      const index = table.indexOfSheetRow(row);
      if (index === undefined) continue;
      if (isStruck) struck.set(index, (struck.get(index) ?? new Set()).add(column));
      if (note !== undefined) said.set(index, (said.get(index) ?? new Map()).set(column, note));
    }
    return (from, to, report) => {
      for (let index = from; index < to; index++) {
        tellStruck(table, index, struck.get(index), report);
        tellSaid(table, index, said.get(index), report);
      }
    };
  },
};

function tellStruck(
  { columns }: SurveyTable,
  index: number,
  struck: ReadonlySet<number> | undefined,
  report: Report,
): void {
  if (!struck) return;
  const filled = columns.filter(
    ({ states, raw }) => states[index] !== CELL.blank && !isBlank(raw.at(index)!),
  );
  const lined = filled.filter(({ sheetColumn }) => struck.has(sheetColumn));
  if (lined.length * 2 > filled.length) report(struckOut, index, undefined);
  else for (const column of lined) report(struckOut, index, column);
}

function tellSaid(
  { columns }: SurveyTable,
  index: number,
  said: ReadonlyMap<number, string> | undefined,
  report: Report,
): void {
  for (const column of said ? columns : []) {
    const note = said!.get(column.sheetColumn);
    const value = column.raw.at(index);
    if (note === undefined || typeof value !== "number" || column.column.kind === "date") continue;
    const words = note.slice(note.indexOf(": ") + 1);
    if (numbersSaid(words).some((number) => number !== value))
      report(otherNumberInComment, index, column, { value, said: note.slice(0, SHOWN) });
  }
}

const DATES_AND_TIMES = /\d+([/.-])\d+\1\d+|\d{1,2}:\d{2}/g;
const NUMBER = /(?<![\p{L}\d#.,])\d+(?:[.,]\d+)?(?!\d|st|nd|rd|th|er\b|e\b|[ºª])/gu;

/** The numbers of a remark, without its days, times and ordinals. */
function numbersSaid(words: string): number[] {
  return [...words.replace(DATES_AND_TIMES, " ").matchAll(NUMBER)].map(([number]) => textNumber(number)!);
}
