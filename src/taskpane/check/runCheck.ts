import type { Finding } from "../../survey/checks/finding";
import { CARE_TEXTS, CHECK_TEXTS } from "../../texts/pane";
import { readAside } from "../../workbook/actions/setAside";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { writeLog } from "../writeLog";
import {
  countSeverities,
  finishRun,
  finishRunAnew,
  stopRun,
  type CheckProgress,
  type FoundTable,
} from "./checkState";
import { foundTables } from "./lookForTables";

/** Share of the progress bar that reading takes; checking takes the rest. */
const READING = 0.6;

/**
 * Reads the survey and checks it, in slices with progress. Sheets that are left out are read, since other sheets
 * are held against them, but nothing is said about them. A run that is stopped or fails changes nothing.
 */
export async function runCheck(pane: Pane, signal: AbortSignal): Promise<void> {
  try {
    const result = await check(pane, signal, (progress) => changePage(pane, "check", { progress }));
    const { tables, findings, version, season } = result;
    pane.change((state) => ({
      ...state,
      check:
        tables.length === 0
          ? { ...stopRun(state.check), tables, version, season }
          : finishRun(state.check, result),
    }));
    if (tables.length > 0) await noteRun(pane, findings, tables);
  } finally {
    pane.change((state) => ({ ...state, check: stopRun(state.check) }));
  }
}

/** Checks what the workbook holds now; filter, opened groups and the run to compare with stay. */
export async function checkAnew(pane: Pane, signal: AbortSignal): Promise<void> {
  const result = await check(pane, signal, () => {});
  const { tables, version } = result;
  pane.change((state) => ({
    ...state,
    check: tables.length === 0 ? { ...state.check, tables, version } : finishRunAnew(state.check, result),
  }));
}

async function check(pane: Pane, signal: AbortSignal, show: (progress: CheckProgress) => void) {
  const reading = await pane.held.read({
    signal,
    onProgress: (sheet, done) => show({ step: "reading", sheet, done: done * READING }),
  });
  const { season, version } = reading;
  show({ step: "checking", sheet: "", done: READING });
  const found = await pane.held.check(reading, pane.today, signal, (done) =>
    show({ step: "checking", sheet: "", done: READING + (1 - READING) * done }),
  );
  const { leftOut } = pane.state.check;
  const findings = found.filter(({ sheet }) => !leftOut.has(sheet));
  return { season, version, tables: foundTables(season), findings, entries: await readAside(pane.workbook) };
}

async function noteRun(pane: Pane, findings: readonly Finding[], tables: readonly FoundTable[]) {
  const rows = tables.reduce((sum, table) => sum + table.rows, 0);
  const result = pane.say(CHECK_TEXTS.result, { ...countSeverities(findings), rows });
  await writeLog(pane, pane.say(CARE_TEXTS.logCheck), result);
}
