import type { Survey } from "../../survey/survey";
import type { Pane } from "../pane";
import { stopRun, type FoundTable } from "./checkState";
import { readTables } from "./readTables";

/** Finds the survey tables of the workbook and lists them, so that a person can choose sheets. */
export async function lookForTables(pane: Pane, signal: AbortSignal): Promise<void> {
  try {
    const { survey } = await readTables(pane.workbook, {
      leftOut: new Set(),
      signal,
      onProgress: (sheet, done) =>
        pane.change((state) => ({
          ...state,
          check: { ...state.check, progress: { step: "reading", sheet, done } },
        })),
    });
    pane.change((state) => ({ ...state, check: { ...state.check, tables: foundTables(survey) } }));
  } finally {
    pane.change((state) => ({ ...state, check: stopRun(state.check) }));
  }
}

/** The tables of a survey as the pane lists them; Settings are no counts and not listed. */
export function foundTables(survey: Survey): FoundTable[] {
  return survey.allTables
    .filter((table) => table.shape.id !== "settings")
    .map((table) => ({ sheet: table.sheet, shape: table.shape.id, rows: table.rowCount }));
}
