import { TEXTS } from "./texts";

/** Sentences for settings that come from another workbook, and for older Settings tables. */
export const SETTINGS_TRAVEL = TEXTS.settingsTravel;
