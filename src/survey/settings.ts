import type { Setting, SettingValues } from "./setting";
import { BUDGET_SETTINGS } from "./settings/budget";
import { CHECK_SETTINGS } from "./settings/checks";
import { CHOICE_SETTINGS } from "./settings/choice";
import { OUTLOOK_SETTINGS } from "./settings/outlook";
import { PLAN_SETTINGS } from "./settings/plan";
import { RENEWAL_SETTINGS } from "./settings/renewal";
import { WORK_SETTINGS } from "./settings/work";

/** Every figure that changes a result, in the order of the Settings sheet. */
export const SETTINGS: readonly Setting[] = [
  ...BUDGET_SETTINGS,
  ...CHOICE_SETTINGS,
  ...RENEWAL_SETTINGS,
  ...OUTLOOK_SETTINGS,
  ...WORK_SETTINGS,
  ...PLAN_SETTINGS,
  ...CHECK_SETTINGS,
];

/** The values in force before a farm changes any. */
export function defaultSettings(): SettingValues {
  return new Map(SETTINGS.map((setting) => [setting.id, setting.value]));
}
