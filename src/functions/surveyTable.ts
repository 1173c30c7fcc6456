import { Refusal } from "../domain/refusal";
import type { UnitSystem } from "../domain/units";
import type { SheetId } from "../survey/column";
import { readSurvey } from "../survey/readSurvey";
import type { SurveyColumn, SurveyTable } from "../survey/survey";
import type { TableArgument } from "./parameter";

/**
 * Reads a table argument by its headings, in any of our languages and any order, as a sheet of that kind.
 * Refuses a range in which a needed column is missing.
 *
 * @param needed ids of the columns without which the function cannot say anything
 *
 * @example
 * surveyTable("cordons", readTable(functionNamed("GAPSBYROW").parameters[0], [["Vine", "Live spurs"], [4, 7]]), "cordons", ["vine"]).column("liveSpurs").numbers[0] // 7
 */
export function surveyTable(
  argument: string,
  given: TableArgument,
  sheet: SheetId,
  needed: readonly string[],
  unitSystem: UnitSystem = "US",
): SurveyTable {
  const mapping = [{ sheet: given.area.sheet, shape: sheet, headers: {} }];
  const table = readSurvey([given.area], { unitSystem, mapping }).allTables[0];
  if (table === undefined) throw new Refusal("invalid", "notATable", { argument, sheet });
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
  const cell = table.column(id)?.raw[index] ?? "";
  return new Refusal("invalid", "wrongCell", {
    argument,
    sheet: table.shape.id,
    column: id,
    row: table.sheetRow(index),
    value: typeof cell === "object" ? cell.error : String(cell),
  });
}
