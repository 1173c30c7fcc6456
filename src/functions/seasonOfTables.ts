import { Refusal } from "../domain/refusal";
import type { UnitSystem } from "../domain/units";
import type { SheetId } from "../survey/sheets/column";
import { readSeason } from "../survey/reading/readSeason";
import type { Season } from "../survey/season/season";
import type { TableArgument } from "./parameter";

/** Tables of one call by the id of their parameter, which also names their sheet in the survey. */
export type GivenTables = Readonly<Record<string, TableArgument | undefined>>;

/** The sheet that a table argument is read as; "any" is found by its headings. */
export type SheetOf = SheetId | "any";

/**
 * Reads the tables of a call as one survey. Refuses a table whose headings are not known, by its argument.
 *
 * @param sheets the sheet that each argument is read as
 * @example
 * seasonOfTables({ counts: readTable(functionNamed("CHECKCOUNTS").parameters[0], [["Block", "Row", "Vine", "Status"], ["A", 1, 1, "bearing"]]) }, { counts: "any" }).tables("vines")[0].rowCount // 1
 */
export function seasonOfTables(
  given: GivenTables,
  sheets: Readonly<Record<string, SheetOf>>,
  unitSystem?: UnitSystem,
): Season {
  const areas = Object.keys(sheets).flatMap((sheet) => {
    const argument = given[sheet];
    return argument ? [{ ...argument.area, sheet }] : [];
  });
  const told = new Map(
    Object.entries(sheets).flatMap(([sheet, shape]) => (shape === "any" ? [] : [[sheet, shape] as const])),
  );
  const season = readSeason(areas, { unitSystem, told });
  for (const argument of season.otherSheets) {
    const shape = sheets[argument];
    throw new Refusal("invalid", "notOurTable", { argument, sheet: shape === "any" ? "cordons" : shape });
  }
  return season;
}
