import { likelyHeaders } from "../../survey/reading/findTable";
import { allAnswers, holdsAnswers } from "../../survey/reading/keptAnswers";
import type { Season } from "../../survey/season/season";
import type { Pane } from "../pane";
import { stopRun, type FoundTable } from "./checkState";

/** Finds the survey tables of the workbook and lists them, so that a person can choose sheets or map heads. */
export async function lookForTables(pane: Pane, signal: AbortSignal): Promise<void> {
  try {
    const { season, areas } = await pane.held.read({
      signal,
      onProgress: (sheet, done) =>
        pane.change((state) => ({
          ...state,
          check: { ...state.check, progress: { step: "reading", sheet, done } },
        })),
    });
    const headsOf = areas.flatMap((area) => {
      const likely = holdsAnswers(area) ? undefined : likelyHeaders(area);
      return likely ? [{ sheet: area.sheet, area, ...likely }] : [];
    });
    const looked = { answers: allAnswers(areas), season };
    pane.change((state) => ({
      ...state,
      check: { ...state.check, tables: foundTables(season), headsOf, looked },
    }));
  } finally {
    pane.change((state) => ({ ...state, check: stopRun(state.check) }));
  }
}

/** The tables of a survey as the pane lists them; Settings are no counts and not listed. */
export function foundTables(season: Season): FoundTable[] {
  return season.allTables
    .filter((table) => table.shape.id !== "settings")
    .map((table) => ({ sheet: table.sheet, shape: table.shape.id, rows: table.rowCount }));
}
