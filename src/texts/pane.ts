import type { Text } from "./language";
import { HEADS } from "./heads";
import { TEXTS } from "./texts";

/** Names of the pane's pages. */
export const PAGE_NAMES = TEXTS.pane.pageNames;

/** Texts of results that are older than the workbook. */
export const AGE_TEXTS = TEXTS.pane.age;

/** Texts that more than one page shows. */
export const PANE_TEXTS = TEXTS.pane.everyPage;

/** Texts of the page that checks the counts. */
export const CHECK_TEXTS = TEXTS.pane.check;

/** Texts of the check while typing. */
export const TYPING_TEXTS = TEXTS.pane.typing;

/** Texts of setting a finding aside. */
export const QUESTION_TEXTS = TEXTS.pane.questions;
export const MEND_TEXTS = TEXTS.pane.mend;
export const ASIDE_TEXTS = TEXTS.pane.aside;

/** Texts of the sheet that lists the findings. */
export const FINDINGS_SHEET_TEXTS = { ...HEADS, ...TEXTS.pane.findingsSheet };

/** Texts of the step in which a person says what their own column heads mean. */
export const HEADS_TEXTS = TEXTS.pane.heads;

/** Texts of the page that explains the functions. */
export const FUNCTIONS_TEXTS = TEXTS.pane.functions;

/** Texts of the walk that shows somebody around. */
export const WALK_TEXTS = TEXTS.pane.walk;

/** The steps of the walk, in order. */
export const WALK_STEPS: readonly Text[] = TEXTS.pane.walkSteps;

/** Texts of the page that shows where spurs are missing. */
export const GAPS_TEXTS = TEXTS.pane.gaps;

/** Texts of the page for node budgets. */
export const NODES_TEXTS = TEXTS.pane.nodes;

/** Texts of the sheets that list and map the gaps. */
export const GAP_SHEET_TEXTS = { ...HEADS, ...TEXTS.pane.gapSheet };

/** Texts of the page for the figures that change results. */
export const SETTINGS_TEXTS = TEXTS.pane.settings;

/** Areas of the figures, as headings. */
export const SETTING_GROUPS = TEXTS.pane.settingGroups;

/** Texts of the page on which cordons are decided. */
export const DECIDE_TEXTS = TEXTS.pane.decide;

/** Texts of the page that shows what crop the pruning leaves. */
export const OUTLOOK_TEXTS = TEXTS.pane.outlook;

/** Texts of the sheet that lists the outlook. */
export const OUTLOOK_SHEET_TEXTS = { ...HEADS, ...TEXTS.pane.outlookSheet };

/** Texts of the page for the care of the workbook. */
export const CARE_TEXTS = TEXTS.pane.care;
