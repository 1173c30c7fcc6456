import { csvResultLine } from "../workbook/csvText";
import type { Season } from "../survey/season/season";
import type { OwnSheet } from "../workbook/surveyWorkbook";
import type { Inputs } from "./readInputs";
import { tellAccount } from "./tellAccount";
import { printable, type Terminal } from "./terminal";

const WIDEST = 90;

/** Prints a sheet of ours as columns that line up, the first `columns` of them. */
export function printTable(sheet: OwnSheet, terminal: Terminal, columns?: number): void {
  const headers = sheet.headers.slice(0, columns);
  const cells = [headers, ...sheet.rows.map((row) => row.slice(0, columns).map(shown))].map((row) =>
    row.map(printable),
  );
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

/** Prints a sheet of ours as csv, which holds nothing else: what was read and what was not is told beside it. */
export function printCsv(
  { headers, rows }: OwnSheet,
  season: Season,
  inputs: Inputs,
  terminal: Terminal,
): void {
  terminal.print(csvResultLine(headers));
  for (const row of rows) terminal.print(csvResultLine(row));
  tellAccount(season, inputs, terminal, "told");
}

function shown(value: OwnSheet["rows"][number][number]): string {
  if (value === null) return "";
  return typeof value === "number" ? String(Number(value.toPrecision(4))) : String(value);
}
