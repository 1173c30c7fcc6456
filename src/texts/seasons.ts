import { HEADS } from "./heads";
import { TEXTS } from "./texts";

/** Season against season: live spurs, gaps and trunks over the winters of the Winters sheet. */
export const SEASONS_TEXTS = { ...HEADS, ...TEXTS.seasons };
