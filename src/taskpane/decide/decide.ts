import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { readDecisions } from "../readDecisions";
import { isAsked, VINES_LISTED } from "./decideState";

/** Reads the survey and decides every vine. */
export async function decide(pane: Pane, signal: AbortSignal): Promise<void> {
  try {
    const found = await readDecisions(pane, signal, (progress) => changePage(pane, "decide", { progress }));
    const { version } = found;
    const shown = found.vines.some(isAsked) ? "ask" : "all";
    changePage(pane, "decide", {
      version,
      result: found,
      shown,
      block: "",
      open: new Set(),
      listed: VINES_LISTED,
      last: undefined,
      accepting: undefined,
      lastBlock: undefined,
      risk: undefined,
      turns: new Map(),
    });
  } finally {
    changePage(pane, "decide", { progress: undefined });
  }
}

/** Decides what the workbook holds now; what is shown of it, and what can be taken back, stays. */
export async function decideAnew(pane: Pane, signal: AbortSignal): Promise<void> {
  const found = await readDecisions(pane, signal, () => {});
  const { version } = found;
  changePage(pane, "decide", { version, result: found, risk: undefined, turns: new Map() });
}
