import { blockBudgets } from "../../survey/decide/plan/blockBudgets";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import type { Progress } from "../progress";
import { readDecisions } from "../readDecisions";
import type { NodesState } from "./nodesState";

/** Reads the survey, decides the vines, and works out what to leave, block by block. */
export async function workNodes(pane: Pane, signal: AbortSignal): Promise<void> {
  try {
    changePage(
      pane,
      "nodes",
      await work(pane, signal, (progress) => changePage(pane, "nodes", { progress })),
    );
  } finally {
    changePage(pane, "nodes", { progress: undefined });
  }
}

/** Works out what the workbook holds now; the block that is shown stays. */
export async function workNodesAnew(pane: Pane, signal: AbortSignal): Promise<void> {
  changePage(pane, "nodes", await work(pane, signal, () => {}));
}

async function work(
  pane: Pane,
  signal: AbortSignal,
  show: (progress: Progress) => void,
): Promise<Pick<NodesState, "version" | "result">> {
  const decided = await readDecisions(pane, signal, show);
  const { season, version, vines } = decided;
  const result = pane.held.once("nodes", decided, "", () => ({
    ...blockBudgets(season, vines),
    settings: season.settings,
    units: season.unitSystem,
  }));
  return { version, result };
}
