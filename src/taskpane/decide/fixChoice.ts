import type { DecidedVine } from "../../survey/decide/decideSeason";
import { AGE_TEXTS, DECIDE_TEXTS } from "../../texts/pane";
import { OVERRULE_TEXTS } from "../../texts/overrule";
import { changeCells, undoChange, type CellChangeWanted } from "../../workbook/actions/changeCells";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { isCurrent, keepCurrent } from "../pageAge";
import { cellChangedSince } from "./cellChangedSince";
import { choiceWord } from "./choiceWord";
import { decidedAnew } from "./decidedAnew";
import { showVines } from "./showVines";
import { wholeRow } from "./wholeRow";

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
  const current = await isCurrent(pane, "decide");
  const unlike = await cellChangedSince(
    pane.workbook,
    vine.rows.map((_row, place) => wholeRow(vine, place)),
  );
  if (unlike !== undefined) {
    pane.tell("warning", AGE_TEXTS.vineChanged, { cells: `${unlike.sheet} ${unlike.cell}` });
    return;
  }
  if (!current) {
    pane.tell("warning", AGE_TEXTS.refused);
    return;
  }
  const { changed } = await changeCells(pane.workbook, wanted);
  const decided = decidedAnew(result.season, vine, ({ fixedChoice }, place) => {
    if (!places.includes(place)) return fixedChoice;
    return place === cordon ? "stays" : "goes";
  });
  showVines(pane, [decided], { last: { changed, vine, cordon: name }, reason: "" });
  await keepCurrent(pane, "decide");
  pane.tell("success", DECIDE_TEXTS.fixed, { cordon: name });
}

/** Takes the last decision back: every cell gets what it held before, unless somebody has changed it since. */
export async function takeBackChoice(pane: Pane): Promise<void> {
  const { last } = pane.state.decide;
  if (last === undefined) return;
  const { changed, left } = await undoChange(pane.workbook, last.changed);
  if (left.length > 0) {
    pane.tell("warning", OVERRULE_TEXTS.partlyBack, { cells: changed.length, left: left.length });
    changePage(pane, "decide", { last: undefined });
    return;
  }
  showVines(pane, [last.vine], { last: undefined });
  await keepCurrent(pane, "decide");
  pane.tell("success", OVERRULE_TEXTS.takenBack, { cordon: last.cordon });
}
