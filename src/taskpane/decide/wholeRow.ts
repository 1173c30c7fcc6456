import type { DecidedVine } from "../../survey/decide/decideSeason";
import { choiceId } from "../../survey/season/vinePlaces";
import type { HeldRow } from "./cellChangedSince";
import { choiceWord } from "./choiceWord";

/** A row with all its cells: what was read, or what a person has fixed on this page since. */
export function wholeRow(vine: DecidedVine, place: number): HeldRow {
  const { table, index } = vine.rows[place];
  const { fixedChoice } = vine.toDecide.candidates[place];
  const fixed = table.column("fixedChoice");
  const fixedSince =
    fixed !== undefined && fixedChoice !== undefined && fixedChoice !== choiceId(fixed, index);
  const cells = table.columns.flatMap((one) => {
    if (fixedSince && one.column.id === "note") return [];
    const value = fixedSince && one === fixed ? choiceWord(one, fixedChoice) : (one.raw.at(index) ?? null);
    return [{ column: one.sheetColumn, value }];
  });
  return { table, index, cells };
}
