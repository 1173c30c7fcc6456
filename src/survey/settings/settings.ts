import type { Setting, SettingValues } from "./setting";
import { BUDGET_SETTINGS } from "./budget";
import { CHECK_SETTINGS } from "./checks";
import { CHOICE_SETTINGS } from "./choice";
import { OUTLOOK_SETTINGS } from "./outlook";
import { PLAN_SETTINGS } from "./plan";
import { RENEWAL_SETTINGS } from "./renewal";
import { WORK_SETTINGS } from "./work";

/** Every figure that changes a result, by area, in the order of the Settings sheet. */
export const SETTINGS_BY_AREA = {
  budget: BUDGET_SETTINGS,
  choice: CHOICE_SETTINGS,
  renewal: RENEWAL_SETTINGS,
  outlook: OUTLOOK_SETTINGS,
  work: WORK_SETTINGS,
  plan: PLAN_SETTINGS,
  checks: CHECK_SETTINGS,
} as const satisfies Record<string, readonly Setting[]>;

/** Every figure that changes a result, in the order of the Settings sheet. */
export const SETTINGS: readonly Setting[] = Object.values(SETTINGS_BY_AREA).flat();

/** The values in force before a farm changes any. */
export function defaultSettings(): SettingValues {
  return new Map(SETTINGS.map((setting) => [setting.id, setting.value]));
}
