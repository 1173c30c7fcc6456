import path from "node:path";

/** Variables of the environment under which the test files find what was started once for all of them. */
export const BROWSER_ADDRESS = "CORDONBOOK_TEST_BROWSER";
export const DESK_ADDRESS = "CORDONBOOK_TEST_DESK";

/** The page with the pane over a workbook in memory; its bundle lies beside it. */
export const PANE_PAGE = path.resolve(".cache/pane/pane.html");

/** What `measureStart` measured, as JSON. */
export const STARTS = "CORDONBOOK_STARTS";

/** How long a page may take for one thing, in milliseconds, on a machine that does other work besides. */
export const PATIENCE = 60_000;
