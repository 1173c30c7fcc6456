import { farmFigures, type FarmFigure } from "../../survey/crop/farmFigures";
import { readSeason } from "../../survey/reading/readSeason";
import { FARM_FIGURE_TEXTS } from "../../texts/farmFigures";
import { SETTINGS_TEXTS } from "../../texts/pane";
import { changeAllOrNone, undoChange } from "../../workbook/actions/changeCells";
import { inSlices } from "../inSlices";
import { remember } from "../ownView";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { freshSettings } from "../settings/changeSetting";
import { movedResults } from "../settings/movedResults";
import { readSettingsOf } from "../settings/settingsActions";
import { writeLog } from "../writeLog";
import { isoDay } from "../../survey/reading/serialDate";
import { figureDigits, figureWords } from "./figureWords";
import type { TakenFigure } from "./outlookState";
import { planFigure } from "./planFigure";
import { workOutlook } from "./workOutlook";

/** One name for a figure of a cultivar. */
export function figureKey({ figure, cultivar }: Pick<FarmFigure, "figure" | "cultivar">): string {
  return `${figure} ${cultivar}`.trim();
}

/** Works out and shows what a proposed figure would move, in the workbook as it stands now; nothing is written. */
export async function showFigureMoves(pane: Pane, key: string, signal: AbortSignal): Promise<void> {
  const show = (text: string, done: number) => changePage(pane, "outlook", { progress: { text, done } });
  changePage(pane, "outlook", { take: undefined, taken: undefined });
  show(pane.say(SETTINGS_TEXTS.comparing), 0);
  try {
    await readSettingsOf(pane, signal);
    const read = pane.state.settings.read!;
    const figures = farmFigures(read.season);
    const figure = figures.find((one) => figureKey(one) === key);
    changePage(pane, "outlook", { figures, version: pane.state.settings.version });
    if (figure === undefined) {
      pane.tell("warning", FARM_FIGURE_TEXTS.gone);
      return;
    }
    const plan = planFigure(read, figure, "", pane.today, pane.state.language);
    if (typeof plan === "string") {
      changePage(pane, "outlook", { take: { key, figure, read, problem: plan } });
      return;
    }
    const after = readSeason(plan.areas);
    const comparing = (done: number) => show(pane.say(SETTINGS_TEXTS.comparing), done);
    const moved = await inSlices(movedResults(read.season, after, pane.today), comparing, signal);
    changePage(pane, "outlook", { take: { key, figure, read, moved } });
  } finally {
    changePage(pane, "outlook", { progress: undefined });
  }
}

/** Writes the figure after the person's yes; a cell that somebody changed since it was shown stops all of it. */
export async function takeFigure(pane: Pane, signal: AbortSignal): Promise<void> {
  const { take } = pane.state.outlook;
  const by = pane.state.settings.by.trim();
  if (take === undefined) return;
  if (by === "") {
    changePage(pane, "outlook", { take: { ...take, problem: pane.say(SETTINGS_TEXTS.byNeeded) } });
    return;
  }
  remember("name", by);
  const { language } = pane.state;
  const { figure, read } = take;
  const plan = planFigure(read, figure, by, pane.today, language);
  if (typeof plan === "string") {
    changePage(pane, "outlook", { take: { ...take, problem: plan } });
    return;
  }
  if (plan.needsTable) await pane.workbook.writeOwnSheet(freshSettings(language, read.season.unitSystem));
  const { changed, left } = await changeAllOrNone(pane.workbook, plan.cells, plan.expected);
  const taken = { figure, where: plan.where, by, cells: changed };
  if (left.length > 0) {
    changePage(pane, "outlook", { take: undefined });
    await workOutlook(pane, signal);
    pane.tell("warning", FARM_FIGURE_TEXTS.meanwhile, { where: plan.where });
    return;
  }
  changePage(pane, "outlook", { take: undefined, taken });
  await workAgain(pane, signal);
  const words = takenWords(pane, taken);
  pane.tell("success", FARM_FIGURE_TEXTS.taken, words);
  await writeLog(pane, `${words.figure}: ${words.value}`, pane.say(FARM_FIGURE_TEXTS.taken, words));
}

/** Brings the cells of the figure that was taken last back to exactly what they held. */
export async function undoFigure(pane: Pane, taken: TakenFigure, signal: AbortSignal): Promise<void> {
  const { left } = await undoChange(pane.workbook, taken.cells);
  changePage(pane, "outlook", { taken: undefined });
  await workAgain(pane, signal);
  const { where } = taken;
  if (left.length > 0) pane.tell("warning", FARM_FIGURE_TEXTS.meanwhile, { where });
  else pane.tell("success", FARM_FIGURE_TEXTS.undone, { figure: figureWords(pane, taken.figure) });
}

function takenWords(pane: Pane, { figure, where, by }: TakenFigure) {
  const value = figureDigits(pane, figure, figure.proposed.value);
  return { figure: figureWords(pane, figure), value, where, by, on: isoDay(pane.today) };
}

/** Works the outlook out anew and keeps the block that is shown; the Settings page reads anew when it is opened. */
async function workAgain(pane: Pane, signal: AbortSignal): Promise<void> {
  const { block } = pane.state.outlook;
  changePage(pane, "settings", { read: undefined, edit: undefined });
  await workOutlook(pane, signal);
  changePage(pane, "outlook", { block });
}
