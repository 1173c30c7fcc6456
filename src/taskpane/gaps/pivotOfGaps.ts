import { UPKEEP_TEXTS } from "../../texts/upkeep";
import { writeGapsPivot } from "../../workbook/actions/writeGapsPivot";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import type { Progress } from "../progress";
import { tellLost } from "../tellLost";
import { writeLog } from "../writeLog";
import { writtenDate } from "../writtenDate";
import { countedSeason } from "./countGaps";

/** Makes or refreshes the PivotTable of gaps; where the host has none, the same figures as a plain table. */
export async function pivotOfGaps(pane: Pane, signal: AbortSignal): Promise<void> {
  const show = (progress: Progress | undefined) => changePage(pane, "gaps", { progress });
  try {
    const { language } = pane.state;
    const date = writtenDate(pane.today, language);
    const { season, counts } = await countedSeason(pane, signal, show);
    const { how, sheet, lost } = await writeGapsPivot(pane.workbook, season, counts, language, date);
    const texts = {
      made: UPKEEP_TEXTS.pivotMade,
      refreshed: UPKEEP_TEXTS.pivotRefreshed,
      table: UPKEEP_TEXTS.pivotTable,
    };
    pane.tell("success", texts[how], { sheet });
    tellLost(pane, lost);
    await writeLog(pane, pane.say(UPKEEP_TEXTS.pivot), pane.say(texts[how], { sheet }));
  } finally {
    show(undefined);
  }
}
