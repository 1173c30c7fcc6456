import type { DataValidation, NamedRange, WriteSheet } from "hucre";
import type { UnitSystem } from "../../src/domain/units";
import {
  settingIn,
  settingNamed,
  SETTINGS,
  settingUnit,
  type Setting,
} from "../../src/survey/settings/settings";
import { unitFactor } from "../../src/survey/settings/readSettings";
import { sourceName } from "../../src/survey/settings/settingsTable";
import type { Language } from "../../src/texts/language";
import { SHEETS } from "../../src/survey/sheets/sheets";
import type { FarmRow } from "./farm";
import { surveySheet, type SurveySheetOptions } from "./surveySheet";

/** A limit in the setting's own unit, as it stands beside the unit that is written. */
function written(setting: Setting, value: number, unit: string): number {
  return Number((value / unitFactor(setting, unit)!).toPrecision(12));
}

/** The rows of the Settings sheet: every figure that changes a result, with its unit, source and meaning beside it. */
export function settingRows(language: Language = "en", units: UnitSystem = "US"): FarmRow[] {
  return SETTINGS.map((setting) => ({
    setting: setting.name[language],
    value: settingIn(setting, setting.value, units),
    unit: settingUnit(setting, units),
    source: sourceName(setting),
    meaning: setting.meaning[language],
  }));
}

/** The Settings sheet with the limits and words that each value may take. */
export function settingsSheet(rows: readonly FarmRow[], options: SurveySheetOptions): WriteSheet {
  return {
    ...surveySheet(SHEETS.settings, rows, options),
    dataValidations: rows.flatMap((row, index) =>
      valueValidation(settingOf(row), String(row.unit ?? ""), index, options.language ?? "en"),
    ),
  };
}

/** The name of the cell that holds a setting's value, in every language: "Spur spacing" is Setting_Spur_spacing. */
export function settingName(name: string): string {
  return `Setting_${name.replace(/[^A-Za-z0-9]+/g, "_").replace(/^_|_$/g, "")}`;
}

/** One name per setting, pointing at its value in the first row that gives one. */
export function settingNames(rows: readonly FarmRow[], language: Language = "en"): NamedRange[] {
  return SETTINGS.map((setting) => ({
    name: settingName(setting.name.en),
    range: `${inReference(SHEETS.settings.name[language])}!$B$${rows.findIndex((row) => row.setting === setting.name[language]) + 2}`,
  }));
}

/** A sheet's name as it stands in a reference: quoted where it has letters beyond the plain ones. */
function inReference(sheet: string): string {
  return /^[A-Za-z_][\w.]*$/.test(sheet) ? sheet : `'${sheet}'`;
}

function settingOf(row: FarmRow): Setting | undefined {
  return settingNamed(String(row.setting));
}

function valueValidation(
  setting: Setting | undefined,
  unit: string,
  index: number,
  language: Language,
): DataValidation[] {
  if (!setting) return [];
  const shared = {
    range: `B${index + 2}`,
    showErrorMessage: true,
    errorStyle: "warning" as const,
    errorTitle: SHEETS.settings.name[language],
    errorMessage: setting.meaning[language].slice(0, 225),
  };
  if (setting.kind === "oneOf") return [{ ...shared, type: "list", values: [...setting.choices] }];
  if (setting.kind === "words") return [];
  return [
    {
      ...shared,
      type: "decimal",
      operator: "between",
      formula1: String(written(setting, setting.least, unit)),
      formula2: String(written(setting, setting.most, unit)),
    },
  ];
}
