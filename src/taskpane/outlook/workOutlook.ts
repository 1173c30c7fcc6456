import { blockOutlook } from "../../survey/blockOutlook";
import { farmFigures } from "../../survey/farmFigures";
import { outlookInputs } from "../../survey/outlookInputs";
import { seasonRows } from "../../survey/seasonRows";
import { stayingCordons } from "../../survey/stayingCordons";
import { THINNING_GROUPS } from "../../texts/outlook";
import type { Pane } from "../pane";
import { readDecisions } from "../readDecisions";
import type { OutlookState } from "./outlookState";
import { keptSeasons } from "./seasonSheet";

/** Reads the survey, decides the vines, and works out what that leaves of a crop, block by block. */
export async function workOutlook(pane: Pane, signal: AbortSignal): Promise<void> {
  const change = (part: Partial<OutlookState>) =>
    pane.change((state) => ({ ...state, outlook: { ...state.outlook, ...part } }));
  try {
    const { survey, vines } = await readDecisions(pane, signal, (progress) => change({ progress }));
    const groups = THINNING_GROUPS.map((name) => pane.say(name));
    const stays = stayingCordons(vines);
    const inputs = outlookInputs(survey, { stays });
    const kept = await keptSeasons(pane.workbook, pane.state.language);
    change({
      blocks: inputs.map((block) => blockOutlook(block, survey.settings, groups)),
      figures: farmFigures(survey),
      survey,
      count: undefined,
      seasons: { kept, now: seasonRows(survey, stays), row: "" },
      unitSystem: survey.unitSystem,
      block: "",
    });
  } finally {
    change({ progress: undefined });
  }
}
