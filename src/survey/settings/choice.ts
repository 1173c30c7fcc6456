import type { Setting } from "../setting";

/** Settings for the cordon score, the choice and renewal. */
export const CHOICE_SETTINGS: readonly Setting[] = [];
