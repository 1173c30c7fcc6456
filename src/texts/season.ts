import type { Text } from "./language";
import { HEADS } from "./heads";
import { TEXTS } from "./texts";

/** Headers of the Winters sheet: a row of vines in a winter. */
export const WINTER_HEADERS = HEADS;

/** Name of the sheet that the add-in writes. */
export const SEASON_SHEET: Text = TEXTS.season.seasonSheet;
