import { PROJECT_VERSION } from "../../functions/version";
import { EXCEL_REPORT_TEXTS as TEXTS } from "../../texts/excelReport";
import type { ExcelExtras } from "../../workbook/excel/excelExtras";
import { REPORT_PAGES, type ReportRow } from "../../workbook/excel/reportPages";
import { excelReportSheet, excelReportText } from "../../workbook/results/excelReportSheet";
import { CHECK_TEXTS } from "../../texts/pane";
import { ownSheetName } from "../../workbook/actions/ownSheetName";
import { writeAgain } from "../../workbook/actions/writeAgain";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { writtenDate } from "../writtenDate";
import { tellLost } from "../tellLost";
import { printed } from "./printed";

const wait = (milliseconds: number) => new Promise<void>((done) => setTimeout(done, milliseconds));

/** Makes the report about this Excel: shows its lines as they come, then writes them into a sheet of ours. */
export async function makeReport(
  pane: Pane,
  excel: Pick<ExcelExtras, "report">,
  signal: AbortSignal,
  print: () => Promise<boolean> = () => printed(pane),
): Promise<void> {
  const rows: ReportRow[] = [];
  const show = () =>
    changePage(pane, "care", {
      progress: { text: pane.say(TEXTS.trying), done: rows.length / Object.keys(REPORT_PAGES).length },
      report: { rows: [...rows] },
    });
  show();
  try {
    const page = { print, wait, ask: (what: "undo" | "undoFact") => asked(pane, what, signal) };
    for await (const row of excel.report(page)) {
      rows.push(row);
      show();
      signal.throwIfAborted();
    }
  } finally {
    changePage(pane, "care", { progress: undefined, question: undefined });
  }
  const { language } = pane.state;
  const content = excelReportSheet(rows, {
    language,
    date: writtenDate(pane.today, language),
    version: PROJECT_VERSION,
  });
  changePage(pane, "care", { report: { rows, text: excelReportText(content) } });
  const sheet = await ownSheetName(pane.workbook, TEXTS.sheet, language);
  const { lost } = await writeAgain(pane.workbook, { ...content, sheet }, language);
  pane.tell("success", CHECK_TEXTS.sheetWritten, { sheet, rows: rows.length });
  tellLost(pane, lost);
}

/** Whether the person did what the page asks of them; ended with the report. */
function asked(pane: Pane, what: "undo" | "undoFact", signal: AbortSignal): Promise<boolean> {
  return new Promise<boolean>((resolve, reject) => {
    signal.addEventListener("abort", () => reject(signal.reason as Error), { once: true });
    changePage(pane, "care", { question: { what, answer: resolve } });
  }).finally(() => changePage(pane, "care", { question: undefined }));
}
