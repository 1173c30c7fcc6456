import { isBlank, isCellError, type CellValue } from "../survey/sheets/cell";
import { isoDay } from "../survey/reading/serialDate";
import { COMMAND_LINE } from "../texts/commandLine";
import { csvResultLine } from "../workbook/csvText";
import { CELL, type Season, type SurveyColumn, type SurveyTable } from "../survey/season/season";
import { SHEETS } from "../survey/sheets/sheets";
import type { Words } from "../survey/sheets/words";
import type { Command } from "./command";
import { mustHaveRows, readFarms } from "./readSurveyInputs";
import { READING_OPTIONS } from "./sharedOptions";
import { exitOf, tellAccount } from "./tellAccount";
import { isLettered, placeName } from "../texts/placeName";

const LINES_BETWEEN_WAITS = 1000;
const CORDONS = SHEETS.cordons.columns;

/**
 * Every cordon row of any number of farms as one csv with fixed English column ids, metric, for an engine that reads
 * tables larger than a workbook.
 */
export const ROWS_COMMAND: Command = {
  takes: "FILE...",
  summary: COMMAND_LINE.rowsSummary,
  examples: ["rows season-2026/ > region.csv", "rows north.xlsx creek.xlsx > region.csv"],
  options: { ...READING_OPTIONS },
  least: 1,
  most: Infinity,
  async run(words, options, terminal) {
    const { inputs, farms } = await readFarms(words, options, terminal);
    mustHaveRows(farms, inputs);
    terminal.print(
      csvResultLine(["file", "sheet", "sheet_row", ...CORDONS.map(({ id }) => columnName(id)), "left_out"]),
    );
    const tables = farms.flatMap((season) => season.tables("cordons").map((table) => ({ season, table })));
    for (const { season, table } of tables) {
      const origin = inputs.origin.get(table.sheet)!;
      const columns = CORDONS.map(({ id }) => table.column(id));
      for (let index = 0; index < table.rowCount; index++) {
        if (index % LINES_BETWEEN_WAITS === 0) await terminal.written();
        terminal.print(
          csvResultLine([
            origin.file,
            origin.sheet,
            table.sheetRow(index),
            ...columns.map((column) => column && rowValue(column, index, season.words)),
            leftOut(season, table, index),
          ]),
        );
      }
    }
    tellAccount(farms, inputs, terminal, "told");
    terminal.progress(1);
    return exitOf(false, farms, inputs);
  },
};

/** Why no result uses the row: "live_spurs outside"; "same_vine" for a sound row of a vine to recount; else nothing. */
function leftOut({ used }: Season, table: SurveyTable, index: number): string | null {
  if (used.isUsed(table, index)) return null;
  const fault = used.faultAt(table, index);
  return fault ? `${columnName(fault.column)} ${fault.reason}` : "same_vine";
}

/** An id of ours as a column name that needs no quotes in SQL: "liveSpurs" is live_spurs, "row" is vine_row. */
export function columnName(id: string): string {
  return id === "row" ? "vine_row" : id.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
}

/**
 * The metric value, the id of a word, or the text in its first spelling; nothing where the cell cannot be used. A row or
 * vine between two others keeps its label.
 */
export function rowValue(column: SurveyColumn, index: number, words: Words): string | number | null {
  const cell: CellValue = column.raw.at(index) ?? null;
  const { id, kind, choices } = column.column;
  if (isBlank(cell) || isCellError(cell)) return null;
  if (column.states[index] !== CELL.usable) return null;
  if (id === "note") return String(cell).trim();
  if (id === "cordon") return String(cell).trim().toUpperCase();
  if (kind === "text") return words.wordOf(column.codes[index]);
  if (kind === "choice") return choices![column.codes[index]].id;
  const number = column.numbers[index];
  if (kind === "date") return isoDay(number);
  const name = id === "row" || id === "vine" ? placeName(number) : number;
  return typeof name === "number" || isLettered(number) ? name : String(cell).trim();
}
