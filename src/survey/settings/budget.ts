import type { Setting } from "../setting";

/** Settings for node budgets, injury and spur fit. */
export const BUDGET_SETTINGS: readonly Setting[] = [];
