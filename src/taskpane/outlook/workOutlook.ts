import { blockOutlook } from "../../survey/crop/blockOutlook";
import { farmFigures } from "../../survey/crop/farmFigures";
import { outlookInputs } from "../../survey/crop/outlookInputs";
import { winterRows } from "../../survey/season/winterRows";
import { stayingCordons } from "../../survey/decide/stayingCordons";
import { THINNING_GROUPS } from "../../texts/outlook";
import { AGE_TEXTS } from "../../texts/pane";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import type { Progress } from "../progress";
import { readDecisions } from "../readDecisions";
import { planCount } from "./planCount";
import { keptSeasons } from "./seasonSheet";

/** Reads the survey, decides the vines, and works out what that leaves of a crop, block by block. */
export async function workOutlook(pane: Pane, signal: AbortSignal): Promise<void> {
  try {
    const worked = await work(pane, signal, (progress) => changePage(pane, "outlook", { progress }));
    changePage(pane, "outlook", { ...worked, count: undefined, block: "" });
  } finally {
    changePage(pane, "outlook", { progress: undefined });
  }
}

/** Works out what the workbook holds now; the block that is shown and the count that is planned stay. */
export async function workOutlookAnew(pane: Pane, signal: AbortSignal): Promise<void> {
  const worked = await work(pane, signal, () => {});
  const { count, seasons, take } = pane.state.outlook;
  changePage(pane, "outlook", {
    ...worked,
    seasons: { ...worked.seasons, row: seasons?.row ?? "" },
    take: undefined,
  });
  if (take !== undefined) pane.tell("warning", AGE_TEXTS.refused);
  if (count !== undefined) planCount(pane, count.block);
}

async function work(pane: Pane, signal: AbortSignal, show: (progress: Progress) => void) {
  const decided = await readDecisions(pane, signal, show);
  const { season, version, vines } = decided;
  const groups = THINNING_GROUPS.map((name) => pane.say(name));
  const stays = stayingCordons(vines);
  const kept = await keptSeasons(pane.workbook, pane.state.language);
  const worked = pane.held.once("outlook", decided, pane.state.language, () => ({
    version,
    blocks: outlookInputs(season, { decided: vines }).map((block) =>
      blockOutlook(block, season.settings, groups),
    ),
    figures: farmFigures(season),
    season,
    now: winterRows(season, stays),
  }));
  const { now, ...shown } = worked;
  return { ...shown, seasons: { kept, now, row: "" }, unitSystem: season.unitSystem };
}
