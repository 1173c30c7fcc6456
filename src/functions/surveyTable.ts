import { Refusal } from "../domain/refusal";
import type { Season, SurveyColumn, SurveyTable } from "../survey/season/season";

/**
 * The table that an argument gave to a survey, with the columns without which the function cannot say anything; refuses
 * a table without one of them.
 *
 * @example
 * surveyTable(seasonOfTables({ cordons: readTable(functionNamed("GAPSBYROW").parameters[0], [["Vine", "Live spurs"], [4, 7]]) }, { cordons: "cordons" }), "cordons", ["vine"]).column("liveSpurs").numbers[0] // 7
 */
export function surveyTable(season: Season, argument: string, needed: readonly string[]): SurveyTable {
  const table = season.allTables.find(({ sheet }) => sheet === argument)!;
  for (const id of needed) neededColumn(argument, table, id);
  return table;
}

/** The column of that id; refuses a table without it. */
export function neededColumn(argument: string, table: SurveyTable, id: string): SurveyColumn {
  const column = table.column(id);
  if (column === undefined)
    throw new Refusal("invalid", "noSuchColumn", { argument, sheet: table.shape.id, column: id });
  return column;
}

/** Refuses the cell of a table, with its row in the range and what stands in it. */
export function cellRefusal(argument: string, table: SurveyTable, id: string, index: number): Refusal {
  const cell = table.column(id)?.raw.at(index) ?? "";
  return new Refusal("invalid", "wrongCell", {
    argument,
    sheet: table.shape.id,
    column: id,
    row: table.sheetRow(index),
    value: typeof cell === "object" ? cell.error : String(cell),
  });
}
