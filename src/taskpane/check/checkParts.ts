/** What the page needs once somebody does something on it. */
export { checkResult, foundSheets } from "./checkResult";
export { headsStep } from "./headsStep";
export { lookForTables } from "./lookForTables";
export { checkAnew, runCheck } from "./runCheck";
export { startTyping, stopTyping, typedRows } from "./typedRows";
