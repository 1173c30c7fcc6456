import { CARE_TEXTS, CHECK_TEXTS } from "../texts/pane";
import type { Text } from "../texts/language";
import { ownSheetName } from "../workbook/actions/ownSheetName";
import { writeAgain } from "../workbook/actions/writeAgain";
import { withAccount } from "../workbook/results/withAccount";
import type { OwnSheet } from "../workbook/surveyWorkbook";
import { linesOfAccount } from "./linesOfAccount";
import type { Pane } from "./pane";
import { tellLost } from "./tellLost";
import { writeLog } from "./writeLog";

/**
 * Writes results into a sheet of our own, in place of what stood there, says so, and notes it in the log of runs.
 *
 * @param name of the sheet in each language: one that is there under another language's name is written again
 */
export async function writeResult(pane: Pane, content: OwnSheet, name: Text): Promise<void> {
  const sheet = await ownSheetName(pane.workbook, name, pane.state.language);
  const { charts, lost, left } = await writeAgain(
    pane.workbook,
    withAccount({ ...content, sheet }, linesOfAccount(pane)),
    pane.state.language,
  );
  const rows = content.rows.length;
  const lacksChart = rows > 0 && charts < (content.charts?.length ?? 0);
  const done = pane.say(lacksChart ? CHECK_TEXTS.sheetWithoutChart : CHECK_TEXTS.sheetWritten, {
    sheet,
    rows,
  });
  pane.change((state) => ({ ...state, message: { intent: "success", text: `${done} ${left}`.trim() } }));
  tellLost(pane, lost);
  await writeLog(
    pane,
    pane.say(CARE_TEXTS.logWrite, { sheet }),
    lost.length > 0 ? lost.join(" ") : pane.say(CHECK_TEXTS.sheetWritten, { sheet, rows }),
  );
}
