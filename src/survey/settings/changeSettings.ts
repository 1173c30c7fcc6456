import { OWN_FIGURE } from "../../texts/settings";
import { isBlank, type CellValue } from "../sheets/cell";
import { takeValue, unitFactor, unitsOf } from "./readSettings";
import { settingOf, type Setting, type SettingId } from "./settings";
import { cellAt, sourceName, type SettingCell, type SettingEntry, type SettingsTable } from "./settingsTable";

/** A figure to put in force; without a value, the source's figure. */
export interface SettingChange {
  readonly id: SettingId;
  readonly value?: number | string;
  /** Unit of the value; the setting's own where left out. */
  readonly unit?: string;
}

/** Why a change was not taken; its sentence stands in src/texts/settings.ts by `reason`. */
export interface SettingChangeProblem {
  readonly id: SettingId;
  readonly reason: "notANumber" | "outside" | "notAChoice" | "wrongUnit";
  readonly value: number | string;
  readonly expected: string;
}

export interface ChangedSettings {
  /** Cells to write into the table's sheet; rows that the table does not have yet come just below it. */
  readonly cells: readonly SettingCell[];
  readonly problems: readonly SettingChangeProblem[];
}

/**
 * The cells that put new figures in force: the value in the unit that stands in its row, its source (or that it is the
 * farm's own), and who changed it on which day. Nothing is written for a change that cannot be taken.
 *
 * @param by name or initials of the person
 * @param on spreadsheet serial of the day
 * @example
 * changeSettings(settingsTable({ sheet: "Settings", firstRow: 1, firstColumn: 1, values: [["Setting", "Value", "Unit"], ["Spur spacing", 10, "cm"]], formulaAt: () => null }), [{ id: "spurSpacing", value: 5 }], "AB", 46000).cells // [{ row: 2, column: 2, before: 10, value: 12.7 }]
 */
export function changeSettings(
  table: SettingsTable,
  changes: readonly SettingChange[],
  by: string,
  on: number,
): ChangedSettings {
  const cells: SettingCell[] = [];
  const problems: SettingChangeProblem[] = [];
  let newRow = table.area.firstRow + table.area.values.length;
  for (const change of changes) {
    const setting = settingOf(change.id);
    const value = change.value ?? setting.value;
    const taken = takeValue(setting, value, change.unit ?? null);
    if ("reason" in taken) {
      problems.push({ id: setting.id, value, ...taken });
      continue;
    }
    const entry = entryInForce(table, setting);
    const factor = entry ? unitFactor(setting, entry.unit) : 1;
    if (factor === undefined) {
      problems.push({ id: setting.id, reason: "wrongUnit", value, expected: unitsOf(setting) });
      continue;
    }
    const written = typeof taken.value === "number" ? round(taken.value / factor) : taken.value;
    const row = entry?.sheetRow ?? newRow++;
    const contents = {
      ...(entry ? {} : newRowContents(setting, table)),
      ...changed(setting, taken.value, table),
    };
    const history = { changedBy: by, changedOn: on };
    cells.push(...cellsOf(table, row, { ...contents, value: written, ...history }));
  }
  return { cells, problems };
}

/** The row that the reader takes for a setting: its first with a value, else its first. */
function entryInForce(table: SettingsTable, setting: Setting): SettingEntry | undefined {
  const own = table.entries.filter((entry) => entry.setting === setting);
  return own.find(({ value }) => !isBlank(value)) ?? own[0];
}

function newRowContents(setting: Setting, table: SettingsTable): Record<string, string | number> {
  return {
    setting: setting.name[table.language],
    unit: setting.unit,
    meaning: setting.meaning[table.language],
  };
}

function changed(setting: Setting, value: number | string, table: SettingsTable): { source: string } {
  return { source: value === setting.value ? sourceName(setting) : OWN_FIGURE[table.language] };
}

function cellsOf(
  table: SettingsTable,
  row: number,
  contents: Readonly<Record<string, string | number>>,
): SettingCell[] {
  return Object.entries(contents).flatMap(([id, value]): SettingCell[] => {
    const column = table.columns.get(id);
    if (column === undefined) return [];
    const before: CellValue = cellAt(table.area, row, column);
    return before === value || (isBlank(before) && value === "") ? [] : [{ row, column, before, value }];
  });
}

/** Twelve digits: 5 in are 12.7 cm, not 12.700000000000001. */
const round = (value: number) => Number(value.toPrecision(12));
