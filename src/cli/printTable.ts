import { csvLine } from "../workbook/csvText";
import type { OwnSheet } from "../workbook/surveyWorkbook";
import { printable, type Terminal } from "./terminal";

const WIDEST = 90;

/** Prints a sheet of ours as columns that line up. */
export function printTable({ headers, rows }: OwnSheet, terminal: Terminal): void {
  const cells = [headers, ...rows.map((row) => row.map(shown))].map((row) => row.map(printable));
  const widths = headers.map((_, column) =>
    cells.reduce((most, row) => Math.max(most, Math.min(WIDEST, (row[column] ?? "").length)), 0),
  );
  for (const row of cells)
    terminal.print(
      row
        .map((cell, column) => cell.padEnd(widths[column]))
        .join("  ")
        .trimEnd(),
    );
}

/** Prints a sheet of ours as csv. */
export function printCsv({ headers, rows }: OwnSheet, terminal: Terminal): void {
  terminal.print(csvLine(headers));
  for (const row of rows) terminal.print(csvLine(row));
}

function shown(value: OwnSheet["rows"][number][number]): string {
  if (value === null) return "";
  return typeof value === "number" ? String(Number(value.toPrecision(4))) : String(value);
}
