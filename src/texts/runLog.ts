import { TEXTS } from "./texts";

/** The sheet that says who ran what when. */
export const RUN_LOG = TEXTS.runLog;
