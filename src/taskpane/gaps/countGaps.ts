import { gapsOfSurvey } from "../../survey/gapsOfSurvey";
import { stayingCordons } from "../../survey/stayingCordons";
import type { Pane } from "../pane";
import type { Progress } from "../progress";
import { readDecisions, readSurveyOf } from "../readDecisions";
import type { GapsState } from "./gapsState";

/** Reads the survey and counts the gaps, on the cordons that stay or on all candidates. */
export async function countGaps(pane: Pane, signal: AbortSignal): Promise<void> {
  const change = (part: Partial<GapsState>) =>
    pane.change((state) => ({ ...state, gaps: { ...state.gaps, ...part } }));
  const show = (progress: Progress) => change({ progress });
  try {
    if (pane.state.gaps.of === "all") {
      change({ gaps: gapsOfSurvey(await readSurveyOf(pane, signal, show)), block: "" });
    } else {
      const { survey, vines } = await readDecisions(pane, signal, show);
      change({ gaps: gapsOfSurvey(survey, stayingCordons(vines)), block: "" });
    }
  } finally {
    change({ progress: undefined });
  }
}
