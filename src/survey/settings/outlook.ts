import type { Setting } from "../setting";

/** Settings for crop outlook, sampling and crop load. */
export const OUTLOOK_SETTINGS: readonly Setting[] = [];
