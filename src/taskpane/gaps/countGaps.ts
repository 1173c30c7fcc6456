import { gapsOfSeason } from "../../survey/season/gapsOfSeason";
import { stayingCordons } from "../../survey/decide/stayingCordons";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import type { Progress } from "../progress";
import { readDecisions } from "../readDecisions";
import type { GapsState } from "./gapsState";

/** Reads the survey and counts the gaps, on the cordons that stay or on all candidates. */
export async function countGaps(pane: Pane, signal: AbortSignal): Promise<void> {
  try {
    const counted = await count(pane, signal, (progress) => changePage(pane, "gaps", { progress }));
    changePage(pane, "gaps", { ...counted, block: "", row: undefined, vine: undefined, reached: undefined });
  } finally {
    changePage(pane, "gaps", { progress: undefined });
  }
}

/** Counts the gaps of what the workbook holds now; the block that is shown stays. */
export async function countGapsAnew(pane: Pane, signal: AbortSignal): Promise<void> {
  changePage(pane, "gaps", await count(pane, signal, () => {}));
}

async function count(
  pane: Pane,
  signal: AbortSignal,
  show: (progress: Progress) => void,
): Promise<Pick<GapsState, "gaps" | "counted" | "version">> {
  const counted = await countedSeason(pane, signal, show);
  const { season, version, counts } = counted;
  return {
    version,
    counted,
    gaps: pane.held.once("gaps", counted, pane.state.gaps.of, () => gapsOfSeason(season, counts)),
  };
}

/** The decided season, and on which of its cordons gaps are counted: those that stay, or all candidates. */
export async function countedSeason(pane: Pane, signal: AbortSignal, show: (progress: Progress) => void) {
  const decided = await readDecisions(pane, signal, show);
  const counts = pane.state.gaps.of === "all" ? () => true : stayingCordons(decided.vines);
  return { ...decided, counts };
}
