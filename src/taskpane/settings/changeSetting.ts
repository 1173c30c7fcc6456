import type { UnitSystem } from "../../domain/units";
import { changeSettings, type SettingChange } from "../../survey/settings/changeSettings";
import {
  settingIn,
  settingOf,
  SETTINGS,
  settingUnit,
  type Setting,
  type SettingId,
} from "../../survey/settings/settings";
import {
  settingsTable,
  sourceName,
  type SettingCell,
  type SettingsTable,
} from "../../survey/settings/settingsTable";
import type { SheetArea } from "../../survey/reading/sheetArea";
import { SHEETS } from "../../survey/sheets/sheets";
import { textNumber } from "../../survey/reading/textNumber";
import { withCells } from "../../survey/settings/upgradeSettings";
import { say, type Language } from "../../texts/language";
import { SETTING_CHANGE_PROBLEMS } from "../../texts/settings";
import type { OwnSheet } from "../../workbook/surveyWorkbook";
import type { ReadSettings } from "./settingsState";

/** The survey as it would be with a change in force, and the cells that put it in force. */
export interface PlannedChange {
  readonly table: SettingsTable;
  readonly cells: readonly SettingCell[];
  readonly areas: readonly SheetArea[];
}

/**
 * Plans a change of one figure without writing anything. A workbook without a table of settings has one made for the
 * plan, with every figure as its source has it.
 *
 * @param typed as a person typed it, in the workbook's units
 * @returns the plan, or a sentence why the figure cannot be taken
 */
export function planChange(
  read: ReadSettings,
  id: SettingId,
  typed: string,
  by: string,
  on: number,
  language: Language,
): PlannedChange | string {
  const setting = settingOf(id);
  const units = read.season.unitSystem;
  const table = read.table ?? settingsTable(freshArea(language, units))!;
  const unit = settingUnit(setting, units);
  const change: SettingChange = { id, value: typedValue(setting, typed), unit };
  const { cells, problems } = changeSettings(table, [change], by, on);
  const [problem] = problems;
  if (problem !== undefined)
    return say(SETTING_CHANGE_PROBLEMS[problem.reason], language, {
      setting: setting.name[language],
      value: problem.value,
      expected: problem.expected,
    });
  const changed = withCells(table.area, cells);
  const others = read.areas.filter(({ sheet }) => sheet !== table.area.sheet);
  return { table, cells, areas: [...others, changed] };
}

/** A number where the setting holds one and a number was typed; else the words. */
function typedValue(setting: Setting, typed: string): number | string {
  if (setting.kind !== "figure") return typed.trim();
  return textNumber(typed) ?? typed.trim();
}

/** A sheet of settings with every figure as its source has it, in the units of the workbook. */
export function freshSettings(language: Language, units: UnitSystem): OwnSheet {
  const { columns, name } = SHEETS.settings;
  return {
    sheet: name[language],
    headers: columns.map(({ header }) => header[language]),
    columns: columns.map(({ width, kind, id }) => ({
      width,
      wrap: id === "meaning" || id === "source",
      ...(kind === "date" ? { format: "yyyy-mm-dd" } : {}),
    })),
    rows: SETTINGS.map((setting) => [
      setting.name[language],
      settingIn(setting, setting.value, units),
      settingUnit(setting, units),
      sourceName(setting),
      setting.meaning[language],
      null,
      null,
    ]),
  };
}

/** That sheet as it would stand, for plans in a workbook that has none. */
export function freshArea(language: Language, units: UnitSystem): SheetArea {
  const { sheet, headers, rows } = freshSettings(language, units);
  return { sheet, firstRow: 1, firstColumn: 1, values: [headers, ...rows], formulaAt: () => null };
}
