import type { DataValidation, NamedRange, WriteSheet } from "hucre";
import { SOURCES } from "../../src/domain/sources";
import type { Setting } from "../../src/survey/setting";
import { SETTINGS } from "../../src/survey/settings";
import { SHEETS } from "../../src/survey/sheets";
import { surveySheet, type SurveySheetOptions } from "./surveySheet";

/** The Settings sheet: every figure that changes a result, with its unit, source and meaning beside it. */
export function settingsSheet(options: SurveySheetOptions): WriteSheet {
  const sheet = surveySheet(
    SHEETS.settings,
    SETTINGS.map((setting) => ({
      setting: setting.id,
      value: setting.value,
      unit: setting.unit,
      source: SOURCES[setting.source]?.name ?? setting.source,
      meaning: setting.meaning.en,
    })),
    options,
  );
  return { ...sheet, dataValidations: SETTINGS.flatMap(valueValidation) };
}

/** The name of the cell that holds a setting's value: "Spur spacing" is Setting_Spur_spacing. */
export function settingName(id: string): string {
  return `Setting_${id.replace(/[^A-Za-z0-9]+/g, "_").replace(/^_|_$/g, "")}`;
}

/** One name per setting, pointing at its value. */
export function settingNames(): NamedRange[] {
  return SETTINGS.map((setting, index) => ({
    name: settingName(setting.id),
    range: `${SHEETS.settings.name.en}!$B$${index + 2}`,
  }));
}

function valueValidation(setting: Setting, index: number): DataValidation[] {
  const shared = {
    range: `B${index + 2}`,
    showErrorMessage: true,
    errorStyle: "warning" as const,
    errorTitle: "Settings",
    errorMessage: setting.meaning.en.slice(0, 225),
  };
  if (setting.choices) return [{ ...shared, type: "list", values: [...setting.choices] }];
  if (setting.least === undefined || setting.most === undefined) return [];
  return [
    {
      ...shared,
      type: "decimal",
      operator: "between",
      formula1: String(setting.least),
      formula2: String(setting.most),
    },
  ];
}
