import { HEADS } from "./heads";
import { TEXTS } from "./texts";

/** Words on the sheets with the decision on every cordon and with the crew cards. */
export const RESULT_SHEET_TEXTS = { ...HEADS, ...TEXTS.resultSheets };
