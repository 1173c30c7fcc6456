/** What the page needs once somebody does something on it. */
export { accountView } from "../accountView";
export { checkResult, checkVerdict, foundSheets } from "./checkResult";
export { headsStep } from "./headsStep";
export { questionsView } from "./questionsView";
export { lookForTables } from "./lookForTables";
export { checkAnew, runCheck } from "./runCheck";
export { startTyping, stopTyping } from "./startTyping";
export { typedRows } from "./typedRows";
