import { isBlank, isCellError, type CellValue } from "../survey/sheets/cell";
import { isoDay } from "../survey/reading/serialDate";
import { COMMAND_LINE } from "../texts/commandLine";
import { csvLine } from "../workbook/csvText";
import { CELL, type SurveyColumn } from "../survey/season/season";
import { SHEETS } from "../survey/sheets/sheets";
import type { Command } from "./command";
import { mustHaveCordons, readSeasonInputs } from "./readSurveyInputs";
import { READING_OPTIONS } from "./sharedOptions";

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
    const { inputs, season } = await readSeasonInputs(words, options, terminal);
    mustHaveCordons(season, inputs);
    terminal.print(csvLine(["file", "sheet", "sheet_row", ...CORDONS.map(({ id }) => columnName(id))]));
    const single = inputs.files.length === 1 ? inputs.files[0] : "";
    for (const table of season.tables("cordons")) {
      const origin = inputs.origin.get(table.sheet) ?? { file: single, sheet: table.sheet };
      const columns = CORDONS.map(({ id }) => table.column(id));
      for (let index = 0; index < table.rowCount; index++) {
        if (index % LINES_BETWEEN_WAITS === 0) await terminal.written();
        terminal.print(
          csvLine([
            origin.file,
            origin.sheet,
            table.sheetRow(index),
            ...columns.map((column) => column && valueOf(column, index)),
          ]),
        );
      }
    }
    terminal.progress(1);
    return 0;
  },
};

/** An id of ours as a column name that needs no quotes in SQL: "liveSpurs" is live_spurs, "row" is vine_row. */
export function columnName(id: string): string {
  return id === "row" ? "vine_row" : id.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
}

/** The metric value, the id of a word, or the text; nothing where the cell cannot be used. */
function valueOf(column: SurveyColumn, index: number): string | number | null {
  const cell: CellValue = column.raw.at(index) ?? null;
  if (isBlank(cell) || isCellError(cell)) return null;
  const { kind, choices } = column.column;
  if (kind === "text") return String(cell).trim();
  if (column.states[index] !== CELL.usable) return null;
  if (kind === "choice") return choices![column.codes[index]].id;
  const number = column.numbers[index];
  return kind === "date" ? isoDay(number) : number;
}
