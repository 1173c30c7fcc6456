import path from "node:path";

/** Variables of the environment under which the test files find what was started once for all of them. */
export const BROWSER_ADDRESS = "CORDONBOOK_TEST_BROWSER";
export const DESK_ADDRESS = "CORDONBOOK_TEST_DESK";

/** The bundle with the pane over a workbook in memory. */
export const PANE_SCRIPT = path.resolve(".cache/pane/harness.js");
