import { chooseCordons } from "../../domain/choice/chooseCordons";
import type { CellValue } from "../../survey/cell";
import { cellName } from "../../survey/cellName";
import { choiceRules } from "../../survey/choice/choiceRules";
import type { DecidedVine } from "../../survey/decideSurvey";
import type { Survey, SurveyTable } from "../../survey/survey";
import type { SheetArea } from "../../survey/sheetArea";
import { choiceId } from "../../survey/vinePlaces";
import { ACCEPT_TEXTS } from "../../texts/accept";
import { DECIDE_TEXTS } from "../../texts/pane";
import { changeCells, sameContent, undoChange } from "../../workbook/actions/changeCells";
import { remember } from "../ownView";
import type { Pane } from "../pane";
import { writeLog } from "../writeLog";
import { acceptPlan } from "./acceptPlan";
import { choiceWord } from "./choiceWord";
import { vineKey, type DecideState } from "./decideState";

/**
 * Writes what was decided for all settled vines of a block into the Cordons sheet, in one step or not at all: the rows
 * are read again first, and where one of them is no longer as it was read, nothing is written. The vines are then
 * decided anew with their fixed choices.
 *
 * @param by who accepts; the name goes into the log of runs where that is switched on
 */
export async function acceptBlock(pane: Pane, block: string, by: string): Promise<void> {
  const { result } = pane.state.decide;
  if (result === undefined) return;
  const { vines, wanted, withoutColumn } = acceptPlan(result.vines, block);
  if (withoutColumn !== undefined) {
    pane.tell("warning", DECIDE_TEXTS.noColumn, { sheet: withoutColumn });
    return;
  }
  const unlike = await rowChangedSince(pane, vines);
  if (unlike !== undefined) {
    pane.tell("warning", ACCEPT_TEXTS.meanwhile, { ...unlike });
    return;
  }
  const { changed, left } = await changeCells(
    pane.workbook,
    wanted,
    wanted.map(() => ({ value: null })),
  );
  if (left.length > 0) {
    await undoChange(pane.workbook, changed);
    const [{ sheet, row, column }] = left;
    pane.tell("warning", ACCEPT_TEXTS.meanwhile, { sheet, cell: cellName(row, column) });
    return;
  }
  showVines(
    pane,
    vines.map((vine) => acceptedVine(result.survey, vine)),
    { accepting: undefined, last: undefined, lastBlock: { block, changed, vines } },
  );
  remember("name", by.trim());
  const facts = { block, vines: vines.length, cells: changed.length, by: by.trim() };
  pane.tell("success", ACCEPT_TEXTS.done, facts);
  await writeLog(pane, pane.say(ACCEPT_TEXTS.title, facts), pane.say(ACCEPT_TEXTS.done, facts));
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
  showVines(pane, freed, { last: undefined, lastBlock: undefined });
  const facts = { block, cells: back.length, left: left.length };
  if (left.length > 0) pane.tell("warning", ACCEPT_TEXTS.partlyBack, facts);
  else pane.tell("success", ACCEPT_TEXTS.takenBack, facts);
  await writeLog(
    pane,
    pane.say(ACCEPT_TEXTS.takeBack, facts),
    pane.say(left.length > 0 ? ACCEPT_TEXTS.partlyBack : ACCEPT_TEXTS.takenBack, facts),
  );
}

/** Puts vines in place of those with their names. */
function showVines(pane: Pane, shown: readonly DecidedVine[], rest: Partial<DecideState>): void {
  const byKey = new Map(shown.map((vine) => [vineKey(vine), vine]));
  pane.change((state) => {
    const { result } = state.decide;
    if (result === undefined) return state;
    const vines = result.vines.map((vine) => byKey.get(vineKey(vine)) ?? vine);
    const turns = new Map([...state.decide.turns].filter(([key]) => !byKey.has(key)));
    return { ...state, decide: { ...state.decide, ...rest, turns, result: { ...result, vines } } };
  });
}

/** The vine with everything that was decided as fixed choices. */
function acceptedVine(survey: Survey, vine: DecidedVine): DecidedVine {
  const candidates = vine.toDecide.candidates.map((candidate, place) => ({
    ...candidate,
    fixedChoice: candidate.fixedChoice ?? (vine.decision.cordons[place].verdict as "stays" | "goes"),
  }));
  const toDecide = { ...vine.toDecide, candidates };
  return { ...vine, toDecide, decision: chooseCordons(toDecide, choiceRules(survey.settings)) };
}

/** The first cell of these vines that holds something else than what was read; each sheet is read once. */
async function rowChangedSince(
  pane: Pane,
  vines: readonly DecidedVine[],
): Promise<{ sheet: string; cell: string } | undefined> {
  const areas = new Map<SurveyTable, SheetArea>();
  for (const table of new Set(vines.flatMap(({ rows }) => rows.map((row) => row.table))))
    areas.set(table, await pane.workbook.readSheet(table.sheet));
  for (const vine of vines)
    for (let place = 0; place < vine.rows.length; place++) {
      const { table, index } = vine.rows[place];
      const row = table.sheetRow(index);
      const area = areas.get(table)!;
      const cells = area.values[row - area.firstRow] ?? [];
      for (const { column, value } of heldCells(vine, place)) {
        const now = cells[column - area.firstColumn] ?? null;
        if (!sameContent({ value }, { value: now }))
          return { sheet: table.sheet, cell: cellName(row, column) };
      }
    }
  return undefined;
}

/** What the cells of a row should hold: what was read, or what a person has fixed on this page since. */
function heldCells(
  vine: DecidedVine,
  place: number,
): { readonly column: number; readonly value: CellValue }[] {
  const { table, index } = vine.rows[place];
  const { fixedChoice } = vine.toDecide.candidates[place];
  const fixed = table.column("fixedChoice");
  const fixedSince =
    fixed !== undefined && fixedChoice !== undefined && fixedChoice !== choiceId(fixed, index);
  return table.columns.flatMap((one) => {
    if (fixedSince && one.column.id === "note") return [];
    const value = fixedSince && one === fixed ? choiceWord(one, fixedChoice) : one.raw[index];
    return [{ column: one.sheetColumn, value }];
  });
}
