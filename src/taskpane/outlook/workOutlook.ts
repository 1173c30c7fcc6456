import { blockOutlook } from "../../survey/crop/blockOutlook";
import { farmFigures } from "../../survey/crop/farmFigures";
import { outlookInputs } from "../../survey/crop/outlookInputs";
import { winterRows } from "../../survey/season/winterRows";
import { stayingCordons } from "../../survey/decide/stayingCordons";
import { THINNING_GROUPS } from "../../texts/outlook";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { readDecisions } from "../readDecisions";
import { keptSeasons } from "./seasonSheet";

/** Reads the survey, decides the vines, and works out what that leaves of a crop, block by block. */
export async function workOutlook(pane: Pane, signal: AbortSignal): Promise<void> {
  try {
    const { season, vines } = await readDecisions(pane, signal, (progress) =>
      changePage(pane, "outlook", { progress }),
    );
    const groups = THINNING_GROUPS.map((name) => pane.say(name));
    const stays = stayingCordons(vines);
    const inputs = outlookInputs(season, { stays });
    const kept = await keptSeasons(pane.workbook, pane.state.language);
    changePage(pane, "outlook", {
      blocks: inputs.map((block) => blockOutlook(block, season.settings, groups)),
      figures: farmFigures(season),
      season,
      count: undefined,
      seasons: { kept, now: winterRows(season, stays), row: "" },
      unitSystem: season.unitSystem,
      block: "",
    });
  } finally {
    changePage(pane, "outlook", { progress: undefined });
  }
}
