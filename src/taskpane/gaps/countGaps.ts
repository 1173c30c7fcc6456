import { gapsOfSeason } from "../../survey/season/gapsOfSeason";
import { stayingCordons } from "../../survey/decide/stayingCordons";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import type { Progress } from "../progress";
import { readDecisions, readSeasonOf } from "../readDecisions";

/** Reads the survey and counts the gaps, on the cordons that stay or on all candidates. */
export async function countGaps(pane: Pane, signal: AbortSignal): Promise<void> {
  const show = (progress: Progress) => changePage(pane, "gaps", { progress });
  try {
    const source =
      pane.state.gaps.of === "all"
        ? { season: await readSeasonOf(pane, signal, show), counts: () => true }
        : await decided(pane, signal, show);
    changePage(pane, "gaps", { gaps: gapsOfSeason(source.season, source.counts), block: "" });
  } finally {
    changePage(pane, "gaps", { progress: undefined });
  }
}

async function decided(pane: Pane, signal: AbortSignal, show: (progress: Progress) => void) {
  const { season, vines } = await readDecisions(pane, signal, show);
  return { season, counts: stayingCordons(vines) };
}
