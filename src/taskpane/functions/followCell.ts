import { FUNCTIONS } from "../../functions/registry";
import { formulaHere } from "../../workbook/actions/formulaHere";
import { explainCell } from "../../workbook/actions/explainCell";
import { changePage } from "../changePage";
import { failureSentence } from "../failureSentence";
import type { Pane } from "../pane";
import { surroundings } from "./insertFormula";

/** Milliseconds after which a cell that stays selected is explained. */
const PAUSE_MS = 150;

interface Following {
  isOlder: boolean;
  timer: ReturnType<typeof setTimeout> | undefined;
  run: number;
}

const followings = new WeakMap<Pane, Following>();

/** Explains the selected cell while the page of the functions is shown, anew after every change of it. */
export function followCell(pane: Pane): void {
  const known = followings.get(pane);
  if (known) {
    const { cellLanguage } = pane.state.functions;
    const isOtherLanguage = cellLanguage !== undefined && cellLanguage !== pane.state.language;
    if (known.isOlder || isOtherLanguage) explainSoon(pane, known);
    return;
  }
  const following: Following = { isOlder: true, timer: undefined, run: 0 };
  followings.set(pane, following);
  const turn = () => {
    following.isOlder = true;
    if (pane.state.page === "functions") explainSoon(pane, following);
  };
  void watch(pane, turn).catch(() => followings.delete(pane));
  explainSoon(pane, following);
}

async function watch(pane: Pane, turn: () => void): Promise<void> {
  const stops = [await pane.workbook.watchSelection?.(turn), await pane.workbook.watchCells(turn)];
  pane.keepWatch("explain", async () => {
    for (const stop of stops) await stop?.();
  });
}

/** Has the selected cell looked at again, after other functions were opened. */
export function lookAgain(pane: Pane): void {
  const following = followings.get(pane);
  if (following) explainSoon(pane, following);
}

function explainSoon(pane: Pane, following: Following): void {
  following.isOlder = false;
  clearTimeout(following.timer);
  following.timer = setTimeout(() => void explain(pane, following), PAUSE_MS);
}

async function explain(pane: Pane, following: Following): Promise<void> {
  const run = (following.run += 1);
  const { language } = pane.state;
  const found = await lookAt(pane).catch((failure: unknown) => ({
    cell: undefined,
    here: undefined,
    cellProblem: failureSentence(failure, language),
  }));
  if (run !== following.run) return;
  changePage(pane, "functions", { cellProblem: undefined, ...found, cellLanguage: language });
}

/** The selected cell, explained, and the formulas of the opened functions for it. */
async function lookAt(pane: Pane) {
  const { language, functions } = pane.state;
  const place = await pane.workbook.selectedCell();
  if (place === undefined) return { cell: undefined, here: undefined };
  const cell = await explainCell(pane.workbook, place, language);
  const opened = FUNCTIONS.filter(({ id }) => functions.open.has(id));
  if (opened.length === 0) return { cell, here: undefined };
  const around = { ...(await surroundings(pane)), place };
  return { cell, here: new Map(opened.map((called) => [called.id, formulaHere(called, around)])) };
}
