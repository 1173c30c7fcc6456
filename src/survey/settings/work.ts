import type { Setting } from "../setting";

/** Settings for hours, crew days and the order of work. */
export const WORK_SETTINGS: readonly Setting[] = [];
