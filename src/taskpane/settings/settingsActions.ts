import { settingOf } from "../../survey/settings/settings";
import { settingsTable } from "../../survey/settings/settingsTable";
import { SETTINGS_TEXTS } from "../../texts/pane";
import type { Progress } from "../progress";
import { readSeason } from "../../survey/reading/readSeason";
import { readSeasonOf } from "../readDecisions";
import { inSlices } from "../inSlices";
import { remember } from "../ownView";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { freshSettings, planChange, type PlannedChange } from "./changeSetting";
import { movedResults, type MovedResults } from "./movedResults";
import type { ReadSettings, SettingEdit, SettingsState } from "./settingsState";

/** Reads the workbook and its table of settings. */
export async function readSettingsOf(pane: Pane, signal: AbortSignal): Promise<void> {
  try {
    changePage(
      pane,
      "settings",
      await readNow(pane, signal, (progress) => changePage(pane, "settings", { progress })),
    );
  } finally {
    changePage(pane, "settings", { progress: undefined });
  }
}

/** Reads what the workbook holds now; what was typed stays, what would move must be shown again. */
export async function readSettingsAnew(pane: Pane, signal: AbortSignal): Promise<void> {
  const read = await readNow(pane, signal, () => {});
  pane.change((state) => {
    const { edit, other } = state.settings;
    const still = {
      edit: edit && { ...edit, moved: undefined },
      other: other && { ...other, moved: undefined },
    };
    return { ...state, settings: { ...state.settings, ...read, ...still } };
  });
}

async function readNow(
  pane: Pane,
  signal: AbortSignal,
  show: (progress: Progress) => void,
): Promise<Pick<SettingsState, "read" | "version">> {
  const { version, season, areas } = await readSeasonOf(pane, signal, show);
  const table = areas.map(settingsTable).find((found) => found !== undefined);
  return { version, read: { areas, season, table } };
}

/** Works out and shows what a figure as typed would move; nothing is written. */
export async function showMoved(pane: Pane, edit: SettingEdit, signal: AbortSignal): Promise<void> {
  const { read } = pane.state.settings;
  if (read === undefined) return;
  const plan = planChange(read, edit.id, edit.typed, "", pane.today, pane.state.language);
  if (typeof plan === "string") {
    changePage(pane, "settings", { edit: { ...edit, problem: plan, moved: undefined } });
    return;
  }
  const moved = await movedBy(pane, read, plan, signal);
  changePage(pane, "settings", { edit: { ...edit, problem: undefined, moved } });
}

/** Works out what planned figures would move, and shows how far that has come. */
export async function movedBy(
  pane: Pane,
  read: ReadSettings,
  plan: PlannedChange,
  signal: AbortSignal,
): Promise<MovedResults> {
  try {
    return await inSlices(
      movedResults(read.season, readSeason(plan.areas), pane.today),
      (done) =>
        changePage(pane, "settings", { progress: { text: pane.say(SETTINGS_TEXTS.comparing), done } }),
      signal,
    );
  } finally {
    changePage(pane, "settings", { progress: undefined });
  }
}

/**
 * Writes a figure into the Settings table, with its source, who changed it and when. The table is read again first: a
 * figure that somebody else changed meanwhile is left alone.
 */
export async function keepSetting(pane: Pane, edit: SettingEdit): Promise<void> {
  const { read, by } = pane.state.settings;
  if (read === undefined) return;
  if (by.trim() === "") {
    changePage(pane, "settings", { edit: { ...edit, problem: pane.say(SETTINGS_TEXTS.byNeeded) } });
    return;
  }
  remember("name", by.trim());
  const now = await asItIsNow(pane, read);
  const plan = planChange(now, edit.id, edit.typed, by.trim(), pane.today, pane.state.language);
  if (typeof plan === "string") {
    changePage(pane, "settings", { edit: { ...edit, problem: plan } });
    return;
  }
  if (valueIn(now, edit.id) !== valueIn(read, edit.id)) {
    changePage(pane, "settings", { edit: undefined });
    await readSettingsOf(pane, new AbortController().signal);
    pane.tell("warning", SETTINGS_TEXTS.meanwhile, { setting: pane.say(settingOf(edit.id).name) });
    return;
  }
  if (now.table === undefined)
    await pane.workbook.writeOwnSheet(freshSettings(pane.state.language, read.season.unitSystem));
  await pane.workbook.writeCells(
    plan.table.area.sheet,
    plan.cells.map(({ row, column, value }) => ({ row, column, value })),
  );
  changePage(pane, "settings", { edit: undefined });
  await readSettingsOf(pane, new AbortController().signal);
  pane.tell("success", SETTINGS_TEXTS.kept, {
    setting: pane.say(settingOf(edit.id).name),
    value: edit.typed,
  });
}

/** The page's reading with the Settings table as it stands at this moment. */
async function asItIsNow(pane: Pane, read: ReadSettings): Promise<ReadSettings> {
  if (read.table === undefined) return read;
  const area = await pane.workbook.readSheet(read.table.area.sheet);
  return { ...read, table: settingsTable(area) };
}

function valueIn({ table }: ReadSettings, id: string) {
  return table?.entries.find(({ setting }) => setting?.id === id)?.value;
}
