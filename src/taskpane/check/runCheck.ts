import { checkSeason, inSheetOrder } from "../../survey/checks/checkSeason";
import type { Finding } from "../../survey/checks/finding";
import { CARE_TEXTS, CHECK_TEXTS } from "../../texts/pane";
import { inSlices } from "../inSlices";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { tellOfColleagues } from "../readDecisions";
import { writeLog } from "../writeLog";
import { countSeverities, finishRun, stopRun, type CheckProgress, type FoundTable } from "./checkState";
import { foundTables } from "./lookForTables";
import { readHeads } from "../../workbook/actions/ownHeads";
import { readAside } from "../../workbook/actions/setAside";
import { readTables } from "./readTables";

/** Share of the progress bar that reading takes; checking takes the rest. */
const READING = 0.6;

/**
 * Reads the survey and checks it, in slices with progress. Sheets that are left out are read, since other sheets
 * are held against them, but nothing is said about them. A run that is stopped or fails changes nothing.
 */
export async function runCheck(pane: Pane, signal: AbortSignal): Promise<void> {
  const show = (progress: CheckProgress) => changePage(pane, "check", { progress });
  try {
    const { season, metOnTheWay } = await readTables(pane.workbook, {
      mapping: await readHeads(pane.workbook),
      signal,
      onProgress: (sheet, done) => show({ step: "reading", sheet, done: done * READING }),
    });
    tellOfColleagues(pane, metOnTheWay);
    const tables = foundTables(season);
    const findings: Finding[] = [];
    await inSlices(
      checkSeason(season, { today: pane.today }),
      ({ finding, done }) => {
        if (finding !== undefined) findings.push(finding);
        else show({ step: "checking", sheet: "", done: READING + (1 - READING) * done });
      },
      signal,
    );
    const { leftOut } = pane.state.check;
    const judged = inSheetOrder(findings, season).filter(({ sheet }) => !leftOut.has(sheet));
    const entries = await readAside(pane.workbook);
    const result = { season, tables, findings: judged, entries };
    pane.change((state) => ({
      ...state,
      check: tables.length === 0 ? { ...stopRun(state.check), tables } : finishRun(state.check, result),
    }));
    if (tables.length > 0) await noteRun(pane, judged, tables);
  } finally {
    pane.change((state) => ({ ...state, check: stopRun(state.check) }));
  }
}

async function noteRun(pane: Pane, findings: readonly Finding[], tables: readonly FoundTable[]) {
  const rows = tables.reduce((sum, table) => sum + table.rows, 0);
  const result = pane.say(CHECK_TEXTS.result, { ...countSeverities(findings), rows });
  await writeLog(pane, pane.say(CARE_TEXTS.logCheck), result);
}
