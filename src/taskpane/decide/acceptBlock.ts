import { cellName } from "../../survey/sheets/cellName";
import { ACCEPT_TEXTS } from "../../texts/accept";
import { DECIDE_TEXTS } from "../../texts/pane";
import { changeAllOrNone, undoChange } from "../../workbook/actions/changeCells";
import { remember } from "../ownView";
import { keepCurrent } from "../pageAge";
import type { Pane } from "../pane";
import { writeLog } from "../writeLog";
import { acceptPlan } from "./acceptPlan";
import { cellChangedSince } from "./cellChangedSince";
import { decidedAnew } from "./decidedAnew";
import { showVines } from "./showVines";
import { wholeRow } from "./wholeRow";

/**
 * Writes what was decided for all decided vines of a block into the Cordons sheet, in one step or not at all: the rows
 * are read again first, and where one of them is no longer as it was read, nothing is written. The vines are then
 * decided anew with their fixed choices.
 *
 * @param by who accepts, "" for nobody named; the name goes into the log of runs where that is switched on
 */
export async function acceptBlock(pane: Pane, block: string, by: string): Promise<void> {
  const { result } = pane.state.decide;
  if (result === undefined) return;
  const { vines, wanted, withoutColumn } = acceptPlan(result.vines, block);
  if (withoutColumn !== undefined) {
    pane.tell("warning", DECIDE_TEXTS.noColumn, { sheet: withoutColumn });
    return;
  }
  const rows = vines.flatMap((vine) => vine.rows.map((_row, place) => wholeRow(vine, place)));
  const unlike = await cellChangedSince(pane, rows);
  if (unlike !== undefined) {
    pane.tell("warning", ACCEPT_TEXTS.meanwhile, { ...unlike });
    return;
  }
  const { changed, left } = await changeAllOrNone(
    pane.workbook,
    wanted,
    wanted.map(() => ({ value: null })),
  );
  if (left.length > 0) {
    const [{ sheet, row, column }] = left;
    pane.tell("warning", ACCEPT_TEXTS.meanwhile, { sheet, cell: cellName(row, column) });
    return;
  }
  const accepted = vines.map((vine) =>
    decidedAnew(result.season, vine, ({ fixedChoice }, place) => {
      const { verdict } = vine.decision.cordons[place];
      return fixedChoice ?? (verdict === "ask" ? undefined : verdict);
    }),
  );
  showVines(pane, accepted, {
    accepting: undefined,
    past: [],
    lastBlock: { block, changed, vines },
  });
  await keepCurrent(pane, "decide");
  remember("name", by.trim());
  const facts = {
    block,
    vines: vines.length,
    cells: changed.length,
    by: by.trim(),
  };
  const done = facts.by === "" ? ACCEPT_TEXTS.done : ACCEPT_TEXTS.doneBy;
  pane.tell("success", done, facts);
  await writeLog(pane, pane.say(ACCEPT_TEXTS.title, facts), pane.say(done, facts));
}

/**
 * Takes the last acceptance of a block back: every cell gets what it held before. A cell that somebody has changed
 * since is left alone and counted in the sentence.
 */
export async function takeBackBlock(pane: Pane): Promise<void> {
  const { lastBlock } = pane.state.decide;
  if (lastBlock === undefined) return;
  const { block, changed, vines } = lastBlock;
  const { changed: back, left } = await undoChange(pane.workbook, changed);
  const kept = new Set(left.map(({ sheet, row }) => `${row} ${sheet}`));
  const freed = vines.filter(
    ({ rows }) => !rows.some(({ table, index }) => kept.has(`${table.sheetRow(index)} ${table.sheet}`)),
  );
  showVines(pane, freed, { past: [], lastBlock: undefined });
  await keepCurrent(pane, "decide");
  const facts = { block, cells: back.length, left: left.length };
  if (left.length > 0) pane.tell("warning", ACCEPT_TEXTS.partlyBack, facts);
  else pane.tell("success", ACCEPT_TEXTS.takenBack, facts);
  await writeLog(
    pane,
    pane.say(ACCEPT_TEXTS.takeBack, facts),
    pane.say(left.length > 0 ? ACCEPT_TEXTS.partlyBack : ACCEPT_TEXTS.takenBack, facts),
  );
}
