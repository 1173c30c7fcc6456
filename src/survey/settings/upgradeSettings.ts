import { isBlank, type CellValue } from "../sheets/cell";
import { FORMER_NAMES, settingOf, SETTINGS, type Setting, type SettingId } from "./settings";
import type { SheetArea } from "../reading/sheetArea";
import { SHEETS } from "../sheets/sheets";
import { cellAt, settingsTable, sourceName, type SettingCell, type SettingsTable } from "./settingsTable";
import { wordKey } from "../sheets/words";

/** A step from an older shape of the Settings table towards the present one. */
export type SettingsStep = "names" | "columns" | "history" | "rows";

/** What one step writes. */
export interface TakenStep {
  readonly step: SettingsStep;
  /** What it adds or renames, as a person knows it. */
  readonly names: readonly string[];
  readonly cells: readonly SettingCell[];
}

export interface UpgradedSettings {
  /** The steps that the table needs, in order; none when it has the present shape. */
  readonly steps: readonly TakenStep[];
  /** The sheet after them. */
  readonly area: SheetArea;
}

/**
 * Brings a Settings table to the present shape, step by step: renamed settings get their present names; a table of
 * names and values gets its unit, source and meaning columns; then the columns for who changed a figure when; then the
 * settings that it does not have yet, below it, with the source's figure. No value changes, no row or column of the
 * farm's own is touched, and every cell to be written says what stands there now.
 *
 * Undefined when the sheet holds no Settings table.
 *
 * @example
 * upgradeSettings({ sheet: "Settings", firstRow: 1, firstColumn: 1, values: [["Setting", "Value"], ["Spur spacing", 5]], formulaAt: () => null }).steps.map(({ step }) => step) // ["columns", "history", "rows"]
 */
export function upgradeSettings(
  area: SheetArea,
  formerNames: FormerNames = FORMER_NAMES,
): UpgradedSettings | undefined {
  if (settingsTable(area) === undefined) return undefined;
  const steps: TakenStep[] = [];
  let now = area;
  for (const [step, take] of Object.entries(STEPS) as [SettingsStep, StepTaker][]) {
    const { names, cells } = take(settingsTable(now)!, formerNames);
    if (cells.length === 0) continue;
    steps.push({ step, names, cells });
    now = withCells(now, cells);
  }
  return { steps, area: now };
}

type FormerNames = Readonly<Record<string, SettingId>>;
type StepTaker = (table: SettingsTable, formerNames: FormerNames) => Omit<TakenStep, "step">;

const STEPS: Readonly<Record<SettingsStep, StepTaker>> = {
  names: renameSettings,
  columns: (table) => addColumns(table, ["unit", "source", "meaning"]),
  history: (table) => addColumns(table, ["changedBy", "changedOn"]),
  rows: addRows,
};

function renameSettings(table: SettingsTable, formerNames: FormerNames): Omit<TakenStep, "step"> {
  const present = new Map(
    Object.entries(formerNames).map(
      ([old, id]) => [wordKey(old), settingOf(id).name[table.language]] as const,
    ),
  );
  const has = new Set(table.entries.map(({ name }) => wordKey(name)));
  const column = table.columns.get("setting")!;
  const cells = table.entries.flatMap(({ name, sheetRow }): SettingCell[] => {
    const value = present.get(wordKey(name));
    if (value === undefined || has.has(wordKey(value))) return [];
    return [{ row: sheetRow, column, before: cellAt(table.area, sheetRow, column), value }];
  });
  return { names: cells.map(({ value }) => String(value)), cells };
}

function addColumns(table: SettingsTable, ids: readonly string[]): Omit<TakenStep, "step"> {
  const missing = SHEETS.settings.columns.filter(({ id }) => ids.includes(id) && !table.columns.has(id));
  const width = Math.max(...table.area.values.map((row) => row.length));
  const free = table.area.firstColumn + width;
  const cells = missing.flatMap((each, index) => {
    const column = free + index;
    const header = { row: table.headerRow, column, before: null, value: each.header[table.language] };
    const below = table.entries.flatMap(({ setting, sheetRow }): SettingCell[] => {
      const value = setting && aboutSetting(setting, each.id, table);
      return value ? [{ row: sheetRow, column, before: null, value }] : [];
    });
    return [header, ...below];
  });
  return { names: missing.map(({ header }) => header[table.language]), cells };
}

function addRows(table: SettingsTable): Omit<TakenStep, "step"> {
  const has = new Set(table.entries.flatMap(({ setting }) => setting?.id ?? []));
  const missing = SETTINGS.filter(({ id }) => !has.has(id));
  const first = table.area.firstRow + table.area.values.length;
  const cells = missing.flatMap((setting, index) =>
    [...table.columns].flatMap(([id, column]): SettingCell[] => {
      const value = aboutSetting(setting, id, table);
      return value === "" ? [] : [{ row: first + index, column, before: null, value }];
    }),
  );
  return { names: missing.map(({ name }) => name[table.language]), cells };
}

/** What a column says of a setting before anybody changes it; "" where it says nothing. */
function aboutSetting(setting: Setting, columnId: string, { language }: SettingsTable): string | number {
  switch (columnId) {
    case "setting":
      return setting.name[language];
    case "value":
      return setting.value;
    case "unit":
      return setting.unit;
    case "source":
      return sourceName(setting);
    case "meaning":
      return setting.meaning[language];
    default:
      return "";
  }
}

/** The sheet as it stands once the cells are written. */
/** The sheet as it stands after cells are written; for looking at what a change would do. */
export function withCells(area: SheetArea, cells: readonly SettingCell[]): SheetArea {
  const values = area.values.map((row): CellValue[] => [...row]);
  for (const { row, column, value } of cells) {
    const rowIndex = row - area.firstRow;
    while (values.length <= rowIndex) values.push([]);
    values[rowIndex][column - area.firstColumn] = value;
  }
  const width = Math.max(...values.map((row) => row.length));
  return {
    ...area,
    values: values.map((row) => Array.from({ length: width }, (_, index) => row[index] ?? null)),
    formulaAt: (row, column) => (isBlank(area.values[row]?.[column]) ? null : area.formulaAt(row, column)),
  };
}
