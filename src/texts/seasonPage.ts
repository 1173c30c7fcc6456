import { TEXTS } from "./texts";

/** Texts of the page on which the pane opens. */
export const SEASON_TEXTS = TEXTS.seasonPage;
