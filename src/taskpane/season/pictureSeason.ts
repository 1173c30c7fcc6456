import { isAsked } from "../../survey/decide/isAsked";
import { isCounted } from "../../survey/decide/plan/seasonStands";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { readDecisions } from "../readDecisions";
import { standsNow } from "./standsNow";

/** Reads, checks and decides what the workbook holds now, and makes the picture of where the work stands. */
export async function pictureSeason(pane: Pane, signal: AbortSignal): Promise<void> {
  const first = pane.state.season.picture === undefined;
  try {
    const reading = await readDecisions(pane, signal, (progress) => {
      if (first) changePage(pane, "season", { progress });
    });
    const { season, version, vines } = reading;
    const { stands } = await standsNow(pane, reading, signal);
    const picture = {
      ...stands,
      season,
      rowsUsed: season.used.account(),
      firstAsked: vines.find((vine) => isCounted(vine) && isAsked(vine)),
    };
    changePage(pane, "season", { version, picture });
    if (first) performance.mark("cordonbook-season");
  } finally {
    changePage(pane, "season", { progress: undefined });
  }
}
