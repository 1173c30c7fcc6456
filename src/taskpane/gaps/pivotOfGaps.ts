import { stayingCordons } from "../../survey/decide/stayingCordons";
import { UPKEEP_TEXTS } from "../../texts/upkeep";
import { writeGapsPivot } from "../../workbook/actions/writeGapsPivot";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { readDecisions, readSeasonOf } from "../readDecisions";
import { writeLog } from "../writeLog";
import { writtenDate } from "../writtenDate";

/** Makes or refreshes the PivotTable of gaps; where the host has none, the same figures as a plain table. */
export async function pivotOfGaps(pane: Pane, signal: AbortSignal): Promise<void> {
  const show = (progress: Parameters<Parameters<typeof readSeasonOf>[2]>[0] | undefined) =>
    changePage(pane, "gaps", { progress });
  try {
    const { language, gaps } = pane.state;
    const date = writtenDate(pane.today, language);
    const { season, counts } =
      gaps.of === "all"
        ? { season: await readSeasonOf(pane, signal, show), counts: () => true }
        : await readDecisions(pane, signal, show).then((read) => ({
            season: read.season,
            counts: stayingCordons(read.vines),
          }));
    const { how, sheet } = await writeGapsPivot(pane.workbook, season, counts, language, date);
    const texts = {
      made: UPKEEP_TEXTS.pivotMade,
      refreshed: UPKEEP_TEXTS.pivotRefreshed,
      table: UPKEEP_TEXTS.pivotTable,
    };
    pane.tell("success", texts[how], { sheet });
    await writeLog(pane, pane.say(UPKEEP_TEXTS.pivot), pane.say(texts[how], { sheet }));
  } finally {
    show(undefined);
  }
}
