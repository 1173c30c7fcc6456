import { chooseCordons } from "../../domain/choice/chooseCordons";
import { choiceRules } from "../../survey/choice/choiceRules";
import type { DecidedVine } from "../../survey/decideSurvey";
import type { Survey } from "../../survey/survey";
import { DECIDE_TEXTS } from "../../texts/pane";
import { OVERRULE_TEXTS } from "../../texts/overrule";
import { changeCells, undoChange, type CellChangeWanted } from "../../workbook/actions/changeCells";
import type { Pane } from "../pane";
import { choiceWord } from "./choiceWord";
import { vineKey, type DecideState } from "./decideState";

/**
 * Writes a person's decision into the Cordons sheet: the cordon stays, the others of its side go. The vine is then
 * decided anew with it. With a reason, that is added to the cordon's note. Refused, with the next step, where the sheet
 * has no column for it.
 *
 * @param reason why a person overrules the answer; left out where a question is answered
 */
export async function fixChoice(
  pane: Pane,
  vine: DecidedVine,
  cordon: number,
  reason?: string,
): Promise<void> {
  const { result } = pane.state.decide;
  if (result === undefined) return;
  const { side, cordon: name } = vine.decision.cordons[cordon];
  const places = vine.decision.cordons.flatMap((one, index) => (one.side === side ? [index] : []));
  const wanted: CellChangeWanted[] = [];
  for (const place of places) {
    const { table, index } = vine.rows[place];
    const column = table.column("fixedChoice");
    if (column === undefined) {
      pane.tell("warning", DECIDE_TEXTS.noColumn, { sheet: table.sheet });
      return;
    }
    const at = { sheet: table.sheet, row: table.sheetRow(index) };
    const value = choiceWord(column, place === cordon ? "stays" : "goes");
    wanted.push({ ...at, column: column.sheetColumn, content: { value } });
    if (reason === undefined || place !== cordon) continue;
    const note = table.column("note");
    if (note === undefined) {
      pane.tell("warning", OVERRULE_TEXTS.noNote, { sheet: table.sheet });
      return;
    }
    const area = await pane.workbook.readSheet(at.sheet, { rows: { first: at.row, count: 1 } });
    const before = area.values[0]?.[note.sheetColumn - area.firstColumn];
    const words = [typeof before === "string" ? before.trim() : "", reason.trim()].filter(
      (part) => part !== "",
    );
    wanted.push({ ...at, column: note.sheetColumn, content: { value: words.join("; ") } });
  }
  if (!(await isAsRead(pane, vine, places))) {
    pane.tell("warning", DECIDE_TEXTS.meanwhile);
    return;
  }
  const { changed } = await changeCells(pane.workbook, wanted);
  showVine(pane, decidedWith(result.survey, vine, places, cordon), {
    last: { changed, vine, cordon: name },
    reason: "",
  });
  pane.tell("success", DECIDE_TEXTS.fixed, { cordon: name });
}

/** Takes the last decision back: every cell gets what it held before, unless somebody has changed it since. */
export async function takeBackChoice(pane: Pane): Promise<void> {
  const { last } = pane.state.decide;
  if (last === undefined) return;
  const { changed, left } = await undoChange(pane.workbook, last.changed);
  if (left.length > 0) {
    pane.tell("warning", OVERRULE_TEXTS.partlyBack, { cells: changed.length, left: left.length });
    pane.change((state) => ({ ...state, decide: { ...state.decide, last: undefined } }));
    return;
  }
  showVine(pane, last.vine, { last: undefined });
  pane.tell("success", OVERRULE_TEXTS.takenBack, { cordon: last.cordon });
}

/** Puts a vine in place of the one with its name. */
function showVine(pane: Pane, vine: DecidedVine, rest: Partial<DecideState>): void {
  pane.change((state) => {
    const { result } = state.decide;
    if (result === undefined) return state;
    const vines = result.vines.map((one) => (vineKey(one) === vineKey(vine) ? vine : one));
    const turns = new Map([...state.decide.turns].filter(([key]) => key !== vineKey(vine)));
    return { ...state, decide: { ...state.decide, ...rest, turns, result: { ...result, vines } } };
  });
}

/** True while the rows still hold the cordons that were read: a sheet that was sorted meanwhile is not written to. */
async function isAsRead(pane: Pane, vine: DecidedVine, places: readonly number[]): Promise<boolean> {
  for (const place of places) {
    const { table, index } = vine.rows[place];
    const row = table.sheetRow(index);
    const area = await pane.workbook.readSheet(table.sheet, { rows: { first: row, count: 1 } });
    const same = ["block", "row", "vine", "side", "cordon"].every((id) => {
      const column = table.column(id);
      if (column === undefined) return true;
      return (area.values[0]?.[column.sheetColumn - area.firstColumn] ?? null) === column.raw[index];
    });
    if (!same) return false;
  }
  return true;
}

function decidedWith(
  survey: Survey,
  vine: DecidedVine,
  places: readonly number[],
  cordon: number,
): DecidedVine {
  const candidates = vine.toDecide.candidates.map((candidate, place) =>
    places.includes(place)
      ? { ...candidate, fixedChoice: place === cordon ? ("stays" as const) : ("goes" as const) }
      : candidate,
  );
  const toDecide = { ...vine.toDecide, candidates };
  return { ...vine, toDecide, decision: chooseCordons(toDecide, choiceRules(survey.settings)) };
}
