import type { DecidedVine } from "../../survey/decide/decideSeason";
import type { SurveyColumn } from "../../survey/season/season";
import { isBlank } from "../../survey/sheets/cell";
import { choiceId } from "../../survey/season/vinePlaces";
import type { HeldRow } from "./cellChangedSince";
import { choiceWord } from "./choiceWord";
import { fixedNow, type Fixed } from "./outcome";

/** A row with all its cells: what was read, or what a person has fixed on this page since. */
export function wholeRow(vine: DecidedVine, place: number): HeldRow {
  const { table, index } = vine.rows[place];
  const fixedChoice = fixedNow(vine)[place];
  const fixed = table.column("fixedChoice");
  const fixedSince = fixed !== undefined && isKnown(fixed, index) && fixedChoice !== choiceId(fixed, index);
  const cells = table.columns.flatMap((one) => {
    if (fixedSince && one.column.id === "note") return [];
    const value = fixedSince && one === fixed ? fixedWord(one, fixedChoice) : (one.raw.at(index) ?? null);
    return [{ column: one.sheetColumn, value }];
  });
  return { table, index, cells };
}

/** True where the cell was blank or held a word for a choice, so that what was fixed on this page took its place. */
function isKnown(column: SurveyColumn, index: number): boolean {
  return isBlank(column.raw.at(index)) || choiceId(column, index) !== undefined;
}

function fixedWord(column: SurveyColumn, fixed: Fixed): string | null {
  return fixed === undefined ? null : choiceWord(column, fixed);
}
