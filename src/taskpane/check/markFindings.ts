import type { Finding } from "../../survey/checks/finding";
import { CHECK_TEXTS } from "../../texts/pane";
import type { Pane } from "../pane";
import { cellMarks } from "./cellMarks";

/** Marks the cells of the findings, in place of the marks of the run before. */
export async function markFindings(pane: Pane, findings: readonly Finding[]): Promise<void> {
  const marks = cellMarks(findings);
  await pane.workbook.markCells(marks);
  pane.tell("success", CHECK_TEXTS.marked, { cells: marks.length });
}

/** Takes all marks off. */
export async function takeMarksOff(pane: Pane): Promise<void> {
  await pane.workbook.markCells([]);
  pane.tell("success", CHECK_TEXTS.unmarked);
}
