import { TEXTS } from "./texts";

/** Planning a count of a sample of vines. */
export const COUNT_PLAN_TEXTS = TEXTS.countPlan;
