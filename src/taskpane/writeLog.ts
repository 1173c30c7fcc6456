import { logRun } from "../workbook/actions/runLog";
import { failureSentence } from "./failureSentence";
import { remembered } from "./ownView";
import type { Pane } from "./pane";
import { tellLost } from "./tellLost";

/**
 * Notes a run in the workbook's log, where that is switched on. The run itself is done by then, so a log that cannot
 * be written is a sentence, not a failure of the run.
 */
export async function writeLog(pane: Pane, what: string, result: string): Promise<void> {
  const { language } = pane.state;
  const moment = new Intl.DateTimeFormat(language, { dateStyle: "short", timeStyle: "short" });
  const at = Math.floor(Date.now() / 1000);
  try {
    const line = { at, who: remembered("name") || "–", what, result };
    const logged = await logRun(pane.workbook, line, language, (seconds) => moment.format(seconds * 1000));
    tellLost(pane, logged?.lost ?? []);
  } catch (failure) {
    const text = failureSentence(failure, language);
    if (text !== undefined) pane.change((state) => ({ ...state, message: { intent: "warning", text } }));
  }
}
