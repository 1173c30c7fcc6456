import { changePage } from "../changePage";
import type { Pane } from "../pane";
import type { Progress } from "../progress";
import { readDecisions } from "../readDecisions";
import { standsNow } from "../season/standsNow";
import { crewOf } from "./crewOf";
import { RENEWALS_LISTED, type CrewState } from "./crewState";

/** Reads the survey and makes the cards, the order of work and the list of trunks to renew. */
export async function makeCards(pane: Pane, signal: AbortSignal): Promise<void> {
  try {
    const made = await make(pane, signal, (progress) => changePage(pane, "crew", { progress }));
    changePage(pane, "crew", { ...made, block: "", row: "", listed: RENEWALS_LISTED });
  } finally {
    changePage(pane, "crew", { progress: undefined });
  }
}

/** Makes them of what the workbook holds now; the block and row that are chosen stay. */
export async function makeCardsAnew(pane: Pane, signal: AbortSignal): Promise<void> {
  changePage(pane, "crew", await make(pane, signal, () => {}));
}

async function make(
  pane: Pane,
  signal: AbortSignal,
  show: (progress: Progress) => void,
): Promise<Pick<CrewState, "result" | "version">> {
  const decided = await readDecisions(pane, signal, show);
  const { stands, printed } = await standsNow(pane, decided, signal);
  return { version: decided.version, result: { ...crewOf(pane, decided), blocks: stands.blocks, printed } };
}
