import { decideSurvey, type DecidedVine } from "../../survey/decideSurvey";
import { gapsOfSurvey } from "../../survey/gapsOfSurvey";
import { stayingCordons } from "../../survey/stayingCordons";
import { readHeads } from "../check/ownHeads";
import { readTables } from "../check/readTables";
import { inSlices } from "../inSlices";
import type { Pane } from "../pane";
import type { GapsState } from "./gapsState";

/** Share of the progress bar that reading takes; deciding takes the rest. */
const READING = 0.5;

/** Reads the survey and counts the gaps, on the cordons that stay or on all candidates. */
export async function countGaps(pane: Pane, signal: AbortSignal): Promise<void> {
  const change = (part: Partial<GapsState>) =>
    pane.change((state) => ({ ...state, gaps: { ...state.gaps, ...part } }));
  try {
    const { survey } = await readTables(pane.workbook, {
      mapping: await readHeads(pane.workbook),
      signal,
      onProgress: (sheet, done) => change({ progress: { sheet, done: done * READING } }),
    });
    const { of } = pane.state.gaps;
    const decided: DecidedVine[] = [];
    if (of === "staying") {
      const rows = survey.tables("cordons").reduce((sum, table) => sum + table.rowCount, 0);
      let seen = 0;
      await inSlices(
        decideSurvey(survey),
        (vine) => {
          decided.push(vine);
          seen += vine.rows.length;
          if (decided.length % 100 === 0)
            change({ progress: { sheet: "", done: READING + (1 - READING) * (seen / rows) } });
        },
        signal,
      );
    }
    const gaps = of === "staying" ? gapsOfSurvey(survey, stayingCordons(decided)) : gapsOfSurvey(survey);
    change({ gaps, block: "" });
  } finally {
    change({ progress: undefined });
  }
}
