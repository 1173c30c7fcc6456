import type { Setting } from "../setting";

/** Settings for thresholds of the checks. */
export const CHECK_SETTINGS: readonly Setting[] = [];
