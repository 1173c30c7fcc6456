import type { Season, SurveyTable } from "./season";
import { choiceId } from "./vinePlaces";

/** Whether the cordon in a row stays; undefined where nothing is decided on its vine. */
export type Stays = (table: SurveyTable, index: number) => boolean | undefined;

/** Which cordons a person has fixed in the sheet, to stay or to go; stayingCordons also knows the proposed ones. */
export function fixedCordons(season: Season): Stays {
  const fixed = new Map(season.tables("cordons").map((table) => [table, table.column("fixedChoice")]));
  return (table, index) => {
    if (!season.used.isUsed(table, index)) return undefined;
    const column = fixed.get(table);
    const choice = column && choiceId(column, index);
    return choice === undefined ? undefined : choice === "stays";
  };
}
