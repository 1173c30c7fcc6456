import { TEXTS } from "./texts";

/** What the page without Excel shows around the grid and the pane. */
export const DESK_TEXTS = TEXTS.desk.page;

/** Names of the sample workbooks in the list. */
export const SAMPLE_NAMES = TEXTS.desk.sampleNames;
