import { blockOutlook } from "../../survey/blockOutlook";
import { farmFigures } from "../../survey/farmFigures";
import { outlookInputs } from "../../survey/outlookInputs";
import { seasonRows } from "../../survey/seasonRows";
import { stayingCordons } from "../../survey/stayingCordons";
import { THINNING_GROUPS } from "../../texts/outlook";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { readDecisions } from "../readDecisions";
import { keptSeasons } from "./seasonSheet";

/** Reads the survey, decides the vines, and works out what that leaves of a crop, block by block. */
export async function workOutlook(pane: Pane, signal: AbortSignal): Promise<void> {
  try {
    const { survey, vines } = await readDecisions(pane, signal, (progress) =>
      changePage(pane, "outlook", { progress }),
    );
    const groups = THINNING_GROUPS.map((name) => pane.say(name));
    const stays = stayingCordons(vines);
    const inputs = outlookInputs(survey, { stays });
    const kept = await keptSeasons(pane.workbook, pane.state.language);
    changePage(pane, "outlook", {
      blocks: inputs.map((block) => blockOutlook(block, survey.settings, groups)),
      figures: farmFigures(survey),
      survey,
      count: undefined,
      seasons: { kept, now: seasonRows(survey, stays), row: "" },
      unitSystem: survey.unitSystem,
      block: "",
    });
  } finally {
    changePage(pane, "outlook", { progress: undefined });
  }
}
