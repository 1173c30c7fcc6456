import { changeSettings } from "../../survey/settings/changeSettings";
import { settingDifferences } from "../../survey/settings/settingDifferences";
import type { SettingId } from "../../survey/settings/settings";
import { settingsTable, type SettingCell, type SettingsTable } from "../../survey/settings/settingsTable";
import { upgradeSettings, withCells } from "../../survey/settings/upgradeSettings";
import { SETTINGS_TEXTS } from "../../texts/pane";
import { SETTINGS_TRAVEL } from "../../texts/settingsTravel";
import { changeCells, undoChange } from "../../workbook/actions/changeCells";
import { remember } from "../ownView";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { freshArea, freshSettings } from "./changeSetting";
import { movedBy, readSettingsOf } from "./settingsActions";
import { settingsOfFile } from "./settingsOfFile";
import type { OtherWorkbook, ReadSettings } from "./settingsState";

/** Reads another workbook's figures and shows in which ones it differs; nothing is written. */
export async function compareWith(pane: Pane, file: File): Promise<void> {
  const { read } = pane.state.settings;
  if (read === undefined) return;
  const table = await settingsOfFile(file);
  if (table === undefined) {
    changePage(pane, "settings", { other: undefined });
    pane.tell("warning", SETTINGS_TRAVEL.noTable, { file: file.name });
    return;
  }
  const differences = settingDifferences(read.table, table);
  const ticked = new Set(differences.map(({ id }) => id));
  changePage(pane, "settings", { other: { file: file.name, differences, ticked } });
}

/** Ticks a figure, or takes the tick off; what was shown to move then no longer holds. */
export function tickDifference(pane: Pane, other: OtherWorkbook, id: SettingId): void {
  const ticked = new Set(other.ticked);
  if (!ticked.delete(id)) ticked.add(id);
  changePage(pane, "settings", { other: { ...other, ticked, moved: undefined, problem: undefined } });
}

/** Works out and shows what the ticked figures would move; nothing is written. */
export async function showCopyMoves(pane: Pane, other: OtherWorkbook, signal: AbortSignal): Promise<void> {
  const { read } = pane.state.settings;
  if (read === undefined) return;
  if (other.ticked.size === 0) {
    changePage(pane, "settings", { other: { ...other, problem: pane.say(SETTINGS_TRAVEL.nothingTicked) } });
    return;
  }
  const table = tableOf(pane, read);
  const cells = cellsToCopy(pane, table, other, "");
  const others = read.areas.filter(({ sheet }) => sheet !== table.area.sheet);
  const plan = { table, cells, areas: [...others, withCells(table.area, cells)] };
  const moved = await movedBy(pane, read, plan, signal);
  changePage(pane, "settings", { other: { ...other, moved, problem: undefined } });
}

/** Writes the ticked figures of the other workbook into this one's table, with who copied them and when. */
export async function copyTicked(pane: Pane, other: OtherWorkbook): Promise<void> {
  const { read, by } = pane.state.settings;
  if (read === undefined) return;
  if (by.trim() === "") {
    changePage(pane, "settings", { other: { ...other, problem: pane.say(SETTINGS_TEXTS.byNeeded) } });
    return;
  }
  remember("name", by.trim());
  if (read.table === undefined)
    await pane.workbook.writeOwnSheet(freshSettings(pane.state.language, read.season.unitSystem));
  const table = tableOf(pane, read);
  const left = await write(pane, table, cellsToCopy(pane, table, other, by.trim()));
  changePage(pane, "settings", { other: undefined });
  await readSettingsOf(pane, new AbortController().signal);
  if (left > 0) pane.tell("warning", SETTINGS_TRAVEL.left, { count: left });
  else pane.tell("success", SETTINGS_TRAVEL.copied, { count: other.ticked.size, file: other.file });
}

/** Brings an older Settings table to the present shape, step by step. */
export async function bringUpToDate(pane: Pane): Promise<void> {
  const { read } = pane.state.settings;
  if (read?.table === undefined) return;
  const area = await pane.workbook.readSheet(read.table.area.sheet);
  const cells = upgradeSettings(area)?.steps.flatMap((step) => step.cells) ?? [];
  const left = await write(pane, { area }, cells);
  await readSettingsOf(pane, new AbortController().signal);
  if (left > 0) pane.tell("warning", SETTINGS_TRAVEL.left, { count: left });
  else pane.tell("success", SETTINGS_TRAVEL.upgraded);
}

/** Brings the Settings table back to exactly what it was before the last copy or upgrade. */
export async function undoTravel(pane: Pane): Promise<void> {
  const { left } = await undoChange(pane.workbook, pane.state.settings.undo ?? []);
  changePage(pane, "settings", { undo: undefined });
  await readSettingsOf(pane, new AbortController().signal);
  if (left.length > 0) pane.tell("warning", SETTINGS_TRAVEL.left, { count: left.length });
  else pane.tell("success", SETTINGS_TRAVEL.undone);
}

const tableOf = (pane: Pane, read: ReadSettings): SettingsTable =>
  read.table ?? settingsTable(freshArea(pane.state.language, read.season.unitSystem))!;

function cellsToCopy(
  pane: Pane,
  table: SettingsTable,
  { differences, ticked }: OtherWorkbook,
  by: string,
): readonly SettingCell[] {
  const changes = differences
    .filter(({ id }) => ticked.has(id))
    .map(({ id, there }) => ({ id, value: there.value }));
  return changeSettings(table, changes, by, pane.today).cells;
}

/** Writes cells that still hold what they held when they were read; the answer is how many did not. */
async function write(
  pane: Pane,
  { area }: Pick<SettingsTable, "area">,
  cells: readonly SettingCell[],
): Promise<number> {
  const { changed, left } = await changeCells(
    pane.workbook,
    cells.map(({ row, column, value }) => ({ sheet: area.sheet, row, column, content: { value } })),
    cells.map(({ row, column, before }) => {
      const formula = area.formulaAt(row - area.firstRow, column - area.firstColumn);
      return formula === null ? { value: before } : { formula };
    }),
  );
  changePage(pane, "settings", { undo: changed });
  return left.length;
}
