import type { Text } from "./language";
import { TEXTS } from "./texts";

/** What the Source column says of a figure that is not the source's. */
export const OWN_FIGURE: Text = TEXTS.settings.ownFigure;

/** Why a change of a setting was not taken, by reason. */
export const SETTING_CHANGE_PROBLEMS: Readonly<Record<string, Text>> = TEXTS.settings.settingChangeProblems;

/** The steps that bring an older Settings table to the present shape. */
export const SETTINGS_STEPS: Readonly<Record<"names" | "columns" | "history" | "rows", Text>> =
  TEXTS.settings.settingsSteps;
