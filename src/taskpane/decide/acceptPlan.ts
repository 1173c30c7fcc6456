import { isBlank } from "../../survey/sheets/cell";
import type { DecidedVine } from "../../survey/decide/decideSeason";
import { isAsked } from "../../survey/decide/isAsked";
import type { SurveyColumn } from "../../survey/season/season";
import { choiceWord } from "./choiceWord";
import type { CellChangeWanted } from "../../workbook/actions/changeCells";

/** What accepting a block would write, and how far the block is. */
export interface AcceptPlan {
  /** Vines of the block. */
  readonly all: number;
  /** Vines whose every cordon has its fixed choice in the sheet. */
  readonly accepted: number;
  /** Vines with a question left; they are not written. */
  readonly ask: number;
  /** Vines that are passed over only because a cell for a fixed choice holds a formula or a word that is none. */
  readonly unreadable: number;
  /** Decided vines that would be written. */
  readonly vines: readonly DecidedVine[];
  readonly wanted: readonly CellChangeWanted[];
  /** A sheet without a column for fixed choices, which must be there first. */
  readonly withoutColumn?: string;
}

/**
 * Plans to accept all decided vines of a block in one step: each cordon that nobody has fixed yet gets the word for
 * what was decided, in the language of the column. Vines with a question left are not touched, and a cell that holds
 * anything is never written.
 *
 * @param block name as the survey has it
 */
export function acceptPlan(vines: readonly DecidedVine[], block: string): AcceptPlan {
  const own = vines.filter((vine) => vine.block === block);
  const writing: DecidedVine[] = [];
  const wanted: CellChangeWanted[] = [];
  let [accepted, ask, unreadable] = [0, 0, 0];
  let withoutColumn: string | undefined;
  for (const vine of own) {
    const open = vine.toDecide.candidates.flatMap(({ fixedChoice }, place) =>
      fixedChoice === undefined ? [place] : [],
    );
    if (vine.recount.length > 0 && vine.recount.every(isUnreadableChoice)) unreadable++;
    else if (isAsked(vine)) ask++;
    else if (open.length === 0) accepted++;
    else {
      const cells = open.map((place) => {
        const { table, index } = vine.rows[place];
        return { place, sheet: table.sheet, row: table.sheetRow(index), column: table.column("fixedChoice") };
      });
      const lacking = cells.find(({ column }) => column === undefined);
      if (lacking) withoutColumn ??= lacking.sheet;
      else if (cells.some(({ place, column }) => isTaken(vine, place, column!))) unreadable++;
      else {
        writing.push(vine);
        for (const { place, sheet, row, column } of cells) {
          const value = choiceWord(column!, vine.decision.cordons[place].verdict);
          wanted.push({ sheet, row, column: column!.sheetColumn, content: { value } });
        }
      }
    }
  }
  return {
    all: own.length,
    accepted,
    ask,
    unreadable,
    vines: writing,
    wanted,
    ...(withoutColumn === undefined ? {} : { withoutColumn }),
  };
}

function isUnreadableChoice({ column, reason }: DecidedVine["recount"][number]): boolean {
  return column === "fixedChoice" && reason !== "marked";
}

/** True where the cell for a fixed choice holds a word that is none, or a formula. */
function isTaken(vine: DecidedVine, place: number, column: SurveyColumn): boolean {
  const { table, index } = vine.rows[place];
  return !isBlank(column.raw.at(index)) || table.formulaAt(index, column) !== null;
}
