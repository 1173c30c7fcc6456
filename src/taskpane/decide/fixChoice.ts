import type { DecidedVine } from "../../survey/decide/decideSeason";
import { cellName } from "../../survey/sheets/cellName";
import { AGE_TEXTS, DECIDE_TEXTS } from "../../texts/pane";
import { OVERRULE_TEXTS } from "../../texts/overrule";
import { changeCells, undoChange, type CellChangeWanted } from "../../workbook/actions/changeCells";
import type { Pane } from "../pane";
import { isCurrent, keepCurrent } from "../pageAge";
import { cellChangedSince } from "./cellChangedSince";
import { choiceWord } from "./choiceWord";
import { decidedAnew } from "./decidedAnew";
import { vineKey } from "./decideState";
import type { FixedLast } from "./fixedLast";
import { fixedBy, fixedNow, type Fixed, type Outcome } from "./outcome";
import { outcomeWords } from "./outcomeWords";
import { showVines } from "./showVines";
import { wholeRow } from "./wholeRow";

/**
 * Writes a person's decision on a vine into the column for fixed choices of the Cordons sheet, and decides the vine anew
 * with it. With a reason, that is added to the note of the cordon. Refused, with the next step, where the sheet has no
 * column for it.
 *
 * @param reason why a person overrules the answer; left out where a question is answered
 */
export async function fixChoice(
  pane: Pane,
  vine: DecidedVine,
  outcome: Outcome,
  reason?: string,
): Promise<void> {
  const { result } = pane.state.decide;
  if (result === undefined) return;
  const fixed = fixedBy(outcome, vine);
  const noted = outcome.kind === "stays" || outcome.kind === "cane" ? outcome.place : [...fixed.keys()][0];
  const wanted: CellChangeWanted[] = [];
  for (const [place, id] of fixed) {
    const { table, index } = vine.rows[place];
    const column = table.column("fixedChoice");
    if (column === undefined) {
      pane.tell("warning", DECIDE_TEXTS.noColumn, { sheet: table.sheet });
      return;
    }
    const at = { sheet: table.sheet, row: table.sheetRow(index) };
    const value = id === undefined ? null : choiceWord(column, id);
    wanted.push({ ...at, column: column.sheetColumn, content: { value } });
    if (reason === undefined || place !== noted) continue;
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
    pane,
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
  const now = fixedNow(vine).map((before, place) => (fixed.has(place) ? fixed.get(place) : before));
  const { past } = pane.state.decide;
  showVines(
    pane,
    [decidedAnew(result.season, marked(vine, now), (_candidate, place) => choiceOf(now[place]))],
    {
      past: [...past, { changed, vine, outcome }],
      reason: "",
    },
  );
  await keepCurrent(pane, "decide");
  pane.tell("success", DECIDE_TEXTS.fixed, {
    outcome: outcomeWords(pane, vine, outcome),
  });
}

function choiceOf(fixed: Fixed): Exclude<Fixed, "recount"> {
  return fixed === "recount" ? undefined : fixed;
}

/** The vine with the cells that ask for counting it again, and without those that no longer do. */
function marked(vine: DecidedVine, fixed: readonly Fixed[]): DecidedVine {
  const marks = fixed.flatMap((one, place) => {
    if (one !== "recount") return [];
    const { table, index } = vine.rows[place];
    const { sheetColumn } = table.column("fixedChoice")!;
    const fault = {
      sheet: table.sheet,
      sheetRow: table.sheetRow(index),
      sheetColumn,
    };
    return [{ ...fault, column: "fixedChoice", reason: "marked" as const }];
  });
  const recount = [...vine.recount.filter(({ reason }) => reason !== "marked"), ...marks];
  const cells = recount.map(
    ({ sheet, sheetRow, sheetColumn }) => `${sheet} ${cellName(sheetRow, sheetColumn)}`,
  );
  return { ...vine, recount, toDecide: { ...vine.toDecide, recount: cells } };
}

/** The last decision on a vine that can still be taken back. */
export function lastOn(past: readonly FixedLast[], vine: DecidedVine): FixedLast | undefined {
  return past.filter((one) => vineKey(one.vine) === vineKey(vine)).at(-1);
}

/** Takes a decision back: every cell gets what it held before, unless somebody has changed it since. */
export async function takeBackChoice(pane: Pane, last: FixedLast): Promise<void> {
  const { changed, left } = await undoChange(pane.workbook, last.changed);
  const past = pane.state.decide.past.filter((one) => one !== last);
  if (left.length > 0) {
    pane.tell("warning", OVERRULE_TEXTS.partlyBack, {
      cells: changed.length,
      left: left.length,
    });
    showVines(pane, [], { past });
    return;
  }
  showVines(pane, [last.vine], { past });
  await keepCurrent(pane, "decide");
  pane.tell("success", OVERRULE_TEXTS.takenBack);
}
