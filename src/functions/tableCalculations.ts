/** The calculations over whole tables, with all the reading of sheets that they need. */
export { decisionsOfTable, scoresOfTable } from "./choiceOfTable";
export { findingsOfCounts } from "./findingsOfCounts";
export { gapsOfTable } from "./gapsOfTable";
export { outlookOfTables } from "./outlookOfTables";
export { renewalOfTables } from "./renewalOfTables";
