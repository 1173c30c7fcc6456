import { html } from "lit";
import { EXCEL_REPORT_TEXTS as TEXTS } from "../../texts/excelReport";
import { WorkbookProblem } from "../../workbook/surveyWorkbook";
import type { Pane } from "../pane";
import { printPage } from "../printPage";

/** Whether printing from the pane begins. */
export async function printed(pane: Pane): Promise<boolean> {
  const title = pane.say(TEXTS.title);
  try {
    await printPage(pane, title, html`<h1>${title}</h1>`);
    return true;
  } catch (failure) {
    if (failure instanceof WorkbookProblem && failure.code === "notPrinted") return false;
    throw failure;
  }
}
