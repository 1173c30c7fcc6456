import { stayingCordons } from "../../survey/stayingCordons";
import { UPKEEP_TEXTS } from "../../texts/upkeep";
import { writeGapsPivot } from "../../workbook/actions/writeGapsPivot";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { readDecisions, readSurveyOf } from "../readDecisions";
import { writeLog } from "../writeLog";
import { writtenDate } from "../writtenDate";

/** Makes or refreshes the PivotTable of gaps; where the host has none, the same figures as a plain table. */
export async function pivotOfGaps(pane: Pane, signal: AbortSignal): Promise<void> {
  const show = (progress: Parameters<Parameters<typeof readSurveyOf>[2]>[0] | undefined) =>
    changePage(pane, "gaps", { progress });
  try {
    const { language, gaps } = pane.state;
    const date = writtenDate(pane.today, language);
    const { survey, counts } =
      gaps.of === "all"
        ? { survey: await readSurveyOf(pane, signal, show), counts: () => true }
        : await readDecisions(pane, signal, show).then((read) => ({
            survey: read.survey,
            counts: stayingCordons(read.vines),
          }));
    const { how, sheet } = await writeGapsPivot(pane.workbook, survey, counts, language, date);
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
