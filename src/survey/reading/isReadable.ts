import type { CellValue } from "../sheets/cell";
import type { Column } from "../sheets/column";
import { choiceOf } from "./choiceWords";
import { countOfText } from "./countOfText";
import { measureOfText } from "./lengthOfText";
import { placeOfLabel } from "./placeLabel";
import { isPlausibleDay, textDate } from "./serialDate";
import { textNumber } from "./textNumber";

/** True where a cell holds what a column is for, for telling what a column can be. */
export function isReadable(column: Column, cell: CellValue): boolean {
  switch (column.kind) {
    case "text":
      return typeof cell === "string" || typeof cell === "number";
    case "choice":
      return typeof cell === "string" && choiceOf(column, cell) !== undefined;
    case "date":
      return typeof cell === "number"
        ? isPlausibleDay(cell)
        : typeof cell === "string" && textDate(cell) !== undefined;
    case "count":
      if (typeof cell === "number")
        return column.id === "row" || column.id === "vine"
          ? cell > 0
          : Number.isInteger(cell) && cell <= (column.most ?? Infinity);
      if (typeof cell !== "string") return false;
      return (
        countOfText(cell) !== undefined ||
        ((column.id === "row" || column.id === "vine") && placeOfLabel(cell) !== undefined)
      );
    default:
      if (typeof cell === "number") return !isPlausibleDay(cell);
      return (
        typeof cell === "string" &&
        (textNumber(cell) !== undefined || measureOfText(cell, undefined) !== undefined)
      );
  }
}
