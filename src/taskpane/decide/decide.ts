import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { readDecisions } from "../readDecisions";
import { countVines } from "./decideState";
import { firstVine } from "./vineWalk";
import { followSelection } from "./followSelection";

/** Reads the survey and decides every vine. */
export async function decide(pane: Pane, signal: AbortSignal): Promise<void> {
  try {
    await decideNow(pane, signal, (progress) => changePage(pane, "decide", { progress }));
  } finally {
    changePage(pane, "decide", { progress: undefined });
  }
}

/** Decides what the workbook holds now; what is shown of it, and what can be taken back, stays. */
export function decideAnew(pane: Pane, signal: AbortSignal): Promise<void> {
  return decideNow(pane, signal, () => {});
}

async function decideNow(
  pane: Pane,
  signal: AbortSignal,
  onProgress: Parameters<typeof readDecisions>[2],
): Promise<void> {
  const { result, block, at } = pane.state.decide;
  const isFirst = result === undefined;
  const found = await readDecisions(pane, signal, onProgress);
  const { version, vines } = found;
  const shown = isFirst ? (countVines(vines).ask > 0 ? "ask" : "all") : pane.state.decide.shown;
  changePage(pane, "decide", {
    version,
    result: found,
    risk: undefined,
    turns: new Map(),
    shown,
    at: at ?? firstVine(vines, { shown, block }),
  });
  if (isFirst) await followSelection(pane);
}
